/**
 * The ground that the moving sheet passes over, as the quadrilaterals that its edges run through between poses.
 * Straight chords stand for the paths in between: at 3° a point R away strays at most R·(1 − cos 1.5°) = 0.0004·R.
 * The moving side is rigid, so its edges are known by their lengths, counted inward from its free end.
 */

import { polygon } from "../drawing/polygon.ts";
import type { Edge, Outline } from "../plane/outline.ts";
import { distanceBetween } from "../plane/point.ts";

/** Two lengths this near are the same edge in two poses. */
const SAME_MM = 1e-6;

function lengthOf(edge: Edge): number {
  return edge.kind === "line" ? distanceBetween(edge.from, edge.to) : Math.abs(edge.radius * edge.sweepRad);
}

/**
 * Where the moving side's free end stands in the run of edges. The run starts under the clamped free end and closes
 * with it, so the other end of the same length, one thickness, lies near the middle.
 */
function freeEnd(sheet: Outline): number {
  const { edges } = sheet;
  const closing = edges.at(-1);
  const middle = (edges.length - 2) / 2;
  let best = Math.round(middle);
  let off = Number.POSITIVE_INFINITY;
  edges.slice(0, -1).forEach((edge, i) => {
    const isEnd = closing !== undefined && Math.abs(lengthOf(edge) - lengthOf(closing)) < SAME_MM;
    if (isEnd && Math.abs(i - middle) < off) {
      off = Math.abs(i - middle);
      best = i;
    }
  });
  return best;
}

/** Pieces of one step from the free end one way round, up to and with the flat that runs into the bend zone. */
function piecesFrom(before: Outline, after: Outline, direction: 1 | -1): Outline[] {
  const pieces: Outline[] = [];
  let [i, j] = [freeEnd(before), freeEnd(after)];
  if (direction < 0) [i, j] = [i - 1, j - 1];
  for (; ; i += direction, j += direction) {
    const [old, edge] = [before.edges[i], after.edges[j]];
    if (old === undefined || edge === undefined || old.kind !== edge.kind) return pieces;
    pieces.push(polygon([old.from, old.to, edge.to, edge.from]));
    if (Math.abs(lengthOf(old) - lengthOf(edge)) > SAME_MM) return pieces;
    if (distanceBetween(old.from, edge.from) + distanceBetween(old.to, edge.to) < SAME_MM) return pieces;
  }
}

/** Pieces of the band, to be laid over each other in one tint. Poses are of one sheet (`Scene.sheet`), angles rising. */
export function sweptBand(poses: readonly Outline[]): Outline[] {
  return poses.slice(1).flatMap((after, i) => {
    const before = poses[i] as Outline;
    return [...piecesFrom(before, after, 1), ...piecesFrom(before, after, -1)];
  });
}
