/**
 * Where fingers can stand, exactly: rows of given widths, side by side in the stations that are free for them, so that no
 * bend line has more than the given length bare. Ends of a row's fingers are followed as intervals, so every place along
 * the brake is looked at. Which fingers to take is in fingerSets.ts.
 */
import type { Mm } from "../units/quantity.ts";
import type { PlacedFinger } from "./strokeBodies.ts";
import { DRAWN_IN_MM } from "./strokeBodies.ts";
import type { Interval } from "./strokePlan.ts";

/** Fingers of one width that the shop has. */
export interface FingerStock {
  readonly widthMm: Mm;
  readonly count: number;
}

export interface RowQuestion {
  readonly stock: readonly FingerStock[];
  /** Bend lines to be held down, from the left. */
  readonly lines: readonly Interval[];
  /** Stations where no finger can stand, in order. */
  readonly blocked: readonly Interval[];
  readonly gapMm: Mm;
  /** Where the brake runs. */
  readonly brake: Interval;
}

/** How many of each width of the stock; a row of them can be placed. */
export type FingerSet = readonly number[];

const SAME_MM = 1e-9;

/** How far a finger may reach over what is blocked: touching is no contact, and neither is a sum that was rounded. */
const TOUCH_MM: Mm = DRAWN_IN_MM - 1e-6;

/** Where the last finger may end, and how it came to be: `before` is undefined for the first. */
export interface Reach {
  readonly ends: Interval;
  readonly width: number;
  readonly before: Reach | undefined;
}

/** A row of just these fingers, its places in the middle of what they may be; undefined where there is none. */
export function rowOf(question: RowQuestion, set: FingerSet): PlacedFinger[] | undefined {
  const zones = zonesOf(question);
  const total = set.reduce((sum, n) => sum + n, 0);
  const failed = new Set<string>();
  const go = (left: readonly number[], reaches: readonly Reach[], placed: number): Reach | undefined => {
    if (placed === total) return reaches.find((reach) => lastEnds(question, reach));
    for (const width of left.keys()) {
      if (left[width] === 0) continue;
      const more = thinned(
        placed === 0
          ? firstPlaces(question, zones, width)
          : reaches.flatMap((reach) => nextPlaces(question, zones, reach, width)),
      );
      if (more.length === 0) continue;
      const rest = left.map((n, i) => (i === width ? n - 1 : n));
      const key = `${rest.join()}|${more.map(({ ends }) => `${ends.from.toFixed(6)},${ends.to.toFixed(6)}`).join(";")}`;
      if (failed.has(key)) continue;
      const found = go(rest, more, placed + 1);
      if (found) return found;
      failed.add(key);
    }
    return undefined;
  };
  const last = total === 0 ? undefined : go(set, [], 0);
  return last && placedRow(question, last);
}

/** Free stations, with what a finger's ends may overlap of what is blocked: touching is no contact. */
export function zonesOf({ blocked, brake }: RowQuestion): Interval[] {
  const zones: Interval[] = [];
  let from = brake.from;
  for (const block of blocked) {
    if (block.from + TOUCH_MM > from) zones.push({ from, to: Math.min(block.from + TOUCH_MM, brake.to) });
    from = Math.max(from, block.to - TOUCH_MM);
  }
  if (from < brake.to) zones.push({ from, to: brake.to });
  return zones;
}

/** The first finger: it leaves no more than the gap bare at the left end of the first line. */
function firstPlaces(question: RowQuestion, zones: readonly Interval[], width: number): Reach[] {
  const starts = { from: -Infinity, to: question.lines[0]!.from + question.gapMm };
  return placesIn(question, zones, width, starts);
}

/** Where the last of just these fingers may end, whatever their order. */
export function reachesOf(question: RowQuestion, set: FingerSet): Reach[] {
  const zones = zonesOf(question);
  const total = set.reduce((sum, n) => sum + n, 0);
  const go = (left: readonly number[], reaches: readonly Reach[], placed: number): Reach[] => {
    if (placed === total) return [...reaches];
    return [...left.keys()].flatMap((width) => {
      if (left[width] === 0) return [];
      const more =
        placed === 0
          ? firstPlaces(question, zones, width)
          : reaches.flatMap((reach) => nextPlaces(question, zones, reach, width));
      if (more.length === 0) return [];
      return go(
        left.map((n, i) => (i === width ? n - 1 : n)),
        thinned(more),
        placed + 1,
      );
    });
  };
  return thinned(go(set, [], 0));
}

