/**
 * How the brake is held while the handles are pulled: by its spine in a vise up to a weight, else by feet on a bench.
 * Moments about the jaws or the feet's ends. A hand square to a handle L long, at leaf angle φ, has the lever L − x·cos φ − y·sin φ about
 * a point (x, y): L + √(x² + y²) at the most, for points behind and below the pivot. A vise keeps its grip while the pressure stays in
 * the middle third of its jaws.
 * Bound: the hand pulls square to the handle; vise, bench and their own bolts are not checked.
 */
import type { Mm } from "../../units/quantity.ts";
import { ISO_898, MIDDLE_THIRD, SHIGLEY_BOLT, SHIGLEY_WELD, STATICS } from "../handbooks.ts";
import { volumeOf } from "../solid.ts";
import { reusablePreload } from "../strength/bolt.ts";
import { STEEL_DENSITY_KG_PER_MM3 } from "../strength/weight.ts";
import { THROAT_OF_LEG, WELD_ALLOWED_MPA } from "../strength/weldLines.ts";
import { checkOf, type StrengthCheck } from "../strengthCheck.ts";
import { allowed, type Measured, measured, type UnderLoad } from "./under.ts";

/** What one may hang in a bench vise: common practice, no source. */
const HEAVIEST_IN_A_VISE_KG = 20;
const WORST_ANGLE = "hand square to the handle, at the worst leaf angle";

export function mountChecks(under: UnderLoad): StrengthCheck[] {
  return under.sizes.held === "vise" ? viseChecks(under) : feetChecks(under);
}

/** Weight of all pieces, kg. */
export function weightOf({ assembly }: Pick<UnderLoad, "assembly">): number {
  return assembly.pieces.reduce((sum, { shape }) => sum + volumeOf(shape), 0) * STEEL_DENSITY_KG_PER_MM3;
}

function middleOf({ minX, maxX }: Measured): Mm {
  return (minX + maxX) / 2;
}

/** Most that the hands turn the brake by about a point behind and below the pivot, N·mm. */
function turning({ requirements, sizes, places }: UnderLoad, x: Mm, y: Mm): number {
  return requirements.handForceN * sizes.people * (places.reachMm + Math.hypot(x, y));
}

function viseChecks(under: UnderLoad): StrengthCheck[] {
  const { requirements, assembly } = under;
  const { vise } = requirements;
  const spine = measured(under, "spine");
  const moment = turning(under, middleOf(spine), assembly.vise.topY - vise.jawHeightMm / 2);
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
      formula: "σ = 6·F·(L + √(x² + y²))/(b·t²)",
      source: STATICS,
      assumptions: [WORST_ANGLE, "no wider than the jaws"],
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
  const { sizes, stock } = under;
  const spine = measured(under, "spine");
  const foot = measured(under, "foot-1");
  const moment = turning(under, middleOf(spine), spine.minY) / 2;
  const front = Math.max(...foot.holes.map(({ from }) => from[0]));
  const pull = turning(under, foot.minX, foot.minY) / 2 / (front - foot.minX);
  const lever = Math.max(front - spine.maxX, spine.minX - foot.minX);
  const pieces = ["foot-1", "spine"];
  return [
    checkOf({
      member: "spine",
      check: "bending over a foot",
      value: (6 * moment) / (foot.longMm * spine.wideMm ** 2),
      limit: allowed(under).welded,
      unit: "MPa",
      formula: "σ = 6·M/(b·t²), M = F·(L + √(x² + y²))/2",
      source: STATICS,
      assumptions: [WORST_ANGLE, "each foot takes half", "no wider than the foot"],
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
      check: "bending from the spine to its end",
      value: (6 * pull * lever) / (foot.longMm * foot.highMm ** 2),
      limit: allowed(under).welded,
      unit: "MPa",
      formula: "σ = 6·P·c/(b·t²), P = M/arm",
      source: STATICS,
      assumptions: [WORST_ANGLE, "the front bolt pulls, the back end presses"],
      pieces: ["foot-1"],
      grows: "footMm",
    }),
    checkOf({
      member: "foot bolts",
      check: "pull that keeps the brake from tipping",
      value: pull,
      limit: reusablePreload(sizes.footBolt, stock.boltGrade),
      unit: "N",
      formula: "P = F·(L + √(x² + y²))/(2·arm) ≤ 0.75·Sp·At",
      source: `${STATICS}; ${SHIGLEY_BOLT}; ${ISO_898}`,
      assumptions: [
        WORST_ANGLE,
        "it tips about the feet's back ends",
        "the brake's own weight is not counted",
      ],
      pieces: ["foot-1", "foot-bolt-1"],
      grows: "footBolt",
    }),
  ];
}
