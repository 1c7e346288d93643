/**
 * `noseroom strip [JOB]`: reads a test strip. Width before and flanges after give bend deduction and K-factor, leaf read
 * and part relaxed give the springback ratio; the printed record keeps date, brake and metal. With a job it can be put in.
 */

import type { Job } from "../jobFile/job.ts";
import { problemSentence } from "../jobFile/problem.ts";
import { type JobRead, readJob } from "../jobFile/readJob.ts";
import { writeJob } from "../jobFile/writeJob.ts";
import { testStripRatio } from "../metal/springback.ts";
import { keptShare } from "../metal/springbackCurves.ts";
import { readTestStrip, type StripResult } from "../part/testStrip.ts";
import { formatLength } from "../units/length.ts";
import { type Mm, toRad } from "../units/quantity.ts";
import { angleWords } from "../words/angleWords.ts";
import { CAUTIONS } from "../words/cautions.ts";
import { lengthFigure, lengthWords } from "../words/lengthWords.ts";
import { type Ink, inkFor } from "./ink.ts";
import { openJobFile } from "./openJob.ts";
import { Refusal } from "./refusal.ts";
import { type StripOptions, type StripReadings, stripReadings } from "./stripReadings.ts";
import { readRecord, recordText, type StripFound } from "./stripRecord.ts";
import { table } from "./table.ts";
import { columnsOf, wrap } from "./wrap.ts";
import { writeOut } from "./writeOut.ts";

/** Options that a strip is read from. */
const READINGS = [
  "before",
  "flanges",
  "angle",
  "leaf",
  "relaxed",
  "metal",
  "thickness",
  "radius",
  "brake",
  "date",
  "units",
] as const;

const WITHOUT_JOB =
  "Run strip without a job, and type the K-factor and the overbends that it prints into this one.";

/** A calliper in a shop reads to so much: common practice, no source. */
const READING_MM: Mm = 0.1;

/**
 * Prints the record and gives the exit status, 0.
 * @throws Refusal for readings that cannot be worked with, or a file that cannot be written
 */
export async function runStrip(path: string | undefined, options: StripOptions): Promise<number> {
  const opened = path === undefined ? undefined : await openJobFile(path, WITHOUT_JOB);
  const read =
    options.record === undefined
      ? stripReadings(opened?.job, options, today())
      : await recordAlone(options, options.record);
  const found = foundOf(read);
  const written = [...(await putIntoJob(opened, found, options)), ...(await keep(read, found, options))];
  if (options.json) {
    process.stdout.write(
      `${JSON.stringify({ ...read, metal: read.metal?.name ?? null, ...found }, null, 2)}\n`,
    );
    return 0;
  }
  const columns = columnsOf(process.stdout);
  const ink = inkFor(process.stdout, process.env);
  const lines = [
    ...stripLines(read, found, opened?.job, ink, columns),
    ...written,
    "",
    ...wrap(CAUTIONS, columns, "").map(ink.faint),
  ];
  process.stdout.write(`${lines.join("\n")}\n`);
  return 0;
}

/** What a record keeps; readings beside it would be another strip's. */
function recordAlone(options: StripOptions, path: string): Promise<StripReadings> {
  const also = READINGS.find((name) => options[name] !== undefined);
  if (also !== undefined) throw new Refusal(`--record has its own readings; leave --${also} away.`);
  return readRecord(path);
}

/** Writes the record to a file of its own, if that was asked for. */
async function keep(read: StripReadings, found: StripFound, options: StripOptions): Promise<string[]> {
  if (options.keep === undefined) return [];
  await writeOut(options.keep, recordText(read, found), options);
  return ["", `The record of this strip: ${options.keep}`];
}

