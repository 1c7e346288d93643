/**
 * Cuts a picture's window down to what is seen near the nose, so that a long part doesn't shrink it to a hair.
 * The nose stands at the origin; it keeps its place in the picture as far as a quarter from the edges.
 */

import type { Drawing } from "../drawing/model.ts";
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";

/** So near to the edge, as a share of the window, the nose may stand. */
const LEAST_SHARE = 0.25;

/**
 * The window, at most `mostMm` wide and high but for the points in `seen`.
 * @example nearNose({ min: { x: -300, y: 0 }, max: { x: 100, y: 10 } }, 100, []).min.x // -75
 */
export function nearNose(
  { min, max }: Drawing["window"],
  mostMm: Mm,
  seen: readonly Point[],
): Drawing["window"] {
  const x = along(
    min.x,
    max.x,
    mostMm,
    seen.map((point) => point.x),
  );
  const y = along(
    min.y,
    max.y,
    mostMm,
    seen.map((point) => point.y),
  );
  return { min: { x: x.from, y: y.from }, max: { x: x.to, y: y.to } };
}

function along(from: Mm, to: Mm, mostMm: Mm, seen: readonly Mm[]): { readonly from: Mm; readonly to: Mm } {
  if (to - from <= mostMm) return { from, to };
  const share = Math.min(Math.max(-from / (to - from), LEAST_SHARE), 1 - LEAST_SHARE);
  const edge = mostMm * 0.05;
  return {
    from: Math.min(-mostMm * share, ...seen.map((at) => at - edge)),
    to: Math.max(mostMm * (1 - share), ...seen.map((at) => at + edge)),
  };
}
