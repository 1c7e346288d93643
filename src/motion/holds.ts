/**
 * Whether clamp and leaf have enough sheet to hold and to push: the run of sheet that lies flat from the bend's tangent lines to the
 * next bend that is formed, or to the free end. Least grip 3 mm and 4 T, least flange 2 T + r and as far as the leaf's face begins
 * (common practice, no source), unless the job says otherwise; 0 switches either off.
 */
import type { Brake } from "../brake/brake.ts";
import type { Chain } from "../part/chain.ts";
import type { Mm } from "../units/quantity.ts";
import type { Seat } from "./seat.ts";

const LEAST_GRIP_MM: Mm = 3;
const LEAST_GRIP_THICKNESSES = 4;
const LEAST_FLANGE_THICKNESSES = 2;

/** A run a hair under its least is let pass: the rounding of inches to mm. */
const ROUNDING_MM: Mm = 1e-6;

/** A run of sheet, and what it has to be at least; `leastMm` 0 where nothing is asked of it. */
export interface Hold {
  readonly runMm: Mm;
  readonly leastMm: Mm;
}

/** What the clamp needs to grip. */
export function leastGripMm(brake: Pick<Brake, "leastGripMm">, thicknessMm: Mm): Mm {
  return brake.leastGripMm ?? Math.max(LEAST_GRIP_MM, LEAST_GRIP_THICKNESSES * thicknessMm);
}

/** What the leaf needs to push on, from the bend's tangent line outward. */
export function leastFlangeMm(
  brake: Pick<Brake, "leastFlangeMm" | "leaf">,
  seat: Pick<Seat, "thicknessMm" | "insideRadiusMm" | "movingTangentX">,
): Mm {
  if (brake.leastFlangeMm !== undefined) return brake.leastFlangeMm;
  const toFace = faceBeginsAt(brake) - seat.movingTangentX;
  return Math.max(LEAST_FLANGE_THICKNESSES * seat.thicknessMm + seat.insideRadiusMm, toFace);
}

/** Depth of sheet that lies flat under the clamp. */
export function gripOf(seat: Seat, brake: Brake, bendsDone: number): Hold {
  return { runMm: runMm(seat.clampedChain, bendsDone), leastMm: leastGripMm(brake, seat.thicknessMm) };
}

/** Depth of sheet that lies flat on the leaf. */
export function flangeOf(seat: Seat, brake: Brake, bendsDone: number): Hold {
  return { runMm: runMm(seat.movingChain, bendsDone), leastMm: leastFlangeMm(brake, seat) };
}

/** Why nothing holds or pushes the sheet; undefined where both do. */
export function holdFault(seat: Seat, brake: Brake, bendsDone: number): "grip" | "flange" | undefined {
  if (isShort(gripOf(seat, brake, bendsDone))) return "grip";
  return isShort(flangeOf(seat, brake, bendsDone)) ? "flange" : undefined;
}

/** Whether a run falls short of its least. */
export function isShort({ runMm: run, leastMm }: Hold): boolean {
  return run < leastMm - ROUNDING_MM;
}

/** From the tangent line outward, over bends that are still flat. */
function runMm({ flatMm, allowanceMm, bendNumber, joints }: Chain, bendsDone: number): Mm {
  let run = flatMm[0]!;
  for (let j = 0; j < joints && !((bendsDone >>> bendNumber[j]!) & 1); j++)
    run += allowanceMm[j]! + flatMm[j + 1]!;
  return run;
}

/** Where the leaf's face at rest begins, the nearest corner of its highest edge. */
function faceBeginsAt({ leaf }: Pick<Brake, "leaf">): Mm {
  const corners = leaf.outline.edges.map(({ from }) => from);
  const top = Math.max(...corners.map(({ y }) => y));
  return Math.min(...corners.filter(({ y }) => y > top - FACE_MM).map(({ x }) => x));
}

/** Corners of the leaf within this height of its top belong to its face. */
const FACE_MM: Mm = 0.01;
