/**
 * A worker that dies or falls silent in the middle of its work: the page says so in a sentence, starts another, and
 * answers; where that stops too it says that it gives up, and the next change has it tried again. Nothing is lost.
 */
import type { Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { DESKTOP, PATIENCE_MS } from "./browser.ts";
import { pageTests, press, saved, settled, type, until, verdict, words } from "./shop.ts";

const tests = pageTests();
let page: Page;

/** What the test can do to the workers of the page. */
interface Fates {
  workers: Worker[];
  /** How many of the next workers to be started are deaf: they are given no question. */
  deaf: number;
  /** How many of the next workers fall over as they start. */
  falling: number;
}
declare global {
  interface Window {
    fates: Fates;
  }
}

/** Lets the test reach the page's workers, and makes some of them deaf or fall over. */
function reachWorkers(): void {
  const Real = Worker;
  window.fates = { workers: [], deaf: 0, falling: 0 };
  window.Worker = class extends Real {
    private readonly isDeaf: boolean;
    constructor(script: string | URL) {
      super(script);
      const { fates } = window;
      fates.workers.push(this);
      this.isDeaf = fates.deaf > 0;
      if (this.isDeaf) fates.deaf -= 1;
      if (fates.falling > 0) {
        fates.falling -= 1;
        queueMicrotask(() => this.dispatchEvent(new ErrorEvent("error", { cancelable: true })));
      }
    }
    override postMessage(...message: unknown[]): void {
      if (!this.isDeaf) super.postMessage(...(message as [unknown]));
    }
  };
}

/** A page whose clock the test moves; work on the worker goes on in its own time. */
async function visitWithFates(): Promise<Page> {
  const context = await tests.browser.newContext({ acceptDownloads: true, ...DESKTOP });
  const made = await context.newPage();
  made.setDefaultTimeout(PATIENCE_MS);
  await made.addInitScript(reachWorkers);
  await made.clock.install();
  await made.goto(tests.address);
  await settled(made);
  return made;
}

const killAll = () =>
  page.evaluate(() => {
    for (const worker of window.fates.workers) worker.terminate();
  });
const restarted = () => page.locator(".restarted");
const said = () => words(page.locator(".answer .said"));

describe("a worker", () => {
  beforeAll(async () => {
    page = await visitWithFates();
  });
  afterAll(() => page?.context().close());

  it("killed before its answer is told of and replaced, and the answer comes", async () => {
    await page.getByRole("radio", { name: "Clamp bar" }).check();
    await until(() => verdict(page), /^clear$/);
    await killAll();
    await type(page, "Flat 2", "5/16");
    expect(await page.locator(".answer").getAttribute("data-working")).toBe("yes");
    await page.clock.runFor(16_000);
    await until(() => words(restarted()), /^The work had stopped by itself and was begun again\.$/);
    expect(await verdict(page)).toBe("hits");
    expect(await page.getByLabel("Flat 2", { exact: true }).inputValue()).toBe("5/16");
    // The next change is an ordinary one again.
    await type(page, "Flat 2", "1/2");
    await until(() => verdict(page), /^clear$/);
    expect(await restarted().count()).toBe(0);
  });

  it("that falls over is replaced at once, without waiting for its silence", async () => {
    await killAll();
    await page.evaluate(() => {
      // The worker that is there falls over too, at rest: the next question finds it gone.
      for (const worker of window.fates.workers)
        worker.dispatchEvent(new ErrorEvent("error", { cancelable: true }));
      window.fates.falling = 1;
    });
    await page.getByLabel("Flat 1", { exact: true }).fill("7/16");
    await until(() => words(restarted()), /begun again/);
    await until(() => verdict(page), /^clear$/);
  });

  it("that stays silent twice is given up with a sentence; the job is safe and the next change is answered", async () => {
    await killAll();
    await page.evaluate(() => {
      window.fates.deaf = 1;
    });
    await type(page, "Flat 1", "3/8");
    await page.clock.runFor(16_000);
    await until(() => words(restarted()), /begun again/);
    await page.clock.runFor(16_000);
    await until(said, /^The answer could not be worked out: it stopped twice\. Your job is safe\./);
    const { text } = await saved(page, () => press(page, "Save as a file"));
    expect(JSON.parse(text).part.flats[0]).toBe("3/8");
    await type(page, "Flat 1", "1/2");
    await until(() => verdict(page), /^clear$/);
  });

  it("killed while it looks for ways out, or draws the chart, leaves a sentence and a way to go on", async () => {
    await page.getByRole("radio", { name: "Finger" }).check();
    expect(await verdict(page)).toBe("hits");
    await page.clock.runFor(300);
    await page.locator('.answer[data-ways="found"]').waitFor();
    await page.evaluate(() => {
      window.fates.deaf = 9;
    });
    await killAll();
    await press(page, "Draw the chart");
    await page.clock.runFor(500);
    await page.clock.runFor(121_000);
    await page.clock.runFor(121_000);
    const chart = page.locator('section[aria-labelledby="chart-heading"]');
    await until(() => words(chart), /The chart was not finished\. Put it away and draw it again\./);
    await page.evaluate(() => {
      window.fates.deaf = 0;
    });
    await press(page, "Put the chart away");
    await press(page, "Draw the chart");
    await page.clock.runFor(500);
    await until(() => words(chart), /Flat 2 of the part/);
  });

  it("killed while a file is made leaves the job's own text to save, and a drawing is asked for again", async () => {
    await page.evaluate(() => {
      window.fates.deaf = 9;
    });
    await killAll();
    await press(page, "Blank as DXF");
    await page.clock.runFor(11_000);
    await until(
      () => words(page.locator(".notices")),
      /The drawing of the blank was not finished: press again\./,
    );
    await page.evaluate(() => {
      window.fates.deaf = 0;
    });
    const { text } = await saved(page, () => press(page, "Blank as DXF"));
    expect(text).toContain("ENTITIES");
  });
});
