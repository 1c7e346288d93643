/**
 * What to do where no row of the owned fingers holds a bend down: the width of one finger more that would, with the fewest
 * owned ones beside it, and the row that leaves least bare as it is. Widths come from the intervals of fingerRows.ts, from
 * the left and, mirrored, from the right: exact.
 */
import type { Mm } from "../units/quantity.ts";
import { type FingerSet, nextPlaces, type RowQuestion, reachesOf, rowOf, zonesOf } from "./fingerRows.ts";
import { fewestFingers, setsOfCount } from "./fingerSets.ts";
import type { PlacedFinger } from "./strokeBodies.ts";
import type { Interval } from "./strokePlan.ts";

export interface Missing {
  /** Widths of the one finger that would do. */
  readonly leastMm: Mm;
  readonly mostMm: Mm;
  /** Owned fingers beside it. */
  readonly besideMm: readonly Mm[];
  /** The owned fingers that leave least of the bend line bare, where that is not much. */
  readonly instead?: readonly PlacedFinger[];
}

/** More owned fingers than this beside a new one are not looked at. */
const MOST_BESIDE = 3;
/** A row that leaves more than so many gaps bare is no help. */
const MOST_GAPS = 5;
const EXACT_MM: Mm = 0.005;
/** A finger narrower than this is none. */
const LEAST_WIDTH_MM: Mm = 1;

/** The finger that is missing, or undefined where even one of any width would not do. */
export function missingFinger(question: RowQuestion): Missing | undefined {
  const instead = leastBare(question);
  for (let count = 0; count <= MOST_BESIDE; count++) {
    const found = setsOfCount(question.stock, count).flatMap((set) => widthsWith(question, set));
    const [best] = found.sort((a, b) => b.mostMm - b.leastMm - (a.mostMm - a.leastMm));
    if (best) return { ...best, ...(instead && { instead }) };
  }
  return undefined;
}

/** The longest stretch of a bend line over which no finger can stand, where that is more than may be bare. */
export function barredStretch({ lines, blocked, gapMm }: RowQuestion): Interval | undefined {
  const stretches = lines.flatMap((line) =>
    blocked.map(({ from, to }) => ({ from: Math.max(from, line.from), to: Math.min(to, line.to) })),
  );
  const [longest] = stretches.sort((a, b) => b.to - b.from - (a.to - a.from));
  return longest && longest.to - longest.from > gapMm ? longest : undefined;
}

/** The row of owned fingers with the least bare length, where that is within some gaps or `mostMm`. */
export function leastBare(
  question: RowQuestion,
  mostMm: Mm = MOST_GAPS * Math.max(question.gapMm, 1),
): PlacedFinger[] | undefined {
  const rowAt = (gapMm: Mm) => fewestFingers({ ...question, gapMm })[0];
  let [low, high] = [question.gapMm, mostMm];
  let best = rowAt(high);
  if (!best) return undefined;
  while (high - low > EXACT_MM) {
    const middle = (low + high) / 2;
    const row = rowAt(middle);
    if (row) [best, high] = [row, middle];
    else low = middle;
  }
  return rowOf({ ...question, gapMm: high }, best.set);
}

/** Widths of a finger that does with some owned ones on its left and the rest of them on its right. */
function widthsWith(question: RowQuestion, beside: FingerSet): Missing[] {
  const mirror = mirrored(question);
  const besideMm = question.stock.flatMap(({ widthMm }, i) =>
    Array.from({ length: beside[i]! }, () => widthMm),
  );
  return partsOf(beside).flatMap((left) => {
    const right = beside.map((n, i) => n - left[i]!);
    const starts = startsAfter(question, left);
    const ends = startsAfter(mirror, right).map(({ from, to }) => ({ from: -to, to: -from }));
    return zonesOf(question).flatMap((zone) =>
      within(starts, zone).flatMap((start) =>
        within(ends, zone).flatMap((end): Missing[] => {
          const leastMm = Math.max(LEAST_WIDTH_MM, end.from - start.to);
          const mostMm = end.to - start.from;
          return mostMm < leastMm ? [] : [{ leastMm, mostMm, besideMm }];
        }),
      ),
    );
  });
}

/** Where the next finger may begin after just these; before any of them, at the first line. */
function startsAfter(question: RowQuestion, set: FingerSet): Interval[] {
  const { lines, gapMm, stock } = question;
  if (set.every((n) => n === 0)) {
    const { from } = lines[0]!;
    // A finger may stand out past the line as far as its station is free on both sides; there is no need to.
    return [
      {
        from: zonesOf(question).some((zone) => zone.from > -Infinity && zone.from < from) ? -Infinity : from,
        to: from + gapMm,
      },
    ];
  }
  const withNone = { ...question, stock: [...stock, { widthMm: 0, count: 1 }] };
  const zones = zonesOf(question);
  return reachesOf(question, set).flatMap((reach) =>
    nextPlaces(withNone, zones, reach, stock.length).map(({ ends }) => ends),
  );
}

function within(intervals: readonly Interval[], zone: Interval): Interval[] {
  return intervals.flatMap(({ from, to }) => {
    const part = { from: Math.max(from, zone.from), to: Math.min(to, zone.to) };
    return part.from <= part.to && Number.isFinite(part.from) ? [part] : [];
  });
}

/** Every choice of some of a set's fingers. */
function partsOf(set: FingerSet): FingerSet[] {
  return set.reduce<number[][]>(
    (parts, n) => parts.flatMap((part) => Array.from({ length: n + 1 }, (_, i) => [...part, i])),
    [[]],
  );
}

function mirrored({ lines, blocked, brake, ...rest }: RowQuestion): RowQuestion {
  const turn = ({ from, to }: Interval) => ({ from: -to, to: -from });
  return {
    ...rest,
    lines: lines.map(turn).reverse(),
    blocked: blocked.map(turn).reverse(),
    brake: turn(brake),
  };
}
