/**
 * A way out for a whole part in one sentence.
 */
import type { WholeWayKind } from "../jobFile/wholeWay.ts";
import type { LengthUnit } from "../units/length.ts";
import type { Deg, Mm } from "../units/quantity.ts";
import { angleWords } from "./angleWords.ts";
import { lengthWords } from "./lengthWords.ts";

/** Where nothing that was tried helps. */
export const NO_WHOLE_WAY =
  "No single change of its sizes, corners or fingers lets it fold. Change two together, such as a lower wall and a shorter lip, or make it of two parts and rivet them.";

const AT_BRAKE_END =
  "Bend at an end of the brake, where sheet beside the bend hangs past the leaf: write your brake's length as brake.length";

interface Told {
  readonly kind: WholeWayKind;
  readonly what: string;
  readonly from?: Mm;
  readonly to?: Mm;
  readonly angles?: readonly [full: Deg, left: Deg];
  readonly fingers?: readonly Mm[];
}

/** @example wholeWaySentence({ kind: "lip", what: "the left wall's lip", from: 10, to: 6 }, "clear", "mm") // "Make the left wall's lip 6.00 mm in place of 10.00 mm. The part then folds." */
export function wholeWaySentence(told: Told, verdict: "clear" | "tight", units: LengthUnit): string {
  const then = verdict === "tight" ? "The part then folds, but only just." : "The part then folds.";
  return `${doWords(told, (mm) => lengthWords(mm, units))} ${then}`;
}

function doWords(
  { kind, what, from = 0, to = 0, angles: [full, left] = [0, 0], fingers = [] }: Told,
  say: (mm: Mm) => string,
): string {
  switch (kind) {
    case "order":
      return "Bend in another order: take order out of the job and let the search find it.";
    case "finger":
      return `Grind a finger to ${say(to)} and add it to your set.`;
    case "fingerGap":
      return `Use fingers of ${fingers.map(say).join(" and ")} and let ${say(to)} of the bend stay bare.`;
    case "gap":
      return `Leave a gap of ${say(to)} at the corners.`;
    case "brakeEnd":
      return `${AT_BRAKE_END}.`;
    case "brakeEndAndGap":
      return `Leave a gap of ${say(to)} at the corners. ${AT_BRAKE_END}.`;
    case "clampHeight":
      return `Use fingers ${say(to)} high in place of ${say(from)}.`;
    case "corners":
      return what;
    case "lipTurn":
      return `Turn ${what}.`;
    case "byHand":
      return `Leave ${what} at ${angleWords(left)}, then close it to ${angleWords(full)} by hand over a block.`;
    default:
      return `Make ${what} ${say(to)} in place of ${say(from)}.`;
  }
}
