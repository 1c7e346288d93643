/**
 * The ground that the moving sheet passes over, as the quadrilaterals that its edges run through between poses.
 * Straight chords stand for the paths in between: at 3° a point R away strays at most R·(1 − cos 1.5°) = 0.0004·R.
 */
import type { Outline } from "../plane/outline.ts";
import { distanceBetween, type Point } from "../plane/point.ts";

/** Edges that move less than this stand still. */
const STILL_MM = 0.02;

function quadrilateral(corners: readonly Point[]): Outline {
  return {
    edges: corners.map((from, i) => ({ kind: "line", from, to: corners[(i + 1) % corners.length] as Point })),
  };
}

/**
 * Pieces of the band, to be laid over each other in one tint. Poses must be of one sheet, leaf angles rising;
 * where the number of edges changes between two poses (the bend has just begun) the later pose stands for both.
 */
export function sweptBand(poses: readonly Outline[]): Outline[] {
  const pieces: Outline[] = [];
  for (let i = 1; i < poses.length; i++) {
    const before = poses[i - 1] as Outline;
    const after = poses[i] as Outline;
    if (before.edges.length !== after.edges.length) {
      pieces.push(after);
      continue;
    }
    after.edges.forEach((edge, k) => {
      const old = before.edges[k];
      if (old === undefined) return;
      const moved = Math.max(distanceBetween(old.from, edge.from), distanceBetween(old.to, edge.to));
      if (moved > STILL_MM) pieces.push(quadrilateral([old.from, old.to, edge.to, edge.from]));
    });
  }
  return pieces;
}
