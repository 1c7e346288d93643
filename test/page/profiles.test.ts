/**
 * Clamp profiles from outside: traced on a photo whose sizes are known, and read from DXF drawings written by hand
 * after the DXF reference (group codes 10, 20, 40, 42, 50, 51, 70).
 */
import type { Page } from "playwright-core";
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

describe.each([
  ["desktop", DESKTOP],
  ["phone", PHONE],
] as const)("tracing a photo on a %s", (_name, options) => {
  it("gives the finger's sizes back within 1 %, tilted as the photo is", async () => {
    const page = await tests.visit(options);
    await page.getByRole("radio", { name: "mm" }).check();
    await page.getByRole("radio", { name: "Own profile" }).check();
    const photo = await photoOfFinger(page);
    await page
      .locator('input[type="file"][accept="image/*"]')
      .setInputFiles({ name: "finger.png", mimeType: "image/png", buffer: photo.png });
    const picture = page.locator(".photo svg");
    await picture.waitFor();
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
});
