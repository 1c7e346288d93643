/**
 * The least inside radius that a clamp's nose leaves room for. The bend's inside arc starts where the underside ends; the
 * nose pinches the sheet where one of its points leaves that arc: u² + v² > 2·r·v, u past the underside's end and v over it
 * (src/model.md, section 4). On fingers and bars that is the nose radius. Arcs of a profile are looked at every 2°.
 */
import { movedOutline } from "../plane/move.ts";
import type { Edge } from "../plane/outline.ts";
import { type Deg, type Mm, toRad } from "../units/quantity.ts";
import type { Clamp } from "./brake.ts";
import { FRAME_SLACK_MM } from "./profile.ts";

const LOOK_RAD = toRad(2);

/** A point of the nose, u past the underside's end and v over it, and how far it may stick out of the bend's arc. */
interface NosePoint {
  readonly u: Mm;
  readonly v: Mm;
  readonly slackMm: Mm;
}

/** Least inside radius with the leaf swung to `overbendDeg`; past a quarter turn the arc goes on in front of the nose. */
export function leastInsideRadius(clamp: Clamp, overbendDeg: Deg): Mm {
  if (clamp.kind !== "profile") return clamp.noseRadiusMm;
  const { noseRunMm, shimMm = 0, outlines } = clamp;
  const slope = Math.tan(toRad(Math.min(overbendDeg, 90)) / 2);
  const nose = outlines.flatMap(({ edges }) => movedOutline({ edges }, noseRunMm, -shimMm).edges);
  const leasts = nose
    .flatMap((edge) => pointsOf(edge, slope))
    .map(({ u, v, slackMm }) => {
      // What lies above the arc's end is in front of the moving flat, and looked for there.
      if (u <= 0 || v + slackMm <= 0 || v > u * slope + 1e-12) return 0;
      return (u * u + v * v - slackMm ** 2) / (2 * (v + slackMm));
    });
  return Math.max(0, ...leasts) + shimMm;
}

/** Points of which one is the farthest out of any such arc. A straight piece lies in a disc if its ends do. */
function pointsOf(edge: Edge, slope: number): readonly NosePoint[] {
  if (edge.kind === "line") {
    // A corner may stick out by as much as a drawn shape may be off its frame.
    const at = (part: number): NosePoint => ({
      u: edge.from.x + part * (edge.to.x - edge.from.x),
      v: edge.from.y + part * (edge.to.y - edge.from.y),
      slackMm: FRAME_SLACK_MM,
    });
    const [low, high] = [edge.from.y - slope * edge.from.x, edge.to.y - slope * edge.to.x];
    return low > 0 === high > 0 ? [at(0)] : [at(0), at(low / (low - high))];
  }
  const { center, radius, startRad, sweepRad } = edge;
  const count = Math.ceil(Math.abs(sweepRad) / LOOK_RAD);
  return Array.from({ length: count + 1 }, (_, i): NosePoint => {
    const at = startRad + (sweepRad * i) / count;
    return { u: center.x + radius * Math.cos(at), v: center.y + radius * Math.sin(at), slackMm: 0 };
  });
}
