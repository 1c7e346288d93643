/**
 * A sample in the hand becomes a shop sheet on paper, by keyboard alone: readings outside and inside, how sure each is,
 * the sum checked against an overall size, the doubtful reading named, the sheet printed. The printed pages are read
 * back by pdfjs-dist, which knows nothing of the page. Paper size: ANSI/ASME Y14.1 size A (Letter, 8 1/2 × 11 in).
 */
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readPdf } from "../pictures/readPdf.ts";
import { DESKTOP, PHONE } from "./browser.ts";
import { complaintsOf, pageTests, sentence, settled, until, verdict, watchPrinting, words } from "./shop.ts";

const tests = pageTests();

/** What is under the keys: the label of a box or choice, or the words of a button. */
const underKeys = (page: Page) =>
  page.evaluate(() => {
    const at = document.activeElement;
    if (at instanceof HTMLInputElement || at instanceof HTMLSelectElement) {
      const group =
        at.type === "radio" ? `${at.closest("fieldset")?.querySelector("legend")?.textContent}: ` : "";
      return `${group}${at.labels?.[0]?.textContent?.trim()}`;
    }
    return at?.textContent?.trim() ?? "";
  });

/** Tab, as often as it takes. */
async function tabTo(page: Page, name: string, key: "Tab" | "Shift+Tab" = "Tab"): Promise<void> {
  for (let presses = 0; presses < 120; presses++) {
    if ((await underKeys(page)) === name) return;
    await page.keyboard.press(key);
  }
  throw new Error(`The keys don't reach “${name}”.`);
}

async function typeInto(page: Page, name: string, text: string): Promise<void> {
  await tabTo(page, name);
  await page.keyboard.press("Control+a");
  await page.keyboard.type(text);
}

describe.each([
  ["desktop", DESKTOP],
  ["phone, 390 px", PHONE],
] as const)("a sample copied by keyboard alone, on a %s", (_name, options) => {
  let page: Page;
  let complaints: string[];
  const doubted = () => words(page.locator(".doubted"));
  beforeAll(async () => {
    page = await tests.visit(options);
    complaints = complaintsOf(page);
    await watchPrinting(page);
  });
  afterAll(() => page?.context().close());

  it("takes readings outside and inside, and turns inside ones into the job's own", async () => {
    await tabTo(page, "Read a sample");
    await page.keyboard.press("Enter");
    await typeInto(page, "Reading of flat 1", "1/2");
    await typeInto(page, "Reading of flat 2", ".581");
    await tabTo(page, "Flat 2 read: Outside");
    await page.keyboard.press("ArrowRight");
    await settled(page);
    // Over the outside a web of 0.581 in between the faces is two thicknesses of 0.032 in more.
    expect(await page.getByLabel("Flat 2", { exact: true }).inputValue()).toBe("0.645");
    expect(await page.getByLabel("Reading of flat 2", { exact: true }).inputValue()).toBe(".581");
    expect(await verdict(page)).toBe("clear");
    await until(doubted, /^It folds whatever the readings are within their doubts\.$/);
  });

  it("names the doubtful reading that could change the answer, and the answer carries it", async () => {
    await typeInto(page, "How sure, flat 2", "3/64");
    await until(
      doubted,
      /^Tight by its readings: .*flat 2 3\/64 in shorter.* than read, bend \d does not fold\. Measure flat 2 again: it alone decides\.$/,
    );
    expect(await verdict(page)).toBe("tight");
    expect(await sentence(page)).toMatch(
      /^Folds as read, but with .*bend \d does not fold\. .*Measure flat 2 again: it alone decides\.$/,
    );
  });

  it("checks the sum against an overall size, along a flat or square to it", async () => {
    const sum = () => words(page.locator(".sum"));
    await typeInto(page, "Overall size", ".65");
    await tabTo(page, "Overall size measured");
    // The list goes: along flat 1, square to flat 1, along flat 2.
    await page.keyboard.press("ArrowDown");
    await page.keyboard.press("ArrowDown");
    await until(
      sum,
      /^The flats make 0\.645 in overall; you read 0\.650 in, 0\.005 in more\. .*it adds up\.$/,
    );
    await tabTo(page, "Overall size", "Shift+Tab");
    await typeInto(page, "Overall size", ".75");
    await until(sum, /0\.105 in more\. The doubts explain only 0\.063 in: measure again/);
    await typeInto(page, "Overall size", "0.65");
    await until(sum, /it adds up\.$/);
  });

  it("undoes the readings one by one, and keeps them over a reload", async () => {
    const sure = page.getByLabel("How sure, flat 2", { exact: true });
    let undone = 0;
    for (; undone < 20 && (await sure.inputValue()) !== ""; undone++) await page.keyboard.press("Control+z");
    expect(await sure.inputValue()).toBe("");
    await until(doubted, /^It folds whatever/);
    for (let i = 0; i < undone; i++) await page.keyboard.press("Control+Shift+z");
    expect(await sure.inputValue()).toBe("3/64");
    await page.reload();
    await settled(page);
    await watchPrinting(page);
    expect(await page.getByLabel("Reading of flat 2", { exact: true }).inputValue()).toBe(".581");
    expect(await sure.inputValue()).toBe("3/64");
    await until(doubted, /Measure flat 2 again/);
  });

  it("prints the shop sheet, and nothing but it, on Letter paper", async () => {
    await tabTo(page, "Print the shop sheet");
    await page.keyboard.press("Enter");
    await page.locator('body[data-print-box="open"]').waitFor();
    await page.emulateMedia({ media: "print" });
    expect(await page.locator("#worksheet").isVisible()).toBe(false);
    expect(await page.locator(".shop-sheet .paper").first().isVisible()).toBe(true);
    const pages = await readPdf(new Uint8Array(await page.pdf({ preferCSSPageSize: true })));
    expect(pages.length).toBe(await page.locator(".shop-sheet .paper").count());
    for (const { widthMm, heightMm } of pages) {
      expect(widthMm).toBeCloseTo(215.9, 0);
      expect(heightMm).toBeCloseTo(279.4, 0);
    }
    const printed = pages.flatMap((one) => one.words);
    const all = printed
      .map((one) => one.words)
      .join(" ")
      .replace(/\s+/gu, " ");
    for (const said of [
      /Cable trough/,
      /Measure flat 2 again/,
      /Set-up/,
      /Blank, marked face up/,
      /Sheet edges cut|sheet edges cut/i,
    ])
      expect(all).toMatch(said);
    // Nothing runs over the printer's margin of 10 mm.
    for (const { words: line, left, right } of printed) {
      expect(left, line).toBeGreaterThan(9);
      expect(right, line).toBeLessThan(215.9 - 9);
    }
    await page.emulateMedia({ media: "screen" });
  });

  it("is the card again once it is printed", async () => {
    await page.evaluate(() => dispatchEvent(new Event("afterprint")));
    await page.emulateMedia({ media: "print" });
    expect(await page.locator("#worksheet .answer .said").isVisible()).toBe(true);
    expect(await page.locator(".shop-sheet").isVisible()).toBe(false);
    await page.emulateMedia({ media: "screen" });
  });

  it("is put away, the part stays; nothing sticks out and nothing complains", async () => {
    await tabTo(page, "Done with the sample");
    await page.keyboard.press("Enter");
    expect(await page.locator(".readings").count()).toBe(0);
    expect(await page.getByLabel("Flat 2", { exact: true }).inputValue()).toBe("0.645");
    expect(await verdict(page)).toBe("clear");
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(wide).toBeLessThanOrEqual(0);
    expect(complaints).toEqual([]);
  });
});
