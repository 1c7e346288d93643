/**
 * What the brake makes of the part asked for: formed radii, overbends, allowances, tangent-to-tangent lengths.
 * A given nose setback s forms r = s + Rn − T in every bend; else each bend gets its own radius. Overbend is θ/Ks.
 */
import type { Brake } from "../brake/brake.ts";
import { formedInsideRadius } from "../brake/noseSetback.ts";
import { keptShare } from "../metal/springbackCurves.ts";
import { bendAllowance, bendDeduction } from "../part/allowance.ts";
import { insideBendSetback, outsideBendSetback } from "../part/bendSetback.ts";
import type { Bend, Part } from "../part/part.ts";
import type { Deg, Mm } from "../units/quantity.ts";
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
  const flatsMm = asked.flatsMm.map((dimensionMm, i) => {
    const taken = takenByBends(bends[i - 1], asked) + takenByBends(bends[i], asked);
    if (dimensionMm - taken > ROUNDING_MM) return dimensionMm - taken;
    const limit = sayLimit(reading.units, "least")(taken);
    return refuse(
      reading,
      `part.flats[${i}]`,
      file.part.flats[i],
      `longer than ${limit}, which its bends take up from mold line to bend tangent line`,
    );
  });
  if (reading.problems.length > before) return undefined;
  const { name, thicknessMm, kFactor, lengthMm } = asked;
  return {
    name,
    metal: asked.metal.metal,
    thicknessMm,
    kFactor,
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

/** What a bend takes off the dimension of a flat that it ends. */
function takenByBends(bend: Bend | undefined, asked: AskedPart): Mm {
  if (bend === undefined || asked.dimensions === "flat") return 0;
  if (asked.dimensions === "outside") return bend.bendSetbackMm;
  return insideBendSetback({ ...bend, thicknessMm: asked.thicknessMm });
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
  const allowanceMm = bendAllowance(shape, kFactor);
  const bendSetbackMm = outsideBendSetback(shape);
  const deductionMm = bendDeduction(shape, allowanceMm);
  return { angleDeg, turn, insideRadiusMm, overbendDeg, allowanceMm, bendSetbackMm, deductionMm };
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
