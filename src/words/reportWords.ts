/**
 * A checked job in words for the person at the brake: order as a table, what blocks it, how to get the part in and
 * out, what lets it fold, what to mind. Command, page and paper take from here what they have room for.
 */
import type { Answer, PointPair, StepAnswer } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";
import { angleWords } from "./angleWords.ts";
import { metWords } from "./contactWords.ts";
import { handFinishSentences } from "./handFinishWords.ts";
import { lengthWords } from "./lengthWords.ts";
import { setUpSentences } from "./setUpWords.ts";
import { bendWords, blockWords, throatWords, toldClearance } from "./stepWords.ts";

/** What is checked. @example "cable trough on 24 in finger brake: 0.032 in 5052-H32, blank 1.261 in wide." */
export function jobSentence({ part, brake, units }: Job, { blank }: Answer): string {
  const width = lengthWords(blank.developedWidth, units);
  return `${part.name} on ${brake.name}: ${lengthWords(part.thicknessMm, units)} ${part.metal.name}, blank ${width} wide.`;
}

type Sections = readonly (readonly [title: string, sentences: readonly string[]])[];

/** Sections under the table, each with its sentences; those with nothing to say are left out. */
export function reportSections(job: Job, answer: Answer): Sections {
  return [...blockSection(job, answer), ...laterSections(job, answer)];
}

/** The first of them, which needs no ways out. */
export function blockSection(job: Job, answer: Answer): Sections {
  return spoken([["What blocks it", blockSentences(job, answer)]]);
}

/** All others. */
export function laterSections(job: Job, answer: Answer): Sections {
  return spoken([
    ["Ways out, each checked again", waySentences(answer)],
    ["In and out", handlingSentences(answer)],
    ["By hand, off the brake", handFinishSentences(answer, job.units)],
    ["Set-up", answer.verdict === "hits" ? [] : setUpSentences(job, answer)],
    ["Mind", answer.warnings],
  ]);
}

function spoken(sections: Sections): Sections {
  return sections.filter(([, sentences]) => sentences.length > 0);
}

/** Headings and rows of the order. */
export function orderTable(job: Job, answer: Answer): string[][] {
  const bendCount = job.part.bends.length;
  const rows = answer.order.map((step, index) => [
    `${index + 1}.`,
    bendWords(step).replace("Bend ", ""),
    throatWords(step, bendCount),
    step.markedFaceUp ? "up" : "down",
    step.stroke === "flatten"
      ? "clamp down"
      : step.reached < step.overbend
        ? `${angleWords(step.overbend)}, stops ${angleWords(step.reached)}`
        : angleWords(step.overbend),
    step.stroke === "flatten" ? "flat" : angleWords(step.relaxesTo),
    clearanceWords(job, step),
  ]);
  return [["", "bend", "in the throat", "face", "leaf to", "relaxes to", "least clearance"], ...rows];
}

function clearanceWords({ brake, units }: Job, step: StepAnswer): string {
  const { kind } = brake.clamp;
  if (step.verdict === "hits") {
    const hits = step.failsAt === undefined ? "hits" : "may hit";
    if (step.contact !== null) return `${hits} ${metWords(step.contact, kind)}`;
    if (step.refused !== null) return "not begun";
    return step.reached < step.overbend ? "leaf stops short" : "no way in or out";
  }
  const clearance = toldClearance(step);
  if (clearance === null) return "nothing near";
  const to = step.nearest === null ? "" : ` to ${metWords(step.nearest, kind)}`;
  const tight = step.verdict === "tight" ? ", tight" : "";
  return `${lengthWords(clearance, units)}${to}${tight}`;
}

/** What stops each bend that is stopped, where, and how far short it stays. */
function blockSentences({ brake, units }: Job, { order }: Answer): string[] {
  return order.flatMap((step) => {
    const block = blockWords(step, brake.clamp.kind, units);
    if (block === undefined) return [];
    const where = step.contact === null ? "" : `, ${pointWords(step.contact.point, units)}`;
    const left = step.angle - step.relaxesTo;
    const short =
      left > 0.05 && step.reached > 0
        ? ` The bend would relax to ${angleWords(step.relaxesTo)}, ${angleWords(left)} short.`
        : "";
    return [`${bendWords(step)}: ${block}${where}.${short}`];
  });
}

function handlingSentences({ order }: Answer): string[] {
  return order.flatMap((step) => {
    const ways = [...(step.load === "end" ? ["in"] : []), ...(step.unload === "end" ? ["out"] : [])];
    if (ways.length === 0) return [];
    return [
      `Bend ${step.bend}: slide the part ${ways.join(" and ")} along the bend line, past the end of the clamp.`,
    ];
  });
}

/** The ways out that have been proved, cheapest first, each with its reason. */
export function waySentences({ remedies }: Answer): string[] {
  return remedies.map((remedy) =>
    "because" in remedy && remedy.because !== undefined
      ? `${remedy.sentence} ${remedy.because}`
      : remedy.sentence,
  );
}

/** Nearer than this a point counts as level with the edge it is measured from: what the words show as nothing. */
const LEVEL_MM = 0.02;

/** Where a point of the section lies, seen from the bed's front top edge. */
function pointWords([x, y]: PointPair, units: Job["units"]): string {
  const across = `${lengthWords(Math.abs(x), units)} ${x < 0 ? "behind" : "in front of"}`;
  const upright = `${lengthWords(Math.abs(y), units)} ${y < 0 ? "below" : "above"}`;
  const parts = [...(Math.abs(x) > LEVEL_MM ? [across] : []), ...(Math.abs(y) > LEVEL_MM ? [upright] : [])];
  return `${parts.length === 0 ? "at" : parts.join(" and ")} the bed's front top edge`;
}
