/**
 * A photo that the tests draw themselves: a finger's side on a bench, tilted, with a ruler beside it. Its sizes are
 * known to the drawing, so that what the page traces can be held against them.
 */
import type { Page } from "playwright-core";

export interface Spot {
  readonly x: number;
  readonly y: number;
}

export interface Photo {
  readonly png: Buffer;
  readonly width: number;
  readonly height: number;
  /** Two marks on the ruler and their distance. */
  readonly ruler: readonly [Spot, Spot];
  readonly rulerMm: number;
  /** The finger's corners in the picture, nose first. */
  readonly corners: readonly Spot[];
  /** Two spots on the underside. */
  readonly underside: readonly [Spot, Spot];
  /** The same corners in nose coordinates, mm. */
  readonly trueMm: readonly Spot[];
}

/** Side of a finger: 45° front, 32 mm high, 48 mm deep, nose at the right; mm, y up. */
const TRUE_MM: readonly Spot[] = [
  { x: 0, y: 0 },
  { x: -32, y: 32 },
  { x: -48, y: 32 },
  { x: -48, y: 0 },
];
const PIXELS_PER_MM = 14;
const TILT_DEG = 6;
const SIZE = { width: 1000, height: 800 };

/** Draws the photo in the page's own browser. */
export async function photoOfFinger(page: Page): Promise<Photo> {
  const tilt = (TILT_DEG * Math.PI) / 180;
  const onPhoto = (p: Spot): Spot => ({
    x: 850 + (p.x * Math.cos(tilt) - p.y * Math.sin(tilt)) * PIXELS_PER_MM,
    y: 560 - (p.x * Math.sin(tilt) + p.y * Math.cos(tilt)) * PIXELS_PER_MM,
  });
  const corners = TRUE_MM.map(onPhoto);
  const ruler = [
    { x: 100, y: 740 },
    { x: 100 + 50 * PIXELS_PER_MM, y: 740 },
  ] as const;
  const data = await page.evaluate(
    ({ corners, size, perMm }) => {
      const canvas = document.createElement("canvas");
      canvas.width = size.width;
      canvas.height = size.height;
      const pen = canvas.getContext("2d")!;
      pen.fillStyle = "#8a7a5c";
      pen.fillRect(0, 0, size.width, size.height);
      pen.fillStyle = "#c9ccd0";
      pen.beginPath();
      for (const c of corners) pen.lineTo(c.x, c.y);
      pen.fill();
      pen.fillStyle = "#f4f1e4";
      pen.fillRect(90, 720, 780, 60);
      pen.fillStyle = "#222";
      for (let mm = 0; mm <= 50; mm++) pen.fillRect(100 + mm * perMm, 720, 1.5, mm % 10 === 0 ? 30 : 15);
      return canvas.toDataURL("image/png");
    },
    { corners, size: SIZE, perMm: PIXELS_PER_MM },
  );
  return {
    png: Buffer.from(data.slice(data.indexOf(",") + 1), "base64"),
    ...SIZE,
    ruler,
    rulerMm: 50,
    corners,
    underside: [onPhoto({ x: -8, y: 0 }), onPhoto({ x: -40, y: 0 })],
    trueMm: TRUE_MM,
  };
}
