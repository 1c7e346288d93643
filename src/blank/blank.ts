/**
 * The blank: how wide the flat sheet is and where its lines are scribed, all from one edge, flat 1's free end.
 * Width = Σ flats + Σ bend allowances; the sight line lies one nose radius into the bend from the clamped bend tangent
 * line, under the nose's foremost point (FAA-H-8083-31, sight line: one inside radius, where the nose has the bend's).
 * No chain of roundings: each line is a running sum in full precision.
 */
import type { Bend, End, Part } from "../part/part.ts";
import type { Mm } from "../units/quantity.ts";

export interface BlankBend {
  /** Bend tangent lines, from the datum edge: flat side nearer to it first. */
  readonly tangentsMm: readonly [Mm, Mm];
  readonly allowanceMm: Mm;
  readonly deductionMm: Mm;
}

/** What a part is laid out from: flats between bend tangent lines, and what each bend takes up. */
export type Strip = Pick<Part, "flatsMm"> & {
  readonly bends: readonly Pick<Bend, "allowanceMm" | "deductionMm">[];
};

export interface Blank {
  readonly developedWidthMm: Mm;
  readonly bends: readonly BlankBend[];
}

/**
 * Lay out the blank of a part, measured from flat 1's free end.
 * @example layOut({ flatsMm: [10, 20], bends: [{ allowanceMm: 2, deductionMm: 3 }] }).bends[0].tangentsMm // [10, 12]
 */
export function layOut(part: Strip): Blank {
  let reachedMm = part.flatsMm[0] ?? 0;
  const bends = part.bends.map(({ allowanceMm, deductionMm }, i): BlankBend => {
    const near = reachedMm;
    const far = near + allowanceMm;
    reachedMm = far + (part.flatsMm[i + 1] ?? 0);
    return { tangentsMm: [near, far], allowanceMm, deductionMm };
  });
  return { developedWidthMm: reachedMm, bends };
}

/**
 * The line of a bend to sight under the nose, for the end that is clamped. In a bend shorter than the nose's radius (a
 * small angle) it falls beyond the other tangent line; it is still the place to sight.
 * @example sightLineOf({ tangentsMm: [10, 12] }, "end", 0.8) // 11.2
 */
export function sightLineOf({ tangentsMm }: Pick<BlankBend, "tangentsMm">, clamped: End, noseRunMm: Mm): Mm {
  return clamped === "start" ? tangentsMm[0] + noseRunMm : tangentsMm[1] - noseRunMm;
}
