/**
 * The planned narrow brake as a job file has it: stock sizes as they are called in that file's unit, rated for the parts
 * that it was designed for. Once it is made, its measured sizes take the place of the planned ones in the file.
 */

import type { JobFile } from "../jobFile/schema.ts";
import { writtenAtLeast, writtenLength } from "../jobFile/writtenLength.ts";
import type { LengthUnit } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import { madeBrake } from "./madeBrake.ts";
import type { NarrowBrake } from "./narrowBrake.ts";
import type { SheetToFold } from "./requirements.ts";

/**
 * The brake of a design that has a plan.
 * @throws RangeError where there is no plan
 */
export function madeBrakeFile(design: NarrowBrake, units: LengthUnit): JobFile["brake"] {
  const { clamp, bed, leaf, ...made } = madeBrake(design);
  const { parts } = design.requirements;
  // Rated for what it was designed for: the sheet that takes the most force, the longest part.
  const force = ({ metal, thicknessMm }: SheetToFold) => metal.yieldMpa * thicknessMm ** 2;
  const strongest = parts.reduce((most, part) => (force(part) > force(most) ? part : most));
  const inUnit = (lengthMm: Mm) => writtenLength(lengthMm, units);
  return {
    name: made.name,
    clamp: {
      type: "bar",
      thickness: inUnit(clamp.thickness),
      depth: inUnit(clamp.depth),
      noseRadius: inUnit(clamp.noseRadius),
      noseAngle: clamp.noseAngle,
      holderBack: inUnit(clamp.holderBack),
      holderHeight: inUnit(clamp.holderHeight),
      holderDepth: inUnit(clamp.holderDepth),
    },
    bed: { profile: bed.profile.map((corner) => corner.map(inUnit)) },
    leaf: { profile: leaf.profile.map((corner) => corner.map(inUnit)), swing: leaf.swing },
    lift: inUnit(made.lift),
    openEnds: made.openEnds,
    setback: made.setback,
    rated: {
      thickness: writtenAtLeast(strongest.thicknessMm, units),
      length: writtenAtLeast(Math.max(...parts.map(({ lengthMm }) => lengthMm)), units),
      yield: strongest.metal.yieldMpa,
    },
  };
}
