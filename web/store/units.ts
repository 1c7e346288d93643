/**
 * The switch between inch and metric: every figure keeps its length to the last bit. A bare figure is written anew
 * in the other unit where that is exact, else it keeps its own unit beside it ("10 mm"), so nothing is rounded
 * behind the user's back. Corners of profiles are rewritten to a millionth of an inch (0.00003 mm).
 */
import { type LengthUnit, MM_PER_INCH, nearestSixtyFourth, parseLength } from "../../src/units/length.ts";
import type { BrakeFile, ClampFile, JobFile, Profile, SpanFile, Typed, Vertex } from "./jobFile.ts";

const BARE = /^[-\d./ ⁄]+$/;

/** A typed length in the other unit. @example lengthInUnit("3/8", "in", "mm") // 9.525 */
export function lengthInUnit(value: Typed, from: LengthUnit, to: LengthUnit): Typed {
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

function corner(value: Typed, from: LengthUnit, to: LengthUnit): Typed {
  const mm = parseLength(value, from);
  if (mm === undefined || Math.abs(mm) > 1e6) return value;
  return Number((to === "mm" ? mm : mm / MM_PER_INCH).toFixed(6));
}

const isList = (value: Typed | readonly Typed[]): value is readonly Typed[] => Array.isArray(value);

/** The file with its unit switched; the part and the brake are the same size as before. */
export function inUnit(file: JobFile, to: LengthUnit): JobFile {
  const from = file.units;
  if (from === to) return file;
  const one = (value: Typed) => lengthInUnit(value, from, to);
  const profile = (p: Profile): Profile =>
    p.map((v) => v.map((x) => corner(x, from, to)) as unknown as Vertex);
  const some = <T extends object>(bag: T, keys: readonly (keyof T)[]): T => {
    const copy = { ...bag };
    for (const key of keys) {
      const value = copy[key];
      if (typeof value === "number" || typeof value === "string") copy[key] = one(value) as T[keyof T];
    }
    return copy;
  };
  const part = some(file.part, ["thickness", "insideRadius", "length"]);
  const lengths: (keyof ClampFile)[] = [
    "noseRadius",
    "height",
    "footDepth",
    "thickness",
    "depth",
    "topRadius",
    "holderBack",
    "holderHeight",
    "holderDepth",
    "shim",
  ];
  const clamp = some(file.brake.clamp, lengths);
  const { setback, frame, rated, leaf } = file.brake;
  const brake: BrakeFile = {
    ...some(file.brake, ["lift"]),
    clamp: clamp.profiles ? { ...clamp, profiles: clamp.profiles.map(profile) } : clamp,
    bed: { profile: profile(file.brake.bed.profile) },
    leaf: {
      ...leaf,
      profile: profile(leaf.profile),
      ...(leaf.pivot ? { pivot: leaf.pivot.map((x) => corner(x, from, to)) as unknown as Vertex } : {}),
    },
    ...(frame
      ? {
          frame: frame.map((piece) =>
            "name" in piece ? { ...piece, profile: profile(piece.profile) } : profile(piece),
          ),
        }
      : {}),
    ...(setback === undefined || setback === "auto" || setback === "one" ? {} : { setback: one(setback) }),
    ...(rated ? { rated: some(rated, ["thickness", "length"]) } : {}),
  };
  const { doubts, cutOuts } = file.part;
  const span = (places: SpanFile): SpanFile => [one(places[0]), one(places[1])];
  return {
    ...some(file, ["margin"]),
    units: to,
    part: {
      ...part,
      ...(doubts === undefined ? {} : { doubts: isList(doubts) ? doubts.map(one) : one(doubts) }),
      ...(cutOuts && { cutOuts: cutOuts.map((c) => ({ across: span(c.across), along: span(c.along) })) }),
      flats: file.part.flats.map(one),
      bends: file.part.bends.map((bend) => some(bend, ["insideRadius"])),
    },
    brake,
  };
}
