/**
 * One judged step of an order as the answer tells it: degrees, bends from 1, features of the part in words.
 */

import type { RangedStep } from "../contact/overRange.ts";
import type { Step } from "../contact/step.ts";
import { END_OF_FLAT, INSIDE_OF_BEND, OUTSIDE_OF_BEND } from "../contact/strip.ts";
import type { ContactAnswer, FailsAt, JudgedStep } from "../jobFile/answer.ts";
import type { Stage } from "../motion/stages.ts";
import type { LengthUnit } from "../units/length.ts";
import { type Deg, toDeg } from "../units/quantity.ts";
import { hemStopWords } from "../words/hemWords.ts";
import { refusalWords } from "../words/refusalWords.ts";
import { pieceMet } from "./pieceMet.ts";

/** The step as plain data, with what it was judged on. */
export function stepAnswer(ranged: RangedStep, units: LengthUnit): JudgedStep {
  const { stage, likely: step, failing } = ranged;
  // What stops it within the doubts is told where nothing does as likely.
  const stop = failing ?? ranged;
  const stops = failing?.step ?? step;
  const { hem } = stage;
  const flattens = hem !== undefined && hem !== "fold";
  const because = refusalWords({ ...stop.stage, units }, stops) ?? hemStopWords(stop.stage, stops, units);
  const bend = stage.part.bends[step.seat.bend]!;
  const fromDeg = stage.begun?.fromDeg;
  const sheetReached = reachedDeg(step, bend.overbendDeg);
  const ahead = toDeg(step.seat.leafAheadRad);
  const onLeaf = (deg: Deg): Deg => deg + ahead;
  const reached = sheetReached === 0 ? 0 : onLeaf(sheetReached);
  const [low, high] = bend.overbendRangeDeg ?? [bend.overbendDeg, bend.overbendDeg];
  return {
    bend: step.seat.bend + 1,
    clamped: step.seat.clamped,
    markedFaceUp: bend.turn === "up",
    angle: bend.angleDeg,
    overbend: onLeaf(bend.overbendDeg),
    overbendRange: [onLeaf(low), onLeaf(high)],
    foldsFor: ranged.foldsForDeg ? [onLeaf(ranged.foldsForDeg[0]), onLeaf(ranged.foldsForDeg[1])] : null,
    ...(failing && { failsAt: failsAt(failing) }),
    reached,
    // A leaf that is stopped on its way up to a bend begun before leaves it as it was.
    relaxesTo: Math.max(fromDeg ?? 0, (sheetReached * bend.angleDeg) / bend.overbendDeg),
    verdict: ranged.verdict,
    clearance: step.clearanceMm ?? null,
    leastClearance: ranged.leastMm ?? null,
    clearancePoints: step.clearancePoints
      ? [
          [step.clearancePoints[0].x, step.clearancePoints[0].y],
          [step.clearancePoints[1].x, step.clearancePoints[1].y],
        ]
      : null,
    nearest:
      step.clearancePoints && step.clearanceMember
        ? pieceMet(stage.brake, step.seat, step.clearanceMember, step.clearancePoints[1])
        : null,
    contact: contactAnswer(stops, stop.stage),
    load: stops.load,
    unload: stops.unload,
    refused: stops.refused ?? null,
    ...(because !== undefined && { because }),
    setback: step.seat.noseSetbackMm,
    ...(stage.toDeg !== undefined && { stroke: "begin" as const }),
    ...(fromDeg !== undefined && { stroke: "finish" as const, from: fromDeg }),
    ...(hem === "fold" && { stroke: "fold" as const }),
    ...(flattens && FLATTENED),
  };
}

/** Where the clamp presses a hem flat the leaf stays at rest. */
const FLATTENED = {
  stroke: "flatten",
  angle: 180,
  overbend: 0,
  overbendRange: [0, 0],
  reached: 0,
  relaxesTo: 180,
} as const satisfies Partial<JudgedStep>;

function failsAt({ off, stage }: NonNullable<RangedStep["failing"]>): FailsAt {
  return {
    overbend: stage.part.bends[stage.bend]!.overbendDeg,
    noseSetbackBy: off.noseSetbackMm,
    noseRadiusBy: off.nose * (stage.brake.doubts?.noseRadius?.mm ?? 0),
  };
}

function reachedDeg({ refused, contact, swingShort, seat }: Step, overbendDeg: Deg): Deg {
  if (refused) return 0;
  if (contact) return toDeg(contact.leafAngleRad);
  return swingShort ? toDeg(seat.sweepRad) : overbendDeg;
}

function contactAnswer({ contact, seat }: Step, { brake }: Stage): ContactAnswer | null {
  if (!contact) return null;
  const { leafAngleRad, member, tag, point } = contact;
  return {
    // Met at rest it is met before the leaf has come up.
    angle: leafAngleRad <= 0 ? 0 : toDeg(leafAngleRad + seat.leafAheadRad),
    part: featureWords(tag),
    ...pieceMet(brake, seat, member, point),
    point: [point.x, point.y],
  };
}

/** The part's feature in words, from a tag of contact/strip.ts. */
function featureWords(tag: number): string {
  if (tag < 0) return "leaf";
  const number = (tag >>> 2) + 1;
  switch (tag & 3) {
    case END_OF_FLAT:
      return `end of flat ${number}`;
    case INSIDE_OF_BEND:
      return `inside of bend ${number}`;
    case OUTSIDE_OF_BEND:
      return `outside of bend ${number}`;
    default:
      return `flat ${number}`;
  }
}
