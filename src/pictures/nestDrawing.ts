/**
 * A sheet with its blanks as they are sheared out of it: cuts numbered in order, waste hatched, size figures.
 */

import type { Nest, NestQuestion } from "../blank/nest.ts";
import type { NestedBlank } from "../blank/nestedBlank.ts";
import type { Drawing, Mark } from "../drawing/model.ts";
import type { Outline } from "../plane/outline.ts";
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";
import { lengthWords } from "../words/lengthWords.ts";

/** Text height as a share of the sheet's longer side: about 3 mm on a page 170 mm tall. */
const TEXT_SHARE = 0.018;

/** Drawing of one sheet, x across its width and y along its length, at true size; with `shapeAt` each blank's true outline in its rectangle. */
export function drawNest(
  question: NestQuestion,
  nest: Nest,
  units: "mm" | "in",
  shapeAt?: NestedBlank["shapeAt"],
): Drawing {
  const { widthMm, lengthMm } = question.sheet;
  const textMm = Math.max(widthMm, lengthMm) * TEXT_SHARE;
  const strips = nest.cuts.filter((cut) => cut.from.y === cut.to.y);
  const corner = { x: 0, y: 0 };
  const marks: Mark[] = [
    { kind: "outline", layer: "waste", outline: box(0, 0, widthMm, lengthMm), caption: "sheet" },
    ...nest.places.map(({ at, widthMm: wide, heightMm: high }): Mark => {
      return { kind: "outline", layer: "note", outline: box(at.x, at.y, wide, high), caption: "blank" };
    }),
    ...nest.places.flatMap((place): Mark[] => {
      const { at, widthMm: wide, heightMm: high } = place;
      const rectangle = box(at.x, at.y, wide, high);
      const shapes = shapeAt?.(place);
      return (shapes ?? [rectangle]).map((outline) => ({ kind: "outline", layer: "cut", outline }));
    }),
    ...strips.map((cut, i): Mark => {
      const at = { x: widthMm + textMm * 0.5, y: cut.from.y - textMm * 0.35 };
      return { kind: "text", layer: "note", at, words: `cut ${i + 1}`, heightMm: textMm, anchor: "start" };
    }),
    dimension(corner, { x: widthMm, y: 0 }, lengthWords(widthMm, units), -3 * textMm),
    dimension(corner, { x: 0, y: lengthMm }, lengthWords(lengthMm, units), 3 * textMm),
    ...grainMarks(widthMm, lengthMm, textMm),
  ];
  const count = nest.perSheet === 1 ? "one blank" : `${nest.perSheet} blanks`;
  const sentence = `${count} off a sheet of ${lengthWords(widthMm, units)} by ${lengthWords(lengthMm, units)}, ${nest.wastePercent.toFixed(0)} % waste in the strips.`;
  const min = { x: -7 * textMm, y: -7 * textMm };
  const max = { x: widthMm + 7 * textMm, y: lengthMm + 5 * textMm };
  return { sentence, window: { min, max }, marks };
}

function box(x: Mm, y: Mm, wide: Mm, high: Mm): Outline {
  const corners = [
    { x, y },
    { x: x + wide, y },
    { x: x + wide, y: y + high },
    { x, y: y + high },
  ];
  return { edges: corners.map((from, i) => ({ kind: "line", from, to: corners[(i + 1) % 4] ?? from })) };
}

function dimension(from: Point, to: Point, words: string, offsetMm: Mm): Mark {
  return {
    kind: "dimension",
    layer: "dimension",
    from,
    to,
    words,
    offsetMm,
  };
}

/** The sheet's grain runs along its length; an arrow over its top edge says so. */
function grainMarks(widthMm: Mm, lengthMm: Mm, textMm: Mm): readonly Mark[] {
  const x = widthMm / 2;
  const tip = { x, y: lengthMm + 4 * textMm };
  const foot = { x, y: lengthMm + textMm };
  const barb = (side: number): Mark => {
    return { kind: "line", layer: "grain", from: tip, to: { x: x + side * 0.5 * textMm, y: tip.y - textMm } };
  };
  return [
    { kind: "line", layer: "grain", from: foot, to: tip },
    barb(-1),
    barb(1),
    {
      kind: "text",
      layer: "grain",
      at: { x: x + textMm, y: lengthMm + 2 * textMm },
      words: "grain",
      heightMm: textMm,
      anchor: "start",
    },
  ];
}
