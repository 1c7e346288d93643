/**
 * The leaf's swing from rest to where it stands, as an arc with its angle written on it.
 */

import type { Drawing, Mark } from "../drawing/model.ts";
import type { Outline } from "../plane/outline.ts";
import { distanceBetween, type Point } from "../plane/point.ts";
import { type Deg, toRad } from "../units/quantity.ts";
import { angleWords } from "../words/angleWords.ts";

/** Under this the arc would be shorter than its arrowhead. */
const LEAST_DEG = 3;

/** Marks of the swing: arc just outside the leaf's reach where the window has room, else as far out as fits. */
export function swingArc(
  pivot: Point,
  leaf: Outline,
  reachedDeg: Deg,
  window: Drawing["window"],
  textMm: number,
): Mark[] {
  if (reachedDeg < LEAST_DEG) return [];
  const reach = Math.max(...leaf.edges.map((edge) => distanceBetween(edge.from, pivot)));
  const radius = Math.min(reach + 1.2 * textMm, (window.max.x - pivot.x) * 0.9);
  const sweepRad = toRad(reachedDeg);
  const on = (angleRad: number, r: number): Point => ({
    x: pivot.x + r * Math.cos(angleRad),
    y: pivot.y + r * Math.sin(angleRad),
  });
  const tip = on(sweepRad, radius);
  const back = sweepRad - Math.min((0.8 * textMm) / radius, sweepRad / 2);
  return [
    { kind: "arc", layer: "dimension", center: pivot, radius, startRad: 0, sweepRad },
    { kind: "line", layer: "dimension", from: on(back, radius + 0.25 * textMm), to: tip },
    { kind: "line", layer: "dimension", from: on(back, radius - 0.25 * textMm), to: tip },
    {
      kind: "text",
      layer: "dimension",
      at: on(sweepRad * 0.5, radius + 0.4 * textMm),
      words: angleWords(reachedDeg),
      heightMm: textMm,
      anchor: "start",
    },
  ];
}
