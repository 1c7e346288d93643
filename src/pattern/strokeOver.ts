/**
 * A stroke judged over what the job doubts: it can be made where it can at each of the places looked at, with one row of fingers,
 * and is as clear as at the worst of them. The first place proposes the rows, in stations that are free at all of them.
 */
import type { Machine } from "../contact/machine.ts";
import type { Mm, Rad } from "../units/quantity.ts";
import type { Setup, Wished } from "./setups.ts";
import type { StrokeRules } from "./stroke.ts";
import type { WholeHandling } from "./strokeHandling.ts";
import { type HeldStroke, StrokeJudge } from "./strokeJudge.ts";
import { type BendSet, type PlanResult, type Stroke, type StrokePlan, strokePlan } from "./strokePlan.ts";
import type { Along } from "./tooling.ts";
import type { WholePart } from "./wholePart.ts";

/** One place within the doubts. */
export interface Stand {
  readonly part: WholePart;
  readonly machine: Machine;
}

const WORST_FIRST: readonly WholeHandling[] = ["blocked", "fingers off", "end", "front"];

export class StrokeOver {
  private readonly first: StrokeJudge;
  private readonly others: readonly StrokeJudge[];

  constructor(readonly judges: readonly [StrokeJudge, ...StrokeJudge[]]) {
    [this.first, ...this.others] = judges;
  }

  get plan(): StrokePlan {
    return this.first.plan;
  }

  /** All ways to make the stroke after some bends, rows of the `wished` sets among them; none where it can't be made. */
  held(made: BendSet, wished: Wished): readonly HeldStroke[] {
    const barred = this.others.flatMap((judge) => judge.barred(made));
    return this.first.held(made, wished, barred).flatMap((way) => {
      let { load, unload } = way;
      for (const judge of this.others) {
        const also = judge.allows(made, way.setup);
        if (!also) return [];
        [load, unload] = [worse(load, also.load), worse(unload, also.unload)];
      }
      return [{ setup: way.setup, load, unload }];
    });
  }

  /** Least distance during the stroke; exact where it is less than `enoughMm`, else that or more. */
  widthMm(made: BendSet, setup: Setup, enoughMm: Mm): Mm {
    return this.judges.reduce(
      (least, judge) => judge.widthMm(made, judge === this.first ? setup : judge.setups.like(setup), least),
      enoughMm,
    );
  }

  /** How far the leaf swings, before something is met, in a stroke that can't be made. */
  swungRad(made: BendSet): Rad {
    return Math.min(...this.judges.map((judge) => judge.swungRad(made)));
  }

  /** How it would be set up if nothing were in the way. */
  roughly(): Setup {
    return this.first.setups.roughly();
  }
}

/** Plans a stroke at every place; the fault where its bends make no stroke. */
export function strokeOver(
  stands: readonly Stand[],
  stroke: Stroke,
  along: Along,
  rules: StrokeRules,
): { readonly ok: true; readonly over: StrokeOver } | Extract<PlanResult, { ok: false }> {
  const judges: StrokeJudge[] = [];
  for (const { part, machine } of stands) {
    const planned = strokePlan(part, machine.brake, stroke);
    if (!planned.ok) return planned;
    judges.push(new StrokeJudge(planned.plan, machine, along, rules));
  }
  return { ok: true, over: new StrokeOver(judges as [StrokeJudge, ...StrokeJudge[]]) };
}

function worse(a: WholeHandling, b: WholeHandling): WholeHandling {
  return WORST_FIRST.indexOf(a) < WORST_FIRST.indexOf(b) ? a : b;
}
