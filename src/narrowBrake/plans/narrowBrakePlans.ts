/**
 * The plans of a shop-made narrow brake to print: the drawing on its side, then lists, checks, making and proving.
 * Blocks flow over as many pages as they need; checks show figure, limit, formula and source.
 * Words and figures are the design's own.
 */

import type { Block } from "../../drawing/block.ts";
import { flowBlocks, flowWidth } from "../../drawing/flow.ts";
import { onItsSide, type Page, placeInBox } from "../../drawing/page.ts";
import { type PageSize, PRINTER_MARGIN_MM } from "../../drawing/pageSize.ts";
import { pageTable } from "../../drawing/pageTable.ts";
import { paragraph, stack } from "../../drawing/paragraph.ts";
import { formatLength } from "../../units/length.ts";
import type { Mm } from "../../units/quantity.ts";
import { weightWords } from "../../words/weightWords.ts";
import type { NarrowBrake } from "../narrowBrake.ts";
import { checkFigures } from "./checkFigures.ts";
import { CROWN_PLACES, crownRows } from "./crownTable.ts";
import { drawNarrowBrake } from "./narrowBrakeDrawing.ts";

const TITLE = "Shop-made narrow brake";
const TITLE_MM: Mm = 6;
const HEADING_MM: Mm = 4.2;
const WORDS_MM: Mm = 3.1;
const CHECKS_A_TABLE = 5;

/**
 * Pages of the plans.
 * @throws RangeError where there is no plan
 */
export function narrowBrakePlans(brake: NarrowBrake, size: PageSize): readonly Page[] {
  const aside = onItsSide(size);
  const box = {
    min: { x: PRINTER_MARGIN_MM, y: PRINTER_MARGIN_MM },
    max: { x: aside.widthMm - PRINTER_MARGIN_MM, y: aside.heightMm - PRINTER_MARGIN_MM },
  };
  const drawing: Page = { size: aside, placed: [placeInBox(drawNarrowBrake(brake), box, 1)] };
  return [drawing, ...flowBlocks(blocksOf(brake, flowWidth(size)), size, TITLE, brake.cautions.join(" "))];
}

function blocksOf(brake: NarrowBrake, widthMm: Mm): Block[] {
  const { units } = brake.requirements;
  const words = (sentence: string) => paragraph(sentence, WORDS_MM, widthMm);
  const heading = (sentence: string) => paragraph(sentence, HEADING_MM, widthMm);
  const headed = (title: string, lines: readonly string[]) =>
    stack([heading(title), ...lines.map(words)], 0.6);
  const tabled = (
    title: string,
    titles: readonly string[],
    shares: readonly number[],
    rows: readonly (readonly string[])[],
  ) =>
    stack(
      [
        heading(title),
        pageTable(
          titles.map((one, i) => ({ heading: one, widthMm: widthMm * shares[i]! })),
          rows,
        ),
      ],
      1.5,
    );
  const numbered = (lines: readonly string[]) => lines.map((line, i) => `${i + 1}. ${line}`);
  return [
    stack(
      [
        paragraph(TITLE, TITLE_MM, widthMm),
        words(`For: ${brake.requirements.parts.map(({ name }) => name).join(", ")}.`),
        words(`${brake.windowSentence} Weight ${weightWords(brake.weightKg, units)}.`),
        ...brake.problems.map((problem) => words(`Not yet right: ${problem}`)),
      ],
      1,
    ),
    headed("Where this stops", brake.limits),
    tabled(
      "Cut list",
      ["Piece", "Count", "Stock", `Length, ${units}`, "Weight", "Work"],
      [0.13, 0.07, 0.25, 0.11, 0.12, 0.32],
      brake.cutList.map((piece) => [
        piece.piece,
        String(piece.count),
        piece.stock,
        formatLength(piece.lengthMm, units),
        piece.weightKg > 0 ? weightWords(piece.weightKg, units) : "",
        piece.work,
      ]),
    ),
    tabled(
      "Hardware",
      ["Item", "Count", "Size", "Remark"],
      [0.22, 0.08, 0.35, 0.35],
      brake.hardware.map(({ item, count, size, remark }) => [item, String(count), size, remark]),
    ),
    headed("Tools", [`${brake.tools.join("; ")}.`]),
    headed("Making it", numbered(brake.makingOrder)),
    headed("Proving it", numbered(brake.proving)),
    headed(
      "Bow and crown",
      brake.bows.map(({ sentence }) => sentence),
    ),
    tabled(
      "Packing for the crown, millimetres",
      ["Between", ...CROWN_PLACES],
      [0.25, 0.15, 0.15, 0.15, 0.15, 0.15],
      crownRows(brake),
    ),
    ...inChunks(brake.checks, CHECKS_A_TABLE).map((checks, i) =>
      tabled(
        i === 0 ? "Checks" : "Checks, continued",
        ["Check", "Found", "Formula", "Source, and what is taken for granted"],
        [0.2, 0.15, 0.25, 0.4],
        checks.map((check) => [
          `${check.member}: ${check.check}`,
          checkFigures(check, units),
          printedFormula(check.formula),
          `${check.source}. Taken: ${check.assumptions.join("; ")}.`,
        ]),
      ),
    ),
    headed("Taken for granted", [`${brake.assumptions.join("; ")}.`]),
  ];
}

/** A table is never torn, so that a long one is set as several. */
function inChunks<Item>(items: readonly Item[], size: number): Item[][] {
  return Array.from({ length: Math.ceil(items.length / size) }, (_, i) =>
    items.slice(i * size, (i + 1) * size),
  );
}

/** Print fonts have no Greek and few raised figures: letters as words, powers with ^. */
const PRINTED: readonly (readonly [letter: string, words: string])[] = [
  ["Δθ", "angle lost"],
  ["σ", "stress"],
  ["τ", "shear"],
  ["δ", "give"],
  ["ν", "Poisson"],
  ["π", "pi"],
  ["ℓ", "length"],
  ["⁴", "^4"],
  ["≤", "at most"],
  ["−", "-"],
];

function printedFormula(formula: string): string {
  return PRINTED.reduce((text, [letter, words]) => text.replaceAll(letter, words), formula);
}
