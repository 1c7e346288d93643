/**
 * Paths for a PDF page: outlines, lines, arcs and hatches as the operators of ISO 32000-1, section 8.5.
 * Arcs become Bezier pieces of at most 30°, off by less than 1e-6 of the radius; figures are rounded to 1e-4 pt (4e-5 mm).
 */
import {
  appendBezierCurve,
  clip,
  closePath,
  endPath,
  lineTo,
  moveTo,
  type PDFOperator,
  popGraphicsState,
  pushGraphicsState,
  setDashPattern,
  setLineWidth,
  stroke,
} from "pdf-lib";
import { samePoint } from "../plane/chained.ts";
import type { Outline } from "../plane/outline.ts";
import type { Point } from "../plane/point.ts";
import { type Mm, type Rad, toRad } from "../units/quantity.ts";
import type { Drawing } from "./model.ts";

/** A PDF point is 1/72 in. */
const POINTS_PER_MM = 72 / 25.4;
const LARGEST_PIECE: Rad = Math.PI / 6;

/** A page length in PDF points. @example points(25.4) // 72 */
export function points(lengthMm: Mm): number {
  return Math.round(lengthMm * POINTS_PER_MM * 1e4) / 1e4;
}

/** Where a point of the drawing lies on the page, in millimetres. */
export type Onto = (point: Point) => Point;

/** A closed path round an outline, a whole circle too; an edge that starts elsewhere begins another loop. */
export function outlinePath({ edges }: Outline, onto: Onto): PDFOperator[] {
  if (edges.length === 0) return [];
  const path: PDFOperator[] = [];
  let last: Point | undefined;
  for (const edge of edges) {
    if (last === undefined || !samePoint(last, edge.from)) {
      if (last !== undefined) path.push(closePath());
      path.push(moveToPoint(onto(edge.from)));
    }
    last = edge.to;
    if (edge.kind === "line") path.push(lineToPoint(onto(edge.to)));
    else path.push(...arcPieces(edge.center, edge.radius, edge.startRad, edge.sweepRad, onto));
  }
  return [...path, closePath()];
}

/** An open run of straight strokes. */
export function runPath(run: readonly Point[], onto: Onto): PDFOperator[] {
  return run.map((point, index) => (index === 0 ? moveToPoint(onto(point)) : lineToPoint(onto(point))));
}

/** An open arc; a positive sweep runs counter-clockwise. */
export function arcPath(center: Point, radius: Mm, startRad: Rad, sweepRad: Rad, onto: Onto): PDFOperator[] {
  const from = onCircle(center, radius, startRad);
  return [moveToPoint(onto(from)), ...arcPieces(center, radius, startRad, sweepRad, onto)];
}

/** A rectangle of the page as a path. */
export function boxPath({ min, max }: Drawing["window"]): PDFOperator[] {
  const corners = [min, { x: max.x, y: min.y }, max, { x: min.x, y: max.y }];
  return [...runPath(corners, (corner) => corner), closePath()];
}

/** Line weight and dashes on the page, in millimetres. */
export function penSetting(weightMm: Mm, dashMm: readonly Mm[]): PDFOperator[] {
  return [setLineWidth(points(weightMm)), setDashPattern(dashMm.map(points), 0)];
}

/**
 * Hatch lines inside a closed path: at an angle and distance on the page, all in step with the page's corner, so that
 * neighbouring bodies of one kind run through.
 */
export function hatchInside(
  path: readonly PDFOperator[],
  box: Drawing["window"],
  hatch: { readonly angleDeg: number; readonly spacingMm: Mm },
): PDFOperator[] {
  const along = { x: Math.cos(toRad(hatch.angleDeg)), y: Math.sin(toRad(hatch.angleDeg)) };
  const across = { x: -along.y, y: along.x };
  const corners = [box.min, { x: box.max.x, y: box.min.y }, box.max, { x: box.min.x, y: box.max.y }];
  const reach = (direction: Point) => {
    const along = corners.map((corner) => corner.x * direction.x + corner.y * direction.y);
    return [Math.min(...along), Math.max(...along)] as const;
  };
  const [start, end] = reach(along);
  const [low, high] = reach(across);
  const lines: PDFOperator[] = [];
  const last = Math.floor(high / hatch.spacingMm);
  for (let row = Math.ceil(low / hatch.spacingMm); row <= last; row += 1) {
    const off = row * hatch.spacingMm;
    const place = (run: Mm) => ({ x: along.x * run + across.x * off, y: along.y * run + across.y * off });
    lines.push(...runPath([place(start), place(end)], (point) => point));
  }
  if (lines.length === 0) return [];
  return [pushGraphicsState(), ...path, clip(), endPath(), ...lines, stroke(), popGraphicsState()];
}

function arcPieces(center: Point, radius: Mm, startRad: Rad, sweepRad: Rad, onto: Onto): PDFOperator[] {
  const count = Math.max(1, Math.ceil(Math.abs(sweepRad) / LARGEST_PIECE));
  const piece = sweepRad / count;
  // Handle length for which a Bezier piece touches the circle at both ends and in the middle.
  const handle = (4 / 3) * Math.tan(piece / 4) * radius;
  return Array.from({ length: count }, (_, index) => {
    const a = startRad + index * piece;
    const b = a + piece;
    const from = onCircle(center, radius, a);
    const to = onCircle(center, radius, b);
    const c1 = onto({ x: from.x - handle * Math.sin(a), y: from.y + handle * Math.cos(a) });
    const c2 = onto({ x: to.x + handle * Math.sin(b), y: to.y - handle * Math.cos(b) });
    const end = onto(to);
    return appendBezierCurve(
      points(c1.x),
      points(c1.y),
      points(c2.x),
      points(c2.y),
      points(end.x),
      points(end.y),
    );
  });
}

function onCircle(center: Point, radius: Mm, angleRad: Rad): Point {
  return { x: center.x + radius * Math.cos(angleRad), y: center.y + radius * Math.sin(angleRad) };
}

function moveToPoint({ x, y }: Point): PDFOperator {
  return moveTo(points(x), points(y));
}

function lineToPoint({ x, y }: Point): PDFOperator {
  return lineTo(points(x), points(y));
}
