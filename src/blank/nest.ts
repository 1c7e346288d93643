/**
 * How many blanks a sheet gives: rows across the sheet, each row of blanks laid one way, as a shear cuts them: strips
 * first, then blanks off each strip. Exact over all such layouts; `kerfMm` is what a cut takes away (a shear: nothing).
 */
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";

export interface NestQuestion {
  readonly blank: { readonly widthMm: Mm; readonly lengthMm: Mm };
  /** The sheet's grain runs along its length. */
  readonly sheet: { readonly widthMm: Mm; readonly lengthMm: Mm };
  /** `across` keeps the bends (they run along the blank's length) across the grain; `free` lays blanks either way. */
  readonly grain: "across" | "free";
  readonly kerfMm: Mm;
  /** How many are wanted; left out: as many as one sheet gives. */
  readonly wanted?: number;
}

export interface NestRow {
  /** Blanks with their width along the sheet's length lie `across` the grain with their bends. */
  readonly laid: "across" | "along";
  readonly count: number;
  /** Lower edge of the row along the sheet's length, and its size that way. */
  readonly fromMm: Mm;
  readonly sizeMm: Mm;
}

export interface Cut {
  readonly from: Point;
  readonly to: Point;
}

export interface Nest {
  readonly perSheet: number;
  readonly sheets: number;
  /** Rows of one full sheet, or of the only one. x runs across the sheet's width, y along its length. */
  readonly rows: readonly NestRow[];
  /** Lower left corner and size of every blank of that sheet. */
  readonly places: readonly {
    readonly at: Point;
    readonly widthMm: Mm;
    readonly heightMm: Mm;
    readonly laid: NestRow["laid"];
  }[];
  /** Cuts in the order to make them: strips off the sheet, then blanks off the strips. */
  readonly cuts: readonly Cut[];
  /** Share of the strips, in per cent, that ends up in no blank. */
  readonly wastePercent: number;
  /** Length of the sheet past the last strip: a piece as wide as the sheet, still whole. */
  readonly restMm: Mm;
}

/** Sizes are compared to this, so that a sheet of exactly three blanks gives three. */
const SAME_MM: Mm = 1e-6;

interface Way {
  readonly laid: NestRow["laid"];
  /** Size of a blank across the sheet and along it. */
  readonly acrossMm: Mm;
  readonly alongMm: Mm;
  readonly perRow: number;
}

/**
 * The layout that gives most blanks; or, where fewer are wanted than fit, the one that uses the least of the sheet's
 * length, so that the rest stays in one piece. Undefined where not even one fits.
 * @throws RangeError when a size is not above zero, the kerf is below zero or `wanted` is not a whole number above zero
 * @example nestOnSheet({ blank: { widthMm: 100, lengthMm: 500 }, sheet: { widthMm: 1000, lengthMm: 2000 }, grain: "across", kerfMm: 0 }).perSheet // 40
 */
export function nestOnSheet(question: NestQuestion): Nest | undefined {
  mustBeSound(question);
  const { sheet, kerfMm, wanted } = question;
  const ways = waysOf(question);
  const [first, second] = ways;
  if (first === undefined) return undefined;
  let best: { counts: readonly number[]; given: number; usedMm: Mm; rows: number } | undefined;
  const mostFirst = fits(sheet.lengthMm, first.alongMm, kerfMm);
  for (let a = 0; a <= mostFirst; a += 1) {
    const leftMm = sheet.lengthMm - a * (first.alongMm + kerfMm);
    const mostSecond = second === undefined ? 0 : fits(leftMm, second.alongMm, kerfMm);
    const least = wanted === undefined ? mostSecond : 0;
    for (let b = least; b <= mostSecond; b += 1) {
      const full = a * first.perRow + b * (second?.perRow ?? 0);
      const given = Math.min(full, wanted ?? full);
      const usedMm = a * (first.alongMm + kerfMm) + b * ((second?.alongMm ?? 0) + kerfMm);
      const found = { counts: [a, b], given, usedMm, rows: a + b };
      if (given > 0 && (best === undefined || isBetter(found, best))) best = found;
    }
  }
  return best === undefined ? undefined : layRows(question, ways, best.counts, best.given);
}

