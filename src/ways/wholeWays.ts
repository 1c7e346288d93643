/**
 * What would let a whole part fold: one change at a time, each checked again as a job of its own. Cheapest first: another
 * order, fingers and the brake, then corners and sizes of the part, last what a hand does.
 */
import type { WholeAnswer } from "../jobFile/wholeAnswer.ts";
import type { WholeJob } from "../jobFile/wholeJob.ts";
import type { WholeFile } from "../jobFile/wholeSchema.ts";
import type { KeyChange, WholeWay } from "../jobFile/wholeWay.ts";
import type { Watch } from "../order/judge.ts";
import { MM_PER_INCH, parseLength } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import { alike, type Lip, type Sized, sizesOf } from "./wholeSizes.ts";
import { type Trial, Trials } from "./wholeTrials.ts";

/** A finger that is ground so much narrower than it might be slides in. */
const GROUND_MM: Mm = 0.1;
/** A bend left this much before it meets something is left safely. */
const SHORT_DEG = 1;
/** Gaps at the corners that are tried, in mm and in 64ths of an inch. */
const GAPS = { mm: [0.5, 1, 1.5, 2, 3], in: [2, 4, 6, 8] } as const;
/** A brake so much longer than the blank has room beside it. */
const ROOM_BESIDE = 2;

/** Shares of a size that are tried before it is closed in on: most lack little. */
const SMALLER = [0.85, 0.25];
const TALLER = [1.2, 1.5, 2];

type Step = WholeAnswer["order"][number];

/** The ways out of a job that does not fold; none where it folds. */
export function wholeWays(file: WholeFile, job: WholeJob, answer: WholeAnswer, watch?: Watch): WholeWay[] {
  const blocked = answer.order.find(({ verdict }) => verdict === "hits");
  if (!blocked) return [];
  const trials = new Trials(file, watch);
  const ways: WholeWay[] = [];
  const add = (way: WholeWay | undefined): boolean => {
    if (way) ways.push(way);
    return way !== undefined;
  };
  const first = (all: readonly Trial[]) => all.some((trial) => add(trials.tried(trial)));
  if (file.order) first([{ kind: "order", changes: [{ path: ["order"], to: null }], what: "" }]);
  first(groundFinger(trials, blocked));
  first(moreBare(trials, blocked));
  add(taller(trials));
  const [ends, gaps] = [brakeEnd(trials, job, answer), cornerGaps(trials)];
  const found = [ends, gaps].map(first);
  for (const corner of corners(file)) first([corner]);
  const { lips, walls } = sizesOf(file);
  const before = ways.length;
  for (const lip of lips) {
    first([{ kind: "lipTurn", changes: [lip.turn], what: `${lip.what} ${lip.turn.to}` }]);
    add(smaller(trials, "lip", lip));
  }
  for (const wall of walls) add(smaller(trials, "wall", wall));
  // Where no one of them helps, all that are alike may.
  if (ways.length === before) {
    for (const all of alike(lips, "all lips")) add(smaller(trials, "lip", all));
    for (const all of alike(walls, "all walls")) add(smaller(trials, "wall", all));
  }
  first([...leftOpen(file, blocked), ...lipsLeftOpen(file, lips, answer)]);
  // Tabs at the corners often want both.
  if (!found.includes(true)) {
    first(ends.flatMap((end) => gaps.map((gap) => ({ ...gap, ...both(end, gap) }))));
  }
  return ways;
}

function both(end: Trial, gap: Trial): Pick<Trial, "kind" | "changes"> {
  return { kind: "brakeEndAndGap", changes: [...end.changes, ...gap.changes] };
}

function smaller(trials: Trials, kind: "lip" | "wall", { paths, mm, what }: Sized): WholeWay | undefined {
  const trialAt = (to: Mm): Trial => {
    return { kind, changes: paths.map((path) => ({ path, to: trials.written(to) })), what, from: mm, to };
  };
  return trials.nearest(trialAt, SMALLER, mm);
}

/** The finger that is missing, owned. */
function groundFinger(trials: Trials, { missing }: Step): Trial[] {
  const { fingers } = trials.file.brake.clamp;
  if (!missing || !fingers) return [];
  const to = Math.max(missing.least, missing.most - GROUND_MM);
  const own = [...fingers, { width: trials.written(to), count: 1 }];
  return [{ kind: "finger", changes: [{ path: ["brake", "clamp", "fingers"], to: own }], what: "", to }];
}

