/**
 * What a foreman says to a brake as it is described: possible, but probably not what was meant.
 * All of it common practice, no source; each remark is one sentence, lengths in the reader's unit.
 */
import type { BrakeRemark } from "../brake/brakeRemarks.ts";
import { formatLength, type LengthUnit } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";

/** @example brakeRemarkWords({ kind: "shortSwing", swingDeg: 80 }, "in") // "The leaf swings to 80° only: no square bend is possible on this brake." */
export function brakeRemarkWords(remark: BrakeRemark, units: LengthUnit): string {
  const say = (mm: Mm) => `${formatLength(mm, units)} ${units}`;
  switch (remark.kind) {
    case "shortLift":
      return `The clamp lifts ${say(remark.mm)}, no more than the sheet is thick: check how far it opens.`;
    case "shortSwing":
      return `The leaf swings to ${remark.swingDeg}° only: no square bend is possible on this brake.`;
    case "farPivot":
      return `The leaf's pivot stands ${say(remark.mm)} from the bed's front top edge: check that it is measured from there.`;
    case "lowLeaf":
      return `The leaf's face lies ${say(remark.mm)} below the bed at rest: the sheet is not held until the leaf has come up.`;
    case "leafInBed":
      return "Leaf at rest and bed stand in one place: check their profiles.";
    case "leafInFrame":
      return `Leaf at rest and frame piece ${remark.piece} stand in one place: check their profiles.`;
    case "deepClamp":
      return `The clamp reaches ${say(remark.mm)} past the back of the bed: check both depths.`;
    case "noseRadius": {
      const drawn = say(remark.drawnMm);
      return `The profile's nose is rounded with ${drawn}, and noseRadius says ${say(remark.givenMm)}: the answer takes the profile's ${drawn}. Measure the nose and mend the one that is wrong.`;
    }
    case "foremost": {
      const way = remark.mm > 0 ? "back" : "forward";
      return `The foremost point of the clamp's profile is drawn at x = ${say(remark.mm)}: the answer moves the whole clamp ${say(Math.abs(remark.mm))} ${way}, to x = 0.`;
    }
    case "overhang":
      return `The holder overhangs the front of the ${remark.clamp} by ${say(remark.mm)}: a return flange meets it early.`;
  }
}
