/**
 * Where a name may stand inside a body: the place farthest from the body's edges and from what must stay readable.
 * Searched on a grid of a fortieth of the window; good enough for words, used for nothing else.
 */
import { distanceToEdge } from "../plane/edge.ts";
import type { Edge, Outline } from "../plane/outline.ts";
import type { Point } from "../plane/point.ts";

const GRID = 40;

/** Even-odd count of crossings to the right; an arc is judged by its chord and its bulge. */
function inside(point: Point, outline: Outline): boolean {
  let within = false;
  for (const edge of outline.edges) {
    const { from, to } = edge;
    const straddles = from.y > point.y !== to.y > point.y;
    if (straddles && point.x < from.x + ((point.y - from.y) / (to.y - from.y)) * (to.x - from.x))
      within = !within;
  }
  return within;
}

/**
 * The best place and its distance to the nearest edge, or undefined where the body is not in the window.
 */
export function labelPoint(
  body: Outline,
  obstacles: readonly Outline[],
  window: { readonly min: Point; readonly max: Point },
): { readonly at: Point; readonly roomMm: number } | undefined {
  const edges: Edge[] = [...body.edges, ...obstacles.flatMap((outline) => outline.edges)];
  const { min, max } = window;
  let best: { at: Point; roomMm: number } | undefined;
  for (let i = 1; i < GRID; i++) {
    for (let j = 1; j < GRID; j++) {
      const at = { x: min.x + ((max.x - min.x) * i) / GRID, y: min.y + ((max.y - min.y) * j) / GRID };
      if (!inside(at, body) || obstacles.some((obstacle) => inside(at, obstacle))) continue;
      let roomMm = Math.min(at.x - min.x, max.x - at.x, at.y - min.y, max.y - at.y);
      for (const edge of edges) roomMm = Math.min(roomMm, distanceToEdge(at, edge));
      if (best === undefined || roomMm > best.roomMm) best = { at, roomMm };
    }
  }
  return best;
}
