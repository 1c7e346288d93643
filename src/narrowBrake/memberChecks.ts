/**
 * The checks of everything but the bar: holder, bed, leaf, bolts, pins, handles, screws, tongue, vise.
 * Each names its formula and handbook (handbooks.ts) and what was assumed.
 * Exact comparison of the plan's own figures; nothing is worked out anew here.
 */
import {
  GEOMETRY,
  GERE_BEAM,
  ISO_898,
  MACHINERYS_BEAM,
  MIDDLE_THIRD,
  MOTT_SECTION,
  ROARK_TORSION,
  SHIGLEY_BOLT,
  SHIGLEY_SHEAR,
  STATICS,
} from "./handbooks.ts";
import type { MemberPlan } from "./memberPlan.ts";
import type { NarrowBrakePlan } from "./narrowBrake.ts";
import type { ResolvedRequirements } from "./requirements.ts";
import { checkOf, type StrengthCheck } from "./strengthCheck.ts";

/** All checks beyond those of the bar. */
export function memberChecks(plan: NarrowBrakePlan, requirements: ResolvedRequirements): StrengthCheck[] {
  return [...beamChecks(plan, requirements), ...fittingChecks(plan, requirements)];
}

function beamChecks(
  { holder, bed, leaf }: NarrowBrakePlan,
  requirements: ResolvedRequirements,
): StrengthCheck[] {
  const { steel, safety, give } = requirements;
  const allowed = steel.yieldMpa / safety.yield;
  const bending = (member: MemberPlan) =>
    checkOf({
      member: member.role,
      check: "bending",
      value: member.stressMpa,
      limit: allowed,
      unit: "MPa",
      formula: "σ = M/Z, M = w·L²/8 between supports or w·a²/2 at an overhang, Z = I/c",
      source: `${member.beam.overhangLeftMm > 0 ? MACHINERYS_BEAM : GERE_BEAM}; ${MOTT_SECTION}`,
      assumptions: [
        "loaded evenly over the whole span, as if the part filled it",
        ...(member.role === "leaf"
          ? ["hinges turn freely"]
          : [
              "bolts tightened to their full preload",
              "heel bears along the whole length",
              "section less the bolt hole where a bolt stands in the load",
            ]),
      ],
    });
  return [
    bending(holder),
    bending(bed),
    bending(leaf),
    checkOf({
      member: "holder",
      check: "bending of the foot",
      value: holder.footStressMpa,
      limit: allowed,
      unit: "MPa",
      formula: "σ = 6·q·c/t², halved in a tube",
      source: STATICS,
      assumptions: [
        "standing leg in front; the bar's own help is not counted",
        "a tube shares it between two walls",
      ],
    }),
    checkOf({
      member: "bed",
      check: "bending of the top wall under the heel",
      value: bed.wallStressMpa,
      limit: allowed,
      unit: "MPa",
      formula: "σ = 6·R·a·b/(W·t²)",
      source: STATICS,
      assumptions: [
        "top wall free to turn at the side walls",
        "heel strip lies at the back edge of the holder",
      ],
    }),
    checkOf({
      member: "leaf",
      check: "twist",
      value: leaf.torsionStressMpa,
      limit: allowed / Math.sqrt(3),
      unit: "MPa",
      formula: "τ = T·t/J or T/(2·A·t), T = m·L/2",
      source: ROARK_TORSION,
      assumptions: ["handles at both ends pulled alike"],
    }),
    checkOf({
      member: "leaf",
      check: "bending of the face",
      value: leaf.faceStressMpa,
      limit: allowed,
      unit: "MPa",
      formula: "σ = 6·m/t²",
      source: STATICS,
      assumptions: ["face leg built in at the standing leg, whole folding moment on it"],
    }),
    checkOf({
      member: "holder and bed",
      check: "bend angle lost at mid-length before crowning",
      value: holder.angleLostDeg + bed.angleLostDeg,
      limit: give.angleDeg,
      unit: "deg",
      formula: "Δθ = atan(δ/a), δ = 5·w·L⁴/(384·E·I) less the overhangs' share",
      source: `${GERE_BEAM}; ${GEOMETRY}`,
      assumptions: [
        "nose and bed part by the sum of both bows",
        "the crown then cancels it at the full load",
      ],
    }),
    checkOf({
      member: "leaf",
      check: "bend angle lost at mid-length before crowning",
      value: leaf.angleLostDeg,
      limit: give.angleDeg,
      unit: "deg",
      formula: "Δθ = atan(δ/a) + m·L²/(8·G·J), δ = 5·w·L⁴/(384·E·I)",
      source: `${GERE_BEAM}; ${GEOMETRY}; ${ROARK_TORSION}`,
      assumptions: ["lever a is half of the shortest flange", "the crown then cancels it at the full load"],
    }),
  ];
}

