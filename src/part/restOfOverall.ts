/**
 * The length of one flat where the overall size of the finished part is given instead. The extent is convex in the flat's
 * length (each pair of places on the skin gives a straight line, the extent is the highest), so the longest flat that gives
 * the size is found by halving from the length of least extent. To 1e-9 mm.
 */
import type { Mm } from "../units/quantity.ts";
import { overallSize, type Section } from "./overallSize.ts";

const HALVINGS = 80;

/**
 * Tangent-to-tangent length of flat `rest` (from 0) that makes the part `sizeMm` long along flat `along`; undefined where none
 * above 0 does, because the flat runs square to that way or the rest of the part is longer already.
 * @example restOfOverall({ flatsMm: [8, 1, 8], thicknessMm: 1, bends: [up, up] }, 1, 20, 1) // 20 less two bends of 90°
 */
export function restOfOverall(section: Section, rest: number, sizeMm: Mm, along: number): Mm | undefined {
  const extent = (lengthMm: Mm): Mm => {
    const flatsMm = section.flatsMm.map((flatMm, i) => (i === rest ? lengthMm : flatMm));
    return overallSize({ ...section, flatsMm }, { flat: along }).nominalMm;
  };
  // No flat need be longer than the size and all the rest laid end to end, unless it runs square to it.
  const longest = 1000 * (sizeMm + section.flatsMm.reduce((sum, flatMm) => sum + flatMm, 0));
  if (!(extent(longest) > sizeMm)) return undefined;
  let [from, to] = [0, longest];
  for (let i = 0; i < 2 * HALVINGS; i++) {
    const third = (to - from) / 3;
    if (extent(from + third) <= extent(to - third)) to -= third;
    else from += third;
  }
  let [short, long] = [from, longest];
  if (extent(short) > sizeMm) return undefined;
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (short + long) / 2;
    if (extent(middle) > sizeMm) long = middle;
    else short = middle;
  }
  return short > 1e-6 ? short : undefined;
}
