/**
 * axe-core (WCAG 2.0 to 2.2, levels A and AA, and its good practices) finds nothing on any state of the page, in
 * light and dark, on desktop and phone. The states are those that a person can bring about.
 */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { DESKTOP, PHONE } from "./browser.ts";
import { photoOfFinger } from "./photo.ts";
import { pageTests, press, settled, until, words } from "./shop.ts";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");

interface Finding {
  readonly id: string;
  readonly nodes: readonly { readonly target: readonly unknown[]; readonly failureSummary?: string }[];
}

const tests = pageTests();

async function findings(page: Page): Promise<string[]> {
  const found = await page.evaluate(async () => {
    const { axe } = window as unknown as {
      axe: { run: (options: object) => Promise<{ violations: Finding[] }> };
    };
    return (await axe.run({ resultTypes: ["violations"] })).violations;
  });
  return found.map(
    (f) => `${f.id}: ${f.nodes.map((n) => `${n.target.join(" ")} ${n.failureSummary ?? ""}`).join(" | ")}`,
  );
}

const flat2 = (page: Page) => page.getByRole("button", { name: /^Flat 2 is / });

/** On a phone the drawing starts small, without figures to press, and with a button that opens it. */
async function drawingOpen(page: Page): Promise<void> {
  const open = page.getByRole("button", { name: "Open the drawing" });
  await open.or(flat2(page)).first().waitFor();
  if (await open.isVisible()) await open.click();
}

/** Ways to bring the page into each of its states, one after another on one page. */
const STATES: readonly (readonly [string, (page: Page) => Promise<void>])[] = [
  ["first visit", async () => {}],
  [
    "everything unfolded",
    async (page) => {
      await page.evaluate(() => {
        for (const fold of Array.from(document.querySelectorAll("details"))) fold.open = true;
      });
      await drawingOpen(page);
    },
  ],
  [
    "leaf pulled past a contact",
    async (page) => {
      await page.getByRole("slider", { name: "Leaf" }).focus();
      await page.keyboard.press("End");
      await until(() => words(page.locator(".where")), /hatched metal/);
    },
  ],
  [
    "a dimension open on the drawing",
    async (page) => {
      await drawingOpen(page);
      await flat2(page).click();
      await page.getByLabel(/^Flat 2, on the drawing/).waitFor();
    },
  ],
  [
    "a sample read, a doubt that can't be read, a narrow brake and the chart drawn",
    async (page) => {
      await press(page, "Read a sample");
      await page.getByLabel("Overall size", { exact: true }).fill("1/2");
      await press(page, "Design a narrow brake for this part");
      await page.getByRole("table", { name: "Cut list" }).waitFor();
      await press(page, "Drawing large enough to read");
      await press(page, "Draw the chart");
      await page.getByRole("table", { name: "Longest return flange" }).waitFor();
      await page.getByLabel("How sure, flat 1", { exact: true }).fill("not much");
      await until(() => words(page.locator(".answer")), /to put right/);
    },
  ],
  [
    "readings that leave the answer in doubt",
    async (page) => {
      await page.getByLabel("How sure, flat 1", { exact: true }).fill("1/64");
      await page.locator(".doubted").waitFor();
      await press(page, "Done with the sample");
    },
  ],
  [
    "a figure that can't be read",
    async (page) => {
      await page.getByLabel("Flat 1", { exact: true }).fill("about 3");
      await until(() => words(page.locator(".answer")), /to put right/);
    },
  ],
  [
    "own metal, own order, brakes compared",
    async (page) => {
      await page.getByLabel("Flat 1", { exact: true }).fill("1/2");
      await settled(page);
      await page.getByLabel("Metal", { exact: true }).selectOption("own figures");
      await settled(page);
      await press(page, "Bend 2 earlier");
      await settled(page);
      await press(page, "This part on these brakes");
      await page.locator(".still").nth(1).waitFor();
    },
  ],
  [
    "a bend in two strokes, grain at an angle, cut-outs with relief holes and one that can't be",
    async (page) => {
      await press(page, "Make bend 1 in two strokes");
      await page.getByRole("radio", { name: "At an angle" }).check();
      await press(page, "Add a cut-out");
      await page.getByLabel("Cut-out 1, across the bends to").fill("9/16");
      await page.getByRole("table", { name: /^Relief holes/ }).waitFor();
      await press(page, "Add a cut-out");
      await page.locator(".cut-outs .problem").waitFor();
    },
  ],
  [
    "all parts on all brakes, wishes for a brake of two parts, one that can't be read",
    async (page) => {
      await press(page, "Take cut-out 2 away");
      await press(page, "Copy this job");
      await settled(page);
      await press(page, "Try every part on every brake");
      await page.getByRole("table", { name: "Every part on every brake" }).waitFor();
      await page.getByLabel("Safety of pins", { exact: true }).fill("none");
      await page.getByText("It should be a number above 0, such as 2.").waitFor();
    },
  ],
  [
    "a job changed in another tab, a file handed over",
    async (page) => {
      await press(page, "Save as a file");
      await page.locator(".handed summary").click();
      const other = await page.context().newPage();
      await other.goto(tests.address);
      await settled(other);
      await other.getByLabel("Name", { exact: true }).fill("Other");
      await page.getByRole("button", { name: "Keep both" }).waitFor();
      await other.close();
    },
  ],
  [
    "a clamp of own profile, tracing a photo",
    async (page) => {
      await page.getByRole("radio", { name: "Own profile" }).check();
      const photo = await photoOfFinger(page);
      await page.locator('input[type="file"][accept="image/*"]').setInputFiles({
        name: "finger.png",
        mimeType: "image/png",
        buffer: photo.png,
      });
      await page.locator(".photo svg").waitFor();
      await press(page, "Set a mark in the middle");
      await page.locator(".trace-mark").waitFor();
    },
  ],
  [
    "a file that could not be read",
    async (page) => {
      await page.getByLabel("Open a file", { exact: true }).setInputFiles({
        name: "cut.json",
        mimeType: "application/json",
        buffer: Buffer.from('{"noseroom": 1, "par'),
      });
      await page.locator(".notice").first().waitFor();
    },
  ],
];

describe.each([
  ["desktop", DESKTOP],
  ["phone", PHONE],
] as const)("axe-core on a %s", (_name, options) => {
  let page: Page;
  beforeAll(async () => {
    page = await tests.visit({ ...options, reducedMotion: "reduce" });
    await page.evaluate(AXE);
  });
  afterAll(() => page?.context().close());

  it.each(STATES)("finds nothing in light and dark: %s", async (_state, bring) => {
    await bring(page);
    await settled(page);
    for (const colorScheme of ["light", "dark"] as const) {
      await page.emulateMedia({ colorScheme });
      expect(await findings(page), colorScheme).toEqual([]);
    }
  });
});
