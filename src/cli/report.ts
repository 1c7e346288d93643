/**
 * A checked job as text for the person at the brake: verdict in one sentence, order as a table, what blocks it,
 * how to get the part in and out, what to watch, cautions.
 */

import type { Answer, StepAnswer } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";
import { clearanceMember } from "../pictures/step.ts";
import { CAUTIONS } from "../words/cautions.ts";
import { contactWords, memberWords } from "../words/contactWords.ts";
import { lengthWords } from "../words/lengthWords.ts";
import { angleWords, bendWords, blockWords, throatWords } from "../words/stepWords.ts";
import { verdictSentence } from "../words/verdictWords.ts";
import type { Ink } from "./ink.ts";
import { ordersSentence } from "./ordersWords.ts";
import { table } from "./table.ts";
import { wrap } from "./wrap.ts";

/** Behind the number of a bend that is made in two strokes. */
const STROKES = { whole: "", begin: ", first stroke", finish: ", second stroke" } as const;

const HEADINGS = ["", "bend", "in the throat", "marked face", "leaf to", "relaxes to", "least clearance"];

function clearanceWords(job: Job, answer: Answer, index: number): string {
  const step = answer.order[index] as StepAnswer;
  if (step.verdict === "hits") {
    if (step.contact !== null) return `none: ${contactWords(step.contact, job.brake.clamp.kind)}`;
    return step.reached < step.overbend ? "none: the leaf swings no further" : "none: no way in or out";
  }
  if (step.clearance === null) return "nothing near";
  const member = clearanceMember(job, answer, index);
  const to = member === undefined ? "" : ` to ${memberWords(member, job.brake.clamp.kind)}`;
  const tight = step.verdict === "tight" ? ", tight" : "";
  return `${lengthWords(step.clearance, job.units)}${to}${tight}`;
}

function orderTable(job: Job, answer: Answer): string[] {
  const bendCount = job.part.bends.length;
  const rows = answer.order.map((step, index) => [
    `${index + 1}.`,
    `${step.bend}${STROKES[step.stroke ?? "whole"]}`,
    throatWords(step, bendCount),
    step.markedFaceUp ? "up" : "down",
    step.reached < step.overbend
      ? `${angleWords(step.overbend)}, stops at ${angleWords(step.reached)}`
      : angleWords(step.overbend),
    angleWords(step.relaxesTo),
    clearanceWords(job, answer, index),
  ]);
  return table([HEADINGS, ...rows], ["right", "right", "left", "left", "left", "left", "left"]);
}

/** Nearer than this a point counts as level with the edge it is measured from: what the words show as nothing. */
const LEVEL_MM = 0.02;

/** Where a point of the section lies, seen from the bed's front top edge. */
function placeWords([x, y]: readonly [number, number], units: Job["units"]): string {
  const across = `${lengthWords(Math.abs(x), units)} ${x < 0 ? "behind" : "in front of"}`;
  const upright = `${lengthWords(Math.abs(y), units)} ${y < 0 ? "below" : "above"}`;
  const parts = [...(Math.abs(x) > LEVEL_MM ? [across] : []), ...(Math.abs(y) > LEVEL_MM ? [upright] : [])];
  return parts.length === 0
    ? "at the bed's front top edge"
    : `${parts.join(" and ")} the bed's front top edge`;
}

function blockLines(job: Job, answer: Answer): string[] {
  return answer.order.flatMap((step) => {
    const block = blockWords(step, job.brake.clamp.kind);
    if (block === undefined) return [];
    const where = step.contact === null ? "" : `, ${placeWords(step.contact.point, job.units)}`;
    const left = step.angle - step.relaxesTo;
    const short =
      left > 0.05 && step.reached > 0
        ? ` The bend would relax to ${angleWords(step.relaxesTo)}, ${angleWords(left)} short.`
        : "";
    return [`${bendWords(step)}: ${block}${where}.${short}`];
  });
}

function handlingLines(answer: Answer): string[] {
  return answer.order.flatMap((step) => {
    const ways = [...(step.load === "end" ? ["in"] : []), ...(step.unload === "end" ? ["out"] : [])];
    if (ways.length === 0) return [];
    return [
      `Bend ${step.bend}: slide the part ${ways.join(" and ")} along the bend line, past the end of the clamp.`,
    ];
  });
}

/** The ways out that have been proved, as sentences, cheapest first. */
function wayLines(answer: Answer): string[] {
  return answer.remedies.flatMap((remedy) => {
    const { sentence, because } = remedy as { readonly sentence?: unknown; readonly because?: unknown };
    if (typeof sentence !== "string") return [];
    return [typeof because === "string" ? `${sentence} ${because}` : sentence];
  });
}

/** That no reading matters, where the job has doubts and none of them stops it. */
function sureLines({ doubts }: Answer): string[] {
  if (doubts?.worst !== null || !doubts.proved) return [];
  return ["It folds whatever the readings are within their doubts."];
}

/** The whole report, one string a line; sentences no wider than `columns`. */
export function reportLines(
  job: Job,
  answer: Answer,
  ink: Ink,
  columns = Number.POSITIVE_INFINITY,
): string[] {
  const verdict = verdictSentence(job, answer);
  const { part, brake } = job;
  const width = lengthWords(answer.blank.developedWidth, job.units);
  const section = (title: string, sentences: readonly string[]) =>
    sentences.length === 0
      ? []
      : ["", ink.strong(title), ...sentences.flatMap((sentence) => wrap(sentence, columns, "  "))];
  return [
    answer.verdict === "hits" ? ink.signal(verdict) : ink.strong(verdict),
    "",
    `${part.name} on ${brake.name}: ${lengthWords(part.thicknessMm, job.units)} ${part.metal.name}, blank ${width} wide.`,
    ordersSentence(job, answer),
    ...sureLines(answer),
    "",
    ...orderTable(job, answer),
    ...section("What blocks it", blockLines(job, answer)),
    ...section("Ways out, each checked again", wayLines(answer)),
    ...section("In and out", handlingLines(answer)),
    ...section("Watch", answer.warnings),
    "",
    ...wrap(CAUTIONS, columns, "").map(ink.faint),
  ];
}
