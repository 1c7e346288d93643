/**
 * Lengths of the sheet: tangent-to-tangent flats, bend setbacks and bend allowances, and the nose setback.
 * SB = (r+T)·tan(θ/2), BA = θ(r+kT); a given nose setback s forms r = s + Rn − T in every bend. Closed formulas, exact.
 */
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
}

export interface Sheet {
  thickness: number;
  flats: number[];
  bends: SheetBend[];
}

const RAD = Math.PI / 180;

/** Flats and bends of the job; throws when a flat is shorter than its bend setbacks. */
export function sheetOf(job: PlainJob): Sheet {
  const { part, brake } = job;
  const T = part.thickness;
  const fixed = brake.setback;
  const bends = part.bends.map((bend): SheetBend => {
    const asked = bend.insideRadius ?? part.insideRadius;
    const radius = typeof fixed === "number" ? fixed + brake.clamp.noseRadius - T : asked;
    if (radius < brake.clamp.noseRadius - 1e-9) throw new Error("inside radius under the nose radius");
    const theta = bend.angle * RAD;
    const neutral = radius + part.kFactor * T;
    return {
      theta,
      thetaOver: bend.overbend * RAD,
      radius,
      up: bend.turn === "up",
      setbackOut: (radius + T) * Math.tan(theta / 2),
      allowance: theta * neutral,
      neutral,
    };
  });
  const off = (bend: SheetBend | undefined): number => {
    if (bend === undefined || part.dimensions === "flat") return 0;
    return part.dimensions === "outside" ? bend.setbackOut : bend.radius * Math.tan(bend.theta / 2);
  };
  const flats = part.flats.map((length, i) => length - off(bends[i - 1]) - off(bends[i]));
  if (flats.some((length) => length <= 0)) throw new Error("a flat is shorter than its bend setbacks");
  return { thickness: T, flats, bends };
}

/** Where the outer mold-line apex stands on y = 0 at leaf angle φ. */
export function apexAt(pivot: readonly [number, number], phi: number): number {
  return pivot[0] + pivot[1] * Math.tan(phi / 2);
}

/** Distance of the closed nose behind the bend's origin. */
export function noseSetbackOf(job: PlainJob, sheet: Sheet, bend: SheetBend): number {
  const fixed = job.brake.setback;
  if (typeof fixed === "number") return fixed;
  const half = Math.max(bend.thetaOver, Math.PI / 2) / 2;
  const apex = apexAt(job.brake.leaf.pivot ?? [0, 0], bend.thetaOver);
  return (bend.radius + sheet.thickness) * Math.tan(half) - job.brake.clamp.noseRadius - apex;
}
