/**
 * A bend made in two strokes, on the page: begun in one step, finished in a later one, moved, typed, undone, and the same
 * answer as the engine gives to the saved file. Edits of the order also without a browser, on random orders.
 */
import fc from "fast-check";
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { check } from "../../src/answer/check.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import type { OrderFile } from "../../web/store/jobFile.ts";
import { inOneStroke, inTwoStrokes, movedStep, otherEnd } from "../../web/store/orderEdits.ts";
import { DESKTOP, PHONE } from "./browser.ts";
import { complaintsOf, pageTests, press, saved, settled, type, until, words } from "./shop.ts";

describe("an order", () => {
  it("has every bend finished once, begun before at most once, with the same end clamped, whatever is done to it", () => {
    const edit = fc.tuple(fc.constantFrom("move", "end", "two", "one"), fc.nat(9), fc.nat(9));
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 5 }), fc.array(edit, { maxLength: 20 }), (bends, edits) => {
        let order: readonly OrderFile[] = Array.from({ length: bends }, (_, i) => ({
          bend: i + 1,
          clamped: "start",
        }));
        for (const [what, one, other] of edits) {
          const at = one % order.length;
          const step = order[at]!;
          const twice = order.filter(({ bend }) => bend === step.bend).length > 1;
          if (what === "move") order = movedStep(order, at, other % order.length);
          if (what === "end") order = otherEnd(order, step.bend);
          if (what === "two" && !twice) order = inTwoStrokes(order, at, 40);
          if (what === "one" && step.to !== undefined) order = inOneStroke(order, at);
          for (let bend = 1; bend <= bends; bend++) {
            const strokes = order.filter((each) => each.bend === bend);
            expect(strokes.map(({ to }) => to)).toEqual(strokes.length === 2 ? [40, undefined] : [undefined]);
            expect(new Set(strokes.map(({ clamped }) => clamped)).size).toBe(1);
          }
        }
      }),
      { seed: 11, numRuns: 300 },
    );
  });
});

const tests = pageTests();

describe.each([
  ["desktop", DESKTOP],
  ["phone, 390 px", PHONE],
] as const)("a bend in two strokes, on a %s", (_name, options) => {
  let page: Page;
  let complaints: string[];
  const steps = async () => {
    await settled(page);
    const all = await page.locator(".steps .what > p:first-child").allTextContents();
    return all.map((line) => line.replace(/^\d+\. /, "").replace(/, flats? .*face (up|down),/, ","));
  };
  const leaf = (deg: number) =>
    page.getByRole("slider", { name: "Leaf" }).evaluate((input, to) => {
      (input as HTMLInputElement).valueAsNumber = to;
      input.dispatchEvent(new Event("input", { bubbles: true }));
    }, deg);
  beforeAll(async () => {
    page = await tests.visit(options);
    complaints = complaintsOf(page);
    await page.getByRole("radio", { name: "Clamp bar" }).check();
    await settled(page);
  });
  afterAll(() => page?.context().close());

  it("is begun right before it is finished, at half its angle, and the order is one's own", async () => {
    await press(page, "Make bend 1 in two strokes");
    expect(await steps()).toEqual([
      "Bend 2, leaf to 92°.",
      expect.stringMatching(/^Bend 1, first stroke, leaf to 4\d(\.\d)?°, left at 45°\.$/),
      "Bend 1, second stroke, taken up at 45°, leaf to 92°.",
    ]);
  });

  it("is finished after another bend when that is moved up; the angle is typed", async () => {
    await press(page, "Bend 2 later");
    await settled(page);
    await type(page, "Leave bend 1 at °", "30");
    expect(await steps()).toEqual([
      expect.stringMatching(/^Bend 1, first stroke, leaf to 3\d(\.\d)?°, left at 30°\.$/),
      "Bend 2, leaf to 92°.",
      "Bend 1, second stroke, taken up at 30°, leaf to 92°.",
    ]);
    await type(page, "Leave bend 1 at °", "95");
    await until(() => words(page.locator(".answer .problems")), /Step 1: .*less than the bend's own 90/);
    await type(page, "Leave bend 1 at °", "30");
  });

  it("comes out as the engine says of the saved file", async () => {
    const { text } = await saved(page, () => press(page, "Save as a file"));
    expect(JSON.parse(text).order).toEqual([
      { bend: 1, clamped: "start", to: 30 },
      { bend: 2, clamped: "start" },
      { bend: 1, clamped: "start" },
    ]);
    const read = readJob(text);
    if (!read.ok) throw new Error("the saved file can't be read");
    const answer = check(read.job);
    await settled(page);
    expect(await page.locator(".answer").getAttribute("data-verdict")).toBe(answer.verdict);
    const classes = await page.locator(".steps .step").evaluateAll((all) => all.map((one) => one.className));
    expect(classes.length).toBe(answer.order.length);
    for (const [i, step] of answer.order.entries()) expect(classes[i]).toContain(step.verdict);
  });

  it("lies where it was left until the leaf comes up to it, then follows", async () => {
    await press(page, "Show step 3, bend 1, second stroke");
    const places = async (deg: number) => {
      // A step just shown swings its leaf all the way once it is drawn: the slider is moved until it stays.
      const moved = async () => {
        await leaf(deg);
        return words(page.locator(".leaf output"));
      };
      await until(moved, new RegExp(`^${deg}°$`));
      const drawn = await page
        .locator(".flat-label")
        .evaluateAll((all) => all.map((one) => (one as HTMLElement).getAttribute("style") ?? ""));
      return drawn.join(" ");
    };
    if (options === PHONE) await press(page, "Open the drawing");
    const [atRest, under, past] = [await places(0), await places(20), await places(60)];
    expect(under).toBe(atRest);
    expect(past).not.toBe(atRest);
  });

  it("has both strokes clamped by the same end, and is one stroke again", async () => {
    const buttons = page.getByRole("button", { name: "Put the other end in the throat for bend 1" });
    await buttons.first().click();
    const { text } = await saved(page, () => press(page, "Save as a file"));
    const ends = JSON.parse(text).order.filter((step: OrderFile) => step.bend === 1);
    expect(new Set(ends.map((step: OrderFile) => step.clamped)).size).toBe(1);
    await page.getByRole("button", { name: "Undo: put the other end in the throat for bend 1" }).click();
    await press(page, "Make bend 1 in one stroke");
    expect((await steps()).length).toBe(2);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(wide).toBeLessThanOrEqual(0);
    expect(complaints).toEqual([]);
  });
});
