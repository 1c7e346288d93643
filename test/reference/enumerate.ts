/**
 * The order search by plain enumeration: every order of the bends and every clamped end, n!·2^n of them, one by one.
 * Only the check of one bend in one state is remembered, as the state does not depend on the order that led to it.
 */
import { type BendCheck, checkBend } from "./bendCheck.ts";
import { LeafAlone } from "./contact.ts";
import type { End, PlainJob } from "./plainJob.ts";
import { sheetOf } from "./sheet.ts";

export interface Step {
  bend: number;
  end: End;
}

export interface Rank {
  verdict: "clear" | "tight" | "hits";
  changes: number;
  /** Developed width beyond the bend on the moving side, summed over the bends, to 0.01 mm. */
  swung: number;
  /** Least clearance, null where no bend has anything to measure. */
  clearance: number | null;
}

export interface Search {
  verdict: "clear" | "tight" | "hits";
  viableOrders: number;
  /** Rank of the best orders; null where none is viable. */
  rank: Rank | null;
  /** Best orders, all of equal rank (clearance within 1e-6 mm). */
  best: Step[][];
  /** Most bends made before one that blocks. */
  furthest: number;
  statesChecked: number;
}

/** Remembers the checks of a job, by set of bends done, bend and clamped end. */
export class Checks {
  private readonly known = new Map<string, BendCheck>();
  private readonly alone = new LeafAlone();
  private readonly job: PlainJob;

  constructor(job: PlainJob) {
    this.job = job;
  }

  get count(): number {
    return this.known.size;
  }

  of(done: readonly boolean[], step: Step): BendCheck {
    const key = `${done.map(Number).join("")} ${step.bend} ${step.end}`;
    const before = this.known.get(key);
    if (before !== undefined) return before;
    const made = checkBend(this.job, { done, bend: step.bend, end: step.end }, this.alone);
    this.known.set(key, made);
    return made;
  }
}

/** Changes of clamped end plus changes of face between one bend and the next. */
export function changesOf(job: PlainJob, steps: readonly Step[]): number {
  return steps.slice(1).reduce((sum, step, i) => {
    const before = steps[i]!;
    const turned = job.part.bends[before.bend]!.turn !== job.part.bends[step.bend]!.turn;
    return sum + Number(before.end !== step.end) + Number(turned);
  }, 0);
}

/** Sheet that swings, each bend's width beyond it on the moving side; to 0.01 mm as the ranking takes it. */
export function swungOf(job: PlainJob, steps: readonly Step[]): number {
  const { flats, bends } = sheetOf(job);
  const widths = steps.map(({ bend, end }) => {
    const beyond = end === "start" ? bends.slice(bend + 1) : bends.slice(0, bend);
    const flat = end === "start" ? flats.slice(bend + 1) : flats.slice(0, bend + 1);
    return beyond.reduce((sum, one) => sum + one.allowance, 0) + flat.reduce((sum, one) => sum + one, 0);
  });
  return Math.round(100 * widths.reduce((sum, width) => sum + width, 0)) / 100;
}

/** Worst verdict, changes, swung width and least clearance of an order with its checks. */
export function rankOf(job: PlainJob, steps: readonly Step[], checks: readonly BendCheck[]): Rank {
  const worst = (["hits", "tight"] as const).find((word) => checks.some((check) => check.verdict === word));
  const measured = checks.map((check) => check.clearanceMm).filter((mm) => mm !== null);
  return {
    verdict: worst ?? "clear",
    changes: changesOf(job, steps),
    swung: swungOf(job, steps),
    clearance: measured.length === 0 ? null : Math.min(...measured),
  };
}

/** Below 0 where `a` is the better rank. */
export function compareRanks(a: Rank, b: Rank): number {
  const place = { clear: 0, tight: 1, hits: 2 };
  if (a.verdict !== b.verdict) return place[a.verdict] - place[b.verdict];
  if (a.changes !== b.changes) return a.changes - b.changes;
  if (Math.abs(a.swung - b.swung) > 0.005) return a.swung - b.swung;
  const [ca, cb] = [a.clearance ?? 1e9, b.clearance ?? 1e9];
  return Math.abs(ca - cb) < 1e-6 ? 0 : cb - ca;
}

/** Every order and side of the job's bends. */
export function enumerate(job: PlainJob, checks = new Checks(job)): Search {
  const n = job.part.bends.length;
  const found: Search = {
    verdict: "hits",
    viableOrders: 0,
    rank: null,
    best: [],
    furthest: 0,
    statesChecked: 0,
  };
  const done: boolean[] = Array(n).fill(false);
  const steps: Step[] = [];
  const made: BendCheck[] = [];

  const take = (): void => {
    found.viableOrders++;
    const rank = rankOf(job, steps, made);
    const against = found.rank === null ? -1 : compareRanks(rank, found.rank);
    if (against < 0) {
      found.rank = rank;
      found.best = [];
    }
    if (against <= 0) found.best.push([...steps]);
  };

  const goOn = (): void => {
    found.furthest = Math.max(found.furthest, steps.length);
    if (steps.length === n) take();
    for (let bend = 0; bend < n; bend++) {
      if (done[bend]) continue;
      for (const end of ["start", "end"] as const) {
        const step = { bend, end };
        const check = checks.of(done, step);
        if (check.verdict === "hits") continue;
        done[bend] = true;
        steps.push(step);
        made.push(check);
        goOn();
        done[bend] = false;
        steps.pop();
        made.pop();
      }
    }
  };
  goOn();
  found.verdict = found.rank?.verdict ?? "hits";
  found.statesChecked = checks.count;
  return found;
}

/** A user's own order, bend by bend; the bends after one that hits go on as if it had been made. */
export function followOrder(job: PlainJob, steps: readonly Step[], checks = new Checks(job)): BendCheck[] {
  const done: boolean[] = job.part.bends.map(() => false);
  return steps.map((step) => {
    const check = checks.of([...done], step);
    done[step.bend] = true;
    return check;
  });
}
