/**
 * Bodies for the kernel's own tests, made from corners; and the kernel's calls with all they need put together.
 */

import { type Features, featuresOf } from "../../src/contact/features.ts";
import { type ContactFound, firstContact } from "../../src/contact/firstContact.ts";
import { type DistanceFound, leastDistance } from "../../src/contact/leastDistance.ts";
import { Meeting } from "../../src/contact/meeting.ts";
import { makePairCurve } from "../../src/contact/pairCurve.ts";
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
  const found: ContactFound = { phiRad: Infinity, kind: "roundOnEdge", a: 0, b: 0 };
  return firstContact(A, B, swing, limitRad, makePairCurve(), new Meeting(), found);
}

/** Least distance over a swing, with its angle and points; `cutOffMm` where nothing is nearer. */
export function distanceOf(A: Features, B: Features, swing: Swing, cutOffMm = Infinity): DistanceFound {
  const found: DistanceFound = {
    mm: cutOffMm,
    phiRad: 0,
    movingX: 0,
    movingY: 0,
    fixedX: 0,
    fixedY: 0,
  };
  leastDistance(A, B, swing, makePairCurve(), new Meeting(), found);
  return found;
}
