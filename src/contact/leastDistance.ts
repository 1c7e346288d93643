/**
 * Least distance between a turning and sliding body and a fixed one over a whole swing, with the two points.
 * Each pair's curve (pairCurve.ts) is looked into only on steps where chord less |f″|·w²/8 can beat the best so far;
 * there its ends and the root of f′ are tried. Good to well under 0.001 mm on parts up to metres.
 */
import { type Moment, momentAt, momentOf, type Swing } from "../motion/swing.ts";
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
    const { cos, sin, slide, steps } = swing;
    [pair.kind, pair.a, pair.b] = [kind, a, b];
    let bar = this.barOf(reading);
    const tryStep = (f: number, j: number) => {
      if (f < bar && this.take(f, momentOf(swing, j), reading)) bar = this.barOf(reading);
    };
    let f0 = curve.value(cos[0]!, sin[0]!, slide[0]!);
    tryStep(f0, 0);
    for (let j = 0; j < steps; j++) {
      const f1 = curve.value(cos[j + 1]!, sin[j + 1]!, slide[j + 1]!);
      tryStep(f1, j + 1);
      if (f0 - slack < bar || f1 - slack < bar) {
        const lowest = this.dip(momentOf(swing, j), momentOf(swing, j + 1));
        if (lowest) {
          const f = curve.value(lowest.cos, lowest.sin, lowest.slide);
          if (f < bar && this.take(f, lowest, reading)) bar = this.barOf(reading);
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

  /** Whether the pair is met at this moment, and nearer than all so far; then it is the least. */
  private take(f: number, at: Moment, { radii, form }: Reading): boolean {
    const { pair } = this;
    if (!pair.meets(at)) return false;
    const mm =
      form === "distance"
        ? f - radii
        : form === "squared"
          ? Math.sqrt(Math.max(0, f)) - radii
          : radii - Math.sqrt(Math.max(0, -f));
    // Farther behind the edge it is no distance: bodies that overlap by more than their insets are told by contact.
    if (mm < -BOTH_INSETS_MM || mm >= this.mm) return false;
    this.mm = Math.max(0, mm);
    const { movingX, movingY, fixedX, fixedY } = pair;
    this.found = { mm: this.mm, phiRad: at.phiRad, movingX, movingY, fixedX, fixedY };
    return true;
  }

  /** The lowest point of f between two moments between which f′ changes from falling to rising. */
  private dip(from: Moment, to: Moment): Moment | undefined {
    const { curve, swing } = this;
    let [a, b] = [from.phiRad, to.phiRad];
    let [ra, rb] = [curve.rate(swing.turns, from), curve.rate(swing.turns, to)];
    if (!(ra < 0 && rb > 0)) return undefined;
    let at = from;
    for (let i = 0; i < 40 && b - a > 1e-9; i++) {
      // False position, halved every third step so that it always closes in.
      at = momentAt(swing, i % 3 === 2 ? (a + b) / 2 : a - (ra * (b - a)) / (rb - ra));
      const rate = curve.rate(swing.turns, at);
      if (Math.abs(rate) < 1e-9) break;
      if (rate < 0) [a, ra] = [at.phiRad, rate];
      else [b, rb] = [at.phiRad, rate];
    }
    return at;
  }
}
