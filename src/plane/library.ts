/**
 * The one door to @flatten-js/core: outlines as its polygons, for the area that two of them share.
 * Used where something is looked over once; the contact kernel has its own arrays.
 * Within the library's own tolerance, 1e-6 mm.
 */
import Flatten from "@flatten-js/core";
import type { Outline } from "./outline.ts";
import type { Point } from "./point.ts";

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

/** Area that two outlines share, in mm²; 0 where they only touch. */
export function commonArea(a: Outline, b: Outline): number {
  const shared = Flatten.BooleanOperations.intersect(libraryPolygon(a), libraryPolygon(b));
  return Math.abs(shared.area());
}

function libraryPoint(point: Point): Flatten.Point {
  return new Flatten.Point(point.x, point.y);
}
