/**
 * A whole part's answer in the foreman's words: verdict, strokes, what meets what, fingers.
 */
import type {
  MissingFinger,
  WholeAnswer,
  WholeContactAnswer,
  WholeStepAnswer,
} from "../jobFile/wholeAnswer.ts";
import type { WholeJob } from "../jobFile/wholeJob.ts";
import { faceNameWords } from "../pattern/faceName.ts";
import { angleWords } from "./angleWords.ts";
import { handFinishShort } from "./handFinishWords.ts";
import { lengthWords } from "./lengthWords.ts";
import { rangeStopWords } from "./rangeWords.ts";

/** @example numbersWords([1, 3]) // "1 and 3" */
export function numbersWords(numbers: readonly number[]): string {
  if (numbers.length < 2) return numbers.join();
  return `${numbers.slice(0, -1).join(", ")} and ${numbers.at(-1)}`;
}

/** "Bend 2", "Bends 1 and 3". */
export function strokeName({ bends }: Pick<WholeStepAnswer, "bends">): string {
  return `${bends.length === 1 ? "Bend" : "Bends"} ${numbersWords(bends)}`;
}

/** What a face is called, with the article. */
export function faceCalled(answer: WholeAnswer, face: number): string {
  const { name } = answer.faces[face - 1]!;
  return `${name.kind === "face" || name.kind === "flat" ? "" : "the "}${faceNameWords(name)}`;
}

/** How a piece of the brake is called. */
function memberCalled({
  member,
  finger,
  name,
}: Pick<WholeContactAnswer, "member" | "finger" | "name">): string {
  if (name !== undefined) return name;
  if (member === "finger") return `finger ${finger}`;
  return member === "part" ? "the part's own other side" : `the ${member}`;
}

/** Why a stroke fails, without its full stop; undefined where it does not. */
export function wholeBlockWords(
  job: WholeJob,
  answer: WholeAnswer,
  step: WholeStepAnswer,
): string | undefined {
  const say = (mm: number) => lengthWords(mm, job.units);
  if (step.missing) return missingWords(step.missing, job.units);
  if (step.barred) {
    const { from, to, face } = step.barred;
    return `no finger of this clamp can stand over ${say(to - from)} of the bend line, ${placeAlong(from, say)}: ${faceCalled(answer, face)} is in the way`;
  }
  if (step.refused === "grip") return "too little sheet lies under the clamp to hold it";
  if (step.refused === "flange") return "too little sheet lies on the leaf for it to catch";
  if (step.refused === "length") return "the brake is shorter than the bend line";
  if (step.refused === "rated") return "the brake is not rated for a bend of this sheet and length";
  if (step.refused === "pinched") return "the nose stands too far forward and pinches the sheet";
  if (step.failsAt) {
    const stops = stopWords(job, answer, step) ?? "the leaf swings no further";
    return rangeStopWords(step, stops, job.units);
  }
  if (!step.contact && step.reached < step.overbend)
    return `the leaf stops at ${angleWords(step.reached)}, and this bend wants ${angleWords(step.overbend)}`;
  return stopWords(job, answer, step);
}

function stopWords(job: WholeJob, answer: WholeAnswer, step: WholeStepAnswer): string | undefined {
  const say = (mm: number) => lengthWords(mm, job.units);
  if (step.contact) {
    const { angle, face, member, point } = step.contact;
    const what = face === null ? "the leaf" : faceCalled(answer, face);
    const when = angle <= 0 ? "with the leaf still at rest" : `at ${angleWords(angle)}`;
    const where = member === "leaf" && face === null ? "" : `, ${placeAlong(point[2], say)}`;
    const meets = `${what} meets ${memberCalled(step.contact)}${where}`;
    return step.failsAt ? meets : `${when} ${meets}`;
  }
  if (step.load === "blocked") return "there is no way to bring the part in";
  if (step.unload === "blocked") return "the bent part can't be taken out";
  return undefined;
}

function placeAlong(w: number, say: (mm: number) => string): string {
  return w < 0
    ? `${say(-w)} out past the left end of the bend line`
    : `${say(w)} in from the left end of the bend line`;
}

/** @example "a finger 2 3/8 in wide is missing: grind one, 2 1/4 to 2 3/8 in wide, or use 2 + 1/4 in with 1/8 in of the bend bare" */
function missingWords({ least, most, beside, instead }: MissingFinger, units: WholeJob["units"]): string {
  const say = (mm: number) => lengthWords(mm, units);
  const bare = (mm: number) => say(mm).replace(` ${units}`, "");
  const other = beside.length === 0 ? "" : ` beside ${beside.map(bare).join(" + ")} ${units}`;
  const width =
    most - least < 0.01 ? "to just that width" : `anything from ${say(least)} to ${say(most)} will do`;
  const use = instead
    ? `, or use ${instead.fingers.map(bare).join(" + ")} ${units} with ${say(instead.bare)} of the bend bare`
    : "";
  return `a finger ${say(most)} wide is missing${other}: grind one (${width})${use}`;
}

/** The fingers of a stroke. @example "50 + 25, the first 0.20 mm in" */
export function fingersWords(
  { units, along }: Pick<WholeJob, "units" | "along">,
  step: WholeStepAnswer,
): string {
  if (step.fingers.length === 0) return along.fingers ? "none fit" : "one clamp";
  const widths = step.fingers
    .map(({ width }) => lengthWords(width, units).replace(` ${units}`, ""))
    .join(" + ");
  const from = step.fingers[0]!.from;
  const where =
    from < 0 ? `${lengthWords(-from, units)} past the left end` : `${lengthWords(from, units)} in`;
  return `${widths}, the first ${where}`;
}

/** Verdict first, then how to begin or where it stops. */
export function wholeVerdict(job: WholeJob, answer: WholeAnswer): string {
  const given = job.order !== undefined;
  const blocked = answer.order.find(({ verdict }) => verdict === "hits");
  if (blocked) {
    const words = wholeBlockWords(job, answer, blocked);
    const where = given ? "Does not fold in this order" : "Does not fold";
    return words === undefined ? `${where}.` : `${where}: at ${strokeName(blocked).toLowerCase()}, ${words}.`;
  }
  const [first] = answer.order;
  if (!first) return "Nothing to bend.";
  const folds = given ? "Folds in this order" : "Folds";
  const byHand = handFinishShort(answer);
  const begin = `${strokeName(first)} first, with ${faceCalled(answer, first.clampedFace)} clamped.${byHand}`;
  const measured = answer.order.filter(({ clearance }) => clearance !== null);
  const [tightest] = [...measured].sort((a, b) => a.clearance! - b.clearance!);
  if (answer.verdict === "tight" && tightest) {
    const spare = lengthWords(tightest.clearance!, job.units);
    return `${folds}, but only just: ${spare} to spare at ${strokeName(tightest).toLowerCase()}. ${begin}`;
  }
  return `${folds}. ${begin}`;
}

const WAYS_IN = {
  end: "slide the part",
  "fingers off": "take the fingers off the holder with the part",
} as const;

/** How the part gets in and out where it is not by the front. */
export function wholeHandlingWords({ order }: WholeAnswer): string[] {
  return order.flatMap((step) =>
    (["end", "fingers off"] as const).flatMap((way) => {
      const ways = [...(step.load === way ? ["in"] : []), ...(step.unload === way ? ["out"] : [])];
      if (ways.length === 0) return [];
      const along = way === "end" ? ` ${ways.join(" and ")} along the bend line` : `, ${ways.join(" and ")}`;
      return [`${strokeName(step)}: ${WAYS_IN[way]}${along}.`];
    }),
  );
}
