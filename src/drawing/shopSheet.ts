/**
 * The shop sheet: the paper that lies beside the brake. Answer, blank with its figures, set-up, then a row a bend with
 * pictures, what to do and what to measure, and room to tick and write. One or two pages up to eight bends.
 */
import { cutBlank } from "../blank/cutBlank.ts";
import { blankWeightKg } from "../blank/weight.ts";
import type { Answer } from "../job/answer.ts";
import type { Job } from "../job/job.ts";
import type { Mm } from "../units/quantity.ts";
import { blankStrip } from "./blankStrip.ts";
import { blankTable } from "./blankTable.ts";
import type { Block } from "./block.ts";
import { CAUTIONS } from "./cautions.ts";
import { flowBlocks, flowWidth } from "./flow.ts";
import { lengthWords } from "./lengthWords.ts";
import type { Page } from "./page.ts";
import type { PageSize } from "./pageSize.ts";
import { paragraph, stack } from "./paragraph.ts";
import { setUpSentences } from "./setUpWords.ts";
import { stepRow } from "./stepRow.ts";
import { verdictSentence } from "./verdictWords.ts";
import { weightWords } from "./weightWords.ts";

const TITLE_MM: Mm = 6;
const ANSWER_MM: Mm = 4.6;
const HEADING_MM: Mm = 4.2;
const WORDS_MM: Mm = 3.1;
const MOST_WAYS = 3;

/** Pages of the shop sheet of an answered job. */
export function shopSheet(job: Job, answer: Answer, size: PageSize): readonly Page[] {
  const widthMm = flowWidth(size);
  const words = (sentence: string) => paragraph(sentence, WORDS_MM, widthMm);
  const headed = (heading: string, blocks: readonly Block[]) =>
    stack([paragraph(heading, HEADING_MM, widthMm), ...blocks]);
  const top = [
    paragraph(job.part.name, TITLE_MM, widthMm),
    paragraph(verdictSentence(job, answer), ANSWER_MM, widthMm),
    words(stockSentence(job, answer)),
    words("Made by ____________________   Date ____________   Sheet from ______________________________"),
  ];
  const warnings = answer.warnings.map((warning) => paragraph(warning, WORDS_MM, widthMm, 4));
  const ways = wayWords(answer).map((way) => paragraph(way, WORDS_MM, widthMm, 4));
  const blocks: Block[] = [
    stack(top, 1),
    headed("Blank, marked face up", [blankStrip(job, answer, widthMm)]),
    blankTable(job, answer, widthMm),
    words(`Heavy line: sight line. Thin: bend tangent lines. All from one edge.${fractionWords(job)}`),
    headed("Set-up", setUpSentences(job, answer).map(words)),
    ...(ways.length > 0 ? [headed("Ways out, each proved", ways)] : []),
    ...(warnings.length > 0 ? [headed("Mind", warnings)] : []),
    ...answer.order.map((_, index) => stepRow(job, answer, index, widthMm)),
  ];
  return flowBlocks(blocks, size, job.part.name, CAUTIONS);
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
  return `${said.join(", ")}. On: ${brake.name}.`;
}

/** The blank's weight in words; nothing where its length or the metal's density isn't known. */
function weight({ part, units, cutOuts = [] }: Job, answer: Answer): readonly string[] {
  const { lengthMm, thicknessMm, metal } = part;
  if (lengthMm === undefined || metal.densityKgM3 === undefined) return [];
  const takenMm2 = cutOuts.length === 0 ? 0 : cutBlank(part, cutOuts).takenMm2;
  const blank = { widthMm: answer.blank.developedWidth, lengthMm, thicknessMm, takenMm2 };
  return [`blank ${weightWords(blankWeightKg(blank, metal.densityKgM3), units)}`];
}

/** The cheapest ways out of a job that does not fold, or only just; more would crowd the sheet. */
function wayWords(answer: Answer): readonly string[] {
  const sentences = answer.remedies.flatMap((remedy) => {
    const { sentence, because } = remedy as { readonly sentence?: unknown; readonly because?: unknown };
    if (typeof sentence !== "string") return [];
    return [typeof because === "string" ? `${sentence} ${because}` : sentence];
  });
  return sentences.slice(0, MOST_WAYS);
}

function fractionWords({ units }: Job): string {
  return units === "in" ? " A fraction is the nearest 64th, with what it adds (+) or takes (−)." : "";
}
