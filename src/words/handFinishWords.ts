/**
 * What a hand still has to do once the part is off the brake, in the foreman's words.
 */
import type { Answer, HandFinishAnswer } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";
import { angleWords } from "./angleWords.ts";
import { lengthIn } from "./wayWords.ts";

/** @example handFinishWords({ bend: 2, to: 73.4, angle: 90, filler: 7.9375 }, "in") // "Close the last 16.6° of bend 2 by hand, from 73.4° to 90°, over a filler bar 5/16 in thick." */
export function handFinishWords({ bend, to, angle, filler }: HandFinishAnswer, units: Job["units"]): string {
  const over =
    filler === null ? "over a straight edge" : `over a filler bar ${lengthIn(filler, units)} thick`;
  return `Close the last ${angleWords(angle - to)} of bend ${bend} by hand, from ${angleWords(to)} to ${angleWords(angle)}, ${over}.`;
}

/** A sentence for each bend that is closed by hand; none where the leaf does it all. */
export function handFinishSentences(
  { finishByHand = [] }: Pick<Answer, "finishByHand">,
  units: Job["units"],
): string[] {
  return finishByHand.map((one) => handFinishWords(one, units));
}

/** The same as the end of the verdict. @example "Then close bend 2 by hand." */
export function handFinishShort({ finishByHand = [] }: Pick<Answer, "finishByHand">): string {
  const bends = finishByHand.map(({ bend }) => bend).sort((a, b) => a - b);
  if (bends.length === 0) return "";
  return ` Then close bend${bends.length === 1 ? "" : "s"} ${bends.join(" and ")} by hand.`;
}
