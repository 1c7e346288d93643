/**
 * A clamp of free shape: one or more outlines in nose coordinates, with the radius of its nose.
 * Its underside must lie on y = 0 and its foremost point on x = 0, within 0.01 mm.
 */
import { boxOf } from "../plane/bounding.ts";
import type { Outline } from "../plane/outline.ts";
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
  return { ok: true, clamp: { kind: "profile", ...profile } };
}

function off(what: string, atMm: Mm, where: string): ClampResult {
  const fault: BrakeFault = {
    key: "profiles",
    found: (say) => `${what} = ${say(atMm)}`,
    allowed: () => `drawn ${where}`,
  };
  return { ok: false, fault };
}
