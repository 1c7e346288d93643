/**
 * Bar, holder, bolts and washers under the pull of the bolts, tightened as far as their torque may come out.
 * Formulas beside each check; clampForces.ts has the forces.
 * Bound: the holder is taken as a strip no wider than twice its lever and the washer where a bolt pulls.
 */
import { toDeg } from "../../units/quantity.ts";
import { barChecks } from "../barWindow.ts";
import { GERE_BEAM, ISO_898, SHIGLEY_BOLT, SHIGLEY_WELD, STATICS } from "../handbooks.ts";
import { reusablePreload } from "../strength/bolt.ts";
import { centralMoment, centralSag } from "../strength/centralLoad.ts";
import { sectionOf } from "../strength/rectangles.ts";
import { THROAT_OF_LEG, WELD_ALLOWED_MPA } from "../strength/weldLines.ts";
import { checkOf, type StrengthCheck } from "../strengthCheck.ts";
import { WELDED_SHARE } from "./bedBeam.ts";
import { clampForces } from "./clampForces.ts";
import { allowed, measured, type UnderLoad } from "./under.ts";

const AT_MOST = "bolts tightened as far as their torque may come out, 28 % past its mark";

export function clampChecks(under: UnderLoad): StrengthCheck[] {
  return [...barChecks(under), ...holderChecks(under), ...boltChecks(under)];
}

function holderChecks(under: UnderLoad): StrengthCheck[] {
  const { requirements, loads, places, sizes } = under;
  const forces = clampForces(under);
  const holder = measured(under, "holder");
  const rib = sizes.ribHighMm > 0 ? measured(under, "rib") : undefined;
  const hole = holder.holes[0]!.diameter;
  const strip = Math.min(forces.shareMm, 2 * forces.frontMm + places.washerMm) - hole;
  const across = (6 * forces.noseNPerMm * forces.shareMm * forces.frontMm) / strip / holder.highMm ** 2;
  const limit = rib ? allowed(under).welded : allowed(under).cold;
  const section = sectionOf(rib ? [holder, rib] : [holder]);
  const net = (holder.wideMm - hole) / holder.wideMm;
  const loadNPerMm = forces.noseNPerMm * (1 + forces.frontMm / forces.backMm);
  const spanMm = places.inside ? forces.shareMm : places.boltSpanMm;
  const loadedMm = places.inside ? spanMm : loads.longestPartMm;
  // Beyond the bar nothing presses on the holder.
  const endMm = (measured(under, "bar").longMm - places.boltSpanMm) / 2;
  const betweenNmm = centralMoment({ loadNPerMm, loadedMm, spanMm });
  const endNmm = places.inside ? (loadNPerMm * endMm ** 2) / 2 : 0;
  const moment = Math.max(betweenNmm, endNmm);
  // More bolts do nothing for the ends beyond the last of them.
  const closer: Pick<StrengthCheck, "grows" | "orGrows"> = rib
    ? { grows: "ribHighMm" }
    : endNmm >= betweenNmm
      ? { grows: "holderMm" }
      : { grows: "boltGaps", orGrows: ["holderMm"] };
  const stiffness = requirements.steel.modulusMpa * section.secondMomentXMm4;
  // What the bolts are tightened to bends the holder for good; the bend loses what the folding adds.
  const sagMm = centralSag(
    { loadNPerMm: loadNPerMm / (requirements.safety.bolt * 1.28), loadedMm, spanMm },
    stiffness,
  );
  const pieces = rib ? ["holder", "rib"] : ["holder"];
  const ribFlow =
    rib &&
    (((loadNPerMm * loadedMm) / 2) *
      rib.wideMm *
      rib.highMm *
      ((rib.minY + rib.maxY) / 2 - section.centroidYMm)) /
      section.secondMomentXMm4;
  return [
    ...(ribFlow === undefined
      ? []
      : [
          checkOf({
            member: "weld of the rib",
            check: "shear in the throat",
            value: ribFlow / 2 / WELDED_SHARE / (THROAT_OF_LEG * sizes.weldMm),
            limit: WELD_ALLOWED_MPA,
            unit: "MPa",
            formula: "τ = V·Q/(2·I)/(share·0.707·h)",
            source: SHIGLEY_WELD,
            assumptions: [AT_MOST, "a fillet on each side of the rib, for half of its length"],
            pieces,
            grows: sizes.weldMm < 0.75 * Math.min(sizes.ribMm, sizes.leafEarMm) ? "weldMm" : "ribHighMm",
          }),
        ]),
    checkOf({
      member: "holder",
      check: "bending across, from nose to bolts",
      value: across,
      limit,
      unit: "MPa",
      formula: "σ = 6·q·p·a/(b·t²)",
      source: STATICS,
      assumptions: [AT_MOST, "a strip twice the lever and the washer wide carries it, less the hole"],
      pieces: ["holder", "bar"],
      grows: "holderMm",
    }),
    checkOf({
      member: "holder",
      check: places.inside
        ? "bending along, between bolts and beyond the last"
        : "bending along, between the two bolts",
      value: moment / section.modulusXMm3 / net,
      limit,
      unit: "MPa",
      formula: places.inside
        ? "σ = M/Z, M = w·L·(2·S − L)/8, or w·e²/2 at the ends where that is more"
        : "σ = M/Z, M = w·L·(2·S − L)/8",
      source: `${STATICS}; ${GERE_BEAM}`,
      assumptions: [AT_MOST, "free to turn at each bolt", "less the bolt's hole"],
      pieces,
      ...closer,
    }),
    checkOf({
      member: "holder",
      check: "bend angle lost between bolts",
      value: toDeg(Math.atan2(sagMm, loads.leafLeverMm)),
      limit: requirements.give.angleDeg,
      unit: "deg",
      formula: "Δθ = atan(δ/a), δ = w·L·(8·S³ − 4·S·L² + L³)/(384·E·I)",
      source: `${STATICS}; ${GERE_BEAM}`,
      assumptions: ["the folding's own pull", "lever a is half of the shortest flange"],
      pieces,
      ...(rib
        ? { grows: "ribHighMm" as const }
        : { grows: "boltGaps" as const, orGrows: ["holderMm" as const] }),
    }),
  ];
}

