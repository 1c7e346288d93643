/**
 * A way out for a whole part in one sentence.
 */
import type { WholeWayKind } from "../jobFile/wholeWay.ts";
import type { LengthUnit } from "../units/length.ts";
import type { Deg, Mm } from "../units/quantity.ts";
import { angleWords } from "./angleWords.ts";
import { lengthWords } from "./lengthWords.ts";

interface Told {
  readonly kind: WholeWayKind;
  readonly what: string;
  readonly from?: Mm;
  readonly to?: Mm;
  readonly angles?: readonly [full: Deg, left: Deg];
}

/** @example wholeWaySentence({ kind: "lip", what: "the left wall's lip", from: 10, to: 6 }, "clear", "mm") // "Make the left wall's lip 6.00 mm in place of 10.00 mm. The part then folds." */
export function wholeWaySentence(told: Told, verdict: "clear" | "tight", units: LengthUnit): string {
  const then = verdict === "tight" ? "The part then folds, but only just." : "The part then folds.";
  return `${doWords(told, (mm) => lengthWords(mm, units))} ${then}`;
}

function doWords(
  { kind, what, from = 0, to = 0, angles: [full, left] = [0, 0] }: Told,
  say: (mm: Mm) => string,
): string {
  switch (kind) {
    case "order":
      return "Bend in another order: take order out of the job and let the search find it.";
    case "finger":
      return `Grind a finger to ${say(to)} and add it to your set.`;
    case "clampHeight":
      return `Use fingers ${say(to)} high in place of ${say(from)}.`;
    case "corners":
      return `Leave the corners ${what}.`;
    case "lipTurn":
      return `Turn ${what}.`;
    case "byHand":
      return `Leave ${what} at ${angleWords(left)}, then close it to ${angleWords(full)} by hand over a block.`;
    default:
      return `Make ${what} ${say(to)} in place of ${say(from)}.`;
  }
}
