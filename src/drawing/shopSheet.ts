/**
 * The shop sheet: the paper that lies beside the brake. Answer, blank with its figures, set-up, then a row a bend with
 * pictures, what to do and what to measure, and room to tick and write. One or two pages for most parts.
 */
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

const TITLE_MM: Mm = 6;
const ANSWER_MM: Mm = 4.6;
const HEADING_MM: Mm = 4.2;
const WORDS_MM: Mm = 3;

/** Pages of the shop sheet of an answered job. */
export function shopSheet(job: Job, answer: Answer, size: PageSize): readonly Page[] {
  const widthMm = flowWidth(size);
  const words = (sentence: string) => paragraph(sentence, WORDS_MM, widthMm);
  const blocks: Block[] = [
    stack(
      [
        paragraph(job.part.name, TITLE_MM, widthMm),
        paragraph(verdictSentence(job, answer), ANSWER_MM, widthMm),
        words(stockSentence(job)),
      ],
      1,
    ),
    stack([heading("Blank, marked face up", widthMm), blankStrip(job, answer, widthMm)]),
    blankTable(job, answer, widthMm),
    stack([
      words(
        "Heavy line: sight line. Dash and dot: bend up. Dashes: bend down. Thin: bend tangent line. All from one edge.",
      ),
      words("Bends across the grain of the sheet, where it has one."),
    ]),
    stack([heading("Set-up", widthMm), ...setUpSentences(job, answer).map(words)]),
    ...warningBlocks(answer, widthMm),
    ...answer.order.map((_, index) => stepRow(job, answer, index, widthMm)),
    words("Done by ______________________   Date ______________   Sheet heat or lot ______________________"),
  ];
  return flowBlocks(blocks, size, job.part.name, CAUTIONS);
}

function heading(words: string, widthMm: Mm): Block {
  return paragraph(words, HEADING_MM, widthMm);
}

function stockSentence({ part, brake, units }: Job): string {
  const radii = [...new Set(part.bends.map((bend) => lengthWords(bend.insideRadiusMm, units)))];
  const radius = radii.length === 1 ? `inside radius ${radii[0]}` : `inside radii ${radii.join(", ")}`;
  const thickness = `${lengthWords(part.thicknessMm, units)} thick`;
  return `${part.metal.name}, ${thickness}, ${radius}. On: ${brake.name}.`;
}

function warningBlocks(answer: Answer, widthMm: Mm): readonly Block[] {
  if (answer.warnings.length === 0) return [];
  const sentences = answer.warnings.map((warning) => paragraph(warning, WORDS_MM, widthMm, 4));
  return [stack([heading("Mind", widthMm), ...sentences])];
}
