/**
 * Fingers that come off the holder with the part: the part goes out without them in its way, and each is taken out through
 * the mouth, the opening that the sheet above leaves as seen from over it. A finger fits where a rectangle of its width
 * along w and its depth across finds a free place; it is not turned or tilted.
 */
import type { Mm } from "../units/quantity.ts";
import type { StrokeElements } from "./elements.ts";
import type { PlacedFinger } from "./strokeBodies.ts";
import type { Lying } from "./strokeHandling.ts";
import type { StrokeState } from "./strokeState.ts";

/** A box as seen from above. */
export interface Patch {
  readonly x0: Mm;
  readonly x1: Mm;
  readonly w0: number;
  readonly w1: number;
}

/** Play round a finger on its way out. */
const PLAY_MM: Mm = 0.01;

/** Whether every finger of a row can be taken out of the part (put into it, before the bend is made). */
export function fitThroughMouth(
  state: StrokeState,
  above: readonly Patch[],
  row: readonly PlacedFinger[],
  depthMm: Mm,
): boolean {
  const inside = insideOf(state);
  return row.every(({ widthMm }) => hasRoom(above, widthMm + 2 * PLAY_MM, depthMm + 2 * PLAY_MM, inside));
}

/** Sheet that stands over the resting run. */
export function patchesOver({ seat, plan }: StrokeElements, lying: readonly Lying[]): Patch[] {
  const topY = plan.part.thicknessMm - seat.pivot.y;
  return lying.flatMap((shape) =>
    shape.over(shape.minW, shape.maxW).flatMap(({ features }) => {
      if (features.maxY <= topY + PLAY_MM) return [];
      return [{ x0: features.minX, x1: features.maxX, w0: shape.minW, w1: shape.maxW }];
    }),
  );
}

/** The run that lies clamped, as seen from above: a finger is over it before it is lifted out. */
function insideOf({ all, elements }: StrokeState): Patch {
  const { seat } = elements;
  const shapes = all.filter(({ side, run }) => side === "clamped" && run).flatMap(({ faces }) => faces);
  const reach = all.flatMap(({ side, reach: one }) => (side === "clamped" && one ? [one.from] : []));
  return {
    x0: Math.min(...reach) - seat.pivot.x,
    x1: seat.clampedTangentX - seat.pivot.x,
    w0: Math.min(...shapes.map(({ minW }) => minW)),
    w1: Math.max(...shapes.map(({ maxW }) => maxW)),
  };
}

/** Whether a rectangle that begins over the inside finds a place clear of all patches, pushed against one of them or not. */
function hasRoom(patches: readonly Patch[], alongW: number, acrossX: Mm, inside: Patch): boolean {
  const ws = [inside.w0, ...patches.map(({ w1 }) => w1)].filter(
    (w) => w >= inside.w0 - PLAY_MM && w < inside.w1,
  );
  const xs = [inside.x0, ...patches.map(({ x1 }) => x1)].filter(
    (x) => x >= inside.x0 - PLAY_MM && x < inside.x1,
  );
  return ws.some((w) =>
    xs.some((x) =>
      patches.every(({ x0, x1, w0, w1 }) => x1 <= x || x0 >= x + acrossX || w1 <= w || w0 >= w + alongW),
    ),
  );
}
