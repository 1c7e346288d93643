/**
 * From points clicked on a photo to a clamp profile: scale by two points a known distance apart, level by two points
 * on the underside, nose to the right. A picture taken square on keeps lengths; four corners of a known rectangle put right
 * one that was taken aslant.
 */
import type { Corner } from "../../src/plane/fillet.ts";
import { flattened } from "./perspective.ts";
import { inNoseFrame, noseCorner } from "./place.ts";

/** A spot on the picture, in picture points, y down. */
export interface Spot {
  readonly x: number;
  readonly y: number;
}

export interface Tracing {
  readonly scale: readonly Spot[];
  /** Four corners of a rectangle in the clamp's plane, in their order around; with its size they take the slant out. */
  readonly square?: readonly Spot[];
  readonly squareMm?: { readonly wide: number | undefined; readonly high: number | undefined };
  /** Distance between the two scale spots. */
  readonly apartMm: number | undefined;
  readonly level: readonly Spot[];
  readonly outline: readonly Spot[];
  readonly noseAt: "right" | "left";
  /** Rounding to put on the nose's corner; undefined leaves the outline as clicked. */
  readonly noseRadiusMm: number | undefined;
}

export type Traced =
  | { readonly ok: true; readonly corners: readonly Corner[] }
  | { readonly ok: false; readonly missing: string };

/** The profile in nose coordinates, mm; or what is still missing. */
export function traced(tracing: Tracing): Traced {
  const { level, outline } = tracing;
  const plane = planeOf(tracing);
  if (typeof plane === "string") return { ok: false, missing: plane };
  if (outline.length < 3)
    return { ok: false, missing: `Click round the outline: ${outline.length} of at least 3 points so far.` };
  if (level.length < 2) return { ok: false, missing: "Mark two points on the underside, to level it." };
  const mirror = tracing.noseAt === "left" ? -1 : 1;
  const upright = (spot: Spot) => {
    const { x, y } = plane(spot);
    return { x: mirror * x, y: -y };
  };
  const [a, b] = [upright(level[0]!), upright(level[1]!)];
  // The picture stands upright, so the underside is turned by less than a quarter.
  let tilt = Math.atan2(b.y - a.y, b.x - a.x);
  if (Math.abs(tilt) > Math.PI / 2) tilt -= Math.sign(tilt) * Math.PI;
  const turned = (spot: Spot): Corner => {
    const p = upright(spot);
    return { x: p.x * Math.cos(tilt) + p.y * Math.sin(tilt), y: p.y * Math.cos(tilt) - p.x * Math.sin(tilt) };
  };
  const plain = inNoseFrame([outline.map(turned)])?.[0];
  if (plain === undefined)
    return { ok: false, missing: "The outline crosses itself or two points lie on each other." };
  if (!tracing.noseRadiusMm) return { ok: true, corners: plain };
  const nose = noseCorner(plain);
  const rounded = plain.map((c, i) => (i === nose ? { ...c, radius: tracing.noseRadiusMm! } : c));
  const placed = inNoseFrame([rounded])?.[0];
  if (placed === undefined)
    return { ok: false, missing: "The nose radius does not fit between the points beside the nose." };
  return { ok: true, corners: placed };
}

/** Millimetres in the clamp's plane for a spot of the picture, or what is missing for it. */
function planeOf({ scale, apartMm, square = [], squareMm }: Tracing): ((spot: Spot) => Spot) | string {
  if (square.length > 0) {
    if (square.length < 4) return `Click the four corners of the rectangle: ${square.length} so far.`;
    const { wide, high } = squareMm ?? {};
    if (wide === undefined || high === undefined) return "Say how wide and how high the rectangle is.";
    return (
      flattened(square, wide, high) ??
      "The four corners cross each other: click them in their order around, from the upper left to the right."
    );
  }
  if (scale.length < 2) return "Mark two points on the ruler, or four corners of a rectangle.";
  if (apartMm === undefined || apartMm <= 0) return "Say how far apart the two points are.";
  const pixels = Math.hypot(scale[0]!.x - scale[1]!.x, scale[0]!.y - scale[1]!.y);
  if (pixels < 2) return "The two points on the ruler lie on each other: set them further apart.";
  const mmPerPixel = apartMm / pixels;
  return ({ x, y }) => ({ x: x * mmPerPixel, y: y * mmPerPixel });
}
