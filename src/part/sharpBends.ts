/**
 * A foreman's look at the radii: bends sharper than the metal takes at this thickness, with the table that says so.
 * Limits are for 90° across the grain (metal/radiusLimits.ts) and taken for every angle; a kick under 45° strains the
 * outside less and is told as "care" at most (our judgement, no source). A hair under a limit, 1 %, is not told.
 * words/warningWords.ts says it.
 */
import { radiusLimits } from "../metal/radiusLimits.ts";
import type { Deg, Mm } from "../units/quantity.ts";
import type { Bend, Part } from "./part.ts";

export interface SharpBend {
  /** Bend, counted from 0. */
  readonly bend: number;
  readonly insideRadiusMm: Mm;
  readonly leastMm: Mm;
  readonly easyMm: Mm;
  readonly angleDeg: Deg;
  /** `cracks`: under the least; `care`: between least and easy. */
  readonly grade: "cracks" | "care";
  readonly source: string;
  /** What another published table asks for, where that is more. */
  readonly stricter?: { readonly leastMm: Mm; readonly source: string };
}

const HAIR = 0.99;
const KICK_BELOW_DEG = 45;

/**
 * Bends whose inside radius is under the metal's limits, in order; none for a metal without a table.
 * @example sharpBends({ metal: metalNamed("2024-T3"), thicknessMm: 1, bends: [{ angleDeg: 90, insideRadiusMm: 1 }] })[0].grade // "cracks"
 */
export function sharpBends(
  part: Pick<Part, "metal" | "thicknessMm"> & {
    readonly bends: readonly Pick<Bend, "insideRadiusMm" | "angleDeg">[];
  },
): readonly SharpBend[] {
  const limits = radiusLimits(part.metal, part.thicknessMm);
  if (limits === undefined) return [];
  return part.bends.flatMap(({ insideRadiusMm, angleDeg }, bend): SharpBend[] => {
    const { leastMm, easyMm, stricter } = limits;
    if (insideRadiusMm >= Math.max(easyMm, stricter?.leastMm ?? 0) * HAIR) return [];
    const grade = angleDeg >= KICK_BELOW_DEG && insideRadiusMm < leastMm * HAIR ? "cracks" : "care";
    return [
      {
        bend,
        insideRadiusMm,
        leastMm,
        easyMm,
        angleDeg,
        grade,
        source: limits.source,
        ...(stricter && { stricter }),
      },
    ];
  });
}
