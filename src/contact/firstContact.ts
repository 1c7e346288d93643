/**
 * First leaf angle at which a turning and sliding body meets a fixed one: every pair of features whose distances
 * from the pivot can agree is solved for the fall of its distance through zero (crossing.ts, pairCurve.ts).
 * Pairs: round on edge, edge on round, round on round, round in hollow; these are all first contacts there are.
 */
import type { Swing } from "../motion/swing.ts";
import { firstCrossing } from "./crossing.ts";
import type { Features } from "./features.ts";
import { Meeting, type PairKind } from "./meeting.ts";
import { PairCurve } from "./pairCurve.ts";

export interface FirstContact {
  readonly phiRad: number;
  /** On the fixed body, relative to the pivot. */
  readonly x: number;
  readonly y: number;
  /** Of the features that meet. */
  readonly movingTag: number;
  readonly fixedTag: number;
}

/** Searches one pair of bodies after the other; makes nothing new but what it finds. */
export class FirstContactSearch {
  private readonly curve = new PairCurve();
  private readonly pair = new Meeting();
  private swing!: Swing;
  private firstRad = Infinity;
  private first: FirstContact | undefined;

  /** First contact of `A` (moving) with `B` (fixed) before `limitRad`. Bodies are taken to be apart at rest (overlap.ts). */
  find(A: Features, B: Features, swing: Swing, limitRad: number): FirstContact | undefined {
    const slide = swing.maxSlide;
    if (A.near - slide > B.far || A.far + slide < B.near) return undefined;
    const { curve } = this;
    [this.pair.moving, this.pair.fixed] = [A, B];
    this.firstRad = limitRad;
    this.swing = swing;
    this.first = undefined;

    for (let a = 0; a < A.rounds; a++) {
      const x = A.roundX[a]!;
      const y = A.roundY[a]!;
      const r = A.roundR[a]!;
      const out = A.roundReach[a]! + slide + r;
      const inn = A.roundReach[a]! - slide - r;
      if (inn > B.far || out < B.near) continue;
      for (let b = 0; b < B.segments; b++) {
        if (out < B.segNear[b]! || inn > B.segFar[b]!) continue;
        curve.pointOverLine(x, y, B.segUy[b]!, -B.segUx[b]!, B.segOff[b]!);
        curve.lower(r);
        this.solve("roundOnEdge", a, b);
      }
      for (let b = 0; b < B.rounds; b++) {
        const both = r + B.roundR[b]!;
        // Two sharp corners meet only where one of them meets an edge as well.
        if (both === 0 || Math.abs(A.roundReach[a]! - B.roundReach[b]!) > both + slide) continue;
        curve.pointFromPoint(x, y, B.roundX[b]!, B.roundY[b]!, 1);
        curve.lower(both * both);
        this.solve("roundOnRound", a, b);
      }
      for (let b = 0; b < B.hollows; b++) {
        const room = B.hollowR[b]! - r;
        if (room <= 0 || A.roundReach[a]! + B.hollowReach[b]! + slide < room) continue;
        curve.pointFromPoint(x, y, B.hollowX[b]!, B.hollowY[b]!, -1);
        curve.lower(-room * room);
        this.solve("roundInHollow", a, b);
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
        curve.lineOverPoint(x, y, A.segUy[a]!, -A.segUx[a]!, A.segOff[a]!);
        curve.lower(r);
        this.solve("edgeOnRound", a, b);
      }
      for (let a = 0; a < A.hollows; a++) {
        const room = A.hollowR[a]! - r;
        if (room <= 0 || A.hollowReach[a]! + B.roundReach[b]! + slide < room) continue;
        curve.pointFromPoint(A.hollowX[a]!, A.hollowY[a]!, x, y, -1);
        curve.lower(-room * room);
        this.solve("hollowOnRound", a, b);
      }
    }
    return this.first;
  }

  /** Notes the first crossing of one pair's curve before the first one known. */
  private solve(kind: PairKind, a: number, b: number): void {
    const { pair, swing } = this;
    [pair.kind, pair.a, pair.b] = [kind, a, b];
    const phiRad = firstCrossing(this.curve, swing, this.firstRad, pair);
    if (phiRad === Infinity) return;
    this.firstRad = phiRad;
    // Where the pair met last is where it was judged to.
    const { fixedX: x, fixedY: y, movingTag, fixedTag } = pair;
    this.first = { phiRad, x, y, movingTag, fixedTag };
  }
}
