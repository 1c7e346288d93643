/**
 * Least distance between a turning and sliding body and a fixed one over a whole swing, with the two points.
 * Each pair's curve (pairCurve.ts) is looked into only on steps where chord less |f″|·w²/8 can beat the best so far;
 * there its ends and the root of f′ are tried. Good to well under 0.001 mm on parts up to metres.
 */
import { slideBy, slideRateBy } from "../motion/slide.ts";
import type { Swing } from "../motion/swing.ts";
import type { Features } from "./features.ts";
import { BOTH_INSETS_MM } from "./gaps.ts";
import { type Meeting, meetsAtNode, type PairKind } from "./meeting.ts";
import {
  curveBend,
  curveRate,
  curveValue,
  lineOverPoint,
  type PairCurve,
  pointFromPoint,
  pointOverLine,
} from "./pairCurve.ts";

/** The least distance so far and its points (relative to the pivot); `mm` starts at the cut-off. */
export interface DistanceFound {
  mm: number;
  phiRad: number;
  movingX: number;
  movingY: number;
  fixedX: number;
  fixedY: number;
}

/** Nothing found yet. */
export function noDistance(): DistanceFound {
  return { mm: Infinity, phiRad: 0, movingX: 0, movingY: 0, fixedX: 0, fixedY: 0 };
}

/** Lowers `found` to the least distance between `A` (moving) and `B` (fixed), if that is less than `found.mm`. */
export function leastDistance(
  A: Features,
  B: Features,
  swing: Swing,
  k: PairCurve,
  meeting: Meeting,
  found: DistanceFound,
): void {
  const slide = swing.maxSlide;
  if (A.near - slide > B.far + found.mm || A.far + slide + found.mm < B.near) return;
  meeting.moving = A;
  meeting.fixed = B;

  for (let a = 0; a < A.rounds; a++) {
    const [x, y, r] = [A.roundX[a]!, A.roundY[a]!, A.roundR[a]!];
    const reach = A.roundReach[a]!;
    for (let b = 0; b < B.segments; b++) {
      const spare = slide + r + found.mm;
      if (reach + spare < B.segNear[b]! || reach - spare > B.segFar[b]!) continue;
      pointOverLine(k, x, y, B.segUy[b]!, -B.segUx[b]!, B.segOff[b]!, 0);
      search(k, swing, meeting, found, "roundOnEdge", a, b, r, 0);
    }
    for (let b = 0; b < B.rounds; b++) {
      const both = r + B.roundR[b]!;
      if (Math.abs(reach - B.roundReach[b]!) > both + slide + found.mm) continue;
      pointFromPoint(k, x, y, B.roundX[b]!, B.roundY[b]!, 0, 1);
      search(k, swing, meeting, found, "roundOnRound", a, b, both, 1);
    }
    for (let b = 0; b < B.hollows; b++) {
      const room = B.hollowR[b]! - r;
      if (room <= 0) continue;
      pointFromPoint(k, x, y, B.hollowX[b]!, B.hollowY[b]!, 0, -1);
      search(k, swing, meeting, found, "roundInHollow", a, b, room, -1);
    }
  }
  for (let b = 0; b < B.rounds; b++) {
    const [x, y, r] = [B.roundX[b]!, B.roundY[b]!, B.roundR[b]!];
    const reach = B.roundReach[b]!;
    for (let a = 0; a < A.segments; a++) {
      const spare = slide + r + found.mm;
      if (reach + spare < A.segNear[a]! || reach - spare > A.segFar[a]!) continue;
      lineOverPoint(k, x, y, A.segUy[a]!, -A.segUx[a]!, A.segOff[a]!, 0);
      search(k, swing, meeting, found, "edgeOnRound", a, b, r, 0);
    }
    for (let a = 0; a < A.hollows; a++) {
      const room = A.hollowR[a]! - r;
      if (room <= 0) continue;
      pointFromPoint(k, A.hollowX[a]!, A.hollowY[a]!, x, y, 0, -1);
      search(k, swing, meeting, found, "hollowOnRound", a, b, room, -1);
    }
  }
}

/**
 * Tries one pair. `form` says how f gives the distance: 0: f − radii; 1: √f − radii; −1: radii − √(−f).
 */
