/**
 * A plain section before the order search: every bend with either end clamped, ranked by changes of end and face from one bend
 * to the next, then by the width that swings (src/model.md, section 8). A bend can be made where it can with the most springback that
 * the job doubts, or with "all" at both ends and as likely, and is as clear as at the worst of these.
 */
import type { Brake } from "../brake/brake.ts";
import { Machine } from "../contact/machine.ts";
import { judgeStep } from "../contact/step.ts";
import { hemFolded } from "../motion/hemStrokes.ts";
import { seatFor } from "../motion/seat.ts";
import { type Variant, variantsOf } from "../motion/variants.ts";
import type { Held, Judge } from "../order/judge.ts";
import { Weights } from "../order/weights.ts";
import { MOST_FOLD_DEG } from "../part/hem.ts";
import type { End, Part } from "../part/part.ts";
import type { Mm } from "../units/quantity.ts";
import { HemSeated } from "./hemSeated.ts";
import { Seated } from "./seated.ts";
import { changeWanted } from "./wanted.ts";

/** A bend made with one end clamped; bends count from 0. */
export interface Move extends Held {
  readonly bend: number;
  readonly clamped: End;
}

export const ENDS: readonly End[] = ["start", "end"];

/** Swung widths are summed in millionths and compared in hundredths of a millimetre. */
const SWUNG_PARTS = 1e6;
const GRAIN = SWUNG_PARTS / 100;

export class SectionJudge implements Judge<Move> {
  readonly bends: number;
  readonly strokes: readonly number[];
  readonly costGrain = GRAIN;
  /** That it is clear. */
  readonly wishes: number;
  private readonly moves: readonly (readonly Move[])[];
  /** The part at the ends of the doubts, each in its brake. */
  private readonly variants: readonly (Variant & { readonly machine: Machine })[];
  private readonly seated: (Seated | HemSeated | undefined)[][];
  private readonly changeCost: number;
  /** Then a bend with one end clamped is its counterpart with the other end clamped, the set of bends done mirrored. */
  private readonly sameFromBothEnds: boolean;
  private readonly asLikely: { readonly part: Part; readonly brake: Brake };
  private mirrored: readonly [set: number, back: number] = [0, 0];

  constructor(
    part: Part,
    machine: Machine,
    private readonly marginMm: Mm,
    at: "most" | "all" = "most",
  ) {
    const machines = new Map([[machine.brake, machine]]);
    this.asLikely = { part, brake: machine.brake };
    const all = variantsOf(part, machine.brake);
    const most = Math.max(...all.map(({ off }) => off.spring));
    const asked = at === "all" ? all : all.filter(({ off }) => off.spring === most);
    this.variants = asked.map((variant) => {
      const on = machines.get(variant.brake) ?? new Machine(variant.brake, part.thicknessMm);
      machines.set(variant.brake, on);
      return { ...variant, machine: on };
    });
    this.seated = this.variants.map(() => []);
    const n = part.bends.length;
    this.bends = n;
    this.wishes = marginMm > 0 ? 1 : 0;
    this.strokes = Array.from({ length: 2 * n }, (_, stroke) => 1 << (stroke >> 1));
    const widths = swungWidths(part);
    const swungMost = (Math.ceil(n * Math.max(...widths)) + 1) * SWUNG_PARTS;
    const weights = new Weights([2 * n, swungMost - (swungMost % GRAIN) + GRAIN - 1]);
    this.changeCost = weights.cost(1, 0);
    this.sameFromBothEnds = readsBack(part.flatsMm) && readsBack(part.bends);
    this.moves = this.strokes.map((makes, stroke) => {
      const bend = stroke >> 1;
      const hold = (stroke & 1) + (part.bends[bend]!.turn === "up" ? 2 : 0);
      const cost = Math.round(widths[stroke]! * SWUNG_PARTS);
      return [{ stroke, makes, hold, cost, bend, clamped: ENDS[stroke & 1]! }];
    });
  }

