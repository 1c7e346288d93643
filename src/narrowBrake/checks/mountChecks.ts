/**
 * How the brake is held while the handles are pulled: by its spine in a vise up to a weight, else by feet on a bench.
 * Moments about the jaws or about the feet. A vise keeps its grip while the pressure stays in the middle third of its jaws.
 * Bound: the hand pulls square to the handle; vise, bench and their own bolts are not checked.
 */
import { ISO_898, MIDDLE_THIRD, SHIGLEY_BOLT, SHIGLEY_WELD, STATICS } from "../handbooks.ts";
import { volumeOf } from "../solid.ts";
import { reusablePreload } from "../strength/bolt.ts";
import { STEEL_DENSITY_KG_PER_MM3 } from "../strength/weight.ts";
import { THROAT_OF_LEG, WELD_ALLOWED_MPA } from "../strength/weldLines.ts";
import { checkOf, type StrengthCheck } from "../strengthCheck.ts";
import { allowed, measured, type UnderLoad } from "./under.ts";

/** What one may hang in a bench vise: common practice, no source. */
const HEAVIEST_IN_A_VISE_KG = 20;

export function mountChecks(under: UnderLoad): StrengthCheck[] {
  return under.sizes.held === "vise" ? viseChecks(under) : feetChecks(under);
}

/** Weight of all pieces, kg. */
export function weightOf({ assembly }: Pick<UnderLoad, "assembly">): number {
  return assembly.pieces.reduce((sum, { shape }) => sum + volumeOf(shape), 0) * STEEL_DENSITY_KG_PER_MM3;
}

function hands({ requirements, sizes }: UnderLoad): number {
  return requirements.handForceN * sizes.people;
}

function viseChecks(under: UnderLoad): StrengthCheck[] {
  const { requirements, places, assembly } = under;
  const { vise } = requirements;
  const spine = measured(under, "spine");
  const moment = hands(under) * (places.reachMm - (assembly.vise.topY - vise.jawHeightMm / 2));
  const held = Math.min(vise.jawWidthMm, spine.longMm);
  return [
    checkOf({
      member: "brake",
      check: "weight that a vise may hold",
      value: weightOf(under),
      limit: HEAVIEST_IN_A_VISE_KG,
      unit: "kg",
      formula: "sum of volumes, at the density of steel",
      source: "common practice, no source",
      assumptions: ["holes not taken out"],
      pieces: assembly.pieces.map(({ id }) => id),
      grows: "mounting",
    }),
    checkOf({
      member: "spine",
      check: "bending at the jaws",
      value: (6 * moment) / (held * spine.wideMm ** 2),
      limit: allowed(under).welded,
      unit: "MPa",
      formula: "σ = 6·F·(L + h)/(b·t²)",
      source: STATICS,
      assumptions: ["hand pulls square to the handle", "no wider than the jaws"],
      pieces: ["spine"],
      grows: "spineMm",
    }),
    checkOf({
      member: "vise",
      check: "grip on the spine",
      value: (6 * moment) / vise.jawHeightMm,
      limit: vise.forceN,
      unit: "N",
      formula: "F = 6·M/h",
      source: MIDDLE_THIRD,
      assumptions: ["force of the vise is a guess where you did not give it"],
      pieces: ["spine"],
      grows: "mounting",
    }),
  ];
}

function feetChecks(under: UnderLoad): StrengthCheck[] {
  const { places, sizes, stock } = under;
  const spine = measured(under, "spine");
  const foot = measured(under, "foot-1");
  const moment = (hands(under) * (places.reachMm - foot.minY)) / 2;
  const [front, back] = foot.holes.map(({ from }) => from[0]).sort((a, b) => b - a) as [number, number];
  const pull = moment / (front - back);
  const lever = Math.max(front - spine.maxX, spine.minX - back);
  const pieces = ["foot-1", "spine"];
  return [
    checkOf({
      member: "spine",
      check: "bending over a foot",
      value: (6 * moment) / (foot.longMm * spine.wideMm ** 2),
      limit: allowed(under).welded,
      unit: "MPa",
      formula: "σ = 6·M/(b·t²), M = F·(L + h)/2",
      source: STATICS,
      assumptions: ["each foot takes half", "no wider than the foot"],
      pieces,
      grows: "spineMm",
    }),
    checkOf({
      member: "weld of the feet",
      check: "pull in the throat",
      value: moment / spine.wideMm / foot.longMm / (THROAT_OF_LEG * sizes.weldMm),
      limit: WELD_ALLOWED_MPA,
      unit: "MPa",
      formula: "τ = M/(t·b·0.707·h)",
      source: SHIGLEY_WELD,
      assumptions: ["a fillet before and behind the spine, as long as the foot is wide"],
      pieces,
      grows:
        sizes.weldMm < 0.75 * Math.min(spine.wideMm, foot.highMm, sizes.leafEarMm) ? "weldMm" : "spineMm",
    }),
    checkOf({
      member: "feet",
      check: "bending between spine and bolt",
      value: (6 * pull * lever) / (foot.longMm * foot.highMm ** 2),
      limit: allowed(under).welded,
      unit: "MPa",
      formula: "σ = 6·P·c/(b·t²), P = M/arm",
      source: STATICS,
      assumptions: ["one bolt pulls, the other edge presses"],
      pieces: ["foot-1"],
      grows: "footMm",
    }),
    checkOf({
      member: "foot bolts",
      check: "pull that keeps the brake from tipping",
      value: pull,
      limit: reusablePreload(sizes.footBolt, stock.boltGrade),
      unit: "N",
      formula: "P = F·(L + h)/2/arm ≤ 0.75·Sp·At",
      source: `${STATICS}; ${SHIGLEY_BOLT}; ${ISO_898}`,
      assumptions: ["the brake's own weight is not counted"],
      pieces: ["foot-1", "foot-bolt-1"],
      grows: "footBolt",
    }),
  ];
}
