/**
 * The shop on the page: every kept part on every kept brake with the sentence that decides, one narrow brake for several
 * parts, its safety factors changed. The shop is the repository's example of 12 parts and 3 brakes; its table is held
 * against the command's, and the rule that a stricter factor never makes the bar's window wider against itself.
 */
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { asWishes, usualWishes, wishNumber } from "../../web/store/wishes.ts";
import { DESKTOP, PHONE } from "./browser.ts";
import { complaintsOf, pageTests, press, saved, settled, until, verdict, words } from "./shop.ts";

const tests = pageTests();

const SHOP = "examples/shop/observatory.json";
const shop = JSON.parse(readFileSync(SHOP, "utf8"));

/** Each part as a job: the first ones bring the shop's brakes, the rest stand on the first. */
function jobs() {
  const { units, margin, parts, brakes } = shop;
  return parts.map((part: { name: string }, i: number) => ({
    noseroom: 1,
    units,
    part,
    brake: brakes[i] ?? brakes[0],
    ...(margin === undefined ? {} : { margin }),
  }));
}

async function openAll(page: Page): Promise<void> {
  const files = jobs().map((job: unknown, i: number) => ({
    name: `part-${i + 1}.json`,
    mimeType: "application/json",
    buffer: Buffer.from(JSON.stringify(job)),
  }));
  await page.getByLabel("Open a file").setInputFiles(files);
  await page.locator(".jobs .job").nth(files.length).waitFor();
  // The visitor's own trough is no part of that shop.
  await page.getByRole("button", { name: "Take the job Cable trough away" }).first().click();
  await settled(page);
}

const job = (page: Page, name: string) => page.locator(".jobs").getByRole("button", { name, exact: true });

interface Fit {
  readonly sentence: string;
  readonly parts: readonly string[];
  readonly brakes: readonly string[];
  readonly cells: readonly (readonly {
    verdict: string;
    worstBend: number | null;
    clearance: number | null;
  }[])[];
}

function command(): Fit {
  try {
    return JSON.parse(
      execFileSync("node", ["dist/noseroom.mjs", "fit", SHOP, "--json"], { encoding: "utf8" }),
    );
  } catch (ended) {
    return JSON.parse((ended as { stdout: string }).stdout);
  }
}