function boltChecks(under: UnderLoad): StrengthCheck[] {
  const { sizes, stock } = under;
  const forces = clampForces(under);
  const washer = measured(under, "washer-1");
  const cap = measured(under, "cap");
  const bolt = measured(under, "bolt-1");
  const washerHole = washer.holes[0]!.diameter;
  const holderHole = measured(under, "holder").holes[0]!.diameter;
  const slotMm2 = (washerHole * (washer.wideMm - holderHole)) / 2;
  const areaMm2 = washer.wideMm * washer.longMm - (Math.PI / 4) * holderHole ** 2 - slotMm2;
  // The nut presses in a ring, the holder bears in a ring round its larger hole.
  const nutRing = 0.625 * bolt.diameterMm;
  const holderRing = (holderHole / 2 + washer.wideMm / 2) / 2;
  const washerMpa =
    (6 * forces.mostN * (holderRing - nutRing)) /
    Math.PI /
    (((washer.wideMm - washerHole) / 2) * washer.highMm ** 2);
  return [
    checkOf({
      member: "hold-down bolts",
      check: "pull that they are tightened to",
      value: forces.targetN,
      limit: reusablePreload(sizes.bolt, stock.boltGrade),
      unit: "N",
      formula: "F = n·q·p·(a + b)/b ≤ 0.75·Sp·At, At = π/4·(d − 0.9382·P)², 0.9743·P in inch threads",
      source: `${STATICS}; ${SHIGLEY_BOLT}; ${ISO_898}; ${stock.boltGrade.source}`,
      assumptions: ["holder pivots on its heel", "each bolt holds down what lies nearest to it"],
      pieces: ["bolt-1", "holder", "bar"],
      ...(sizes.bolt.diameterMm >= 20 && under.places.inside
        ? { grows: "boltGaps" as const, orGrows: ["bolt" as const] }
        : { grows: "bolt" as const }),
    }),
    checkOf({
      member: "bed cap",
      check: "length of thread that a bolt needs",
      value: bolt.diameterMm,
      limit: cap.highMm,
      unit: "mm",
      formula: "thread as long as the bolt is thick",
      source: "common practice for steel in steel, no source",
      assumptions: ["the lower nut is not counted"],
      pieces: ["cap", "bolt-1"],
      grows: "capMm",
    }),
    checkOf({
      member: "slotted washers",
      check: "pressure on the holder",
      value: forces.mostN / areaMm2,
      limit: allowed(under).welded,
      unit: "MPa",
      formula: "p = F/A, less the holder's hole and the slot",
      source: STATICS,
      assumptions: [AT_MOST],
      pieces: ["washer-1", "holder"],
      grows: "bolt",
    }),
    checkOf({
      member: "slotted washers",
      check: "bending over the hole",
      value: washerMpa,
      limit: allowed(under).welded,
      unit: "MPa",
      formula: "σ = 6·F·(R − r)/(π·b·t²), b one leg beside the hole",
      source: STATICS,
      assumptions: [AT_MOST, "nut and holder press in rings", "the side of the slot carries nothing"],
      pieces: ["washer-1", "bolt-1"],
      grows: "washerMm",
    }),
  ];
}
