/**
 * The hinges with their pins, ears and welds, and the leaf's rests. Formulas and sources stand beside each check.
 * One hinge takes half of the leaf's force and the whole of the hands.
 * Bound: pins bend over the true gap, from the middle of one ear to the middle of the other.
 */
import { MOTT_SECTION, SHIGLEY_SHEAR, SHIGLEY_WELD, STATICS } from "../handbooks.ts";
import { fineLength } from "../shopFigures.ts";
import { pieceOf, volumeOf } from "../solid.ts";
import { STEEL_DENSITY_KG_PER_MM3 } from "../strength/weight.ts";
import { WELD_ALLOWED_MPA, weldStress } from "../strength/weldLines.ts";
import { checkOf, type StrengthCheck } from "../strengthCheck.ts";
import { measured, type UnderLoad } from "./under.ts";
import { bedEarWeld, leafEarWeld } from "./welds.ts";

const GRAVITY = 9.81;

/** N in one hinge: half of the leaf's force, and every hand on the handles. */
export function hingeForce({ loads, requirements, sizes }: UnderLoad): number {
  return (loads.leafNPerMm.value * loads.longestPartMm) / 2 + requirements.handForceN * sizes.people;
}

export function hingeChecks(under: UnderLoad): StrengthCheck[] {
  const { requirements, sizes } = under;
  const { steel, coldFinished, safety } = requirements;
  const force = hingeForce(under);
  const pin = measured(under, "pin-right");
  const leafEar = measured(under, "leaf-ear-right");
  const bedEar = measured(under, "bed-ear-right");
  const spine = measured(under, "spine");
  const d = pin.diameterMm;
  const gapMm = bedEar.minW - leafEar.maxW;
  const arm = leafEar.longMm / 2 + gapMm + bedEar.longMm / 2;
  const eye = 2 * leafEar.maxX - leafEar.holes[0]!.diameter;
  const bedModulus = (bedEar.longMm * bedEar.highMm ** 2) / 6;
  // The force turns with the leaf from down to level: at its worst it stands square to the way from the pin to the ear's middle.
  const reach = Math.hypot(spine.maxX, (bedEar.minY + bedEar.maxY) / 2);
  const earWelds = (lines: Parameters<typeof weldStress>[0], offMm: number) =>
    Math.max(
      ...[0, 45, 90, 135].map((deg) => {
        const rad = (deg * Math.PI) / 180;
        const pull = [force * Math.cos(rad), force * Math.sin(rad)] as const;
        return weldStress(lines, sizes.weldMm, { force: pull, at: [0, 0], offMm });
      }),
    );
  const leaf = measured(under, "leaf");
  const weightN =
    GRAVITY *
    STEEL_DENSITY_KG_PER_MM3 *
    (volumeOf(pieceOf(under.assembly, "leaf").shape) * (leaf.maxX / 2) +
      2 * volumeOf(pieceOf(under.assembly, "handle-1").shape) * (measured(under, "handle-1").maxX / 2));
  const rest = measured(under, "rest-right");
  const restForce = weightN / Math.abs((rest.minY + rest.maxY) / 2) / 2;
  const hinge = ["one hinge takes half of the leaf's force and the whole of the hands"];
  return [
    checkOf({
      member: "hinge pins",
      check: "bending over their gap",
      value: (32 * force * arm) / (Math.PI * d ** 3),
      limit: coldFinished.yieldMpa / safety.pin,
      unit: "MPa",
      formula: "σ = 32·V·(t₁/2 + g + t₂/2)/(π·d³)",
      source: `${STATICS}; ${MOTT_SECTION}`,
      assumptions: [
        ...hinge,
        `gap ${fineLength(gapMm, requirements.units)}, from the middle of one ear to that of the other`,
      ],
      pieces: ["pin-right", "leaf-ear-right", "bed-ear-right"],
      grows: "pinMm",
    }),
    checkOf({
      member: "hinge pins",
      check: "shear",
      value: force / ((Math.PI / 4) * d ** 2),
      limit: (0.577 * coldFinished.yieldMpa) / safety.pin,
      unit: "MPa",
      formula: "τ = V/(π·d²/4) ≤ 0.577·Sy/n",
      source: SHIGLEY_SHEAR,
      assumptions: [...hinge, "single shear"],
      pieces: ["pin-right"],
      grows: "pinMm",
    }),
    ...[
      { check: "pressure of the pin", mm: d, formula: "p = V/(d·t)" },
      { check: "pull across the eye", mm: eye, formula: "σ = V/((b − d)·t)" },
    ].map(({ check, mm, formula }) =>
      checkOf({
        member: "leaf ears",
        check,
        value: force / (mm * leafEar.longMm),
        limit: steel.yieldMpa / safety.yield,
        unit: "MPa",
        formula,
        source: STATICS,
        assumptions: hinge,
        pieces: ["leaf-ear-right", "pin-right"],
        grows: "leafEarMm",
      }),
    ),
    checkOf({
      member: "weld of the leaf ears",
      check: "shear in the throat",
      // The force stays along the leaf's height, since it turns with it.
      value: weldStress(leafEarWeld(under), sizes.weldMm, {
        force: [requirements.handForceN, force],
        at: [0, 0],
        offMm: leafEar.longMm / 2,
      }),
      limit: WELD_ALLOWED_MPA,
      unit: "MPa",
      formula: "τ = √(fx² + fy² + fz²)/(0.707·h), weld as a line",
      source: SHIGLEY_WELD,
      assumptions: hinge,
      pieces: ["leaf-ear-right", "leaf"],
      grows: sizes.weldMm < 0.75 * leafEar.longMm ? "weldMm" : "leafHighMm",
    }),
    checkOf({
      member: "bed ears",
      check: "bending from the pin to the spine",
      value: (force * reach) / bedModulus + force / (bedEar.longMm * bedEar.highMm),
      limit: steel.yieldMpa / safety.yield,
      unit: "MPa",
      formula: "σ = 6·V·√(x² + y²)/(t·b²) + V/(t·b)",
      source: STATICS,
      assumptions: hinge,
      pieces: ["bed-ear-right", "spine"],
      grows: "bedEarMm",
    }),
    checkOf({
      member: "weld of the bed ears",
      check: "shear in the throat",
      value: earWelds(bedEarWeld(under), gapMm + leafEar.longMm / 2),
      limit: WELD_ALLOWED_MPA,
      unit: "MPa",
      formula: "τ = √(fx² + fy² + fz²)/(0.707·h), weld as a line",
      source: SHIGLEY_WELD,
      assumptions: [...hinge, "worst of four directions of the force"],
      pieces: ["bed-ear-right", "spine"],
      grows:
        sizes.weldMm < 0.75 * Math.min(sizes.spineMm, sizes.bedEarMm, sizes.leafEarMm)
          ? "weldMm"
          : "bedEarHighMm",
    }),
    checkOf({
      member: "leaf rests",
      check: "bending under the leaf's weight",
      value: (32 * restForce * arm) / (Math.PI * rest.diameterMm ** 3),
      limit: coldFinished.yieldMpa / safety.yield / 2,
      unit: "MPa",
      formula: "σ = 32·F·a/(π·d³), F = weight·x/(2·y)",
      source: STATICS,
      assumptions: [
        "leaf let down gently; a leaf that is dropped brings twice its weight, which the limit allows",
      ],
      pieces: ["rest-right", "leaf", "handle-1"],
      grows: "restMm",
    }),
  ];
}
