/**
 * Which inside radii a metal takes at a thickness: the metal's table, straight between its columns.
 * Tables are for 90° across the grain; a bend along the grain wants more (common practice).
 * Outside the table's thicknesses the nearest column's multiples are used. Where a second table asks for more it is told beside.
 */
import type { Mm } from "../units/quantity.ts";
import type { Metal, RadiusColumn, RadiusTable } from "./metal.ts";

export interface RadiusLimits {
  /** Under this a 90° bend is likely to crack. */
  readonly leastMm: Mm;
  /** From this on it folds without care; equal to `leastMm` where the table has a single value. */
  readonly easyMm: Mm;
  readonly source: string;
  /** What another published table asks for, where that is more. */
  readonly stricter?: { readonly leastMm: Mm; readonly source: string };
}

/**
 * Least and easy inside radius for this metal and thickness, or undefined for a metal without a table.
 * @example radiusLimits(metalNamed("2024-T3"), 0.064 * 25.4).leastMm // 3 * 0.064 * 25.4
 */
export function radiusLimits(metal: Metal, thicknessMm: Mm): RadiusLimits | undefined {
  if (metal.radii === undefined) return undefined;
  const { least, easy } = multiplesAt(metal.radii, thicknessMm);
  const limits = { leastMm: least * thicknessMm, easyMm: easy * thicknessMm, source: metal.radii.source };
  if (metal.otherRadii === undefined) return limits;
  const leastMm = multiplesAt(metal.otherRadii, thicknessMm).least * thicknessMm;
  const stricter = { leastMm, source: metal.otherRadii.source };
  return leastMm > limits.leastMm ? { ...limits, stricter } : limits;
}

/** Multiples of thickness, straight between the table's columns. */
function multiplesAt({ columns }: RadiusTable, thicknessMm: Mm): Omit<RadiusColumn, "thicknessMm"> {
  let below = columns[0]!;
  let { least, easy } = below;
  for (const column of columns.slice(1)) {
    const span = column.thicknessMm - below.thicknessMm;
    const t = Math.min(1, Math.max(0, (thicknessMm - below.thicknessMm) / span));
    least += t * (column.least - below.least);
    easy += t * (column.easy - below.easy);
    below = column;
  }
  return { least, easy };
}
