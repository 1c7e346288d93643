/**
 * The single file from disk with the network off, the served page without its server, the strict policy of both, and
 * how much script they carry.
 */
import { readFileSync } from "node:fs";
import { gzipSync } from "node:zlib";
import { describe, expect, it } from "vitest";
import { DESKTOP, PHONE } from "./browser.ts";
import { BUILT, complaintsOf, openShop, pageTests, sentence, settled, visit } from "./shop.ts";

const tests = pageTests();

const built = (name: string) => readFileSync(new URL(name, BUILT));
const policyOf = (html: string) =>
  /http-equiv="Content-Security-Policy" content="([^"]+)"/.exec(html)?.[1] ?? "";

describe("noseroom.html from disk", () => {
  it.each([
    ["desktop", DESKTOP],
    ["phone", PHONE],
  ] as const)("answers with the network off, asks nothing of anyone, on a %s", async (_name, options) => {
    const context = await tests.browser.newContext({ ...options, offline: true });
    const page = await context.newPage();
    const complaints = complaintsOf(page);
    const asked: string[] = [];
    page.on("request", (request) => {
      if (!/^(file|blob|data):/.test(request.url())) asked.push(request.url());
    });
    await page.goto(new URL("noseroom.html", BUILT).href);
    expect(await sentence(page)).toMatch(/^Does not fold: at 7/);
    await page.getByRole("radio", { name: "Clamp bar" }).check();
    expect(await sentence(page)).toMatch(/^Folds/);
    await page.reload();
    expect(await sentence(page)).toMatch(/^Folds/);
    expect(asked).toEqual([]);
    expect(complaints).toEqual([]);
    await context.close();
  });

  it("is one file under a policy that lets only its own script and style run", () => {
    const html = built("noseroom.html").toString("utf8");
    const policy = policyOf(html);
    expect(policy).toContain("default-src 'none'");
    expect(policy).toMatch(/script-src 'sha256-[^']+';/);
    expect(policy).toMatch(/style-src 'sha256-[^']+';/);
    expect(policy).not.toMatch(/unsafe|\*|https?:/);
    expect(html.match(/<script/g)?.length).toBe(1);
    expect(html).not.toMatch(/<(link|script|img|iframe)[^>]+(href|src)=["']?(https?:)?\/\//);
  });
});

describe("the served page", () => {
  it("opens without its server once it has been there", async () => {
    const other = await openShop();
    const page = await visit(tests.browser, DESKTOP, other.address);
    await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
    });
    await page.waitForFunction(() => navigator.serviceWorker.controller !== null);
    await page.context().setOffline(true);
    await new Promise((done) => other.server.close(done));
    await page.reload();
    expect(await sentence(page)).toMatch(/^Does not fold/);
    const manifest = JSON.parse(built("site/manifest.webmanifest").toString("utf8"));
    expect(manifest.display).toBe("standalone");
    expect(manifest.icons.length).toBeGreaterThan(0);
    await page.context().close();
  });

  it("sends a strict policy as a header and in the page, without inline script or style", async () => {
    const response = await fetch(tests.address);
    const header = response.headers.get("content-security-policy") ?? "";
    expect(header).toContain("default-src 'none'");
    expect(header).toContain("script-src 'self'");
    expect(header).toContain("frame-ancestors 'none'");
    expect(header).not.toMatch(/unsafe|\*/);
    const html = await response.text();
    expect(policyOf(html)).toContain("script-src 'self'");
    expect(html).not.toMatch(/<style|<script>| on[a-z]+=|style=/);
  });

  it("is refused any markup or script of others by the browser itself", async () => {
    const page = await tests.visit(DESKTOP);
    const tried = await page.evaluate(() => {
      const attempt = (act: () => unknown) => {
        try {
          act();
          return "let through";
        } catch (refusal) {
          return (refusal as Error).name;
        }
      };
      return [
        attempt(() => {
          document.createElement("div").innerHTML = "<b>markup</b>";
        }),
        attempt(() => new Worker("data:text/javascript,0")),
        attempt(() => {
          document.createElement("script").src = "https://elsewhere.example/x.js";
        }),
      ];
    });
    expect(tried).toEqual(["TypeError", "TypeError", "TypeError"]);
    await page.context().close();
  });

  it("serves nothing but its own files", async () => {
    for (const path of ["../package.json", "..%2fpackage.json", "page.js/../../index.mjs", "none.html"]) {
      expect((await fetch(tests.address + path)).status).toBe(404);
    }
  });

  it("carries less than 350 kB of script, gzipped, and stands with its answer after a second of work", async () => {
    const files = ["site/page.js", "site/offline.js"];
    const kilobytes = files.reduce((sum, name) => sum + gzipSync(built(name), { level: 9 }).length, 0) / 1000;
    expect(kilobytes).toBeLessThan(350);
    expect(gzipSync(built("noseroom.html"), { level: 9 }).length / 1000).toBeLessThan(350);

    // Counted in the work of the page's own thread up to the first answer, the same on a machine busy with others.
    const page = await tests.visit(DESKTOP);
    const devtools = await page.context().newCDPSession(page);
    await devtools.send("Performance.enable", { timeDomain: "threadTicks" });
    const workedS = async () => {
      const { metrics } = await devtools.send("Performance.getMetrics");
      return metrics.find(({ name }) => name === "TaskDuration")?.value ?? Number.NaN;
    };
    const before = await workedS();
    await page.reload();
    await settled(page);
    const took = (await workedS()) - before;
    expect(took).toBeGreaterThan(0);
    expect(took).toBeLessThan(1);
  });
});
