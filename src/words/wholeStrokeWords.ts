/**
 * One stroke of a whole part told for the paper beside the brake: what lies where, which fingers, how far the leaf goes.
 */
import type { WholeAnswer } from "../jobFile/wholeAnswer.ts";
import type { WholeJob } from "../jobFile/wholeJob.ts";
import { angleWords } from "./angleWords.ts";
import { lengthWords } from "./lengthWords.ts";
import { faceCalled, fingersWords, strokeName, wholeBlockWords } from "./wholeWords.ts";

/** @example "3. Bend 4, leaf to 92.3°" */
export function strokeTitle({ order }: WholeAnswer, index: number): string {
  const step = order[index]!;
  return `${index + 1}. ${strokeName(step)}, leaf to ${angleWords(step.overbend)}`;
}

const WAYS = {
  front: "from the front",
  end: "along the bend line",
  "fingers off": "with the fingers off the holder",
};

/** What to do and what to watch, a sentence each. */
export function strokeSentences(job: WholeJob, answer: WholeAnswer, index: number): string[] {
  const step = answer.order[index]!;
  const { clampedFace, markedFaceUp, clearance, load, unload, verdict, setback } = step;
  const say = (mm: number) => lengthWords(mm, job.units);
  const blocked = wholeBlockWords(job, answer, step);
  const ways = [load, unload].map((way) => (way === "blocked" ? undefined : WAYS[way]));
  return [
    `Clamp ${faceCalled(answer, clampedFace)}, marked face ${markedFaceUp ? "up" : "down"}; nose set back ${say(setback)}.`,
    ...(job.along.fingers ? [`Fingers: ${fingersWords(job, step)}.`] : []),
    ...(ways[0] && ways[1] && (load !== "front" || unload !== "front")
      ? [`In ${ways[0]}, out ${ways[1]}.`]
      : []),
    ...(blocked === undefined
      ? clearance === null
        ? []
        : [`Least clearance ${say(clearance)}${verdict === "tight" ? ": tight, go slowly" : ""}.`]
      : [`Stop: ${blocked}.`]),
  ];
}
