/**
 * Ways out of a job that does not fold, or only just: families of changes, each taken to its limit, and other handling.
 * Every one is run again on the changed job before it is offered, with the figure rounded for the shop.
 * Bound: kinds are looked into cheapest first until MOST_STATES are judged; what is then left untried is told.
 */

import type { Change } from "../jobFile/change.ts";
import type { Way } from "../jobFile/way.ts";
import type { LengthUnit } from "../units/length.ts";
import { costOf } from "./cost.ts";
import { type ClampMeasures, type Family, familiesOf } from "./family.ts";
import { waysOfKind } from "./familyWay.ts";
import { otherHandling } from "./handling.ts";
import { pairsOf } from "./pairs.ts";
import { Prober, type ProberSetting } from "./prober.ts";
import { Work } from "./work.ts";

/** A few seconds of looking at 20 bends; far more than parts of up to a dozen ever take. */
const MOST_STATES = 400_000;

export interface Situation extends Omit<ProberSetting, "work"> {
  readonly clamp: ClampMeasures;
  readonly units: LengthUnit;
  /** How much may be looked at; a few seconds' work unless given. */
  readonly mostStates?: number;
  /** Whether pairs of changes are tried where no single one does. */
  readonly pairs?: boolean;
}

export interface WaysFound {
  /** Cheapest first. */
  readonly ways: readonly Way[];
  /** True where the search ended before all changes were tried. */
  readonly cutShort: boolean;
}

/** Ways out, cheapest first. Other orders, where there are any, come alone: nothing is cheaper. */
export function findWays(situation: Situation): WaysFound {
  const { trial, own, goal, units } = situation;
  if (own) {
    const ways = otherHandling(trial, own, goal);
    if (ways.length > 0) return { ways, cutShort: false };
  }
  const work = new Work(situation.mostStates ?? MOST_STATES);
  const prober = new Prober({ ...situation, work });
  const ways = settingsWithoutSize(situation, prober);
  for (const families of kindsOf(familiesOf(trial, situation.clamp))) {
    ways.push(...waysOfKind(prober, families, { units, marginMm: goal.marginMm }));
  }
  if (ways.length === 0 && situation.pairs) {
    for (const families of kindsOf(pairsOf(trial)))
      ways.push(...waysOfKind(prober, families, { units, marginMm: goal.marginMm }));
  }
  return { ways: ways.toSorted((a, b) => a.cost - b.cost), cutShort: work.isDone };
}

/** Changes of the brake's setting that have no size. */
function settingsWithoutSize({ trial }: Situation, prober: Prober): Way[] {
  const { noseSetback, openEnds } = trial.brake;
  const automatic = noseSetback !== "auto" && {
    kind: "automaticSetback" as const,
    change: { kind: "setback", toMm: "auto" } as const satisfies Change,
  };
  const open = !openEnds && { kind: "openEnds" as const, change: { kind: "openEnds" } as const };
  return [automatic, open].flatMap((setting) => {
    const way = setting ? prober.prove(setting.kind, [setting.change]) : undefined;
    return way ? [{ ...way, cost: costOf(way.kind) }] : [];
  });
}

/** Families by kind, the cheapest kind first. */
function kindsOf(families: readonly Family[]): Family[][] {
  const kinds = new Map<string, Family[]>();
  for (const family of families) kinds.set(family.kind, [...(kinds.get(family.kind) ?? []), family]);
  return [...kinds.values()].toSorted((a, b) => costOf(a[0]!.kind) - costOf(b[0]!.kind));
}
