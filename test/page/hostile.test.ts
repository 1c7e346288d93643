/**
 * A hundred and more hostile imports: script in names, giant numbers, wrong versions, cut-off and nested JSON, links
 * and drawings cut off. None runs anything, none loses the open job, none leaves the page without an answer.
 */

import type { Server } from "node:http";
import { deflateRawSync } from "node:zlib";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { rectangle } from "../rectangle.ts";
import { DESKTOP, launch } from "./browser.ts";
import { drawing, line, lwpolyline } from "./dxfText.ts";
import { complaintsOf, openShop, sentence, settled, visit } from "./shop.ts";

const SCRIPTS = [
  "<script>window.ran=1</script>",
  '<img src=x onerror="window.ran=1">',
  '"><svg onload=window.ran=1>',
  "javascript:window.ran=1",
  "'-window.ran=1-'",
  "$".concat("{window.ran=1}"),
  "</script><script>window.ran=1</script>",
  "<iframe srcdoc='<script>parent.ran=1</script>'>",
  "<style>@import url(http://127.0.0.1:9/x)</style>",
  "\u202e<b onmouseover=window.ran=1>\u0000",
];

/** A good job that the hostile ones are made from. */
function good() {
  return {
    noseroom: 1,
    units: "mm",
    part: {
      name: "clip",
      material: "mild steel",
      thickness: 0.8,
      insideRadius: 1,
      dimensions: "outside",
      flats: [20, 30, 20],
      bends: [
        { angle: 90, turn: "up" },
        { angle: 90, turn: "down" },
      ],
    },
    brake: {
      name: "brake",
      clamp: { type: "bar", thickness: 6, depth: 45, noseRadius: 0.8 },
      bed: { profile: rectangle(-160, -80, 0, 0) },
      leaf: { profile: rectangle(0, -10, 25, 0), swing: 135 },
      lift: 35,
      openEnds: true,
    },
  };
}

type Job = ReturnType<typeof good>;
type Spoil = (job: Job) => unknown;
const put = (path: string, value: unknown) => (job: Job) => {
  const keys = path.split(".");
  const last = keys.pop()!;
  let at = job as unknown as Record<string, unknown>;
  for (const key of keys) at = at[key] as Record<string, unknown>;
  at[last] = value;
  return job;
};

const GIANTS: readonly unknown[] = [
  1e308,
  -1e308,
  1e-320,
  "9".repeat(400),
  "1/0",
  "0/0",
  "1e999",
  "NaN",
  "-5",
  "",
];
const FIGURES = ["part.thickness", "part.flats.1", "part.bends.0.angle", "brake.lift", "brake.leaf.swing"];
const WRONG: readonly unknown[] = [null, [], {}, true, "x".repeat(5000), [[[]]]];
const PLACES = [
  "part",
  "part.flats",
  "part.bends",
  "part.name",
  "brake",
  "brake.clamp",
  "brake.bed.profile",
  "order",
];

const SPOILT: readonly (readonly [string, Spoil])[] = [
  ...SCRIPTS.map((script, i) => [`script ${i} in the part's name`, put("part.name", script)] as const),
  ...SCRIPTS.map((script, i) => [`script ${i} as the metal`, put("part.material", script)] as const),
  ...SCRIPTS.map((script, i) => [`script ${i} in a flat`, put("part.flats.0", script)] as const),
  ...FIGURES.flatMap((path) =>
    GIANTS.map((giant) => [`${path} is ${String(giant).slice(0, 12)}`, put(path, giant)] as const),
  ),
  ...PLACES.flatMap((path) =>
    WRONG.map((wrong) => [`${path} is ${JSON.stringify(wrong).slice(0, 12)}`, put(path, wrong)] as const),
  ),
  ["version 2", put("noseroom", 2)],
  ["version as words", put("noseroom", "<b>1</b>")],
  [
    "a key that changes every object",
    (job) => JSON.parse(`{"__proto__": {"ran": 1}, ${JSON.stringify(job).slice(1)}`),
  ],
  [
    "500 bends",
    (job) =>
      put(
        "part.bends",
        Array(500).fill({ angle: 90, turn: "up" }),
      )(put("part.flats", Array(501).fill(9))(job) as Job),
  ],
];

