/**
 * The bed's cap across from the nose to its bolts, its screws, their rail and its weld; bedBeam.ts has the bed along.
 * Formulas beside each check.
 */
import { SHIGLEY_WELD, STATICS } from "../handbooks.ts";
import { screwStress } from "../strength/screwStress.ts";
import { THROAT_OF_LEG, WELD_ALLOWED_MPA } from "../strength/weldLines.ts";
import { checkOf, type StrengthCheck } from "../strengthCheck.ts";
import { bedBeamChecks, WELDED_SHARE } from "./bedBeam.ts";
import { clampForces } from "./clampForces.ts";
import { allowed, measured, type UnderLoad, WELDED_COLD } from "./under.ts";

export function bedChecks(under: UnderLoad): StrengthCheck[] {
  return [...capChecks(under), ...bedBeamChecks(under), ...railChecks(under)];
}

function capChecks(under: UnderLoad): StrengthCheck[] {
  const { places } = under;
  const forces = clampForces(under);
  const cap = measured(under, "cap");
  const spine = measured(under, "spine");
  const bar = measured(under, "bar");
  const bolt = cap.holes[0]!;
  const fromBolts = bar.maxX - bolt.from[0];
  const strip = Math.min(forces.shareMm, 2 * fromBolts + 2 * bolt.diameter) - bolt.diameter;
  // Rods inside pull at their own line; with bolts beyond the ends the spine carries the cap instead.
  const value = places.inside
    ? (6 * forces.noseNPerMm * forces.shareMm * fromBolts) / strip / cap.highMm ** 2
    : (6 * forces.noseNPerMm * (bar.maxX - spine.maxX)) / cap.highMm ** 2;
  return [
    checkOf({
      member: "bed cap",
      check: "bending across, from nose to bolts",
      value,
      limit: allowed(under).welded,
      unit: "MPa",
      formula: places.inside ? "σ = 6·q·p·a/(b·t²)" : "σ = 6·q·a/t²",
      source: STATICS,
      assumptions: ["bolts tightened as far as their torque may come out, 28 % past its mark", WELDED_COLD],
      pieces: ["cap", "bar", "spine"],
      grows: "capMm",
    }),
  ];
}

function railChecks(under: UnderLoad): StrengthCheck[] {
  const { loads, sizes, stock, assembly } = under;
  const ids = assembly.pieces.filter(({ name }) => name === "screw rail").map(({ id }) => id);
  const rails = ids.map((id) => measured(under, id));
  const rail = rails[0]!;
  const longMm = rails.reduce((sum, one) => sum + one.longMm, 0);
  const [first] = rail.holes;
  const screws = rails.reduce((sum, { holes }) => sum + holes.length, 0);
  const push = loads.pushN.value;
  const high = first!.from[1] - rail.minY;
  // A short rail is welded all along.
  const welded = (rails.length > 1 ? 1 : WELDED_SHARE) * longMm;
  const couple = (push * high) / rail.wideMm / welded;
  const direct = push / 2 / welded;
  return [
    checkOf({
      member: "setback screws",
      check: "push in the core",
      value: screwStress(push / screws, sizes.screw),
      limit: stock.boltGrade.proofMpa / 1.5,
      unit: "MPa",
      formula: "σ = F/(n·At)",
      source: STATICS,
      assumptions: ["friction under the bar not counted", "one and a half against proof"],
      pieces: [...ids, "setback-screw-1"],
      grows: "screw",
    }),
    checkOf({
      member: "screw rail",
      check: "bending at its foot",
      value: (6 * push * high) / longMm / rail.wideMm ** 2,
      limit: allowed(under).welded,
      unit: "MPa",
      formula: "σ = 6·F·y/(L·t²)",
      source: STATICS,
      assumptions: ["the screws' push spread along the rail"],
      pieces: ids,
      grows: "railMm",
    }),
    checkOf({
      member: "weld of the rail",
      check: "shear in the throat",
      value: Math.hypot(couple, direct) / (THROAT_OF_LEG * sizes.railWeldMm),
      limit: WELD_ALLOWED_MPA,
      unit: "MPa",
      formula: "τ = √((F·y/(t·l))² + (F/(2·l))²)/(0.707·h)",
      source: SHIGLEY_WELD,
      assumptions: ["a fillet before and behind, for half of its length"],
      pieces: [...ids, "cap"],
      grows: "railWeldMm",
    }),
  ];
}
