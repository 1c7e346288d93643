/**
 * Least distance between a turning and sliding body and a fixed one over a whole swing, with the two points.
 * Each pair's curve (pairCurve.ts) is looked into only on steps where chord less |f″|·w²/8 can beat the best so far;
 * there its ends and the root of f′ are tried. Good to well under 0.001 mm on parts up to metres.
 */
import { type Moment, momentAt, type Swing } from "../motion/swing.ts";
import type { Features } from "./features.ts";
import { BOTH_INSETS_MM } from "./gaps.ts";
import { Meeting, type PairKind } from "./meeting.ts";
import { PairCurve } from "./pairCurve.ts";

/** A distance and its points, relative to the pivot. */
export interface Distance {
  readonly mm: number;
  readonly phiRad: number;
  readonly movingX: number;
  readonly movingY: number;
  readonly fixedX: number;
  readonly fixedY: number;
}

/** How f gives a pair's distance: f − radii, √f − radii, or radii − √(−f) inside a hollow. */
interface Reading {
  readonly radii: number;
  readonly form: "distance" | "squared" | "within";
}

/** Searches one pair of bodies after the other; makes nothing new but what it finds. */
export class LeastDistanceSearch {
  private readonly curve = new PairCurve();
  private readonly pair = new Meeting();
  private swing!: Swing;
  /** The least so far; starts at the cut-off. */
  private mm = Infinity;
  private found: Distance | undefined;

  /** The least distance between `A` (moving) and `B` (fixed) where it is less than `underMm`. */
  find(A: Features, B: Features, swing: Swing, underMm: number): Distance | undefined {
    const slide = swing.maxSlide;
    if (A.near - slide > B.far + underMm || A.far + slide + underMm < B.near) return undefined;
    const { curve } = this;
    [this.pair.moving, this.pair.fixed] = [A, B];
    this.swing = swing;
    this.mm = underMm;
    this.found = undefined;

    for (let a = 0; a < A.rounds; a++) {
      const [x, y, r] = [A.roundX[a]!, A.roundY[a]!, A.roundR[a]!];
      const reach = A.roundReach[a]!;
      for (let b = 0; b < B.segments; b++) {
        const spare = slide + r + this.mm;
        if (reach + spare < B.segNear[b]! || reach - spare > B.segFar[b]!) continue;
        curve.pointOverLine(x, y, B.segUy[b]!, -B.segUx[b]!, B.segOff[b]!);
        this.look("roundOnEdge", a, b, { radii: r, form: "distance" });
      }
      for (let b = 0; b < B.rounds; b++) {
        const both = r + B.roundR[b]!;
        if (Math.abs(reach - B.roundReach[b]!) > both + slide + this.mm) continue;
        curve.pointFromPoint(x, y, B.roundX[b]!, B.roundY[b]!, 1);
        this.look("roundOnRound", a, b, { radii: both, form: "squared" });
      }
      for (let b = 0; b < B.hollows; b++) {
        const room = B.hollowR[b]! - r;
        if (room <= 0) continue;
        curve.pointFromPoint(x, y, B.hollowX[b]!, B.hollowY[b]!, -1);
        this.look("roundInHollow", a, b, { radii: room, form: "within" });
      }
    }
    for (let b = 0; b < B.rounds; b++) {
      const [x, y, r] = [B.roundX[b]!, B.roundY[b]!, B.roundR[b]!];
      const reach = B.roundReach[b]!;
      for (let a = 0; a < A.segments; a++) {
        const spare = slide + r + this.mm;
        if (reach + spare < A.segNear[a]! || reach - spare > A.segFar[a]!) continue;
        curve.lineOverPoint(x, y, A.segUy[a]!, -A.segUx[a]!, A.segOff[a]!);
        this.look("edgeOnRound", a, b, { radii: r, form: "distance" });
      }
      for (let a = 0; a < A.hollows; a++) {
        const room = A.hollowR[a]! - r;
        if (room <= 0) continue;
        curve.pointFromPoint(A.hollowX[a]!, A.hollowY[a]!, x, y, -1);
        this.look("hollowOnRound", a, b, { radii: room, form: "within" });
      }
    }
    return this.found;
  }

