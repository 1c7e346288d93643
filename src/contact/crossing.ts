/**
 * First leaf angle at which a pair curve falls through zero, found and never sampled past.
 * On a step of width w a curve with |f″| ≤ K leaves its chord by at most K·w²/8, so a step whose ends are both
 * farther than that from zero holds no root; the rest is halved until f′ keeps its sign, then closed in on.
 * Angles are good to 1e-12 rad; what is never under −1e-9 (mm or mm²) is touching and no contact.
 */
import { type Moment, momentAt, type Swing } from "../motion/swing.ts";
import type { PairCurve } from "./pairCurve.ts";

/** Depth under which two bodies only touch. */
const TOUCH = 1e-9;
/** The same where the swing starts: what overlaps by more is told there (overlap.ts). */
const TOUCH_AT_START = 1e-7;
const NARROWEST_RAD = 1e-10;

/** Judges a root: whether the features really meet there, and not only the lines and circles they lie on. */
export interface Judge {
  meets(phiRad: number, cos: number, sin: number, slide: number): boolean;
}

/** First φ from the swing's start to `limit` at which f falls through zero and the judge agrees; Infinity if there is none. */
export function firstCrossing(curve: PairCurve, swing: Swing, limitRad: number, judge: Judge): number {
  curve.lower(-TOUCH);
  const w = swing.stepRad;
  const bend = curve.mostBend(swing);
  const slack = (bend * w * w) / 8;
  const { cos, sin, slide, steps, fromRad } = swing;
  let f0 = curve.value(cos[0]!, sin[0]!, slide[0]!);
  // Bodies that only touch where the swing starts (overlap.ts) are in contact as soon as they close in from there.
  if (f0 < 0 && f0 > -TOUCH_AT_START) {
    curve.lower(f0);
    f0 = 0;
  }
  for (let j = 0; j < steps; j++) {
    const phi = fromRad + j * w;
    if (phi >= limitRad) break;
    const f1 = curve.value(cos[j + 1]!, sin[j + 1]!, slide[j + 1]!);
    if (mayCross(f0, f1, slack)) {
      const root = new Crossing(curve, swing, bend, judge).first(phi, fromRad + (j + 1) * w, f0, f1);
      if (root < Infinity) return root < limitRad ? root : Infinity;
    }
    f0 = f1;
  }
  return Infinity;
}

/** Whether a curve that leaves its chord by no more than `slack` may be zero between two values. */
function mayCross(f0: number, f1: number, slack: number): boolean {
  return (f0 <= slack || f1 <= slack) && (f0 >= -slack || f1 >= -slack);
}

/** One curve's crossings, closed in on. */
class Crossing {
  constructor(
    private readonly curve: PairCurve,
    private readonly swing: Swing,
    private readonly bend: number,
    private readonly judge: Judge,
  ) {}

  /** The first fall through zero between two angles between which there may be one. */
  first(lo: number, hi: number, fLo: number, fHi: number): number {
    const w = hi - lo;
    const mid = lo + w / 2;
    const at = momentAt(this.swing, mid);
    if (Math.abs(this.rate(at)) > (this.bend * w) / 2 || w < NARROWEST_RAD) {
      if (!(fLo >= 0 && fHi < 0)) return Infinity;
      const root = momentAt(this.swing, this.closeIn(lo, hi, fLo, fHi));
      return this.judge.meets(root.phiRad, root.cos, root.sin, root.slide) ? root.phiRad : Infinity;
    }
    const fMid = this.value(at);
    // Half as wide: a quarter of the slack.
    const slack = (this.bend * w * w) / 32;
    if (mayCross(fLo, fMid, slack)) {
      const found = this.first(lo, mid, fLo, fMid);
      if (found < Infinity) return found;
    }
    return mayCross(fMid, fHi, slack) ? this.first(mid, hi, fMid, fHi) : Infinity;
  }

  /** The root of f between lo (f ≥ 0) and hi (f < 0), where f falls all the way: Newton steps kept inside the bracket. */
  private closeIn(lo: number, hi: number, fLo: number, fHi: number): number {
    let [a, b] = [lo, hi];
    let phi = lo + ((hi - lo) * fLo) / (fLo - fHi);
    for (let i = 0; i < 60; i++) {
      const at = momentAt(this.swing, phi);
      const f = this.value(at);
      if (f >= 0) a = phi;
      else b = phi;
      const step = f / this.rate(at);
      // Closed in: so small a step may lead out of the bracket by its rounding alone.
      if (Math.abs(step) < 1e-13) return phi;
      phi = phi - step > a && phi - step < b ? phi - step : a + (b - a) / 2;
    }
    return phi;
  }

  private value({ cos, sin, slide }: Moment): number {
    return this.curve.value(cos, sin, slide);
  }

  private rate({ cos, sin, slide, slideRate }: Moment): number {
    return this.curve.rate(this.swing.turns, cos, sin, slide, slideRate);
  }
}
