/**
 * Faults of the browser round the page, in a real one: its store full, refusing or shut, the tab closed or the page
 * crashed while typing, two tabs on one job, a file that it won't save. Each ends in a sentence and no loss.
 */
import type { Server } from "node:http";
import type { Browser, BrowserContext, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from "vitest";
import { DESKTOP, launch, PATIENCE_MS, PHONE } from "./browser.ts";
import { openShop, press, saved, sentence, settled, type, until, verdict, words } from "./shop.ts";

let browser: Browser;
let server: Server;
let address: string;
let context: BrowserContext;

beforeAll(async () => {
  [browser, { server, address }] = await Promise.all([launch(), openShop()]);
});
afterAll(async () => {
  await browser?.close();
  server?.close();
});
beforeEach(async () => {
  context = await browser.newContext({ acceptDownloads: true, ...DESKTOP });
});
afterEach(() => context.close());

/** A tab of this visitor, with its first answer standing; `before` runs in it before the page does. */
async function tab(before?: () => void): Promise<Page> {
  const page = await context.newPage();
  page.setDefaultTimeout(PATIENCE_MS);
  if (before) await page.addInitScript(before);
  await page.goto(address);
  await settled(page);
  return page;
}

const notices = (page: Page) => words(page.locator(".notices"));
const flat = (page: Page, number = 1) => page.getByLabel(`Flat ${number}`, { exact: true });
const jobNames = (page: Page) => page.locator(".jobs .job").allTextContents();
const keptFlats = (page: Page) =>
  page.evaluate(() =>
    Object.keys(localStorage)
      .filter((key) => key.startsWith("noseroom.job."))
      .map((key) => JSON.parse(localStorage.getItem(key)!).file.part.flats[0])
      .sort(),
  );

describe("the browser's store", () => {
  it("full to the last byte: what was kept opens, what is typed is told as not kept, saved by hand, and kept once there is room", async () => {
    const first = await tab();
    await type(first, "Flat 1", "7/16");
    await first.close();
    // Really full: the browser's own limit, met by halves.
    const page = await tab();
    await page.evaluate(() => {
      let piece = "x".repeat(2 ** 22);
      for (let i = 0; piece.length > 0; i++) {
        try {
          localStorage.setItem(`filler${i}`, piece);
        } catch {
          piece = piece.slice(0, Math.floor(piece.length / 2));
        }
      }
    });
    await page.reload();
    await settled(page);
    expect(await flat(page).inputValue()).toBe("7/16");
    await flat(page).fill("0.5000000000000000");
    await until(() => notices(page), /store is full or closed: save the job as a file, it is not kept here/);
    // The text that is offered is the one of now, not that of the first refusal.
    await flat(page).fill("0.6250000000000000");
    const { text } = await saved(page, () => press(page, "Save its text"));
    expect(JSON.parse(text).part.flats[0]).toBe("0.6250000000000000");
    expect(await verdict(page)).toBe("hits");
    await page.evaluate(() => localStorage.removeItem("filler0"));
    await flat(page).fill("9/16");
    await until(() => notices(page), /^$/);
    await page.reload();
    await settled(page);
    expect(await flat(page).inputValue()).toBe("9/16");
  });

  it.each([
    [
      "refuses to write",
      () => {
        Storage.prototype.setItem = () => {
          throw new DOMException("full", "QuotaExceededError");
        };
      },
    ],
    [
      "refuses to read and write",
      () => {
        for (const name of ["getItem", "setItem", "removeItem", "key"] as const) {
          Storage.prototype[name] = () => {
            throw new DOMException("no", "SecurityError");
          };
        }
      },
    ],
    [
      "is shut",
      () => {
        Object.defineProperty(window, "localStorage", {
          get: () => {
            throw new DOMException("no", "SecurityError");
          },
        });
      },
    ],
  ] as const)(
    "that %s leaves a page that answers, says that it keeps nothing, and asks before it closes",
    async (_name, shut) => {
      const page = await tab(shut);
      expect(await sentence(page)).toMatch(/^Does not fold/);
      await page.getByRole("radio", { name: "Clamp bar" }).check();
      expect(await sentence(page)).toMatch(/^Folds/);
      await until(() => notices(page), /save the job as a file/);
      await page.getByRole("button", { name: /^Undo/ }).click();
      expect(await verdict(page)).toBe("hits");
      const asked: string[] = [];
      page.on("dialog", (dialog) => {
        asked.push(dialog.type());
        void dialog.dismiss();
      });
      await page.close({ runBeforeUnload: true });
      await expect.poll(() => asked).toEqual(["beforeunload"]);
      // Saved as a file nothing would be lost, and the page closes without asking.
      const { text } = await saved(page, () => press(page, "Save as a file"));
      expect(JSON.parse(text).part.name).toBe("Cable trough");
      await Promise.all([page.waitForEvent("close"), page.close({ runBeforeUnload: true })]);
      expect(asked.length).toBe(1);
    },
  );
});

/** Ends the page as a crash does, and waits until the browser has seen that. */
async function crash(page: Page): Promise<void> {
  const gone = page.waitForEvent("crash");
  await Promise.all([gone, page.goto("chrome://crash").catch(() => null)]);
  await page.close();
}

describe("what was typed up to the last keystroke is there on reopening", () => {
  it.each([
    ["the tab is closed", (page: Page) => page.close()],
    ["another page is opened in it", (page: Page) => page.goto("about:blank")],
    // The page is ended by the browser in the middle of its work, without a last word.
    ["the page crashes", crash],
  ] as const)("when %s", async (_name, leave) => {
    const page = await tab();
    await type(page, "Name", "Lens-box tray");
    await flat(page, 2).fill("");
    await flat(page, 2).pressSequentially("1 3/1");
    await leave(page);
    const again = await tab();
    expect(await flat(again, 2).inputValue()).toBe("1 3/1");
    expect(await again.getByLabel("Name", { exact: true }).inputValue()).toBe("Lens-box tray");
  });

  it("and what the browser refused at first, if there is room when the tab goes", async () => {
    const page = await tab(() => {
      const real = Storage.prototype.setItem;
      let full = true;
      Storage.prototype.setItem = function (...entry) {
        if (full) throw new DOMException("full", "QuotaExceededError");
        real.apply(this, entry);
      };
      addEventListener("room", () => {
        full = false;
      });
    });
    await flat(page).fill("11/16");
    await until(() => notices(page), /not kept here/);
    await page.evaluate(() => dispatchEvent(new Event("room")));
    await page.close({ runBeforeUnload: true });
    const again = await tab();
    expect(await keptFlats(again)).toEqual(["11/16"]);
    expect(await flat(again).inputValue()).toBe("11/16");
  });
});

describe("two tabs on one job", () => {
  let one: Page;
  let two: Page;
  beforeEach(async () => {
    one = await tab();
    await flat(one).fill("7/16");
    two = await tab();
    expect(await flat(two).inputValue()).toBe("7/16");
  });

  it("the tab left behind says so and gives the choice; showing the other's takes it over, undo gives one's own back", async () => {
    await type(two, "Flat 1", "5/8");
    await until(() => notices(one), /“Cable trough” lies open in another tab too.*Nothing is lost/);
    await press(one, "Show the other tab’s");
    expect(await flat(one).inputValue()).toBe("5/8");
    expect(await notices(one)).toBe("");
    expect(await keptFlats(one)).toEqual(["5/8"]);
    await one.getByRole("button", { name: "Undo: show the other tab’s version" }).click();
    expect(await flat(one).inputValue()).toBe("7/16");
    await until(() => notices(two), /lies open in another tab too/);
  });

  it("both are kept where that is chosen, or where the line is passed over and typing goes on", async () => {
    await type(two, "Flat 1", "5/8");
    await until(() => notices(one), /in another tab too/);
    await flat(one).fill("3/4");
    await until(
      () => notices(one),
      /“Cable trough” was changed in two tabs. Both are kept: yours is “Cable trough 2” now/,
    );
    expect(await flat(one).inputValue()).toBe("3/4");
    expect(await keptFlats(one)).toEqual(["3/4", "5/8"]);
    await expect.poll(() => jobNames(two)).toEqual(["Cable trough", "Cable trough 2"]);
    // Each goes on with its own; neither writes into the other's.
    await flat(two).fill("9/16");
    await flat(one).fill("1");
    await expect.poll(() => keptFlats(one)).toEqual(["9/16", 1].sort());
    await press(one, "Open the other tab’s");
    await expect.poll(() => flat(one).inputValue()).toBe("9/16");
    await Promise.all([one.close(), two.close()]);
    const again = await tab();
    expect((await jobNames(again)).length).toBe(2);
  });

  it("a job that lies open nowhere else is simply taken over, on a phone's width too", async () => {
    await one.setViewportSize(PHONE.viewport!);
    await press(two, "New job");
    await type(two, "Name", "Drip edge");
    await expect.poll(() => jobNames(one)).toEqual(["Cable trough", "Drip edge"]);
    expect(await notices(one)).toBe("");
  });
});

describe("a file that is not saved", () => {
  it("refused by the browser as it is asked for: a sentence, the job as it was, and the text to copy", async () => {
    const page = await tab(() => {
      URL.createObjectURL = () => {
        throw new DOMException("no room", "QuotaExceededError");
      };
    });
    await flat(page).fill("7/16");
    await press(page, "Save as a file");
    await until(
      () => notices(page),
      /cable-trough\.json could not be saved as a file\. Your job is as it was/,
    );
    const text = await page.getByLabel("Its text, to copy:").inputValue();
    expect(JSON.parse(text).part.flats[0]).toBe("7/16");
    expect(await keptFlats(page)).toEqual(["7/16"]);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
    expect(wide).toBeLessThanOrEqual(0);
  });

  it("given up after it was asked for, as when the disk is full: where it should be is said, with the text to copy", async () => {
    await context.close();
    context = await browser.newContext({ acceptDownloads: false, ...DESKTOP });
    const page = await tab();
    const [download] = await Promise.all([page.waitForEvent("download"), press(page, "Save as a file")]);
    expect(await download.failure()).not.toBeNull();
    const line = page.locator(".handed");
    expect(await words(line.locator("summary"))).toBe(
      "cable-trough.json went to your browser. Not among your downloads?",
    );
    await line.locator("summary").click();
    const text = await line.getByLabel("Its text, to copy:").inputValue();
    expect(JSON.parse(text).part.name).toBe("Cable trough");
    expect(await flat(page).inputValue()).toBe("1/2");
  });
});
