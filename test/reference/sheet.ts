/**
 * Lengths of the sheet: tangent-to-tangent flats, bend setbacks and bend allowances, and how each bend's nose stands.
 * SB = (r+T)·tan(θ/2), BA = θ(r+kT). Nose: (r+T)·tan(θo/2) = s + Rn + a(θo) (Rn: nose.ts), from which a given s has its r and a wanted
 * r its s. Closed formulas, exact.
 */
import { leastRadiusOf, noseRunOf } from "./nose.ts";
import type { PlainJob } from "./plainJob.ts";

export interface SheetBend {
  theta: number;
  thetaOver: number;
  radius: number;
  up: boolean;
  setbackOut: number;
  allowance: number;
  /** Bend allowance per radian, r + k·T. */
  neutral: number;
  /** How far the nose stands behind the bed's edge for this bend. */
  noseSetback: number;
  /** The nose stands too far forward for any radius that it could form. */
  pinched: boolean;
}

export interface Sheet {
  thickness: number;
  flats: number[];
  bends: SheetBend[];
}

const RAD = Math.PI / 180;

/** A setback may fall short of the least by this share of the thickness: brakes spring that much. */
const SPRINGS = 0.1;

/** What of a part its bends are formed from. */
type BendsOnly = Pick<PlainJob["part"], "thickness" | "insideRadius" | "kFactor" | "bends">;

/** The bends as the brake forms them; throws when a nose that follows each bend is rounder than it. */
export function bendsOf(part: BendsOnly, brake: PlainJob["brake"]): SheetBend[] {
  const T = part.thickness;
  const run = noseRunOf(brake.clamp);
  const pivot = brake.leaf.pivot ?? [0, 0];
  const setting = brake.setback ?? "auto";
  const asked = part.bends.map((bend) => bend.insideRadius ?? part.insideRadius);
  const leasts = part.bends.map((bend) => leastRadiusOf(brake.clamp, bend.overbend * RAD));
  if (typeof setting === "string" && asked.some((radius, i) => radius < leasts[i]! - 1e-9))
    throw new Error("inside radius under the nose radius");
  /** The setback at which a bend comes to this radius. */
  const setbackFor = (i: number, radius: number): number => {
    const over = part.bends[i]!.overbend * RAD;
    return (radius + T) * Math.tan(over / 2) - run - apexAt(pivot, over);
  };
  const wanted = asked.map((radius, i) => setbackFor(i, radius));
  return part.bends.map((bend, i): SheetBend => {
    const given = setting === "auto" ? wanted[i]! : setting === "one" ? Math.max(...wanted) : setting;
    const least = setbackFor(i, leasts[i]!);
    const pinched = given < least - SPRINGS * T - 1e-9;
    const noseSetback = pinched ? given : Math.max(given, least);
    const thetaOver = bend.overbend * RAD;
    const free = (noseSetback + run + apexAt(pivot, thetaOver)) / Math.tan(thetaOver / 2) - T;
    const radius = Math.max(free, leasts[i]!);
    const theta = bend.angle * RAD;
    const neutral = radius + part.kFactor * T;
    return {
      theta,
      thetaOver,
      radius,
      up: bend.turn === "up",
      setbackOut: (radius + T) * Math.tan(theta / 2),
      allowance: theta * neutral,
      neutral,
      noseSetback,
      pinched,
    };
  });
}

/** Flats and bends of the job; throws when a flat is shorter than its bend setbacks. */
export function sheetOf({ part, brake }: PlainJob): Sheet {
  const bends = bendsOf(part, brake);
  const off = (bend: SheetBend | undefined): number => {
    if (bend === undefined || part.dimensions === "flat") return 0;
    return part.dimensions === "outside" ? bend.setbackOut : bend.radius * Math.tan(bend.theta / 2);
  };
  const flats = part.flats.map((length, i) => length - off(bends[i - 1]) - off(bends[i]));
  if (flats.some((length) => length <= 0)) throw new Error("a flat is shorter than its bend setbacks");
  return { thickness: part.thickness, flats, bends };
}

/** Where the outer mold-line apex stands on y = 0 at leaf angle φ. */
export function apexAt(pivot: readonly [number, number], phi: number): number {
  return pivot[0] + pivot[1] * Math.tan(phi / 2);
}
