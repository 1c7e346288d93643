/**
 * Orders side by side and played in step, a way out before and after, the whole fold played once from the flat blank, shapes
 * that come in a size that folds. The orders are held against the engine's own count and check.
 */
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { check } from "../../src/answer/check.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { DESKTOP, PHONE } from "./browser.ts";
import { pageTests, press, saved, settled, type, until, verdict, words } from "./shop.ts";

const tests = pageTests();
const leaf = (page: Page) => words(page.locator(".leaf output").first());
/** How much of the front canvas is painted, as a picture to compare. */
const picture = (page: Page, selector: string, nth = 0) =>
  page
    .locator(selector)
    .nth(nth)
    .evaluate((canvas) => (canvas as HTMLCanvasElement).toDataURL());

describe("orders compared", () => {
  let page: Page;
  beforeAll(async () => {
    page = await tests.visit();
    await page.getByRole("radio", { name: "Clamp bar" }).check();
    await settled(page);
    await press(page, "Compare the orders that fold");
    await page.locator(".order-groups").waitFor();
  });
  afterAll(() => page?.context().close());

  it("lists the best first and every other order that folds, grouped by the bends' sequence", async () => {
    const file = JSON.parse((await saved(page, () => press(page, "Save as a file"))).text);
    const read = readJob(JSON.stringify(file));
    if (!read.ok) throw new Error("the saved file can't be read");
    const { viableOrders } = check(read.job);
    const listed = await page.locator(".order-groups .tick").allTextContents();
    expect(listed.length).toBe(viableOrders);
    expect(listed[0]).toMatch(/^The best\./);
    for (const one of listed) expect(one).toMatch(/turned.*(to spare|Nothing near)/);
    const heads = await page.locator(".order-groups h4").allTextContents();
    expect(new Set(heads).size).toBe(heads.length);
    expect(heads.sort()).toEqual(["Bend 1, then bend 2", "Bend 2, then bend 1"]);
  });

  it("plays any two of them in step", async () => {
    const sides = page.locator(".pair .still");
    expect(await sides.count()).toBe(2);
    const before = [await picture(page, ".pair canvas", 0), await picture(page, ".pair canvas", 1)];
    await page.emulateMedia({ reducedMotion: "no-preference" });
    await press(page, "Play both");
    await until(() => words(sides.nth(0).locator("p")), /^Step 2: /);
    expect(await words(sides.nth(1).locator("p"))).toMatch(/^Step 2: /);
    await page.getByRole("button", { name: "Play both" }).waitFor();
    expect(await picture(page, ".pair canvas", 0)).not.toBe(before[0]);
    expect(await picture(page, ".pair canvas", 1)).not.toBe(before[1]);
  });

  it("takes another order at a press, which is then one's own", async () => {
    await page
      .getByRole("button", { name: /^Use this order: Bend 1, then bend 2/ })
      .first()
      .click();
    expect(await verdict(page)).not.toBe("hits");
    const { order } = JSON.parse((await saved(page, () => press(page, "Save as a file"))).text);
    expect(order.map((step: { bend: number }) => step.bend)).toEqual([1, 2]);
    await until(() => words(page.locator(".orders")), /The job has changed since/);
  });
});

describe("two brakes", () => {
  it("are played side by side in step, any two, with the room and the handling of each", async () => {
    const page = await tests.visit();
    await press(page, "This part on these brakes");
    const ticks = page.getByLabel(/^Side by side: /);
    await until(async () => `${await ticks.count()}`, /^[2-9]/);
    const stills = page.locator(".stills").first().locator(".still");
    await expect.poll(() => page.locator(".pair .still").count()).toBe(2);
    expect(await page.locator(".pair h3").allTextContents()).toEqual(["Shop brake", "Usual clamp bar"]);
    expect(await stills.nth(0).getAttribute("data-verdict")).toBe("hits");
    for (const words of await stills.allTextContents()) expect(words).toMatch(/The part is (never )?turned/);
    expect(await words(stills.nth(1))).toMatch(/to spare|[Nn]othing/);
    const before = [await picture(page, ".pair canvas", 0), await picture(page, ".pair canvas", 1)];
    await press(page, "Play both");
    const sides = page.locator(".pair .still p");
    for (const i of [0, 1]) await until(() => words(sides.nth(i)), /^Step 2: /);
    await page.getByRole("button", { name: "Play both" }).waitFor();
    for (const i of [0, 1]) expect(await picture(page, ".pair canvas", i)).not.toBe(before[i]);
    await ticks.first().uncheck();
    expect(await page.locator(".pair").count()).toBe(0);
  });
});

