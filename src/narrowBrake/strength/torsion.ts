/**
 * Twist of a leaf that is driven by handles at its ends and resisted by the sheet along its length.
 * Torsion constant J: flat b·t³/3·(1 − 0.63·t/b + 0.052·(t/b)⁵), open shapes the sum of their legs, tube 4·A²·t/p (Bredt), round π·d⁴/32 (Roark; Timoshenko).
 * Bound: flat within 0.5 %, legs within 5 % (their joining corner is counted once), tube for walls under a tenth of its side within 5 %.
 */
import type { Mm, Mpa, Rad } from "../../units/quantity.ts";
import type { Shape } from "./section.ts";
import type { MomentPerLength } from "./sheetMoment.ts";

/** Torsion constant, mm⁴. @example torsionConstant({ kind: "round", diameterMm: 10 }) // 981.7 */
export function torsionConstant(shape: Shape): number {
  switch (shape.kind) {
    case "flat":
      return flatConstant(shape.widthMm, shape.heightMm);
    case "angle":
      return ((shape.widthMm + shape.heightMm - shape.thicknessMm) * shape.thicknessMm ** 3) / 3;
    case "channel": {
      const webWidth = shape.widthMm - 2 * shape.flangeMm;
      return (webWidth * shape.webMm ** 3 + 2 * shape.heightMm * shape.flangeMm ** 3) / 3;
    }
    case "tube": {
      const { a, b } = midLine(shape);
      return (4 * (a * b) ** 2 * shape.wallMm) / (2 * (a + b));
    }
    case "round":
      return (Math.PI / 32) * shape.diameterMm ** 4;
    case "roundTube":
      return (Math.PI / 32) * (shape.diameterMm ** 4 - (shape.diameterMm - 2 * shape.wallMm) ** 4);
  }
}

/** Largest shear stress for a torque in N·mm: T·t/J in open shapes and flats, T/(2·A·t) in tube, T·r/J in rounds. */
export function torsionStress(shape: Shape, torqueNmm: number): Mpa {
  switch (shape.kind) {
    case "tube": {
      const { a, b } = midLine(shape);
      return torqueNmm / (2 * a * b * shape.wallMm);
    }
    case "round":
    case "roundTube":
      return (torqueNmm * shape.diameterMm) / 2 / torsionConstant(shape);
    case "flat":
      return (torqueNmm * Math.min(shape.widthMm, shape.heightMm)) / torsionConstant(shape);
    case "angle":
      return (torqueNmm * shape.thicknessMm) / torsionConstant(shape);
    case "channel":
      return (torqueNmm * Math.max(shape.webMm, shape.flangeMm)) / torsionConstant(shape);
  }
}

/**
 * How far the middle lags behind the ends, for an even turning moment per length taken up at both ends:
 * dφ/dx = m·(L/2 − x)/(G·J), so φ = m·L²/(8·G·J).
 * @example middleTwist(60, 300, 77000, 5000) // 0.00175
 */
export function middleTwist(
  moment: MomentPerLength,
  lengthMm: Mm,
  shearModulusMpa: Mpa,
  constantMm4: number,
): Rad {
  return (moment * lengthMm ** 2) / (8 * shearModulusMpa * constantMm4);
}

function flatConstant(widthMm: Mm, heightMm: Mm): number {
  const t = Math.min(widthMm, heightMm);
  const b = Math.max(widthMm, heightMm);
  return ((b * t ** 3) / 3) * (1 - 0.63 * (t / b) + 0.052 * (t / b) ** 5);
}

function midLine(tube: Extract<Shape, { kind: "tube" }>): { readonly a: Mm; readonly b: Mm } {
  return { a: tube.widthMm - tube.wallMm, b: tube.heightMm - tube.wallMm };
}
