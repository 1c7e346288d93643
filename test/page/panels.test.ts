/**
 * The panels one by one: steps dragged and moved by key, orders and brakes compared, play and pause, units, jobs taken
 * away and back, keys on the drawing, the card on paper.
 */
import type { Page } from "playwright-core";
import { beforeEach, describe, expect, it } from "vitest";
import { DESKTOP, PHONE } from "./browser.ts";
import { pageTests, press, saved, sentence, settled, until, verdict, words } from "./shop.ts";

const tests = pageTests();
let page: Page;

const bendsShown = async () => {
  await settled(page);
  const all = await page.locator(".steps .what strong").allTextContents();
  return all.map((text) => Number(/Bend (\d+)/.exec(text)?.[1]));
};
const undo = () => page.getByRole("button", { name: /^Undo/ }).click();
const openExample = async (name: string) => {
  await page.getByLabel("Worked examples").selectOption(name);
  await press(page, "Open the example");
  await settled(page);
};

describe("steps", () => {
  beforeEach(async () => {
    page = await tests.visit(DESKTOP);
    await openExample("hat-stiffener");
    return () => page.context().close();
  });

  it("move by key, become the user's own order, are checked as they stand, and go back", async () => {
    const best = await bendsShown();
    await press(page, `Bend ${best[1]} earlier`);
    expect(await bendsShown()).toEqual([best[1], best[0], ...best.slice(2)]);
    expect(await sentence(page)).toMatch(/in this order/);
    await press(page, "Find the best order again");
    expect(await bendsShown()).toEqual(best);
    await undo();
    expect(await bendsShown()).toEqual([best[1], best[0], ...best.slice(2)]);
  });

  it("move by dragging", async () => {
    const best = await bendsShown();
    const grips = page.locator(".step .grip");
    await grips.first().scrollIntoViewIfNeeded();
    const from = await grips.nth(0).boundingBox();
    const to = await grips.nth(1).boundingBox();
    if (!from || !to) throw new Error("no steps are shown");
    await page.mouse.move(from.x + from.width / 2, from.y + from.height / 2);
    await page.mouse.down();
    await page.mouse.move(to.x + to.width / 2, to.y + to.height / 2, { steps: 4 });
    await page.mouse.up();
    expect(await bendsShown()).toEqual([best[1], best[0], ...best.slice(2)]);
  });

  it("clamp the other side, and the words follow", async () => {
    const first = page.locator(".step").first().locator(".what p").first();
    const before = await words(first);
    await page
      .locator(".step")
      .first()
      .getByRole("button", { name: /^Put the other end in the throat/ })
      .click();
    await settled(page);
    expect(await words(first)).not.toBe(before);
  });

  it("are compared: the best order beside the user's own", async () => {
    expect(await page.getByRole("button", { name: "Best order beside your own" }).isDisabled()).toBe(true);
    const best = await bendsShown();
    await press(page, `Bend ${best[0]} later`);
    await settled(page);
    await press(page, "Best order beside your own");
    await page.locator(".still").nth(1).waitFor();
    expect(await words(page.locator(".still").nth(0))).toMatch(/^Best order/);
    expect(await words(page.locator(".still").nth(1))).toMatch(/^Your own order/);
    expect(await page.locator(".still").nth(1).getAttribute("data-verdict")).toBe(await verdict(page));
  });
});

describe("brakes", () => {
  it("are compared for one part, each with its verdict and its picture", async () => {
    page = await tests.visit(DESKTOP);
    await press(page, "This part on these brakes");
    // The two that are played side by side have no verdict of their own.
    const stills = page.locator(".still[data-verdict]");
    await stills.nth(1).waitFor();
    const verdicts = await stills.evaluateAll((all) => all.map((one) => one.getAttribute("data-verdict")));
    expect(verdicts).toEqual(["hits", "clear"]);
    // Something has been drawn on each: not all points of the canvas are of one colour.
    const drawn = () =>
      stills.locator("canvas").evaluateAll((all) =>
        all.map((canvas) => {
          const { width, height } = canvas as HTMLCanvasElement;
          const context = (canvas as HTMLCanvasElement).getContext("2d")!;
          return new Set(new Uint32Array(context.getImageData(0, 0, width, height).data.buffer)).size > 3;
        }),
      );
    await expect.poll(drawn).toEqual([true, true]);
    await page.context().close();
  });
});

