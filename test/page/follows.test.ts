/**
 * The drawing follows the answer: after each edit it shows the moment that fails or is tightest, a press on the answer
 * goes there, and the least clearance is drawn only where it occurs, with both of its ends on metal. What is on metal is
 * judged by the engine's own outlines, read with other functions than those that draw.
 */
import { readdirSync, readFileSync } from "node:fs";
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { check } from "../../src/answer/check.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { stageAt } from "../../src/jobFile/stageAt.ts";
import { stageScene } from "../../src/motion/scene.ts";
import { leastMomentDeg } from "../../src/pictures/leastMoment.ts";
import { distanceToEdge } from "../../src/plane/edge.ts";
import type { Outline } from "../../src/plane/outline.ts";
import { pageTests, press, settled, type, until, words } from "./shop.ts";

const tests = pageTests();
const account = (page: Page) => words(page.locator(".account"));
const leaf = (page: Page) => words(page.locator(".leaf output"));

describe("the drawing", () => {
  it("shows the failing moment after an edit, whatever step and angle were open before", async () => {
    const page = await tests.visit();
    await type(page, "Flat 1", "1/4");
    await settled(page);
    await until(() => page.locator(".answer").getAttribute("data-verdict").then(String), /clear|tight/);
    await press(page, "Step back");
    await page.getByRole("slider", { name: "Leaf" }).focus();
    await page.keyboard.press("Home");
    await until(() => leaf(page), /^0°$/);
    await type(page, "Flat 1", "1/2");
    await settled(page);
    await until(() => account(page), /^Step 2 of 2\..*Stops: at 75/);
    await until(() => leaf(page), /^75/);
  });

  it("goes to that moment at a press on the answer", async () => {
    const page = await tests.visit();
    await press(page, "Step back");
    await until(() => account(page), /^Step 1 of 2/);
    await page
      .locator(".answer")
      .getByRole("button", { name: /^Does not fold/ })
      .click();
    await until(() => account(page), /^Step 2 of 2/);
    await until(() => leaf(page), /^75/);
  });

  it("keeps step and leaf where only a name is changed", async () => {
    const page = await tests.visit();
    await press(page, "Step back");
    await type(page, "Name", "Trough");
    await settled(page);
    expect(await account(page)).toMatch(/^Step 1 of 2/);
  });
});

const distanceTo = ({ x, y }: { x: number; y: number }, outlines: readonly Outline[]) =>
  Math.min(...outlines.flatMap(({ edges }) => edges.map((edge) => distanceToEdge({ x, y }, edge))));

describe("the least clearance of every step of the examples", () => {
  const files = readdirSync("examples").filter((name) => name.endsWith(".json"));
  it.each(files)("%s: both ends on metal at the leaf angle at which it is drawn", (name) => {
    const read = readJob(readFileSync(`examples/${name}`, "utf8"));
    if (!read.ok) throw new Error(name);
    const answer = check(read.job);
    answer.order.forEach((step, i) => {
      if (step.clearancePoints === null || step.clearance === null) return;
      const stage = stageAt(read.job, answer, i);
      const scene = (deg: number) => stageScene(stage, (deg * Math.PI) / 180);
      const deg = leastMomentDeg(scene, step.reached, step);
      expect(deg).toBeDefined();
      const { sheet, clamp, bed, leaf: swung, frame } = scene(deg!);
      const [part, other] = step.clearancePoints.map(([x, y]) => ({ x, y })) as [
        { x: number; y: number },
        { x: number; y: number },
      ];
      expect(distanceTo(part, [sheet])).toBeLessThan(0.1);
      expect(distanceTo(other, [...clamp, bed, swung, ...frame, sheet])).toBeLessThan(0.1);
      expect(Math.hypot(part.x - other.x, part.y - other.y)).toBeCloseTo(step.clearance, 6);
    });
  });
});
