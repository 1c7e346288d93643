/**
 * Every order of the bends and every clamped end, n!·2^n of them, listed one by one and ranked as the model says.
 * Bends are judged by the engine's full check of one bend, so that only the search itself is put to the test.
 */
import { judgeStep, type Step } from "../../src/contact/step.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { AS_LIKELY } from "../../src/motion/variants.ts";
import type { End } from "../../src/part/part.ts";
import { changeWanted } from "../../src/section/wanted.ts";

export interface Move {
  readonly bend: number;
  readonly clamped: End;
}

export interface OrderRank {
  readonly verdict: "clear" | "tight" | "hits";
  readonly changes: number;
  /** Developed width beyond the bend on the moving side, summed over the bends, to 0.01 mm. */
  readonly swungMm: number;
  /** Least clearance; Infinity where no bend has anything to measure. */
  readonly clearanceMm: number;
}

export interface Listed {
  /** Orders looked at, to their end or to the bend that blocks. */
  readonly viableOrders: number;
  /** Best rank of the viable orders, or undefined. */
  readonly best: OrderRank | undefined;
  /** Most bends made by any order. */
  readonly most: number;
  /** Best rank that so many made bends have, of those left with the bend that wants the least change. */
  readonly bestOfMost: OrderRank;
}

/** Judges bends of a job, each state once: what a bend does depends on the set of bends made before, not on their order. */
export class Judge {
  private readonly known = new Map<string, Step>();

  constructor(readonly job: Job) {}

  of(bendsDone: number, { bend, clamped }: Move): Step {
    const key = `${bendsDone} ${bend} ${clamped}`;
    const before = this.known.get(key);
    if (before) return before;
    const { part, brake, marginMm } = this.job;
    const step = judgeStep(part, brake, { bendsDone, bend, clamped }, marginMm);
    this.known.set(key, step);
    return step;
  }

  /** Steps of an order; bends after a hit are judged as if it had been made. */
  along(moves: readonly Move[]): Step[] {
    let done = 0;
    return moves.map((move) => {
      const step = this.of(done, move);
      done |= 1 << move.bend;
      return step;
    });
  }

  /** src/model.md, section 8: verdict; then changes of clamped end plus changes of face; then swung width; then least clearance. */
  rank(moves: readonly Move[]): OrderRank {
    const steps = this.along(moves);
    const { bends } = this.job.part;
    let changes = 0;
    for (let i = 1; i < moves.length; i++) {
      const [before, move] = [moves[i - 1]!, moves[i]!];
      if (before.clamped !== move.clamped) changes++;
      if (bends[before.bend]!.turn !== bends[move.bend]!.turn) changes++;
    }
    const worst = (["hits", "tight"] as const).find((word) => steps.some((step) => step.verdict === word));
    const clearances = steps.map((step) => step.clearanceMm ?? Infinity);
    const swung = moves.reduce((sum, move) => sum + this.widthBeyond(move), 0);
    return {
      verdict: worst ?? "clear",
      changes,
      swungMm: Math.round(swung * 100) / 100,
      clearanceMm: Math.min(Infinity, ...clearances),
    };
  }

  /** The least change that any bend left wants after these bends. */
  leastWanted(bendsDone: number): number {
    const { part, brake } = this.job;
    const left = part.bends.flatMap((_, bend) =>
      (bendsDone >> bend) & 1 ? [] : (["start", "end"] as const).map((clamped) => ({ bend, clamped })),
    );
    const standing = { part, brake, off: AS_LIKELY };
    return Math.min(...left.map((move) => changeWanted(this.of(bendsDone, move), standing, move.bend)));
  }

  private widthBeyond({ bend, clamped }: Move): number {
    const { flatsMm, bends } = this.job.part;
    const sum = (list: readonly number[]) => list.reduce((all, one) => all + one, 0);
    const allowances = bends.map(({ allowanceMm }) => allowanceMm);
    return clamped === "start"
      ? sum(flatsMm.slice(bend + 1)) + sum(allowances.slice(bend + 1))
      : sum(flatsMm.slice(0, bend + 1)) + sum(allowances.slice(0, bend));
  }
}

const PLACE = { clear: 0, tight: 1, hits: 2 };
export const SAME_MM = 1e-6;

/** Below 0 where `a` is the better rank. */
export function compareRanks(a: OrderRank, b: OrderRank): number {
  if (a.verdict !== b.verdict) return PLACE[a.verdict] - PLACE[b.verdict];
  if (a.changes !== b.changes) return a.changes - b.changes;
  if (a.swungMm !== b.swungMm) return a.swungMm - b.swungMm;
  if (a.clearanceMm === b.clearanceMm || Math.abs(a.clearanceMm - b.clearanceMm) < SAME_MM) return 0;
  return b.clearanceMm - a.clearanceMm;
}

/** Lists every order of the job's bends, each as far as it can be made. */
export function listOrders(judge: Judge): Listed {
  const n = judge.job.part.bends.length;
  const moves: Move[] = [];
  let [viableOrders, most] = [0, 0];
  let best: OrderRank | undefined;
  /** By the bends made, for so many as any order makes. */
  let furthest = new Map<number, OrderRank>();
  const goOn = (done: number): void => {
    const rank = judge.rank(moves);
    if (moves.length > most) furthest = new Map();
    most = Math.max(most, moves.length);
    const before = furthest.get(done);
    if (moves.length === most && (!before || compareRanks(rank, before) < 0)) furthest.set(done, rank);
    if (moves.length === n) {
      viableOrders++;
      if (!best || compareRanks(rank, best) < 0) best = rank;
      return;
    }
    for (let bend = 0; bend < n; bend++) {
      if ((done >> bend) & 1) continue;
      for (const clamped of ["start", "end"] as const) {
        if (judge.of(done, { bend, clamped }).verdict === "hits") continue;
        moves.push({ bend, clamped });
        goOn(done | (1 << bend));
        moves.pop();
      }
    }
  };
  goOn(0);
  const wants = new Map([...furthest.keys()].map((done) => [done, judge.leastWanted(done)]));
  const least = Math.min(...wants.values());
  const nearest = [...furthest].filter(([done]) => wants.get(done)! <= least + 1e-9).map(([, rank]) => rank);
  return { viableOrders, best, most, bestOfMost: nearest.sort(compareRanks)[0]! };
}
