/**
 * A box and the ends of a channel put together on the page with the mouse and the keys alone: walls and lips added at their
 * edges, sizes in the shop's unit, fingers owned, undone and kept; no rule of axe broken at any width, by day and by night.
 */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";
import { expect, it } from "vitest";
import { DESKTOP } from "./browser.ts";
import { complaintsOf, pageTests, press, saved, sentence, settled, type, until, words } from "./shop.ts";

const tests = pageTests();
const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const WIDTHS = [320, 390, 768, 1440, 2560];

async function partOf(page: Page) {
  const { text } = await saved(page, () => press(page, "Save as a file"));
  return JSON.parse(text) as { part: Record<string, unknown>; brake: { clamp: Record<string, unknown> } };
}

const title = (page: Page) => words(page.locator("#blank-heading + p"));

it("builds a box up wall by wall, lip by lip, takes it back and keeps it", async () => {
  const page = await tests.visit();
  const complaints = complaintsOf(page);
  await press(page, "New box");
  await page.locator(".jobs li.on", { hasText: "New box" }).waitFor();
  await settled(page);
  await type(page, "Width", "4 1/2");
  await type(page, "Left wall", "5/8");
  await press(page, "+ lip on the left wall");
  await press(page, "Take the back wall away");
  await press(page, "Turn lip 1 of the left wall in; it turns out");
  await page.getByRole("radio", { name: "Walls meet" }).check();
  const { part, brake } = await partOf(page);
  expect(part.flats).toBeUndefined();
  expect(part.box).toEqual({
    width: "4 1/2",
    depth: 3,
    walls: { left: { height: "5/8", lips: [{ size: "3/8", turn: "in" }] }, right: "3/4", front: "3/4" },
    corners: "meet",
  });
  expect(brake.clamp.fingers).toHaveLength(7);
  await page.getByText("4 1/2 in = 114.30 mm").waitFor();
  await page.keyboard.press("Control+z");
  await page.getByRole("radio", { name: "Open", exact: true, checked: true }).waitFor();
  await page.reload();
  await settled(page);
  expect(await page.getByLabel("Left wall", { exact: true }).inputValue()).toBe("5/8");
  expect(complaints).toEqual([]);
});

it("closes a channel at an edge, and says by its name which figure can't be read", async () => {
  const page = await tests.visit();
  await press(page, "Give it ends");
  await until(() => title(page), /^Blank of Cable trough/);
  const before = await title(page);
  await press(page, "+ end at the start of flat 2");
  await until(() => title(page), /^(?!$)/);
  await expect.poll(() => title(page)).not.toBe(before);
  const { part } = await partOf(page);
  expect(part.ends).toEqual([{ flat: 2, at: "start", size: "3/4", angle: 90, turn: "up" }]);
  await type(page, "Start of flat 2", "about an inch");
  await until(() => words(page.locator(".answer .problems")), /^End 1: it should be/);
  await type(page, "Start of flat 2", "1/2");
  expect(await sentence(page)).toMatch(/fold/);
});

it("breaks no rule of axe from a small phone to a wide screen, by day and by night", async () => {
  for (const colorScheme of ["light", "dark"] as const) {
    const page = await tests.visit({ ...DESKTOP, colorScheme });
    for (const example of ["lens-box-lips", "cable-trough-ends", "corner-bracket"]) {
      await page.getByLabel("Worked examples").selectOption(example);
      await press(page, "Open the example");
      await page.locator(".whole-stage .edge").waitFor();
      await settled(page);
      await page.evaluate(() => {
        for (const fold of Array.from(document.querySelectorAll("details"))) fold.open = true;
      });
      for (const width of WIDTHS) {
        await page.setViewportSize({ width, height: 900 });
        const open = page.getByRole("button", { name: "Open the drawing" });
        if (await open.isVisible()) await open.click();
        await page.evaluate(AXE);
        const found = await page.evaluate(async () => {
          const { axe } = window as unknown as {
            axe: {
              run: (how: object) => Promise<{ violations: { id: string; nodes: { target: string[] }[] }[] }>;
            };
          };
          const { violations } = await axe.run({ resultTypes: ["violations"] });
          return violations.map(
            ({ id, nodes }) => `${id}: ${nodes.map((n) => n.target.join(" ")).join(" | ")}`,
          );
        });
        const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
        expect([example, colorScheme, width, found, Math.max(wide, 0)]).toEqual([
          example,
          colorScheme,
          width,
          [],
          0,
        ]);
      }
    }
  }
});
