/**
 * Puts drawn or traced outlines where a clamp belongs: underside on y = 0, foremost point of the nose on x = 0.
 * Roundings count: the foremost point of a rounded corner lies on its arc. Exact to rounding.
 */
import { boxOf } from "../../src/plane/bounding.ts";
import { type Corner, filletedOutline } from "../../src/plane/fillet.ts";
import { MM_PER_INCH } from "../../src/units/length.ts";
import type { Profile } from "../store/jobFile.ts";

/** Corners moved into nose coordinates, or null where one of them is no closed outline. */
export function inNoseFrame(shapes: readonly (readonly Corner[])[]): readonly (readonly Corner[])[] | null {
  const outlines = shapes.map((corners) => filletedOutline(corners));
  if (outlines.length === 0 || outlines.some((result) => !result.ok)) return null;
  const box = boxOf(...outlines.flatMap((result) => (result.ok ? [result.outline] : [])));
  return shapes.map((corners) => corners.map((c) => ({ ...c, x: c.x - box.maxX, y: c.y - box.minY })));
}

/** A measured length as the job file writes it, in the user's unit, to a thousandth of a mm or finer. */
export function measured(mm: number, units: "mm" | "in"): number {
  return (units === "mm" ? Number(mm.toFixed(3)) : Number((mm / MM_PER_INCH).toFixed(5))) + 0;
}

/** Corners as the job file writes them. */
export function asProfile(corners: readonly Corner[], units: "mm" | "in"): Profile {
  const write = (mm: number) => measured(mm, units);
  return corners.map((c) =>
    c.radius ? ([write(c.x), write(c.y), write(c.radius)] as const) : ([write(c.x), write(c.y)] as const),
  );
}

/** The corner at the nose: the one nearest to the frame's origin. */
export function noseCorner(corners: readonly Corner[]): number {
  let best = 0;
  corners.forEach((c, i) => {
    if (Math.hypot(c.x, c.y) < Math.hypot(corners[best]!.x, corners[best]!.y)) best = i;
  });
  return best;
}
