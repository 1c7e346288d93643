/**
 * The filler bar over which a bend that was left open is closed by hand: as thick as the gap that it must keep,
 * between the inside faces of the two flats that face each other across the bend's web.
 * Plain geometry of the finished section, exact; undefined where nothing faces: then any straight edge will do.
 */
import type { Part } from "../part/part.ts";
import { distanceToEdge } from "../plane/edge.ts";
import type { LineEdge } from "../plane/outline.ts";
import type { Point } from "../plane/point.ts";
import { type Mm, toRad } from "../units/quantity.ts";

/** Thickness of the filler for `bend` (from 0): the smaller gap where both of its flats have a fellow across. */
export function fillerThickness(part: Part, bend: number): Mm | undefined {
  const gaps = [gapAcross(part, bend - 1), gapAcross(part, bend)].filter((gap) => gap !== undefined);
  return gaps.length === 0 ? undefined : Math.min(...gaps);
}

/** Least distance of the inside faces on both sides of the flat between bends `before` and `before` + 1. */
function gapAcross(part: Part, before: number): Mm | undefined {
  const [left, right] = [part.bends[before], part.bends[before + 1]];
  if (!left || !right || left.turn !== right.turn) return undefined;
  const web = part.flatsMm[before + 1]!;
  const far = sideFace(web, right.insideRadiusMm, toRad(right.angleDeg), part.flatsMm[before + 2]!, 1);
  const near = sideFace(0, left.insideRadiusMm, toRad(left.angleDeg), part.flatsMm[before]!, -1);
  const gap = Math.min(
    distanceToEdge(far.from, near),
    distanceToEdge(far.to, near),
    distanceToEdge(near.from, far),
    distanceToEdge(near.to, far),
  );
  return gap > 0 ? gap : undefined;
}

/** Inside face of the flat that rises from a web along x, its bend tangent at `tangentX`, to the right (+1) or left. */
function sideFace(tangentX: Mm, radiusMm: Mm, turnRad: number, lengthMm: Mm, way: 1 | -1): LineEdge {
  const from: Point = {
    x: tangentX + way * radiusMm * Math.sin(turnRad),
    y: radiusMm * (1 - Math.cos(turnRad)),
  };
  const to = { x: from.x + way * lengthMm * Math.cos(turnRad), y: from.y + lengthMm * Math.sin(turnRad) };
  return { kind: "line", from, to };
}
