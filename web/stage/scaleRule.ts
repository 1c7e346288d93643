/**
 * The scale bar: the longest round length of the user's unit that fits, drawn at the foot of the stage.
 */
import { MM_PER_INCH } from "../../src/units/length.ts";
import type { Camera } from "./camera.ts";
import type { Ink } from "./ink.ts";
import { boxOfWords, drawWords, type Sheet } from "./pen.ts";

const INCHES: readonly (readonly [number, string])[] = [
  [1 / 64, "1/64 in"],
  [1 / 32, "1/32 in"],
  [1 / 16, "1/16 in"],
  [1 / 8, "1/8 in"],
  [1 / 4, "1/4 in"],
  [1 / 2, "1/2 in"],
  [1, "1 in"],
  [2, "2 in"],
  [5, "5 in"],
  [10, "10 in"],
];
const MILLIMETRES = [0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500];

/** The bar's length in mm and its words. @example roundLength(13, "mm") // { mm: 10, words: "10 mm" } */
export function roundLength(
  mostMm: number,
  units: "mm" | "in",
): { readonly mm: number; readonly words: string } {
  if (units === "mm") {
    const mm = MILLIMETRES.findLast((length) => length <= mostMm) ?? MILLIMETRES[0]!;
    return { mm, words: `${mm} mm` };
  }
  const [inches, words] = INCHES.findLast(([length]) => length * MM_PER_INCH <= mostMm) ?? INCHES[0]!;
  return { mm: inches * MM_PER_INCH, words };
}

/** Paints the bar at the lower left. */
export function paintScale(sheet: Sheet, camera: Camera, units: "mm" | "in", ink: Ink): void {
  const { ctx, width, height } = sheet;
  const { mm, words } = roundLength(Math.min(150, width * 0.25) / camera.scale, units);
  const [x, y] = [14, height - 14];
  const long = mm * camera.scale;
  ctx.strokeStyle = ink.ink;
  ctx.lineWidth = 1;
  for (const [share, fill] of [
    [0, ink.ink],
    [0.5, ink.paper],
  ] as const) {
    ctx.fillStyle = fill;
    ctx.fillRect(x + share * long, y - 5, long / 2, 5);
    ctx.strokeRect(x + share * long, y - 5, long / 2, 5);
  }
  const { halfWide } = boxOfWords(sheet, words, { x, y });
  drawWords(sheet, words, { x: x + long + 8 + halfWide, y: y - 3 }, ink.ink, ink.paper);
}
