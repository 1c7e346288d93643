/**
 * Bodies for the kernel's own tests, made from corners; and the kernel's calls with all they need put together.
 */

import { type Features, featuresOf } from "../../src/contact/features.ts";
import { FirstContactSearch } from "../../src/contact/firstContact.ts";
import { type Distance, LeastDistanceSearch } from "../../src/contact/leastDistance.ts";
import type { Swing } from "../../src/motion/swing.ts";
import { filletedOutline } from "../../src/plane/fillet.ts";
import type { Outline } from "../../src/plane/outline.ts";

/** x, y and, where the corner is rounded, its radius. */
export type CornerOf = readonly [number, number, number?];

export function outlineOf(...corners: CornerOf[]): Outline {
  const made = filletedOutline(corners.map(([x, y, radius = 0]) => ({ x, y, radius })));
  if (!made.ok) throw new Error(JSON.stringify(made.fault));
  return made.outline;
}

/** A body's features, its coordinates from the pivot. */
export function bodyOf(...corners: CornerOf[]): Features {
  return featuresOf(outlineOf(...corners), { x: 0, y: 0 });
}

export function blockAt(x0: number, y0: number, x1: number, y1: number, radius = 0): Features {
  return bodyOf([x0, y0, radius], [x1, y0, radius], [x1, y1, radius], [x0, y1, radius]);
}

/** First contact of a moving body with a fixed one before `limitRad`; Infinity where there is none. */
export function contactOf(A: Features, B: Features, swing: Swing, limitRad = swing.sweepRad): number {
  return new FirstContactSearch().find(A, B, swing, limitRad)?.phiRad ?? Infinity;
}

/** Least distance over a swing, with its angle and points; undefined where nothing is nearer than `underMm`. */
export function nearerThan(A: Features, B: Features, swing: Swing, underMm: number): Distance | undefined {
  return new LeastDistanceSearch().find(A, B, swing, underMm);
}

/** The same of bodies that have a distance. */
export function distanceOf(A: Features, B: Features, swing: Swing, underMm = Infinity): Distance {
  const found = nearerThan(A, B, swing, underMm);
  if (!found) throw new Error(`nothing is nearer than ${underMm} mm`);
  return found;
}
