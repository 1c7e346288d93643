/**
 * Answers written by hand, in the form of the contract, for the tests of words and pictures.
 */
import type { Answer, StepAnswer } from "../../src/jobFile/answer.ts";
import type { Job } from "../../src/jobFile/job.ts";

export function stepOf(changes: Partial<StepAnswer> = {}): StepAnswer {
  return {
    bend: 2,
    clamped: "end",
    markedFaceUp: true,
    angle: 90,
    overbend: 92,
    overbendRange: [92, 92],
    foldsFor: [92, 92],
    reached: 92,
    relaxesTo: 90,
    verdict: "clear",
    clearance: 1.0312,
    leastClearance: changes.clearance === undefined ? 1.0312 : changes.clearance,
    clearancePoints: [
      [-6, 9],
      [-9, 8],
    ],
    nearest: null,
    contact: null,
    load: "front",
    unload: "front",
    refused: null,
    setback: 1,
    sightLine: 31,
    flange: { length: 20, to: null, square: true },
    ...changes,
  };
}

export const hit = stepOf({
  verdict: "hits",
  reached: 75.2,
  relaxesTo: 73.6,
  clearance: 0,
  clearancePoints: null,
  contact: { angle: 75.2, part: "end of flat 1", member: "clamp", point: [-4, 3] },
});

export function answerOf(verdict: Answer["verdict"], ...order: StepAnswer[]): Answer {
  return {
    verdict,
    order,
    viableOrders: verdict === "hits" ? 0 : 2,
    statesChecked: 8,
    blank: {
      developedWidth: 50.8,
      bends: [
        { bend: 1, tangents: [10, 12], sightLine: 11, allowance: 2, deduction: 1.5 },
        { bend: 2, tangents: [30, 32], sightLine: 31, allowance: 2, deduction: 1.5 },
      ],
    },
    remedies: [],
    warnings: [],
  };
}

const bend = {
  angleDeg: 90,
  insideRadiusMm: 1,
  overbendDeg: 92,
  allowanceMm: 2,
  bendSetbackMm: 1.8,
  deductionMm: 1.6,
  noseSetbackMm: 1,
  pinched: false,
};

/** A job with two bends, the second turned down; only what words and the blank's drawing look at. */
export function jobOf(changes: Partial<Pick<Job, "units" | "order">> & { lengthMm?: number } = {}): Job {
  const { lengthMm, ...rest } = changes;
  const outline = { edges: [] };
  return {
    units: "mm",
    marginMm: 0.5,
    askedInsideRadiiMm: [1, 1],
    part: {
      name: "test strip",
      metal: { name: "mild steel", yieldMpa: 250, modulusMpa: 200000 },
      thicknessMm: 0.8,
      kFactor: 0.44,
      flatsMm: [10, 18, 18.8],
      bends: [
        { ...bend, turn: "up" },
        { ...bend, turn: "down" },
      ],
      ...(lengthMm === undefined ? {} : { lengthMm }),
    },
    brake: {
      name: "test brake",
      clamp: { kind: "profile", noseRadiusMm: 1, noseRunMm: 1, outlines: [] },
      bed: outline,
      leaf: { outline, swingDeg: 100, pivot: { x: 0, y: 0 } },
      frame: [],
      liftMm: 20,
      openEnds: true,
      noseSetback: "auto",
    },
    ...rest,
  };
}
