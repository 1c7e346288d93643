/**
 * Changes to a whole part's job, tried: each is read and checked again as a job of its own. Sizes are closed in on by halving
 * to a sixteenth of the stretch between one that folds and one that does not.
 */
import { checkWhole } from "../answer/wholeCheck.ts";
import { wholeJobOf } from "../jobFile/readWhole.ts";
import type { WholeFile } from "../jobFile/wholeSchema.ts";
import { type KeyChange, type WholeWay, type WholeWayKind, withKeys } from "../jobFile/wholeWay.ts";
import { writtenLength } from "../jobFile/writtenLength.ts";
import { SearchStopped, type Watch } from "../order/judge.ts";
import { MM_PER_INCH } from "../units/length.ts";
import type { Deg, Mm } from "../units/quantity.ts";
import { wholeWaySentence } from "../words/wholeWayWords.ts";

const HALVINGS = 4;

export interface Trial {
  readonly kind: WholeWayKind;
  readonly changes: readonly KeyChange[];
  /** What changes, from and to, for the sentence. */
  readonly what: string;
  readonly from?: Mm;
  readonly to?: Mm;
  readonly angles?: readonly [full: Deg, left: Deg];
  readonly fingers?: readonly Mm[];
}

export class Trials {
  private tries = 0;
  /** Sizes are offered in such steps: 0.1 mm, in inches 64ths. */
  private readonly stepMm: Mm;

  constructor(
    readonly file: WholeFile,
    private readonly watch?: Watch,
  ) {
    this.stepMm = file.units === "mm" ? 0.1 : MM_PER_INCH / 64;
  }

  /** The change as a way out, where the part folds with it. */
  tried(trial: Trial): WholeWay | undefined {
    if (this.watch?.stopped()) throw new SearchStopped();
    this.watch?.progress(1 - 1 / (1 + 0.05 * ++this.tries));
    const read = wholeJobOf(withKeys(this.file, trial.changes));
    if (!read.ok) return undefined;
    const answer = checkWhole(read.job);
    if (answer.verdict === "hits") return undefined;
    const measured = answer.order.flatMap(({ clearance }) => (clearance === null ? [] : [clearance]));
    return {
      kind: trial.kind,
      sentence: wholeWaySentence(trial, answer.verdict, this.file.units),
      verdict: answer.verdict,
      clearance: measured.length === 0 ? null : Math.min(...measured),
      changes: trial.changes,
    };
  }

  /** The size nearest to `fromMm` with which the part folds: beyond the first of some `shares` of it with which it does. */
  nearest(trialAt: (mm: Mm) => Trial, shares: readonly number[], fromMm: Mm): WholeWay | undefined {
    const toStep = shares[0]! < 1 ? Math.floor : Math.ceil;
    const at = (mm: Mm) => this.tried(trialAt(Math.max(1, toStep(mm / this.stepMm)) * this.stepMm));
    let [good, bad] = [fromMm, fromMm];
    let best: WholeWay | undefined;
    for (const share of shares) {
      [bad, good] = [good, share * fromMm];
      best = at(good);
      if (best) break;
    }
    if (!best) return undefined;
    for (let i = 0; i < HALVINGS; i++) {
      const middle = (good + bad) / 2;
      const way = at(middle);
      if (way) [best, good] = [way, middle];
      else bad = middle;
    }
    return best;
  }

  written(mm: Mm): number | string {
    return writtenLength(mm, this.file.units);
  }
}
