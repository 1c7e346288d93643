/**
 * A clamp bar: flat stock with a rounded nose, its front square unless bevelled, its top front edge sharp unless rounded.
 * Corners, nose coordinates: [V, 0] (Rn), [V − thickness/tan β, thickness] (topRadius), [−depth, thickness], [−depth, 0].
 */
import type { Deg, Mm } from "../units/quantity.ts";
import { type ClampResult, frontedClamp, type Holder } from "./frontedClamp.ts";

export interface BarMeasures {
  readonly thicknessMm: Mm;
  readonly depthMm: Mm;
  readonly noseRadiusMm: Mm;
  /** 90 (square) unless given; less is a front bevelled back. */
  readonly noseAngleDeg?: Deg;
  readonly topRadiusMm?: Mm;
  readonly holder?: Holder;
}

/**
 * The bar as a clamp; a fault where its measures don't go together.
 * @example barClamp({ thicknessMm: 8, depthMm: 45, noseRadiusMm: 0.8, topRadiusMm: 0.8 }).clamp.noseAngleDeg // 90
 */
export function barClamp(bar: BarMeasures): ClampResult {
  const { thicknessMm, depthMm, noseRadiusMm, noseAngleDeg = 90, topRadiusMm = 0, holder } = bar;
  return frontedClamp({
    kind: "bar",
    noseAngleDeg,
    noseRadiusMm,
    topRadiusMm,
    heightMm: thicknessMm,
    depthMm,
    ...(holder && { holder }),
    keys: { height: "thickness", depth: "depth" },
  });
}