function search(
  k: PairCurve,
  swing: Swing,
  meeting: Meeting,
  found: DistanceFound,
  kind: PairKind,
  a: number,
  b: number,
  radii: number,
  form: number,
): void {
  const w = swing.stepRad;
  const slack = (curveBend(k, swing) * w * w) / 8;
  const { cos, sin, slide, slideRate, turns, steps, fromRad } = swing;
  meeting.kind = kind;
  meeting.a = a;
  meeting.b = b;
  let bar = barOf(found.mm, radii, form);
  let f0 = curveValue(k, cos[0]!, sin[0]!, slide[0]!);
  if (f0 < bar && meetsAtNode(meeting, swing, 0)) bar = take(found, meeting, f0, fromRad, radii, form, bar);
  for (let j = 0; j < steps; j++) {
    const f1 = curveValue(k, cos[j + 1]!, sin[j + 1]!, slide[j + 1]!);
    if (f1 < bar && meetsAtNode(meeting, swing, j + 1)) {
      bar = take(found, meeting, f1, Math.min(fromRad + (j + 1) * w, swing.sweepRad), radii, form, bar);
    }
    if (f0 - slack < bar || f1 - slack < bar) {
      const rate0 = curveRate(k, turns, cos[j]!, sin[j]!, slide[j]!, slideRate[j]!);
      const rate1 = curveRate(k, turns, cos[j + 1]!, sin[j + 1]!, slide[j + 1]!, slideRate[j + 1]!);
      if (rate0 < 0 && rate1 > 0) {
        const [lo, hi] = [fromRad + j * w, fromRad + (j + 1) * w];
        bar = dip(k, swing, meeting, found, lo, hi, rate0, rate1, radii, form, bar);
      }
    }
    f0 = f1;
  }
}

/** The value that f must fall under to beat `mm`. */
function barOf(mm: number, radii: number, form: number): number {
  if (form === 0) return mm + radii;
  if (form > 0) return (mm + radii) * (mm + radii);
  const left = radii - mm;
  return left <= 0 ? 0 : -left * left;
}

function take(
  found: DistanceFound,
  meeting: Meeting,
  f: number,
  phi: number,
  radii: number,
  form: number,
  bar: number,
): number {
  const mm =
    form === 0
      ? f - radii
      : form > 0
        ? Math.sqrt(Math.max(0, f)) - radii
        : radii - Math.sqrt(Math.max(0, -f));
  // Farther behind the edge it is no distance: bodies that overlap by more than their insets are told by contact.
  if (mm < -BOTH_INSETS_MM || mm >= found.mm) return bar;
  found.mm = Math.max(0, mm);
  found.phiRad = phi;
  found.movingX = meeting.movingX;
  found.movingY = meeting.movingY;
  found.fixedX = meeting.fixedX;
  found.fixedY = meeting.fixedY;
  return barOf(found.mm, radii, form);
}

/** The lowest point of f between two angles where f′ changes from falling to rising. */
function dip(
  k: PairCurve,
  swing: Swing,
  meeting: Meeting,
  found: DistanceFound,
  lo: number,
  hi: number,
  rateLo: number,
  rateHi: number,
  radii: number,
  form: number,
  bar: number,
): number {
  let [a, b, ra, rb] = [lo, hi, rateLo, rateHi];
  let [phi, c, s, u] = [lo, 1, 0, 0];
  for (let i = 0; i < 40 && b - a > 1e-9; i++) {
    // False position, halved every third step so that it always closes in.
    phi = i % 3 === 2 ? (a + b) / 2 : a - (ra * (b - a)) / (rb - ra);
    c = swing.turns ? Math.cos(phi) : 1;
    s = swing.turns ? Math.sin(phi) : 0;
    const half = Math.tan(phi / 2);
    u = slideBy(swing, half, phi);
    const rate = curveRate(k, swing.turns, c, s, u, slideRateBy(swing, half));
    if (Math.abs(rate) < 1e-9) break;
    if (rate < 0) [a, ra] = [phi, rate];
    else [b, rb] = [phi, rate];
  }
  const f = curveValue(k, c, s, u);
  if (f >= bar || !meeting.meets(phi, c, s, u)) return bar;
  return take(found, meeting, f, phi, radii, form, bar);
}
