/**
 * A clamp of free shape: one or more outlines in nose coordinates, with the radius of its nose.
 * Its underside must lie on y = 0 and its foremost point on x = 0, within 0.01 mm. Where the underside ends, the bend begins.
 */
import { boxOf } from "../plane/bounding.ts";
import type { Edge, Outline } from "../plane/outline.ts";
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";
import type { BrakeFault } from "./fault.ts";
import type { ClampResult } from "./frontedClamp.ts";

/** How far a drawn shape may be off the frame it is drawn in: what a shop measures, not what a file rounds. */
export const FRAME_SLACK_MM: Mm = 0.01;

/**
 * The shape as a clamp; a fault where it is drawn in another place.
 * @example profileClamp({ noseRadiusMm: 0.6, outlines: [bar, holder] })
 */
export function profileClamp(profile: {
  readonly noseRadiusMm: Mm;
  readonly outlines: readonly Outline[];
}): ClampResult {
  const box = boxOf(...profile.outlines);
  if (Math.abs(box.minY) > FRAME_SLACK_MM) {
    return off("a lowest point at y", box.minY, "with its underside, its lowest point, on y = 0");
  }
  if (Math.abs(box.maxX) > FRAME_SLACK_MM) {
    const where = "with the foremost point of its nose on x = 0 and the rest behind it, at x less than 0";
    return off("a foremost point at x", box.maxX, where);
  }
  return { ok: true, clamp: { kind: "profile", ...profile, noseRunMm: noseRunOf(profile.outlines) } };
}

/** From the underside's end to the foremost point: the end of its last straight piece, or where a round body touches. */
function noseRunOf(outlines: readonly Outline[]): Mm {
  const onUnderside = ({ y }: Point) => Math.abs(y) <= FRAME_SLACK_MM;
  const edges = outlines.flatMap((outline) => outline.edges);
  const flat = edges.filter(({ kind, from, to }) => kind === "line" && onUnderside(from) && onUnderside(to));
  const ends = flat.length > 0 ? flat.flatMap(({ from, to }) => [from.x, to.x]) : [lowestX(edges)];
  return Math.max(0, -Math.max(...ends));
}

function lowestX(edges: readonly Edge[]): Mm {
  const points = edges.flatMap((edge) =>
    edge.kind === "arc" && edge.sweepRad > 0
      ? [edge.from, { x: edge.center.x, y: boxOf({ edges: [edge] }).minY }]
      : [edge.from],
  );
  return points.reduce((lowest, point) => (point.y < lowest.y ? point : lowest)).x;
}

function off(what: string, atMm: Mm, where: string): ClampResult {
  const fault: BrakeFault = {
    key: "profiles",
    found: (say) => `${what} = ${say(atMm)}`,
    allowed: () => `drawn ${where}`,
  };
  return { ok: false, fault };
}
