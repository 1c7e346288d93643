/**
 * From 320 points (a screen at 400 %, WCAG 1.4.10) to 2560, by day and by night: axe-core finds nothing, nothing sticks out,
 * with every fold open, a job of eight bends and the answer's ways out in sight.
 */
import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { DESKTOP } from "./browser.ts";
import { pageTests, settled } from "./shop.ts";

const AXE = readFileSync(createRequire(import.meta.url).resolve("axe-core/axe.min.js"), "utf8");
const tests = pageTests();

async function unfold(page: Page): Promise<void> {
  await page.evaluate(() => {
    for (const fold of Array.from(document.querySelectorAll("details"))) fold.open = true;
  });
  const open = page.getByRole("button", { name: "Open the drawing" });
  if (await open.isVisible()) await open.click();
}

describe.each([
  ["the first visit", null],
  ["eight bends", "examples/eight-bends.json"],
] as const)("%s", (_name, example) => {
  let page: Page;
  beforeAll(async () => {
    page = await tests.visit({ ...DESKTOP, reducedMotion: "reduce" });
    await page.evaluate(AXE);
    if (example === null) await page.locator('.answer[data-ways="found"]').waitFor();
    else
      await page.getByLabel("Open a file", { exact: true }).setInputFiles({
        name: "job.json",
        mimeType: "application/json",
        buffer: readFileSync(example),
      });
    await settled(page);
  });
  afterAll(() => page?.context().close());

  it.each([320, 390, 768, 1440, 2560])("has no fault at %d points, light and dark", async (width) => {
    await page.setViewportSize({ width, height: 900 });
    await unfold(page);
    const out = await page.evaluate(() =>
      Array.from(document.querySelectorAll("body *"))
        .filter((one) => {
          const { right, width: wide } = one.getBoundingClientRect();
          const hidden = one.closest("svg, .canvas-box, .wide-table, [hidden]") !== null;
          return wide > 0 && !hidden && right > innerWidth + 1 && getComputedStyle(one).position !== "fixed";
        })
        .map((one) => `${one.tagName} ${one.className}`),
    );
    const scrolls = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(scrolls, out.slice(0, 5).join(", ")).toBeLessThanOrEqual(0);
    for (const colorScheme of ["light", "dark"] as const) {
      await page.emulateMedia({ colorScheme });
      const found = await page.evaluate(async () => {
        const { axe } = window as unknown as {
          axe: { run: (options: object) => Promise<{ violations: Finding[] }> };
        };
        return (await axe.run({ resultTypes: ["violations"] })).violations;
      });
      const told = found.map((f) => `${f.id}: ${f.nodes.map((n) => n.target.join(" ")).join(" | ")}`);
      expect(told, colorScheme).toEqual([]);
    }
  });
});

interface Finding {
  readonly id: string;
  readonly nodes: readonly { readonly target: readonly unknown[] }[];
}