describe("a part that no single change frees", () => {
  it("is offered a pair of changes, which then lets it fold", async () => {
    // The part and bar of test/ways/hardWays, where the pair is proved by running it again.
    const up = { angle: 90, turn: "up", overbend: 92 };
    const rectangle = (from: number, to: number, deep: number) => [
      [from, -deep],
      [to, -deep],
      [to, 0],
      [from, 0],
    ];
    const job = {
      noseroom: 1,
      units: "mm",
      part: {
        name: "stiffener",
        material: "mild steel",
        thickness: 0.8,
        insideRadius: 0.8,
        dimensions: "outside",
        flats: [18, 17, 27, 26],
        bends: [{ ...up, turn: "down" }, up, up],
      },
      brake: {
        name: "bar brake",
        clamp: {
          type: "bar",
          depth: 50,
          noseRadius: 0.8,
          thickness: 6,
          noseAngle: 85,
          holderBack: 12,
          holderHeight: 30,
          holderDepth: 40,
        },
        bed: { profile: rectangle(-120, 0, 60) },
        leaf: { profile: rectangle(0, 25, 10), swing: 150 },
        lift: 40,
        openEnds: true,
      },
    };
    const page = await tests.visit();
    await page.getByLabel("Open a file", { exact: true }).setInputFiles({
      name: "stiffener.json",
      mimeType: "application/json",
      buffer: Buffer.from(JSON.stringify(job)),
    });
    await until(() => page.getByLabel("Name", { exact: true }).inputValue(), /^stiffener/);
    const pair = page.getByRole("button", {
      name: /^Do it: Make flat 2 longer by [\d.]+ mm and trim flat 4 by [\d.]+ mm\. It then folds/,
    });
    await pair.click();
    await until(() => verdict(page), /clear|tight/);
  });
});

describe("another clamp of one's own", () => {
  it("comes before all changes of part or tool", async () => {
    const page = await tests.visit();
    await page.getByRole("radio", { name: "Clamp bar" }).check();
    // A bar with a figure of one's own is one's own; the usual one is a guess and lies on no shelf.
    await type(page, "Bar thickness", "3/16");
    await until(() => verdict(page), /clear|tight/);
    await page.getByRole("radio", { name: "Finger", exact: true }).check();
    await until(() => verdict(page), /hits/);
    await page.locator('.answer[data-ways="found"]').waitFor();
    const ways = await page.locator(".ways li > span:first-child").allTextContents();
    expect(ways[0]).toMatch(/^Use .*\. It then folds/);
    expect(ways.length).toBeGreaterThan(2);
  });
});

describe.each([
  ["desktop", DESKTOP],
  ["phone", PHONE],
] as const)("a way out, on a %s", (_name, options) => {
  it("is seen before and after with the keys, and by a press", async () => {
    const page = await tests.visit(options);
    await page.locator('.answer[data-ways="found"]').waitFor();
    const see = page.getByRole("button", { name: /^See before and after/ }).first();
    await see.focus();
    await page.keyboard.press("Shift+Tab");
    await page.keyboard.press("Tab");
    const after = page.locator(".before-after canvas").nth(1);
    await after.waitFor();
    await expect.poll(() => after.evaluate((one) => (one as HTMLCanvasElement).width)).toBeGreaterThan(120);
    const now = await picture(page, ".before-after canvas", 0);
    await expect.poll(() => picture(page, ".before-after canvas", 1)).not.toBe(now);
    await page.getByLabel("Name", { exact: true }).focus();
    expect(await page.locator(".before-after").count()).toBe(0);
    await (options === PHONE ? see.tap() : see.click());
    await page.locator(".before-after").waitFor();
    await page
      .getByRole("button", { name: /^Do it/ })
      .first()
      .click();
    await until(() => verdict(page), /clear|tight/);
    expect(await page.locator(".before-after").count()).toBe(0);
  });
});

