/**
 * Section properties of a section put together from rectangles that stand square: area, centroid, second moments, moduli.
 * A load along one axis: I − Ixy²/I of the other axis, and σ = M·(y·Iy − x·Ixy)/(Ix·Iy − Ixy²) (Gere & Goodno, unsymmetric beams).
 * Parallel axis theorem (Mott, Machine Elements in Mechanical Design, app. 1). Torsion constant b·t³/3·(1 − 0.63·t/b) each, summed (Roark, from memory).
 * Exact but for the torsion constant, which is within 1 % for a flat and counts no fillet.
 */
import type { Mm } from "../../units/quantity.ts";

export interface Rectangle {
  readonly minX: Mm;
  readonly maxX: Mm;
  readonly minY: Mm;
  readonly maxY: Mm;
}

export interface SectionFigures {
  readonly areaMm2: number;
  readonly centroidXMm: Mm;
  readonly centroidYMm: Mm;
  /** Against a load up or down. */
  readonly secondMomentXMm4: number;
  readonly modulusXMm3: number;
  /** Against a load front to back. */
  readonly secondMomentYMm4: number;
  readonly modulusYMm3: number;
  /** Of a section that is no mirror of itself a load up pushes it sideways too: ∫xy dA. */
  readonly productMm4: number;
  readonly torsionMm4: number;
}

/** @example sectionOf([{ minX: 0, maxX: 20, minY: 0, maxY: 10 }]).secondMomentXMm4 // 1666.67 */
export function sectionOf(rectangles: readonly Rectangle[]): SectionFigures {
  const sum = (of: (one: Rectangle, area: number) => number) =>
    rectangles.reduce((total, one) => total + of(one, (one.maxX - one.minX) * (one.maxY - one.minY)), 0);
  const areaMm2 = sum((_, area) => area);
  const centroidXMm = sum((one, area) => (area * (one.minX + one.maxX)) / 2) / areaMm2;
  const centroidYMm = sum((one, area) => (area * (one.minY + one.maxY)) / 2) / areaMm2;
  const secondMomentXMm4 = sum(
    (one, area) => area * ((one.maxY - one.minY) ** 2 / 12 + ((one.minY + one.maxY) / 2 - centroidYMm) ** 2),
  );
  const secondMomentYMm4 = sum(
    (one, area) => area * ((one.maxX - one.minX) ** 2 / 12 + ((one.minX + one.maxX) / 2 - centroidXMm) ** 2),
  );
  const outermost = (of: (one: Rectangle) => number) => Math.max(...rectangles.map(of));
  return {
    areaMm2,
    centroidXMm,
    centroidYMm,
    secondMomentXMm4,
    modulusXMm3:
      secondMomentXMm4 / outermost((one) => Math.max(one.maxY - centroidYMm, centroidYMm - one.minY)),
    secondMomentYMm4,
    modulusYMm3:
      secondMomentYMm4 / outermost((one) => Math.max(one.maxX - centroidXMm, centroidXMm - one.minX)),
    productMm4: sum(
      (one, area) =>
        area * ((one.minX + one.maxX) / 2 - centroidXMm) * ((one.minY + one.maxY) / 2 - centroidYMm),
    ),
    torsionMm4: sum((one) => {
      const [t, b] = [one.maxX - one.minX, one.maxY - one.minY].sort((p, q) => p - q) as [number, number];
      return ((b * t ** 3) / 3) * (1 - (0.63 * t) / b);
    }),
  };
}

/** Second moment against a load up or down, the section free to go sideways as it bends. */
export function freeSecondMoment(section: SectionFigures, load: "up" | "back"): number {
  const { secondMomentXMm4: ix, secondMomentYMm4: iy, productMm4: ixy } = section;
  return load === "up" ? ix - ixy ** 2 / iy : iy - ixy ** 2 / ix;
}

/** Least modulus, likewise: over all corners. */
export function freeModulus(
  rectangles: readonly Rectangle[],
  section: SectionFigures,
  load: "up" | "back",
): number {
  const { secondMomentXMm4: ix, secondMomentYMm4: iy, productMm4: ixy } = section;
  const perMoment = rectangles.flatMap(({ minX, maxX, minY, maxY }) =>
    [minX, maxX].flatMap((cornerX) =>
      [minY, maxY].map((cornerY) => {
        const [x, y] = [cornerX - section.centroidXMm, cornerY - section.centroidYMm];
        return Math.abs(load === "up" ? y * iy - x * ixy : x * ix - y * ixy) / (ix * iy - ixy ** 2);
      }),
    ),
  );
  return 1 / Math.max(...perMoment);
}
