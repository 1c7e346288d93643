/**
 * A finger: nose, front face leaning back at the nose angle up to its height, flat foot.
 * Corners, nose coordinates: [V, 0] (Rn), [V − height/tan β, height] (topRadius), [−footDepth, height], [−footDepth, 0].
 */
import type { Deg, Mm } from "../units/quantity.ts";
import { type ClampResult, frontedClamp, type Holder } from "./frontedClamp.ts";

export interface FingerMeasures {
  /** 45 leans back at 45°, 90 is square. */
  readonly noseAngleDeg: Deg;
  readonly noseRadiusMm: Mm;
  readonly heightMm: Mm;
  readonly footDepthMm: Mm;
  readonly topRadiusMm?: Mm;
  readonly holder?: Holder;
}

/**
 * The finger as a clamp; a fault where its measures don't go together.
 * @example fingerClamp({ noseAngleDeg: 45, noseRadiusMm: 1, heightMm: 50, footDepthMm: 40 }).fault.key // "height"
 */
export function fingerClamp(finger: FingerMeasures): ClampResult {
  const { noseAngleDeg, noseRadiusMm, heightMm, footDepthMm, topRadiusMm = 0, holder } = finger;
  return frontedClamp({
    kind: "finger",
    noseAngleDeg,
    noseRadiusMm,
    topRadiusMm,
    heightMm,
    depthMm: footDepthMm,
    ...(holder && { holder }),
    keys: { height: "height", depth: "footDepth" },
  });
}
