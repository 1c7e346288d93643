/**
 * Least distance over the whole sweep between the part and clamp, bed, frame, leaf and its own other side, leaving out
 * what touches by design. Branch and bound on a bound of speed, then narrowed; within about 0.002 mm.
 */
import { distance, separation } from "./overlap.ts";
import { bothStill, leafAgainst, movingAgainst, movingAgainstLeaf, type Pair, type Stage } from "./pairs.ts";

const FINEST = (0.1 * Math.PI) / 180;
const ENOUGH = 0.0005;

export interface Clearance {
  mm: number;
  angleDeg: number;
  /** Point of the part, then the point of what it is nearest to, in the section frame. */
  points: [[number, number], [number, number]];
}

/** Pairs that are measured, true faces. */
export function clearancePairs(stage: Stage): Pair[] {
  const { machine, clampedPieces, clampedShapes, clamp, movingPieces } = stage;
  const pairs: Pair[] = [];
  clampedPieces.forEach((piece, i) => {
    const shape = clampedShapes[i]!;
    for (const body of machine.frame) pairs.push(bothStill(shape, body, "frame"));
    if (piece.run) return;
    for (const body of clamp) pairs.push(bothStill(shape, body, "clamp"));
    if (!piece.besideRun) pairs.push(bothStill(shape, machine.bed, "bed"));
    pairs.push(leafAgainst(stage, shape, "leaf"));
  });
  movingPieces.forEach((piece, i) => {
    for (const body of machine.frame) pairs.push(movingAgainst(stage, i, body, "frame"));
    clampedShapes.forEach((shape, k) => {
      if (!(piece.run && clampedPieces[k]!.run)) pairs.push(movingAgainst(stage, i, shape, "part"));
    });
    if (piece.run) return;
    for (const body of clamp) pairs.push(movingAgainst(stage, i, body, "clamp"));
    pairs.push(movingAgainst(stage, i, machine.bed, "bed"));
    if (!piece.besideRun) pairs.push(movingAgainstLeaf(stage, i));
  });
  return pairs;
}

/** The least distance found so far, and where. */
class Least {
  mm = Infinity;
  phi = 0;
  pair: Pair | null = null;

  try(pair: Pair, phi: number): number {
    const shape = pair.at(phi);
    if (shape === null) return Infinity;
    const far = separation(shape, pair.convex, pair.still, pair.stillConvex);
    if (far > 2 * this.mm) return far;
    const { gap } = distance(shape, pair.still);
    if (gap < this.mm) {
      this.mm = gap;
      this.phi = phi;
      this.pair = pair;
    }
    return gap;
  }
}

function search(least: Least, pair: Pair, a: number, b: number, gapA: number, gapB: number): void {
  // What the bend zone has taken all of at one end says nothing of what stands there in between.
  const bothThere = gapA < Infinity && gapB < Infinity;
  if (bothThere && (gapA + gapB - pair.speed(b) * (b - a)) / 2 > least.mm - ENOUGH) return;
  if (b - a < FINEST) return;
  const middle = (a + b) / 2;
  const gap = least.try(pair, middle);
  search(least, pair, a, middle, gapA, gap);
  search(least, pair, middle, b, gap, gapB);
}

/** Golden section round the best sample: the distance is smooth there, or has one kink. */
function narrow(least: Least, endPhi: number): void {
  const pair = least.pair!;
  const ratio = (Math.sqrt(5) - 1) / 2;
  let low = Math.max(0, least.phi - FINEST);
  let high = Math.min(endPhi, least.phi + FINEST);
  while (high - low > 1e-7) {
    const left = high - ratio * (high - low);
    const right = low + ratio * (high - low);
    if (least.try(pair, left) <= least.try(pair, right)) high = right;
    else low = left;
  }
}

/** The clearance of a bend that meets nothing, or null where nothing is left to measure. */
export function leastClearance(stage: Stage): Clearance | null {
  const pairs = clearancePairs(stage);
  if (pairs.length === 0) return null;
  const least = new Least();
  const { endPhi } = stage;
  const ends = pairs.map((pair): [number, number] => {
    const first = least.try(pair, 0);
    return [first, pair.speed(endPhi) === 0 ? first : least.try(pair, endPhi)];
  });
  pairs.forEach((pair, i) => {
    if (pair.speed(endPhi) > 0) search(least, pair, 0, endPhi, ends[i]![0], ends[i]![1]);
  });
  if (least.pair === null) return null;
  if (least.pair.speed(endPhi) > 0) narrow(least, endPhi);
  const { pair, phi } = least;
  const near = distance(pair.at(phi)!, pair.still);
  const [from, to] = [pair.toSection(...near.from, phi), pair.toSection(...near.to, phi)];
  return {
    mm: least.mm,
    angleDeg: (phi * 180) / Math.PI,
    points: pair.moverIsPart ? [from, to] : [to, from],
  };
}
