/**
 * An order judged over all that the job doubts: what is likely, then the ends of the doubts in every mix and, for springback,
 * the middles to either end. Where some of them hit, the leaf angle up to which the bend still folds is closed in on by halving,
 * to a millionth of the range. Between those places nothing is looked at.
 */
import type { Brake } from "../brake/brake.ts";
import { type OrderStep, type Stage, stagesOf } from "../motion/stages.ts";
import {
  AS_LIKELY,
  isReckoned,
  leafAngleAt,
  type Off,
  type Variant,
  variantAt,
  variantsOf,
} from "../motion/variants.ts";
import { LEAST_FOLD_DEG, MOST_FOLD_DEG } from "../part/hem.ts";
import type { Part } from "../part/part.ts";
import type { Deg, Mm } from "../units/quantity.ts";
import { Machine } from "./machine.ts";
import { judgeStage, type Step, type Verdict } from "./step.ts";

/** Where within the doubts a bend does not fold that folds as likely. */
export interface Failing {
  readonly off: Off;
  readonly stage: Stage;
  readonly step: Step;
}

/** A stage as it is likely to come out, and the worst of it over the doubts. */
export interface RangedStep {
  readonly stage: Stage;
  readonly likely: Step;
  readonly verdict: Verdict;
  /** The least over all that was looked at; undefined where nothing is left to measure. */
  readonly leastMm: Mm | undefined;
  /** Absent where it folds over all of the doubts, or not even as likely. */
  readonly failing?: Failing;
  /** Leaf angles around the likely one for which it folds, where these were asked for and it folds as likely. */
  readonly foldsForDeg?: readonly [Deg, Deg];
}

const HALVINGS = 22;

/** A part in its brake with its doubts, for orders to be judged on. */
export class OverRange {
  private readonly machines = new Map<Brake, Machine>();
  private readonly ends: readonly Variant[];

  constructor(
    private readonly part: Part,
    private readonly brake: Brake,
    private readonly marginMm: Mm,
    machine?: Machine,
  ) {
    if (machine) this.machines.set(brake, machine);
    this.ends = variantsOf(part, brake);
  }

  /**
   * Each stage of the order over the ends of the doubts.
   * @throws RangeError where a bend begun would eat a whole flat
   */
  judge(asked: readonly OrderStep[], between: readonly Off[] = []): readonly RangedStep[] {
    const order = this.folded(asked);
    const variants = [...this.ends, ...between.map((off) => variantAt(this.part, this.brake, off))];
    const stages = variants.map((variant) => this.stages(variant, order));
    return stages[0]!.map((stage, i) => {
      const likely = this.stepOf(stage);
      const judged: RangedStep = { stage, likely, verdict: likely.verdict, leastMm: likely.clearanceMm };
      if (likely.verdict === "hits") return judged;
      return stages.slice(1).reduce((so, of, v) => this.worse(so, of[i]!, variants[v + 1]!.off), judged);
    });
  }

  /** The same with the middles, and the leaf angles that each bend folds for around the likely one. */
  judgeWhole(asked: readonly OrderStep[]): readonly RangedStep[] {
    const order = this.folded(asked);
    const between = isReckoned(this.part) ? [spring(0.5), spring(-0.5)] : [];
    return this.judge(order, between).map((ranged, i): RangedStep => {
      if (ranged.likely.verdict === "hits") return ranged;
      const bend = ranged.stage.part.bends[ranged.stage.bend]!;
      const to = (way: 1 | -1) => leafAngleAt(bend, ranged.failing ? this.limit(order, i, way) : way);
      return { ...ranged, foldsForDeg: [to(-1), to(1)] };
    });
  }

  /** The order with each hem folded as far as the leaf gets without meeting anything, in tenths of a degree. */
  private folded(order: readonly OrderStep[]): readonly OrderStep[] {
    return order.map((step, i): OrderStep => {
      if (!this.part.bends[step.bend]!.hem || step.foldDeg !== undefined) return step;
      const before = order.slice(0, i);
      const folds = (foldDeg: Deg) => {
        const stage = stagesOf(this.part, this.brake, [...before, { ...step, foldDeg }]).at(-2)!;
        return this.stepOf(stage).verdict !== "hits";
      };
      const most = Math.max(LEAST_FOLD_DEG, Math.min(MOST_FOLD_DEG, this.brake.leaf.swingDeg));
      if (folds(most)) return { ...step, foldDeg: most };
      if (!folds(LEAST_FOLD_DEG)) return { ...step, foldDeg: LEAST_FOLD_DEG };
      let [good, bad] = [LEAST_FOLD_DEG * 10, Math.ceil(most * 10)];
      while (bad - good > 1) {
        const middle = Math.floor((good + bad) / 2);
        if (folds(middle / 10)) good = middle;
        else bad = middle;
      }
      return { ...step, foldDeg: good / 10 };
    });
  }

  private worse(so: RangedStep, stage: Stage, off: Off): RangedStep {
    const step = this.stepOf(stage);
    const hits = step.verdict === "hits";
    return {
      ...so,
      ...(hits && !so.failing && { failing: { off, stage, step } }),
      verdict: hits || so.verdict === "hits" ? "hits" : step.verdict === "tight" ? "tight" : so.verdict,
      leastMm: hits ? so.leastMm : lesser(so.leastMm, step.clearanceMm),
    };
  }

  /** How far a bend's springback may go one way, as a share of its range. */
  private limit(order: readonly OrderStep[], index: number, way: 1 | -1): number {
    const folds = (share: number) => {
      const stages = this.stages(variantAt(this.part, this.brake, spring(way * share)), order);
      return this.stepOf(stages[index]!).verdict !== "hits";
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

  private stages({ off, part, brake }: Variant, order: readonly OrderStep[]): Stage[] {
    try {
      return stagesOf(part, brake, order);
    } catch (fault) {
      // A flat that a bend begun just leaves over as likely, and eats by a hundredth at one end: the likely part stands for it.
      if (!(fault instanceof RangeError) || off.spring === 0) throw fault;
      return stagesOf(this.part, brake, order);
    }
  }

  private stepOf(stage: Stage): Step {
    const { brake } = stage;
    const machine = this.machines.get(brake) ?? new Machine(brake, this.part.thicknessMm);
    this.machines.set(brake, machine);
    return judgeStage(stage, this.marginMm, machine);
  }
}

function lesser(a: Mm | undefined, b: Mm | undefined): Mm | undefined {
  return a === undefined || b === undefined ? (a ?? b) : Math.min(a, b);
}

function spring(share: number): Off {
  return { ...AS_LIKELY, spring: share };
}