describe("the drawing", () => {
  beforeEach(async () => {
    page = await tests.visit(DESKTOP);
    return () => page.context().close();
  });
  const leaf = () => words(page.locator(".leaf output"));

  it("plays from rest to where the leaf stops, and pauses", async () => {
    await page.getByRole("slider", { name: "Leaf" }).focus();
    await page.keyboard.press("Home");
    await until(leaf, /^0°$/);
    // Pressed from inside the page, so that a busy machine can't miss the moment.
    await page.evaluate(
      () =>
        new Promise<void>((done) => {
          const button = (name: string) =>
            document.querySelector<HTMLButtonElement>(`button[aria-label="${name}"]`);
          const output = document.querySelector(".leaf output")!;
          const watcher = new MutationObserver(() => {
            if (Number.parseFloat(output.textContent ?? "") < 1) return;
            watcher.disconnect();
            button("Pause")?.click();
            done();
          });
          watcher.observe(output, { characterData: true, childList: true, subtree: true });
          button("Play")?.click();
        }),
    );
    await page.getByRole("button", { name: "Play", exact: true }).waitFor();
    const held = await leaf();
    expect(Number.parseFloat(held)).toBeLessThan(75);
    await press(page, "Play");
    await until(leaf, /^75(\.\d)?°$/);
    await page.getByRole("button", { name: "Play", exact: true }).waitFor();
  });

  it("sets the leaf to its end at once where less motion is wished for", async () => {
    await page.emulateMedia({ reducedMotion: "reduce" });
    await page.getByRole("slider", { name: "Leaf" }).focus();
    await page.keyboard.press("Home");
    await until(leaf, /^0°$/);
    await press(page, "Play");
    await until(leaf, /^75(\.\d)?°$/);
  });

  it("moves, enlarges and fits by key and wheel", async () => {
    const place = async () => {
      const box = await page.getByRole("button", { name: /^Flat 2 is / }).boundingBox();
      return `${Math.round(box?.x ?? -1)} ${Math.round(box?.y ?? -1)}`;
    };
    await page.locator('.answer[data-ways="found"]').waitFor();
    await press(page, "Fit the drawing");
    const fitted = await place();
    const canvas = page.locator(".canvas-box canvas").nth(1);
    await canvas.focus();
    await page.keyboard.press("ArrowRight");
    await expect.poll(place).not.toBe(fitted);
    await page.keyboard.press("+");
    await page.keyboard.press("0");
    await expect.poll(place).toBe(fitted);
    await canvas.hover({ position: { x: 300, y: 300 } });
    // A plain turn of the wheel scrolls the page; with a modifier, as a pinch on a touch pad sends it, it enlarges.
    await page.mouse.wheel(0, 240);
    await page.evaluate(() => new Promise(requestAnimationFrame));
    expect(await place()).toBe(fitted);
    await page.keyboard.down("Control");
    await page.mouse.wheel(0, -240);
    await page.keyboard.up("Control");
    await expect.poll(place).not.toBe(fitted);
    await press(page, "Fit the drawing");
    await expect.poll(place).toBe(fitted);
  });

  it("is enlarged by two fingers on a phone", async () => {
    const phone = await tests.visit(PHONE);
    await press(phone, "Open the drawing");
    const canvas = phone.locator(".canvas-box canvas").nth(1);
    const apart = async () => {
      const [one, other] = await Promise.all(
        [1, 2].map((flat) =>
          phone.getByRole("button", { name: new RegExp(`^Flat ${flat} is `) }).boundingBox(),
        ),
      );
      return Math.hypot((one?.x ?? 0) - (other?.x ?? 0), (one?.y ?? 0) - (other?.y ?? 0));
    };
    await expect.poll(apart).toBeGreaterThan(30);
    const before = await apart();
    const box = await canvas.boundingBox();
    if (box === null) throw new Error("the drawing is not open");
    const [x, y] = [box.x + box.width * 0.55, box.y + box.height * 0.45];
    const hand = await phone.context().newCDPSession(phone);
    const fingers = (type: "touchStart" | "touchMove" | "touchEnd", spread: number) =>
      hand.send("Input.dispatchTouchEvent", {
        type,
        touchPoints: type === "touchEnd" ? [] : [-1, 1].map((side, id) => ({ x: x + side * spread, y, id })),
      });
    await fingers("touchStart", 20);
    for (const spread of [24, 28, 32]) await fingers("touchMove", spread);
    await fingers("touchEnd", 0);
    await expect.poll(apart).toBeGreaterThan(before * 1.2);
    await phone.context().close();
  });

  it("is as sharp as the screen: as many points as the device has", async () => {
    const sharp = await tests.visit({ ...DESKTOP, deviceScaleFactor: 2 });
    const ratio = await sharp
      .locator(".canvas-box canvas")
      .nth(1)
      .evaluate((canvas) => {
        return (canvas as HTMLCanvasElement).width / canvas.getBoundingClientRect().width;
      });
    expect(ratio).toBeCloseTo(2, 1);
    await sharp.context().close();
  });
});

