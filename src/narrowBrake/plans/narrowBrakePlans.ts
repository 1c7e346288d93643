/**
 * The plans of a shop-made narrow brake to print: a picture with its list, the assembly, each piece, the steps of making with their
 * pictures, proving, checks, cautions. Everything is read off the plan's assembly; one system of units.
 */
import type { Block } from "../../drawing/block.ts";
import { flowBlocks, flowWidth } from "../../drawing/flow.ts";
import type { Drawing } from "../../drawing/model.ts";
import type { Page, Placed } from "../../drawing/page.ts";
import type { PageSize } from "../../drawing/pageSize.ts";
import { pageTable } from "../../drawing/pageTable.ts";
import { paragraph, stack } from "../../drawing/paragraph.ts";
import { formatLength } from "../../units/length.ts";
import type { Mm } from "../../units/quantity.ts";
import { weightWords } from "../../words/weightWords.ts";
import type { NarrowBrake, NarrowBrakePlan } from "../narrowBrake.ts";
import { checkFigures } from "../shopFigures.ts";
import type { Piece } from "../solid.ts";
import { stockIn } from "../stockSize.ts";
import { assemblySheets } from "./assemblySheet.ts";
import { noseDetail } from "./noseDetail.ts";
import { pictureOf, scaledDrawing } from "./picture.ts";
import { pieceSheet } from "./pieceSheet.ts";
import { printedFormula } from "./printedFormula.ts";

const TITLE = "Shop-made narrow brake";
const TITLE_MM: Mm = 6;
const HEADING_MM: Mm = 4.4;
const WORDS_MM: Mm = 3.1;
/** Type of 8.2 points. */
const LIST = { wordsMm: 2.9, leading: 1.22, insetMm: 0.35 } as const;
const PICTURE_HIGH_MM: Mm = 104;
const STEP_PICTURE = { wideMm: 64, highMm: 36 } as const;
const CHECKS_A_TABLE = 3;

/**
 * Pages of the plans.
 * @throws RangeError where there is no plan
 */
export function narrowBrakePlans(brake: NarrowBrake, size: PageSize): readonly Page[] {
  const { plan } = brake;
  if (plan === null) throw new RangeError("there is no plan to draw");
  const { units } = brake.requirements;
  const widthMm = flowWidth(size);
  const foot = plan.cautions.slice(0, 2).join(" ");
  const flow = (blocks: readonly Block[], name: string) => flowBlocks(blocks, size, name, foot);
  return [
    ...flow(firstPage(brake, plan, widthMm), `${TITLE}, picture and list`),
    ...assemblySheets(plan, units, size),
    ...flow(
      [...pieceBlocks(brake, plan, widthMm), noseDetail(plan, brake.requirements, widthMm)],
      `${TITLE}, pieces`,
    ),
    ...flow(makingBlocks(plan, widthMm), `${TITLE}, making`),
    ...flow(restBlocks(brake, plan, widthMm), `${TITLE}, checks`),
  ];
}

/**
 * The numbered picture of page 1 alone, with the cut list's numbers, for a screen.
 * @throws RangeError where there is no plan
 */
export function drawnBrake({ plan, requirements }: NarrowBrake, wideMm: Mm = 190): Drawing {
  if (plan === null) throw new RangeError("there is no plan to draw");
  const box = { wideMm, highMm: wideMm * 0.55, numbered: true };
  const names = requirements.parts.map(({ name }) => name).join(", ");
  const { drawing, scale } = pictureOf(plan.assembly.pieces, `Shop-made narrow brake for ${names}.`, box);
  return scaledDrawing(drawing, scale);
}

function firstPage(
  { requirements, windowSentence }: NarrowBrake,
  plan: NarrowBrakePlan,
  widthMm: Mm,
): Block[] {
  const { units } = requirements;
  const shares = [0.06, 0.18, 0.08, 0.53, 0.15];
  const list = pageTable(
    ["No.", "Piece", "Count", "Stock", `Length, ${units}`].map((heading, i) => ({
      heading,
      widthMm: widthMm * shares[i]!,
    })),
    plan.cutList.map(({ item, piece, count, stock, lengthMm, bought }) => [
      String(item),
      piece,
      String(count),
      stock.replace(` (${units})`, ""),
      bought && !piece.includes("screw") ? "bought" : formatLength(lengthMm, units),
    ]),
    LIST,
  );
  return [
    stack(
      [
        paragraph(TITLE, TITLE_MM, widthMm),
        paragraph(
          `For: ${requirements.parts.map(({ name }) => name).join(", ")}. ${windowSentence} Weight ${weightWords(plan.weightKg, units)}.`,
          WORDS_MM,
          widthMm,
        ),
      ],
      1,
    ),
    picture(plan.assembly.pieces, "The whole brake, numbered as in the list.", {
      wideMm: widthMm,
      highMm: PICTURE_HIGH_MM,
      numbered: true,
    }),
    list,
  ];
}

function picture(
  pieces: readonly Piece[],
  sentence: string,
  box: { readonly wideMm: Mm; readonly highMm: Mm; readonly numbered: boolean },
): Block {
  const { drawing, scale } = pictureOf(pieces, sentence, box);
  return {
    heightMm: box.highMm,
    put: (leftMm, topMm) => {
      const placed: Placed = { drawing, at: { x: leftMm, y: topMm - box.highMm }, scale };
      return { marks: [], placed: [placed] };
    },
  };
}

