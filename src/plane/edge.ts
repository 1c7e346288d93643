/**
 * Measures on one edge of an outline, straight or arc: points on it, distance to it, whether two edges meet.
 * Circle and line in closed form; two edges nearer than TOUCH_MM count as meeting.
 */
import type { Mm, Rad } from "../units/quantity.ts";
import type { ArcEdge, Edge, LineEdge } from "./outline.ts";
import { distanceBetween, type Point } from "./point.ts";

/** Nearer than this two edges are taken to touch: far under any shop measure, far over rounding. */
export const TOUCH_MM: Mm = 1e-7;

const TURN = 2 * Math.PI;

/** Whether the direction `angleRad`, seen from the arc's centre, lies within its sweep (ends included). */
export function withinSweep(arc: ArcEdge, angleRad: Rad): boolean {
  const slack = TOUCH_MM / arc.radius;
  const ahead = arc.sweepRad >= 0 ? angleRad - arc.startRad : arc.startRad - angleRad;
  const turned = ((ahead % TURN) + TURN) % TURN;
  return turned <= Math.abs(arc.sweepRad) + slack || turned >= TURN - slack;
}

/**
 * Distance from a point to an edge.
 * @example distanceToEdge({ x: 1, y: 2 }, { kind: "line", from: { x: 0, y: 0 }, to: { x: 4, y: 0 } }) // 2
 */
export function distanceToEdge(point: Point, edge: Edge): Mm {
  if (edge.kind === "arc") {
    const dx = point.x - edge.center.x;
    const dy = point.y - edge.center.y;
    if (withinSweep(edge, Math.atan2(dy, dx))) return Math.abs(Math.hypot(dx, dy) - edge.radius);
    return Math.min(distanceBetween(point, edge.from), distanceBetween(point, edge.to));
  }
  const ux = edge.to.x - edge.from.x;
  const uy = edge.to.y - edge.from.y;
  const along = ((point.x - edge.from.x) * ux + (point.y - edge.from.y) * uy) / (ux * ux + uy * uy);
  const t = Math.min(1, Math.max(0, along));
  return Math.hypot(point.x - edge.from.x - t * ux, point.y - edge.from.y - t * uy);
}

/** Whether two edges cross or touch; a shared end counts, so neighbours of a chain always do. */
export function edgesMeet(a: Edge, b: Edge): boolean {
  if (a.kind === "line" && b.kind === "line" && (besideLine(a, b) || besideLine(b, a))) return false;
  if (distanceToEdge(a.from, b) <= TOUCH_MM || distanceToEdge(a.to, b) <= TOUCH_MM) return true;
  if (distanceToEdge(b.from, a) <= TOUCH_MM || distanceToEdge(b.to, a) <= TOUCH_MM) return true;
  if (a.kind === "line") return b.kind === "line" ? linesCross(a, b) : lineCrossesArc(a, b);
  return b.kind === "line" ? lineCrossesArc(b, a) : arcsCross(a, b);
}

/** Whether all of `b` lies clearly to one side of the line through `a`: the quick way to see that they don't meet. */
function besideLine(a: LineEdge, b: LineEdge): boolean {
  const [from, to] = [side(a, b.from), side(a, b.to)];
  if (from > 0 !== to > 0) return false;
  const [dx, dy] = [a.to.x - a.from.x, a.to.y - a.from.y];
  return Math.min(from * from, to * to) > TOUCH_MM * TOUCH_MM * (dx * dx + dy * dy);
}

function side(line: LineEdge, p: Point): number {
  return (line.to.x - line.from.x) * (p.y - line.from.y) - (line.to.y - line.from.y) * (p.x - line.from.x);
}

function linesCross(a: LineEdge, b: LineEdge): boolean {
  return side(a, b.from) > 0 !== side(a, b.to) > 0 && side(b, a.from) > 0 !== side(b, a.to) > 0;
}

function lineCrossesArc(line: LineEdge, arc: ArcEdge): boolean {
  const length = distanceBetween(line.from, line.to);
  const ux = (line.to.x - line.from.x) / length;
  const uy = (line.to.y - line.from.y) / length;
  const foot = (arc.center.x - line.from.x) * ux + (arc.center.y - line.from.y) * uy;
  const off = Math.abs((arc.center.x - line.from.x) * uy - (arc.center.y - line.from.y) * ux);
  // A line that just misses the circle by less than the touching distance is moved onto it.
  if (off > arc.radius + TOUCH_MM) return false;
  const half = Math.sqrt(Math.max(0, arc.radius * arc.radius - off * off));
  for (const t of [foot - half, foot + half]) {
    if (t < 0 || t > length) continue;
    const x = line.from.x + t * ux - arc.center.x;
    const y = line.from.y + t * uy - arc.center.y;
    if (withinSweep(arc, Math.atan2(y, x))) return true;
  }
  return false;
}

function arcsCross(a: ArcEdge, b: ArcEdge): boolean {
  const apart = distanceBetween(a.center, b.center);
  // Arcs of one circle overlap only where an end of one lies on the other, which the caller has tried.
  if (apart <= TOUCH_MM) return false;
  if (apart > a.radius + b.radius + TOUCH_MM || apart < Math.abs(a.radius - b.radius) - TOUCH_MM)
    return false;
  const toB = Math.atan2(b.center.y - a.center.y, b.center.x - a.center.x);
  const cosine = (apart * apart + a.radius * a.radius - b.radius * b.radius) / (2 * apart * a.radius);
  const half = Math.acos(Math.min(1, Math.max(-1, cosine)));
  for (const direction of [toB - half, toB + half]) {
    const x = a.center.x + a.radius * Math.cos(direction) - b.center.x;
    const y = a.center.y + a.radius * Math.sin(direction) - b.center.y;
    if (withinSweep(a, direction) && withinSweep(b, Math.atan2(y, x))) return true;
  }
  return false;
}
