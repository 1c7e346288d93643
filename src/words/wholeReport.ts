/**
 * A whole part's answer as a table and sections, for the command and for paper.
 */
import type { WholeAnswer } from "../jobFile/wholeAnswer.ts";
import type { WholeJob } from "../jobFile/wholeJob.ts";

import { angleWords } from "./angleWords.ts";

import { handFinishSentences } from "./handFinishWords.ts";

import { lengthWords } from "./lengthWords.ts";
import { faceCalled, fingersWords, strokeName, wholeBlockWords, wholeHandlingWords } from "./wholeWords.ts";

/** Headings, then a row a stroke. */
export function wholeTable(job: WholeJob, answer: WholeAnswer): string[][] {
  const rows = answer.order.map((step, i) => [
    `${i + 1}.`,
    step.bends.join(", "),
    faceCalled(answer, step.clampedFace).replace(/^the /u, ""),
    step.markedFaceUp ? "up" : "down",
    fingersWords(job, step),
    step.reached < step.overbend
      ? `${angleWords(step.overbend)}, stops at ${angleWords(step.reached)}`
      : angleWords(step.overbend),
    clearanceWords(job, step),
  ]);
  return [["", "bend", "clamped", "marked face", "fingers", "leaf to", "least clearance"], ...rows];
}

function clearanceWords(
  job: WholeJob,
  { verdict, clearance, failsAt }: WholeAnswer["order"][number],
): string {
  if (verdict === "hits") return failsAt ? "may hit" : "none";
  if (clearance === null) return "nothing near";
  return `${lengthWords(clearance, job.units)}${verdict === "tight" ? ", tight" : ""}`;
}

/** What the part is, its blank and its finished size. */
export function wholeJobSentences(job: WholeJob, answer: WholeAnswer): string[] {
  const say = (mm: number) => lengthWords(mm, job.units);
  const xs = answer.blank.outline.map(([x]) => x);
  const ys = answer.blank.outline.map(([, y]) => y);
  const blank = `${say(Math.max(...xs) - Math.min(...xs))} by ${say(Math.max(...ys) - Math.min(...ys))}`;
  const [x, y, z] = answer.folded.size;
  const { part, brake } = job;
  return [
    `${part.name} on ${brake.name}: ${say(part.thicknessMm)} ${part.metal.name}, blank ${blank}, ${say(x)} by ${say(y)} by ${say(z)} outside when folded.`,
    ordersWords(job, answer),
  ];
}

function ordersWords(job: WholeJob, answer: WholeAnswer): string {
  if (job.order) return "Checked in the order that the job gives.";
  if (answer.viableOrders === null) return "Not all orders were looked at.";
  const count = BigInt(answer.viableOrders);
  if (count === 0n) return "No order of the bends works; this one gets furthest.";
  return count === 1n
    ? "This is the only order that works."
    : `${String(count).replace(/\B(?=(?:\d{3})+$)/gu, ",")} orders work; this one is the best.`;
}

/** Sections with their titles, those with nothing to say left out. */
export function wholeSections(job: WholeJob, answer: WholeAnswer): [title: string, sentences: string[]][] {
  const blocks = answer.order.flatMap((step) => {
    const words = wholeBlockWords(job, answer, step);
    return words === undefined ? [] : [`${strokeName(step)}: ${words}.`];
  });
  const all: [string, string[]][] = [
    ["What blocks it", blocks],
    ["In and out", wholeHandlingWords(answer)],
    ["By hand", handFinishSentences(answer, job.units)],
    ["Watch", [...answer.warnings]],
  ];
  return all.filter(([, sentences]) => sentences.length > 0);
}
