/**
 * What the brake makes of each bend asked for: radius, leaf angle, bend allowance, and where the nose stands for it.
 * Automatic setback forms the asked radius; one given, or kept for all bends, forms its own (src/model.md, section 4),
 * and then radius and springback hang on each other: θo = θ/Ks(r), r = r(s, θo), solved together to rounding.
 */
import type { Brake } from "../brake/brake.ts";
import { leastInsideRadius } from "../brake/nosePinch.ts";
import { automaticNoseSetback, formedInsideRadius } from "../brake/noseSetback.ts";
import { bendAllowance, bendDeduction } from "../part/allowance.ts";
import { outsideBendSetback } from "../part/bendSetback.ts";
import type { Bend, Turn } from "../part/part.ts";
import type { Deg, Mm } from "../units/quantity.ts";

export interface BendAsked {
  readonly angleDeg: Deg;
  readonly turn: Turn;
  readonly insideRadiusMm: Mm;
  /** Absent: to be worked out from springback. */
  readonly overbendDeg?: Deg;
}

/** Sheet and brake that the bends are formed from. */
export interface Forming {
  readonly thicknessMm: Mm;
  readonly kFactor: number;
  readonly brake: Pick<Brake, "clamp" | "leaf" | "noseSetback">;
  /** Ks: the part of the leaf angle that stays at an inside radius, 0 where the sheet only flexes. */
  readonly keptAt: (insideRadiusMm: Mm) => number;
}

/** Why a bend can't be formed as asked. */
export type BendFault =
  /** The nose leaves room for this radius and larger ones only. */
  | { readonly kind: "noseTooRound"; readonly leastMm: Mm }
  /** The sheet springs back to this part of the leaf's angle, so that no leaf angle under 180° gives the asked one. */
  | { readonly kind: "springsBack"; readonly kept: number };

export type BendFormed =
  | { readonly ok: true; readonly bend: Bend }
  | { readonly ok: false; readonly fault: BendFault };

/** Radius and thickness may fall short of the nose by this much: the rounding of inches to mm. */
export const ROUNDING_MM: Mm = 1e-6;

/** A given setback may fall short of the least by this part of the thickness, and is taken as the least: brakes spring. */
export const SPRUNG_THICKNESSES = 0.1;

/** More halvings than a double has bits. */
const HALVINGS = 60;

/** Each bend as formed, or why it can't be. */
export function formBends(asked: readonly BendAsked[], forming: Forming): readonly BendFormed[] {
  const { noseSetback } = forming.brake;
  if (typeof noseSetback === "number") return asked.map((bend) => formedBy(bend, noseSetback, forming));
  const automatic = asked.map((bend) => formedAsAsked(bend, forming));
  if (noseSetback === "auto" || automatic.some(({ ok }) => !ok)) return automatic;
  const largestMm = Math.max(...automatic.map((formed) => (formed.ok ? formed.bend.noseSetbackMm : 0)));
  return asked.map((bend) => formedBy(bend, largestMm, forming));
}

/** The asked radius, and the setback that forms it. */
function formedAsAsked(asked: BendAsked, forming: Forming): BendFormed {
  const overbendDeg = overbendAt(asked, asked.insideRadiusMm, forming);
  if (overbendDeg >= 180) return springsBack(asked.insideRadiusMm, forming);
  const leastMm = leastInsideRadius(forming.brake.clamp, overbendDeg);
  if (asked.insideRadiusMm < leastMm - ROUNDING_MM)
    return { ok: false, fault: { kind: "noseTooRound", leastMm } };
  const insideRadiusMm = Math.max(asked.insideRadiusMm, leastMm);
  const noseSetbackMm = automaticNoseSetback({ ...standing(overbendDeg, forming), insideRadiusMm });
  return bendOf(asked, forming, { insideRadiusMm, overbendDeg, noseSetbackMm, pinched: false });
}

