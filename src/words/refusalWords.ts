/**
 * Why a bend is not even begun, with the figures: what holds and pushes the sheet, and what the brake is rated for.
 */

import { leastInsideRadius } from "../brake/nosePinch.ts";
import { automaticNoseSetback } from "../brake/noseSetback.ts";
import type { Step } from "../contact/step.ts";
import type { Job } from "../jobFile/job.ts";
import { flangeOf, gripOf, type Hold } from "../motion/holds.ts";
import { type Overload, overloadOf } from "../motion/rated.ts";
import { formatLength } from "../units/length.ts";
import { type Mm, toDeg } from "../units/quantity.ts";
import { capital } from "./capital.ts";

type Said = Pick<Job, "units" | "part" | "brake">;

/** In words to follow "because", without a full stop; undefined for a bend that is begun. */
export function refusalWords(job: Said, { seat, bendsDone, refused }: Step): string | undefined {
  switch (refused) {
    case undefined:
      return undefined;
    case "pinched":
      return `the nose, ${say(job, seat.noseSetbackMm)} back, pinches the sheet: set it back by ${say(job, leastSetback(job, seat))} or more`;
    case "grip":
      return `the clamp ${held(job, "grip", gripOf(seat, job.brake, bendsDone))}`;
    case "flange":
      return `the leaf ${held(job, "push on", flangeOf(seat, job.brake, bendsDone))}`;
    default:
      return seat.overload && overloadWords(job, seat.overload);
  }
}

/** Nose setback at which the clamp leaves room for the sharpest radius. */
function leastSetback({ brake: { clamp } }: Said, { overbendRad, thicknessMm, pivot }: Step["seat"]): Mm {
  const overbendDeg = toDeg(overbendRad);
  const insideRadiusMm = leastInsideRadius(clamp, overbendDeg);
  return automaticNoseSetback({
    insideRadiusMm,
    thicknessMm,
    pivot,
    overbendDeg,
    noseRunMm: clamp.noseRunMm,
  });
}

/** What the brake is not rated for, as a sentence; undefined where it is. */
export function overloadSentence(job: Said): string | undefined {
  const overload = overloadOf(job.part, job.brake);
  if (overload === undefined) return undefined;
  return `${capital(overloadWords(job, overload))}.`;
}

/** What is there, and what is wanted. */
function held(job: Said, to: string, { runMm, leastMm }: Hold): string {
  return `has ${say(job, runMm)} of flat sheet to ${to} and needs ${say(job, leastMm)}`;
}

function overloadWords(job: Said, overload: Overload): string {
  const { part, brake } = job;
  const { thicknessMm, lengthMm, yieldMpa } = brake.rating!;
  if (overload.kind === "length")
    return `the part is ${say(job, part.lengthMm ?? 0)} long, and this brake takes ${say(job, lengthMm)}`;
  const rated = `this brake is rated for ${say(job, thicknessMm)} sheet of ${Math.round(yieldMpa)} MPa`;
  const percent = `${Math.round(100 * overload.share)} %`;
  return overload.over === "unit"
    ? `${rated}, and ${say(job, part.thicknessMm)} ${part.metal.name} takes ${percent} of that`
    : `${rated} over ${say(job, lengthMm)}, and this bend takes ${percent} of that`;
}

function say({ units }: Said, mm: Mm): string {
  return `${formatLength(mm, units)} ${units}`;
}