describe("the rest of the card", () => {
  beforeEach(async () => {
    page = await tests.visit(DESKTOP);
    return () => page.context().close();
  });

  it("switches units without changing the answer, and begins by the browser's language", async () => {
    const before = /at (\d+\.\d)°/.exec(await sentence(page))?.[1];
    await page.getByRole("radio", { name: "mm" }).check();
    expect(await page.getByLabel("Flat 2", { exact: true }).inputValue()).toBe("9.525");
    expect(/at (\d+\.\d)°/.exec(await sentence(page))?.[1]).toBe(before);
    const german = await tests.visit({ ...DESKTOP, locale: "de-DE" });
    expect(await german.getByRole("radio", { name: "mm" }).isChecked()).toBe(true);
    await german.context().close();
  });

  it("says beside the field what would be right, and keeps what was typed", async () => {
    const field = page.getByLabel("Flat 1", { exact: true });
    await field.fill("about 3");
    await until(() => words(page.locator(".answer")), /1 figure to put right|One figure to put right/);
    expect(await field.inputValue()).toBe("about 3");
    expect(await field.getAttribute("aria-invalid")).toBe("true");
    expect(await words(page.locator(".field.wrong .problem"))).toMatch(/^It should be /);
    await undo();
    expect(await verdict(page)).toBe("hits");
  });

  it("takes gauge numbers and says how they were read", async () => {
    await page.getByLabel("Thickness", { exact: true }).fill("20 ga steel");
    await until(() => words(page.locator(".kind-thickness").first()), /20 ga steel = 0\.036 in = 0\.91 mm/);
  });

  it("keeps a metal of the person's own for other jobs, over a reload, and forgets it when told", async () => {
    const metal = () => page.getByLabel("Metal", { exact: true });
    await metal().selectOption("own figures");
    await page.getByLabel("Metal's name", { exact: true }).fill("roof sheet");
    await page.getByLabel(/^Yield strength/).fill("310");
    await press(page, "Keep this metal for other jobs");
    await press(page, "New job");
    await settled(page);
    // A new job is of the metal used last.
    expect(await metal().locator("option:checked").textContent()).toBe("roof sheet, your own");
    await metal().selectOption("mild steel");
    await page.reload();
    await settled(page);
    expect(await metal().inputValue()).toBe("mild steel");
    await metal().selectOption({ label: "roof sheet, your own" });
    expect(await page.getByLabel(/^Yield strength/).inputValue()).toBe("310");
    await press(page, "Forget this metal");
    expect(await metal().inputValue()).toBe("own figures");
    expect(await metal().locator("option", { hasText: "roof sheet" }).count()).toBe(0);
    await undo();
    expect(await metal().locator("option", { hasText: "roof sheet" }).count()).toBe(1);
  });

  it("takes a job away and brings it back", async () => {
    await press(page, "Copy this job");
    await settled(page);
    const jobs = page.locator(".jobs li");
    expect(await jobs.count()).toBe(2);
    await press(page, "Take the job Cable trough 2 away");
    await settled(page);
    expect(await jobs.count()).toBe(1);
    await undo();
    await settled(page);
    expect(await jobs.count()).toBe(2);
    expect(await page.getByLabel("Name", { exact: true }).inputValue()).toBe("Cable trough 2");
  });

  it("shares its shelf with another tab, and leaves the job that lies open there alone", async () => {
    const other = await page.context().newPage();
    await other.goto(tests.address);
    await settled(other);
    await other.getByLabel("Name", { exact: true }).fill("From the other tab");
    await press(other, "Copy this job");
    await settled(other);
    await expect.poll(() => page.locator(".jobs li").count()).toBeGreaterThan(1);
    expect(await page.locator(".jobs").textContent()).toContain("From the other tab 2");
  });

  it("changes shape, is mirrored and turned over", async () => {
    await press(page, "Hat");
    await settled(page);
    expect(await page.locator(".strip .bend").count()).toBe(4);
    await press(page, "Turn over");
    await settled(page);
    expect(await page.getByRole("button", { name: /^Bend 1 turns down/ }).count()).toBe(1);
    await page.getByLabel("Flat 1", { exact: true }).fill("2");
    await press(page, "End for end");
    expect(await page.getByLabel("Flat 5", { exact: true }).inputValue()).toBe("2");
  });

  it("prints dark on white at night too", async () => {
    await page.emulateMedia({ colorScheme: "dark" });
    const colour = () => page.evaluate(() => getComputedStyle(document.body).color);
    const night = await colour();
    await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
    expect(await colour()).toBe("rgb(23, 25, 28)");
    await page.evaluate(() => dispatchEvent(new Event("afterprint")));
    expect(await colour()).toBe(night);
  });

  it("prints as a shop sheet: no handles, all of the card", async () => {
    await page.emulateMedia({ media: "print" });
    for (const gone of [".handles", ".head .row", "#jobs-heading"])
      expect(await page.locator(gone).first().isVisible()).toBe(false);
    for (const there of [".answer .said", "#blank-heading", ".steps", ".cautions"])
      expect(await page.locator(there).first().isVisible()).toBe(true);
  });

  it("can be worked from the first field to the answer with the keys alone", async () => {
    await page.getByLabel("Name", { exact: true }).focus();
    for (
      let i = 0;
      i < 40 && !(await page.evaluate(() => document.activeElement?.id === "field-part-flats-1"));
      i++
    ) {
      await page.keyboard.press("Tab");
    }
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("field-part-flats-1");
    await page.keyboard.press("Control+a");
    await page.keyboard.type("1 1/2");
    expect(await sentence(page)).toMatch(/^Folds/);
    await page.keyboard.press("Control+z");
    expect(await sentence(page)).toMatch(/^Does not fold/);
    await page.keyboard.press("Control+Shift+z");
    expect(await sentence(page)).toMatch(/^Folds/);
  });
});

