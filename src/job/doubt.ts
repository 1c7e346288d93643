/**
 * What doubtful readings of a copied part do to the answer: clear only where every mix of the doubts folds in the order
 * at hand. A length that is off by d moves everything beyond it by d, so a clearance shrinks by no more than all doubts
 * together; what a clearance does not measure, the flat on the leaf against the brake, only gets worse as it gets longer.
 * On a brake with closed ends the way in and out is tried at the corners and middles of the doubts, not proved between.
 */

import { Machine } from "../contact/machine.ts";
import { judgeStep, type Step } from "../contact/step.ts";
import { doubtMixes } from "../part/sample.ts";
import type { Mm } from "../units/quantity.ts";
import type { Job, OrderStep } from "./job.ts";

export interface DoubtAnswer {
  /** `hits`: it hits as read. `tight`: some mix hits, or could not be ruled out, or the margin is short as read. */
  readonly verdict: "clear" | "tight" | "hits";
  /** The mix that stops soonest: by how much each flat is longer (+) or shorter than read. Null where none hits. */
  readonly worst: { readonly offMm: readonly Mm[]; readonly bend: number } | null;
  /** Flats, from 0, whose reading alone turns folding into hitting or hitting into folding. */
  readonly deciding: readonly number[];
  /** Whether nothing was left open; false only with `tight` and no worst mix. */
  readonly proved: boolean;
  readonly mixesTried: number;
}

/** Up to so many doubtful flats every corner is tried, 2^n of them. */
const MOST_CORNERS = 6;
/** So many mixes are tried to rule out a hit before it is left open. */
const MOST_MIXES = 500;

/** How an order goes with the flats off by some lengths. */
interface Trial {
  readonly offMm: readonly Mm[];
  /** First bend that hits, and how far its leaf gets, as a share of what it wants; 0 where it can't be put in. */
  readonly stop: { readonly bend: number; readonly share: number } | undefined;
  /** Least clearance of all bends; infinite where nothing was measured. */
  readonly clearanceMm: Mm;
  readonly tight: boolean;
}

/**
 * Judges an order with each flat's outside length doubtful by `doubtsMm[flat]` either way.
 * @throws RangeError when there is not one doubt, of zero or more, for each flat, or a doubt is not less than its flat
 */
export function judgeDoubts(job: Job, order: readonly OrderStep[], doubtsMm: readonly Mm[]): DoubtAnswer {
  const { flatsMm } = job.part;
  if (doubtsMm.length !== flatsMm.length) throw new RangeError("each flat needs its doubt");
  if (!doubtsMm.every((doubt, i) => doubt >= 0 && doubt < (flatsMm[i] ?? 0))) {
    throw new RangeError("a doubt must be zero or more and less than its flat");
  }
  const bench = new Bench(job, order);
  const asRead = bench.tryOff(doubtsMm.map(() => 0));
  const deciding = alone(doubtsMm).filter(({ offsMm }) =>
    offsMm.some((offMm) => (bench.tryOff(offMm).stop === undefined) !== (asRead.stop === undefined)),
  );
  const found = { deciding: deciding.map(({ flat }) => flat), proved: true };
  if (asRead.stop !== undefined) {
    const worst = { offMm: asRead.offMm, bend: asRead.stop.bend };
    return { ...found, verdict: "hits", worst, mixesTried: bench.tried };
  }
  for (const offMm of cornersOf(doubtsMm)) bench.tryOff(offMm);
  if (bench.worst === undefined) {
    const proved = bench.ruleOut({ middleMm: asRead.offMm, halfMm: doubtsMm });
    if (bench.worst === undefined) {
      const verdict = proved && !asRead.tight ? "clear" : "tight";
      return { ...found, verdict, worst: null, proved, mixesTried: bench.tried };
    }
  }
  const { offMm, stop } = bench.worst as Trial;
  const worst = { offMm, bend: stop?.bend ?? 0 };
  return { ...found, verdict: "tight", worst, mixesTried: bench.tried };
}

interface DoubtBox {
  readonly middleMm: readonly Mm[];
  readonly halfMm: readonly Mm[];
}

