/**
 * What a drawing may bring that is no clamp as the page wants it: holes inside an outline, and a nose that faces left.
 */
import type { Corner } from "../../src/plane/fillet.ts";

type Ring = readonly Corner[];

function inside({ x, y }: Corner, ring: Ring): boolean {
  let within = false;
  ring.forEach((a, i) => {
    const b = ring[(i + 1) % ring.length]!;
    if (a.y > y !== b.y > y && x < a.x + ((y - a.y) / (b.y - a.y)) * (b.x - a.x)) within = !within;
  });
  return within;
}

/** The outlines without those that lie inside another: a hole through the clamp is no second clamp. */
export function withoutHoles(rings: readonly Ring[]): readonly Ring[] {
  return rings.filter(
    (ring) => !rings.some((other) => other !== ring && ring.every((corner) => inside(corner, other))),
  );
}

/** How much the lower corner at one side looks like a nose: a rounding there, and a front that leans back over it. */
function noseLikeness(ring: Ring, side: 1 | -1): number {
  const low = Math.min(...ring.map(({ y }) => y));
  const high = Math.max(...ring.map(({ y }) => y));
  const front = Math.max(...ring.map(({ x }) => side * x));
  const near = ring.filter(
    ({ x, y }) => side * x > front - 0.02 * (high - low) && y < low + 0.25 * (high - low),
  );
  if (near.length === 0) return 0;
  const top = ring.filter(({ y }) => y > high - 0.1 * (high - low)).map(({ x }) => side * x);
  const leans = Math.max(0, front - Math.max(...top)) / (high - low);
  return (near.some(({ radius }) => (radius ?? 0) > 0) ? 1 : 0) + leans;
}

/** Whether the nose is at the left; false where neither side looks more like one. */
export function facesLeft(rings: readonly Ring[]): boolean {
  const likeness = (side: 1 | -1) => Math.max(...rings.map((ring) => noseLikeness(ring, side)));
  return likeness(-1) > likeness(1) + 0.05;
}

/** The outlines turned round, left for right, still counter-clockwise. */
export function turnedRound(rings: readonly Ring[]): readonly Ring[] {
  return rings.map((ring) => ring.map((corner) => ({ ...corner, x: -corner.x })).toReversed());
}