/** The radius that a setback forms, or the least that the nose leaves room for where it stands too far forward for any. */
function formedBy(asked: BendAsked, noseSetbackMm: Mm, forming: Forming): BendFormed {
  const sharpest = sharpestAt(asked, forming);
  if (sharpest.overbendDeg >= 180) return springsBack(sharpest.insideRadiusMm, forming);
  const leastMm = automaticNoseSetback({ ...standing(sharpest.overbendDeg, forming), ...sharpest });
  const shortMm = leastMm - noseSetbackMm;
  const pinched = shortMm > SPRUNG_THICKNESSES * forming.thicknessMm + ROUNDING_MM;
  if (pinched) return bendOf(asked, forming, { ...sharpest, noseSetbackMm, pinched });
  if (shortMm > ROUNDING_MM) return bendOf(asked, forming, { ...sharpest, noseSetbackMm: leastMm, pinched });
  const insideRadiusMm = radiusFormed(asked, noseSetbackMm, sharpest.insideRadiusMm, forming);
  const overbendDeg = overbendAt(asked, insideRadiusMm, forming);
  return bendOf(asked, forming, { insideRadiusMm, overbendDeg, noseSetbackMm, pinched });
}

/** The least radius that the nose leaves room for, at the leaf angle that it wants itself. */
function sharpestAt(asked: BendAsked, forming: Forming): Pick<Bend, "insideRadiusMm" | "overbendDeg"> {
  let overbendDeg: Deg = asked.overbendDeg ?? asked.angleDeg;
  let insideRadiusMm: Mm = Number.NaN;
  // A larger leaf angle may bring more of a free profile's nose into the arc, and wants a larger radius then.
  for (let i = 0; i < HALVINGS; i++) {
    const leastMm = leastInsideRadius(forming.brake.clamp, overbendDeg);
    if (leastMm === insideRadiusMm) break;
    insideRadiusMm = leastMm;
    overbendDeg = overbendAt(asked, insideRadiusMm, forming);
  }
  return { insideRadiusMm, overbendDeg };
}

/**
 * The radius that is formed at just the leaf angle that it wants: a larger one springs back more, the leaf goes farther,
 * and that forms a smaller one, so there is one such radius between the least and what the least one's leaf angle forms.
 */
function radiusFormed(asked: BendAsked, noseSetbackMm: Mm, leastMm: Mm, forming: Forming): Mm {
  const formedAt = (insideRadiusMm: Mm): Mm => {
    const overbendDeg = overbendAt(asked, insideRadiusMm, forming);
    return overbendDeg >= 180 ? 0 : formedInsideRadius({ ...standing(overbendDeg, forming), noseSetbackMm });
  };
  const atLeastMm = Math.max(formedAt(leastMm), leastMm);
  if (asked.overbendDeg !== undefined) return atLeastMm;
  let [small, large] = [leastMm, atLeastMm];
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (small + large) / 2;
    if (formedAt(middle) >= middle) small = middle;
    else large = middle;
  }
  return (small + large) / 2;
}

/** The given overbend, else θ/Ks; Infinity where the sheet only flexes. */
function overbendAt({ angleDeg, overbendDeg }: BendAsked, insideRadiusMm: Mm, { keptAt }: Forming): Deg {
  return overbendDeg ?? angleDeg / keptAt(insideRadiusMm);
}

function standing(overbendDeg: Deg, { thicknessMm, brake }: Forming) {
  return { overbendDeg, thicknessMm, pivot: brake.leaf.pivot, noseRunMm: brake.clamp.noseRunMm };
}

function springsBack(insideRadiusMm: Mm, { keptAt }: Forming): BendFormed {
  return { ok: false, fault: { kind: "springsBack", kept: keptAt(insideRadiusMm) } };
}

function bendOf(
  { angleDeg, turn }: BendAsked,
  { thicknessMm, kFactor }: Forming,
  formed: Pick<Bend, "insideRadiusMm" | "overbendDeg" | "noseSetbackMm" | "pinched">,
): BendFormed {
  const shape = { angleDeg, insideRadiusMm: formed.insideRadiusMm, thicknessMm };
  const allowanceMm = bendAllowance(shape, kFactor);
  const bendSetbackMm = outsideBendSetback(shape);
  const deductionMm = bendDeduction(shape, allowanceMm);
  return { ok: true, bend: { angleDeg, turn, ...formed, allowanceMm, bendSetbackMm, deductionMm } };
}
