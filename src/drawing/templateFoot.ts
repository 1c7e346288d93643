/**
 * The foot of a template page: check square (50 mm, or 2 in where the shop works in inches), the page's place among
 * the pages, how to print and join them, and the cautions. All in page millimetres.
 */
import type { Mm } from "../units/quantity.ts";
import type { Mark } from "./model.ts";
import { type PageSize, PRINTER_MARGIN_MM } from "./pageSize.ts";
import { wrapWords } from "./printWords.ts";
import { FOOT_MM, type Tile, type Tiling } from "./tiles.ts";

const LINE_MM: Mm = 4.4;
const WORDS_MM: Mm = 3;

/** Side of the check square. @example checkSquareMm("in") // 50.8 */
export function checkSquareMm(units: "mm" | "in"): Mm {
  return units === "in" ? 2 * 25.4 : 50;
}

/** Marks of the foot of one page. */
export function footMarks(
  size: PageSize,
  name: string,
  units: "mm" | "in",
  tile: Tile,
  spread: Pick<Tiling, "rows" | "columns">,
): readonly Mark[] {
  const side = checkSquareMm(units);
  const { marks: key, widthMm: keyWidth } = pageKey(size, tile, spread);
  const left = PRINTER_MARGIN_MM + side + 5;
  const width = size.widthMm - PRINTER_MARGIN_MM - left - (keyWidth === 0 ? 0 : keyWidth + 5);
  return [...checkSquare(side, units), ...key, ...footWords({ left, width }, name, units, tile, spread)];
}

function checkSquare(side: Mm, units: "mm" | "in"): readonly Mark[] {
  const x = PRINTER_MARGIN_MM;
  const y = PRINTER_MARGIN_MM;
  const corners = [
    { x, y },
    { x: x + side, y },
    { x: x + side, y: y + side },
    { x, y: y + side },
  ];
  const words = units === "in" ? ["check square", "2 in × 2 in"] : ["check square", "50 mm × 50 mm"];
  return [
    ...corners.map(
      (from, i): Mark => ({ kind: "line", layer: "dimension", from, to: corners[(i + 1) % 4] ?? from }),
    ),
    ...words.map(
      (line, i): Mark => ({
        kind: "text",
        layer: "note",
        at: { x: x + side / 2, y: y + side / 2 + 1 - i * 5 },
        words: line,
        heightMm: WORDS_MM,
        anchor: "middle",
      }),
    ),
  ];
}

function footWords(
  { left, width }: { readonly left: Mm; readonly width: Mm },
  name: string,
  units: "mm" | "in",
  tile: Tile,
  { rows, columns }: Pick<Tiling, "rows" | "columns">,
): readonly Mark[] {
  const several = rows * columns > 1;
  const place = several
    ? `Row ${tile.row + 1} of ${rows}, column ${tile.column + 1} of ${columns}.`
    : "One page.";
  const said: readonly (readonly [words: string, heightMm: Mm])[] = [
    [name, 4.2],
    [`Full-size template. ${place}`, WORDS_MM],
    [
      `Print at 100 %, not "fit to page". Measure the check square: ${units === "in" ? "2 in" : "50 mm"} both ways, or don't use this page.`,
      WORDS_MM,
    ],
    ...(several
      ? [
          [
            "Trim one page of two along the dashed line, lay it on its neighbour so that lines and crosses meet, tape.",
            WORDS_MM,
          ] as const,
        ]
      : []),
    ["Sheet metal cuts: wear gloves, break the edges. A leaf brake crushes: keep hands clear.", WORDS_MM],
  ];
  const lines = said.flatMap(([words, heightMm]) =>
    wrapWords(words, heightMm, width).map((line) => [line, heightMm] as const),
  );
  return lines.map(
    ([words, heightMm], i): Mark => ({
      kind: "text",
      layer: "note",
      at: { x: left, y: PRINTER_MARGIN_MM + FOOT_MM - 11 - i * LINE_MM },
      words,
      heightMm,
      anchor: "start",
    }),
  );
}

/** A small map of all pages with this one crossed out; none where there is one page. */
function pageKey(
  size: PageSize,
  tile: Tile,
  { rows, columns }: Pick<Tiling, "rows" | "columns">,
): { readonly marks: readonly Mark[]; readonly widthMm: Mm } {
  if (rows * columns === 1) return { marks: [], widthMm: 0 };
  const cell = Math.min(8, 30 / columns, 40 / rows);
  const left = size.widthMm - PRINTER_MARGIN_MM - columns * cell;
  const top = PRINTER_MARGIN_MM + FOOT_MM - 8;
  const bottom = top - rows * cell;
  const right = left + columns * cell;
  const grid: Mark[] = [];
  for (let column = 0; column <= columns; column += 1) {
    const x = left + column * cell;
    grid.push({ kind: "line", layer: "note", from: { x, y: bottom }, to: { x, y: top } });
  }
  for (let row = 0; row <= rows; row += 1) {
    const y = top - row * cell;
    grid.push({ kind: "line", layer: "note", from: { x: left, y }, to: { x: right, y } });
  }
  const at = { x: left + (tile.column + 0.5) * cell, y: top - (tile.row + 0.5) * cell };
  const mark: Mark = { kind: "cross", layer: "contact", at };
  return { marks: [...grid, mark], widthMm: columns * cell };
}
