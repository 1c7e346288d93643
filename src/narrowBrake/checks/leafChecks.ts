/**
 * The leaf between its hinges, and its handles. Formulas and sources stand beside each check.
 * Bound: that of each formula; the leaf is taken to turn freely on its pins.
 */
import { toDeg } from "../../units/quantity.ts";
import { GERE_BEAM, MOTT_SECTION, ROARK_TORSION, SHIGLEY_WELD, STATICS } from "../handbooks.ts";
import { centralMoment, centralSag, middleTwist } from "../strength/centralLoad.ts";
import { shearModulus } from "../strength/plateCantilever.ts";
import { sectionOf } from "../strength/rectangles.ts";
import { THROAT_OF_LEG, WELD_ALLOWED_MPA } from "../strength/weldLines.ts";
import { checkOf, type StrengthCheck } from "../strengthCheck.ts";
import { allowed, measured, type UnderLoad, WELDED_COLD } from "./under.ts";

/** A leaf that the part wraps under can't be higher: it may lose so much more of what leaf, bed and holder lose together. */
const LOW_LEAF_SHARE = 1.5;
/** What one person, and two, can still swing. */
const LONGEST_HANDLE_MM = { 1: 1000, 2: 1500 } as const;

/** All that makes a leaf stiffer along. */
const STIFFER = { grows: "leafHighMm" } as const;

export function leafChecks(under: UnderLoad): StrengthCheck[] {
  return [...beamChecks(under), ...clearanceChecks(under), ...handleChecks(under)];
}

/** A leaf that something hangs before or wraps under is as low as the parts ask. */
function clearanceChecks(under: UnderLoad): StrengthCheck[] {
  const { leafHighMaxMm } = under.requirements;
  if (leafHighMaxMm === undefined) return [];
  return [
    checkOf({
      member: "leaf",
      check: "height for clearance",
      value: measured(under, "leaf").highMm,
      limit: leafHighMaxMm,
      unit: "mm",
      formula: "h ≤ h of the highest leaf that every part clears",
      source: "contact engine, section 6 of the model",
      assumptions: ["section is the same along the whole bend"],
      pieces: ["leaf"],
      grows: null,
    }),
  ];
}

function beamChecks(under: UnderLoad): StrengthCheck[] {
  const { requirements, loads } = under;
  const { steel, give } = requirements;
  const leaf = measured(under, "leaf");
  const ears = [measured(under, "leaf-ear-left"), measured(under, "leaf-ear-right")] as const;
  const spanMm = (ears[1].minW + ears[1].maxW - ears[0].minW - ears[0].maxW) / 2;
  const beam = { loadNPerMm: loads.leafNPerMm.value, loadedMm: loads.longestPartMm, spanMm };
  const section = sectionOf([leaf]);
  const hole = leaf.holes[0]!;
  const [, holeY, holeW] = hole.from;
  // Above and below a handle's hole.
  const drilled = sectionOf([
    { ...leaf, minY: holeY + hole.diameter / 2 },
    { ...leaf, maxY: holeY - hole.diameter / 2 },
  ]);
  const moment = centralMoment(beam);
  const atHole = moment - (beam.loadNPerMm * Math.min(Math.abs(holeW), beam.loadedMm / 2) ** 2) / 2;
  const stress = Math.max(moment / section.modulusXMm3, atHole / drilled.modulusXMm3);
  const torque = (loads.momentPerLength.value * loads.longestPartMm) / 2;
  const twistDeg = toDeg(
    middleTwist(
      loads.momentPerLength.value,
      loads.longestPartMm,
      shearModulus(steel.modulusMpa),
      section.torsionMm4,
    ),
  );
  const sagMm = centralSag(beam, steel.modulusMpa * section.secondMomentXMm4);
  const pieces = ["leaf", "leaf-ear-left", "leaf-ear-right"];
  return [
    checkOf({
      member: "leaf",
      check: "bending between the hinges",
      value: stress,
      limit: allowed(under).welded,
      unit: "MPa",
      formula: "σ = M/Z, M = w·L·(2·S − L)/8 − w·z²/2",
      source: `${STATICS}; ${GERE_BEAM}; ${MOTT_SECTION}`,
      assumptions: [
        "pins turn freely",
        "in the middle, and at a handle's hole with the hole taken out",
        WELDED_COLD,
      ],
      pieces,
      ...STIFFER,
    }),
    checkOf({
      member: "leaf",
      check: "twist",
      value: (torque * leaf.wideMm) / section.torsionMm4,
      limit: allowed(under).welded / Math.sqrt(3),
      unit: "MPa",
      formula: "τ = T·t/J, T = m·L/2",
      source: ROARK_TORSION,
      assumptions: ["handles pulled alike, as if they stood at its ends"],
      pieces: ["leaf"],
      grows: "leafMm",
    }),
    checkOf({
      member: "leaf",
      check: "bend angle lost at mid-length",
      value: toDeg(Math.atan2(sagMm, loads.leafLeverMm)) + twistDeg,
      limit: give.angleDeg * (requirements.leafHighMaxMm === undefined ? 1 : LOW_LEAF_SHARE),
      unit: "deg",
      formula: "Δθ = atan(δ/a) + m·L²/(8·G·J), δ = w·L·(8·S³ − 4·S·L² + L³)/(384·E·I)",
      source: `${STATICS}; ${GERE_BEAM}; ${ROARK_TORSION}`,
      assumptions: ["before the bar is set forward in the middle", "lever a is half of the shortest flange"],
      pieces,
      ...STIFFER,
    }),
  ];
}

function handleChecks(under: UnderLoad): StrengthCheck[] {
  const { requirements, sizes, places } = under;
  const handle = measured(under, "handle-1");
  const leaf = measured(under, "leaf");
  const d = handle.diameterMm;
  const moment = requirements.handForceN * (places.reachMm - leaf.maxX);
  const perLength = Math.hypot(moment / (Math.PI * (d / 2) ** 2), requirements.handForceN / (Math.PI * d));
  const ring = perLength / (THROAT_OF_LEG * sizes.weldMm);
  return [
    checkOf({
      member: "handles",
      check: `length from pivot to hand for ${sizes.people === 1 ? "one person" : "two people"}`,
      value: places.reachMm,
      limit: LONGEST_HANDLE_MM[sizes.people],
      unit: "mm",
      formula: "L = m·ℓ/F",
      source: "virtual work at the hinge; the length that one can swing is common practice, no source",
      assumptions: ["leaf's weight and friction left to the load factor"],
      pieces: ["handle-1"],
      grows: "people",
    }),
    checkOf({
      member: "handles",
      check: "bending at the leaf",
      value: (32 * moment) / (Math.PI * d ** 3),
      limit: allowed(under).welded,
      unit: "MPa",
      formula: "σ = 32·F·L/(π·d³)",
      source: `${STATICS}; ${MOTT_SECTION}`,
      assumptions: ["one handle may get the whole force of one person", WELDED_COLD],
      pieces: ["handle-1", "leaf"],
      grows: "handleMm",
    }),
    checkOf({
      member: "weld of the handles",
      check: "bending of the ring",
      value: ring,
      limit: WELD_ALLOWED_MPA,
      unit: "MPa",
      formula: "τ = √((M/(π·r²))² + (F/(2·π·r))²)/(0.707·h)",
      source: SHIGLEY_WELD,
      assumptions: ["the hole in the leaf is not counted"],
      pieces: ["handle-1", "leaf"],
      grows: "handleMm",
    }),
  ];
}
