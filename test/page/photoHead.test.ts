/**
 * What a picture file says of itself, and what the page does with one that is none, damaged or far too large.
 * Sources: files built by the formats' own documents (photoFiles.ts), and pictures that Chromium made.
 */
import type { Server } from "node:http";
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { photoHead } from "../../web/trace/photoHead.ts";
import { DESKTOP, launch } from "./browser.ts";
import { avifHead, bmp, gif, jpegHead, png, webpHead } from "./photoFiles.ts";
import { attackWithPictures, type PictureFile, picturesOf, readyToTrace, show } from "./photosOnPage.ts";
import { complaintsOf, openShop, visit } from "./shop.ts";

describe("photoHead", () => {
  it.each([
    ["PNG", png(300, 200, 1), 300, 200],
    ["GIF", gif(300, 200), 300, 200],
    ["BMP", bmp(300, 200), 300, 200],
    ["BMP", bmp(300, -200), 300, 200],
    ["JPEG", jpegHead(300, 200), 300, 200],
    ["JPEG", jpegHead(16320, 12240, 65000), 16320, 12240],
    ["WebP", webpHead("VP8 ", 300, 200), 300, 200],
    ["WebP", webpHead("VP8L", 16000, 1), 16000, 1],
    ["WebP", webpHead("VP8X", 100_000, 200), 100_000, 200],
    ["AVIF", avifHead(4000, 3000), 4000, 3000],
  ])("reads kind and size of a %s", (kind, bytes, width, height) => {
    expect(photoHead(bytes)).toEqual({ kind, width, height });
  });

  it.each([
    ["nothing", Buffer.alloc(0)],
    ["a text", Buffer.from("GIF is no picture")],
    ["an SVG", Buffer.from('<svg xmlns="http://www.w3.org/2000/svg" width="9" height="9"/>')],
    ["a picture without a size", png(0, 0, 1)],
    [
      "a JPEG whose picture begins before its size",
      Buffer.from([0xff, 0xd8, 0xff, 0xda, 0, 2, 0, 0, 0, 0, 0, 0]),
    ],
  ])("takes %s for none", (_, bytes) => expect(photoHead(bytes)).toBeNull());

  it("takes each beginning that breaks off before the size for none", () => {
    for (const whole of [png(7, 5), gif(7, 5), jpegHead(7, 5), webpHead("VP8X", 7, 5), bmp(7, 5)]) {
      const size = [...Array(whole.length + 1).keys()].findIndex(
        (n) => photoHead(whole.subarray(0, n)) !== null,
      );
      expect(size).toBeGreaterThan(8);
      for (let n = 0; n < size; n++) expect(photoHead(whole.subarray(0, n))).toBeNull();
    }
  });
});

describe("the page, given a picture to trace,", () => {
  let server: Server;
  let browser: Browser;
  let page: Page;
  let complaints: string[];
  beforeAll(async () => {
    const shop = await openShop();
    server = shop.server;
    browser = await launch();
    page = await visit(browser, DESKTOP, shop.address);
    complaints = complaintsOf(page);
    await readyToTrace(page);
  });
  afterAll(async () => {
    await browser?.close();
    server?.close();
  });
  const said = (file: PictureFile) => show(page, file);

  it("shows what Chromium itself made, at the size that the file names", async () => {
    for (const { bytes, type } of await picturesOf(page, 37, 23)) {
      expect(photoHead(bytes)).toMatchObject({ width: 37, height: 23 });
      expect(await said({ name: "made", type, bytes })).toBe("37 × 23");
    }
  });

  it.each([
    [
      "names more points than can be unpacked",
      png(60_000, 60_000, 1),
      "image/png",
      /too large, 3600 million points/,
    ],
    ["is cut off", png(300, 200).subarray(0, 30), "image/png", /could not be read/],
    [
      "is a drawing that could run",
      Buffer.from('<svg onload="window.ran=1"/>'),
      "image/svg+xml",
      /could not be read/,
    ],
    ["is no picture", Buffer.from("%PDF-1.7"), "application/pdf", /not a picture of up to 40 MB/],
  ])("says so where it %s, and keeps the one before", async (_, bytes, type, sentence) => {
    expect(await said({ name: "good.png", type: "image/png", bytes: png(30, 20) })).toBe("30 × 20");
    expect(await said({ name: "bad", type, bytes })).toMatch(sentence);
    expect(await page.locator(".photo svg").getAttribute("viewBox")).toBe("0 0 30 20");
    expect(await page.evaluate(() => Reflect.get(globalThis, "ran") ?? null)).toBeNull();
  });

  it("takes or refuses hundreds of damaged ones in words", async () => {
    const { findings, shown, refused } = await attackWithPictures(page, 300, 11);
    expect(findings).toEqual([]);
    expect(Math.min(shown, refused)).toBeGreaterThan(20);
  });

  it("leaves the console quiet", () => expect(complaints).toEqual([]));
});
