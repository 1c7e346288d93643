/**
 * The whole story of a person at the brake, on a desktop and on a phone: type the trough in fractions, see that it
 * does not fold, change the clamp, see that it does, step, drag, undo, come back, carry the job to another browser.
 * Expected figures come from the command on the same file; the sizes traced are those that were drawn.
 */
import { execFileSync } from "node:child_process";
import { mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { DESKTOP, PHONE } from "./browser.ts";
import {
  complaintsOf,
  pageTests,
  press,
  saved,
  sentence,
  settled,
  type,
  until,
  verdict,
  words,
} from "./shop.ts";

const tests = pageTests();

/** Runs the command on a job's text. */
function command(text: string): {
  verdict: string;
  order: { bend: number; clamped: string; reached: number }[];
} {
  const path = join(mkdtempSync(join(tmpdir(), "noseroom-")), "job.json");
  writeFileSync(path, text);
  try {
    return JSON.parse(
      execFileSync("node", ["dist/noseroom.mjs", "check", path, "--json"], { encoding: "utf8" }),
    );
  } catch (ended) {
    // Exit status 1 says that the part hits; the answer stands on stdout all the same.
    return JSON.parse((ended as { stdout: string }).stdout);
  }
}

/** The trough of .032 in sheet, typed from a plain angle as a person would. */
async function enterTrough(page: Page): Promise<void> {
  await press(page, "New job");
  await type(page, "Name", "My trough");
  await press(page, "Angle");
  await press(page, "Add a bend");
  await type(page, "Thickness", ".032");
  await type(page, "Inside radius", "1/32");
  await type(page, "Flat 1", "1/2");
  await type(page, "Flat 2", "3/8");
  await type(page, "Flat 3", "1/2");
}

/** Drags the leaf by the flat that lies on it, round the pivot, as far as it goes. */
async function dragLeaf(page: Page): Promise<void> {
  const slider = page.getByRole("slider", { name: "Leaf" });
  await slider.focus();
  await page.keyboard.press("Home");
  await until(() => words(page.locator(".leaf output")), /^0°$/);
  const label = await page.getByRole("button", { name: /^Flat 2 is / }).boundingBox();
  if (label === null) throw new Error("the drawing is not open");
  // The dimension stands off its flat, above or below while the leaf is at rest; the pointer tells where it takes hold.
  const canvas = page.locator(".canvas-box canvas").nth(1);
  const x = label.x + label.width / 2;
  const middle = label.y + label.height / 2;
  let start = { x, y: middle };
  for (const off of [20, -20, 46, -46, 72]) {
    start = { x, y: middle + off };
    await page.mouse.move(start.x, start.y);
    if ((await canvas.evaluate((element) => element.style.cursor)) === "grab") break;
  }
  await page.mouse.down();
  for (let i = 1; i <= 12; i++) {
    await page.mouse.move(start.x - i * 22, start.y - 26 * i + (i * i) / 2);
  }
  await page.mouse.up();
}

describe.each([
  ["desktop", DESKTOP],
  ["phone, 390 px", PHONE],
] as const)("the page on a %s", (name, options) => {
  let page: Page;
  let complaints: string[];
  beforeAll(async () => {
    page = await tests.visit(options);
    complaints = complaintsOf(page);
  });
  afterAll(() => page?.context().close());

  it("opens a worked example with three sentences and an answer", async () => {
    expect(await words(page.locator(".welcome p"))).toMatch(/\. .*\. .*\.$/s);
    expect(await sentence(page)).toMatch(/^Does not fold: at \d/);
    await press(page, "Understood");
    expect(await page.locator(".welcome").count()).toBe(0);
  });

  it("reads fractions as they are typed, echoes them, and says that the trough does not fold", async () => {
    await enterTrough(page);
    await settled(page);
    expect(await words(page.locator(".strip"))).toContain("3/8 in = 9.53 mm");
    expect(await sentence(page)).toMatch(/^Does not fold: at 7\d(\.\d)?° the end of flat 1 meets the finger/);
  });

  it("says what would let it fold, does it at a press, and takes it back", async () => {
    await page.locator('.answer[data-ways="found"]').waitFor();
    expect(await sentence(page)).toMatch(/^Does not fold: .*\. .*It then folds with .*to spare.*\.$/);
    await page
      .getByRole("button", { name: /^Do it: / })
      .first()
      .click();
    expect(await sentence(page)).toMatch(/^Folds/);
    await page.getByRole("button", { name: /^Undo: carry out/ }).click();
    expect(await sentence(page)).toMatch(/^Does not fold/);
  });

  it("says that it folds once the clamp is a bar", async () => {
    await page.getByRole("radio", { name: "Clamp bar" }).check();
    expect(await sentence(page)).toMatch(/^Folds\. Bend \d first, flats? \d/);
    expect(await verdict(page)).toBe("clear");
  });

  it("steps through the order, each step told in words", async () => {
    if (name !== "desktop") await press(page, "Open the drawing");
    const account = page.locator(".account");
    while (await page.getByRole("button", { name: "Step back" }).isEnabled()) await press(page, "Step back");
    await until(() => words(account), /^Step 1 of 2\. Bend \d, flats? \d/);
    await press(page, "Step forward");
    await until(() => words(account), /^Step 2 of 2\..* from the clamp bar\.$/);
    expect(await page.getByRole("button", { name: "Step forward" }).isDisabled()).toBe(true);
  });

  it("undoes the change of clamp, and a dragged leaf stops where metal meets metal", async () => {
    await page.getByRole("button", { name: /^Undo/ }).click();
    expect(await sentence(page)).toMatch(/^Does not fold/);
    await until(() => words(page.locator(".account")), /^Step 2 of 2\..*Stops/);
    await dragLeaf(page);
    const where = await until(() => words(page.locator(".where")), /^Leaf stopped at 7\d/);
    expect(where).toContain("the end of flat 1 meets the finger");
    expect(where).toMatch(/Pulled to \d.*hatched metal would have to give/);
    await page.getByRole("button", { name: /^Redo/ }).click();
    expect(await sentence(page)).toMatch(/^Folds/);
  });

  it("keeps everything over a reload", async () => {
    await page.reload();
    expect(await sentence(page)).toMatch(/^Folds/);
    expect(await page.getByLabel("Name", { exact: true }).inputValue()).toBe("My trough");
    expect(await page.getByLabel("Flat 2", { exact: true }).inputValue()).toBe("3/8");
    expect(await page.locator(".jobs li").count()).toBe(2);
  });

  it("saves a file that the command reads to the same answer, and opens it in a fresh profile", async () => {
    const file = await saved(page, () => press(page, "Save as a file"));
    expect(file.name).toBe("my-trough.json");
    const answer = command(file.text);
    expect(answer.verdict).toBe("clear");
    const shown = await page.locator(".steps .what strong").allTextContents();
    expect(shown.map((words) => Number(/Bend (\d+)/.exec(words)?.[1]))).toEqual(
      answer.order.map((step) => step.bend),
    );

    const fresh = await tests.visit(options);
    await fresh
      .getByLabel("Open a file", { exact: true })
      .setInputFiles({ name: file.name, mimeType: "application/json", buffer: Buffer.from(file.text) });
    await until(() => fresh.getByLabel("Name", { exact: true }).inputValue(), /^My trough$/);
    expect(await sentence(fresh)).toBe(await sentence(page));
    await fresh.context().close();
  });

  it("carries the job in a link", async () => {
    await press(page, "Make a link");
    const link = await page.locator(".link input").inputValue();
    expect(link).toContain("#job=1.");
    const other = await tests.visit(options);
    await other.goto(link);
    await until(() => other.getByLabel("Name", { exact: true }).inputValue(), /^My trough/);
    expect(await sentence(other)).toBe(await sentence(page));
    await other.context().close();
  });

  it("changes a dimension in place on the drawing", async () => {
    await settled(page);
    if (name !== "desktop") await press(page, "Open the drawing");
    await page.getByRole("button", { name: /^Flat 2 is 3\/8 in/ }).click();
    const field = page.getByLabel(/^Flat 2, on the drawing/);
    await field.fill("1/8");
    await field.press("Enter");
    expect(await page.getByLabel("Flat 2", { exact: true }).inputValue()).toBe("1/8");
    expect(await verdict(page)).not.toBe("clear");
    await page.getByRole("button", { name: /^Undo/ }).click();
    expect(await verdict(page)).toBe("clear");
  });

  it("complains of nothing in the console, and nothing sticks out of the screen", async () => {
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(wide).toBeLessThanOrEqual(0);
    expect(complaints).toEqual([]);
  });
});
