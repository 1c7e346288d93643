/**
 * A part in its brake as both may be within what the job doubts (src/model.md, section 4): leaf angles from least to most
 * springback, the same share of it in every bend, since all are of one sheet; the nose's setback and radius off by what the job
 * says. Automatic setback follows the leaf angle and keeps the radius; a given one forms its own. The blank is cut already, so
 * what a bend takes up more lacks in the flats beside it, half in each.
 */
import type { Brake } from "../brake/brake.ts";
import { leastInsideRadius } from "../brake/nosePinch.ts";
import { automaticNoseSetback, formedInsideRadius } from "../brake/noseSetback.ts";
import { outsideBendSetback } from "../part/bendSetback.ts";
import type { Bend, Part } from "../part/part.ts";
import { type Deg, type Mm, toRad } from "../units/quantity.ts";
import { ROUNDING_MM, SPRUNG_THICKNESSES } from "./formBends.ts";

/** How far off what the job takes for likely. */
export interface Off {
  /** −1 springs back least, 0 as likely, 1 most; between them the leaf angle goes straight. */
  readonly spring: number;
  /** The nose stands so much farther back than set. */
  readonly noseSetbackMm: Mm;
  /** The nose is sharper (−1) or rounder (1) by all of its doubt, or by a share of it. */
  readonly nose: number;
}

export interface Variant {
  readonly off: Off;
  readonly part: Part;
  readonly brake: Brake;
}

export const AS_LIKELY: Off = { spring: 0, noseSetbackMm: 0, nose: 0 };

/** Narrower ranges are none: the rounding of a shared angle. */
const NARROW_DEG: Deg = 1e-6;

/** The ends of all doubts in every mix, the part as likely first; that alone where nothing is doubted. */
export function variantsOf(part: Part, brake: Brake): readonly Variant[] {
  const { noseSetbackMm = 0, noseRadius } = brake.doubts ?? {};
  const springs = isReckoned(part) ? [0, 1, -1] : [0];
  const backs = noseSetbackMm > 0 ? [0, noseSetbackMm, -noseSetbackMm] : [0];
  const noses = noseRadius ? ([0, 1, -1] as const) : ([0] as const);
  const brakes = new Map(noses.map((nose) => [nose, brakeAt(brake, nose)]));
  return noses.flatMap((nose) =>
    backs.flatMap((back) =>
      springs.map((spring) =>
        variantOn(part, brake, { spring, noseSetbackMm: back, nose }, brakes.get(nose)!),
      ),
    ),
  );
}

/** The part and the brake off by this much. */
export function variantAt(part: Part, brake: Brake, off: Off): Variant {
  return variantOn(part, brake, off, brakeAt(brake, off.nose));
}

/** Whether some bend's leaf angle is known as a range only. */
export function isReckoned({ bends }: Part): boolean {
  return bends.some(({ overbendRangeDeg: range }) => range !== undefined && range[1] - range[0] > NARROW_DEG);
}

/** The leaf angle of a bend that springs back so much. */
export function leafAngleAt({ overbendDeg, overbendRangeDeg }: Bend, spring: number): Deg {
  if (overbendRangeDeg === undefined || spring === 0) return overbendDeg;
  const [low, high] = overbendRangeDeg;
  return overbendDeg + Math.abs(spring) * ((spring < 0 ? low : high) - overbendDeg);
}

/** With the nearest of the clamps that stand for the doubt of the nose. */
function brakeAt(brake: Brake, nose: number): Brake {
  const clamps = brake.doubts?.noseRadius?.clamps;
  const asSaid = ((clamps?.length ?? 1) - 1) / 2;
  const at = Math.round(asSaid * (1 + nose));
  return at === asSaid || !clamps ? brake : { ...brake, clamp: clamps[at]! };
}

function variantOn(part: Part, brake: Brake, off: Off, on: Brake): Variant {
  if (off.spring === 0 && off.noseSetbackMm === 0 && off.nose === 0) return { off, part, brake };
  const bends = part.bends.map((bend) => bendAt(bend, part.thicknessMm, { brake, on, off }));
  const taken = bends.map(({ allowanceMm }, i) => (allowanceMm - part.bends[i]!.allowanceMm) / 2);
  // No flat is left with less than half of itself; that much no doubt takes but from a flat that is nearly none.
  const flatsMm = part.flatsMm.map((flat, i) =>
    Math.max(flat / 2, flat - (taken[i - 1] ?? 0) - (taken[i] ?? 0)),
  );
  return { off, part: { ...part, flatsMm, bends }, brake: on };
}

/** `brake` is as the job has it and as the nose was set by, `on` as it may be. */
interface Forming {
  readonly brake: Brake;
  readonly on: Brake;
  readonly off: Off;
}

function bendAt(bend: Bend, thicknessMm: Mm, { brake, on, off }: Forming): Bend {
  // A hem is folded as far as the leaf gets, whatever it springs back.
  if (bend.hem) return bend;
  const overbendDeg = leafAngleAt(bend, off.spring);
  if (bend.pinched) return { ...bend, overbendDeg };
  const { pivot } = brake.leaf;
  const likely = { ...bend, thicknessMm, pivot, noseRunMm: brake.clamp.noseRunMm };
  const automatic = brake.noseSetback === "auto";
  const moved = automatic
    ? automaticNoseSetback({ ...likely, overbendDeg }) - automaticNoseSetback(likely)
    : 0;
  const asSetMm = bend.noseSetbackMm + moved;
  if (automatic && on === brake && off.noseSetbackMm === 0)
    return { ...bend, overbendDeg, noseSetbackMm: asSetMm };
  const stands = { overbendDeg, thicknessMm, pivot, noseRunMm: on.clamp.noseRunMm };
  const least = leastInsideRadius(on.clamp, overbendDeg);
  const leastMm = automaticNoseSetback({ ...stands, insideRadiusMm: least });
  const standsMm = asSetMm + off.noseSetbackMm;
  const shortMm = leastMm - standsMm;
  const pinched = shortMm > SPRUNG_THICKNESSES * thicknessMm + ROUNDING_MM;
  const short = shortMm > ROUNDING_MM;
  const grows = formedInsideRadius({ ...stands, noseSetbackMm: standsMm }) - formedInsideRadius(likely);
  const insideRadiusMm = short ? least : Math.max(least, bend.insideRadiusMm + grows);
  const allowanceMm = bend.allowanceMm + toRad(bend.angleDeg) * (insideRadiusMm - bend.insideRadiusMm);
  const bendSetbackMm = outsideBendSetback({ angleDeg: bend.angleDeg, insideRadiusMm, thicknessMm });
  return {
    ...bend,
    overbendDeg,
    insideRadiusMm,
    allowanceMm,
    bendSetbackMm,
    deductionMm: bend.deductionMm + 2 * (bendSetbackMm - bend.bendSetbackMm) - allowanceMm + bend.allowanceMm,
    noseSetbackMm: short && !pinched ? leastMm : standsMm,
    pinched,
  };
}