/** The next finger after one that may end in an interval: within the gap, or at the next line past the end of one. */
export function nextPlaces(
  question: RowQuestion,
  zones: readonly Interval[],
  reach: Reach,
  width: number,
): Reach[] {
  const { lines, gapMm } = question;
  const { ends } = reach;
  const found = placesIn(question, zones, width, { from: ends.from, to: ends.to + gapMm }, reach);
  for (const [i, line] of lines.entries()) {
    const next = lines[i + 1];
    // From here on all of this line is held down or short enough to stay bare: on to the next line.
    const from = Math.max(ends.from, line.to - gapMm);
    if (!next || from > ends.to + SAME_MM || from > next.from + gapMm) continue;
    const past: Reach = { ...reach, ends: { from, to: ends.to } };
    found.push(...placesIn(question, zones, width, { from, to: next.from + gapMm }, past));
  }
  return found;
}

/** Places for a finger whose left side lies in `starts`, one interval a zone. It must reach past the first line's start. */
function placesIn(
  { stock, lines }: RowQuestion,
  zones: readonly Interval[],
  width: number,
  starts: Interval,
  before?: Reach,
): Reach[] {
  const { widthMm } = stock[width]!;
  return zones.flatMap(({ from, to }) => {
    const [low, high] = [Math.max(from, starts.from), Math.min(to - widthMm, starts.to)];
    const least = before ? low : Math.max(low, lines[0]!.from - widthMm);
    if (least > high + SAME_MM) return [];
    return [{ ends: { from: least + widthMm, to: Math.max(least, high) + widthMm }, width, before }];
  });
}

/** Whether a row that ends there leaves no more than the gap bare at the end of the last line. */
function lastEnds({ lines, gapMm }: RowQuestion, { ends }: Reach): boolean {
  return ends.to >= lines.at(-1)!.to - gapMm - SAME_MM;
}

/** Of the ways to come to an interval of ends only those that reach what no other does. */
function thinned(reaches: readonly Reach[]): Reach[] {
  return reaches.filter(
    ({ ends }, i) =>
      !reaches.some(
        (other, j) =>
          j !== i &&
          other.ends.from <= ends.from + SAME_MM &&
          other.ends.to >= ends.to - SAME_MM &&
          (j < i || other.ends.from < ends.from - SAME_MM || other.ends.to > ends.to + SAME_MM),
      ),
  );
}

/** Rows of just these fingers in other places: at either end and in the middle of the room that they have. */
export function otherPlaces(question: RowQuestion, set: FingerSet): PlacedFinger[][] {
  const ends = reachesOf(question, set).filter((reach) => lastEnds(question, reach));
  return ends.flatMap((last) => [0, 0.5, 1].map((share) => placedRow(question, last, share)));
}

/**
 * The row led back from its last finger, which just reaches over the end of the last line where it can, or stands at a share of
 * the room that it has.
 */
function placedRow({ stock, lines, gapMm }: RowQuestion, last: Reach, share?: number): PlacedFinger[] {
  const row: PlacedFinger[] = [];
  const { to } = lines.at(-1)!;
  const least = Math.max(to - gapMm, last.ends.from);
  const covers = Math.min(last.ends.to, Math.max(least, to));
  const most = Math.min(last.ends.to, covers + stock[last.width]!.widthMm);
  let end = share === undefined ? covers : least + share * (most - least);
  for (let reach: Reach | undefined = last; reach; reach = reach.before) {
    const { widthMm } = stock[reach.width]!;
    const fromMm = end - widthMm;
    row.unshift({ widthMm, fromMm });
    const before: Reach | undefined = reach.before;
    if (!before) break;
    // As far right as the next finger lets it, if it may be: then nothing is bare between the two.
    end = Math.min(before.ends.to, fromMm);
  }
  return row;
}
