/**
 * Jobs for the benchmark, made by rule so that they can be of any number of bends.
 * Easy: "open", slight bends, each possible with one end only; "wide", every bend possible at any time with either end, all
 * n!·2^n orders. Hard: "hat", ribs of 60° side by side, few orders of many states, near to themselves; "wide" with a margin
 * that nothing keeps ("tight"), so that ranking has to look everywhere; "ring", bends of unlike flats that all but close to a
 * ring and have no counterparts, "pent", the same between closed ends. Impossible: "spiral", "shut", scrolls of square
 * bends; "curl", slight bends that close to a ring only at the end, so that all states are looked at in vain; "lopsided", such
 * a ring of unlike flats, no bend of which has a counterpart; "boxed", the same between closed ends.
 */

import { type Job, readJob } from "../../src/index.ts";
import { rectangle } from "../rectangle.ts";

export type Shape =
  | "hat"
  | "spiral"
  | "shut"
  | "open"
  | "wide"
  | "tight"
  | "ring"
  | "pent"
  | "curl"
  | "lopsided"
  | "boxed";

export const SHAPES: readonly (readonly [Shape, "easy" | "hard" | "impossible"])[] = [
  ["open", "easy"],
  ["wide", "easy"],
  ["hat", "hard"],
  ["tight", "hard"],
  ["ring", "hard"],
  ["pent", "hard"],
  ["spiral", "impossible"],
  ["shut", "impossible"],
  ["curl", "impossible"],
  ["lopsided", "impossible"],
  ["boxed", "impossible"],
];

const ANGLE_DEG: Readonly<Record<Shape, number>> = {
  hat: 60,
  spiral: 90,
  shut: 90,
  open: 3,
  wide: 3,
  tight: 3,
  ring: 16,
  pent: 16,
  curl: 25,
  lopsided: 25,
  boxed: 25,
};

const UNLIKE: readonly Shape[] = ["ring", "pent", "lopsided", "boxed"];
const isRing = (shape: Shape) => shape === "curl" || UNLIKE.includes(shape);
const isBoxed = (shape: Shape) => shape === "pent" || shape === "boxed";

function flatMm(shape: Shape, i: number, n: number): number {
  if (shape === "hat") return i === 0 || i === n ? 20 : i % 4 === 0 ? 50 : 24;
  if (shape === "spiral") return 14 + 5 * i;
  if (shape === "shut") return 14;
  if (shape === "curl") return 15;
  if (UNLIKE.includes(shape)) return 13 + ((7 * i) % 11) / 10;
  return shape === "open" ? 22 : 50;
}

/** A job of the given shape with n bends. */
export function benchJob(shape: Shape, n: number): Job {
  const read = readJob(benchText(shape, n));
  if (!read.ok) throw new Error(`bench job ${shape} ${n}: ${JSON.stringify(read.problems)}`);
  return read.job;
}

/** The same as the text of its file. */
export function benchText(shape: Shape, n: number): string {
  const flats = Array.from({ length: n + 1 }, (_, i) => flatMm(shape, i, n));
  const angle = ANGLE_DEG[shape];
  const bends = Array.from({ length: n }, (_, i) => {
    const down = shape === "hat" && (i % 4 === 0 || i % 4 === 3);
    return { angle, turn: down ? "down" : "up", overbend: angle };
  });
  const depth = isRing(shape) ? 12 : 45;
  const holder = isRing(shape) ? {} : { holderBack: 30, holderHeight: 50, holderDepth: 40 };
  return JSON.stringify({
    noseroom: 1,
    units: "mm",
    ...(shape === "tight" ? { margin: 8 } : {}),
    part: {
      name: `${shape} of ${n} bends`,
      material: "mild steel",
      thickness: 0.8,
      insideRadius: 1,
      kFactor: 0.44,
      dimensions: UNLIKE.includes(shape) ? "flat" : "outside",
      flats,
      bends,
    },
    brake: {
      name: "bar brake of the benchmark",
      clamp: { type: "bar", thickness: 8, depth, noseRadius: 0.8, topRadius: 0.8, ...holder },
      bed: { profile: rectangle(-160, -80, 0, 0) },
      leaf: { profile: rectangle(0, -10, 16, 0), swing: 135 },
      lift: 60,
      openEnds: !isBoxed(shape),
    },
  });
}
