/**
 * The return flange chart on the page: right by the closed form of a 45° finger (design of the section model, worked out
 * by hand: longest flange F = W − T + r − (1 + √2)·Rn, no overbend), the part's own as a dot, drawn anew as the clamp is
 * changed, printed on one page of A4 or Letter.
 */
import type { Server } from "node:http";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { readPdf } from "../pictures/readPdf.ts";
import { DESKTOP, launch } from "./browser.ts";
import { openShop, press, saved, settled, until, visit, watchPrinting, words } from "./shop.ts";

let browser: Browser;
let server: Server;
let address: string;
let page: Page;

beforeAll(async () => {
  [browser, { server, address }] = await Promise.all([launch(), openShop()]);
  page = await visit(browser, DESKTOP, address);
});
afterAll(async () => {
  await browser?.close();
  server?.close();
});

const TROUGH = {
  noseroom: 1,
  units: "in",
  part: {
    name: "Narrow trough",
    material: "mild steel",
    thickness: "1/32",
    insideRadius: "1/32",
    length: 12,
    dimensions: "outside",
    flats: ["1/2", "3/8", "1/2"],
    bends: [
      { angle: 90, turn: "up", overbend: 90 },
      { angle: 90, turn: "up", overbend: 90 },
    ],
  },
  brake: {
    name: "Finger brake",
    clamp: { type: "finger", noseAngle: 45, noseRadius: "1/32", height: 3, footDepth: 5 },
    bed: {
      profile: [
        [-6, -3],
        [0, -3],
        [0, 0],
        [-6, 0],
      ],
    },
    leaf: {
      profile: [
        [0, -0.375],
        [1, -0.375],
        [1, 0],
        [0, 0],
      ],
      swing: 135,
    },
    lift: 3,
    openEnds: true,
  },
};

const table = () => page.getByRole("table", { name: "Longest return flange" });
/** The limit at 90° for a web, as the table has it. */
const limitAt = async (web: string) => {
  const heads = await table().locator("thead th").allTextContents();
  const row = table().locator("tbody tr", { has: page.getByRole("cell", { name: web, exact: true }) });
  return words(row.locator("td").nth(heads.indexOf("at 90°")));
};
const inches = (text: string) =>
  text.split(" ").reduce((sum, piece) => {
    const [over = 0, under = 1] = piece.split("/").map(Number);
    return sum + over / under;
  }, 0);

describe("the return flange chart", () => {
  it("has the limits of a 45° finger, rounded down to 1/64 in, and the part as a dot", async () => {
    await page.getByLabel("Open a file", { exact: true }).setInputFiles({
      name: "trough.json",
      mimeType: "application/json",
      buffer: Buffer.from(JSON.stringify(TROUGH)),
    });
    await until(() => page.getByLabel("Name", { exact: true }).inputValue(), /^Narrow trough/);
    await settled(page);
    await press(page, "Draw the chart");
    await table().waitFor();
    for (const web of ["3/8", "1/2", "1"]) {
      const exact = inches(web) - (1 + Math.SQRT2) / 32;
      const shown = inches(await limitAt(web));
      expect(shown, web).toBeLessThanOrEqual(exact);
      expect(shown, web).toBeGreaterThan(exact - 1 / 64 - 0.001);
    }
    const own =
      "Flat 2 of the part: web 3/8 in, return flange 1/2 in, 90°. That is too long: the longest there is 19/64 in.";
    expect(await words(page.locator(".own"))).toBe(own);
    const picture = await saved(page, () => press(page, "Chart as SVG"));
    expect(picture.name).toBe("finger-brake-return-flanges.svg");
    expect(picture.text).toMatch(/<title>flat 2<\/title>/);
  });

  it("is printed alone, on one page of the shop's paper", async () => {
    await watchPrinting(page);
    await press(page, "Print the chart");
    await page.locator('body[data-print-box="open"]').waitFor();
    const pages = await readPdf(new Uint8Array(await page.pdf({ preferCSSPageSize: true })));
    expect(pages.length).toBe(1);
    expect(pages[0]?.widthMm).toBeCloseTo(215.9, 0);
    expect(pages[0]?.words.map((one) => one.words).join(" ")).toMatch(
      /Longest return flange on Finger brake/,
    );
    await page.evaluate(() => dispatchEvent(new Event("afterprint")));
  });

  it("is drawn anew as the clamp is changed", async () => {
    const before = await limitAt("1/2");
    await page.getByRole("textbox", { name: /^Nose angle/ }).fill("60");
    await expect.poll(() => limitAt("1/2")).not.toBe(before);
    expect(inches(await limitAt("1/2"))).toBeLessThan(inches(before));
  });
});
