/**
 * What doubtful readings of a copied part do to the answer: clear only where every mix of the doubts folds in the order
 * at hand. A length that is off by d moves everything beyond it by d, so a clearance shrinks by no more than all doubts
 * together; what a clearance does not measure, the flat on the leaf against the brake, only gets worse as it gets longer.
 * Getting in and out is proved for a whole box of mixes at once (contact/alwaysHandled.ts). A box in which that, or the
 * clearance, does not hold is halved; what is still open after so many mixes is left open, and the answer says so.
 */

import { alwaysHandled } from "../contact/alwaysHandled.ts";
import { Machine } from "../contact/machine.ts";
import { OverRange, type RangedStep } from "../contact/overRange.ts";
import type { Step } from "../contact/step.ts";
import type { DoubtsAnswer } from "../jobFile/answer.ts";
import type { Job, OrderStep } from "../jobFile/job.ts";
import { stagesOf } from "../motion/stages.ts";
import { variantsOf } from "../motion/variants.ts";
import type { Part } from "../part/part.ts";
import { doubtMixes } from "../part/sample.ts";
import type { Mm } from "../units/quantity.ts";

/** Up to so many doubtful flats every corner is tried, 2^n of them. */
const MOST_CORNERS = 6;
/** So many mixes are tried to rule out a hit before it is left open; fewer of an order so long that it would take seconds. */
const MOST_MIXES = 500;
const MOST_STEPS = 4000;

/** Far less than any doubt, and far more than by what flats in one plane may differ. */
const ASIDE_MM: Mm = 0.001;
/** Multiples of it, whole turns left out, never repeat. */
const GOLDEN = 0.618034;

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
export function judgeDoubts(job: Job, order: readonly OrderStep[], doubtsMm: readonly Mm[]): DoubtsAnswer {
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
  const found = { deciding: deciding.map(({ flat }) => flat + 1), proved: true };
  if (asRead.stop !== undefined) {
    const worst = { flats: asRead.offMm, bend: asRead.stop.bend + 1 };
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
  const worst = { flats: offMm, bend: (stop?.bend ?? 0) + 1 };
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
  private readonly order: readonly OrderStep[];
  /** Whether the order begins a bend and finishes it later. */
  private readonly begins: boolean;

  constructor(
    private readonly job: Job,
    order: readonly OrderStep[],
  ) {
    // A hem is folded as far as the leaf gets with the flats as they are then.
    this.order = order.map(({ foldDeg: _, ...step }) => step);
    this.machine = new Machine(job.brake, job.part.thicknessMm);
    this.begins = order.some(({ toDeg }) => toDeg !== undefined);
  }

  tryOff(offMm: readonly Mm[]): Trial {
    this.tried += 1;
    const trial = this.trialOf(offMm);
    const share = trial.stop?.share ?? Number.POSITIVE_INFINITY;
    if (trial.stop && share < (this.worst?.stop?.share ?? Number.POSITIVE_INFINITY)) this.worst = trial;
    return trial;
  }

  private trialOf(offMm: readonly Mm[]): Trial {
    const judged = this.judged(offMm);
    if (judged === undefined) {
      const bend = this.order.find(({ toDeg }) => toDeg !== undefined)?.bend ?? 0;
      return { offMm, stop: { bend, share: 0 }, clearanceMm: 0, tight: true };
    }
    let clearanceMm: Mm = Number.POSITIVE_INFINITY;
    let tight = false;
    for (const { verdict, leastMm, failing, likely } of judged) {
      clearanceMm = Math.min(clearanceMm, leastMm ?? Number.POSITIVE_INFINITY);
      tight ||= verdict === "tight";
      if (verdict !== "hits") continue;
      const step = failing?.step ?? likely;
      return { offMm, stop: { bend: step.seat.bend, share: shareReached(step) }, clearanceMm: 0, tight };
    }
    return { offMm, stop: undefined, clearanceMm, tight };
  }

  /** The order judged with the flats off; undefined where a bend that is begun would eat a whole flat. */
  private judged(offMm: readonly Mm[]): readonly RangedStep[] | undefined {
    const { brake, marginMm } = this.job;
    return unlessEaten(() =>
      new OverRange(this.partOff(offMm), brake, marginMm, this.machine).judge(this.order),
    );
  }

  private partOff(offMm: readonly Mm[]): Part {
    const { part } = this.job;
    return { ...part, flatsMm: part.flatsMm.map((flat, i) => flat + (offMm[i] ?? 0)) };
  }

  /** Whether no mix within the box hits: proved for the whole of it, else half by half, longest doubt first. */
  ruleOut(whole: DoubtBox): boolean {
    const open: DoubtBox[] = [whole];
    for (let box = open.pop(); box !== undefined; box = open.pop()) {
      if (this.tried >= Math.min(MOST_MIXES, MOST_STEPS / this.order.length)) return false;
      const { middleMm, halfMm } = box;
      const asideMm = aside(halfMm);
      const middle = this.tryOff(middleMm.map((at, i) => at + (asideMm[i] ?? 0)));
      const end = (way: 1 | -1) => this.tryOff(middleMm.map((at, i) => at + way * (halfMm[i] ?? 0)));
      // The longest mix for the flat on the leaf; the shortest where a bend that is begun eats into a flat.
      const tried = [middle, end(1), ...(this.begins ? [end(-1)] : [])];
      if (tried.some(({ stop }) => stop !== undefined)) return false;
      const doubt = sum(halfMm);
      if (doubt === 0 || (middle.clearanceMm > doubt + sum(asideMm) && this.alwaysHandled(box))) continue;
      open.push(...halved(box));
    }
    return true;
  }

  private alwaysHandled({ middleMm, halfMm }: DoubtBox): boolean {
    return variantsOf(this.partOff(middleMm), this.job.brake).every(({ part, brake }) => {
      const machine = brake === this.job.brake ? this.machine : new Machine(brake, part.thicknessMm);
      const stages = unlessEaten(() => stagesOf(part, brake, this.order)) ?? [];
      return stages.every((stage) => alwaysHandled(stage, halfMm, machine));
    });
  }
}

/** Undefined where a bend that is begun would eat a whole flat. */
function unlessEaten<T>(judged: () => T): T | undefined {
  try {
    return judged();
  } catch (fault) {
    if (fault instanceof RangeError) return undefined;
    throw fault;
  }
}

/**
 * A little off the middle of a box, differently for each flat. Flats that lie in one plane beyond a formed bend are left
 * out of the clearance as lying on leaf or bed; aside of the middle they do so only where they do in every mix.
 */
function aside(halfMm: readonly Mm[]): readonly Mm[] {
  return halfMm.map((half, i) => (0.3 + 0.5 * ((i * GOLDEN) % 1)) * Math.min(ASIDE_MM, half));
}

function sum(lengthsMm: readonly Mm[]): Mm {
  return lengthsMm.reduce((total, length) => total + length, 0);
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
