/**
 * The corner of a free clamp shape that the sheet bends round: where the underside ends in front. Drawn sharp it is rounded by
 * the nose radius, since no nose is sharp; a rounding of its own is left alone (src/model.md, section 4).
 */
import type { Corner } from "../plane/fillet.ts";
import type { Mm, Rad } from "../units/quantity.ts";
import { FRAME_SLACK_MM } from "./profile.ts";

/** What turns by less is part of a rounding drawn by its chords. */
const CORNER_RAD: Rad = Math.PI / 4;

/** The corner that the sheet bends round, with its place; undefined where nothing lies on y = 0. */
function noseCornerOf(shapes: readonly (readonly Corner[])[]) {
  const onUnderside = shapes.flatMap((shape, s) =>
    shape.flatMap((corner, c) => (Math.abs(corner.y) <= FRAME_SLACK_MM ? [{ s, c, corner }] : [])),
  );
  if (onUnderside.length === 0) return undefined;
  return onUnderside.reduce((so, one) => (one.corner.x > so.corner.x ? one : so));
}

/** The rounding that the nose's corner is drawn with; undefined where it is drawn sharp. */
export function ownNoseRadius(shapes: readonly (readonly Corner[])[]): Mm | undefined {
  const radius = noseCornerOf(shapes)?.corner.radius;
  return radius !== undefined && radius > 0 ? radius : undefined;
}

/** The shapes with the nose's corner rounded, where it has no rounding of its own and room for one. */
export function noseRounded(
  shapes: readonly (readonly Corner[])[],
  noseRadiusMm: Mm,
): readonly (readonly Corner[])[] {
  const nose = noseCornerOf(shapes);
  if (nose === undefined || noseRadiusMm === 0) return shapes;
  const shape = shapes[nose.s]!;
  if (nose.corner.radius !== undefined || !hasRoom(shape, nose.c, noseRadiusMm)) return shapes;
  const rounded = shape.with(nose.c, { ...nose.corner, radius: noseRadiusMm });
  return shapes.with(nose.s, rounded);
}

/** Whether a corner turns as one does, and the rounding leaves something of both edges beside it. */
function hasRoom(shape: readonly Corner[], index: number, radiusMm: Mm): boolean {
  const at = shape[index]!;
  const [before, after] = [shape.at(index - 1)!, shape[(index + 1) % shape.length]!];
  const [inX, inY, outX, outY] = [at.x - before.x, at.y - before.y, after.x - at.x, after.y - at.y];
  const turnRad = Math.abs(Math.atan2(inX * outY - inY * outX, inX * outX + inY * outY));
  const shorter = Math.min(Math.hypot(inX, inY), Math.hypot(outX, outY));
  return turnRad > CORNER_RAD && radiusMm * Math.tan(turnRad / 2) < shorter / 2;
}
