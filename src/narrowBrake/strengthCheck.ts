/**
 * One check of the narrow brake: a figure against its limit, with formula, handbook, assumptions and the pieces it was read off.
 * Plain data, so that page, command line and print show the same.
 * Exact: passes is value against limit, nothing rounded.
 */
import type { Growth } from "./sizes.ts";

export type CheckUnit = "mm" | "MPa" | "N" | "N·m" | "deg" | "kg";

export interface StrengthCheck {
  /** What is looked at: "holder". */
  readonly member: string;
  /** What may happen to it: "bending". */
  readonly check: string;
  readonly value: number;
  readonly limit: number;
  readonly unit: CheckUnit;
  readonly passes: boolean;
  readonly formula: string;
  readonly source: string;
  readonly assumptions: readonly string[];
  /** Ids of the pieces that its figures were taken from. */
  readonly pieces: readonly string[];
  /** What would have to be larger where it fails; null where nothing on the rack helps. */
  readonly grows: Growth | null;
  /** What helps besides: of all these the one that adds the least weight for what it does is taken. */
  readonly orGrows?: readonly Growth[];
}

/** A check that passes where the value is at or under its limit. */
export function checkOf(parts: Omit<StrengthCheck, "passes">): StrengthCheck {
  return { ...parts, passes: parts.value <= parts.limit };
}
