/**
 * The whole check of a job: search or the user's own order, every bend judged, the blank, the foreman's warnings.
 * Plain data in, plain data out; the command and the page both show what this returns.
 */
import { layOut } from "../blank/blank.ts";
import { cutBlank } from "../blank/cutBlank.ts";
import { Machine } from "../contact/machine.ts";
import { judgeStage, type Step } from "../contact/step.ts";
import { END_OF_FLAT, INSIDE_OF_BEND, OUTSIDE_OF_BEND } from "../contact/strip.ts";
import { type Stage, stagesOf } from "../motion/stages.ts";
import type { Watch } from "../sequence/reach.ts";
import { searchOrders } from "../sequence/search.ts";
import { toDeg } from "../units/quantity.ts";
import type { Answer, ContactAnswer, ReliefHoleAnswer, StepAnswer, Verdict } from "./answer.ts";
import { doubtsFound, withDoubts } from "./doubtsAnswer.ts";
import type { Job } from "./job.ts";
import { layoutWarnings } from "./layoutWarnings.ts";
import { warningsFor } from "./warnings.ts";

/**
 * Answers a job. `watch` is told how far a long search is and may stop it (SearchStopped is thrown then).
 * Where the job gives an order, that order is judged; orders are counted all the same.
 */
export function check(job: Job, watch?: Watch): Answer {
  const { part, brake, marginMm } = job;
  const found = searchOrders(part, brake, marginMm, watch);
  const machine = new Machine(brake, part.thicknessMm);
  const order = job.order ?? found.order;
  const stages = stagesOf(part, brake, order);
  const steps = stages.map((stage) => judgeStage(stage, marginMm, machine));
  const layout = layOut(part);
  const doubts = doubtsFound(job, order);
  return {
    verdict: withDoubts(worst(steps), doubts),
    order: steps.map((step, i) => stepAnswer(step, stages[i]!)),
    viableOrders: exact(found.viableOrders),
    statesChecked: found.statesChecked,
    blank: {
      developedWidth: layout.developedWidthMm,
      bends: layout.bends.map((line, i) => ({
        bend: i + 1,
        tangents: line.tangentsMm,
        sightLine: line.sightLinesMm.start,
        allowance: line.allowanceMm,
        deduction: line.deductionMm,
      })),
      ...(job.cutOuts !== undefined && { reliefHoles: reliefHoles(job, job.cutOuts) }),
    },
    ...(doubts !== undefined && { doubts: doubts.answer }),
    remedies: [],
    warnings: [
      ...(doubts?.warning === undefined ? [] : [doubts.warning]),
      ...warningsFor(job, steps),
      ...layoutWarnings(job),
    ],
  };
}

function reliefHoles({ part }: Job, cutOuts: NonNullable<Job["cutOuts"]>): ReliefHoleAnswer[] {
  if (cutOuts.length === 0) return [];
  return cutBlank(part, cutOuts).holes.map(({ center, diameterMm, bend, cutOut }) => ({
    x: center.x,
    y: center.y,
    diameter: diameterMm,
    bend: bend + 1,
    cutOut: cutOut + 1,
  }));
}

function worst(steps: readonly Step[]): Verdict {
  if (steps.some((step) => step.verdict === "hits")) return "hits";
  return steps.some((step) => step.verdict === "tight") ? "tight" : "clear";
}

function exact(count: bigint): number | bigint {
  return count <= BigInt(Number.MAX_SAFE_INTEGER) ? Number(count) : count;
}

function stepAnswer(step: Step, stage: Stage): StepAnswer {
  const bend = stage.part.bends[step.seat.bend]!;
  const fromDeg = stage.begun?.fromDeg;
  const reached = step.contact
    ? toDeg(step.contact.leafAngleRad)
    : step.swingShort
      ? toDeg(step.seat.sweepRad)
      : bend.overbendDeg;
  return {
    bend: step.seat.bend + 1,
    clamped: step.seat.clamped,
    markedFaceUp: bend.turn === "up",
    angle: bend.angleDeg,
    overbend: bend.overbendDeg,
    reached,
    // A leaf that is stopped on its way up to a bend begun before leaves it as it was.
    relaxesTo: Math.max(fromDeg ?? 0, (reached * bend.angleDeg) / bend.overbendDeg),
    verdict: step.verdict,
    clearance: step.clearanceMm ?? null,
    clearancePoints: step.clearancePoints
      ? [
          [step.clearancePoints[0].x, step.clearancePoints[0].y],
          [step.clearancePoints[1].x, step.clearancePoints[1].y],
        ]
      : null,
    contact: contactAnswer(step),
    load: step.load,
    unload: step.unload,
    setback: step.seat.noseSetbackMm,
    ...(stage.toDeg !== undefined && { stroke: "begin" as const }),
    ...(fromDeg !== undefined && { stroke: "finish" as const, from: fromDeg }),
  };
}

function contactAnswer(step: Step): ContactAnswer | null {
  if (!step.contact) return null;
  const { leafAngleRad, member, tag, point } = step.contact;
  return { angle: toDeg(leafAngleRad), part: featureWords(tag), member, point: [point.x, point.y] };
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
