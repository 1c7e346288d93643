/**
 * `noseroom blank JOB`: developed width and where every line stands from one edge, as a rule reads it.
 */

import { writeSvg } from "../drawing/svgPen.ts";
import { withCheckSquare } from "../drawing/trueSize.ts";
import type { Answer } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";
import { sightLines } from "../jobFile/sightLine.ts";
import { drawBlank } from "../pictures/blankDrawing.ts";
import { type LengthUnit, nearestSixtyFourth } from "../units/length.ts";
import { allowanceSentences } from "../words/allowanceWords.ts";
import { CAUTIONS } from "../words/cautions.ts";
import { grainWords } from "../words/grainWords.ts";
import { lengthFigure, lengthWords } from "../words/lengthWords.ts";
import { angleWords, faceWords, throatWords } from "../words/stepWords.ts";
import { verdictSentence } from "../words/verdictWords.ts";
import { weightWords } from "../words/weightWords.ts";
import { answerJob } from "./answerJob.ts";
import { type Ink, inkFor } from "./ink.ts";
import { openJob } from "./openJob.ts";
import { lengthOption } from "./optionLengths.ts";
import { blankPlan, blankWeight, planText } from "./planJson.ts";
import { table } from "./table.ts";
import { type TemplateOptions, writeTemplates } from "./template.ts";
import { columnsOf, wrap } from "./wrap.ts";
import { writeOut } from "./writeOut.ts";

/** Decimal, nearest 64th, and what that rounding adds (+) or takes (−) in the user's unit. */
function figures(lengthMm: number, units: LengthUnit): string[] {
  const { words, roundingMm } = nearestSixtyFourth(lengthMm);
  const off = lengthFigure(Math.abs(roundingMm), units);
  const sign = Number(off) === 0 ? " " : roundingMm > 0 ? "+" : "−";
  return [lengthFigure(lengthMm, units), words, `${sign}${off}`];
}

/** When the order makes a bend, and how it is held then. */
function whenWords(answer: Answer, bend: number, bendCount: number): string {
  const strokes = answer.order.flatMap((step, i) => (step.bend === bend ? [`${i + 1}.`] : []));
  const step = answer.order.find((one) => one.bend === bend);
  if (step === undefined) return `  not reached; ${throatWords({ bend, clamped: "start" }, bendCount)}`;
  return `  ${strokes.join(" and ")} ${throatWords(step, bendCount)}, ${faceWords(step)}`;
}

/**
 * The lines of the layout, one string a line; sentences no wider than `columns`.
 * @param toleranceMm how far other bend allowances may differ before it is warned of
 */
export function blankLines(
  job: Job,
  answer: Answer,
  ink: Ink,
  columns = Number.POSITIVE_INFINITY,
  toleranceMm?: number,
): string[] {
  const { units, part } = job;
  const { developedWidth, bends } = answer.blank;
  const sights = sightLines(answer);
  const rows = bends.flatMap((bend, i) => {
    const { turn = "up", angleDeg = 0 } = part.bends[i] ?? {};
    const sight = sights[i];
    const sightRow = sight === undefined ? [] : ["sight line", ...figures(sight.at, units)];
    return [
      [
        `bend ${bend.bend}, ${turn} ${angleWords(angleDeg)}`,
        "bend tangent line",
        ...figures(bend.tangents[0], units),
      ],
      [whenWords(answer, bend.bend, part.bends.length), ...sightRow],
      ["", "bend tangent line", ...figures(bend.tangents[1], units)],
    ];
  });
  const headings = ["", "", `from the edge, ${units}`, "nearest 1/64 in", `rounds by, ${units}`];
  const width = ["developed width", "", ...figures(developedWidth, units)];
  const length = part.lengthMm === undefined ? "" : `, ${lengthWords(part.lengthMm, units)} along the bends`;
  const weightKg = blankWeight(job, developedWidth);
  const weight = weightKg === null ? "" : `, ${weightWords(weightKg, units)}`;
  return [
    ink.strong(`Blank of ${part.name}: ${lengthWords(developedWidth, units)} wide${length}${weight}.`),
    ...wrap(
      "Marked face up, all measured from the free end of flat 1. Under each bend: when it is made, with which flats in the throat and which face up then; its sight line is for that side.",
      columns,
      "",
    ),
    "",
    ...table([headings, width, ...rows], ["left", "left", "right", "right", "right"]),
    "",
    ...cutLines(job, answer),
    ...(job.grainDeg === undefined ? [] : [...wrap(grainWords(job.grainDeg), columns, ""), ""]),
    ...allowanceSentences(job, toleranceMm).flatMap((sentence) => wrap(sentence, columns, "")),
    "",
    ...wrap(verdictSentence(job, answer), columns, ""),
    "",
    ...wrap(CAUTIONS, columns, "").map(ink.faint),
  ];
}

/** Cut-outs and relief holes, each way from its edge; nothing where the job has no cut-outs. */
function cutLines({ units, cutOuts = [] }: Job, { blank }: Answer): string[] {
  if (cutOuts.length === 0) return [];
  const size = (lengthMm: number) => [lengthFigure(lengthMm, units), nearestSixtyFourth(lengthMm).words];
  const outs = cutOuts.flatMap(({ acrossMm, alongMm }, i) => [
    [`cut-out ${i + 1}`, "from", ...size(acrossMm[0]), ...size(alongMm[0])],
    ["", "to", ...size(acrossMm[1]), ...size(alongMm[1])],
  ]);
  const holes = (blank.reliefHoles ?? []).map(({ x, y, diameter, bend }, i) => [
    `relief hole ${i + 1}, bend ${bend}`,
    `${lengthWords(diameter, units)} wide`,
    ...size(x),
    ...size(y),
  ]);
  const headings = ["", "", `from the edge, ${units}`, "1/64 in", `from the start, ${units}`, "1/64 in"];
  return [
    ...table([headings, ...outs, ...holes], ["left", "left", "right", "right", "right", "right"]),
    ...(holes.length === 0 ? [] : ["Drill the relief holes first, then cut out, then bend."]),
    "",
  ];
}

export interface BlankOptions extends TemplateOptions {
  readonly svg?: string;
  /** How far other bend allowances may differ. */
  readonly within?: string;
  readonly json?: boolean;
}

/**
 * Runs the command and gives its exit status; a part that does not fold still has a blank.
 * @throws Refusal for input that cannot be worked with
 */
export async function runBlank(path: string, options: BlankOptions): Promise<number> {
  const job = await openJob(path);
  const within =
    options.within === undefined ? undefined : lengthOption(options.within, "--within", job.units);
  const answer = await answerJob(job);
  const written = await writeTemplates(job, answer, options);
  if (options.svg !== undefined) {
    await writeOut(
      options.svg,
      writeSvg(withCheckSquare(drawBlank(job, answer), job.units), { title: `Blank of ${job.part.name}` }),
    );
    written.unshift(`Drawn at true size: ${options.svg}`);
  }
  if (options.json) {
    process.stdout.write(planText(blankPlan(job, answer)));
    return 0;
  }
  const ink = inkFor(process.stdout, process.env);
  const lines = blankLines(job, answer, ink, columnsOf(process.stdout), within);
  if (written.length > 0) lines.push("", ...written);
  process.stdout.write(`${lines.join("\n")}\n`);
  return 0;
}
