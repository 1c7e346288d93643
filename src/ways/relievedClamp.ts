/**
 * A finger or bar whose front is ground back above some height, its nose left as it was: a free profile.
 * Corners, nose coordinates: the finger's (brake/finger.ts) with one more, where the relief begins. Exact to rounding.
 */
import { virtualNoseX } from "../brake/frontedClamp.ts";
import type { ClampFile, ProfileFile } from "../jobFile/schema.ts";
import { writtenLength } from "../jobFile/writtenLength.ts";
import { type LengthUnit, parseLength } from "../units/length.ts";
import { type Deg, type Mm, toRad } from "../units/quantity.ts";

/**
 * The clamp with its front leaning at `reliefDeg` from `fromMm` over the underside up; unchanged where it is a free
 * profile already.
 */
export function relievedClamp(clamp: ClampFile, units: LengthUnit, fromMm: Mm, reliefDeg: Deg): ClampFile {
  if (clamp.type === "profile") return clamp;
  const mm = (written: number | string | undefined): Mm => parseLength(written ?? 0, units) ?? 0;
  const [heightMm, depthMm] =
    clamp.type === "finger"
      ? [mm(clamp.height), mm(clamp.footDepth)]
      : [mm(clamp.thickness), mm(clamp.depth)];
  const noseRadiusMm = mm(clamp.noseRadius);
  const noseAngleDeg = Number.parseFloat(String(clamp.noseAngle ?? 90));
  const nose = virtualNoseX(noseRadiusMm, noseAngleDeg);
  const start = nose - fromMm / Math.tan(toRad(noseAngleDeg));
  const top = start - (heightMm - fromMm) / Math.tan(toRad(reliefDeg));
  const corner = (x: Mm, y: Mm, radius: Mm = 0): ProfileFile[number] => {
    const [xWritten, yWritten] = [writtenLength(x, units), writtenLength(y, units)];
    return radius > 0 ? [xWritten, yWritten, writtenLength(radius, units)] : [xWritten, yWritten];
  };
  const profiles = [
    [
      corner(nose, 0, noseRadiusMm),
      corner(start, fromMm),
      corner(top, heightMm, mm(clamp.topRadius)),
      corner(-depthMm, heightMm),
      corner(-depthMm, 0),
    ],
  ];
  if (clamp.holderBack !== undefined) {
    const [back, high, deep] = [mm(clamp.holderBack), mm(clamp.holderHeight), mm(clamp.holderDepth)];
    profiles.push([
      corner(-back - deep, heightMm),
      corner(-back, heightMm),
      corner(-back, heightMm + high),
      corner(-back - deep, heightMm + high),
    ]);
  }
  return { type: "profile", noseRadius: clamp.noseRadius, profiles };
}
