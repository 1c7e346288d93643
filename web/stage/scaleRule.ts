/**
 * The scale bar: the longest round length of the user's unit that fits, drawn at the foot of the stage.
 */
import { MM_PER_INCH } from "../../src/units/length.ts";
import type { Camera } from "./camera.ts";
import type { Ink } from "./ink.ts";
import { type Scope, wordsItem } from "./pen.ts";

const INCHES: readonly (readonly [number, string])[] = [
  [1 / 64, "1⁄64 in"],
  [1 / 32, "1⁄32 in"],
  [1 / 16, "1⁄16 in"],
  [1 / 8, "1⁄8 in"],
  [1 / 4, "1⁄4 in"],
  [1 / 2, "1⁄2 in"],
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
export function paintScale(scope: Scope, camera: Camera, units: "mm" | "in", ink: Ink): void {
  const { width, height } = scope.view.bounds;
  const { mm, words } = roundLength((width * 0.3) / camera.scale, units);
  const [x, y] = [14, height - 14];
  const long = mm * camera.scale;
  const half = (from: number, fill: string) => {
    const box = new scope.Path.Rectangle(new scope.Point(x + from, y - 5), new scope.Size(long / 2, 5));
    box.fillColor = new scope.Color(fill);
    box.strokeColor = new scope.Color(ink.ink);
  };
  half(0, ink.ink);
  half(long / 2, ink.paper);
  wordsItem(scope, { x: x + long + 8, y: y + 1 }, words, ink.ink, ink.paper, "left");
}
