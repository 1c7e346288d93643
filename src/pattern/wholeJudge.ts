/**
 * A whole part as a judge for the order search (order/judge): its strokes, how each can be held, and what they cost. Rank:
 * all clear, then no fingers off, then fewest turns of the part, less sheet swung, fewest finger changes.
 */

import type { BendSet, Held, Judge } from "../order/judge.ts";
import { Weights } from "../order/weights.ts";
import type { Mm } from "../units/quantity.ts";
import type { FingerSet } from "./fingerRows.ts";
import { setsOf } from "./fingerSets.ts";
import { regionArea } from "./ring.ts";
import type { Setup } from "./setups.ts";
import type { StrokeRules } from "./stroke.ts";
import type { HeldStroke } from "./strokeJudge.ts";
import { type Stand, type StrokeOver, strokeOver } from "./strokeOver.ts";
import type { Stroke } from "./strokePlan.ts";
import { strokesOf } from "./strokes.ts";
import type { Along } from "./tooling.ts";

export interface WholeHeld extends Held {
  readonly way: HeldStroke;
}

/** How the part lies and which fingers are on, as far as it costs something to change. */
interface Hold {
  readonly markedFaceUp: boolean;
  /** Direction from clamped to moving side in the blank, in whole degrees. */
  readonly wayDeg: number;
  readonly set: FingerSet;
}

/** More finger changes than this in one stroke cost no more. */
const MOST_CHANGES = 99;

/**
 * Every finger set is looked at where so many pairs of strokes, each with its set, are to be compared; that is some tenths of a
 * second. Beyond, the sets that are the fewest for some stroke.
 */
const MOST_COMPARED = 2e7;
/** Nor are more sets than these looked at one by one for each stroke: that would take minutes. */
const MOST_SETS = 64;

export class WholeJudge implements Judge<WholeHeld> {
  readonly bends: number;
  readonly strokes: readonly BendSet[];
  readonly costGrain = 1;
  readonly wishes = 2;
  /** All the ways to split the part for a swing, in the order of `strokes`. */
  readonly ways: readonly { readonly stroke: Stroke; readonly judge: StrokeOver }[];
  private readonly holds: Hold[] = [];
  private readonly holdNumbers = new Map<string, number>();
  private readonly weights: Weights;
  private readonly areas: readonly number[];
  /** Finger sets that were the fewest for some stroke: tried for every other too. */
  private readonly sets: FingerSet[] = [];
  private readonly everySet: boolean;
  private readonly seen = new Set<Setup>();

  constructor(
    /** Places within what the job doubts, at each of which a stroke must be possible. */
    stands: readonly [Stand, ...Stand[]],
    along: Along,
    private readonly rules: StrokeRules,
  ) {
    const [{ part }] = stands;
    this.bends = part.sheet.pattern.bends.length;
    this.ways = strokesOf(part).flatMap((stroke) => {
      const planned = strokeOver(stands, stroke, along, rules);
      return planned.ok ? [{ stroke, judge: planned.over }] : [];
    });
    this.strokes = this.ways.map(({ stroke }) => stroke.bends.reduce((set, bend) => set | (1 << bend), 0));
    const sets = setsOf(along.fingers ?? []);
    this.everySet = sets <= MOST_SETS && sets ** 2 * this.ways.length * 2 ** this.bends <= MOST_COMPARED;
    this.areas = this.ways.map(({ judge }) => swungArea(judge));
    const mostArea = Math.max(1, ...this.areas) * this.bends;
    this.weights = new Weights([2 * this.bends, mostArea, MOST_CHANGES * this.bends]);
  }

  held(set: BendSet, stroke: number): readonly WholeHeld[] {
    const { judge } = this.ways[stroke]!;
    if (this.everySet) return judge.held(set, "every").map((way) => this.heldBy(stroke, way));
    const found = judge.held(set, this.sets);
    for (const { setup } of found) {
      if (this.seen.has(setup)) continue;
      this.seen.add(setup);
      if (!this.sets.some((known) => known.join() === setup.set.join())) this.sets.push(setup.set);
    }
    return found.map((way) => this.heldBy(stroke, way));
  }

  between(before: WholeHeld, after: WholeHeld): number {
    const [a, b] = [this.holds[before.hold]!, this.holds[after.hold]!];
    const turned = a.wayDeg === b.wayDeg ? 0 : 1;
    const turnedOver = a.markedFaceUp === b.markedFaceUp ? 0 : 1;
    return this.weights.cost(turned + turnedOver, 0, fingerChanges(a.set, b.set));
  }

  grants(wish: number, set: BendSet, by: WholeHeld): boolean {
    const { marginMm } = this.rules;
    if (wish === 0) return this.clearanceMm(set, by, marginMm) >= marginMm;
    return by.way.load !== "fingers off" && by.way.unload !== "fingers off";
  }

  clearanceMm(set: BendSet, by: WholeHeld, enoughMm: Mm): Mm {
    return this.ways[by.stroke]!.judge.widthMm(set, by.way.setup, enoughMm);
  }

  /** The further the leaf swings before something is met, the less is wanted. */
  wanted(set: BendSet, stroke: number): number {
    return -this.ways[stroke]!.judge.swungRad(set);
  }

  blocked(stroke: number): WholeHeld {
    const setup = this.ways[stroke]!.judge.roughly();
    return this.heldBy(stroke, { setup, load: "blocked", unload: "blocked" });
  }

  private heldBy(stroke: number, way: HeldStroke): WholeHeld {
    const { plan } = this.ways[stroke]!.judge;
    const { nx, ny } = plan.own[0]!.fold;
    const wayDeg = (Math.round((Math.atan2(ny, nx) * 180) / Math.PI) + 360) % 360;
    const hold: Hold = { markedFaceUp: plan.markedFaceUp, wayDeg, set: way.setup.set };
    const key = `${hold.markedFaceUp}:${wayDeg}:${way.setup.set.join()}`;
    let number = this.holdNumbers.get(key);
    if (number === undefined) {
      number = this.holds.push(hold) - 1;
      this.holdNumbers.set(key, number);
    }
    const cost = this.weights.cost(0, this.areas[stroke]!, 0);
    return { stroke, makes: this.strokes[stroke]!, hold: number, cost, way };
  }
}

/** Fingers put on and taken off between two rows. */
function fingerChanges(a: FingerSet, b: FingerSet): number {
  const changes = a.reduce((sum, n, i) => sum + Math.abs(n - (b[i] ?? 0)), 0);
  return Math.min(MOST_CHANGES, changes);
}

/** Sheet beyond the stroke's bend lines, in whole mm². */
function swungArea({ plan }: StrokeOver): number {
  const { sheet } = plan.part;
  const faces = sheet.faces.reduce(
    (sum, face, i) => sum + (plan.sides[i] === "moving" ? regionArea(face) : 0),
    0,
  );
  const strips = sheet.hinges.reduce((sum, hinge) => {
    const area = hinge.strips.reduce((all, strip) => all + regionArea(strip), 0);
    if (plan.own.some((own) => own.hinge === hinge)) return sum + area / 2;
    return plan.sides[hinge.left[0]!] === "moving" ? sum + area : sum;
  }, 0);
  return Math.round(faces + strips);
}
