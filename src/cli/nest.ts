/**
 * `noseroom nest JOB --sheet "48 x 96 in"`: how many blanks a sheet gives, where to cut, and what is left over.
 */

import { layOut } from "../blank/blank.ts";
import { type Nest, type NestQuestion, nestOnSheet } from "../blank/nest.ts";
import { type NestedBlank, nestedWhole } from "../blank/nestedBlank.ts";
import type { Job } from "../jobFile/job.ts";
import { drawNest } from "../pictures/nestDrawing.ts";
import type { Mm } from "../units/quantity.ts";
import { CAUTIONS } from "../words/cautions.ts";
import { lengthFigure, lengthWords } from "../words/lengthWords.ts";
import { grainWarning } from "../words/warningWords.ts";
import { BENDS_BOTH_WAYS, TRUE_OUTLINE } from "../words/wholeBlankWords.ts";
import { type DrawnFiles, writeDrawn } from "./drawnFiles.ts";
import { inkFor } from "./ink.ts";
import { openJobOrWhole } from "./openJob.ts";
import { lengthOption, pairOption } from "./optionLengths.ts";
import { nestPlan, planText } from "./planJson.ts";
import { Refusal } from "./refusal.ts";
import { table } from "./table.ts";
import { columnsOf, wrap } from "./wrap.ts";

export interface NestOptions extends Omit<DrawnFiles, "pdf" | "paper"> {
  readonly sheet: string;
  readonly count?: string;
  readonly kerf?: string;
  readonly anyWay?: boolean;
  readonly json?: boolean;
}

/** A sheet past these is a slip of the pen, and would take long to lay out. */
const LARGEST_SHEET_MM: Mm = 100_000;
const MOST_BLANKS = 20_000;

/**
 * Runs the command and gives its exit status: 0, or 1 where not one blank fits on the sheet.
 * @throws Refusal for input that cannot be worked with
 */
export async function runNest(path: string, options: NestOptions): Promise<number> {
  const opened = await openJobOrWhole(path);
  const whole = "whole" in opened;
  const { part, units } = whole ? opened.whole : opened.job;
  const blank = whole ? nestedWhole(opened.whole.finished ?? opened.whole.part) : blankOfSection(opened.job);
  const question = questionOf(blank, options, units);
  const nest = nestOnSheet(question);
  const ink = inkFor(process.stdout, process.env);
  const cautions = wrap(CAUTIONS, columnsOf(process.stdout), "").map(ink.faint);
  const { sheet } = question;
  const size = `${lengthWords(blank.widthMm, units)} by ${lengthWords(blank.lengthMm, units)}`;
  if (nest === undefined && options.json) {
    process.stdout.write(planText(nestPlan(nest)));
    return 1;
  }
  if (nest === undefined) {
    const turn = question.grain === "across" ? " with its bends across the grain" : "";
    process.stdout.write(
      `${ink.strong(`The blank, ${size}, does not go on that sheet${turn}.`)}\n${cautions.join("\n")}\n`,
    );
    return 1;
  }
  const drawing = drawNest(question, nest, units, blank.shapeAt);
  const lines = [
    ink.strong(drawing.sentence),
    `Blank ${size}. ${nest.sheets === 1 ? "One sheet" : `${nest.sheets} sheets`}, ${nest.cuts.length} cuts on a sheet, strips first.`,
    "",
    ...rowTable(nest, blank, units),
    "",
    ...warnings(
      nest,
      blank,
      whole ? opened.whole.part.sheet.pattern.bends.length : opened.job.part.bends.length,
    ),
    ...(blank.shapeAt ? [TRUE_OUTLINE] : []),
    ...rest(nest, sheet.widthMm, units),
    "The grain runs along the sheet's length.",
  ];
  lines.push(...(await writeDrawn(drawing, `Sheet with ${part.name}`, units, options)));
  process.stdout.write(
    options.json ? planText(nestPlan(nest)) : `${[...lines, "", ...cautions].join("\n")}\n`,
  );
  return 0;
}

/** Strips in the order in which they come off the sheet; neighbours of one kind share a line. */
function rowTable(nest: Nest, { bothWays }: NestedBlank, units: "mm" | "in"): string[] {
  const kinds: (readonly [first: number, last: number])[] = [];
  nest.rows.forEach((row, i) => {
    const [first, last] = kinds.at(-1) ?? [0, -1];
    const before = nest.rows[last];
    const same =
      before?.laid === row.laid && before.count === row.count && Math.abs(before.sizeMm - row.sizeMm) < 1e-9;
    if (same) kinds[kinds.length - 1] = [first, i];
    else kinds.push([i, i]);
  });
  const rows = kinds.map(([first, last]) => {
    const [row, end] = [nest.rows[first]!, nest.rows[last]!];
    return [
      first === last ? `${first + 1}` : `${first + 1} to ${last + 1}`,
      lengthFigure(row.sizeMm, units),
      lengthFigure(row.fromMm, units),
      lengthFigure(end.fromMm + end.sizeMm, units),
      `${row.count}`,
      bothWays ? "both ways" : row.laid === "across" ? "across the grain" : "along the grain",
    ];
  });
  const headings = [
    "strips",
    `each, ${units}`,
    `from, ${units}`,
    `to, ${units}`,
    "blanks in each",
    "bends run",
  ];
  return table([headings, ...rows], ["right", "right", "right", "right", "right", "left"]);
}

/** The piece that stays whole, where there is one to speak of. */
function rest(nest: Nest, widthMm: Mm, units: "mm" | "in"): string[] {
  if (nest.restMm < 1) return [];
  return [
    `The rest, ${lengthWords(widthMm, units)} by ${lengthWords(nest.restMm, units)}, stays in one piece.`,
  ];
}

function warnings(nest: Nest, { bothWays }: NestedBlank, bends: number): string[] {
  if (bothWays) return [BENDS_BOTH_WAYS];
  const along = nest.rows.some((row) => row.laid === "along");
  const warning = along ? grainWarning("along", bends) : undefined;
  return warning === undefined ? [] : [`Strips laid along the grain: ${warning}`];
}

function blankOfSection({ part }: Job): NestedBlank {
  if (part.lengthMm === undefined) {
    throw new Refusal("part.length is missing; a nest needs the part's length along its bends.");
  }
  return { widthMm: layOut(part).developedWidthMm, lengthMm: part.lengthMm };
}

function questionOf(blank: NestedBlank, options: NestOptions, units: Job["units"]): NestQuestion {
  const wanted = options.count === undefined ? undefined : Number(options.count);
  if (wanted !== undefined && !(Number.isInteger(wanted) && wanted > 0)) {
    throw new Refusal(`--count is "${options.count}"; it may be a whole number from 1.`);
  }
  const kerfMm = options.kerf === undefined ? 0 : lengthOption(options.kerf, "--kerf", units);
  const [widthMm, lengthMm] = pairOption(
    options.sheet,
    "--sheet",
    units,
    '"48 x 96 in", the second along the grain',
  );
  const room = (widthMm * lengthMm) / (blank.widthMm * blank.lengthMm);
  if (widthMm > LARGEST_SHEET_MM || lengthMm > LARGEST_SHEET_MM || room > MOST_BLANKS) {
    throw new Refusal(
      `--sheet is "${options.sheet}"; it may be up to 100 m each way and hold up to ${MOST_BLANKS} blanks.`,
    );
  }
  return {
    blank,
    sheet: { widthMm, lengthMm },
    grain: options.anyWay || blank.bothWays ? "free" : "across",
    kerfMm,
    ...(wanted === undefined ? {} : { wanted }),
  };
}
