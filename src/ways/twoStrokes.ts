/**
 * The order that makes a part with one bend in two strokes: begun, left at an angle, finished after others. Exact over all
 * orders of the bends and both ends of the others, fewest changes of end and face first (src/model.md, section 8).
 * Looked for from the finished part back, where most parts that fail soon end; made for parts of few bends.
 */
import type { Brake } from "../brake/brake.ts";
import { Machine } from "../contact/machine.ts";
import { judgeStage, type Step } from "../contact/step.ts";
import type { OrderedBend, Trial } from "../jobFile/change.ts";
import { type Stage, stagesOf } from "../motion/stages.ts";
import { variantsOf } from "../motion/variants.ts";
import type { End } from "../part/part.ts";
import { ENDS, SectionJudge } from "../section/sectionJudge.ts";
import type { Deg, Mm } from "../units/quantity.ts";

/** Which bend is begun (from 0) and how far, with which end in the throat. */
export interface Begun {
  readonly bend: number;
  readonly clamped: End;
  readonly toDeg: Deg;
}

/** Where an order stands: bends made, whether the one bend is flat, begun or finished, and how the part was held last. */
interface Standing {
  readonly set: number;
  readonly phase: 0 | 1 | 2;
  /** How the last bend was held: end clamped (0 start, 1 end) plus 2 where the marked face was up. */
  readonly hold: number | undefined;
  readonly by?: OrderedBend;
  readonly before?: Standing;
}

/** First and second stroke, as likely and at each end of the doubts. */
type Strokes = readonly (readonly [Stage, Stage])[];

export class TwoStrokes {
  private readonly flat: SectionJudge;
  private readonly n: number;
  /** Sets that are reached from the flat blank, and those from which the whole part is, in whole strokes. */
  private readonly reached: Uint8Array;
  private readonly leadOn: Uint8Array;
  private readonly machines: Map<Brake, Machine>;

  constructor(
    private readonly trial: Trial,
    private readonly machine: Machine,
    private readonly leastMm: Mm,
  ) {
    this.flat = new SectionJudge(trial.part, machine, leastMm);
    this.machines = new Map([[machine.brake, machine]]);
    this.n = trial.part.bends.length;
    this.reached = new Uint8Array(1 << this.n);
    this.leadOn = new Uint8Array(1 << this.n);
    this.reached[0] = this.leadOn[this.leadOn.length - 1] = 1;
    const last = this.leadOn.length - 1;
    for (let set = 0; set < last; set++)
      if (this.reached[set]) this.each(set, (next) => (this.reached[next] = 1));
    for (let set = last - 1; set >= 0; set--) {
      this.each(set, (next) => (this.leadOn[set] ||= this.leadOn[next]!));
    }
  }

  /** Whether the bend can be finished where that leads on to the whole part, taken up just before its end. */
  canEverFinish({ bend, clamped }: Omit<Begun, "toDeg">): boolean {
    const [likely] =
      this.stages({ bend, clamped, toDeg: 0.97 * this.trial.part.bends[bend]!.angleDeg }) ?? [];
    const own = 1 << bend;
    return (
      likely !== undefined &&
      this.setsWith(own).some(
        (set) => this.leadOn[set] && this.judged(likely[1], set & ~own).contact === undefined,
      )
    );
  }

  /** Whether there is an order at all: from the sets that lead on, back to one that is reached in whole strokes. */
  private leads(begun: Begun, strokes: Strokes, halfWay: SectionJudge): boolean {
    const own = 1 << begun.bend;
    const waiting = this.setsWith(own).filter(
      (set) => this.leadOn[set] && this.passes(strokes, 1, set & ~own),
    );
    const seen = new Set(waiting);
    for (let set = waiting.pop(); set !== undefined; set = waiting.pop()) {
      if (this.reached[set & ~own] && this.passes(strokes, 0, set & ~own)) return true;
      for (let bend = 0; bend < this.n; bend++) {
        const before: number = set & ~(1 << bend);
        if (bend === begun.bend || before === set || seen.has(before)) continue;
        if (!canMake(halfWay, before, bend, 0) && !canMake(halfWay, before, bend, 1)) continue;
        seen.add(before);
        waiting.push(before);
      }
    }
    return false;
  }

  private setsWith(own: number): number[] {
    return Array.from({ length: 1 << this.n }, (_, set) => set).filter((set) => set & own);
  }

  private each(set: number, visit: (next: number) => void): void {
    for (let bend = 0; bend < this.n; bend++) {
      const next = set | (1 << bend);
      if (next !== set && (canMake(this.flat, set, bend, 0) || canMake(this.flat, set, bend, 1))) visit(next);
    }
  }

