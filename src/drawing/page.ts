/**
 * A printed page: a sheet of paper with drawings placed on it, each at its scale and cut off at its window.
 * Page frame: millimetres, origin at the lower left corner of the paper, y up.
 */
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";
import type { Drawing, Mark } from "./model.ts";
import type { PageSize } from "./pageSize.ts";

export interface Placed {
  readonly drawing: Drawing;
  /** Where the lower left corner of the drawing's window comes to lie on the page. */
  readonly at: Point;
  /** Page millimetres to a millimetre of the drawing; 1 is full size. */
  readonly scale: number;
}

export interface Page {
  readonly size: PageSize;
  readonly placed: readonly Placed[];
}

/** Marks in the page's own millimetres, cut off only at the edge of the paper. */
export function onPaper(size: PageSize, sentence: string, marks: readonly Mark[]): Placed {
  const window = { min: { x: 0, y: 0 }, max: { x: size.widthMm, y: size.heightMm } };
  return { drawing: { sentence, window, marks }, at: window.min, scale: 1 };
}

/**
 * A drawing made to fit a box of the page, as large as goes up to `mostScale`, in the middle of the box.
 * @throws RangeError when the window or the box has no area
 * @example placeInBox({ sentence: "", window: { min: { x: 0, y: 0 }, max: { x: 10, y: 10 } }, marks: [] }, { min: { x: 0, y: 0 }, max: { x: 50, y: 40 } }).scale // 4
 */
export function placeInBox(
  drawing: Drawing,
  box: Drawing["window"],
  mostScale: number = Number.POSITIVE_INFINITY,
): Placed {
  const { min, max } = drawing.window;
  const [width, height] = [max.x - min.x, max.y - min.y];
  const [boxWidth, boxHeight] = [box.max.x - box.min.x, box.max.y - box.min.y];
  if (!(width > 0 && height > 0 && boxWidth > 0 && boxHeight > 0)) {
    throw new RangeError("a drawing and the box that it goes in need a width and a height");
  }
  const scale = Math.min(boxWidth / width, boxHeight / height, mostScale);
  const at = {
    x: box.min.x + (boxWidth - width * scale) / 2,
    y: box.min.y + (boxHeight - height * scale) / 2,
  };
  return { drawing, at, scale };
}

/** Where a point of a placed drawing comes to lie on the page. */
export function toPage({ drawing, at, scale }: Placed, point: Point): Point {
  const { min } = drawing.window;
  return { x: at.x + (point.x - min.x) * scale, y: at.y + (point.y - min.y) * scale };
}

/** Box of the page that a placed drawing fills. */
export function boxOf(placed: Placed): Drawing["window"] {
  const { min, max } = placed.drawing.window;
  return { min: toPage(placed, min), max: toPage(placed, max) };
}

/** The same paper laid on its side. @example onItsSide(A4).widthMm // 297 */
export function onItsSide(size: PageSize): PageSize {
  return { name: size.name, widthMm: size.heightMm, heightMm: size.widthMm };
}

/** Size of a window. @example spanOf({ min: { x: 1, y: 1 }, max: { x: 4, y: 3 } }).widthMm // 3 */
export function spanOf({ min, max }: Drawing["window"]): { readonly widthMm: Mm; readonly heightMm: Mm } {
  return { widthMm: max.x - min.x, heightMm: max.y - min.y };
}
