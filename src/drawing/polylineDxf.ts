/**
 * One flat piece as DXF text (AC1015, millimetres) for a cutter: closed polylines for its outlines, circles for its holes, words on a
 * layer of their own. Nothing is left out and nothing is drawn twice. Coordinates to 1e-6 mm.
 */
import DxfFile from "dxf-writer";
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";
import { MADE_BY } from "./madeBy.ts";

export interface FlatPiece {
  /** Closed outlines by their corners; the last joins the first. */
  readonly outlines: readonly (readonly Point[])[];
  readonly holes: readonly { readonly center: Point; readonly diameterMm: Mm }[];
  readonly words: readonly { readonly at: Point; readonly text: string; readonly heightMm: Mm }[];
}

/** @example polylineDxf({ outlines: [], holes: [], words: [] }).slice(-3) // "EOF" */
export function polylineDxf({ outlines, holes, words }: FlatPiece): string {
  const file = new DxfFile();
  file.setUnits("Millimeters");
  // The library's types know numbers only in header values; a version is a word.
  file.header("ACADVER", [[1, "AC1015" as unknown as number]]);
  file.addLayer("CUT", 7, "CONTINUOUS");
  file.addLayer("HOLES", 5, "CONTINUOUS");
  file.addLayer("TEXT", 8, "CONTINUOUS");
  file.setActiveLayer("CUT");
  for (const outline of outlines) {
    file.drawPolyline(
      outline.map(({ x, y }) => [tidy(x), tidy(y)]),
      true,
    );
  }
  file.setActiveLayer("HOLES");
  for (const { center, diameterMm } of holes)
    file.drawCircle(tidy(center.x), tidy(center.y), tidy(diameterMm / 2));
  file.setActiveLayer("TEXT");
  for (const { at, text, heightMm } of words) {
    const plain = text.replace(/×/gu, "x").replace(/[^\x20-\x7e]/gu, "?");
    file.drawText(tidy(at.x), tidy(at.y), tidy(heightMm), 0, plain, "left", "baseline");
  }
  return `999\n${MADE_BY}\n${file.toDxfString()}`;
}

function tidy(length: Mm): number {
  const rounded = Math.round(length * 1e6) / 1e6;
  return rounded === 0 ? 0 : rounded;
}
