/**
 * Sheet in convex pieces: triangles by earcut, put together again wherever the two beside an edge make a convex whole
 * (Hertel and Mehlhorn: at most four times as many pieces as need be, from memory). The pieces cover the sheet exactly.
 */
import earcut from "earcut";
import type { Point } from "../plane/point.ts";
import { type Region, type Ring, withoutInLine } from "./ring.ts";

/** A corner that turns right by less than this, as the sine of its turn, still counts as straight. */
const STRAIGHT = 1e-9;

/** Convex rings, counter-clockwise, that together make the region. */
export function convexPieces({ outer, holes }: Region): Ring[] {
  const rings = [outer, ...holes];
  const points = rings.flat();
  const starts: number[] = [];
  let count = 0;
  for (const ring of rings) {
    starts.push(count);
    count += ring.length;
  }
  const corners = earcut(
    points.flatMap(({ x, y }) => [x, y]),
    starts.slice(1),
  );
  const pieces: number[][] = [];
  for (let i = 0; i < corners.length; i += 3) {
    const [a, b, c] = [corners[i]!, corners[i + 1]!, corners[i + 2]!];
    const area = turn(points[a]!, points[b]!, points[c]!);
    if (Math.abs(area) > 1e-12) pieces.push(area > 0 ? [a, b, c] : [a, c, b]);
  }
  return merged(pieces, points).map((piece) => withoutInLine(piece.map((corner) => points[corner]!)));
}

/** Pieces joined over shared edges for as long as two make a convex one. */
function merged(pieces: number[][], points: readonly Point[]): number[][] {
  for (let first = 0; first < pieces.length; first++) {
    for (let second = first + 1; second < pieces.length; second++) {
      const joined = joinedPair(pieces[first]!, pieces[second]!, points);
      if (!joined) continue;
      pieces[first] = joined;
      pieces.splice(second, 1);
      second = first;
    }
  }
  return pieces;
}

function joinedPair(
  a: readonly number[],
  b: readonly number[],
  points: readonly Point[],
): number[] | undefined {
  for (const [i, from] of a.entries()) {
    const to = a[(i + 1) % a.length]!;
    const at = b.indexOf(to);
    if (at < 0 || b[(at + 1) % b.length] !== from) continue;
    // From `to` round a to `from`, then on round b to the corner before `to`.
    const joined = [
      ...Array.from({ length: a.length }, (_, k) => a[(i + 1 + k) % a.length]!),
      ...Array.from({ length: b.length - 2 }, (_, k) => b[(at + 2 + k) % b.length]!),
    ];
    return isConvex(joined, points) ? joined : undefined;
  }
  return undefined;
}

function isConvex(ring: readonly number[], points: readonly Point[]): boolean {
  return ring.every((corner, i) => {
    const [a, b, c] = [
      points[ring[(i + ring.length - 1) % ring.length]!]!,
      points[corner]!,
      points[ring[(i + 1) % ring.length]!]!,
    ];
    const size = Math.hypot(b.x - a.x, b.y - a.y) * Math.hypot(c.x - b.x, c.y - b.y);
    return turn(a, b, c) >= -STRAIGHT * size;
  });
}

/** Twice the area to the left of a→b→c. */
function turn(a: Point, b: Point, c: Point): number {
  return (b.x - a.x) * (c.y - a.y) - (b.y - a.y) * (c.x - a.x);
}