/** A drawing of each sawn piece with its words, as wide as a small screen wants it. */
export function pieceDrawings(
  brake: NarrowBrake,
  widthMm: Mm,
): { readonly name: string; readonly drawing: Drawing }[] {
  const { plan } = brake;
  if (plan === null) return [];
  const sawn = plan.cutList.filter(({ bought }) => !bought);
  return pieceBlocks(brake, plan, widthMm).map((block, i) => ({
    name: `${sawn[i]!.item} ${sawn[i]!.piece}`,
    drawing: {
      sentence: `${sawn[i]!.piece}: ${sawn[i]!.work}`,
      window: { min: { x: -2, y: -block.heightMm }, max: { x: widthMm + 2, y: 2 } },
      marks: block.put(0, 0).marks,
    },
  }));
}

/** The steps of making, each with the picture of the pieces that it is about. */
export function stepDrawings(
  { plan }: NarrowBrake,
  wideMm: Mm,
): { readonly words: string; readonly drawing: Drawing }[] {
  if (plan === null) return [];
  return plan.making.map(({ words, shows }) => {
    const pieces = plan.assembly.pieces.filter(({ id }) => shows.includes(id));
    const { drawing, scale } = pictureOf(pieces, words, { wideMm, highMm: wideMm * 0.6, numbered: false });
    return { words, drawing: scaledDrawing(drawing, scale) };
  });
}

function pieceBlocks({ requirements }: NarrowBrake, plan: NarrowBrakePlan, widthMm: Mm): Block[] {
  const { units } = requirements;
  const stock = stockIn(units);
  const threads = [...stock.bolts, ...stock.screws, ...stock.flatHeads];
  const words = (mm: Mm) => formatLength(mm, units);
  return plan.cutList
    .filter(({ bought }) => !bought)
    .map((cut) => {
      const piece = plan.assembly.pieces.find(({ item }) => item === cut.item)!;
      const nose =
        cut.piece === "clamp bar"
          ? `Nose: radius ${words(requirements.noseRadiusMm)}, front ${requirements.frontBevelDeg}° from square, leaning back.`
          : undefined;
      return pieceSheet(piece, cut, { units, widthMm, threads, ...(nose && { endNote: nose }) });
    });
}

function makingBlocks(
  { making, assembly, proving, tools, carries, crown }: NarrowBrakePlan,
  widthMm: Mm,
): Block[] {
  const steps = making.map(({ words, shows }, i): Block => {
    const shown = assembly.pieces.filter(({ id }) => shows.includes(id));
    const image = picture(shown, `Step ${i + 1}.`, { ...STEP_PICTURE, numbered: false });
    const told = paragraph(`${i + 1}. ${words}`, WORDS_MM, widthMm - STEP_PICTURE.wideMm - 6);
    return {
      heightMm: Math.max(STEP_PICTURE.highMm, told.heightMm),
      put: (leftMm, topMm) => {
        const right = told.put(leftMm + STEP_PICTURE.wideMm + 6, topMm - 2);
        const left = image.put(leftMm, topMm);
        return { marks: [...right.marks, ...left.marks], placed: left.placed ?? [] };
      },
    };
  });
  return [
    paragraph("Making it", HEADING_MM, widthMm),
    headed("Tools", [`${tools.join("; ")}.`], widthMm),
    ...steps,
    headed("What it carries, and how hard to pull", carries, widthMm),
    headed("Proving it, before the first part", numbered(proving), widthMm),
    headed("Crown", crown, widthMm),
  ];
}

function restBlocks({ requirements }: NarrowBrake, plan: NarrowBrakePlan, widthMm: Mm): Block[] {
  const { units } = requirements;
  const shares = [0.2, 0.17, 0.27, 0.36];
  return [
    headed("Cautions", plan.cautions, widthMm),
    headed(
      "Where this stops",
      [...plan.limits, ...plan.notChecked.map((one) => `Not checked: ${one}.`)],
      widthMm,
    ),
    ...inChunks(plan.checks, CHECKS_A_TABLE).map((checks, i) =>
      stack(
        [
          paragraph(i === 0 ? "Checks" : "Checks, continued", HEADING_MM, widthMm),
          pageTable(
            ["Check", "Found", "Formula", "Source, and what is taken for granted"].map((heading, k) => ({
              heading,
              widthMm: widthMm * shares[k]!,
            })),
            checks.map((check) => [
              `${check.member}: ${check.check}`,
              checkFigures(check, units),
              printedFormula(check.formula),
              `${printedFormula(check.source)}. Taken: ${check.assumptions.join("; ")}.`,
            ]),
          ),
        ],
        1.5,
      ),
    ),
    headed("Taken for granted", [`${plan.assumptions.join("; ")}.`], widthMm),
  ];
}

function headed(title: string, lines: readonly string[], widthMm: Mm): Block {
  return stack(
    [paragraph(title, HEADING_MM, widthMm), ...lines.map((line) => paragraph(line, WORDS_MM, widthMm))],
    0.7,
  );
}

function numbered(lines: readonly string[]): string[] {
  return lines.map((line, i) => `${i + 1}. ${line}`);
}

/** A table is never torn, so that a long one is set as several. */
function inChunks<Item>(items: readonly Item[], size: number): Item[][] {
  return Array.from({ length: Math.ceil(items.length / size) }, (_, i) =>
    items.slice(i * size, (i + 1) * size),
  );
}
