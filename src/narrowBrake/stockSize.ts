/**
 * Stock that a small shop can buy, inch and metric: flats, equal angles, square tube, rounds, bolts.
 * Sizes are those of common steel stock lists (metric ones follow EN 10058, EN 10056-1, EN 10219-2, ISO 261): from memory, ask your supplier.
 * Bound: nominal sizes; tube corners are taken as sharp (see strength/section.ts).
 */
import type { LengthUnit } from "../units/length.ts";
import { MM_PER_INCH, parseLength } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import type { BoltGrade, Thread } from "./strength/bolt.ts";
import type { Shape } from "./strength/section.ts";

export interface StockSize {
  /** As asked for at the counter: "1/4 × 2 flat". */
  readonly name: string;
  readonly shape: Shape;
}

export interface Stock {
  readonly units: LengthUnit;
  readonly flatThicknessesMm: readonly Mm[];
  readonly flatWidthsMm: readonly Mm[];
  readonly angles: readonly StockSize[];
  readonly tubes: readonly StockSize[];
  readonly rounds: readonly StockSize[];
  /** Coarse bolts for holding down. */
  readonly bolts: readonly Thread[];
  /** Screws that set the bar. */
  readonly screws: readonly Thread[];
  readonly boltGrade: BoltGrade;
}

/** A flat bar by its thickness and width; the thickness stands up. */
export function flatStock(thicknessMm: Mm, widthMm: Mm, words: (mm: Mm) => string): StockSize {
  return {
    name: `${words(thicknessMm)} × ${words(widthMm)} flat`,
    shape: { kind: "flat", widthMm, heightMm: thicknessMm },
  };
}

type Written = string;

/** Lengths as written on the rack; a slip in the tables below must not pass as a size. */
function sizes(written: readonly Written[], units: LengthUnit): Mm[] {
  return written.map((size) => {
    const mm = parseLength(size, units);
    if (mm === undefined) throw new RangeError(`stock size not readable: ${size}`);
    return mm;
  });
}

function angles(
  written: readonly (readonly [leg: Written, thickness: Written])[],
  units: LengthUnit,
): StockSize[] {
  return written.map(([leg, thickness]) => {
    const [widthMm, thicknessMm] = sizes([leg, thickness], units) as [Mm, Mm];
    return {
      name: `${leg} × ${leg} × ${thickness} angle`,
      shape: { kind: "angle", widthMm, heightMm: widthMm, thicknessMm },
    };
  });
}

function tubes(
  written: readonly (readonly [side: Written, wall: Written])[],
  units: LengthUnit,
): StockSize[] {
  return written.map(([side, wall]) => {
    const [widthMm, wallMm] = sizes([side, wall], units) as [Mm, Mm];
    return {
      name: `${side} × ${side} × ${wall} square tube`,
      shape: { kind: "tube", widthMm, heightMm: widthMm, wallMm },
    };
  });
}

function rounds(written: readonly Written[], units: LengthUnit): StockSize[] {
  return sizes(written, units).map((diameterMm, i) => ({
    name: `${written[i]} round`,
    shape: { kind: "round", diameterMm },
  }));
}

function unifiedThreads(written: readonly (readonly [diameter: Written, perInch: number])[]): Thread[] {
  return written.map(([diameter, perInch]) => ({
    name: `${diameter}-${perInch}`,
    diameterMm: sizes([diameter], "in")[0] as Mm,
    pitchMm: MM_PER_INCH / perInch,
    series: "unified",
  }));
}

function metricThreads(written: readonly (readonly [diameterMm: Mm, pitchMm: Mm])[]): Thread[] {
  return written.map(([diameterMm, pitchMm]) => ({
    name: `M${diameterMm}`,
    diameterMm,
    pitchMm,
    series: "metric",
  }));
}

