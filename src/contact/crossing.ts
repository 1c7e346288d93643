/**
 * First leaf angle at which a pair curve falls through zero, found and never sampled past.
 * On a step of width w a curve with |f″| ≤ K leaves its chord by at most K·w²/8, so a step whose ends are both
 * farther than that from zero holds no root; the rest is halved until f′ keeps its sign, then closed in on.
 * Angles are good to 1e-12 rad; what is never under −1e-9 (mm or mm²) is touching and no contact.
 */
import { slideAt, slideBy, slideRateBy } from "../motion/slide.ts";
import type { Swing } from "../motion/swing.ts";
import { curveBend, curveRate, curveValue, type PairCurve } from "./pairCurve.ts";

/** Depth under which two bodies only touch. */
const TOUCH = 1e-9;
/** The same where the swing starts: what overlaps by more is told there (overlap.ts). */
const TOUCH_AT_START = 1e-7;
const NARROWEST_RAD = 1e-10;

/** Judges a root: whether the features really meet there, and not only the lines and circles they lie on. */
export interface Judge {
  meets(phiRad: number, c: number, s: number, u: number): boolean;
}

/** First φ from the swing's start to `limit` at which f falls through zero and the judge agrees; Infinity if there is none. */
export function firstCrossing(k: PairCurve, swing: Swing, limitRad: number, judge: Judge): number {
  k[0] = k[0]! + TOUCH;
  const w = swing.stepRad;
  const bend = curveBend(k, swing);
  const slack = (bend * w * w) / 8;
  const { cos, sin, slide, steps, fromRad } = swing;
  let f0 = curveValue(k, cos[0]!, sin[0]!, slide[0]!);
  // Bodies that only touch where the swing starts (overlap.ts) are in contact as soon as they close in from there.
  if (f0 < 0 && f0 > -TOUCH_AT_START) {
    k[0] = k[0]! - f0;
    f0 = 0;
  }
  for (let j = 0; j < steps; j++) {
    const phi = fromRad + j * w;
    if (phi >= limitRad) break;
    const f1 = curveValue(k, cos[j + 1]!, sin[j + 1]!, slide[j + 1]!);
    if (mayCross(f0, f1, slack)) {
      const root = crossingWithin(k, swing, bend, phi, fromRad + (j + 1) * w, f0, f1, judge);
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

/** The first fall through zero between two angles between which there may be one. */
function crossingWithin(
  k: PairCurve,
  swing: Swing,
  bend: number,
  lo: number,
  hi: number,
  fLo: number,
  fHi: number,
  judge: Judge,
): number {
  const w = hi - lo;
  const mid = lo + w / 2;
  const c = swing.turns ? Math.cos(mid) : 1;
  const s = swing.turns ? Math.sin(mid) : 0;
  const half = Math.tan(mid / 2);
  const u = slideBy(swing, half, mid);
  const u1 = slideRateBy(swing, half);
  if (Math.abs(curveRate(k, swing.turns, c, s, u, u1)) > (bend * w) / 2 || w < NARROWEST_RAD) {
    if (!(fLo >= 0 && fHi < 0)) return Infinity;
    return judged(swing, closeIn(k, swing, lo, hi, fLo, fHi), judge);
  }
  const fMid = curveValue(k, c, s, u);
  // Half as wide: a quarter of the slack.
  const slack = (bend * w * w) / 32;
  if (mayCross(fLo, fMid, slack)) {
    const first = crossingWithin(k, swing, bend, lo, mid, fLo, fMid, judge);
    if (first < Infinity) return first;
  }
  return mayCross(fMid, fHi, slack) ? crossingWithin(k, swing, bend, mid, hi, fMid, fHi, judge) : Infinity;
}

function judged(swing: Swing, phi: number, judge: Judge): number {
  const c = swing.turns ? Math.cos(phi) : 1;
  const s = swing.turns ? Math.sin(phi) : 0;
  const u = slideAt(swing, phi);
  return judge.meets(phi, c, s, u) ? phi : Infinity;
}

/** The root of f between lo (f ≥ 0) and hi (f < 0), where f falls all the way: Newton steps kept inside the bracket. */
function closeIn(k: PairCurve, swing: Swing, lo: number, hi: number, fLo: number, fHi: number): number {
  let [a, b] = [lo, hi];
  let phi = lo + ((hi - lo) * fLo) / (fLo - fHi);
  for (let i = 0; i < 60; i++) {
    const c = swing.turns ? Math.cos(phi) : 1;
    const s = swing.turns ? Math.sin(phi) : 0;
    const half = Math.tan(phi / 2);
    const u = slideBy(swing, half, phi);
    const f = curveValue(k, c, s, u);
    if (f >= 0) a = phi;
    else b = phi;
    const u1 = slideRateBy(swing, half);
    const step = f / curveRate(k, swing.turns, c, s, u, u1);
    // Closed in: so small a step may lead out of the bracket by its rounding alone.
    if (Math.abs(step) < 1e-13) return phi;
    phi = phi - step > a && phi - step < b ? phi - step : a + (b - a) / 2;
  }
  return phi;
}
