/**
 * What the brake makes of the part asked for: formed radii, overbends, allowances, tangent-to-tangent lengths.
 * A given nose setback s forms r = s + Rn − T in every bend; else each bend gets its own radius. Overbend is θ/Ks.
 */
import type { Brake } from "../brake/brake.ts";
import { formedInsideRadius } from "../brake/noseSetback.ts";
import { keptShare } from "../metal/springbackCurves.ts";
import { bendAllowance } from "../part/allowance.ts";
import { type BendShape, outsideBendSetback, takenAtBend } from "../part/bendSetback.ts";
import { din6935Allowance } from "../part/din6935Allowance.ts";
import type { Bend, Part } from "../part/part.ts";
import type { Deg, Mm } from "../units/quantity.ts";
import { formFlats } from "./formFlats.ts";
import { type Reading, refuse, sayLimit } from "./reading.ts";
import type { AskedBend, AskedPart } from "./readPart.ts";
import type { JobFile } from "./schema.ts";

/** Radius and thickness may fall short of the nose by this much: the rounding of inches to mm. */
const ROUNDING_MM: Mm = 1e-6;

/** No leaf swings as far as flat on itself. */
const FLAT_BACK_DEG: Deg = 180 - 1e-9;

/** What every bend is formed from; `file` is what the reader is told about. */
interface Forming {
  readonly reading: Reading;
  readonly asked: AskedPart;
  readonly brake: Brake;
  readonly file: JobFile;
}

/** The part as the brake forms it, or undefined with the problems noted. */
export function formPart(reading: Reading, asked: AskedPart, brake: Brake, file: JobFile): Part | undefined {
  const before = reading.problems.length;
  const forming = { reading, asked, brake, file };
  const bends = asked.bends.map((bend, i) => formBend(forming, bend, i));
  if (reading.problems.length > before) return undefined;
  const flatsMm = formFlats(forming, bends);
  if (reading.problems.length > before) return undefined;
  const { name, thicknessMm, kFactor, lengthMm } = asked;
  return {
    name,
    metal: asked.metal.metal,
    thicknessMm,
    kFactor,
    ...(asked.allowanceBy === "din6935" && { allowanceBy: asked.allowanceBy }),
    ...(lengthMm !== undefined && { lengthMm }),
    flatsMm,
    bends: bends.map((bend, i) => withRange(bend, asked, i)),
  };
}

/** The bend with the leaf angles that it may want, where its overbend was worked out and not given. */
function withRange(bend: Bend, asked: AskedPart, index: number): Bend {
  if (asked.bends[index]?.overbendDeg !== undefined) return bend;
  const { most, least } = keptShare(asked.metal.metal, bend.insideRadiusMm, asked.thicknessMm);
  const highest = least > 0 ? Math.min(bend.angleDeg / least, FLAT_BACK_DEG) : FLAT_BACK_DEG;
  return { ...bend, overbendRangeDeg: [bend.angleDeg / most, Math.max(bend.overbendDeg, highest)] };
}

function formBend(forming: Forming, bend: AskedBend, index: number): Bend {
  const { angleDeg, turn } = bend;
  const { thicknessMm, kFactor } = forming.asked;
  const insideRadiusMm =
    forming.brake.noseSetback === "auto"
      ? radiusAsked(forming, bend, index)
      : radiusBySetback(forming, forming.brake.noseSetback, index);
  const overbendDeg = bend.overbendDeg ?? overbendFor(forming, angleDeg, insideRadiusMm, index);
  const shape = { angleDeg, insideRadiusMm, thicknessMm };
  const bendSetbackMm = outsideBendSetback(shape);
  const { allowanceMm, deductionMm } = laidFlat(forming.asked, shape, bend, kFactor);
  return { angleDeg, turn, insideRadiusMm, overbendDeg, allowanceMm, bendSetbackMm, deductionMm };
}

/**
 * Bend allowance by the method that the job chose, or from the bend's own deduction, and the deduction by the way that closed
 * bends are dimensioned: what the outside dimensions are longer than the flat sheet.
 */
function laidFlat(asked: AskedPart, shape: BendShape, bend: AskedBend, kFactor: number) {
  const outside = 2 * takenAtBend(shape, "outside", asked.closedBends);
  const byMethod = asked.allowanceBy === "din6935" ? din6935Allowance(shape) : bendAllowance(shape, kFactor);
  const allowanceMm = bend.deductionMm === undefined ? byMethod : outside - bend.deductionMm;
  return { allowanceMm, deductionMm: outside - allowanceMm };
}

/** The radius that a given nose setback forms, or NaN with a problem where it pinches the sheet. */
function radiusBySetback(forming: Forming, noseSetbackMm: Mm, index: number): Mm {
  const { reading, asked, brake, file } = forming;
  const { thicknessMm } = asked;
  const { noseRadiusMm } = brake.clamp;
  const formed = formedInsideRadius({ noseSetbackMm, noseRadiusMm, thicknessMm });
  if (formed >= noseRadiusMm - ROUNDING_MM && formed > 0) return Math.max(formed, noseRadiusMm);
  // Every bend would say the same: once is enough.
  if (index > 0) return Number.NaN;
  const thickness = sayLimit(reading.units, "least")(thicknessMm);
  const allowed =
    noseRadiusMm > 0
      ? `"auto", or at least one thickness, ${thickness}, since a smaller one pinches the sheet`
      : `"auto", or more than one thickness, ${thickness}, since a sharp nose leaves the bend no radius there`;
  return refuse(reading, "brake.setback", file.brake.setback, allowed);
}

/** The radius that the bend asks for, or NaN with a problem where the nose is rounder than that. */
function radiusAsked({ reading, brake, file }: Forming, bend: AskedBend, index: number): Mm {
  const { noseRadiusMm } = brake.clamp;
  if (bend.insideRadiusMm >= noseRadiusMm - ROUNDING_MM) return Math.max(bend.insideRadiusMm, noseRadiusMm);
  const own = file.part.bends[index]?.insideRadius;
  const path = own === undefined ? "part.insideRadius" : `part.bends[${index}].insideRadius`;
  if (reading.problems.some((problem) => problem.path === path)) return Number.NaN;
  const nose = sayLimit(reading.units, "least")(noseRadiusMm);
  const allowed = `at least the nose radius of the clamp, ${nose}, or the clamp's nose sharper`;
  return refuse(reading, path, own ?? file.part.insideRadius, allowed);
}

/** θ/Ks, or NaN with a problem where the sheet springs back past all bending. */
function overbendFor({ reading, asked }: Forming, angleDeg: Deg, radiusMm: Mm, index: number): Deg {
  if (Number.isNaN(radiusMm)) return Number.NaN;
  const ratio = keptShare(asked.metal.metal, radiusMm, asked.thicknessMm).likely;
  if (angleDeg < 180 * ratio) return angleDeg / ratio;
  const most = Math.floor(1800 * ratio) / 10;
  const allowed =
    ratio > 0
      ? `less than ${most} degrees, since this sheet springs back to ${(100 * ratio).toFixed(0)} % of the leaf's angle, or a smaller inside radius`
      : "a bend with a smaller inside radius, since at this one the sheet only flexes and springs all the way back";
  return refuse(reading, `part.bends[${index}].angle`, angleDeg, allowed);
}