describe("what is taken to the bench", () => {
  it("saves the blank as DXF and SVG", async () => {
    page = await tests.visit(DESKTOP);
    const dxf = await saved(page, () => press(page, "Blank as DXF"));
    expect(dxf.name).toBe("cable-trough-blank.dxf");
    expect(dxf.text).toMatch(/ENTITIES[\s\S]*BEND_UP[\s\S]*EOF\s*$/);
    const svg = await saved(page, () => press(page, "Blank at true size, SVG"));
    expect(svg.text).toMatch(/^<svg[^>]+width="[\d.]+mm"/);
    expect(svg.text).toContain("Blank of Cable trough");
    await page.context().close();
  });

  it("says how the bends were allowed for, and what other methods would make of the blank", async () => {
    page = await tests.visit(DESKTOP);
    const fold = page.locator("details", { hasText: "How the bends were allowed for" });
    await fold.locator("summary").click();
    expect(await words(fold)).toMatch(
      /Bend allowance by K-factor 0\.44.*DIN 6935 0\.\d+ in (wider|narrower)/s,
    );
    await page.context().close();
  });

  it("says where a metal's figures come from", async () => {
    page = await tests.visit(DESKTOP);
    const fold = page.locator("details", { hasText: "Where the figures of mild steel come from" });
    await fold.locator("summary").click();
    expect(await words(fold)).toMatch(/Yield 240 MPa.*K-factor 0\.44.*Inside radius for 90°/s);
    await page.context().close();
  });
});
