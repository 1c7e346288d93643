/**
 * An order judged over all that the job doubts: what is likely, the ends of the doubts in every mix, then boxes of them, halved until
 * nothing can be met in one that is not met where it was looked at (rangeCells.ts), or nothing moves by more than 0.02 mm in it. The flat on
 * the leaf against a clamp that leans over it, and getting in and out, are looked at in the same places and not proved between
 * them. Where a bend fails, the place from which it does is closed in on by halving, to a millionth of the doubt.
 */
import type { Brake, Clamp } from "../brake/brake.ts";
import { type OrderStep, type Stage, stagesOf } from "../motion/stages.ts";
import { AS_LIKELY, leafAngleAt, type Off, type Variant, variantAt, variantsOf } from "../motion/variants.ts";
import { LEAST_FOLD_DEG, MOST_FOLD_DEG } from "../part/hem.ts";
import type { Part } from "../part/part.ts";
import type { Deg, Mm } from "../units/quantity.ts";
import { Machine } from "./machine.ts";
import { type Cell, clampKeepsOff, cornersOf, halved, lookAt, movedMm, wholeCell } from "./rangeCells.ts";
import { judgeStage, type Step, type Verdict } from "./step.ts";

/** Where within the doubts a bend does not fold that folds as likely: from there on. */
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
  /** What moves between two places that were looked at, where that is more than what we look for and nothing failed. */
  readonly unseenMm?: Mm;
  /** Leaf angles around the likely one for which it folds, where these were asked for and it folds as likely. */
  readonly foldsForDeg?: readonly [Deg, Deg];
}

const HALVINGS = 22;
/** Contact that comes and goes while nothing moves by more than this is not looked for. */
const SEEN_MM: Mm = 0.02;
/** So many boxes are halved for an answer, and for one of many trials. */
const MOST_HALVED = { answer: 1000, trial: 12 };

/** A part in its brake with its doubts, for orders to be judged on. */
export class OverRange {
  private readonly machines = new Map<Clamp, Machine>();
  private readonly steps = new WeakMap<Stage, Step>();
  private readonly ends: readonly Variant[];

  constructor(
    private readonly part: Part,
    private readonly brake: Brake,
    private readonly marginMm: Mm,
    machine?: Machine,
  ) {
    if (machine) this.machines.set(brake.clamp, machine);
    this.ends = variantsOf(part, brake);
  }

  /**
   * Each stage of the order over the doubts.
   * @throws RangeError where a bend begun would eat a whole flat
   */
  judge(asked: readonly OrderStep[], mostHalved = MOST_HALVED.trial): readonly RangedStep[] {
    const looked = new Looked((off) => this.stages(variantAt(this.part, this.brake, off), order));
    const order = this.folded(asked);
    const stages = looked.at(AS_LIKELY);
    const so = stages.map((stage): RangedStep => {
      const likely = this.stepOf(stage);
      return { stage, likely, verdict: likely.verdict, leastMm: likely.clearanceMm };
    });
    for (const { off } of this.ends) {
      for (const [i, stage] of looked.at(off).entries())
        if (so[i]!.likely.verdict !== "hits") so[i] = this.worse(so[i]!, stage, off);
    }
    this.lookBetween(so, looked, mostHalved);
    return so;
  }

  /** The same, with where a failing bend begins to fail, and the leaf angles that each folds for around the likely one. */
  judgeWhole(asked: readonly OrderStep[]): readonly RangedStep[] {
    const order = this.folded(asked);
    return this.judge(order, MOST_HALVED.answer).map((ranged, i): RangedStep => {
      if (ranged.likely.verdict === "hits") return ranged;
      const bend = ranged.stage.part.bends[ranged.stage.bend]!;
      const failing = ranged.failing && this.firstFailing(order, i, ranged.failing);
      const to = (way: 1 | -1) => leafAngleAt(bend, failing ? this.limit(order, i, failing, way) : way);
      return { ...ranged, ...(failing && { failing }), foldsForDeg: [to(-1), to(1)] };
    });
  }

