/**
 * A clamp with sheet folded over its nose: the shim lies between nose and work, so radius and foremost point are those
 * over the shim, and the body stands one shim higher and farther back (src/model.md, section 4). Exact.
 */
import { movedOutline } from "../plane/move.ts";
import type { Mm } from "../units/quantity.ts";
import type { Clamp } from "./brake.ts";

/** The clamp over a shim of this thickness; the clamp itself where that is 0. */
export function shimmed(clamp: Clamp, shimMm: Mm): Clamp {
  if (shimMm === 0) return clamp;
  const outlines = clamp.outlines.map((outline) => movedOutline(outline, -shimMm, shimMm));
  const [noseRadiusMm, noseRunMm] = [clamp.noseRadiusMm + shimMm, clamp.noseRunMm + shimMm];
  return { ...clamp, shimMm, noseRadiusMm, noseRunMm, outlines };
}
