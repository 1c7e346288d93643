/**
 * What misread sizes of a whole part do to it, in sentences.
 */
import type { WholeDoubts } from "../jobFile/wholeAnswer.ts";
import type { LengthUnit } from "../units/length.ts";
import { listed } from "./doubtWords.ts";
import { lengthWords } from "./lengthWords.ts";
import { numbersWords } from "./wholeWords.ts";

/** The finding first. @example "With the left wall 0.25 mm larger than read, bend 3 does not fold." */
export function wholeDoubtSentences(
  { asRead, by, worst, deciding, mixesTried }: WholeDoubts,
  units: LengthUnit,
): string[] {
  const off = lengthWords(by, units);
  const tried = `We tried ${mixesTried} mixes in the order found: each size alone ${off} larger and smaller, and all together. Mixes between them were not looked at.`;
  const again =
    deciding.length === 0
      ? []
      : [
          `Measure ${listed(deciding)} again: ${deciding.length === 1 ? "it" : "each of them"} alone decides.`,
        ];
  if (asRead === "hits") return ["As read it does not fold.", ...again, tried];
  if (!worst) return [`It folds in all ${mixesTried} mixes with sizes off by ${off}.`, tried];
  const which = worst.sizes.length === 1 ? worst.sizes[0]! : "all sizes";
  const what = `With ${which} ${lengthWords(Math.abs(worst.off), units)} ${worst.off > 0 ? "larger" : "smaller"} than read`;
  const fails =
    worst.bends.length === 0
      ? "there is no such part"
      : `bend${worst.bends.length === 1 ? "" : "s"} ${numbersWords(worst.bends)} ${worst.bends.length === 1 ? "does" : "do"} not fold`;
  return [`${what}, ${fails}.`, ...again, tried];
}
