/**
 * The card on paper: whole pages with the drawing complete, on A4 and Letter, from desktop and phone. Read back from the
 * browser's own PDF with another library.
 */
import { getDocument } from "pdfjs-dist/legacy/build/pdf.mjs";
import type { Page } from "playwright-core";
import { expect, it } from "vitest";
import { DESKTOP, PHONE } from "./browser.ts";
import { pageTests } from "./shop.ts";

const tests = pageTests();

/** Where the drawing lies when the card is printed, and how much of it is painted. */
async function drawnForPaper(page: Page) {
  await page.emulateMedia({ media: "print" });
  await page.evaluate(() => dispatchEvent(new Event("beforeprint")));
  return page.evaluate(() => {
    const box = document.querySelector(".canvas-box")!.getBoundingClientRect();
    return [...document.querySelectorAll<HTMLCanvasElement>(".canvas-box canvas")].map((canvas) => {
      const at = canvas.getBoundingClientRect();
      const { width, height } = canvas;
      const points = canvas.getContext("2d")!.getImageData(0, 0, width, height).data;
      const filled = (x: number, y: number) => points[4 * (y * width + x) + 3]! > 0;
      let right = 0;
      for (let x = 0; x < width; x += 3) for (let y = 0; y < height; y += 3) if (filled(x, y)) right = x;
      return {
        inside: at.left >= box.left - 1 && at.right <= box.right + 1 && at.bottom <= box.bottom + 1,
        shape: at.width / at.height,
        painted: width / height,
        rightShare: right / width,
      };
    });
  });
}

it.each([
  ["desktop", DESKTOP],
  ["phone", PHONE],
] as const)("has the drawing complete from a %s, at one shape", async (_name, options) => {
  const page = await tests.visit(options);
  for (const canvas of await drawnForPaper(page)) {
    expect(canvas.inside).toBe(true);
    expect(canvas.shape).toBeCloseTo(canvas.painted, 1);
    expect(canvas.painted).toBeCloseTo(700 / 380, 1);
  }
  await page.evaluate(() => dispatchEvent(new Event("afterprint")));
  await page.emulateMedia({ media: "screen" });
  const screen = await page.locator(".canvas-box canvas").nth(1).boundingBox();
  const box = await page.locator(".canvas-box").boundingBox();
  expect(Math.round(screen?.width ?? 0)).toBe(Math.round(box?.width ?? -1));
});

it.each(["A4", "Letter"] as const)(
  "is printed on whole pages of %s with answer, steps and blank",
  async (format) => {
    const page = await tests.visit();
    const pdf = await page.pdf({
      format,
      printBackground: true,
      margin: { top: "12mm", bottom: "12mm", left: "12mm", right: "12mm" },
    });
    const read = await getDocument({ data: new Uint8Array(pdf), verbosity: 0 }).promise;
    let all = "";
    for (let i = 1; i <= read.numPages; i++) {
      const text = await (await read.getPage(i)).getTextContent();
      const words = text.items.map((item) => ("str" in item ? item.str : "")).join(" ");
      expect(words.trim().length).toBeGreaterThan(20);
      all += ` ${words}`;
    }
    expect(all).toMatch(/Does not fold/);
    expect(all).toMatch(/Steps/);
    expect(all).toMatch(/Blank/);
    expect(all).not.toMatch(/Do it|Undo|Contents/);
  },
);