/** The day on the person's own clock. */
function today(): string {
  const now = new Date();
  const two = (figure: number) => String(figure).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

function foundOf({ widths, spring, angleDeg, insideRadiusMm, thicknessMm }: StripReadings): StripFound {
  try {
    const bend =
      widths === null
        ? null
        : readTestStrip({
            angleDeg,
            insideRadiusMm,
            thicknessMm,
            widthBeforeMm: widths.beforeMm,
            outsideFlangesMm: widths.flangesMm,
          });
    return { bend, springback: spring === null ? null : testStripRatio(spring) };
  } catch (reason) {
    if (reason instanceof RangeError) throw new Refusal(`That can't be: ${reason.message}.`);
    throw reason;
  }
}

/** Writes the job with the strip's K-factor and overbends in it, if that was asked for. */
async function putIntoJob(
  opened: Extract<JobRead, { ok: true }> | undefined,
  { bend, springback }: StripFound,
  options: StripOptions,
): Promise<string[]> {
  const { output } = options;
  if (output === undefined) return [];
  if (opened === undefined) throw new Refusal("--output wants a job to put the strip's figures into.");
  const { file, job } = opened;
  const bends =
    springback === null
      ? file.part.bends
      : file.part.bends.map((one, i) => ({
          ...one,
          overbend: Number(((job.part.bends[i]?.angleDeg ?? 0) / springback).toFixed(2)),
        }));
  const kFactor = bend === null ? file.part.kFactor : Number(bend.kFactor.toFixed(4));
  const text = writeJob({
    ...file,
    part: { ...file.part, ...(kFactor !== undefined && { kFactor }), bends },
  });
  const again = readJob(text);
  if (!again.ok)
    throw new Refusal(...again.problems.map((one) => `With this strip: ${problemSentence(one)}`));
  await writeOut(output, text, options);
  return ["", `The job with this strip in it: ${output}`];
}

/** The record as text, one string a line. */
function stripLines(
  read: StripReadings,
  found: StripFound,
  job: Job | undefined,
  ink: Ink,
  columns = Number.POSITIVE_INFINITY,
): string[] {
  const { units, metal, thicknessMm, insideRadiusMm, widths, spring } = read;
  const { bend, springback } = found;
  const length = (mm: Mm) => lengthWords(mm, units);
  const deduction = bend === null ? [] : [`bend deduction ${length(bend.deductionMm)}`, kWords(bend)];
  const keeps = springback === null ? [] : [`springback ratio ${springback.toFixed(3)}`];
  const rows = [
    ["brake", read.brake ?? "not said"],
    ["metal", `${metal === null ? "not said" : metal.name}, ${length(thicknessMm)} thick`],
    ["inside radius", length(insideRadiusMm)],
    ...(widths === null || bend === null
      ? []
      : [
          ["width before", length(widths.beforeMm)],
          [
            "outside flanges after",
            `${length(widths.flangesMm[0])} and ${length(widths.flangesMm[1])}, at ${angleWords(read.angleDeg)}`,
          ],
          ["bend deduction", length(bend.deductionMm)],
          ["bend allowance", length(bend.allowanceMm)],
          ["K-factor", `${bend.kFactor.toFixed(2)}${tableK(read)}`],
        ]),
    ...(spring === null || springback === null
      ? []
      : [
          ["leaf read", angleWords(spring.leafReadDeg)],
          ["relaxed to", angleWords(spring.relaxedDeg)],
          ["springback ratio", `${springback.toFixed(3)}${reckoned(read)}`],
        ]),
  ];
  return [
    ink.strong(`Test strip of ${read.date}: ${[...deduction, ...keeps].join(", ")}.`),
    "",
    ...table(rows, ["left", "left"]),
    "",
    ...adviceSentences(read, found, job).flatMap((sentence) => wrap(sentence, columns, "")),
  ];
}

function kWords({ kFactor }: StripResult): string {
  return `K-factor ${kFactor.toFixed(2)}`;
}

function tableK({ metal }: StripReadings): string {
  return metal?.kFactor === undefined ? "" : `; the table starts with ${metal.kFactor}`;
}

function reckoned({ metal, insideRadiusMm, thicknessMm }: StripReadings): string {
  if (metal === null) return "";
  const { most, likely, least } = keptShare(metal, insideRadiusMm, thicknessMm);
  const source = metal.springback ? "published" : "reckoned";
  return `; ${source} ${likely.toFixed(2)}, ${least.toFixed(3)} to ${most.toFixed(3)}`;
}

function adviceSentences(
  read: StripReadings,
  { bend, springback }: StripFound,
  job: Job | undefined,
): string[] {
  const { units, angleDeg, thicknessMm } = read;
  const sentences: string[] = [];
  if (bend !== null) {
    const moves = READING_MM / (toRad(angleDeg) * thicknessMm);
    const reading = units === "in" ? lengthFigure(READING_MM, "in") : formatLength(READING_MM, "mm");
    sentences.push(
      `A reading off by ${reading} ${units} moves the deduction as much and the K-factor by ${moves.toFixed(2)}: a wide strip and the mean of three are better.`,
    );
    if (bend.doubt !== undefined) sentences.push(bend.doubt);
    sentences.push(`In the job: "kFactor": ${bend.kFactor.toFixed(4)} in part.`);
  }
  if (springback !== null) {
    const angles = job === undefined ? [90] : [...new Set(job.part.bends.map((one) => one.angleDeg))];
    for (const angle of angles) {
      const leaf = (angle / springback).toFixed(1);
      sentences.push(
        `For ${angleWords(angle)} swing the leaf to ${leaf}°; in the job: "overbend": ${leaf} in that bend.`,
      );
    }
  }
  return sentences;
}
