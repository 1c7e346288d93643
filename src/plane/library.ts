/**
 * The one door to @flatten-js/core: outlines as its polygons, for distances, closest points and common area.
 * Used where something is reported or looked over once; the contact kernel has its own arrays.
 * Within the library's own tolerance, 1e-6 mm.
 */
import Flatten from "@flatten-js/core";
import type { Mm } from "../units/quantity.ts";
import type { Outline } from "./outline.ts";
import type { Point } from "./point.ts";

/** Two outlines' closest points: `on` on the first, `near` on the second. */
export interface Nearest {
  readonly distanceMm: Mm;
  readonly on: Point;
  readonly near: Point;
}

/** The outline as a polygon of the library, edges kept as segments and arcs. */
export function libraryPolygon(outline: Outline): Flatten.Polygon {
  const shapes = outline.edges.map((edge) =>
    edge.kind === "line"
      ? new Flatten.Segment(libraryPoint(edge.from), libraryPoint(edge.to))
      : new Flatten.Arc(
          libraryPoint(edge.center),
          edge.radius,
          edge.startRad,
          edge.startRad + edge.sweepRad,
          edge.sweepRad > 0,
        ),
  );
  const polygon = new Flatten.Polygon();
  polygon.addFace(shapes);
  return polygon;
}

/** Closest points of two outlines' edges; one outline wholly inside the other keeps its distance from the rim. */
export function nearestPoints(a: Outline, b: Outline): Nearest {
  const [distanceMm, segment] = libraryPolygon(a).distanceTo(libraryPolygon(b));
  return {
    distanceMm,
    on: { x: segment.start.x, y: segment.start.y },
    near: { x: segment.end.x, y: segment.end.y },
  };
}

/** Whether a point lies in the outline or on its rim. */
export function outlineHolds(outline: Outline, point: Point): boolean {
  return libraryPolygon(outline).contains(libraryPoint(point));
}

/** Area that two outlines share, in mm²; 0 where they only touch. */
export function commonArea(a: Outline, b: Outline): number {
  const shared = Flatten.BooleanOperations.intersect(libraryPolygon(a), libraryPolygon(b));
  return Math.abs(shared.area());
}

/** Area that an outline encloses, in mm². */
export function areaOf(outline: Outline): number {
  return Math.abs(libraryPolygon(outline).area());
}

function libraryPoint(point: Point): Flatten.Point {
  return new Flatten.Point(point.x, point.y);
}
