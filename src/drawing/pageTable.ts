/**
 * A table as a block of a page: ruled rows, words wrapped in their cells, the heading row under a heavy line.
 */
import type { Mm } from "../units/quantity.ts";
import type { Block } from "./block.ts";
import type { Mark } from "./model.ts";
import { wrapWords } from "./printWords.ts";

export interface TableColumn {
  readonly heading: string;
  readonly widthMm: Mm;
}

/** How close a table is set. */
export interface TableSetting {
  readonly wordsMm: Mm;
  /** Line to line, in heights of the type. */
  readonly leading: number;
  /** Room between words and rules. */
  readonly insetMm: Mm;
}

/** Words to the rules at their sides. */
const INSET_MM: Mm = 1.2;
const ROOMY: TableSetting = { wordsMm: 3, leading: 1.3, insetMm: 1.2 };
/** For many rows: type of 7.7 points, rules close. */
export const CLOSE_SET: TableSetting = { wordsMm: 2.7, leading: 1.22, insetMm: 0.35 };

/** A table with one line of words or more in each cell; missing cells stay empty, to be written in by hand. */
export function pageTable(
  columns: readonly TableColumn[],
  rows: readonly (readonly string[])[],
  setting: TableSetting = ROOMY,
): Block {
  const { wordsMm, leading, insetMm } = setting;
  const all = [columns.map((column) => column.heading), ...rows].map((row) =>
    columns.map(({ widthMm }, i) => wrapWords(row[i] ?? "", wordsMm, widthMm - 2 * INSET_MM)),
  );
  const heights = all.map((row) => {
    const most = Math.max(1, ...row.map((lines) => lines.length));
    return most * wordsMm * leading + 2 * insetMm;
  });
  const widthMm = columns.reduce((sum, column) => sum + column.widthMm, 0);
  return {
    heightMm: heights.reduce((sum, height) => sum + height, 0),
    put: (leftMm, topMm) => {
      const marks: Mark[] = [ruler("dimension", leftMm, topMm, widthMm)];
      let top = topMm;
      all.forEach((row, index) => {
        let left = leftMm;
        row.forEach((lines, i) => {
          marks.push(...cell(lines, left, top, setting));
          left += columns[i]?.widthMm ?? 0;
        });
        top -= heights[index] ?? 0;
        marks.push(ruler(index === 0 ? "cut" : "dimension", leftMm, top, widthMm));
      });
      return { marks };
    },
  };
}

function cell(
  lines: readonly string[],
  leftMm: Mm,
  topMm: Mm,
  { wordsMm, leading, insetMm }: TableSetting,
): readonly Mark[] {
  return lines.map((words, i) => ({
    kind: "text",
    layer: "note",
    at: { x: leftMm + INSET_MM, y: topMm - insetMm - wordsMm - i * wordsMm * leading + 0.4 },
    words,
    heightMm: wordsMm,
    anchor: "start",
  }));
}

function ruler(layer: "cut" | "dimension", x: Mm, y: Mm, widthMm: Mm): Mark {
  return { kind: "line", layer, from: { x, y }, to: { x: x + widthMm, y } };
}
