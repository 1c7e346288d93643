/**
 * Clamp profiles from outside: traced on a photo whose sizes are known, and read from DXF drawings written by hand
 * after the DXF reference (group codes 10, 20, 40, 42, 50, 51, 70).
 */
import type { BrowserContextOptions, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { DESKTOP, PHONE } from "./browser.ts";
import { arc, drawing, line, lwpolyline } from "./dxfText.ts";
import { photoOfFinger, type Spot } from "./photo.ts";
import { pageTests, press, sentence, settled, until, words } from "./shop.ts";

const tests = pageTests();

/** The first clamp profile as it stands in the table. */
async function cornersOn(page: Page): Promise<number[][]> {
  await settled(page);
  const rows = await page
    .locator('table:has(caption:text("Clamp profile 1")) tbody tr')
    .evaluateAll((all) =>
      all.map((row) => Array.from(row.querySelectorAll("input")).map((input) => input.value)),
    );
  return rows.map((row) => row.filter((value) => value !== "").map(Number));
}

/** A page in mm with the photo of a finger, to be traced as a clamp of its own profile. */
async function photoShown(options: BrowserContextOptions) {
  const page = await tests.visit(options);
  await page.getByRole("radio", { name: "mm" }).check();
  await page.getByRole("radio", { name: "Own profile" }).check();
  const photo = await photoOfFinger(page);
  await page
    .locator('input[type="file"][accept="image/*"]')
    .setInputFiles({ name: "finger.png", mimeType: "image/png", buffer: photo.png });
  const picture = page.locator(".photo svg");
  await picture.waitFor();
  return { page, photo, picture };
}

describe.each([
  ["desktop", DESKTOP],
  ["phone", PHONE],
] as const)("tracing a photo on a %s", (_name, options) => {
  it("gives the finger's sizes back within 1 %, tilted as the photo is", async () => {
    const { page, photo, picture } = await photoShown(options);
    const clickAt = async (spot: Spot) => {
      await picture.scrollIntoViewIfNeeded();
      const box = await picture.boundingBox();
      if (box === null) throw new Error("the photo is not shown");
      const at = { x: (spot.x / photo.width) * box.width, y: (spot.y / photo.height) * box.height };
      await picture.click({ position: at });
    };
    for (const spot of photo.ruler) await clickAt(spot);
    await page.getByRole("radio", { name: "2 Outline" }).check();
    for (const spot of photo.corners) await clickAt(spot);
    await page.getByRole("radio", { name: "3 Underside" }).check();
    for (const spot of photo.underside) await clickAt(spot);
    await page.getByLabel(/^Distance of the two ruler points/).fill("50 mm");
    await until(() => words(page.locator(".traced")), /^Traced: 4[78]/);
    await press(page, "Make it the clamp");

    const corners = await cornersOn(page);
    expect(corners.length).toBe(photo.trueMm.length);
    photo.trueMm.forEach((corner, i) => {
      // 1 % of the finger's depth of 48 mm.
      expect(Math.abs(corners[i]![0]! - corner.x)).toBeLessThan(0.48);
      expect(Math.abs(corners[i]![1]! - corner.y)).toBeLessThan(0.48);
    });
    const depth = Math.max(...corners.map((c) => c[0]!)) - Math.min(...corners.map((c) => c[0]!));
    const height = Math.max(...corners.map((c) => c[1]!));
    expect(Math.abs(depth / 48 - 1)).toBeLessThan(0.01);
    expect(Math.abs(height / 32 - 1)).toBeLessThan(0.01);
    expect(await sentence(page)).toMatch(/^(Does not fold|Folds)/);
    await page.context().close();
  });
});

describe("a profile from a DXF drawing", () => {
  let page: Page;
  beforeAll(async () => {
    page = await tests.visit(DESKTOP);
    await page.getByRole("radio", { name: "mm" }).check();
    await page.getByRole("radio", { name: "Own profile" }).check();
  });
  afterAll(() => page?.context().close());

  const open = (name: string, text: string) =>
    page
      .locator('input[type="file"][accept=".dxf"]')
      .setInputFiles({ name, mimeType: "image/vnd.dxf", buffer: Buffer.from(text) });

  it("takes a polyline with a bulged nose as corners with a radius, moved to the nose's frame", async () => {
    // Bar 45 × 6 in inches/25.4 with a quarter-round nose of 0.8 at its lower front; bulge tan(90°/4).
    const bulge = Math.tan(Math.PI / 8);
    const text = drawing(4, [
      lwpolyline(
        [
          [100, 50, 0],
          [144.2, 50, bulge],
          [145, 50.8, 0],
          [145, 56, 0],
          [100, 56, 0],
        ],
        true,
      ),
    ]);
    await open("bar.dxf", text);
    await until(async () => JSON.stringify(await cornersOn(page)), /\[-45,6\]/);
    const corners = await cornersOn(page);
    expect(corners).toContainEqual([0, 0, 0.8]);
    expect(corners).toContainEqual([-45, 6]);
    expect(await page.getByLabel("Nose radius", { exact: true }).inputValue()).toBe("0.8");
    expect(await sentence(page)).toMatch(/^(Does not fold|Folds)/);
  });

  it("chains loose lines and an arc, drawn either way round, in inches", async () => {
    const text = drawing(1, [
      line(0, 0, 1.9, 0),
      arc(1.9, 0.1, 0.1, 270, 360),
      line(2, 1, 2, 0.1),
      line(2, 1, 0, 1),
      line(0, 1, 0, 0),
    ]);
    await open("pieces.dxf", text);
    await until(async () => JSON.stringify(await cornersOn(page)), /-50\.8,25\.4/);
    const corners = await cornersOn(page);
    expect(corners.length).toBe(4);
    expect(corners).toContainEqual([0, 0, 2.54]);
  });

  it("says what is wrong with a drawing that is cut off or open, and keeps the clamp", async () => {
    const before = await cornersOn(page);
    const whole = drawing(4, [line(0, 0, 10, 0), line(10, 0, 10, 5), line(10, 5, 0, 5)]);
    await open("open.dxf", whole);
    await until(() => words(page.locator(".notices")), /open\.dxf: No closed outline was found/);
    await open("cut.dxf", whole.slice(0, whole.length / 2));
    await until(() => words(page.locator(".notices")), /cut\.dxf: /);
    expect(await cornersOn(page)).toEqual(before);
  });

  it("asks for the unit where the drawing does not say it, with the size that each would make it", async () => {
    const text = drawing(0, [
      line(0, 0, 2, 0),
      line(2, 0, 2, 0.25),
      line(2, 0.25, 0, 0.25),
      line(0, 0.25, 0, 0),
    ]);
    const before = await cornersOn(page);
    await open("plain.dxf", text);
    await until(
      () => words(page.locator(".notices")),
      /plain\.dxf does not say its unit\. It is 2 by 0\.25 units: which ones\?/,
    );
    expect(await cornersOn(page)).toEqual(before);
    await press(page, "2 by 0.25 inches");
    await until(async () => JSON.stringify(await cornersOn(page)), /\[-50\.8,6\.35\]/);
    await open("plain.dxf", text);
    await press(page, "2 by 0.25 millimetres");
    await until(async () => JSON.stringify(await cornersOn(page)), /\[-2,0\.25\]/);
  });
});

describe("a photo taken aslant", () => {
  it("gives the sizes back by four corners of a square held to the clamp's side; clicks say what they did", async () => {
    const { page, photo, picture: svg } = await photoShown(DESKTOP);
    // A camera 400 mm off that looks 25° past the clamp's side: x along it, y up, in millimetres, to points of the photo.
    const seen = ({ x, y }: Spot): Spot => {
      const [c, s] = [Math.cos(0.436), Math.sin(0.436)];
      const away = 400 + (x + 20) * s;
      return { x: 500 + (4800 * (x + 20) * c) / away, y: 400 - (4800 * (y - 15)) / away };
    };
    const clickAt = async (spot: Spot) => {
      await svg.scrollIntoViewIfNeeded();
      const box = (await svg.boundingBox())!;
      await svg.click({
        position: { x: (spot.x / photo.width) * box.width, y: (spot.y / photo.height) * box.height },
      });
    };
    const square = [
      { x: -50, y: 45 },
      { x: 10, y: 45 },
      { x: 10, y: -15 },
      { x: -50, y: -15 },
    ];
    await page.getByRole("radio", { name: "Photo aslant" }).check();
    for (const corner of square) await clickAt(seen(corner));
    await page.getByLabel(/^First to second corner/).fill("60 mm");
    await page.getByLabel(/^Second to third corner/).fill("60 mm");
    const said = () => words(page.locator(".tracing .note"));
    expect(await said()).toMatch(/^Rectangle corner 4 is set\.$/);
    await page.getByRole("radio", { name: "2 Outline" }).check();
    for (const corner of photo.trueMm) await clickAt(seen(corner));
    // A press on a mark takes hold of it; it does not set another.
    await clickAt(seen(photo.trueMm[2]!));
    expect(await said()).toMatch(/^You hold outline point 3: drag it\./);
    await page.getByRole("radio", { name: "3 Underside" }).check();
    for (const x of [-8, -40, -44]) await clickAt(seen({ x, y: 0 }));
    expect(await said()).toMatch(/^There are only 2 of these: the oldest was taken away/);
    await press(page, "Make it the clamp");
    const corners = await cornersOn(page);
    expect(corners.length).toBe(4);
    photo.trueMm.forEach((corner, i) => {
      expect(Math.abs(corners[i]![0]! - corner.x)).toBeLessThan(0.6);
      expect(Math.abs(corners[i]![1]! - corner.y)).toBeLessThan(0.6);
    });
  });
});
