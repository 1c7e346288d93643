/**
 * First leaf angle at which a turning and sliding body meets a fixed one: every pair of features whose distances
 * from the pivot can agree is solved for the fall of its distance through zero (crossing.ts, pairCurve.ts).
 * Pairs: round on edge, edge on round, round on round, round in hollow; these are all first contacts there are.
 */
import type { Swing } from "../motion/swing.ts";
import { firstCrossing } from "./crossing.ts";
import type { Features } from "./features.ts";
import type { Meeting, PairKind } from "./meeting.ts";
import { lineOverPoint, type PairCurve, pointFromPoint, pointOverLine } from "./pairCurve.ts";

/** Where a first contact was found; kept between calls so that the kernel makes nothing new. */
export interface ContactFound {
  phiRad: number;
  kind: PairKind;
  a: number;
  b: number;
}

/**
 * First contact angle of `A` (moving) with `B` (fixed) before `limitRad`, else Infinity. Bodies are taken to be
 * apart at rest (overlap.ts).
 */
export function firstContact(
  A: Features,
  B: Features,
  swing: Swing,
  limitRad: number,
  k: PairCurve,
  meeting: Meeting,
  found: ContactFound,
): number {
  const slide = swing.maxSlide;
  if (A.near - slide > B.far || A.far + slide < B.near) return Infinity;
  meeting.moving = A;
  meeting.fixed = B;
  let first = limitRad;

  for (let a = 0; a < A.rounds; a++) {
    const x = A.roundX[a]!;
    const y = A.roundY[a]!;
    const r = A.roundR[a]!;
    const out = A.roundReach[a]! + slide + r;
    const inn = A.roundReach[a]! - slide - r;
    if (inn > B.far || out < B.near) continue;
    for (let b = 0; b < B.segments; b++) {
      if (out < B.segNear[b]! || inn > B.segFar[b]!) continue;
      pointOverLine(k, x, y, B.segUy[b]!, -B.segUx[b]!, B.segOff[b]!, r);
      first = solved(k, swing, first, meeting, "roundOnEdge", a, b, found);
    }
    for (let b = 0; b < B.rounds; b++) {
      const both = r + B.roundR[b]!;
      // Two sharp corners meet only where one of them meets an edge as well.
      if (both === 0 || Math.abs(A.roundReach[a]! - B.roundReach[b]!) > both + slide) continue;
      pointFromPoint(k, x, y, B.roundX[b]!, B.roundY[b]!, both * both, 1);
      first = solved(k, swing, first, meeting, "roundOnRound", a, b, found);
    }
    for (let b = 0; b < B.hollows; b++) {
      const room = B.hollowR[b]! - r;
      if (room <= 0 || A.roundReach[a]! + B.hollowReach[b]! + slide < room) continue;
      pointFromPoint(k, x, y, B.hollowX[b]!, B.hollowY[b]!, room * room, -1);
      first = solved(k, swing, first, meeting, "roundInHollow", a, b, found);
    }
  }
  for (let b = 0; b < B.rounds; b++) {
    const x = B.roundX[b]!;
    const y = B.roundY[b]!;
    const r = B.roundR[b]!;
    const out = B.roundReach[b]! + slide + r;
    const inn = B.roundReach[b]! - slide - r;
    if (inn > A.far || out < A.near) continue;
    for (let a = 0; a < A.segments; a++) {
      if (out < A.segNear[a]! || inn > A.segFar[a]!) continue;
      lineOverPoint(k, x, y, A.segUy[a]!, -A.segUx[a]!, A.segOff[a]!, r);
      first = solved(k, swing, first, meeting, "edgeOnRound", a, b, found);
    }
    for (let a = 0; a < A.hollows; a++) {
      const room = A.hollowR[a]! - r;
      if (room <= 0 || A.hollowReach[a]! + B.roundReach[b]! + slide < room) continue;
      pointFromPoint(k, A.hollowX[a]!, A.hollowY[a]!, x, y, room * room, -1);
      first = solved(k, swing, first, meeting, "hollowOnRound", a, b, found);
    }
  }
  return first < limitRad ? first : Infinity;
}

/** First crossing of one pair's curve before `first`, noted in `found`; else `first` as it was. */
function solved(
  k: PairCurve,
  swing: Swing,
  first: number,
  meeting: Meeting,
  kind: PairKind,
  a: number,
  b: number,
  found: ContactFound,
): number {
  meeting.kind = kind;
  meeting.a = a;
  meeting.b = b;
  const phi = firstCrossing(k, swing, first, meeting);
  if (phi === Infinity) return first;
  found.phiRad = phi;
  found.kind = kind;
  found.a = a;
  found.b = b;
  return phi;
}
