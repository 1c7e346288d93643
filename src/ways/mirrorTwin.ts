/**
 * A part that reads the same from either end: what is found for one flat or bend holds for its twin.
 * Lengths and angles that differ by less than rounding count as the same.
 */
import type { Part } from "../part/part.ts";

const SAME = 1e-9;

/** Whether the part turned end for end is the same part. */
export function isMirrored({ flatsMm, bends }: Part): boolean {
  const same = (a: number, b: number) => Math.abs(a - b) <= SAME;
  return (
    flatsMm.every((flat, i) => same(flat, flatsMm[flatsMm.length - 1 - i]!)) &&
    bends.every((bend, i) => {
      const twin = bends[bends.length - 1 - i]!;
      return (
        bend.turn === twin.turn &&
        same(bend.angleDeg, twin.angleDeg) &&
        same(bend.overbendDeg, twin.overbendDeg) &&
        same(bend.insideRadiusMm, twin.insideRadiusMm)
      );
    })
  );
}

/** For one of `count` flats or bends, from 1: its twin in a mirrored part, undefined where it is its own. */
export function twinOf(index: number, count: number): number | undefined {
  const twin = count + 1 - index;
  return twin === index ? undefined : twin;
}
