/**
 * Families of one kind (trimming one flat or another) taken to their limits, the smallest change first, and each limit
 * made a way out with the figure rounded for the shop. A family that can only come out dearer than those found is left.
 * Bound: a limit to TOLERANCE; one step less is proved to fail, or the way says that only its own order was tried.
 */

import type { Way } from "../jobFile/way.ts";
import type { LengthUnit } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import { costOf } from "./cost.ts";
import { type Family, FIRST, grainOf, STEP, safeFigures, TOLERANCE } from "./family.ts";
import { closeIn } from "./limit.ts";
import type { Prober, ProvedWay } from "./prober.ts";

/** Of one kind, such as trimming one flat or another, only the cheapest are told. */
const MOST_OF_A_KIND = 2;

/** Each size tried is so much larger than the one before. */
const WIDENING = 2;

/** Of two round figures the one with at least this to spare is told: less is not measured in a shop. */
const SPARE_MM: Mm = 0.1;

/** So many 64ths or half millimetres more are looked at for one that is clear and not only just. */
const GRAINS_TO_CLEAR = 6;

interface Scan {
  readonly family: Family;
  readonly fails: number;
  readonly next: number;
}

/** The cheapest ways of one kind; fewer where the work that may be done runs out. */
export function waysOfKind(prober: Prober, families: readonly Family[], goal: ShopGoal): Way[] {
  let ways: Way[] = [];
  const scans: Scan[] = families
    .filter((family) => family.most > 0 && (!family.monotone || passesAt(prober, family, family.most)))
    .map((family) => ({ family, fails: 0, next: Math.min(FIRST[family.measure], family.most) }));
  while (scans.length > 0 && !prober.isDone) {
    const scan = scans.reduce((least, other) => (other.next < least.next ? other : least));
    const place = scans.indexOf(scan);
    const { family, fails, next } = scan;
    const dearest = ways[MOST_OF_A_KIND - 1]?.cost ?? Number.POSITIVE_INFINITY;
    if (costOf(family.kind, fails, family.measure) > dearest) scans.splice(place, 1);
    else if (passesAt(prober, family, next)) {
      scans.splice(place, 1);
      const way = familyWay(prober, family, limitOf(prober, family, fails, next), goal);
      if (way) ways = [...ways, way].toSorted((a, b) => a.cost - b.cost);
    } else if (next >= family.most) scans.splice(place, 1);
    else scans[place] = { family, fails: next, next: Math.min(family.most, next * WIDENING) };
  }
  return ways.slice(0, MOST_OF_A_KIND);
}

/** Whose marks a figure is rounded to, and from which clearance on a job is clear. */
export interface ShopGoal {
  readonly units: LengthUnit;
  readonly marginMm: Mm;
}

function figureOf({ base, sign }: Family, size: number): number {
  return base + sign * size;
}

function passesAt(prober: Prober, family: Family, size: number): boolean {
  return prober.passes(family.changes(figureOf(family, size)));
}

function limitOf(prober: Prober, family: Family, fails: number, found: number): number {
  const passes = (size: number) => passesAt(prober, family, size);
  return closeIn({ passes, step: STEP[family.measure], tolerance: TOLERANCE[family.measure] }, fails, found);
}

function familyWay(prober: Prober, family: Family, size: number, goal: ShopGoal): Way | undefined {
  const { measure, kind, base } = family;
  const best = roundedWay(prober, family, size, goal.units);
  if (!best) return undefined;
  const isOne = family.changes(best.to).length === 1;
  const clearFrom =
    isOne && best.verdict === "tight" ? clearFigure(prober, family, best.to, goal) : undefined;
  const less = size - STEP[measure];
  const lessChange = less > 0 ? family.changes(figureOf(family, less)) : null;
  const proved = lessChange === null || prober.fails(lessChange);
  return {
    ...best,
    ...(clearFrom !== undefined && { clearFrom }),
    ...(family.index !== undefined && { index: family.index }),
    ...(family.twin !== undefined && { twin: family.twin }),
    ...(family.also !== undefined && { also: family.also }),
    from: base,
    ...(proved
      ? {
          limit: {
            figure: figureOf(family, size),
            changes: prober.completed(family.changes(figureOf(family, size))),
            oneStepLess: lessChange && prober.completed(lessChange),
          },
        }
      : { thisOrderOnly: true as const }),
    cost: costOf(kind, size, measure),
  };
}

/** The roundest figure on the safe side that leaves enough to spare, else the roundest that folds. */
function roundedWay(
  prober: Prober,
  family: Family,
  size: number,
  units: LengthUnit,
): (ProvedWay & { readonly to: number }) | undefined {
  let first: (ProvedWay & { readonly to: number }) | undefined;
  for (const to of [...safeFigures(family, size, grainOf(family, units)), figureOf(family, size)]) {
    const way = prober.prove(family.kind, family.changes(to));
    if (way && (way.clearanceMm ?? SPARE_MM) >= SPARE_MM) return { ...way, to };
    if (way) first ??= { ...way, to };
  }
  return first;
}

/** The next round figure from which the job is clear, where it lies near; undefined where it does not. */
function clearFigure(prober: Prober, family: Family, tight: number, goal: ShopGoal): number | undefined {
  const grain = grainOf(family, goal.units);
  for (let more = 1; more <= GRAINS_TO_CLEAR; more++) {
    const figure = tight + family.sign * more * grain;
    if (prober.passes(family.changes(figure), goal.marginMm)) return figure;
  }
  return undefined;
}
