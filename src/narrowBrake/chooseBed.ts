/**
 * The bed under bar and holder: square tube, pulled up by the same bolts, pressed down by sheet and heel, bowing the other way.
 * Same beam and load as the holder (strength/uniformBeam.ts); the top wall under the heel as a plain strip, σ = 6·R·a·b/(W·t²).
 * Bound: the tongue is taken to leave the bed free to bow, which is on the safe side. An open angle would fold under the heel.
 */
import type { Mm, Mpa } from "../units/quantity.ts";
import type { HolderPlan } from "./chooseHolder.ts";
import type { GoverningLoads } from "./governingLoads.ts";
import { envelope, lightestThatPasses, type MemberPlan, planMember } from "./memberPlan.ts";
import type { ResolvedRequirements } from "./requirements.ts";
import { upToMark } from "./shopMark.ts";
import type { Stock } from "./stockSize.ts";

/** The bed stands out beyond the holder at each end to carry the hinges. */
export const HINGE_ROOM_MM: Mm = 30;

export interface BedPlan extends MemberPlan {
  /** Stress in the top wall under the heel of the holder. */
  readonly wallStressMpa: Mpa;
}

/** The bed, or undefined where no stock size is deep and strong enough. */
export function chooseBed(
  requirements: ResolvedRequirements,
  loads: GoverningLoads,
  stock: Stock,
  holder: HolderPlan,
  barDepthMm: Mm,
): BedPlan | undefined {
  const { steel, safety, give, overhangMm } = requirements;
  const { thread, insideLength } = holder.bolts;
  const allowedMpa = steel.yieldMpa / safety.yield;
  const heelAtMm = overhangMm + envelope(holder.shape).widthMm;
  const plans = stock.tubes.flatMap((size): BedPlan[] => {
    const { widthMm } = envelope(size.shape);
    if (widthMm < barDepthMm || size.shape.kind !== "tube") return [];
    const plan = planMember(
      {
        role: "bed",
        stock: size,
        shape: size.shape,
        lengthMm: Math.max(
          holder.lengthMm,
          upToMark(loads.longestPartMm + 2 * HINGE_ROOM_MM, requirements.units),
        ),
        beam: holder.beam,
        holeShare: insideLength ? 1 - thread.diameterMm / widthMm : 1,
      },
      steel.modulusMpa,
      loads.leafLeverMm,
    );
    const strip = (holder.heelNPerMm * heelAtMm * (widthMm - heelAtMm)) / widthMm;
    return [{ ...plan, wallStressMpa: (6 * strip) / size.shape.wallMm ** 2 }];
  });
  return lightestThatPasses(
    plans.filter((plan) => plan.wallStressMpa <= allowedMpa),
    allowedMpa,
    give.angleDeg - holder.angleLostDeg,
  );
}
