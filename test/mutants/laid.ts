/**
 * One piece laid by the engine, told as edges and corners with their tags, and the same of a straight piece on paper.
 */
import { Features } from "../../src/contact/features.ts";
import { FLAT, JOINT } from "../../src/contact/seatPieces.ts";
import { END_OF_FLAT, FACE_OF_FLAT } from "../../src/contact/strip.ts";
import { T } from "./seatOnPaper.ts";

export type Point = readonly [number, number];

export const INSET = 0.25;
export const WHOLE = JOINT | FLAT;
export const F = new Features(16, 24, 4);

/** A straight piece on paper: its under face from the bend outward, the way up from it, and which ends are drawn. */
export interface Straight {
  readonly from: Point;
  readonly to: Point;
  readonly up: Point;
  readonly near: boolean;
  readonly far: "open" | "closed" | "free";
}

export const text = (...points: readonly Point[]) =>
  points.map(([x, y]) => `${(x + 1e-9).toFixed(6)},${(y + 1e-9).toFixed(6)}`).join(" ");

/** Edges with the material to the left, and corners, each with its tag, in any order. */
export function wanted({ from, to, up, near, far }: Straight, flat: number, inset: number) {
  const at = ([x, y]: Point, high: number): Point => [x + high * up[0], y + high * up[1]];
  const corners = [at(from, inset), at(to, inset), at(to, T - inset), at(from, T - inset)] as const;
  const [a, b, c, d] = corners;
  const turn = (b[0] - a[0]) * (c[1] - b[1]) - (b[1] - a[1]) * (c[0] - b[0]);
  const face = (flat << 2) | FACE_OF_FLAT;
  const end = far === "free" ? (flat << 2) | END_OF_FLAT : face;
  const edge = (p: Point, q: Point, tag: number) => `${turn > 0 ? text(p, q) : text(q, p)} ${tag}`;
  return {
    edges: [
      edge(a, b, face),
      edge(c, d, face),
      ...(near ? [edge(d, a, face)] : []),
      ...(far === "open" ? [] : [edge(b, c, end)]),
    ].toSorted(),
    corners: [
      ...(near ? [`${text(a)} ${face}`, `${text(d)} ${face}`] : []),
      ...(far === "open" ? [] : [`${text(b)} ${end}`, `${text(c)} ${end}`]),
    ].toSorted(),
  };
}

export function laid() {
  const edges = Array.from({ length: F.segments }, (_, i) => {
    const [x, y, long] = [F.segX[i]!, F.segY[i]!, F.segLength[i]!];
    return `${text([x, y], [x + long * F.segUx[i]!, y + long * F.segUy[i]!])} ${F.segTag[i]}`;
  });
  const corners = Array.from({ length: F.rounds }, (_, i) =>
    F.roundR[i] === 0 ? [`${text([F.roundX[i]!, F.roundY[i]!])} ${F.roundTag[i]}`] : [],
  ).flat();
  return { edges: edges.toSorted(), corners: corners.toSorted() };
}