/** The fingers that are there, with a little more of the bend under none. */
function moreBare(trials: Trials, { missing }: Step): Trial[] {
  if (!missing?.instead) return [];
  const { fingers, bare } = missing.instead;
  const to = Math.ceil(bare * 100) / 100;
  const path = ["brake", "clamp", "fingerGap"];
  return [{ kind: "fingerGap", changes: [{ path, to: trials.written(to) }], what: "", to, fingers }];
}

/** Fingers that reach farther down from the holder. */
function taller(trials: Trials): WholeWay | undefined {
  const { clamp } = trials.file.brake;
  const from = clamp.type === "finger" ? parseLength(clamp.height, trials.file.units) : undefined;
  if (from === undefined) return undefined;
  const path = ["brake", "clamp", "height"];
  const trialAt = (to: Mm): Trial => {
    return { kind: "clampHeight", changes: [{ path, to: trials.written(to) }], what: "", from, to };
  };
  return trials.nearest(trialAt, TALLER, from);
}

/** Sheet beside a bend hangs past the end of a brake whose length is known. */
function brakeEnd(trials: Trials, { brake }: WholeJob, { blank }: WholeAnswer): Trial[] {
  if (trials.file.brake.length !== undefined || !brake.openEnds) return [];
  const to = ROOM_BESIDE * Math.max(...blank.outline.flat());
  return [
    { kind: "brakeEnd", changes: [{ path: ["brake", "length"], to: trials.written(to) }], what: "", to },
  ];
}

/** Walls, tabs and mitred lips that stand farther off each other: a bend goes past its angle before it springs back. */
function cornerGaps(trials: Trials): Trial[] {
  const { part, units } = trials.file;
  if (!part.box) return [];
  const had = part.box.gap === undefined ? 0 : (parseLength(part.box.gap, units) ?? 0);
  return GAPS[units]
    .map((steps) => (units === "mm" ? steps : (steps * MM_PER_INCH) / 64))
    .filter((to) => to > had)
    .map((to): Trial => {
      const changes = [{ path: ["part", "box", "gap"], to: trials.written(to) }];
      return { kind: "gap", changes, what: "", to };
    });
}

/** Other ways to make the corners. */
function corners({ part: { box } }: WholeFile): Trial[] {
  if (!box || box.corners === undefined || box.corners === "open") return [];
  const trial = (to: unknown, what: string): Trial => {
    return { kind: "corners", changes: [{ path: ["part", "box", "corners"], to }], what };
  };
  const open = trial("open", "Leave the corners open.");
  if (box.corners === "meet") return [open];
  const on = box.corners.on === "outside" ? "inside" : "outside";
  return [
    trial({ ...box.corners, on }, `Bend the tabs to the ${on} of their walls.`),
    trial("meet", "Let the walls meet without tabs."),
    open,
  ];
}

/** The bend that meets something left open, to be closed over a block. */
function leftOpen(file: WholeFile, { bends, reached, overbend, angle }: Step): Trial[] {
  const [bend] = bends;
  const to = Math.floor(((reached - SHORT_DEG) * angle) / overbend);
  if (bends.length !== 1 || !(to > 0) || to >= angle) return [];
  return [
    { kind: "byHand", changes: [closedByHand(file, [bend!], to)], what: `bend ${bend}`, angles: [angle, to] },
  ];
}

/** All lips begun only, to be closed last. */
function lipsLeftOpen(file: WholeFile, lips: readonly Lip[], { order }: WholeAnswer): Trial[] {
  const bends = lips.map(({ bend }) => bend);
  const angles = order.filter((step) => step.bends.some((bend) => bends.includes(bend)));
  const angle = Math.min(...angles.map((step) => step.angle));
  if (!Number.isFinite(angle)) return [];
  const to = Math.floor(angle / 2);
  return [
    { kind: "byHand", changes: [closedByHand(file, bends, to)], what: "all lips", angles: [angle, to] },
  ];
}

function closedByHand(file: WholeFile, bends: readonly number[], to: number): KeyChange {
  const others = (file.finishByHand ?? []).filter((one) => !bends.includes(one.bend));
  return { path: ["finishByHand"], to: [...others, ...bends.map((bend) => ({ bend, to }))] };
}