  held(set: number, stroke: number): readonly Move[] {
    const seen = this.seenBy(stroke, set);
    const can = this.variants.every((_, v) => this.seatedFor(stroke, v).canMake(seen));
    return can ? this.moves[stroke]! : NONE;
  }

  /** Whether a bend can be made with this end clamped, and keeps the margin where one is wished for. */
  folds(set: number, bend: number, clamped: End): boolean {
    const held = this.held(set, 2 * bend + ENDS.indexOf(clamped));
    return held.some((by) => this.wishes === 0 || this.grants(0, set, by));
  }

  /** A change of the clamped end and a change of face. */
  between(before: Move, after: Move): number {
    const other = before.hold ^ after.hold;
    return ((other & 1) + (other >>> 1)) * this.changeCost;
  }

  grants(_: number, set: number, by: Move): boolean {
    return this.clearanceMm(set, by, this.marginMm) >= this.marginMm;
  }

  clearanceMm(set: number, by: Move, enoughMm: number): number {
    const seen = this.seenBy(by.stroke, set);
    let least = Number.POSITIVE_INFINITY;
    for (let v = 0; v < this.variants.length; v++) {
      const seated = this.seatedFor(by.stroke, v);
      least = Math.min(least, seated.clearanceMm(seen, Math.min(enoughMm, least)));
    }
    return least;
  }

  wanted(set: number, stroke: number): number {
    const { bend, clamped } = this.blocked(stroke);
    const wants = this.variants.map(({ off, part, brake, machine }) => {
      const made = part.bends[bend]!.hem ? hemFolded(part, brake, bend, MOST_FOLD_DEG) : part;
      if (!made) return Number.POSITIVE_INFINITY;
      const step = judgeStep(made, brake, { bendsDone: set, bend, clamped }, this.marginMm, machine);
      return step.verdict === "hits" ? changeWanted(step, { ...this.asLikely, off }, bend) : 0;
    });
    return Math.max(...wants);
  }

  blocked(stroke: number): Move {
    return this.moves[stroke]![0]!;
  }

  private seatedFor(stroke: number, variant: number): Seated | HemSeated {
    const at = this.isCounterpart(stroke) ? this.strokes.length - 1 - stroke : stroke;
    const { part, brake, machine } = this.variants[variant]!;
    const known = this.seated[variant]!;
    const [bend, clamped] = [at >> 1, ENDS[at & 1]!];
    known[at] ??= part.bends[bend]!.hem
      ? new HemSeated(part, machine, bend, clamped)
      : new Seated(seatFor(part, brake, bend, clamped), machine);
    return known[at];
  }

  /** A set of bends as the seat that is asked has it. */
  private seenBy(stroke: number, set: number): number {
    if (!this.isCounterpart(stroke)) return set;
    if (this.mirrored[0] !== set) {
      let back = 0;
      for (let bend = 0; bend < this.bends; bend++) back |= ((set >>> bend) & 1) << (this.bends - 1 - bend);
      this.mirrored = [set, back];
    }
    return this.mirrored[1];
  }

  private isCounterpart(stroke: number): boolean {
    return this.sameFromBothEnds && (stroke & 1) === 1;
  }
}

/** Whether a list is the same from its end. */
function readsBack(list: readonly object[] | readonly number[]): boolean {
  return list.every((one, i) => JSON.stringify(one) === JSON.stringify(list.at(-1 - i)));
}

const NONE: readonly Move[] = [];

/** By stroke: developed width beyond the bend on the side that moves. */
function swungWidths({ flatsMm, bends }: Part): number[] {
  const before = [0];
  for (const [i, { allowanceMm }] of bends.entries()) before.push(before[i]! + flatsMm[i]! + allowanceMm);
  const whole = before.at(-1)! + flatsMm.at(-1)!;
  return bends.flatMap((bend, i) => [whole - before[i + 1]!, before[i + 1]! - bend.allowanceMm]);
}
