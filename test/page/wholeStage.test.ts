/**
 * The drawing of a whole part: turned by dragging and by keys, cut at any station, fingers from the front, the story played.
 * What is drawn is held against the sizes in the job file.
 */
import type { Page } from "playwright-core";
import { expect, it } from "vitest";
import { DESKTOP } from "./browser.ts";
import { complaintsOf, pageTests, press, settled } from "./shop.ts";

const tests = pageTests();

/** The lipped tray of the examples: 160 by 110, walls 30 high, outside sizes. */
async function tray(options = DESKTOP): Promise<Page> {
  const page = await tests.visit(options);
  await page.getByLabel("Worked examples").selectOption("lens-box-lips");
  await press(page, "Open the example");
  await page.locator(".jobs li.on", { hasText: "lens-box tray" }).waitFor();
  await settled(page);
  await page.locator(".turns .edge").waitFor();
  return page;
}

const edges = (page: Page) => page.locator(".turns .edge").getAttribute("d");
const leaf = (page: Page) => page.getByRole("slider", { name: "Leaf" });

/** Highest and lowest y, and widest x, of the sheet in the section. */
async function sheetIn(page: Page) {
  const paths = await page
    .locator(".beside figure")
    .first()
    .locator("path.part")
    .evaluateAll((all) => all.map((path) => path.getAttribute("d")!));
  const points = paths.flatMap((d) =>
    [...d.matchAll(/(-?[\d.]+) (-?[\d.]+)/g)].map(([, x, y]) => ({ x: Number(x), y: -Number(y) })),
  );
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return { high: Math.max(...ys), low: Math.min(...ys), deep: Math.max(...xs) - Math.min(...xs) };
}

it("turns by dragging, by the arrow keys and by its buttons, and comes back", async () => {
  const page = await tray();
  const complaints = complaintsOf(page);
  const first = await edges(page);
  const box = (await page.locator(".turns").boundingBox())!;
  await page.mouse.move(box.x + 100, box.y + 150);
  await page.mouse.down();
  await page.mouse.move(box.x + 220, box.y + 170, { steps: 5 });
  await page.mouse.up();
  await expect.poll(() => edges(page)).not.toBe(first);
  const dragged = await edges(page);
  await page.locator(".turns svg").focus();
  await page.keyboard.press("ArrowLeft");
  await expect.poll(() => edges(page)).not.toBe(dragged);
  await press(page, "Front left");
  await expect.poll(() => edges(page)).toBe(first);
  expect(complaints).toEqual([]);
});

it("cuts the part at the station of the slider, to the sizes of the job", async () => {
  const page = await tray();
  const forward = page.getByRole("button", { name: "Step forward" });
  // All is bent then: cut across, the tray is 30 high, and 160 or 110 wide with a lip of 10 turned out over each wall of 1.
  const sizes = async () => {
    // On to the last stroke first; pressed from inside the page, where a button that is off does nothing.
    await forward.evaluate((button: HTMLButtonElement) => button.click());
    await page.getByRole("slider", { name: "Section" }).fill("50");
    const { high, low, deep } = await sheetIn(page);
    const [tall, wide] = [high - low, deep].sort((one, other) => one - other) as [number, number];
    // The last bend is drawn with its overbend of some 2°, of a wall and its lip.
    return Math.max(Math.abs(tall - 30), Math.min(Math.abs(wide - 178), Math.abs(wide - 128)));
  };
  await expect.poll(sizes).toBeLessThan(3);
});

it("shows as many fingers from the front as the step names", async () => {
  const page = await tray();
  const said = await page.locator(".step.shown").textContent();
  const widths = /Fingers: ([\d. +]+),/.exec(said ?? "")![1]!.split("+");
  const row = page.locator(".beside figure").nth(1);
  await expect.poll(() => row.locator("path.face").count()).toBe(widths.length);
});

it("plays the fold stroke by stroke, the leaf swinging", async () => {
  const page = await tray();
  await press(page, /^All: play/);
  const seen = new Set<string>();
  const steps = new Set<string>();
  await expect
    .poll(async () => {
      seen.add(await leaf(page).inputValue());
      steps.add((await page.locator(".step.shown strong").textContent()) ?? "");
      return seen.size > 4 && steps.size > 1;
    })
    .toBe(true);
  await press(page, "Pause");
});

it("shows only the ends of the swings where less motion is wished for", async () => {
  const page = await tray({ ...DESKTOP, reducedMotion: "reduce" });
  await page.evaluate(() => {
    const seen: string[] = [];
    Object.assign(window, { seen });
    const slider = document.querySelector<HTMLInputElement>(".whole-stage .leaf input")!;
    const note = () => {
      seen.push(
        Number(slider.value) === 0
          ? "rest"
          : Number(slider.max) - Number(slider.value) < 0.1
            ? "end"
            : "between",
      );
      requestAnimationFrame(note);
    };
    note();
  });
  await press(page, /^All: play/);
  await page.locator(".step.shown", { hasText: "2. Bend" }).waitFor();
  await press(page, "Pause");
  const seen = await page.evaluate(() => (window as unknown as { seen: string[] }).seen);
  expect(seen).toContain("end");
  expect(seen).not.toContain("between");
});