  /** Tries one pair. */
  private look(kind: PairKind, a: number, b: number, reading: Reading): void {
    const { curve, pair, swing } = this;
    const w = swing.stepRad;
    const slack = (curve.mostBend(swing) * w * w) / 8;
    const { cos, sin, slide, slideRate, turns, steps, fromRad } = swing;
    [pair.kind, pair.a, pair.b] = [kind, a, b];
    let f0 = curve.value(cos[0]!, sin[0]!, slide[0]!);
    let bar = this.barOf(reading);
    if (f0 < bar && this.meetsAt(0) && this.take(f0, fromRad, reading)) bar = this.barOf(reading);
    for (let j = 0; j < steps; j++) {
      const f1 = curve.value(cos[j + 1]!, sin[j + 1]!, slide[j + 1]!);
      if (f1 < bar && this.meetsAt(j + 1) && this.take(f1, this.radAt(j + 1), reading))
        bar = this.barOf(reading);
      if (f0 - slack < bar || f1 - slack < bar) {
        const rate0 = curve.rate(turns, cos[j]!, sin[j]!, slide[j]!, slideRate[j]!);
        const rate1 = curve.rate(turns, cos[j + 1]!, sin[j + 1]!, slide[j + 1]!, slideRate[j + 1]!);
        if (rate0 < 0 && rate1 > 0) {
          const { phiRad, cos: c, sin: s, slide: u } = this.lowest(j, rate0, rate1);
          const f = curve.value(c, s, u);
          if (f < bar && pair.meets(phiRad, c, s, u) && this.take(f, phiRad, reading))
            bar = this.barOf(reading);
        }
      }
      f0 = f1;
    }
  }

  /** The value that f must fall under to beat the least so far. */
  private barOf({ radii, form }: Reading): number {
    if (form === "distance") return this.mm + radii;
    if (form === "squared") return (this.mm + radii) * (this.mm + radii);
    const left = radii - this.mm;
    return left <= 0 ? 0 : -left * left;
  }

  private radAt(j: number): number {
    const { steps, sweepRad, fromRad, stepRad } = this.swing;
    return j === steps ? sweepRad : fromRad + j * stepRad;
  }

  /** Whether the pair is met after step j. */
  private meetsAt(j: number): boolean {
    const { cos, sin, slide } = this.swing;
    return this.pair.meets(this.radAt(j), cos[j]!, sin[j]!, slide[j]!);
  }

  /** Whether the pair, met at this angle, is nearer than all so far; then it is the least. */
  private take(f: number, phiRad: number, { radii, form }: Reading): boolean {
    const mm =
      form === "distance"
        ? f - radii
        : form === "squared"
          ? Math.sqrt(Math.max(0, f)) - radii
          : radii - Math.sqrt(Math.max(0, -f));
    // Farther behind the edge it is no distance: bodies that overlap by more than their insets are told by contact.
    if (mm < -BOTH_INSETS_MM || mm >= this.mm) return false;
    this.mm = Math.max(0, mm);
    const { movingX, movingY, fixedX, fixedY } = this.pair;
    this.found = { mm: this.mm, phiRad, movingX, movingY, fixedX, fixedY };
    return true;
  }

  /** The lowest point of f in step j, over which f′ changes from falling to rising. */
  private lowest(j: number, rateFrom: number, rateTo: number): Moment {
    const { curve, swing } = this;
    let [a, b] = [swing.fromRad + j * swing.stepRad, swing.fromRad + (j + 1) * swing.stepRad];
    let [ra, rb] = [rateFrom, rateTo];
    let at = momentAt(swing, a);
    for (let i = 0; i < 40 && b - a > 1e-9; i++) {
      // False position, halved every third step so that it always closes in.
      at = momentAt(swing, i % 3 === 2 ? (a + b) / 2 : a - (ra * (b - a)) / (rb - ra));
      const rate = curve.rate(swing.turns, at.cos, at.sin, at.slide, at.slideRate);
      if (Math.abs(rate) < 1e-9) break;
      if (rate < 0) [a, ra] = [at.phiRad, rate];
      else [b, rb] = [at.phiRad, rate];
    }
    return at;
  }
}
