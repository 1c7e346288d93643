/**
 * Which of the owned fingers to put on: all sets of so few fingers as will do, or all sets there are. Exact: a set is passed
 * over only where its widths together are too little for the bend lines or too much for the free stations.
 */
import type { Mm } from "../units/quantity.ts";
import { type FingerSet, otherPlaces, type RowQuestion, rowOf, zonesOf } from "./fingerRows.ts";
import type { PlacedFinger } from "./strokeBodies.ts";

/** A set with the places of its fingers. */
export interface FingerRow {
  readonly set: FingerSet;
  readonly row: readonly PlacedFinger[];
}

/** Rows longer than this are more than a person sets up. */
const MOST_FINGERS = 40;
/** So many sets of equally few fingers are enough to choose from. */
const MOST_SETS = 6;

const SAME_MM = 1e-6;

/** How many sets a stock makes, the empty one among them. @example setsOf([{ widthMm: 50, count: 2 }]) // 3 */
export function setsOf(stock: RowQuestion["stock"]): number {
  return stock.reduce((product, { count }) => product * (count + 1), 1);
}

/** The sets of fewest fingers that hold all lines down; none where no row of the stock does. */
export function fewestFingers(question: RowQuestion): FingerRow[] {
  const owned = question.stock.reduce((sum, { count }) => sum + count, 0);
  const bounds = boundsOf(question);
  if (bounds.bare) return [];
  for (let count = 1; count <= Math.min(owned, MOST_FINGERS); count++) {
    const found = rowsOf(question, bounds, count, MOST_SETS);
    if (found.length > 0) return found;
  }
  return [];
}

/** Every set that holds all lines down, fewest fingers first, in several places each: what a row clears hangs on them. */
export function everyRow(question: RowQuestion): FingerRow[] {
  const owned = question.stock.reduce((sum, { count }) => sum + count, 0);
  const bounds = boundsOf(question);
  if (bounds.bare) return [];
  const found: FingerRow[] = [];
  for (let count = 1; count <= owned; count++) found.push(...rowsOf(question, bounds, count, Infinity));
  return found.flatMap((one) => [
    one,
    ...otherPlaces(question, one.set).map((row) => ({ set: one.set, row })),
  ]);
}

/** All sets of just so many fingers of a stock. */
export function setsOfCount(stock: RowQuestion["stock"], count: number): FingerSet[] {
  const go = (width: number, left: number): number[][] => {
    if (width === stock.length) return left === 0 ? [[]] : [];
    return Array.from({ length: Math.min(left, stock[width]!.count) + 1 }, (_, n) => n).flatMap((n) =>
      go(width + 1, left - n).map((rest) => [n, ...rest]),
    );
  };
  return go(0, count);
}

interface Bounds {
  /** Some stretch of a bend line longer than the gap is blocked to every finger. */
  readonly bare: boolean;
  /** Bend lines together, and free stations together. */
  readonly needMm: Mm;
  readonly roomMm: Mm;
}

function boundsOf(question: RowQuestion): Bounds {
  const { lines, gapMm } = question;
  const zones = zonesOf(question);
  const bare = lines.some(({ from, to }) => {
    let reached = from;
    for (const zone of zones) {
      if (zone.to <= reached) continue;
      if (zone.from >= to || zone.from > reached + gapMm + SAME_MM) break;
      reached = zone.to;
    }
    return reached < to - gapMm - SAME_MM;
  });
  return {
    bare,
    needMm: lines.reduce((sum, { from, to }) => sum + to - from, 0),
    roomMm: zones.reduce((sum, { from, to }) => sum + to - from, 0),
  };
}

/** The sets of just so many fingers that can be placed, wider ones first. */
function rowsOf(question: RowQuestion, bounds: Bounds, count: number, most: number): FingerRow[] {
  const { stock, lines, gapMm } = question;
  // Each finger leaves at most one stretch bare on either side of it, on each line that it stands over.
  const leastMm = bounds.needMm - gapMm * (count + 2 * lines.length) - SAME_MM;
  const mostMm = bounds.roomMm + SAME_MM;
  const order = [...stock.keys()].sort((a, b) => stock[b]!.widthMm - stock[a]!.widthMm);
  const set = stock.map(() => 0);
  const found: FingerRow[] = [];
  const go = (place: number, left: number, sumMm: Mm): void => {
    if (found.length >= most) return;
    if (left === 0) {
      const row = sumMm < leastMm ? undefined : rowOf(question, set);
      if (row) found.push({ set: [...set], row });
      return;
    }
    const width = order[place];
    if (width === undefined) return;
    const { widthMm, count: owned } = stock[width]!;
    if (widthMm <= 0 || sumMm + left * widthMm < leastMm) return;
    for (let n = Math.min(owned, left); n >= 0; n--) {
      if (sumMm + n * widthMm > mostMm) continue;
      set[width] = n;
      go(place + 1, left - n, sumMm + n * widthMm);
    }
    set[width] = 0;
  };
  go(0, count, 0);
  return found;
}
