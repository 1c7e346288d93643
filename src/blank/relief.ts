/**
 * Relief holes: where two bends meet, or a bend runs into the corner of a cut-out, a hole takes away the metal that
 * would tear. FAA-H-8083-31, chapter 4, folding a box: centre at the crossing of the inside bend tangent lines;
 * about twice the bend radius wide; at least 1/8 in up to 0.064 in sheet, 3/16 in from 0.072 to 0.128 in.
 */
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";

/** A bend as it crosses the blank. */
export interface BendStrip {
  /** Both bend tangent lines, from the datum edge, the nearer first. */
  readonly tangentsMm: readonly [Mm, Mm];
  /** Which tangent line lies on the side of the bottom or web that the bends stand around. */
  readonly inside: "near" | "far";
  readonly insideRadiusMm: Mm;
}

/** A straight edge of a cut-out at right angles to the bend that runs into it, from the other datum edge. */
export interface CutOutEdge {
  readonly edgeMm: Mm;
}

export interface ReliefHole {
  /** Centre: x from the datum edge of the bends that run along y, y from the datum edge of the others. */
  readonly center: Point;
  readonly diameterMm: Mm;
}

const INCH: Mm = 25.4;

/** Least hole by thickness: the handbook's two steps; sheet between them takes the larger hole. */
const LEAST_HOLES: readonly { readonly upToMm: Mm; readonly diameterMm: Mm }[] = [
  { upToMm: 0.064 * INCH, diameterMm: INCH / 8 },
  { upToMm: 0.128 * INCH, diameterMm: (3 * INCH) / 16 },
];

/** Past the handbook's last step: twice the thickness, but no less than that step. Common practice, no source. */
function leastPastTheTable(thicknessMm: Mm): Mm {
  return Math.max((3 * INCH) / 16, 2 * thicknessMm);
}

/**
 * Diameter of a relief hole: twice the larger inside radius, but no less than the handbook's least for the sheet.
 * @throws RangeError when the thickness is not above zero or a radius is below zero
 * @example reliefDiameterMm(0.8, [1, 1]) // 3.175
 */
export function reliefDiameterMm(thicknessMm: Mm, insideRadiiMm: readonly Mm[]): Mm {
  if (!(thicknessMm > 0) || !insideRadiiMm.every((radius) => radius >= 0)) {
    throw new RangeError("a relief hole needs a thickness above zero and inside radii of zero or more");
  }
  // A gauge as the tables round it, 0.064 in for one, must not fall off its step by the last bit.
  const step = LEAST_HOLES.find(({ upToMm }) => thicknessMm <= upToMm + 1e-9);
  const least = step?.diameterMm ?? leastPastTheTable(thicknessMm);
  return Math.max(least, 2 * Math.max(0, ...insideRadiiMm));
}

/**
 * Holes where bends that run along y meet bends, or edges of cut-outs, that run along x: one for each pair.
 * @example reliefHoles([{ tangentsMm: [9, 11], inside: "far", insideRadiusMm: 1 }], [{ edgeMm: 40 }], 0.8)[0].center // { x: 11, y: 40 }
 */
export function reliefHoles(
  alongY: readonly BendStrip[],
  alongX: readonly (BendStrip | CutOutEdge)[],
  thicknessMm: Mm,
): readonly ReliefHole[] {
  return alongY.flatMap((bend) =>
    alongX.map((other) => {
      const radii = [bend, other].flatMap((one) => ("insideRadiusMm" in one ? [one.insideRadiusMm] : []));
      return {
        center: { x: insideTangentMm(bend), y: "edgeMm" in other ? other.edgeMm : insideTangentMm(other) },
        diameterMm: reliefDiameterMm(thicknessMm, radii),
      };
    }),
  );
}

/** The bend tangent line on the side of the bottom. */
function insideTangentMm({ tangentsMm, inside }: BendStrip): Mm {
  return inside === "near" ? tangentsMm[0] : tangentsMm[1];
}