describe.each([
  ["desktop", DESKTOP],
  ["phone, 390 px", PHONE],
] as const)("a shop of 12 parts and 3 brakes, on a %s", (_name, options) => {
  let page: Page;
  let complaints: string[];
  const fitPanel = () => page.locator('section[aria-labelledby="fit-heading"]');
  const narrow = () => page.locator('section[aria-labelledby="narrow-heading"]');
  beforeAll(async () => {
    page = await tests.visit(options);
    complaints = complaintsOf(page);
    await openAll(page);
  });
  afterAll(() => page?.context().close());

  it("has its table as the command prints it: verdict, least clearance, worst bend, and the sentence that decides", async () => {
    const expected = command();
    await press(page, "Try every part on every brake");
    await until(() => words(fitPanel().locator(".fit-said")), /makes .* of 12|makes all 12/);
    expect(await words(fitPanel().locator(".fit-said strong"))).toBe(expected.sentence);
    const table = fitPanel().getByRole("table", { name: "Every part on every brake" });
    expect(await table.locator("thead th").allTextContents()).toEqual(["part", ...expected.brakes]);
    const rows = await table.locator("tbody tr").evaluateAll((all) =>
      all.map((row) => ({
        part: row.querySelector("th")?.textContent,
        cells: [...row.querySelectorAll("td")].map((cell) => ({
          verdict: (cell as HTMLElement).dataset.verdict,
          said: cell.textContent ?? "",
        })),
      })),
    );
    expect(rows.map(({ part }) => part)).toEqual(expected.parts);
    for (const [i, row] of rows.entries()) {
      for (const [b, cell] of row.cells.entries()) {
        const { verdict: wanted, worstBend, clearance } = expected.cells[i]![b]!;
        expect(cell.verdict).toBe(wanted);
        if (worstBend !== null) expect(cell.said).toContain(`at bend ${worstBend}`);
        if (clearance !== null) expect(cell.said).toContain("to spare");
      }
    }
  });

  it("says so when a job has changed since", async () => {
    await press(page, "Copy this job");
    await until(() => words(fitPanel().locator(".fit-said")), /^A job has changed since: try again\./);
    await page.getByRole("button", { name: "Undo: copy the job" }).click();
  });

  it("gets one narrow brake for several parts, which is each part's brake with one press and not with one undo", async () => {
    // The three that no brake of the shop makes.
    const { cells, parts } = command();
    const unmade = parts.filter((_, i) => cells[i]!.every(({ verdict: v }) => v === "hits" || v === "unfit"));
    expect(unmade.length).toBeGreaterThan(1);
    await job(page, unmade[0]!).click();
    await settled(page);
    for (const name of unmade.slice(1)) await narrow().getByRole("checkbox", { name, exact: true }).check();
    await press(page, `Design a narrow brake for these ${unmade.length} parts`);
    await until(() => words(narrow().locator(".narrow")), /^Clamp bar from .* thick/);
    expect(await words(narrow().locator(".narrow"))).toContain(`It makes ${unmade.join(", ")}.`);
    expect(await verdict(page)).toBe("hits");
    await press(page, `Put these ${unmade.length} parts on it`);
    expect(await verdict(page)).not.toBe("hits");
    for (const name of unmade) {
      await job(page, name).click();
      expect(await verdict(page), name).toMatch(/^(clear|tight)$/);
    }
    // The made brake is one of the shop's brakes now; measured as built it is edited like any other.
    await page.getByLabel("Bar thickness", { exact: true }).waitFor();
    const { text } = await saved(page, () => press(page, "Save as a file"));
    expect(JSON.parse(text).brake.clamp.type).toBe("bar");
    for (let i = 0; i < unmade.length - 1; i++)
      await page.getByRole("button", { name: /^Undo: open/ }).click();
    await page.getByRole("button", { name: "Undo: put the parts on the narrow brake" }).click();
    expect(await verdict(page)).toBe("hits");
  });

  it("takes other safety factors: a stricter one wants a thicker bar, a silly one is told; kept over a reload", async () => {
    const thinnest = async () => {
      const said = await until(() => words(narrow().locator(".narrow")), /^Clamp bar from [\d.]+/);
      return Number(/from ([\d.]+)/.exec(said)?.[1]);
    };
    const one = narrow().getByRole("checkbox", { checked: true });
    while ((await one.count()) > 0) await one.first().uncheck();
    await press(page, "Design a narrow brake for this part");
    const usual = await thinnest();
    await narrow().getByText("Safety factors, forces, give: open to change").click();
    await page.getByLabel("Safety on yield", { exact: true }).fill("2.5");
    await until(() => words(narrow().locator(".narrow")), /^A wish has changed since/);
    await press(page, "Design a narrow brake for this part");
    expect(await thinnest()).toBeGreaterThan(usual);
    const all = await words(narrow());
    expect(all).toMatch(/yield 2\.5/);
    await page.getByLabel("Safety on yield", { exact: true }).fill("none");
    await until(() => words(narrow()), /It should be a number above 0, such as 1\.67\./);
    expect(
      await narrow().getByRole("button", { name: "Design a narrow brake for this part" }).isDisabled(),
    ).toBe(true);
    await page.getByLabel("Safety on yield", { exact: true }).fill("2");
    await page.reload();
    await settled(page);
    expect(await page.getByLabel("Safety on yield", { exact: true }).inputValue()).toBe("2");
  });

  it("complains of nothing, and nothing sticks out of the screen", async () => {
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(wide).toBeLessThanOrEqual(0);
    expect(complaints).toEqual([]);
  });
});

describe("wishes", () => {
  it("are what the engine takes where nothing is wished", () => {
    expect(asWishes({})).toEqual({ safety: {}, vise: {}, give: {} });
    expect(usualWishes()).toMatchObject({ load: 1.25, yield: 1.67, bolt: 1.4, pin: 2 });
  });

  it.each([
    ["", undefined],
    ["2", 2],
    [1.5, 1.5],
    ["0", null],
    ["-1", null],
    ["1e999", null],
    ["two", null],
  ] as const)("read %j as %j", (typed, value) => expect(wishNumber(typed)).toBe(value));
});
