/**
 * How a full-size template is spread over as many pages as it needs: rows from the top, columns from the left,
 * neighbours overlapping by a strip. Exact.
 */
import type { Mm } from "../units/quantity.ts";
import type { Drawing } from "./model.ts";
import { onItsSide, spanOf } from "./page.ts";
import { type PageSize, PRINTER_MARGIN_MM } from "./pageSize.ts";

/** Strip that two neighbouring pages both show. */
export const OVERLAP_MM: Mm = 10;

/** Height kept free at the foot of each page, over the printer's margin, for the check square and the words. */
export const FOOT_MM: Mm = 58;

export interface Tile {
  /** Counted from 0; rows from the top, columns from the left. */
  readonly row: number;
  readonly column: number;
  /** What the page shows, in the drawing's frame. */
  readonly window: Drawing["window"];
}

export interface Tiling {
  readonly size: PageSize;
  readonly rows: number;
  readonly columns: number;
  readonly tiles: readonly Tile[];
}

/**
 * Pages that a drawing needs at full size, the paper upright or on its side, whichever takes fewer (upright if equal).
 * @example tileOut({ min: { x: 0, y: 0 }, max: { x: 300, y: 100 } }, A4).tiles.length // 2
 */
export function tileOut(window: Drawing["window"], size: PageSize): Tiling {
  const upright = tiling(window, size);
  const lying = tiling(window, onItsSide(size));
  return lying.tiles.length < upright.tiles.length ? lying : upright;
}

/** Room for the template on a page, above the foot. */
function roomOn(size: PageSize): { readonly widthMm: Mm; readonly heightMm: Mm } {
  return {
    widthMm: size.widthMm - 2 * PRINTER_MARGIN_MM,
    heightMm: size.heightMm - 2 * PRINTER_MARGIN_MM - FOOT_MM,
  };
}

function tiling(window: Drawing["window"], size: PageSize): Tiling {
  const { widthMm, heightMm } = spanOf(window);
  const room = roomOn(size);
  const columns = pagesAlong(widthMm, room.widthMm);
  const rows = pagesAlong(heightMm, room.heightMm);
  const tiles = Array.from({ length: rows * columns }, (_, index): Tile => {
    const row = Math.floor(index / columns);
    const column = index % columns;
    const left = window.min.x + column * (room.widthMm - OVERLAP_MM);
    const top = window.max.y - row * (room.heightMm - OVERLAP_MM);
    const min = { x: left, y: Math.max(top - room.heightMm, window.min.y) };
    const max = { x: Math.min(left + room.widthMm, window.max.x), y: top };
    return { row, column, window: { min, max } };
  });
  return { size, rows, columns, tiles };
}

function pagesAlong(length: Mm, room: Mm): number {
  return Math.max(1, Math.ceil((length - OVERLAP_MM) / (room - OVERLAP_MM) - 1e-9));
}
