/**
 * An order of strokes judged over all that the job doubts, as that of a section (contact/overRange): as likely, then at the ends of
 * the doubts in every mix. Where some of them hit, the leaf angle up to which the bend still folds is closed in on by halving.
 */

import type { Brake } from "../brake/brake.ts";
import { Machine } from "../contact/machine.ts";
import { AS_LIKELY, leafAngleAt, type Off } from "../motion/variants.ts";
import type { Deg, Mm } from "../units/quantity.ts";
import { StrokeElements } from "./elements.ts";
import { type JudgedStroke, judgeStroke, type StrokeRules } from "./stroke.ts";
import type { Tooling } from "./strokeBodies.ts";
import { type BendSet, type Stroke, strokePlan } from "./strokePlan.ts";
import { strokeState } from "./strokeState.ts";
import type { WholePart } from "./wholePart.ts";
import { isWholeReckoned, type WholeVariant, wholeVariantAt, wholeVariantsOf } from "./wholeVariants.ts";

/** Where within the doubts a stroke can't be made that can as likely. */
export interface FailingStroke {
  readonly off: Off;
  readonly judged: JudgedStroke;
}

/** A stroke that can be made as likely, over the doubts. */
export interface RangedStroke {
  readonly verdict: JudgedStroke["verdict"];
  /** The least over all that was looked at; undefined where nothing is left to measure. */
  readonly leastMm: Mm | undefined;
  readonly failing?: FailingStroke;
  /** Leaf angles around the likely one for which it folds. */
  readonly foldsForDeg: readonly [Deg, Deg];
}

/** A stroke as it is made: after which bends, and how the brake stands to it. */
export interface MadeStroke {
  readonly stroke: Stroke;
  readonly made: BendSet;
  readonly tooling: Tooling;
}

const HALVINGS = 22;

export class StrokeRange {
  private readonly ends: readonly WholeVariant[];
  private readonly machines = new Map<Brake, Machine>();

  constructor(
    private readonly part: WholePart,
    private readonly brake: Brake,
    private readonly rules: StrokeRules,
  ) {
    const between = isWholeReckoned(part) ? [0.5, -0.5] : [];
    this.ends = [
      ...wholeVariantsOf(part, brake).slice(1),
      ...between.map((spring) => wholeVariantAt(part, brake, { ...AS_LIKELY, spring })),
    ];
  }

  /** The worst over the doubts of a stroke that can be made as likely. */
  over(at: MadeStroke, likely: JudgedStroke): RangedStroke {
    let [{ verdict }, leastMm, failing]: [JudgedStroke, Mm | undefined, FailingStroke | undefined] = [
      likely,
      likely.clearance?.mm,
      undefined,
    ];
    for (const variant of this.ends) {
      const judged = this.judged(at, variant);
      if (judged.verdict === "hits") {
        verdict = "hits";
        failing ??= { off: variant.off, judged };
        continue;
      }
      if (judged.verdict === "tight" && verdict === "clear") verdict = "tight";
      if (judged.clearance) leastMm = Math.min(leastMm ?? Infinity, judged.clearance.mm);
    }
    const bend = this.part.sheet.pattern.bends[at.stroke.bends[0]!]!;
    const to = (way: 1 | -1) => leafAngleAt(bend, failing ? this.limit(at, way) : way);
    return { verdict, leastMm, ...(failing && { failing }), foldsForDeg: [to(-1), to(1)] };
  }

  /** How far springback may go one way, as a share of its range. */
  private limit(at: MadeStroke, way: 1 | -1): number {
    const folds = (share: number) => {
      const variant = wholeVariantAt(this.part, this.brake, { ...AS_LIKELY, spring: way * share });
      return this.judged(at, variant).verdict !== "hits";
    };
    const first = [0.5, 1].find((share) => !folds(share));
    if (first === undefined) return way;
    let [good, bad] = [first - 0.5, first];
    for (let i = 0; i < HALVINGS; i++) {
      const middle = (good + bad) / 2;
      if (folds(middle)) good = middle;
      else bad = middle;
    }
    return way * good;
  }

  private judged({ stroke, made, tooling }: MadeStroke, { part, brake }: WholeVariant): JudgedStroke {
    const machine = this.machines.get(brake) ?? new Machine(brake, part.thicknessMm);
    this.machines.set(brake, machine);
    const planned = strokePlan(part, brake, stroke);
    const state = planned.ok ? strokeState(new StrokeElements(planned.plan), made) : undefined;
    if (!state) throw new Error("a stroke that is made as likely is one at the ends of a doubt");
    return judgeStroke(state, machine, tooling, this.rules);
  }
}
