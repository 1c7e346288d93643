/**
 * Ways out of a job that does not fold, or only just: families of changes, each taken to its limit, and other handling.
 * Every one is run again on the changed job before it is offered, with the figure rounded for the shop.
 * Bound: up to SEARCHED bends all orders are tried at each size; beyond, the order that got furthest, with either end.
 */
import type { LengthUnit } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import type { Change, OrderedBend, Trial, Tryout } from "./change.ts";
import { costOf } from "./cost.ts";
import {
  type ClampMeasures,
  type Family,
  FIRST,
  familiesOf,
  grainOf,
  STEP,
  safeFigures,
  TOLERANCE,
} from "./family.ts";
import { folds, type Machines, type Outcome, outcomeOf } from "./folds.ts";
import { type Goal, otherHandling, otherSides, reaches } from "./handling.ts";
import { smallestPassing } from "./limit.ts";
import type { Way, WayKind } from "./way.ts";

/** Up to so many bends a search of all orders takes a few milliseconds at most. */
const SEARCHED = 6;
/** Of one kind, such as trimming one flat or another, only the cheapest are told. */
const MOST_OF_A_KIND = 2;

/** Of two round figures the one with at least this to spare is told: less is not measured in a shop. */
const SPARE_MM: Mm = 0.1;

/** So many 64ths or half millimetres more are looked at for one that is clear and not only just. */
const GRAINS_TO_CLEAR = 6;

export interface Situation {
  readonly trial: Trial;
  readonly clamp: ClampMeasures;
  /** The user's own order, where the job gives one. */
  readonly own?: readonly OrderedBend[];
  /** The order that the check of the job came to, as far as it got. */
  readonly reached: readonly OrderedBend[];
  readonly goal: Goal;
  readonly tryout: Tryout;
  readonly machines: Machines;
  readonly units: LengthUnit;
}

/** Ways out, cheapest first. Other orders, where there are any, come alone: nothing is cheaper. */
export function findWays(situation: Situation): Way[] {
  const { trial, own, goal } = situation;
  if (own) {
    const ways = otherHandling(trial, own, goal);
    if (ways.length > 0) return ways;
  }
  const ways = [
    ...settingsWithoutSize(situation),
    ...familiesOf(trial, situation.clamp).flatMap((family) => wayOfFamily(situation, family) ?? []),
  ];
  return cheapestOfEach(ways.toSorted((a, b) => a.cost - b.cost));
}

/** Changes of the brake's setting that have no size. */
function settingsWithoutSize(situation: Situation): Way[] {
  const { noseSetback, openEnds } = situation.trial.brake;
  const automatic = noseSetback !== "auto" && {
    kind: "automaticSetback" as const,
    change: { kind: "setback", toMm: "auto" } as const,
  };
  const open = !openEnds && { kind: "openEnds" as const, change: { kind: "openEnds" } as const };
  return [automatic, open].flatMap((setting) => {
    const way = setting ? provedWay(situation, setting.kind, [setting.change]) : undefined;
    return way ? [{ ...way, cost: costOf(way.kind) }] : [];
  });
}

function cheapestOfEach(sorted: readonly Way[]): Way[] {
  const told = new Map<WayKind, number>();
  return sorted.filter(({ kind }) => {
    const before = told.get(kind) ?? 0;
    told.set(kind, before + 1);
    return before < MOST_OF_A_KIND;
  });
}

function wayOfFamily(situation: Situation, family: Family): Way | undefined {
  const { measure, kind, base, sign } = family;
  const figureOf = (size: number) => base + sign * size;
  const passes = (size: number) => passesWith(situation, [family.change(figureOf(size))]);
  const size = smallestPassing({
    passes,
    most: family.most,
    first: FIRST[measure],
    step: STEP[measure],
    tolerance: TOLERANCE[measure],
    monotone: family.monotone ?? false,
  });
  if (size === undefined) return undefined;
  const figures = [...safeFigures(family, size, grainOf(family, situation.units)), figureOf(size)];
  const ways = figures.flatMap((to) => {
    const way = provedWay(situation, kind, [family.change(to)]);
    return way ? [{ ...way, to }] : [];
  });
  const best = ways.find(({ clearanceMm }) => (clearanceMm ?? SPARE_MM) >= SPARE_MM) ?? ways[0];
  if (!best) return undefined;
  const less = size - STEP[measure];
  const clearFrom = best.verdict === "tight" ? clearFigure(situation, family, best.to) : undefined;
  return {
    ...best,
    ...(clearFrom !== undefined && { clearFrom }),
    ...(family.index !== undefined && { index: family.index }),
    ...(family.twin !== undefined && { twin: family.twin }),
    from: base,
    // Along one sequence of bends only, a limit would be no limit of the part.
    ...(isSearched(situation) && {
      limit: {
        figure: figureOf(size),
        changes: completed(situation, [family.change(figureOf(size))]),
        oneStepLess: less > 0 ? completed(situation, [family.change(figureOf(less))]) : null,
      },
    }),
    cost: costOf(kind, size, measure),
  };
}

/** The next round figure from which the job is clear, where it lies near; undefined where it does not. */
function clearFigure(situation: Situation, family: Family, tight: number): number | undefined {
  const grain = grainOf(family, situation.units);
  const goal = { ...situation.goal, leastMm: situation.goal.marginMm };
  for (let more = 1; more <= GRAINS_TO_CLEAR; more++) {
    const figure = tight + family.sign * more * grain;
    if (passesWith({ ...situation, goal }, [family.change(figure)])) return figure;
  }
  return undefined;
}

/** The way that these changes make, run again whole; undefined where it falls short of the goal. */
function provedWay(
  situation: Situation,
  kind: WayKind,
  changes: readonly Change[],
): Omit<Way, "cost"> | undefined {
  const trial = situation.tryout(changes);
  const outcome = trial && outcomeWith(situation, trial);
  if (!outcome || !reaches(outcome, situation.goal)) return undefined;
  const { verdict, clearanceMm, order } = outcome;
  return { kind, changes: completed(situation, changes, order), verdict, clearanceMm, order };
}

/** A user's own order that failed must not stay in the changed job, unless it was the order that was tried. */
function completed(
  situation: Situation,
  changes: readonly Change[],
  order?: readonly OrderedBend[],
): Change[] {
  if (!isSearched(situation) && order) return [...changes, { kind: "order", order }];
  return situation.own ? [...changes, { kind: "order", order: null }] : [...changes];
}

function isSearched({ trial }: Situation): boolean {
  return trial.part.bends.length <= SEARCHED;
}

function passesWith(situation: Situation, changes: readonly Change[]): boolean {
  const trial = situation.tryout(changes);
  if (!trial) return false;
  if (isSearched(situation)) return folds(trial, situation.goal.leastMm, situation.machines);
  return otherSides(trial, sequenceOf(situation), situation.goal) !== undefined;
}

function outcomeWith(situation: Situation, trial: Trial): Outcome | undefined {
  const { goal } = situation;
  if (isSearched(situation)) return outcomeOf(trial, goal.marginMm);
  const order = otherSides(trial, sequenceOf(situation), goal);
  return order && outcomeOf(trial, goal.marginMm, order);
}

/** The order that got furthest, with the bends that it never came to at its end. */
function sequenceOf({ reached, trial }: Situation): OrderedBend[] {
  const rest = trial.part.bends
    .map((_, i): OrderedBend => ({ bend: i + 1, clamped: "start" }))
    .filter(({ bend }) => reached.every((step) => step.bend !== bend));
  return [...reached, ...rest];
}
