/**
 * The upright box around an edge or an outline, arcs bulging past their ends included.
 * Exact to rounding: an arc reaches one radius from its centre wherever its sweep passes a quarter direction.
 */
import type { Mm } from "../units/quantity.ts";
import { withinSweep } from "./edge.ts";
import type { Edge, Outline } from "./outline.ts";

export interface Box {
  readonly minX: Mm;
  readonly minY: Mm;
  readonly maxX: Mm;
  readonly maxY: Mm;
}

/** Box around one edge. */
export function boxOfEdge(edge: Edge): Box {
  let minX = Math.min(edge.from.x, edge.to.x);
  let minY = Math.min(edge.from.y, edge.to.y);
  let maxX = Math.max(edge.from.x, edge.to.x);
  let maxY = Math.max(edge.from.y, edge.to.y);
  if (edge.kind === "arc") {
    const { center, radius } = edge;
    if (withinSweep(edge, 0)) maxX = center.x + radius;
    if (withinSweep(edge, Math.PI / 2)) maxY = center.y + radius;
    if (withinSweep(edge, Math.PI)) minX = center.x - radius;
    if (withinSweep(edge, -Math.PI / 2)) minY = center.y - radius;
  }
  return { minX, minY, maxX, maxY };
}

/** Box around all edges of one or more outlines. */
export function boxOf(...outlines: readonly Outline[]): Box {
  let [minX, minY, maxX, maxY] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const outline of outlines) {
    for (const edge of outline.edges) {
      const box = boxOfEdge(edge);
      minX = Math.min(minX, box.minX);
      minY = Math.min(minY, box.minY);
      maxX = Math.max(maxX, box.maxX);
      maxY = Math.max(maxY, box.maxY);
    }
  }
  return { minX, minY, maxX, maxY };
}
