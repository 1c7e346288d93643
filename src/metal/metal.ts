/**
 * What the engine needs to know of a metal. Figures live in metals.ts, each with its source.
 * Strengths and modulus in MPa, density in kg/m³; least inside radius of a 90° bend in multiples of thickness.
 * A user's own metal needs name, yield and modulus only.
 */
import type { Mm, Mpa } from "../units/quantity.ts";

/** One column of a radius table: at this thickness, radii under `least`·T crack, from `easy`·T on they are safe. */
export interface RadiusColumn {
  readonly thicknessMm: Mm;
  readonly least: number;
  readonly easy: number;
}

/** Inside radii for 90° bends across the grain, columns from thin to thick. */
export interface RadiusTable {
  readonly columns: readonly RadiusColumn[];
  readonly source: string;
}

/** Rows of the published springback table, by the standard names of their metals (springbackCurves.ts). */
export type SpringbackRow =
  | "DC04"
  | "DC01"
  | "X12CrNi18-8"
  | "E-Cu"
  | "CuZn33"
  | "Al99.0"
  | "AlCuMg1"
  | "AlSiMgMn";

/** The curve of a metal: its own row, or that of the nearest kind; a softer kind's row where the metal lies between. */
export interface SpringbackCurve {
  readonly row: SpringbackRow;
  readonly softer?: SpringbackRow;
}

/** Where each figure comes from: a handbook with its table, a standard, 'common practice' or 'from memory'. */
export interface MetalSources {
  readonly strength: string;
  readonly modulus: string;
  readonly density: string;
  readonly kFactor: string;
}

export interface Metal {
  readonly name: string;
  readonly yieldMpa: Mpa;
  readonly modulusMpa: Mpa;
  readonly ultimateMpa?: Mpa;
  readonly densityKgM3?: number;
  /** K-factor to start with where the job gives none. */
  readonly kFactor?: number;
  readonly radii?: RadiusTable;
  /** A second table, told beside the first where it asks for more. */
  readonly otherRadii?: RadiusTable;
  /** Published springback; absent where the formula has to do. */
  readonly springback?: SpringbackCurve;
  readonly sources?: MetalSources;
}

/** A metal of the table: all figures but a second table and a springback curve, which not every metal has. */
export type TabulatedMetal = Metal & Required<Omit<Metal, "otherRadii" | "springback">>;
