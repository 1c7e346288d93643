/**
 * The best order of a whole part's strokes, or the one that gets furthest (order/search). Where something is doubted, first those
 * that work with the most springback, in which the leaf goes furthest; where the best of them does not work over all of the doubts,
 * those that do.
 */
import type { Brake } from "../brake/brake.ts";
import { Machine } from "../contact/machine.ts";
import type { Watch } from "../order/judge.ts";
import { type Found, searchOrders } from "../order/search.ts";
import type { StrokeRules } from "./stroke.ts";
import type { Tooling } from "./strokeBodies.ts";
import { type Stand, strokeOver } from "./strokeOver.ts";
import type { Stroke } from "./strokePlan.ts";
import type { Along } from "./tooling.ts";
import { type WholeHeld, WholeJudge } from "./wholeJudge.ts";
import type { WholePart } from "./wholePart.ts";
import { type WholeVariant, wholeVariantsOf } from "./wholeVariants.ts";

/** Whole parts of up to so many bends are ranked. */
const RANKED_BENDS = 14;

export interface FoundWhole {
  readonly found: Found<WholeHeld>;
  readonly order: readonly { readonly stroke: Stroke; readonly tooling: Tooling }[];
}

/** Searches all orders. Throws SearchStopped when the watcher says so. */
export function searchWhole(
  part: WholePart,
  brake: Brake,
  along: Along,
  rules: StrokeRules,
  watch?: Watch,
): FoundWhole {
  const all = wholeVariantsOf(part, brake);
  const most = Math.max(...all.map(({ off }) => off.spring));
  const searched = (variants: readonly WholeVariant[]): FoundWhole => {
    const judge = new WholeJudge(standsOf(variants), along, rules);
    const found = searchOrders(judge, RANKED_BENDS, watch);
    const order = found.order.map(({ stroke, way }) => ({
      stroke: judge.ways[stroke]!.stroke,
      tooling: way.setup.tooling,
    }));
    return { found, order };
  };
  const sprung = searched(all.filter(({ off }) => off.spring === most));
  if (sprung.found.kind !== "order" || all.length === 1) return sprung;
  const stands = standsOf(all);
  let made = 0;
  const holds = sprung.order.every(({ stroke }, i) => {
    const { way, makes } = sprung.found.order[i]!;
    const planned = strokeOver(stands, stroke, along, rules);
    const before = made;
    made |= makes;
    return planned.ok && planned.over.judges.every((one) => one.allows(before, way.setup) !== undefined);
  });
  return holds ? sprung : searched(all);
}

/** The places of variants, each brake made ready once. */
export function standsOf(variants: readonly WholeVariant[]): readonly [Stand, ...Stand[]] {
  const machines = new Map<Brake, Machine>();
  return variants.map(({ part, brake }) => {
    const machine = machines.get(brake) ?? new Machine(brake, part.thicknessMm);
    machines.set(brake, machine);
    return { part, machine };
  }) as [Stand, ...Stand[]];
}
