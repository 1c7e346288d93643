/**
 * A full-size template of a drawing, page by page: neighbours share a seam and crosses to join them by, and each page
 * carries a check square, its place in the rows and columns, and the words that keep it true. Exact, scale 1.
 */
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";
import type { Drawing, Mark } from "./model.ts";
import { onPaper, type Page, spanOf } from "./page.ts";
import { type PageSize, PRINTER_MARGIN_MM } from "./pageSize.ts";
import { footMarks } from "./templateFoot.ts";
import { OVERLAP_MM, type Tile, type Tiling, tileOut } from "./tiles.ts";

/** Pages of a full-size template. `name` stands on every page; `units` chooses the check square, 50 mm or 2 in. */
export function templatePages(
  drawing: Drawing,
  size: PageSize,
  name: string,
  units: "mm" | "in",
): readonly Page[] {
  const spread = tileOut(drawing.window, size);
  return spread.tiles.map((tile) => {
    const at = {
      x: PRINTER_MARGIN_MM,
      y: spread.size.heightMm - PRINTER_MARGIN_MM - spanOf(tile.window).heightMm,
    };
    const shown: Drawing = {
      sentence: drawing.sentence,
      window: tile.window,
      marks: [...drawing.marks, ...joiningMarks(tile, spread)],
    };
    const foot = footMarks(spread.size, name, units, tile, spread);
    const sentence = `Row ${tile.row + 1}, column ${tile.column + 1} of the template.`;
    return {
      size: spread.size,
      placed: [{ drawing: shown, at, scale: 1 }, onPaper(spread.size, sentence, foot)],
    };
  });
}

/** Seams in the middle of each overlap, the same points on both pages, with a cross at a third and two thirds. */
function joiningMarks(tile: Tile, spread: Tiling): readonly Mark[] {
  const { min, max } = tile.window;
  const half = OVERLAP_MM / 2;
  const marks: Mark[] = [];
  const upright = (x: Mm) => marks.push(...seam({ x, y: min.y }, { x, y: max.y }));
  const level = (y: Mm) => marks.push(...seam({ x: min.x, y }, { x: max.x, y }));
  if (tile.column > 0) upright(min.x + half);
  if (tile.column < spread.columns - 1) upright(max.x - half);
  if (tile.row > 0) level(max.y - half);
  if (tile.row < spread.rows - 1) level(min.y + half);
  return marks;
}

function seam(from: Point, to: Point): readonly Mark[] {
  const between = (share: number) => ({
    x: from.x + (to.x - from.x) * share,
    y: from.y + (to.y - from.y) * share,
  });
  return [
    { kind: "line", layer: "waste", from, to },
    { kind: "cross", layer: "note", at: between(1 / 3) },
    { kind: "cross", layer: "note", at: between(2 / 3) },
  ];
}
