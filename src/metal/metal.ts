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
  readonly sources?: MetalSources;
}

/** A metal of the table: nothing left open. */
export type TabulatedMetal = Required<Metal>;
