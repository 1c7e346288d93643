/**
 * Two small pictures of one bend without a word on them, for a row of the shop sheet: sheet seated, and leaf swung.
 * Both show the same window, so that they can be compared.
 */

import type { Drawing, Mark } from "../drawing/model.ts";
import type { Answer, PointPair } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";
import { stageAt } from "../jobFile/stageAt.ts";
import { type Scene, stageScene } from "../motion/scene.ts";
import type { Outline } from "../plane/outline.ts";
import { type Mm, toRad } from "../units/quantity.ts";
import { angleWords } from "../words/angleWords.ts";
import { findingPoints } from "./finding.ts";
import { nearNose } from "./nearNose.ts";
import { stepWindow } from "./stepWindow.ts";

export interface StepPair {
  readonly before: Drawing;
  readonly after: Drawing;
}

/** Radius of the ring round a contact, as a share of the picture's width. */
const CONTACT_SHARE = 0.07;

/** Arms of the cross over the ring's radius. */
const CROSS_SHARE = 1.5;

/**
 * The pictures of step `stepIndex` (from 0) of the order, the second at the leaf angle reached; of a long part no more
 * than `mostMm` near the nose.
 * @throws RangeError when the order has no such step
 */
export function drawStepPair(
  job: Job,
  answer: Answer,
  stepIndex: number,
  mostMm: Mm = Number.POSITIVE_INFINITY,
): StepPair {
  const step = answer.order[stepIndex];
  if (step === undefined) throw new RangeError(`the order has no step ${stepIndex + 1}`);
  const stage = stageAt(job, answer, stepIndex);
  const at = (leafDeg: number) => stageScene(stage, toRad(leafDeg));
  const [seated, swung] = [at(0), at(step.reached)];
  const seen = findingPoints(step);
  const window = nearNose(stepWindow([seated, swung], 0).window, mostMm, seen);
  const radius = (window.max.x - window.min.x) * CONTACT_SHARE;
  const contact = step.contact === null ? [] : contactMarks(step.contact.point, radius);
  const after = `Bend ${step.bend} with the leaf at ${angleWords(step.reached)}.`;
  return {
    before: { sentence: `Bend ${step.bend} before the leaf moves.`, window, marks: sceneMarks(seated) },
    after: { sentence: after, window, marks: [...sceneMarks(swung), ...contact] },
  };
}

/** Where metal meets metal: a ring, hatched, and a cross in it, to be found among the other hatches. */
function contactMarks([x, y]: PointPair, radius: Mm): readonly Mark[] {
  const center = { x, y };
  const from = { x: x + radius, y };
  const ring: Outline = {
    edges: [{ kind: "arc", from, to: from, center, radius, startRad: 0, sweepRad: 2 * Math.PI }],
  };
  return [
    { kind: "outline", layer: "contact", outline: ring },
    ...[1, -1].map((side): Mark => {
      const arm = radius * CROSS_SHARE * Math.SQRT1_2;
      const from = { x: x - arm, y: y - side * arm };
      return { kind: "line", layer: "contact", from, to: { x: x + arm, y: y + side * arm } };
    }),
  ];
}

function sceneMarks(scene: Scene): readonly Mark[] {
  return [
    ...scene.frame.map((outline): Mark => ({ kind: "outline", layer: "frame", outline })),
    { kind: "outline", layer: "bed", outline: scene.bed },
    { kind: "outline", layer: "leaf", outline: scene.leaf },
    ...scene.clamp.map((outline): Mark => ({ kind: "outline", layer: "clamp", outline })),
    { kind: "outline", layer: "part", outline: scene.sheet },
  ];
}
