/**
 * What a brake has along its length: fingers of the widths that the shop owns, how much may stay bare between them, how
 * long clamp and brake are, and how much sheet they need to hold and to catch.
 */
import type { Along } from "../pattern/tooling.ts";
import { lengthAt, type Reading } from "./reading.ts";
import type { JobFile } from "./schema.ts";

/** The longest bare length that still folds straight: common practice, no source. */
const FINGER_GAP_MM = 3;

/** The brake's keys along w; problems are noted. */
export function readAlong(reading: Reading, { clamp, length }: JobFile["brake"]): Along {
  const at = (path: string, written: number | string, sign: "above0" | "atLeast0") =>
    lengthAt(reading, path, written, sign);
  if (clamp.fingers !== undefined && clamp.length !== undefined) {
    reading.problems.push({
      path: "brake.clamp.length",
      found: "a length beside fingers",
      allowed: "left out: fingers stand where they are put",
    });
  }
  return {
    ...(clamp.fingers && {
      fingers: clamp.fingers.map(({ width, count }, i) => ({
        widthMm: at(`brake.clamp.fingers[${i}].width`, width, "above0"),
        count,
      })),
    }),
    fingerGapMm:
      clamp.fingerGap === undefined
        ? FINGER_GAP_MM
        : at("brake.clamp.fingerGap", clamp.fingerGap, "atLeast0"),
    ...(clamp.length !== undefined && { clampLengthMm: at("brake.clamp.length", clamp.length, "above0") }),
    ...(length !== undefined && { brakeLengthMm: at("brake.length", length, "above0") }),
  };
}
