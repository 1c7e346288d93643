/**
 * The loads that the narrow brake is designed for: the worst over all parts, each with the part that asks for it.
 * Folding moment and forces per length from strength/, times the load factor.
 * Bound: leaf and bed are taken to press evenly over the flange and the clamped flat, so that the levers are half of them.
 */
import type { Mm } from "../units/quantity.ts";
import type { ResolvedRequirements, SheetToFold } from "./requirements.ts";
import { type FoldingForces, foldingForces } from "./strength/foldingForces.ts";
import { foldingMoment } from "./strength/sheetMoment.ts";

/** A load and the part that asks for it. */
export interface Governing {
  readonly value: number;
  readonly part: string;
}

export interface GoverningLoads {
  /** N·mm per mm of bend. */
  readonly momentPerLength: Governing;
  /** N per mm. */
  readonly leafNPerMm: Governing;
  readonly clampNPerMm: Governing;
  /** Whole forces over the length of the part, N. */
  readonly leafN: Governing;
  readonly clampN: Governing;
  readonly pushN: Governing;
  /** Turning moment on the leaf, N·mm. */
  readonly turningNmm: Governing;
  /** Shortest lever of the leaf, which turns give into angle. */
  readonly leafLeverMm: Mm;
  readonly longestPartMm: Mm;
}

/** Lever of the leaf for a part: half of what it bears on. */
function leafLeverOf(part: SheetToFold, leafFaceMm: Mm): Mm {
  return Math.min(part.shortestFlangeMm, leafFaceMm) / 2;
}

/** Forces per unit length for one part, load factor included. */
function forcesOf(part: SheetToFold, loadFactor: number, leafFaceMm: Mm): FoldingForces {
  const moment = loadFactor * foldingMoment(part.metal, part.thicknessMm);
  const overbendDeg = Math.max(...part.bends.map((bend) => bend.overbendDeg));
  return foldingForces(moment, leafLeverOf(part, leafFaceMm), part.shortestClampedMm / 2, overbendDeg);
}

/** Worst loads over the parts, for a leaf with this face. */
export function governingLoads({ parts, safety }: ResolvedRequirements, leafFaceMm: Mm): GoverningLoads {
  const worst = (of: (part: SheetToFold) => number): Governing =>
    parts.map((part) => ({ value: of(part), part: part.name })).reduce((a, b) => (b.value > a.value ? b : a));
  const momentOf = (part: SheetToFold) => safety.load * foldingMoment(part.metal, part.thicknessMm);
  const force = (part: SheetToFold) => forcesOf(part, safety.load, leafFaceMm);
  return {
    momentPerLength: worst(momentOf),
    leafNPerMm: worst((part) => force(part).leafNPerMm),
    clampNPerMm: worst((part) => force(part).clampNPerMm),
    leafN: worst((part) => force(part).leafNPerMm * part.lengthMm),
    clampN: worst((part) => force(part).clampNPerMm * part.lengthMm),
    pushN: worst((part) => force(part).pushNPerMm * part.lengthMm),
    // Virtual work of a hinge at the pivot: the leaf turns as far as the bend does.
    turningNmm: worst((part) => momentOf(part) * part.lengthMm),
    leafLeverMm: Math.min(...parts.map((part) => leafLeverOf(part, leafFaceMm))),
    longestPartMm: Math.max(...parts.map((part) => part.lengthMm)),
  };
}
