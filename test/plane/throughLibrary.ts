/**
 * What the geometry library says of an outline: its area, whether a point lies in it, how near another one comes.
 */
import Flatten from "@flatten-js/core";
import type { Outline } from "../../src/plane/outline.ts";
import type { Point } from "../../src/plane/point.ts";
import { libraryPolygon } from "./library.ts";

/** Closest points of two outlines' edges; one outline wholly inside the other keeps its distance from the rim. */
export function nearestPoints(a: Outline, b: Outline) {
  const [distanceMm, segment] = libraryPolygon(a).distanceTo(libraryPolygon(b));
  return {
    distanceMm,
    on: { x: segment.start.x, y: segment.start.y },
    near: { x: segment.end.x, y: segment.end.y },
  };
}

/** Whether a point lies in the outline or on its rim. */
export function outlineHolds(outline: Outline, { x, y }: Point): boolean {
  return libraryPolygon(outline).contains(new Flatten.Point(x, y));
}

/** Area that two outlines share, in mm². */
export function areaShared(a: Outline, b: Outline): number {
  return Math.abs(Flatten.BooleanOperations.intersect(libraryPolygon(a), libraryPolygon(b)).area());
}

/** Area that an outline encloses, in mm². */
export function areaOf(outline: Outline): number {
  return Math.abs(libraryPolygon(outline).area());
}
