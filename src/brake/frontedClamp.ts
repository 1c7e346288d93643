/**
 * What the finger and the bar have in common: a rounded nose, a straight front face leaning back, a flat top,
 * a square back, and perhaps a holder on top. Nose coordinates: V = Rn/tan(β/2) − Rn puts the foremost point of
 * the rounding on x = 0. Exact to rounding.
 */
import { filletedOutline } from "../plane/fillet.ts";
import type { Outline } from "../plane/outline.ts";
import { type Deg, type Mm, toRad } from "../units/quantity.ts";
import type { Clamp } from "./brake.ts";
import { type BrakeFault, ofOutline, tooLarge } from "./fault.ts";

/** A rectangle on top of the clamp: what carries the bar or the fingers. */
export interface Holder {
  /** Distance of its front behind the foremost point of the nose. */
  readonly backMm: Mm;
  readonly heightMm: Mm;
  readonly depthMm: Mm;
}

export interface Front {
  readonly kind: "finger" | "bar";
  /** Slope of the front face over the underside, 0 < β ≤ 90; 90 is square. */
  readonly noseAngleDeg: Deg;
  readonly noseRadiusMm: Mm;
  readonly topRadiusMm: Mm;
  readonly heightMm: Mm;
  readonly depthMm: Mm;
  readonly holder?: Holder;
  /** What the job file calls height and depth. */
  readonly keys: { readonly height: string; readonly depth: string };
}

export type ClampResult =
  | { readonly ok: true; readonly clamp: Clamp }
  | { readonly ok: false; readonly fault: BrakeFault };

/** Where the front face, run down to the underside, would meet it: V = Rn/tan(β/2) − Rn. */
export function virtualNoseX(noseRadiusMm: Mm, noseAngleDeg: Deg): Mm {
  if (noseAngleDeg === 90) return 0;
  return noseRadiusMm / Math.tan(toRad(noseAngleDeg) / 2) - noseRadiusMm;
}

/** Clamp from its front; a fault where the measures don't go together. */
export function frontedClamp(front: Front): ClampResult {
  const { heightMm, depthMm, holder, keys } = front;
  const nose = virtualNoseX(front.noseRadiusMm, front.noseAngleDeg);
  const lean = front.noseAngleDeg === 90 ? 0 : 1 / Math.tan(toRad(front.noseAngleDeg));
  const top = nose - heightMm * lean;
  if (top <= -depthMm) {
    return refused(tooLarge(keys.height, (depthMm + nose) / lean, "where the front face meets the back"));
  }
  const body = filletedOutline([
    { x: nose, y: 0, radius: front.noseRadiusMm },
    { x: top, y: heightMm, radius: front.topRadiusMm },
    { x: -depthMm, y: heightMm },
    { x: -depthMm, y: 0 },
  ]);
  if (!body.ok) return refused(ofOutline(body.fault, ["noseRadius", "topRadius"], keys.height));
  const outlines: Outline[] = [body.outline];
  if (holder) {
    if (holder.backMm >= depthMm) {
      return refused(tooLarge("holderBack", depthMm, `the ${keys.depth} on which the holder stands`));
    }
    const [rear, face] = [-holder.backMm - holder.depthMm, -holder.backMm];
    const block = filletedOutline([
      { x: rear, y: heightMm },
      { x: face, y: heightMm },
      { x: face, y: heightMm + holder.heightMm },
      { x: rear, y: heightMm + holder.heightMm },
    ]);
    if (!block.ok) return refused(ofOutline(block.fault, [], "holderHeight"));
    outlines.push(block.outline);
  }
  const { kind, noseRadiusMm, noseAngleDeg } = front;
  return { ok: true, clamp: { kind, noseRadiusMm, noseRunMm: noseRadiusMm, noseAngleDeg, outlines } };
}

function refused(fault: BrakeFault): ClampResult {
  return { ok: false, fault };
}
