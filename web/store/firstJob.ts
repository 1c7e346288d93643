/**
 * The worked example that a first visit opens: the narrow cable trough of the observatory roof on a 45° finger.
 * The second bend stops short, which is the point: the page then shows what would let it fold.
 */
import type { BrakeFile, ClampFile, JobFile, PartFile, Typed } from "./jobFile.ts";

/** A figure given in inches, said in the job's unit. @example lengthIn("mm", 0.375) // 9.525 */
function lengthIn(units: "mm" | "in", inches: number, words?: string): Typed {
  if (units === "in") return words ?? inches;
  return Math.round(inches * 25.4 * 1000) / 1000;
}

/** Clamps to start from, in either unit: measure yours and put your figures in. */
export function usualClamp(type: ClampFile["type"], units: "mm" | "in"): ClampFile {
  const at = (inches: number, words?: string) => lengthIn(units, inches, words);
  const holder = { holderBack: at(0.75, "3/4"), holderHeight: at(2), holderDepth: at(2) };
  if (type === "finger") {
    return {
      type,
      noseAngle: 45,
      noseRadius: at(1 / 32, "1/32"),
      height: at(1),
      footDepth: at(1.75, "1 3/4"),
      ...holder,
      holderBack: at(1.25, "1 1/4"),
    };
  }
  if (type === "bar") {
    const radius = at(1 / 32, "1/32");
    return {
      type,
      thickness: at(0.25, "1/4"),
      depth: at(1.75, "1 3/4"),
      noseRadius: radius,
      topRadius: radius,
      noseAngle: 86,
      ...holder,
    };
  }
  const profile = [
    [0, 0, at(1 / 32, "1/32")],
    [0, at(0.75, "3/4")],
    [at(-2), at(0.75, "3/4")],
    [at(-2), 0],
  ] as const;
  return { type, noseRadius: at(1 / 32, "1/32"), profiles: [profile] };
}

/** A hand leaf brake with sensible figures, marked on the page as guesses to be measured. */
export function usualBrake(units: "mm" | "in"): BrakeFile {
  const at = (inches: number) => lengthIn(units, inches);
  return {
    name: "Shop brake",
    clamp: usualClamp("finger", units),
    bed: {
      profile: [
        [at(-6), at(-3)],
        [0, at(-3)],
        [0, 0],
        [at(-6), 0],
      ],
    },
    leaf: {
      profile: [
        [0, at(-0.375)],
        [at(1), at(-0.375)],
        [at(1), 0],
        [0, 0],
      ],
      swing: 135,
      pivot: [0, 0],
    },
    lift: at(1.5),
    openEnds: true,
    setback: "auto",
  };
}

const TROUGH: PartFile = {
  name: "Cable trough",
  material: "mild steel",
  thickness: 0.032,
  insideRadius: 0.032,
  length: 12,
  dimensions: "outside",
  flats: ["1/2", "3/8", "1/2"],
  bends: [
    { angle: 90, turn: "up", overbend: 92 },
    { angle: 90, turn: "up", overbend: 92 },
  ],
};

/** The trough on the finger brake, in inches or in whole tenths of a millimetre. */
export function firstJob(units: "mm" | "in"): JobFile {
  const part: PartFile =
    units === "in"
      ? TROUGH
      : { ...TROUGH, thickness: 0.8, insideRadius: 0.8, length: 300, flats: [12.7, 9.5, 12.7] };
  return { noseroom: 1, units, part, brake: usualBrake(units), margin: lengthIn(units, 0.02) };
}
