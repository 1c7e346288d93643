/**
 * Stock that a small shop can buy, inch and metric: flat bars, rounds, bolts, screws.
 * Sizes of common steel lists (metric flats follow EN 10278, threads ISO 261 and ASME B1.1): from memory, ask your supplier.
 * Tap drills for about 75 % thread: Machinery's Handbook, tap drill tables (from memory). Countersunk heads: ISO 10642, ASME B18.3 (from memory).
 */
import type { LengthUnit } from "../units/length.ts";
import { MM_PER_INCH, parseLength } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import type { BoltGrade, Thread } from "./strength/bolt.ts";

/** A thread that is tapped into a piece. */
export interface TappedThread extends Thread {
  /** As marked in the drill case. */
  readonly tapDrill: string;
}

/** A screw with a flat countersunk head. */
export interface FlatHead extends TappedThread {
  readonly headMm: Mm;
  readonly headHighMm: Mm;
}

export interface Stock {
  readonly units: LengthUnit;
  readonly flatThicknessesMm: readonly Mm[];
  readonly flatWidthsMm: readonly Mm[];
  readonly roundsMm: readonly Mm[];
  /** Coarse threaded rod for holding down, and for the feet. */
  readonly bolts: readonly TappedThread[];
  /** Screws that set the bar back. */
  readonly screws: readonly TappedThread[];
  /** What holds the bar under its holder, the smaller first. */
  readonly flatHeads: readonly FlatHead[];
  readonly boltGrade: BoltGrade;
  /** Music wire of coil springs, the thinner first. */
  readonly springWiresMm: readonly Mm[];
}

/** Lengths as written on the rack; a slip in the tables below must not pass as a size. */
function sizes(written: readonly string[], units: LengthUnit): Mm[] {
  return written.map((size) => {
    const mm = parseLength(size, units);
    if (mm === undefined) throw new RangeError(`stock size not readable: ${size}`);
    return mm;
  });
}

function unified(diameter: string, perInch: number): Thread {
  return {
    name: `${diameter}-${perInch}`,
    diameterMm: sizes([diameter], "in")[0] as Mm,
    pitchMm: MM_PER_INCH / perInch,
    series: "unified",
  };
}

function metric(diameterMm: Mm, pitchMm: Mm): Thread {
  return { name: `M${diameterMm}`, diameterMm, pitchMm, series: "metric" };
}

function metricTapped(diameterMm: Mm, pitchMm: Mm): TappedThread {
  return { ...metric(diameterMm, pitchMm), tapDrill: `${Number((diameterMm - pitchMm).toFixed(1))} mm` };
}

const INCH: Stock = {
  units: "in",
  flatThicknessesMm: sizes(
    ["1/8", "3/16", "1/4", "5/16", "3/8", "1/2", "5/8", "3/4", "1", "1 1/4", "1 1/2", "2"],
    "in",
  ),
  flatWidthsMm: sizes(
    [
      "3/4",
      "1",
      "1 1/4",
      "1 1/2",
      "1 3/4",
      "2",
      "2 1/4",
      "2 1/2",
      "3",
      "3 1/2",
      "4",
      "5",
      "6",
      "8",
      "10",
      "12",
    ],
    "in",
  ),
  roundsMm: sizes(["1/4", "5/16", "3/8", "1/2", "5/8", "3/4", "7/8", "1", "1 1/8", "1 1/4", "1 1/2"], "in"),
  bolts: [
    { ...unified("5/16", 18), tapDrill: "F (0.257 in)" },
    { ...unified("3/8", 16), tapDrill: "5/16 in" },
    { ...unified("1/2", 13), tapDrill: "27/64 in" },
    { ...unified("5/8", 11), tapDrill: "17/32 in" },
    { ...unified("3/4", 10), tapDrill: "21/32 in" },
    { ...unified("7/8", 9), tapDrill: "49/64 in" },
    { ...unified("1", 8), tapDrill: "7/8 in" },
  ],
  screws: [
    { ...unified("1/4", 20), tapDrill: "no. 7 (0.201 in)" },
    { ...unified("5/16", 18), tapDrill: "F (0.257 in)" },
    { ...unified("3/8", 16), tapDrill: "5/16 in" },
    { ...unified("1/2", 13), tapDrill: "27/64 in" },
  ],
  flatHeads: [
    {
      name: "no. 6-32",
      diameterMm: 0.138 * MM_PER_INCH,
      pitchMm: MM_PER_INCH / 32,
      series: "unified",
      tapDrill: "no. 36 (0.1065 in)",
      headMm: 0.262 * MM_PER_INCH,
      headHighMm: 0.083 * MM_PER_INCH,
    },
    {
      name: "no. 10-24",
      diameterMm: 0.19 * MM_PER_INCH,
      pitchMm: MM_PER_INCH / 24,
      series: "unified",
      tapDrill: "no. 25 (0.1495 in)",
      headMm: 0.385 * MM_PER_INCH,
      headHighMm: 0.116 * MM_PER_INCH,
    },
  ],
  springWiresMm: sizes(
    ["0.031", "0.035", "0.039", "0.045", "0.051", "0.059", "0.067", "0.075", "0.085", "0.095"],
    "in",
  ),
  boltGrade: {
    name: "B7",
    proofMpa: 586,
    source: "SAE J429 grade 5: 85 ksi proof up to 1 in; bolt of ASTM A193 B7 has more (from memory)",
  },
};

const METRIC: Stock = {
  units: "mm",
  flatThicknessesMm: [3, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50],
  flatWidthsMm: [20, 25, 30, 35, 40, 45, 50, 55, 60, 70, 80, 90, 100, 120, 150, 200, 250, 300],
  roundsMm: [6, 8, 10, 12, 16, 20, 22, 25, 28, 30, 40],
  bolts: [
    metricTapped(8, 1.25),
    metricTapped(10, 1.5),
    metricTapped(12, 1.75),
    metricTapped(16, 2),
    metricTapped(20, 2.5),
    metricTapped(24, 3),
  ],
  screws: [metricTapped(6, 1), metricTapped(8, 1.25), metricTapped(10, 1.5), metricTapped(12, 1.75)],
  flatHeads: [
    { ...metricTapped(3, 0.5), headMm: 6.7, headHighMm: 1.86 },
    { ...metricTapped(5, 0.8), headMm: 11.2, headHighMm: 3.1 },
  ],
  springWiresMm: [0.8, 0.9, 1, 1.1, 1.25, 1.4, 1.6, 1.8, 2, 2.25, 2.5],
  boltGrade: { name: "8.8", proofMpa: 580, source: "ISO 898-1: 580 MPa proof up to M16, 600 above" },
};

/** The rack for the user's unit. @example stockIn("in").bolts[1].name // "3/8-16" */
export function stockIn(units: LengthUnit): Stock {
  return units === "in" ? INCH : METRIC;
}