  /** Looks between the ends of the doubts, at the largest boxes first. */
  private lookBetween(so: RangedStep[], looked: Looked, mostHalved: number): void {
    const whole = wholeCell(this.part, this.brake);
    const open: [cell: Cell, stages: readonly number[]][] = whole ? [[whole, [...so.keys()]]] : [];
    for (let halvedSo = 0; ; halvedSo++) {
      const next = open.shift();
      if (!next) return;
      const [cell, stages] = next;
      const off = lookAt(cell);
      const corners = cornersOf(cell).map((corner) => looked.at(corner));
      const left = stages.filter((i) => {
        if (so[i]!.verdict === "hits") return false;
        const stage = looked.at(off)[i]!;
        so[i] = this.worse(so[i]!, stage, off);
        if (so[i].verdict === "hits") return false;
        const moves = Math.max(...corners.map((at) => movedMm(stage, at[i]!)));
        if (moves <= SEEN_MM) return false;
        const wished = so[i].verdict === "clear" ? this.marginMm : 0;
        if (this.staysClear(this.stepOf(stage), moves + wished, stage.brake)) return false;
        if (halvedSo >= mostHalved) so[i] = { ...so[i], unseenMm: Math.max(so[i].unseenMm ?? 0, moves) };
        return true;
      });
      if (left.length === 0 || halvedSo >= mostHalved) continue;
      const between = (from: Off, to: Off) =>
        Math.max(...left.map((i) => movedMm(looked.at(from)[i]!, looked.at(to)[i]!)));
      for (const half of halved(cell, between)) open.push([half, left]);
    }
  }

  /** Whether nothing is met while everything moves by so much. */
  private staysClear({ clearanceMm, seat, flattens }: Step, byMm: Mm, brake: Brake): boolean {
    if (clearanceMm !== undefined && clearanceMm < byMm) return false;
    return flattens === true || clampKeepsOff(seat, this.machineFor(brake).clampAt(seat.noseSetbackMm), byMm);
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

  /** On the straight way from what is likely to where a bend fails, the first place where it does. */
  private firstFailing(order: readonly OrderStep[], index: number, { off }: Failing): Failing {
    const at = (share: number): Failing => {
      const so = {
        spring: share * off.spring,
        noseSetbackMm: share * off.noseSetbackMm,
        nose: share * off.nose,
      };
      const stage = this.stages(variantAt(this.part, this.brake, so), order)[index]!;
      return { off: so, stage, step: this.stepOf(stage) };
    };
    return at(between(0, 1, (share) => at(share).step.verdict !== "hits").bad);
  }

  /** How far a bend's springback alone may go one way, as a share of its range. */
  private limit(order: readonly OrderStep[], index: number, { off }: Failing, way: 1 | -1): number {
    const folds = (share: number) => {
      const stages = this.stages(variantAt(this.part, this.brake, spring(way * share)), order);
      return this.stepOf(stages[index]!).verdict !== "hits";
    };
    const alone = off.noseSetbackMm === 0 && off.nose === 0 && off.spring * way > 0;
    if (alone) return way * between(0, Math.abs(off.spring), folds).good;
    return folds(1) ? way : way * between(0, 1, folds).good;
  }

  private stages({ off, part, brake }: Variant, order: readonly OrderStep[]): Stage[] {
    try {
      return stagesOf(part, brake, order);
    } catch (fault) {
      // A flat that a bend begun just leaves over as likely, and eats by a hundredth at one end: the likely part stands for it.
      if (!(fault instanceof RangeError) || isLikely(off)) throw fault;
      return stagesOf(this.part, brake, order);
    }
  }

  private machineFor({ clamp }: Brake): Machine {
    // Under a hem the clamp of the same brake lifts less: such a stage has a machine of its own.
    const machine = this.machines.get(clamp) ?? new Machine({ ...this.brake, clamp }, this.part.thicknessMm);
    this.machines.set(clamp, machine);
    return machine;
  }

  private stepOf(stage: Stage): Step {
    const known = this.steps.get(stage);
    if (known) return known;
    const step = judgeStage(stage, this.marginMm, this.machineFor(stage.brake));
    this.steps.set(stage, step);
    return step;
  }
}

/** The stages of one order wherever it was looked at. */
class Looked {
  private readonly known = new Map<string, readonly Stage[]>();

  constructor(private readonly stagesAt: (off: Off) => readonly Stage[]) {}

  at(off: Off): readonly Stage[] {
    const key = `${off.spring} ${off.noseSetbackMm} ${off.nose}`;
    const stages = this.known.get(key) ?? this.stagesAt(off);
    this.known.set(key, stages);
    return stages;
  }
}

/** Closes in between a place that is good and one that is bad. */
function between(good: number, bad: number, isGood: (at: number) => boolean) {
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (good + bad) / 2;
    if (isGood(middle)) good = middle;
    else bad = middle;
  }
  return { good, bad };
}

function isLikely({ spring, noseSetbackMm, nose }: Off): boolean {
  return spring === 0 && noseSetbackMm === 0 && nose === 0;
}

function lesser(a: Mm | undefined, b: Mm | undefined): Mm | undefined {
  return a === undefined || b === undefined ? (a ?? b) : Math.min(a, b);
}

function spring(share: number): Off {
  return { ...AS_LIKELY, spring: share };
}