  /** The order with the fewest changes of end and face; undefined where there is none. */
  order(begun: Begun): OrderedBend[] | undefined {
    const stages = this.stages(begun);
    if (!stages) return undefined;
    const halfWay = new SectionJudge(stages[0]![0].part, this.machine, this.leastMm);
    if (!this.leads(begun, stages, halfWay)) return undefined;
    const whole = (1 << this.n) - 1;
    const seen = new Set<number>();
    // By number of changes so far: a step costs none, one or two.
    const waiting: Standing[][] = [[{ set: 0, phase: 0, hold: undefined }]];
    for (let changes = 0; changes < waiting.length; changes++) {
      for (const standing of waiting[changes]!) {
        const key = (standing.set * 3 + standing.phase) * 5 + (standing.hold ?? 4);
        if (seen.has(key)) continue;
        seen.add(key);
        if (standing.phase === 2 && standing.set === whole) return stepsTo(standing);
        for (const next of this.nextOf(standing, begun, stages, halfWay)) {
          const { hold } = standing;
          const more = hold === undefined ? 0 : changesBetween(hold, next.hold!);
          while (waiting.length <= changes + more) waiting.push([]);
          waiting[changes + more]!.push(next);
        }
      }
    }
    return undefined;
  }

  private nextOf(standing: Standing, begun: Begun, strokes: Strokes, halfWay: SectionJudge): Standing[] {
    const { set, phase } = standing;
    const own = 1 << begun.bend;
    const next: Standing[] = [];
    this.trial.part.bends.forEach((_, bend) => {
      if (bend === begun.bend || (set >>> bend) & 1) return;
      const whole = phase === 1 ? halfWay : this.flat;
      for (const end of [0, 1] as const) {
        if (!canMake(whole, set, bend, end)) continue;
        next.push(this.after(standing, { bend: bend + 1, clamped: ENDS[end]! }, set | (1 << bend), phase));
      }
    });
    const { clamped, toDeg } = begun;
    if (phase === 0 && this.passes(strokes, 0, set)) {
      next.push(this.after(standing, { bend: begun.bend + 1, clamped, to: toDeg }, set | own, 1));
    }
    if (phase === 1 && this.passes(strokes, 1, set & ~own)) {
      next.push(this.after(standing, { bend: begun.bend + 1, clamped }, set, 2));
    }
    return next;
  }

  private after(before: Standing, by: OrderedBend, set: number, phase: Standing["phase"]): Standing {
    const face = this.trial.part.bends[by.bend - 1]!.turn === "up" ? 2 : 0;
    return { set, phase, hold: (by.clamped === "start" ? 0 : 1) + face, by, before };
  }

  /** The two strokes as stages of an order, as likely and at the ends of the doubts; undefined where the begun bend would eat a flat. */
  private stages({ bend, clamped, toDeg }: Begun): Strokes | undefined {
    const { part, brake } = this.trial;
    try {
      return variantsOf(part, brake).map((variant) => {
        const [first, second] = stagesOf(variant.part, variant.brake, [
          { bend, clamped, toDeg },
          { bend, clamped },
        ]);
        return [first!, second!];
      });
    } catch (fault) {
      if (fault instanceof RangeError) return undefined;
      throw fault;
    }
  }

  private judged(stage: Stage, bendsDone: number): Step {
    const machine = this.machines.get(stage.brake) ?? new Machine(stage.brake, stage.part.thicknessMm);
    this.machines.set(stage.brake, machine);
    return judgeStage({ ...stage, bendsDone }, this.leastMm, machine);
  }

  /** Whether the first (0) or second (1) stroke goes over all of the doubts. */
  private passes(strokes: Strokes, which: 0 | 1, bendsDone: number): boolean {
    return strokes.every((stages) => {
      const { verdict } = this.judged(stages[which], bendsDone);
      return verdict === "clear" || (verdict === "tight" && this.leastMm <= 0);
    });
  }
}

/** Whether a bend can be made in one stroke with every clearance as large as is asked. */
function canMake(strokes: SectionJudge, set: number, bend: number, end: number): boolean {
  return strokes.held(set, 2 * bend + end).some((by) => strokes.wishes === 0 || strokes.grants(0, set, by));
}

/** Changes of end and face from one hold to the next. */
function changesBetween(before: number, hold: number): number {
  const other = before ^ hold;
  return (other & 1) + (other >>> 1);
}

function stepsTo(standing: Standing): OrderedBend[] {
  const steps: OrderedBend[] = [];
  for (let at: Standing | undefined = standing; at?.by; at = at.before) steps.unshift(at.by);
  return steps;
}
