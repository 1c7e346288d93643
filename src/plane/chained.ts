/**
 * Edges in any order put into closed loops, one after the other: each edge starts where the one before it ended, else a
 * new loop begins. Ends that lie within 1e-6 mm of each other count as one point.
 */
import type { Edge } from "./outline.ts";
import type { Point } from "./point.ts";

const SAME_MM = 1e-6;

/** Whether two points are one. @example samePoint({ x: 0, y: 0 }, { x: 0, y: 1e-9 }) // true */
export function samePoint(one: Point, other: Point): boolean {
  return Math.abs(one.x - other.x) < SAME_MM && Math.abs(one.y - other.y) < SAME_MM;
}

/** The edges loop by loop. @example chained([]) // [] */
export function chained(edges: readonly Edge[]): Edge[] {
  const waiting = [...edges];
  const run: Edge[] = [];
  let start: Point | undefined;
  while (waiting.length > 0) {
    const last = run.at(-1);
    const closed = last === undefined || start === undefined || samePoint(last.to, start);
    const next = closed ? 0 : waiting.findIndex(({ from }) => samePoint(from, last.to));
    const [edge] = waiting.splice(Math.max(0, next), 1);
    if (edge === undefined) break;
    if (closed || next < 0) start = edge.from;
    run.push(edge);
  }
  return run;
}
