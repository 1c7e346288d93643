/**
 * The switch between inch and metric: every figure keeps its length to the last bit. A bare figure is written anew in
 * the other unit where that is exact, else it keeps its own unit beside it ("10 mm"), so nothing is rounded behind the
 * user's back. Corners of profiles are rewritten to a millionth of an inch (0.00003 mm).
 */
import { type LengthUnit, MM_PER_INCH, nearestSixtyFourth, parseLength } from "../units/length.ts";

type Written = number | string;

/** Keys of a job file that hold lengths; * stands for any place of a list. */
const PART_LENGTHS = [
  "thickness",
  "insideRadius",
  "length",
  "flats.*",
  "flats.*.size",
  "overall.size",
  "bends.*.insideRadius",
  "bends.*.deduction",
  "bends.*.gap",
  "bends.*.offset",
  "doubts",
  "doubts.*",
  "cutOuts.*.across.*",
  "cutOuts.*.along.*",
  ...["width", "depth", "gap", "corners.tab", "corners.insideRadius"].map((key) => `box.${key}`),
  ...["left", "right", "front", "back"].flatMap((side) =>
    ["", ".height", ".insideRadius", ".lips.*.size", ".lips.*.insideRadius"].map(
      (key) => `box.walls.${side}${key}`,
    ),
  ),
  ...["size", "from", "to", "insideRadius", "lips.*.size", "lips.*.insideRadius"].map(
    (key) => `ends.*.${key}`,
  ),
  "spans.*.from",
  "spans.*.to",
  "pattern.bends.*.insideRadius",
];
const PART_CORNERS = ["pattern.outline.*.*", "pattern.holes.*.*.*", "pattern.bends.*.line.*.*"];
const ORDER_LENGTHS = ["fingers.*.width", "fingers.*.from", "placed"];
const BRAKE_LENGTHS = [
  "lift",
  "length",
  "frame.*.along.*",
  "setback",
  "leastGrip",
  "leastFlange",
  "doubts.setback",
  "doubts.noseRadius",
  "rated.thickness",
  "rated.length",
  ...["noseRadius", "height", "footDepth", "thickness", "depth", "topRadius", "shim"].map(
    (key) => `clamp.${key}`,
  ),
  ...["holderBack", "holderHeight", "holderDepth"].map((key) => `clamp.${key}`),
  ...["length", "fingerGap", "fingers.*.width"].map((key) => `clamp.${key}`),
];
const BRAKE_CORNERS = [
  "clamp.profiles.*.*.*",
  "bed.profile.*.*",
  "leaf.profile.*.*",
  "leaf.pivot.*",
  "frame.*.*.*",
  "frame.*.profile.*.*",
];
const under = (group: string, keys: readonly string[]) => keys.map((key) => `${group}.${key}`);

const BARE = /^[-\d.,/ ⁄]+$/;

/** A written length in the other unit. @example lengthInUnit("3/8", "in", "mm") // 9.525 */
export function lengthInUnit(value: Written, from: LengthUnit, to: LengthUnit): Written {
  if (typeof value === "string" && !BARE.test(value.trim())) return value;
  const mm = parseLength(value, from);
  // Past a kilometre it is a slip: it stays as typed, and the reader says so.
  if (mm === undefined || mm === 0 || Math.abs(mm) > 1e6) return value;
  if (to === "mm") return Number(mm.toFixed(6));
  const fraction = nearestSixtyFourth(mm);
  if (Math.abs(fraction.roundingMm) < 1e-9) {
    return /^-?\d+$/.test(fraction.words) ? Number(fraction.words) : fraction.words;
  }
  const inches = Number((mm / MM_PER_INCH).toFixed(4));
  return Math.abs(inches * MM_PER_INCH - mm) < 1e-9 ? inches : `${Number(mm.toFixed(6))} mm`;
}

function cornerInUnit(value: Written, from: LengthUnit, to: LengthUnit): Written {
  const mm = parseLength(value, from);
  if (mm === undefined || Math.abs(mm) > 1e6) return value;
  return Number((to === "mm" ? mm : mm / MM_PER_INCH).toFixed(6));
}

interface Switch {
  readonly lengths: ReadonlySet<string>;
  readonly corners: ReadonlySet<string>;
  readonly from: LengthUnit;
  readonly to: LengthUnit;
}

/** The same value with the figures at the named keys rewritten. */
function rewritten<T>(value: T, at: string, how: Switch): T {
  if (typeof value === "number" || typeof value === "string") {
    if (how.lengths.has(at)) return lengthInUnit(value, how.from, how.to) as T;
    return how.corners.has(at) ? (cornerInUnit(value, how.from, how.to) as T) : value;
  }
  if (typeof value !== "object" || value === null) return value;
  const inner = (key: string) => (at === "" ? key : `${at}.${key}`);
  if (Array.isArray(value)) return value.map((item) => rewritten(item, inner("*"), how)) as T;
  return Object.fromEntries(
    Object.entries(value).map(([key, item]) => [key, rewritten(item, inner(key), how)]),
  ) as T;
}

const JOB: Pick<Switch, "lengths" | "corners"> = {
  lengths: new Set([
    "margin",
    "finishByHand.*.filler",
    ...under("part", PART_LENGTHS),
    ...under("brake", BRAKE_LENGTHS),
    ...under("order.*", ORDER_LENGTHS),
  ]),
  corners: new Set([...under("part", PART_CORNERS), ...under("brake", BRAKE_CORNERS), "order.*.clampedAt.*"]),
};
const BRAKE: Pick<Switch, "lengths" | "corners"> = {
  lengths: new Set(BRAKE_LENGTHS),
  corners: new Set(BRAKE_CORNERS),
};

/** A job file, right or not yet, with its unit switched; part and brake are the same size as before. */
export function inUnit<F extends { readonly units: LengthUnit }>(file: F, to: LengthUnit): F {
  if (file.units === to) return file;
  return { ...rewritten(file, "", { ...JOB, from: file.units, to }), units: to };
}

/** The brake of a job file with its unit switched. */
export function brakeInUnit<B extends object>(brake: B, from: LengthUnit, to: LengthUnit): B {
  return from === to ? brake : rewritten(brake, "", { ...BRAKE, from, to });
}
