/**
 * The shop sheet: the paper that lies beside the brake. Answer, blank with its figures, set-up, then a row a bend with
 * pictures, what to do and what to measure, and room to tick and write. One or two pages a part: with many bends the
 * steps become a table and the pictures smaller, as far as it takes (sheetStyle.ts).
 */
import { cutBlank } from "../blank/cutBlank.ts";
import { blankWeightKg } from "../blank/weight.ts";
import type { Block } from "../drawing/block.ts";
import { flowBlocks, flowCount, flowWidth } from "../drawing/flow.ts";
import type { Page } from "../drawing/page.ts";
import type { PageSize } from "../drawing/pageSize.ts";
import { paragraph, stack } from "../drawing/paragraph.ts";
import { HEADING_MM } from "../drawing/printWords.ts";
import { CLOSER_STYLES, ROOMY_STYLES, type SheetStyle } from "../drawing/sheetStyle.ts";
import type { Answer } from "../jobFile/answer.ts";
import { finishedPart, type Job } from "../jobFile/job.ts";
import { CAUTIONS } from "../words/cautions.ts";
import { handFinishSentences } from "../words/handFinishWords.ts";
import { lengthWords } from "../words/lengthWords.ts";
import { markingSentences } from "../words/markingWords.ts";
import { waySentences } from "../words/reportWords.ts";
import { setUpSentences } from "../words/setUpWords.ts";
import { type ToldStep, toldSteps } from "../words/toldStep.ts";
import { verdictSentence } from "../words/verdictWords.ts";
import { weightWords } from "../words/weightWords.ts";
import { blankStrip } from "./blankStrip.ts";
import { blankTable } from "./blankTable.ts";
import { stepRow } from "./stepRow.ts";
import { stepTable } from "./stepTable.ts";

/** The cheapest ways out; more would crowd the sheet. */
const MOST_WAYS = 3;
const MOST_PAGES = 2;

/** Pages of the shop sheet of an answered job, on one page if that is roomy, else in the roomiest style that keeps to two. */
export function shopSheet(job: Job, answer: Answer, size: PageSize): readonly Page[] {
  const steps = toldSteps(job, answer);
  const { name } = job.part;
  const set = (style: SheetStyle) => setSheet(job, answer, steps, size, style);
  const needs = (style: SheetStyle) => flowCount(set(style), size, name, CAUTIONS, style.gapMm);
  const styles = [...ROOMY_STYLES, ...CLOSER_STYLES];
  const style =
    ROOMY_STYLES.find((roomy) => needs(roomy) === 1) ??
    styles.find((any) => needs(any) <= MOST_PAGES) ??
    (styles.at(-1) as SheetStyle);
  return flowBlocks(set(style), size, name, CAUTIONS, style.gapMm);
}

function setSheet(
  job: Job,
  answer: Answer,
  told: readonly ToldStep[],
  size: PageSize,
  style: SheetStyle,
): readonly Block[] {
  const widthMm = flowWidth(size);
  const { wordsMm, picture } = style;
  const words = (sentence: string) => paragraph(sentence, wordsMm, widthMm);
  const headed = (heading: string, blocks: readonly Block[]): Block[] => {
    const head = paragraph(heading, HEADING_MM, widthMm);
    return blocks.map((block) => ({ ...block, head }));
  };
  const top = [
    paragraph(job.part.name, style.titleMm, widthMm),
    paragraph(verdictSentence(job, answer), style.answerMm, widthMm),
    words(stockSentence(job, answer)),
    words("Made by ____________________   Date ____________   Sheet from ______________________________"),
  ];
  const warnings = answer.warnings.map((warning) => paragraph(warning, wordsMm, widthMm, 4));
  const ways = waySentences(answer)
    .slice(0, MOST_WAYS)
    .map((way) => paragraph(way, wordsMm, widthMm, 4));
  const steps =
    style.steps === "table"
      ? stepTable(job, answer, told, { widthMm, picture, wordsMm })
      : told.map((one) => stepRow(job, answer, one, { widthMm, picture, wordsMm }));
  const setUp = setUpSentences(job, answer);
  const blocks: Block[] = [
    stack(top, 1),
    ...headed("Blank, marked face up", [blankStrip(job, answer, widthMm, style.stripMm)]),
    blankTable(job, answer, widthMm, style.blankTable),
    words(`Heavy line: sight line. Thin: bend tangent lines. ${markingSentences(job, answer).join(" ")}`),
    ...headed("Set-up", (style.setUpRunOn ? [setUp.join(" ")] : setUp).map(words)),
    ...headed("Ways out, each proved", ways),
    ...headed("Mind", warnings),
    ...steps,
    ...headed("By hand, off the brake", handFinishSentences(answer, job.units).map(words)),
  ];
  return blocks;
}

/** What it is made of and on: metal, thickness, radius, weight of the blank, brake. */
function stockSentence(job: Job, answer: Answer): string {
  const { part, brake, units } = job;
  const radii = [...new Set(part.bends.map((bend) => lengthWords(bend.insideRadiusMm, units)))];
  const said = [
    part.metal.name,
    `${lengthWords(part.thicknessMm, units)} thick`,
    radii.length === 1 ? `inside radius ${radii[0]}` : `inside radii ${radii.join(", ")}`,
    ...weight(job, answer),
  ];
  const measured = brake.measuredOn === undefined ? "" : `, measured ${brake.measuredOn}`;
  return `${said.join(", ")}. On: ${brake.name}${measured}.`;
}

/** The blank's weight in words; nothing where its length or the metal's density isn't known. */
function weight(job: Job, answer: Answer): readonly string[] {
  const { units, cutOuts = [] } = job;
  const part = finishedPart(job);
  const { lengthMm, thicknessMm, metal } = part;
  if (lengthMm === undefined || metal.densityKgM3 === undefined) return [];
  const takenMm2 = cutOuts.length === 0 ? 0 : cutBlank(part, cutOuts).takenMm2;
  const blank = { widthMm: answer.blank.developedWidth, lengthMm, thicknessMm, takenMm2 };
  return [`blank ${weightWords(blankWeightKg(blank, metal.densityKgM3), units)}`];
}
