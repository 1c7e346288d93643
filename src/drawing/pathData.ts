/**
 * Outlines, lines and arcs as SVG path data, y turned over (SVG counts y downward).
 * Arcs stay arcs: SVG 2 chapter 9.3.8, elliptical arc command, with equal radii.
 * Coordinates are written to 1e-4 mm; that rounding is the only departure from the model.
 */
import { samePoint } from "../plane/chained.ts";
import type { Edge, Outline } from "../plane/outline.ts";
import type { Point } from "../plane/point.ts";

const MOST_SWEEP = (2 * Math.PI) / 3;

/** A number as short as 1e-4 mm allows. @example shortNumber(1.50000001) // "1.5" */
export function shortNumber(value: number): string {
  const rounded = Math.round(value * 1e4) / 1e4;
  return `${rounded === 0 ? 0 : rounded}`;
}

/** A point in SVG's frame. @example svgPoint({ x: 1, y: 2 }) // "1 -2" */
export function svgPoint(point: Point): string {
  return `${shortNumber(point.x)} ${shortNumber(-point.y)}`;
}

/**
 * Arc command(s) from the pen's place, run through `sweepRad` (counter-clockwise positive, y up).
 * Written in pieces of a third of a turn at most: near half a turn the rounded ends would hardly hold the centre,
 * and a full circle in one piece would vanish.
 */
export function arcTo(center: Point, radius: number, startRad: number, sweepRad: number): string {
  const pieces = Math.max(1, Math.ceil(Math.abs(sweepRad) / MOST_SWEEP - 1e-9));
  const direction = sweepRad > 0 ? 0 : 1;
  let text = "";
  for (let piece = 1; piece <= pieces; piece++) {
    const angle = startRad + (sweepRad * piece) / pieces;
    const to = { x: center.x + radius * Math.cos(angle), y: center.y + radius * Math.sin(angle) };
    text += `A${shortNumber(radius)} ${shortNumber(radius)} 0 0 ${direction} ${svgPoint(to)}`;
  }
  return text;
}

function edgeTo(edge: Edge): string {
  if (edge.kind === "line") return `L${svgPoint(edge.to)}`;
  return arcTo(edge.center, edge.radius, edge.startRad, edge.sweepRad);
}

/** A closed outline as path data; an edge that starts elsewhere begins another loop. */
export function outlinePath({ edges }: Outline): string {
  if (edges.length === 0) return "";
  const run = edges.map((edge, i) => {
    const before = edges[i - 1];
    const begins = before === undefined || !samePoint(before.to, edge.from);
    return `${begins ? `${i > 0 ? "Z" : ""}M${svgPoint(edge.from)}` : ""}${edgeTo(edge)}`;
  });
  return `${run.join("")}Z`;
}
