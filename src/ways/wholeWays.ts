/**
 * What would let a whole part fold: one change at a time, each checked again as a job of its own. Sizes are closed in on by
 * halving to a sixteenth of what they can give; the largest that folds is offered. Cheapest first: another order, fingers,
 * then the part.
 */
import { checkWhole } from "../answer/wholeCheck.ts";
import { wholeJobOf } from "../jobFile/readWhole.ts";
import type { WholeAnswer } from "../jobFile/wholeAnswer.ts";
import type { WholeJob } from "../jobFile/wholeJob.ts";
import type { WholeFile } from "../jobFile/wholeSchema.ts";
import { type KeyChange, type WholeWay, type WholeWayKind, withKeys } from "../jobFile/wholeWay.ts";
import { writtenLength } from "../jobFile/writtenLength.ts";
import type { Watch } from "../order/judge.ts";
import { SearchStopped } from "../order/judge.ts";
import { MM_PER_INCH, parseLength } from "../units/length.ts";
import type { Deg, Mm } from "../units/quantity.ts";
import { wholeWaySentence } from "../words/wholeWayWords.ts";

/** Halvings on the way to the largest size that folds. */
const HALVINGS = 4;
/** Sizes are offered in such steps, in inches in 64ths. */
const FINE_MM: Mm = 0.1;
/** A finger that is ground so much narrower than it might be slides in. */
const GROUND_MM: Mm = 0.1;
/** A bend left this much before it meets something is left safely. */
const SHORT_DEG = 1;

interface Trial {
  readonly kind: WholeWayKind;
  readonly changes: readonly KeyChange[];
  /** What changes, from and to, for the sentence. */
  readonly what: string;
  readonly from?: Mm;
  readonly to?: Mm;
  readonly angles?: readonly [full: Deg, left: Deg];
}

/** The ways out of a job that does not fold; none where it folds. */
export function wholeWays(file: WholeFile, job: WholeJob, answer: WholeAnswer, watch?: Watch): WholeWay[] {
  if (answer.verdict !== "hits") return [];
  const search = new Search(file, job, watch);
  const blocked = answer.order.find(({ verdict }) => verdict === "hits")!;
  const ways: WholeWay[] = [];
  const add = (way: WholeWay | undefined): boolean => {
    if (way) ways.push(way);
    return way !== undefined;
  };
  if (file.order) add(search.tried({ kind: "order", changes: [{ path: ["order"], to: null }], what: "" }));
  add(search.finger(blocked));
  add(search.taller());
  for (const corner of search.corners()) add(search.tried(corner));
  const [lips, walls] = [search.lips(), search.walls()];
  const before = ways.length;
  for (const lip of lips) {
    add(search.turned(lip));
    add(search.largest("lip", lip));
  }
  for (const wall of walls) add(search.largest("wall", wall));
  // Where no one of them helps, all that are alike may.
  if (ways.length === before) {
    for (const all of alike(lips, "all lips")) add(search.largest("lip", all));
    for (const all of alike(walls, "all walls")) add(search.largest("wall", all));
  }
  add(search.byHand(blocked));
  return ways;
}

interface Sized {
  /** Keys that get the size: of one lip or wall, or of all that are alike. */
  readonly paths: readonly KeyChange["path"][];
  readonly mm: Mm;
  readonly what: string;
}

/** All of one size as one, where they are all. */
function alike(all: readonly Sized[], what: string): Sized[] {
  const [first, second] = all;
  if (!first || !second || all.some(({ mm }) => mm !== first.mm)) return [];
  return [{ paths: all.flatMap(({ paths }) => paths), mm: first.mm, what }];
}

interface Lip extends Sized {
  readonly turn: { readonly path: readonly (string | number)[]; readonly to: string };
}

class Search {
  private tries = 0;