const INCH: Stock = {
  units: "in",
  flatThicknessesMm: sizes(["1/8", "3/16", "1/4", "5/16", "3/8", "1/2", "5/8", "3/4", "1"], "in"),
  flatWidthsMm: sizes(["3/4", "1", "1 1/4", "1 1/2", "2", "2 1/2", "3", "4", "5", "6"], "in"),
  angles: angles(
    [
      ["1", "1/8"],
      ["1", "1/4"],
      ["1 1/4", "3/16"],
      ["1 1/4", "1/4"],
      ["1 1/2", "1/8"],
      ["1 1/2", "3/16"],
      ["1 1/2", "1/4"],
      ["2", "1/8"],
      ["2", "3/16"],
      ["2", "1/4"],
      ["2", "3/8"],
      ["2 1/2", "1/4"],
      ["2 1/2", "3/8"],
      ["3", "1/4"],
      ["3", "3/8"],
      ["3", "1/2"],
      ["4", "1/4"],
      ["4", "3/8"],
      ["4", "1/2"],
      ["6", "1/2"],
    ],
    "in",
  ),
  tubes: tubes(
    [
      ["1", "1/8"],
      ["1 1/2", "1/8"],
      ["1 1/2", "3/16"],
      ["2", "1/8"],
      ["2", "3/16"],
      ["2", "1/4"],
      ["2 1/2", "3/16"],
      ["2 1/2", "1/4"],
      ["3", "1/8"],
      ["3", "3/16"],
      ["3", "1/4"],
      ["3", "3/8"],
      ["4", "3/16"],
      ["4", "1/4"],
      ["4", "3/8"],
      ["4", "1/2"],
      ["6", "3/8"],
      ["6", "1/2"],
    ],
    "in",
  ),
  rounds: rounds(["1/4", "5/16", "3/8", "1/2", "5/8", "3/4", "7/8", "1", "1 1/4", "1 1/2"], "in"),
  bolts: unifiedThreads([
    ["1/4", 20],
    ["5/16", 18],
    ["3/8", 16],
    ["1/2", 13],
    ["5/8", 11],
    ["3/4", 10],
    ["1", 8],
  ]),
  screws: unifiedThreads([
    ["1/4", 20],
    ["5/16", 18],
    ["3/8", 16],
    ["1/2", 13],
  ]),
  boltGrade: { name: "SAE grade 5", proofMpa: 586, source: "SAE J429: 85 ksi proof up to 1 in" },
};

const METRIC: Stock = {
  units: "mm",
  flatThicknessesMm: [3, 4, 5, 6, 8, 10, 12, 15, 20, 25],
  flatWidthsMm: [20, 25, 30, 40, 50, 60, 80, 100, 120, 150],
  angles: angles(
    [
      ["25", "3"],
      ["25", "4"],
      ["30", "3"],
      ["30", "4"],
      ["40", "4"],
      ["40", "5"],
      ["50", "5"],
      ["50", "6"],
      ["60", "6"],
      ["60", "8"],
      ["70", "7"],
      ["80", "8"],
      ["80", "10"],
      ["90", "9"],
      ["100", "10"],
      ["100", "12"],
      ["120", "12"],
      ["150", "15"],
    ],
    "mm",
  ),
  tubes: tubes(
    [
      ["25", "3"],
      ["30", "3"],
      ["40", "3"],
      ["40", "4"],
      ["50", "3"],
      ["50", "4"],
      ["50", "5"],
      ["60", "4"],
      ["60", "5"],
      ["80", "4"],
      ["80", "5"],
      ["80", "6.3"],
      ["80", "8"],
      ["100", "5"],
      ["100", "8"],
      ["100", "10"],
      ["120", "8"],
      ["120", "10"],
      ["150", "10"],
    ],
    "mm",
  ),
  rounds: rounds(["6", "8", "10", "12", "16", "20", "25", "30", "40"], "mm"),
  bolts: metricThreads([
    [6, 1],
    [8, 1.25],
    [10, 1.5],
    [12, 1.75],
    [16, 2],
    [20, 2.5],
    [24, 3],
  ]),
  screws: metricThreads([
    [6, 1],
    [8, 1.25],
    [10, 1.5],
    [12, 1.75],
  ]),
  boltGrade: { name: "8.8", proofMpa: 580, source: "ISO 898-1: 580 MPa proof up to M16, 600 above" },
};

/** The rack for the user's unit. @example stockIn("in").bolts[2].name // "3/8-16" */
export function stockIn(units: LengthUnit): Stock {
  return units === "in" ? INCH : METRIC;
}
