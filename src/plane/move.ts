/**
 * Outlines moved, turned about a point and mirrored, as rigid bodies.
 * Mirroring turns the run of the edges round, so that the material stays to the left.
 */
import type { Mm, Rad } from "../units/quantity.ts";
import type { Edge, Outline } from "./outline.ts";
import type { Point } from "./point.ts";

function mapped(outline: Outline, place: (p: Point) => Point, turnRad: Rad): Outline {
  return {
    edges: outline.edges.map((edge): Edge => {
      const ends = { from: place(edge.from), to: place(edge.to) };
      if (edge.kind === "line") return { kind: "line", ...ends };
      return { ...edge, ...ends, center: place(edge.center), startRad: edge.startRad + turnRad };
    }),
  };
}

/** The outline shifted by (dx, dy). @example movedOutline(clamp, -s, thickness) */
export function movedOutline(outline: Outline, dxMm: Mm, dyMm: Mm): Outline {
  return mapped(outline, (p) => ({ x: p.x + dxMm, y: p.y + dyMm }), 0);
}

/** The outline turned counter-clockwise about `pivot`. @example turnedOutline(leaf, pivot, toRad(90)) */
export function turnedOutline(outline: Outline, pivot: Point, turnRad: Rad): Outline {
  const [c, s] = [Math.cos(turnRad), Math.sin(turnRad)];
  const place = (p: Point): Point => ({
    x: pivot.x + (p.x - pivot.x) * c - (p.y - pivot.y) * s,
    y: pivot.y + (p.x - pivot.x) * s + (p.y - pivot.y) * c,
  });
  return mapped(outline, place, turnRad);
}

/** The outline mirrored in the upright line x = 0, still run counter-clockwise. */
export function mirroredOutline(outline: Outline): Outline {
  const flip = (p: Point): Point => ({ x: -p.x, y: p.y });
  const edges = outline.edges.map((edge): Edge => {
    const ends = { from: flip(edge.to), to: flip(edge.from) };
    if (edge.kind === "line") return { kind: "line", ...ends };
    const startRad = Math.PI - (edge.startRad + edge.sweepRad);
    return { ...edge, ...ends, center: flip(edge.center), startRad };
  });
  return { edges: edges.reverse() };
}
