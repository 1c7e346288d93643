/**
 * A part typed from a blank page by keyboard alone: every key pressed counts as one action, a letter as well as a Tab. The bounds
 * are what it took when this was written and a few keys; a field that gets in the way shows as a count over them.
 */
import type { Page } from "playwright-core";
import { describe, expect, it } from "vitest";
import { pageTests, settled, verdict } from "./shop.ts";

const tests = pageTests();

/** Keys of one visit, counted; the mouse is never touched. */
class Keys {
  count = 0;
  constructor(private readonly page: Page) {}

  async press(key: string): Promise<void> {
    this.count++;
    await this.page.keyboard.press(key);
  }

  async type(text: string): Promise<void> {
    for (const sign of text) await this.press(sign);
  }

  /** Goes on, or back, until what has the keys is called so. */
  async to(name: RegExp, key: "Tab" | "Shift+Tab" = "Tab"): Promise<void> {
    for (let i = 0; i < 150; i++) {
      if (name.test(await this.name())) return;
      await this.press(key);
    }
    throw new Error(`the keys never came to ${name}`);
  }

  private name(): Promise<string> {
    return this.page.evaluate(() => {
      const at = document.activeElement;
      if (at === null) return "";
      const labels = at instanceof HTMLInputElement || at instanceof HTMLSelectElement ? at.labels : null;
      return (at.getAttribute("aria-label") ?? labels?.[0]?.textContent ?? at.textContent ?? "").trim();
    });
  }
}

/** A blank job from a first visit: by the contents to the jobs, a new one, and its name. */
async function blank(page: Page, name: string): Promise<Keys> {
  const keys = new Keys(page);
  await keys.to(/^Jobs$/);
  await keys.press("Enter");
  await keys.to(/^New job$/);
  await keys.press("Enter");
  await keys.to(/^Name$/);
  await keys.type(name);
  return keys;
}

const partOf = async (page: Page) => {
  await settled(page);
  return page.evaluate(() => {
    const id = localStorage.getItem("noseroom.open")!;
    return JSON.parse(localStorage.getItem(`noseroom.job.${id}`)!).file.part;
  });
};

describe("by keyboard alone, from a blank page", () => {
  it("the trough is typed", async () => {
    const page = await tests.visit();
    const keys = await blank(page, "Trough");
    await keys.to(/^Channel$/);
    await keys.press("Enter");
    await keys.to(/^Flat 2$/);
    await keys.type("3/8");
    expect(await partOf(page)).toMatchObject({
      name: "Trough",
      flats: ["1/2", "3/8", "1/2"],
      bends: [
        { angle: 90, turn: "up" },
        { angle: 90, turn: "up" },
      ],
    });
    expect(await verdict(page)).toBe("hits");
    process.stdout.write(`the trough: ${keys.count} keys\n`);
    expect(keys.count).toBeLessThan(60);
  });

  it("a tray edge with a hem is typed", async () => {
    const page = await tests.visit();
    const keys = await blank(page, "Tray edge");
    await keys.to(/^Flat 1$/);
    await keys.type("2");
    await keys.to(/^Flat 2$/);
    await keys.type("3/4");
    await keys.to(/^Add a hem$/);
    await keys.press("Enter");
    await keys.to(/^Flat 3$/, "Shift+Tab");
    await keys.type("1/4");
    expect(await partOf(page)).toMatchObject({
      name: "Tray edge",
      flats: [2, "3/4", "1/4"],
      bends: [
        { angle: 90, turn: "up" },
        { hem: "closed", turn: "up" },
      ],
    });
    expect(await verdict(page)).not.toBe("");
    process.stdout.write(`the tray edge: ${keys.count} keys\n`);
    expect(keys.count).toBeLessThan(80);
  });
});