describe("the whole fold", () => {
  it("is played once from the flat blank through every step, the part moved between them", async () => {
    const page = await tests.visit();
    await page.getByRole("radio", { name: "Clamp bar" }).check();
    await settled(page);
    const frames = await page.evaluate(async () => {
      const button = document.querySelector<HTMLButtonElement>('button[aria-label^="All: play"]')!;
      const seen: { account: string; leaf: number; labels: number }[] = [];
      button.click();
      await new Promise<void>((resolve) => {
        const look = () => {
          seen.push({
            account: /Step \d/.exec(document.querySelector(".account")?.textContent ?? "")?.[0] ?? "",
            leaf: Number.parseFloat(document.querySelector(".leaf output")?.textContent ?? "-1"),
            labels: document.querySelectorAll(".flat-label").length,
          });
          if (document.querySelector('button[aria-label="Play"]') && seen.length > 20) resolve();
          else requestAnimationFrame(look);
        };
        requestAnimationFrame(look);
      });
      return seen;
    });
    const steps = frames.map(({ account }) => account).filter((step, i, all) => step !== all[i - 1]);
    expect(steps.slice(steps.indexOf("Step 1"))).toEqual(["Step 1", "Step 2"]);
    // On its way the part has no dimensions, and the leaf waits; then the leaf swings to the end of each step.
    for (const step of ["Step 1", "Step 2"]) {
      const of = frames.filter(({ account }) => account === step);
      expect(of.some(({ labels, leaf: deg }) => labels === 0 && deg === 0)).toBe(true);
      expect(Math.max(...of.map(({ leaf: deg }) => deg))).toBeGreaterThan(90);
    }
    await until(() => leaf(page), /^92/);
  });

  it("stands still at the end of each step where less motion is wished for", async () => {
    const page = await tests.visit({ ...DESKTOP, reducedMotion: "reduce" });
    await page.getByRole("radio", { name: "Clamp bar" }).check();
    await settled(page);
    const degs = await page.evaluate(async () => {
      document.querySelector<HTMLButtonElement>('button[aria-label^="All: play"]')!.click();
      const seen = new Set<string>();
      await new Promise<void>((resolve) => {
        let count = 0;
        const look = () => {
          if (count++ > 3) seen.add(document.querySelector(".leaf output")?.textContent ?? "");
          if (document.querySelector('button[aria-label="Play"]') && count > 20) resolve();
          else requestAnimationFrame(look);
        };
        requestAnimationFrame(look);
      });
      return [...seen];
    });
    for (const deg of degs) expect(deg).toMatch(/^(92|0)°$/);
  });
});

describe("a shape to start from", () => {
  it("comes in a size that folds on the brake at hand, says so, takes a name of its own, and is one undo", async () => {
    const page = await tests.visit();
    await press(page, "New job");
    await press(page, "C with lips");
    await until(
      () => words(page.locator(".shapes .note")),
      /would not fold on this brake: this one is [\d.]+ times as large/,
    );
    expect(await verdict(page)).not.toBe("hits");
    expect(await page.getByLabel("Name", { exact: true }).inputValue()).toMatch(/^C with lips/);
    await page.getByRole("button", { name: "Undo: start from C with lips" }).click();
    await settled(page);
    expect(await page.getByLabel("Flat 3", { exact: true }).count()).toBe(0);
  });

  it("says why where no size of it folds", async () => {
    const page = await tests.visit();
    await page.getByLabel("Leaf swing °", { exact: true }).fill("60");
    await settled(page);
    await press(page, "Channel");
    await until(
      () => words(page.locator(".shapes .note")),
      /^No size of this shape folds on this brake\. At the usual size: .*60°/,
    );
  });
});