const whole = JSON.stringify(good());
const TEXTS: readonly (readonly [string, string])[] = [
  ...SPOILT.map(([name, spoil]) => [name, JSON.stringify(spoil(good()))] as const),
  ...Array.from({ length: 12 }, (_, i) => [`cut off after ${i * 60} signs`, whole.slice(0, i * 60)] as const),
  ["nested ten thousand deep", "[".repeat(10_000)],
  ["a megabyte of blanks", " ".repeat(1_000_000)],
  ["an HTML page", "<!doctype html><script>window.ran=1</script>"],
  ["null bytes", "\0\0\0\0"],
];

const DRAWINGS: readonly (readonly [string, string])[] = [
  ["script in a layer", drawing(4, [line(0, 0, 5, 0).replace("8\n0", "8\n<script>window.ran=1</script>")])],
  ["giant figures", drawing(4, [line(0, 0, 1e300, 0), line(1e300, 0, 0, 1e300), line(0, 1e300, 0, 0)])],
  ["not numbers", drawing(4, [line(Number.NaN, 0, 5, 0)])],
  [
    "a bulge without end",
    drawing(4, [
      lwpolyline(
        [
          [0, 0, 1e300],
          [5, 0, 0],
          [5, 5, 0],
        ],
        true,
      ),
    ]),
  ],
  [
    "a bow tie",
    drawing(4, [
      lwpolyline(
        [
          [0, 0, 0],
          [5, 5, 0],
          [5, 0, 0],
          [0, 5, 0],
        ],
        true,
      ),
    ]),
  ],
  ["no shapes", drawing(4, [])],
  ["cut off", drawing(4, [line(0, 0, 5, 0)]).slice(0, 60)],
  ["noise", "\u0001\u0002not a drawing"],
];

/** What a hostile file would have to change: something ran, or markup of its own stands in the page. */
function stateOfPage(page: Page) {
  return page.evaluate(() => ({
    ran: (window as unknown as { ran?: unknown }).ran ?? ({} as { ran?: unknown }).ran ?? null,
    scripts: document.querySelectorAll("script, iframe, object, embed").length,
    strangers: document.querySelectorAll("#worksheet img, #worksheet style, #worksheet b").length,
  }));
}

/** Puts the lines away and undoes opening by opening, each answered; tells the name of the job that then lies open. */
async function backToOpenJob(page: Page): Promise<string> {
  await page.evaluate(async () => {
    for (const button of Array.from(
      document.querySelectorAll<HTMLButtonElement>(".notice button:last-child"),
    ))
      button.click();
    const answered = () => document.querySelector(".answer")?.getAttribute("data-working") === "no";
    const undo = () => document.querySelector<HTMLButtonElement>('button[aria-label="Undo: open a file"]');
    for (let button = undo(); button !== null; button = undo()) {
      button.click();
      do await new Promise((next) => requestAnimationFrame(next));
      while (!answered());
    }
  });
  return page.getByLabel("Name", { exact: true }).inputValue();
}