  constructor(
    private readonly file: WholeFile,
    private readonly job: WholeJob,
    private readonly watch?: Watch,
  ) {}

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
      sentence: wholeWaySentence(trial, answer.verdict, this.job.units),
      verdict: answer.verdict,
      clearance: measured.length === 0 ? null : Math.min(...measured),
      changes: trial.changes,
    };
  }

  /** The largest size under what is written with which the part folds. */
  largest(kind: "lip" | "wall", { paths, mm, what }: Sized): WholeWay | undefined {
    const step = this.job.units === "mm" ? FINE_MM : MM_PER_INCH / 64;
    const at = (size: Mm) => {
      const to = Math.max(step, Math.floor(size / step) * step);
      return this.tried({
        kind,
        changes: paths.map((path) => ({ path, to: this.written(to) })),
        what,
        from: mm,
        to,
      });
    };
    let [low, high] = [mm / 4, mm];
    let best = at(low);
    if (!best) return undefined;
    for (let i = 0; i < HALVINGS; i++) {
      const middle = (low + high) / 2;
      const way = at(middle);
      if (way) [best, low] = [way, middle];
      else high = middle;
    }
    return best;
  }

  turned({ turn, what }: Lip): WholeWay | undefined {
    return this.tried({ kind: "lipTurn", changes: [turn], what: `${what} ${turn.to}` });
  }

  /** The finger that is missing, owned. */
  finger({ missing }: WholeAnswer["order"][number]): WholeWay | undefined {
    const { fingers } = this.file.brake.clamp;
    if (!missing || !fingers) return undefined;
    const to = Math.max(missing.least, missing.most - GROUND_MM);
    const changes = [
      { path: ["brake", "clamp", "fingers"], to: [...fingers, { width: this.written(to), count: 1 }] },
    ];
    return this.tried({ kind: "finger", changes, what: "", to });
  }

  /** Fingers that reach farther down from the holder. */
  taller(): WholeWay | undefined {
    const { clamp } = this.file.brake;
    if (clamp.type !== "finger") return undefined;
    const mm = this.mm(clamp.height);
    if (mm === undefined) return undefined;
    const path = ["brake", "clamp", "height"];
    for (const more of [0.25, 0.5, 1]) {
      const to = mm * (1 + more);
      const way = this.tried({
        kind: "clampHeight",
        changes: [{ path, to: this.written(to) }],
        what: "",
        from: mm,
        to,
      });
      if (way) return way;
    }
    return undefined;
  }

  corners(): Trial[] {
    const { box } = this.file.part;
    if (!box || box.corners === undefined || box.corners === "open") return [];
    return [{ kind: "corners", changes: [{ path: ["part", "box", "corners"], to: "open" }], what: "open" }];
  }

  lips(): Lip[] {
    const { box, ends = [] } = this.file.part;
    const lips: Lip[] = [];
    for (const side of ["left", "right", "front", "back"] as const) {
      const wall = box?.walls[side];
      if (typeof wall !== "object") continue;
      for (const [i, { size, turn }] of (wall.lips ?? []).entries()) {
        const path = ["part", "box", "walls", side, "lips", i];
        const mm = this.mm(size);
        if (mm === undefined) continue;
        const other = turn === "out" ? "in" : "out";
        lips.push({
          paths: [[...path, "size"]],
          mm,
          what: `the ${side} wall's lip`,
          turn: { path: [...path, "turn"], to: other },
        });
      }
    }
    for (const [e, { lips: own = [] }] of ends.entries()) {
      for (const [i, { size, turn }] of own.entries()) {
        const path = ["part", "ends", e, "lips", i];
        const mm = this.mm(size);
        if (mm === undefined) continue;
        const other = turn === "up" ? "down" : "up";
        lips.push({
          paths: [[...path, "size"]],
          mm,
          what: `the lip of end ${e + 1}`,
          turn: { path: [...path, "turn"], to: other },
        });
      }
    }
    return lips;
  }

  walls(): Sized[] {
    const { box, ends = [] } = this.file.part;
    const walls = (["left", "right", "front", "back"] as const).flatMap((side): Sized[] => {
      const wall = box?.walls[side];
      if (wall === undefined) return [];
      const path = ["part", "box", "walls", side, ...(typeof wall === "object" ? ["height"] : [])];
      const mm = this.mm(typeof wall === "object" ? wall.height : wall);
      return mm === undefined ? [] : [{ paths: [path], mm, what: `the ${side} wall` }];
    });
    const closed = ends.flatMap(({ size }, e): Sized[] => {
      const mm = this.mm(size);
      return mm === undefined ? [] : [{ paths: [["part", "ends", e, "size"]], mm, what: `end ${e + 1}` }];
    });
    return [...walls, ...closed];
  }

  /** The bend that meets something left open, to be closed over a block. */
  byHand({ bends, reached, overbend, angle }: WholeAnswer["order"][number]): WholeWay | undefined {
    const [bend] = bends;
    const to = Math.floor(((reached - SHORT_DEG) * angle) / overbend);
    if (bends.length !== 1 || !(to > 0) || to >= angle) return undefined;
    const others = (this.file.finishByHand ?? []).filter((one) => one.bend !== bend);
    const changes = [{ path: ["finishByHand"], to: [...others, { bend, to }] }];
    return this.tried({ kind: "byHand", changes, what: `bend ${bend}`, angles: [angle, to] });
  }

  private written(mm: Mm): number | string {
    return writtenLength(mm, this.job.units);
  }

  private mm(written: number | string): Mm | undefined {
    return parseLength(written, this.job.units);
  }
}
