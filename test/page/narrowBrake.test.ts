/**
 * The story of a part that does not fold, to the end: the trough fails, a clamp bar is offered and taken with one press
 * and taken back with one, and the narrow brake that carries such a bar is designed, read, saved, and used.
 * Printed pages are read back by an independent PDF library.
 */
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readPdf } from "../pictures/readPdf.ts";
import { DESKTOP, PHONE } from "./browser.ts";
import {
  complaintsOf,
  pageTests,
  press,
  saved,
  sentence,
  until,
  verdict,
  watchPrinting,
  words,
} from "./shop.ts";

const tests = pageTests();

describe.each([
  ["desktop", DESKTOP],
  ["phone, 390 px", PHONE],
] as const)("the trough that does not fold, on a %s", (_name, options) => {
  let page: Page;
  let complaints: string[];
  const panel = () => page.locator('section[aria-labelledby="narrow-heading"]');
  beforeAll(async () => {
    page = await tests.visit(options);
    complaints = complaintsOf(page);
  });
  afterAll(() => page?.context().close());

  it("folds once the clamp bar is taken as the way out, and one undo takes it back", async () => {
    expect(await sentence(page)).toMatch(/^Does not fold/);
    await page.locator('.answer[data-ways="found"]').waitFor();
    const bar = page.getByRole("button", { name: /^Do it: .*clamp bar/i }).first();
    await bar.click();
    expect(await verdict(page)).toBe("clear");
    await page.getByRole("button", { name: /^Undo: carry out/ }).click();
    expect(await verdict(page)).toBe("hits");
    await page.getByRole("button", { name: /^Redo: carry out/ }).click();
    expect(await verdict(page)).toBe("clear");
  });

  it("gets a narrow brake designed: window, lists, order of making, limits and cautions", async () => {
    await press(page, "Design a narrow brake for this part");
    // A bar of 1/4 in makes this trough: common practice, no source.
    const said = await until(
      () => words(panel().locator(".narrow")),
      /^Clamp bar from .* thick: .*1\/4 in.*Weight about/,
    );
    const [, thinnest, thickest] = /from ([\d.]+) to ([\d.]+) in thick/.exec(said) ?? [];
    expect(Number(thinnest)).toBeLessThan(0.25);
    expect(Number(thickest)).toBeGreaterThan(0.25);
    const rows = panel().getByRole("table", { name: "Cut list" }).locator("tbody tr");
    expect(await rows.count()).toBeGreaterThan(15);
    expect(await words(panel().getByRole("table", { name: "Cut list" }))).toMatch(
      /clamp bar.*holder.*bed.*leaf/s,
    );
    const all = await words(panel());
    expect(all).toMatch(/Order of making.*Saw all pieces.*Where this stops.*no engineer.s approval/s);
    expect(all).toMatch(/Sheet metal cuts.*crush/s);
    await until(
      () =>
        panel()
          .locator("img.plan")
          .first()
          .evaluate((image) => `${(image as HTMLImageElement).naturalWidth}`),
      /^[1-9]\d*$/,
    );
  });

  it("draws each piece small, for a screen on the bench", async () => {
    const pieces = panel().locator("details").filter({ hasText: "Each piece" });
    await pieces.locator("summary").click();
    const drawn = pieces.locator("img.plan");
    await drawn.nth(10).waitFor();
    // Letters of 3 mm in a drawing 109 mm wide: read at arm's length from 9 pixels on, and nothing wider than the screen.
    const width = await drawn.first().evaluate((image) => image.clientWidth);
    expect((width * 3) / 109).toBeGreaterThan(9);
    expect(width).toBeLessThanOrEqual(await page.evaluate(() => innerWidth));
    await pieces.locator("summary").click();
  });

  it("saves the whole brake as STL and the picture as SVG in true millimetres", async () => {
    const stl = await saved(page, () => press(page, "Whole brake as STL"));
    expect(stl.name).toBe("cable-trough-narrow-brake.stl");
    expect(stl.text.match(/^endsolid /gmu)!.length).toBeGreaterThan(30);
    const svg = await saved(page, () => press(page, "Picture as SVG"));
    expect(svg.name).toBe("cable-trough-narrow-brake.svg");
    expect(svg.text).toMatch(/<svg[^>]+width="[\d.]+mm"/);
    expect(svg.text).toContain("Shop-made narrow brake");
  });

  it("prints its plans, alone and on the shop's paper", async () => {
    await watchPrinting(page);
    await press(page, "Print the plans");
    await page.locator('body[data-print-box="open"]').waitFor();
    const pages = await readPdf(new Uint8Array(await page.pdf({ preferCSSPageSize: true })));
    expect(pages.length).toBe(await page.locator(".shop-sheet .paper").count());
    for (const { widthMm, heightMm } of pages) {
      // Letter, ANSI/ASME Y14.1 size A: 8 1/2 × 11 in, upright or lying.
      expect(Math.min(widthMm, heightMm)).toBeCloseTo(215.9, 0);
      expect(Math.max(widthMm, heightMm)).toBeCloseTo(279.4, 0);
    }
    const all = pages.flatMap((one) => one.words.map((line) => line.words)).join(" ");
    expect(all).toMatch(/clamp bar/);
    await page.evaluate(() => dispatchEvent(new Event("afterprint")));
  });

  it("takes the part on it, and back; a changed part asks for a new design", async () => {
    await press(page, "Put the part on it");
    expect(await sentence(page)).toMatch(/^Folds/);
    await page.getByRole("button", { name: /^Undo: put the part on the narrow brake/ }).click();
    expect(await verdict(page)).toBe("clear");
    await page.getByLabel("Flat 2", { exact: true }).fill("7/16");
    await until(() => words(panel().locator(".narrow")), /^The part has changed since/);
    expect(await panel().getByRole("button", { name: "Whole brake as STL" }).count()).toBe(0);
  });

  it("complains of nothing in the console, and nothing sticks out of the screen", async () => {
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(wide).toBeLessThanOrEqual(0);
    expect(complaints).toEqual([]);
  });
});
