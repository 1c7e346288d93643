/**
 * The blank: how wide the flat sheet is and where its lines are scribed, all from one edge, flat 1's free end.
 * Width = Σ flats + Σ bend allowances; the sight line lies one inside radius into the bend from the clamped bend tangent
 * line (FAA-H-8083-31, sight line). No chain of roundings: each line is a running sum in full precision.
 */
import type { End, Part } from "../part/part.ts";
import type { Mm } from "../units/quantity.ts";

export interface BlankBend {
  /** Bend tangent lines, from the datum edge: flat side nearer to it first. */
  readonly tangentsMm: readonly [Mm, Mm];
  readonly allowanceMm: Mm;
  readonly deductionMm: Mm;
  /**
   * The line to sight under the nose, for either clamped end. In a bend shorter than its inside radius (a small angle)
   * it falls beyond the other tangent line; it is still the place to sight.
   */
  readonly sightLinesMm: Readonly<Record<End, Mm>>;
}

export interface Blank {
  readonly developedWidthMm: Mm;
  readonly bends: readonly BlankBend[];
}

/**
 * Lay out the blank of a part, measured from flat 1's free end.
 * @example layOut({ flatsMm: [10, 20], bends: [{ allowanceMm: 2, deductionMm: 3, insideRadiusMm: 1.5 }] }).bends[0].sightLinesMm // { start: 11.5, end: 10.5 }
 */
export function layOut(part: Pick<Part, "flatsMm" | "bends">): Blank {
  let reachedMm = part.flatsMm[0] ?? 0;
  const bends = part.bends.map(({ allowanceMm, deductionMm, insideRadiusMm }, i): BlankBend => {
    const near = reachedMm;
    const far = near + allowanceMm;
    reachedMm = far + (part.flatsMm[i + 1] ?? 0);
    return {
      tangentsMm: [near, far],
      allowanceMm,
      deductionMm,
      sightLinesMm: { start: near + insideRadiusMm, end: far - insideRadiusMm },
    };
  });
  return { developedWidthMm: reachedMm, bends };
}