function isBetter(
  a: { given: number; usedMm: Mm; rows: number },
  b: { given: number; usedMm: Mm; rows: number },
): boolean {
  if (a.given !== b.given) return a.given > b.given;
  if (Math.abs(a.usedMm - b.usedMm) > SAME_MM) return a.usedMm < b.usedMm;
  return a.rows < b.rows;
}

/** The ways a blank may lie and still go at least once into a row. */
function waysOf({ blank, sheet, grain, kerfMm }: NestQuestion): readonly Way[] {
  const across: Way = {
    laid: "across",
    acrossMm: blank.lengthMm,
    alongMm: blank.widthMm,
    perRow: fits(sheet.widthMm, blank.lengthMm, kerfMm),
  };
  const along: Way = {
    laid: "along",
    acrossMm: blank.widthMm,
    alongMm: blank.lengthMm,
    perRow: fits(sheet.widthMm, blank.widthMm, kerfMm),
  };
  const allowed = grain === "free" && blank.widthMm !== blank.lengthMm ? [across, along] : [across];
  return allowed.filter((way) => way.perRow > 0 && fits(sheet.lengthMm, way.alongMm, kerfMm) > 0);
}

/** How many pieces come off a length, each cut taking the kerf; after the last piece no cut is needed. */
function fits(lengthMm: Mm, pieceMm: Mm, kerfMm: Mm): number {
  return Math.max(0, Math.floor((lengthMm + kerfMm + SAME_MM) / (pieceMm + kerfMm)));
}

function layRows(
  { blank, sheet, kerfMm, wanted }: NestQuestion,
  ways: readonly Way[],
  counts: readonly number[],
  perSheet: number,
): Nest {
  const rows: NestRow[] = [];
  const places: Nest["places"][number][] = [];
  const strips: Cut[] = [];
  const crosscuts: Cut[] = [];
  let fromMm: Mm = 0;
  let open = perSheet;
  ways.forEach((way, index) => {
    for (let row = 0; row < (counts[index] ?? 0); row += 1) {
      const count = Math.min(way.perRow, open);
      open -= count;
      rows.push({ laid: way.laid, count, fromMm, sizeMm: way.alongMm });
      const endMm = fromMm + way.alongMm;
      if (sheet.lengthMm - endMm > SAME_MM) {
        strips.push({ from: { x: 0, y: endMm }, to: { x: sheet.widthMm, y: endMm } });
      }
      for (let i = 0; i < count; i += 1) {
        const x = i * (way.acrossMm + kerfMm);
        const right = x + way.acrossMm;
        const at = { x, y: fromMm };
        places.push({ at, widthMm: way.acrossMm, heightMm: way.alongMm, laid: way.laid });
        if (sheet.widthMm - right > SAME_MM)
          crosscuts.push({ from: { x: right, y: fromMm }, to: { x: right, y: endMm } });
      }
      fromMm = endMm + kerfMm;
    }
  });
  const taken = places.length * blank.widthMm * blank.lengthMm;
  const usedMm = Math.min(fromMm, sheet.lengthMm);
  return {
    perSheet,
    sheets: wanted === undefined ? 1 : Math.ceil(wanted / perSheet),
    rows,
    places,
    cuts: [...strips, ...crosscuts],
    wastePercent: Math.max(0, 100 * (1 - taken / (sheet.widthMm * usedMm))),
    restMm: sheet.lengthMm - usedMm,
  };
}

function mustBeSound({ blank, sheet, kerfMm, wanted }: NestQuestion): void {
  const sizes = [blank.widthMm, blank.lengthMm, sheet.widthMm, sheet.lengthMm];
  if (!sizes.every((size) => size > 0 && Number.isFinite(size))) {
    throw new RangeError("blank and sheet need widths and lengths above zero");
  }
  if (!(kerfMm >= 0)) throw new RangeError("what a cut takes away can't be below zero");
  if (wanted !== undefined && !(Number.isInteger(wanted) && wanted > 0)) {
    throw new RangeError("how many blanks are wanted must be a whole number above zero");
  }
}
