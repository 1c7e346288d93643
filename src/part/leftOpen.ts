/**
 * A bend left at less than its full angle: same radius, allowance and springback in proportion to the angle.
 * Closed by hand afterwards it takes up the rest of its sheet from both sides alike, so half of what its allowance lacks
 * lies flat on either side of it until then (symmetry; common practice, no source).
 */
import type { Deg, Mm } from "../units/quantity.ts";
import { bendDeduction } from "./allowance.ts";
import { outsideBendSetback } from "./bendSetback.ts";
import type { Bend, Part } from "./part.ts";

/** The bend as it is when left at `toDeg` after springback. */
export function bendLeftAt(full: Bend, thicknessMm: Mm, toDeg: Deg): Bend {
  const share = toDeg / full.angleDeg;
  const shape = { angleDeg: toDeg, insideRadiusMm: full.insideRadiusMm, thicknessMm };
  const allowanceMm = full.allowanceMm * share;
  return {
    ...full,
    angleDeg: toDeg,
    overbendDeg: full.overbendDeg * share,
    ...(full.overbendRangeDeg && {
      overbendRangeDeg: [full.overbendRangeDeg[0] * share, full.overbendRangeDeg[1] * share],
    }),
    allowanceMm,
    bendSetbackMm: outsideBendSetback(shape),
    deductionMm: bendDeduction(shape, allowanceMm),
  };
}

/** The part with `bend` (from 0) left at `toDeg`, to be closed by hand. */
export function leftOpen(part: Part, bend: number, toDeg: Deg): Part {
  const full = part.bends[bend]!;
  const left = bendLeftAt(full, part.thicknessMm, toDeg);
  const laidFlat = (full.allowanceMm - left.allowanceMm) / 2;
  return {
    ...part,
    flatsMm: part.flatsMm.map((flatMm, i) => (i === bend || i === bend + 1 ? flatMm + laidFlat : flatMm)),
    bends: part.bends.map((one, i) => (i === bend ? left : one)),
  };
}