/** Tries mixes of one order on one brake, and keeps the one that stops soonest. */
class Bench {
  tried = 0;
  worst: Trial | undefined;
  private readonly machine: Machine;

  constructor(
    private readonly job: Job,
    private readonly order: readonly OrderStep[],
  ) {
    this.machine = new Machine(job.brake, job.part.thicknessMm);
  }

  tryOff(offMm: readonly Mm[]): Trial {
    this.tried += 1;
    const { part, brake, marginMm } = this.job;
    const off = { ...part, flatsMm: part.flatsMm.map((flat, i) => flat + (offMm[i] ?? 0)) };
    let bendsDone = 0;
    let clearanceMm: Mm = Number.POSITIVE_INFINITY;
    let tight = false;
    for (const { bend, clamped } of this.order) {
      const step = judgeStep(off, brake, bendsDone, bend, clamped, marginMm, this.machine);
      bendsDone |= 1 << bend;
      clearanceMm = Math.min(clearanceMm, step.clearanceMm ?? Number.POSITIVE_INFINITY);
      tight ||= step.verdict === "tight";
      if (step.verdict !== "hits") continue;
      const trial = { offMm, stop: { bend, share: shareReached(step) }, clearanceMm: 0, tight };
      if (this.worst?.stop === undefined || trial.stop.share < this.worst.stop.share) this.worst = trial;
      return trial;
    }
    return { offMm, stop: undefined, clearanceMm, tight };
  }

  /** Whether no mix within the box hits: by clearance and the longest mix, else half by half, longest doubt first. */
  ruleOut(whole: DoubtBox): boolean {
    const open: DoubtBox[] = [whole];
    for (let box = open.pop(); box !== undefined; box = open.pop()) {
      if (this.tried >= MOST_MIXES) return false;
      const middle = this.tryOff(box.middleMm);
      const { middleMm, halfMm } = box;
      const longest = this.tryOff(middleMm.map((at, i) => at + (halfMm[i] ?? 0)));
      if (middle.stop !== undefined || longest.stop !== undefined) return false;
      const doubt = halfMm.reduce((sum, half) => sum + half, 0);
      if (middle.clearanceMm > doubt) continue;
      open.push(...halved(box));
    }
    return true;
  }
}

function halved({ middleMm, halfMm }: DoubtBox): readonly DoubtBox[] {
  const widest = halfMm.indexOf(Math.max(...halfMm));
  const half = (halfMm[widest] ?? 0) / 2;
  return [-half, half].map((shift) => ({
    middleMm: middleMm.map((at, i) => (i === widest ? at + shift : at)),
    halfMm: halfMm.map((one, i) => (i === widest ? half : one)),
  }));
}

/** How far the leaf gets of what the bend wants. */
function shareReached({ contact, load, unload, seat }: Step): number {
  if (contact !== undefined) return contact.leafAngleRad / seat.overbendRad;
  return load === "blocked" ? 0 : unload === "blocked" ? 1 : seat.sweepRad / seat.overbendRad;
}

/** Each doubtful flat off alone, both ways. */
function alone(doubtsMm: readonly Mm[]): readonly { flat: number; offsMm: readonly (readonly Mm[])[] }[] {
  return doubtsMm.flatMap((doubt, flat) => {
    if (doubt === 0) return [];
    const off = (way: number) => doubtsMm.map((_, i) => (i === flat ? way * doubt : 0));
    return [{ flat, offsMm: [off(1), off(-1)] }];
  });
}

/** Every corner of the doubts where there are few; else the mixes to look at first. */
function cornersOf(doubtsMm: readonly Mm[]): readonly (readonly Mm[])[] {
  const doubtful = doubtsMm.flatMap((doubt, flat) => (doubt > 0 ? [flat] : []));
  if (doubtful.length > MOST_CORNERS) {
    return doubtMixes(doubtsMm).map((mix) => mix.map((way, i) => way * (doubtsMm[i] ?? 0)));
  }
  return Array.from({ length: 2 ** doubtful.length }, (_, corner) =>
    doubtsMm.map((doubt, flat) => ((corner >> doubtful.indexOf(flat)) & 1 ? doubt : -doubt)),
  );
}