function fittingChecks(plan: NarrowBrakePlan, requirements: ResolvedRequirements): StrengthCheck[] {
  const { holder, pin, handle, screws, tongue } = plan;
  const { bolts } = holder;
  const allowed = requirements.steel.yieldMpa / requirements.safety.yield;
  return [
    checkOf({
      member: "hold-down bolts",
      check: "preload",
      value: bolts.preloadN,
      limit: bolts.largestPreloadN,
      unit: "N",
      formula:
        "F = n·N·(front + back)/back/2 ≤ 0.75·Sp·At, At = π/4·(d − 0.9382·p)², 0.9743·p in inch threads, T = K·D·F, K = 0.20",
      source: `${STATICS}; ${SHIGLEY_BOLT}; ${ISO_898}`,
      assumptions: [
        "holder pivots on its heel",
        "two bolts share evenly",
        "torque makes preload within about 30 %",
      ],
    }),
    checkOf({
      member: "hinge pins",
      check: "shear",
      value: pin.stressMpa,
      limit: pin.allowedMpa,
      unit: "MPa",
      formula: "τ = V/(π·d²/4) ≤ 0.577·Sy/n",
      source: SHIGLEY_SHEAR,
      assumptions: [
        "single shear",
        "one hinge takes half of the leaf's force and the whole hand",
        "no gap in the knuckles",
      ],
    }),
    checkOf({
      member: "hinge ears",
      check: "pressure of the pin",
      value: pin.bearingMpa,
      limit: allowed,
      unit: "MPa",
      formula: "p = V/(d·t)",
      source: STATICS,
      assumptions: ["the welds of the ears are not judged here"],
    }),
    checkOf({
      member: "handles",
      check: "bending at the leaf",
      value: handle.stressMpa,
      limit: allowed,
      unit: "MPa",
      formula: "σ = F·L/Z, L = m·ℓ/F",
      source: `${STATICS}; ${MOTT_SECTION}`,
      assumptions: ["one handle may get the whole hand force"],
    }),
    checkOf({
      member: "setback screws",
      check: "push in the core",
      value: screws.stressMpa,
      limit: screws.allowedMpa,
      unit: "MPa",
      formula: "σ = m·ℓ/(a·n·At)",
      source: `${STATICS}; ${ISO_898}`,
      assumptions: ["friction under the bar not counted"],
    }),
    checkOf({
      member: "tongue",
      check: "bending at the jaws",
      value: tongue.stressMpa,
      limit: allowed,
      unit: "MPa",
      formula: "σ = 6·F·(L + h)/(w·t²)",
      source: STATICS,
      assumptions: ["hand pulls square to the handle", "the weld to the bed is not judged here"],
    }),
    checkOf({
      member: "vise",
      check: "grip on the tongue",
      value: tongue.gripN,
      limit: tongue.viseN,
      unit: "N",
      formula: "F = 6·M/h",
      source: MIDDLE_THIRD,
      assumptions: [
        "force of the vise is a guess where you did not give it",
        "bench and vise bolts are not judged here",
      ],
    }),
  ];
}
