/**
 * The shop sheet of a whole part: answer, blank with its figures, then a row a stroke with the part in the brake, the section
 * at the worst station, the row of fingers from the front, what to do, and a place to tick.
 */
import type { Block } from "../drawing/block.ts";
import { flowBlocks, flowWidth } from "../drawing/flow.ts";
import type { Mark } from "../drawing/model.ts";
import { type Page, type Placed, placeInBox } from "../drawing/page.ts";
import type { PageSize } from "../drawing/pageSize.ts";
import { CLOSE_SET, pageTable } from "../drawing/pageTable.ts";
import { paragraph, stack } from "../drawing/paragraph.ts";
import { HEADING_MM } from "../drawing/printWords.ts";
import { tickBox } from "../drawing/tickBox.ts";
import type { WholeAnswer } from "../jobFile/wholeAnswer.ts";
import type { WholeJob } from "../jobFile/wholeJob.ts";
import { MM_PER_INCH } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import { CAUTIONS } from "../words/cautions.ts";
import { wholeBlankSentences, wholeBlankTable, wholeBlankTitle } from "../words/wholeBlankWords.ts";
import { wholeJobSentences, wholeSections } from "../words/wholeReport.ts";
import { strokeSentences, strokeTitle } from "../words/wholeStrokeWords.ts";
import { wholeVerdict } from "../words/wholeWords.ts";
import { drawWholeBlank } from "./wholeBlankDrawing.ts";
import { drawWholeStroke } from "./wholeStroke.ts";

const TITLE_MM: Mm = 6;
const ANSWER_MM: Mm = 4.6;
const WORDS_MM: Mm = 3.1;
const BLANK_HIGH_MM: Mm = 82;
/** The three pictures of a row. */
const VIEW = { wideMm: 58, highMm: 42 } as const;
const SECTION = { wideMm: 38, highMm: 42 } as const;
const FINGERS_HIGH_MM: Mm = 26;
const BETWEEN_MM: Mm = 3;
const TICK_MM: Mm = 6;
/** 8 points. */
const LEAST_LETTERS_MM: Mm = (8 * MM_PER_INCH) / 72;
const MOST_ENLARGED = 2;

/** Pages of the sheet. */
export function wholeSheet(job: WholeJob, answer: WholeAnswer, size: PageSize): readonly Page[] {
  const widthMm = flowWidth(size);
  const words = (sentence: string) => paragraph(sentence, WORDS_MM, widthMm);
  const headed = (heading: string, sentences: readonly string[]): Block[] => {
    const head = paragraph(heading, HEADING_MM, widthMm);
    return sentences.map((sentence) => ({ ...paragraph(sentence, WORDS_MM, widthMm, 4), head }));
  };
  const blocks: Block[] = [
    stack(
      [
        paragraph(job.part.name, TITLE_MM, widthMm),
        paragraph(wholeVerdict(job, answer), ANSWER_MM, widthMm),
        ...wholeJobSentences(job, answer).map(words),
        words("Made by ____________________   Date ____________   Sheet from ______________________________"),
      ],
      1,
    ),
    paragraph(wholeBlankTitle(job, answer), HEADING_MM, widthMm),
    blankPicture(job, answer, widthMm),
    blankTable(job, answer, widthMm),
    ...wholeBlankSentences(job, answer).map(words),
    ...wholeSections(job, answer).flatMap(([title, sentences]) => headed(title, sentences)),
    ...answer.order.map((_, index) => strokeRow(job, answer, index, widthMm)),
  ];
  return flowBlocks(blocks, size, job.part.name, CAUTIONS);
}

/** Widths of the table's columns, as shares of the page's. */
const SHARES = [0.24, 0.24, 0.24, 0.14, 0.14];

function blankTable(job: WholeJob, answer: WholeAnswer, widthMm: Mm): Block {
  const [headings = [], ...rows] = wholeBlankTable(job, answer);
  const columns = headings.map((heading, i) => ({ heading, widthMm: widthMm * SHARES[i]! }));
  return pageTable(columns, rows, CLOSE_SET);
}

function blankPicture(job: WholeJob, answer: WholeAnswer, widthMm: Mm): Block {
  const drawing = drawWholeBlank(job, answer);
  return {
    heightMm: BLANK_HIGH_MM,
    put: (leftMm, topMm) => {
      const box = { min: { x: leftMm, y: topMm - BLANK_HIGH_MM }, max: { x: leftMm + widthMm, y: topMm } };
      return { marks: [], placed: [readable(placeInBox(drawing, box, 1))] };
    },
  };
}

/** The drawing with letters no smaller on the page than can be read at arm's length. */
function readable(placed: Placed): Placed {
  const leastMm = LEAST_LETTERS_MM / placed.scale;
  const marks = placed.drawing.marks.map(
    (mark): Mark => (mark.kind === "text" ? { ...mark, heightMm: Math.max(mark.heightMm, leastMm) } : mark),
  );
  return { ...placed, drawing: { ...placed.drawing, marks } };
}

function strokeRow(job: WholeJob, answer: WholeAnswer, index: number, widthMm: Mm): Block {
  const pictures = drawWholeStroke(job, answer, index);
  const picturesWide = VIEW.wideMm + SECTION.wideMm + 2 * BETWEEN_MM;
  const wordsWide = widthMm - picturesWide;
  const words = stack([
    paragraph(strokeTitle(answer, index), HEADING_MM, wordsWide - TICK_MM - BETWEEN_MM),
    ...strokeSentences(job, answer, index).map((sentence) =>
      paragraph(sentence, WORDS_MM, wordsWide - TICK_MM - BETWEEN_MM),
    ),
  ]);
  const high = Math.max(VIEW.highMm, words.heightMm + FINGERS_HIGH_MM);
  return {
    heightMm: high + 2,
    put: (leftMm, topMm) => {
      const top = topMm - 2;
      const box = (x: Mm, wideMm: Mm, highMm: Mm, under: Mm) => ({
        min: { x, y: under - highMm },
        max: { x: x + wideMm, y: under },
      });
      const right = leftMm + picturesWide;
      const line: Mark = {
        kind: "line",
        layer: "cut",
        from: { x: leftMm, y: topMm },
        to: { x: leftMm + widthMm, y: topMm },
      };
      return {
        marks: [line, ...words.put(right, top).marks, ...tickBox(leftMm + widthMm - TICK_MM, top, TICK_MM)],
        placed: [
          placeInBox(pictures.view, box(leftMm, VIEW.wideMm, VIEW.highMm, top), MOST_ENLARGED),
          placeInBox(
            pictures.section,
            box(leftMm + VIEW.wideMm + BETWEEN_MM, SECTION.wideMm, SECTION.highMm, top),
            MOST_ENLARGED,
          ),
          readable(
            placeInBox(
              pictures.fingers,
              box(right, wordsWide, FINGERS_HIGH_MM - BETWEEN_MM, top - words.heightMm - BETWEEN_MM),
              MOST_ENLARGED,
            ),
          ),
        ],
      };
    },
  };
}
