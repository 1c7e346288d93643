/**
 * The return flange chart of a brake as plain data: lengths in mm, outside, angles in degrees, flats from 1.
 * ways/flangeChart.ts works it out.
 */
import type { Deg, Mm } from "../units/quantity.ts";

export interface ChartCurve {
  readonly angle: Deg;
  readonly overbend: Deg;
  readonly points: readonly { readonly web: Mm; readonly flange: Mm | null }[];
  /** Limits for webs that a shop marks, in the order of `webs` of the chart. */
  readonly row: readonly (Mm | null)[];
}

/** A channel of the job's part: its web and the shorter of its two flanges. */
export interface ChartPoint {
  readonly flat: number;
  readonly web: Mm;
  readonly flange: Mm;
  readonly angle: Deg;
  /** Longest flange for this web at this angle; null where none can be made, `mostFlange` where nothing stops it. */
  readonly longest: Mm | null;
}

export interface FlangeChart {
  readonly brake: string;
  readonly metal: string;
  readonly thickness: Mm;
  readonly insideRadius: Mm;
  readonly mostFlange: Mm;
  /** Webs of the table. */
  readonly webs: readonly Mm[];
  readonly curves: readonly ChartCurve[];
  readonly part: readonly ChartPoint[];
}
