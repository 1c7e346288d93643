/**
 * What both sheets of the assembly share: the title with its projection sign, names with leaders, dimensions, places on the page.
 */
import type { Mark } from "../../drawing/model.ts";
import { type PageSize, PRINTER_MARGIN_MM } from "../../drawing/pageSize.ts";
import { spread } from "../../drawing/spread.ts";
import type { Point } from "../../plane/point.ts";
import type { LengthUnit } from "../../units/length.ts";
import type { Mm } from "../../units/quantity.ts";
import { projectionSign } from "./projectionSign.ts";
import type { Scale } from "./scales.ts";

const TITLE_MM: Mm = 5;
export const WORDS_MM: Mm = 3;
/** From one dimension line to the next. */
export const ROW_MM: Mm = 7.5;

export interface Window {
  readonly min: Point;
  readonly max: Point;
  readonly wideMm: Mm;
  readonly highMm: Mm;
}

/** Where a point of the view comes to lie on the page. */
export function placer({ min, max }: Window, at: { readonly x: Mm; readonly top: Mm }, { ratio }: Scale) {
  const middle = (min.x + max.x) / 2;
  return (point: Point): Point => ({
    x: at.x + (point.x - middle) * ratio,
    y: at.top - (max.y - point.y) * ratio,
  });
}

export function leaders(
  named: readonly (readonly [string, Point])[],
  place: (point: Point) => Point,
  x: Mm,
  anchor: "start" | "end",
): Mark[] {
  const sorted = [...named].sort((a, b) => place(a[1]).y - place(b[1]).y);
  const ys = spread(
    sorted.map(([, point]) => place(point).y),
    WORDS_MM * 1.6,
  );
  return sorted.flatMap(([words, point], i): Mark[] => {
    const to = place(point);
    const from = { x: anchor === "start" ? x - 1 : x + 1, y: ys[i]! + WORDS_MM * 0.35 };
    return [
      { kind: "line", layer: "dimension", from, to },
      { kind: "arc", layer: "cut", center: to, radius: 0.4, startRad: 0, sweepRad: 2 * Math.PI },
      { kind: "text", layer: "note", at: { x, y: ys[i]! }, words, heightMm: WORDS_MM, anchor },
    ];
  });
}

export function titleMarks(lines: readonly string[], size: PageSize): Mark[] {
  const top = size.heightMm - PRINTER_MARGIN_MM;
  return [
    {
      kind: "text",
      layer: "note",
      at: { x: PRINTER_MARGIN_MM, y: top - TITLE_MM },
      words: "Shop-made narrow brake",
      heightMm: TITLE_MM,
      anchor: "start",
    },
    ...lines.map((words, i) => label(words, PRINTER_MARGIN_MM, top - TITLE_MM - 5.5 - 4.5 * i)),
    ...projectionSign({ x: size.widthMm - PRINTER_MARGIN_MM - 30, y: top - 6 }),
  ];
}

export function unitName(units: LengthUnit): string {
  return units === "in" ? "inches" : "millimetres";
}

export function label(words: string, x: Mm, y: Mm): Mark {
  return { kind: "text", layer: "note", at: { x, y }, words, heightMm: WORDS_MM, anchor: "start" };
}

export function measured(from: Point, to: Point, words: string, offsetMm: Mm): Mark {
  return { kind: "dimension", layer: "dimension", from, to, words, offsetMm };
}
