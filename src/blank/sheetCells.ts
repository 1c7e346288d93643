/**
 * A blank divided by the sides of its cut-outs into cells that are sheet or not: where its straight cuts run, and
 * whether it hangs together. Exact: places are compared as they were read, never summed.
 */
import type { LineEdge } from "../plane/outline.ts";
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";
import type { CutOut, Span } from "./cutOut.ts";
import type { BlankSize } from "./cutReliefs.ts";

/** A line that runs along an edge looks so far to its sides. */
const BESIDE_MM: Mm = 1e-6;

export class SheetCells {
  private readonly xs: readonly Mm[];
  private readonly ys: readonly Mm[];
  /** Column by column, the cells of a column upward. */
  private readonly sheet: readonly (readonly boolean[])[];

  constructor(size: BlankSize, cutOuts: readonly CutOut[]) {
    this.xs = places([0, size.widthMm, ...cutOuts.flatMap(({ acrossMm }) => acrossMm)]);
    this.ys = places([0, size.lengthMm, ...cutOuts.flatMap(({ alongMm }) => alongMm)]);
    this.sheet = between(this.xs).map((x) =>
      between(this.ys).map(
        (y) =>
          !cutOuts.some(
            ({ acrossMm, alongMm }) => acrossMm[0] < x && x < acrossMm[1] && alongMm[0] < y && y < alongMm[1],
          ),
      ),
    );
  }

  /** Whether a point lies in the sheet; the other side of an edge is no sheet. */
  holdsSheet({ x, y }: Point): boolean {
    return this.isSheet(cellOf(this.xs, x), cellOf(this.ys, y));
  }

  /** Where along a line at `x` there is sheet on both sides of it; along an edge there is none. */
  runsAt(x: Mm): readonly Span[] {
    const columns = [x - BESIDE_MM, x + BESIDE_MM].map((place) => cellOf(this.xs, place));
    const found = runs(this.ys, (row) => (columns.every((column) => this.isSheet(column, row)) ? 1 : 0));
    return found.map(({ from, to }) => [from, to]);
  }

  /** The straight edges, the sheet to the left of each, as long as they run on. */
  edges(): LineEdge[] {
    const level = this.ys.flatMap((y, j) =>
      runs(this.xs, (i) => sideOf(this.isSheet(i, j), this.isSheet(i, j - 1))).map(({ from, to, side }) =>
        line({ x: from, y }, { x: to, y }, side),
      ),
    );
    const upright = this.xs.flatMap((x, i) =>
      runs(this.ys, (j) => sideOf(this.isSheet(i - 1, j), this.isSheet(i, j))).map(({ from, to, side }) =>
        line({ x, y: from }, { x, y: to }, side),
      ),
    );
    return [...level, ...upright];
  }

  /** Whether there is sheet, and all of it hangs together by more than a corner. */
  inOnePiece(): boolean {
    const [columns, rows] = [this.xs.length - 1, this.ys.length - 1];
    const seen = new Set<number>();
    let left = 0;
    let waiting: number[] = [];
    this.sheet.forEach((column, i) => {
      column.forEach((isSheet, j) => {
        if (!isSheet) return;
        left += 1;
        if (left === 1) waiting = [i * rows + j];
      });
    });
    for (const cell of waiting) seen.add(cell);
    for (let cell = waiting.pop(); cell !== undefined; cell = waiting.pop()) {
      const [i, j] = [Math.floor(cell / rows), cell % rows];
      for (const [x, y] of [
        [i - 1, j],
        [i + 1, j],
        [i, j - 1],
        [i, j + 1],
      ] as const) {
        const next = x * rows + y;
        if (x < 0 || x >= columns || !this.isSheet(x, y) || seen.has(next)) continue;
        seen.add(next);
        waiting.push(next);
      }
    }
    return left > 0 && seen.size === left;
  }

  private isSheet(column: number, row: number): boolean {
    return this.sheet[column]?.[row] ?? false;
  }
}

/** +1 where sheet lies on the first side only, −1 on the second only, 0 where there is no edge. */
function sideOf(first: boolean, second: boolean): -1 | 0 | 1 {
  return first === second ? 0 : first ? 1 : -1;
}

/** Neighbouring cells with an edge to the same side, taken together. */
function runs(
  places: readonly Mm[],
  sideAt: (cell: number) => -1 | 0 | 1,
): { readonly from: Mm; readonly to: Mm; readonly side: -1 | 1 }[] {
  const found: { from: Mm; to: Mm; side: -1 | 1 }[] = [];
  places.slice(1).forEach((to, cell) => {
    const from = places[cell] as Mm;
    const side = sideAt(cell);
    const last = found.at(-1);
    if (side === 0) return;
    if (last?.to === from && last.side === side) last.to = to;
    else found.push({ from, to, side });
  });
  return found;
}

function line(low: Point, high: Point, side: -1 | 1): LineEdge {
  return side > 0 ? { kind: "line", from: low, to: high } : { kind: "line", from: high, to: low };
}

function places(all: readonly Mm[]): readonly Mm[] {
  return [...new Set(all)].sort((a, b) => a - b);
}

function between(sorted: readonly Mm[]): readonly Mm[] {
  return sorted.slice(1).map((high, i) => ((sorted[i] as Mm) + high) / 2);
}

function cellOf(sorted: readonly Mm[], place: Mm): number {
  return sorted.findIndex(
    (_, i) => (sorted[i] as Mm) <= place && place < (sorted[i + 1] ?? Number.NEGATIVE_INFINITY),
  );
}