describe("hostile imports", () => {
  let browser: Browser;
  let server: Server;
  let address: string;
  let page: Page;
  let complaints: string[];
  beforeAll(async () => {
    [browser, { server, address }] = await Promise.all([launch(), openShop()]);
    page = await visit(browser, DESKTOP, address);
    complaints = complaintsOf(page);
    await page.getByLabel("Name", { exact: true }).fill("The open job");
    await settled(page);
  });
  afterAll(async () => {
    await browser?.close();
    server?.close();
  });

  const ran = () =>
    page.evaluate(
      () => (window as unknown as { ran?: unknown }).ran ?? ({} as { ran?: unknown }).ran ?? null,
    );
  /** The first job on the shelf as the browser has kept it. */
  const kept = () =>
    page.evaluate(() => {
      const jobs = Object.keys(localStorage)
        .filter((key) => key.startsWith("noseroom.job."))
        .map((key) => JSON.parse(localStorage.getItem(key)!));
      return jobs.find((job) => job.file.part.name === "The open job")?.file ?? null;
    });

  it("are more than a hundred", () => expect(TEXTS.length + DRAWINGS.length).toBeGreaterThan(100));

  it("run nothing and lose nothing, many files at a time", async () => {
    const before = await kept();
    expect(before).not.toBeNull();
    const asFile = (text: string) => ({
      name: "job.json",
      mimeType: "application/json",
      buffer: Buffer.from(text),
    });
    const last = asFile(JSON.stringify(put("part.name", "The last of them")(good())));
    for (let i = 0; i < TEXTS.length; i += 15) {
      const some = TEXTS.slice(i, i + 15);
      const names = some.map(([name]) => name).join("; ");
      await page
        .getByLabel("Open a file", { exact: true })
        .setInputFiles([...some.map(([, text]) => asFile(text)), last]);
      // Files are taken in one after the other; when the last lies open all have been.
      await page.waitForFunction(
        () => document.querySelector(".jobs li.on")?.textContent === "The last of them",
      );
      await settled(page);
      expect(await stateOfPage(page), names).toEqual({ ran: null, scripts: 1, strangers: 0 });
      // Each hostile job that opened is looked at in turn, answered or refused, on the way back to the open job.
      expect(await backToOpenJob(page), names).toBe("The open job");
      expect(await stateOfPage(page), names).toEqual({ ran: null, scripts: 1, strangers: 0 });
    }
    expect(await kept()).toEqual(before);
    expect(await sentence(page)).toMatch(/^Does not fold: at 7/);
  });

  it("run nothing and lose nothing, drawing by drawing", async () => {
    await page.getByRole("radio", { name: "Own profile" }).check();
    await settled(page);
    const before = await kept();
    for (const [name, text] of DRAWINGS) {
      await page
        .locator('input[type="file"][accept=".dxf"]')
        .setInputFiles({ name: "clamp.dxf", mimeType: "image/vnd.dxf", buffer: Buffer.from(text) });
      await page.locator(".notice").waitFor();
      expect(await ran(), name).toBeNull();
      await page.getByRole("button", { name: "Put away" }).click();
      expect(await kept(), name).toEqual(before);
    }
  });

  it("in a link: cut off, of another version, or unfolding without end", async () => {
    const before = await kept();
    const fold = (text: string) => deflateRawSync(text).toString("base64url");
    const links = [
      "#job=1.",
      "#job=1.!!!",
      `#job=2.${fold(whole)}`,
      `#job=1.${fold(whole).slice(0, 90)}`,
      `#job=1.${fold(" ".repeat(5_000_000))}`,
      "#job=<script>window.ran=1</script>",
    ];
    for (const link of links) {
      await page.evaluate((to) => {
        location.hash = to;
      }, link);
      await page.locator(".notice").waitFor();
      expect(await ran(), link).toBeNull();
      await page.getByRole("button", { name: "Put away" }).click();
    }
    expect(await kept()).toEqual(before);
  });

  it("in the browser's own store: the damaged job is set aside with its text, the others are kept", async () => {
    await page.evaluate(() => {
      localStorage.setItem("noseroom.job.zz", '{"version":1,"place":7,"file":{"noseroom":1,"par');
      localStorage.setItem("noseroom.job.zy", '{"version":99,"file":{}}');
    });
    await page.reload();
    await settled(page);
    expect(await page.locator(".notice").count()).toBe(2);
    expect(await page.locator(".notice").first().textContent()).toMatch(/could not be read/);
    expect(await page.getByLabel("Name", { exact: true }).inputValue()).toBe("The open job");
    const set = await page.evaluate(() => localStorage.getItem("noseroom.damaged.zz"));
    expect(set).toContain('"noseroom":1,"par');
  });

  it("leave the console quiet", () => expect(complaints).toEqual([]));
});
