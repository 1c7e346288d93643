/**
 * Which bend allowance a blank was laid out by, where its K-factor is from, and how far other methods would be off.
 * Formulas and their sources are in the part's own rooms; here are the words. Figures as everywhere: 0.001 in, 0.01 mm.
 */
import { type BlankByMethod, blankByMethod } from "../blank/blankByMethod.ts";
import { finishedPart, type Job } from "../jobFile/job.ts";
import { bendAllowance } from "../part/allowance.ts";
import { din6935Allowance } from "../part/din6935Allowance.ts";
import { usualDoubtMm } from "../part/sample.ts";
import { formatLength } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import { lengthFigure, lengthWords } from "./lengthWords.ts";

/** A difference between methods larger than this is worth a test strip: 1/64 in or 0.25 mm, as callipers read. */
function allowanceToleranceMm(units: Job["units"]): Mm {
  return usualDoubtMm(units);
}

/**
 * The method, what the others would make of the blank, and a warning where that is over the tolerance.
 * @example allowanceSentences(job, 0.4)[0] // "Bend allowance by K-factor 0.44."
 */
export function allowanceSentences(
  job: Job,
  toleranceMm: Mm = allowanceToleranceMm(job.units),
): readonly string[] {
  if (job.part.bends.length === 0) return [];
  const by = blankByMethod(finishedPart(job));
  const din = job.part.allowanceBy === "din6935";
  const second = din
    ? `K-factor ${Number(job.part.kFactor.toFixed(4))} ${offWords(by.kFactorOffMm, job)}`
    : `DIN 6935 ${offWords(by.din6935OffMm, job)}`;
  const others = `The empirical formula of the aircraft handbooks would make the blank ${offWords(by.empiricalOffMm, job)}, ${second}.`;
  return [methodSentence(job), ...ownSentences(job), others, ...warning(by, toleranceMm, job)];
}

/** Rounding of an allowance worked out two ways. */
const SAME_MM: Mm = 1e-6;

/** Whether the K-factor is the table's; of a metal of the user's own there is none to compare with. */
function fromTable({ part: { kFactor, metal } }: Job): boolean {
  return metal.kFactor === kFactor && metal.sources !== undefined;
}

function methodSentence(job: Job): string {
  const { kFactor, metal } = job.part;
  if (job.part.allowanceBy === "din6935") return "Bend allowance by DIN 6935, as the job chooses.";
  const given = metal.kFactor === undefined ? "" : ", as the job gives it";
  const source = fromTable(job) ? `, from the table: ${metal.sources?.kFactor}` : given;
  return `Bend allowance by K-factor ${Number(kFactor.toFixed(4))}${source}.`;
}

/** Bends laid out by a deduction of the user's own: their allowance is that of no method. */
function ownSentences(job: Job): string[] {
  const part = finishedPart(job);
  const own = part.bends.flatMap((bend, i) => {
    const shape = { ...bend, thicknessMm: part.thicknessMm };
    const byMethod =
      part.allowanceBy === "din6935" ? din6935Allowance(shape) : bendAllowance(shape, part.kFactor);
    return Math.abs(byMethod - bend.allowanceMm) > SAME_MM ? [i + 1] : [];
  });
  if (own.length === 0) return [];
  return [`Bend${own.length === 1 ? "" : "s"} ${own.join(", ")} by your own deduction.`];
}

function offWords(offMm: Mm, { units }: Job): string {
  if (Number(lengthFigure(Math.abs(offMm), units)) === 0) return "no different";
  return `${lengthWords(Math.abs(offMm), units)} ${offMm > 0 ? "wider" : "narrower"}`;
}

function warning({ mostOffMm }: BlankByMethod, toleranceMm: Mm, job: Job): string[] {
  if (mostOffMm <= toleranceMm) return [];
  const more = `That is more than ${formatLength(toleranceMm, job.units)} ${job.units}:`;
  return [
    fromTable(job)
      ? `${more} bend a test strip before you cut, and give its K-factor.`
      : `${more} be sure that the K-factor is from a test strip of this sheet, radius and brake.`,
  ];
}
