/**
 * Finds two edges of a closed chain that cross or touch where they should not.
 * Edges are dropped into a grid of a few cells for each edge, row by row, and only those that
 * share a cell are tried, so thousands of edges stay quick; each pair tried is decided in closed form (edge.ts).
 */
import { type Box, boxOfEdge } from "./bounding.ts";
import { edgesMeet, TOUCH_MM } from "./edge.ts";
import type { Edge } from "./outline.ts";

interface Grid {
  readonly minX: number;
  readonly minY: number;
  readonly cellX: number;
  readonly cellY: number;
  readonly across: number;
}

/**
 * The indices of two edges that meet (not neighbours) or of two neighbours that fold back on each other;
 * undefined when the chain is simple. Where several do, the pair with the smallest later edge is found first.
 */
export function selfCrossing(edges: readonly Edge[]): readonly [number, number] | undefined {
  const count = edges.length;
  for (let i = 0; i < count; i++) {
    if (foldsBack(edges[i]!, edges[(i + 1) % count]!)) return [i, (i + 1) % count];
  }
  const boxes = edges.map(boxOfEdge);
  const grid = gridOver(boxes);
  const cells: (number[] | undefined)[] = new Array((grid.across + 1) ** 2);
  const lastTried = new Int32Array(count).fill(-1);
  for (let j = 0; j < count; j++) {
    for (const cell of cellsOf(edges[j]!, boxes[j]!, grid)) {
      const inCell = cells[cell];
      if (!inCell) {
        cells[cell] = [j];
        continue;
      }
      for (const i of inCell) {
        if (lastTried[i] === j) continue;
        lastTried[i] = j;
        const neighbours = j - i <= 1 || (i === 0 && j === count - 1);
        if (neighbours || apart(boxes[i]!, boxes[j]!)) continue;
        if (edgesMeet(edges[i]!, edges[j]!)) return [i, j];
      }
      inCell.push(j);
    }
  }
  return undefined;
}

/** Two straight neighbours that run back over each other. An arc leaves its neighbour along the tangent and can't. */
function foldsBack(a: Edge, b: Edge): boolean {
  if (a.kind === "arc" || b.kind === "arc") return false;
  const [ax, ay] = [a.to.x - a.from.x, a.to.y - a.from.y];
  const [bx, by] = [b.to.x - b.from.x, b.to.y - b.from.y];
  const size = Math.hypot(ax, ay) * Math.hypot(bx, by);
  return Math.abs(ax * by - ay * bx) <= 1e-9 * size && ax * bx + ay * by < 0;
}

function apart(a: Box, b: Box): boolean {
  return (
    a.minX > b.maxX + TOUCH_MM ||
    b.minX > a.maxX + TOUCH_MM ||
    a.minY > b.maxY + TOUCH_MM ||
    b.minY > a.maxY + TOUCH_MM
  );
}

function gridOver(boxes: readonly Box[]): Grid {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const box of boxes) {
    minX = Math.min(minX, box.minX);
    minY = Math.min(minY, box.minY);
    maxX = Math.max(maxX, box.maxX);
    maxY = Math.max(maxY, box.maxY);
  }
  // Twice as fine as one cell an edge: long edges fill more cells, but a crowd of them is told apart sooner.
  const across = Math.ceil(2 * Math.sqrt(boxes.length));
  return {
    minX,
    minY,
    cellX: Math.max((maxX - minX) / across, 1e-9),
    cellY: Math.max((maxY - minY) / across, 1e-9),
    across,
  };
}

/** The cells that an edge passes, a hair wider than it, so that edges which touch share at least one. */
function cellsOf(edge: Edge, box: Box, grid: Grid): number[] {
  const hair = 1e-6;
  const row = (y: number) => Math.min(grid.across, Math.max(0, Math.floor((y - grid.minY) / grid.cellY)));
  const column = (x: number) => Math.min(grid.across, Math.max(0, Math.floor((x - grid.minX) / grid.cellX)));
  const cells: number[] = [];
  for (let r = row(box.minY - hair); r <= row(box.maxY + hair); r++) {
    let [left, right] = [box.minX, box.maxX];
    if (edge.kind === "line" && box.maxY - box.minY > hair) {
      const floor = grid.minY + r * grid.cellY - hair;
      const slope = (edge.to.x - edge.from.x) / (edge.to.y - edge.from.y);
      const low = Math.max(box.minY, Math.min(box.maxY, floor));
      const high = Math.min(box.maxY, Math.max(box.minY, floor + grid.cellY + 2 * hair));
      const [xLow, xHigh] = [
        edge.from.x + (low - edge.from.y) * slope,
        edge.from.x + (high - edge.from.y) * slope,
      ];
      left = Math.min(xLow, xHigh);
      right = Math.max(xLow, xHigh);
    }
    for (let c = column(left - hair); c <= column(right + hair); c++) cells.push(r * (grid.across + 1) + c);
  }
  return cells;
}
