/**
 * `noseroom blank JOB`: developed width and where every line stands from one edge, as a rule reads it.
 */

import type { Answer } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";
import { sightLines } from "../jobFile/sightLine.ts";
import { drawBlank } from "../pictures/blankDrawing.ts";
import type { LengthUnit } from "../units/length.ts";
import { allowanceSentences } from "../words/allowanceWords.ts";
import { angleWords } from "../words/angleWords.ts";
import { CAUTIONS } from "../words/cautions.ts";
import { grainWords } from "../words/grainWords.ts";
import { lengthFigure, lengthWords, placeFigures, sixtyFourth } from "../words/lengthWords.ts";
import { markingSentences } from "../words/markingWords.ts";
import { faceWords, throatWords } from "../words/stepWords.ts";
import { verdictSentence } from "../words/verdictWords.ts";
import { weightWords } from "../words/weightWords.ts";
import { answerJob } from "./answerJob.ts";
import { type DrawnFiles, writeDrawn } from "./drawnFiles.ts";
import { type Ink, inkFor } from "./ink.ts";
import { type Chosen, openJobOrWhole } from "./openJob.ts";
import { lengthOption } from "./optionLengths.ts";
import { blankPlan, blankWeight, planText } from "./planJson.ts";
import { Refusal } from "./refusal.ts";
import { table } from "./table.ts";
import { blankOfWhole } from "./wholeBlank.ts";
import { columnsOf, wrap } from "./wrap.ts";

/** Decimal with the 64th that it is; where it was asked for, the nearest 64th and what that adds. */
function figures(lengthMm: number, units: LengthUnit, nearest: boolean): string[] {
  return nearest
    ? [lengthFigure(lengthMm, units), ...sixtyFourth(lengthMm)]
    : [placeFigures(lengthMm, units).join(" ")];
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
 */
function blankLines(
  job: Job,
  answer: Answer,
  ink: Ink,
  columns = Number.POSITIVE_INFINITY,
  { toleranceMm, nearest = false }: BlankWishes = {},
): string[] {
  const { units, part } = job;
  const { developedWidth, bends } = answer.blank;
  const sights = sightLines(answer);
  const rows = bends.flatMap((bend, i) => {
    const { turn = "up", angleDeg = 0 } = part.bends[i] ?? {};
    const sight = sights[i];
    const sightRow = sight === undefined ? [] : ["sight line", ...figures(sight.at, units, nearest)];
    return [
      [
        `bend ${bend.bend}, ${turn} ${angleWords(angleDeg)}`,
        "tangent line",
        ...figures(bend.tangents[0], units, nearest),
      ],
      [whenWords(answer, bend.bend, part.bends.length), ...sightRow],
      ["", "tangent line", ...figures(bend.tangents[1], units, nearest)],
    ];
  });
  const headings = ["", "", `from the edge, ${units}`, ...(nearest ? ["1/64 in", "adds, in"] : [])];
  const width = ["developed width", "", ...figures(developedWidth, units, nearest)];
  const length = part.lengthMm === undefined ? "" : `, ${lengthWords(part.lengthMm, units)} along the bends`;
  const weightKg = blankWeight(job, developedWidth);
  const weight = weightKg === null ? "" : `, ${weightWords(weightKg, units)}`;
  return [
    ink.strong(`Blank of ${part.name}: ${lengthWords(developedWidth, units)} wide${length}${weight}.`),
    ...wrap(
      "Marked face up. Under each bend: when you make it, which flats lie in the throat and which face is up then. Its sight line is for that side.",
      columns,
      "",
    ),
    "",
    ...table([headings, width, ...rows], ["left", "left", nearest ? "right" : "left", "right", "right"]),
    "",
    ...markingSentences(job, answer).flatMap((sentence) => wrap(sentence, columns, "")),
    "",
    ...cutLines(job, answer, nearest),
    ...(job.grainDeg === undefined ? [] : [...wrap(grainWords(job.grainDeg), columns, ""), ""]),
    ...allowanceSentences(job, toleranceMm).flatMap((sentence) => wrap(sentence, columns, "")),
    "",
    ...wrap(verdictSentence(job, answer), columns, ""),
    "",
    ...wrap(CAUTIONS, columns, "").map(ink.faint),
  ];
}

/** Cut-outs and relief holes, each way from its edge; nothing where the job has no cut-outs. */
function cutLines({ units, cutOuts = [] }: Job, { blank }: Answer, nearest: boolean): string[] {
  if (cutOuts.length === 0) return [];
  const size = (lengthMm: number) => figures(lengthMm, units, nearest).slice(0, 2);
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
  const heads = (words: string) => [`${words}, ${units}`, ...(nearest ? ["1/64 in"] : [])];
  const headings = ["", "", ...heads("from the edge"), ...heads("from the start")];
  return [
    ...table(
      [headings, ...outs, ...holes],
      headings.map((_, i) => (i < 2 || !nearest ? "left" : "right")),
    ),
    ...(holes.length === 0 ? [] : ["Drill the relief holes first, then cut out, then bend."]),
    "",
  ];
}

interface BlankWishes {
  /** How far other bend allowances may differ before it is warned of. */
  readonly toleranceMm?: number | undefined;
  /** Gives the nearest 64th beside each decimal. */
  readonly nearest?: boolean;
}

export interface BlankOptions extends DrawnFiles, Chosen {
  /** How far other bend allowances may differ. */
  readonly within?: string;
  readonly fractions?: boolean;
  readonly json?: boolean;
}

/**
 * Runs the command and gives its exit status; a part that does not fold still has a blank.
 * @throws Refusal for input that cannot be worked with
 */
export async function runBlank(path: string, options: BlankOptions): Promise<number> {
  const opened = await openJobOrWhole(path, options);
  if ("whole" in opened) {
    const asked = ["within", "fractions"].find((key) => options[key as "within" | "fractions"] !== undefined);
    if (asked !== undefined)
      throw new Refusal(`--${asked} is for sections; this part is more than a section.`);
    return blankOfWhole(opened.whole, options);
  }
  const { job } = opened;
  if (options.fractions && job.units === "mm") {
    throw new Refusal("--fractions is for jobs in inches; this one counts in millimetres.");
  }
  const toleranceMm =
    options.within === undefined ? undefined : lengthOption(options.within, "--within", job.units);
  const answer = await answerJob(job);
  const title = `Blank of ${job.part.name}`;
  const written = await writeDrawn(drawBlank(job, answer), title, job.units, options);
  if (options.json) {
    process.stdout.write(planText(blankPlan(job, answer)));
    return 0;
  }
  const ink = inkFor(process.stdout, process.env);
  const lines = blankLines(job, answer, ink, columnsOf(process.stdout), {
    toleranceMm,
    nearest: options.fractions === true,
  });
  if (written.length > 0) lines.push("", ...written);
  process.stdout.write(`${lines.join("\n")}\n`);
  return 0;
}
