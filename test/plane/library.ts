/**
 * The one door to @flatten-js/core: outlines as its polygons. Within the library's own tolerance, 1e-6 mm.
 */
import Flatten from "@flatten-js/core";
import type { Outline } from "../../src/plane/outline.ts";
import type { Point } from "../../src/plane/point.ts";

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

function libraryPoint(point: Point): Flatten.Point {
  return new Flatten.Point(point.x, point.y);
}
