/**
 * Two small pictures of one bend without a word on them, for a row of the shop sheet: sheet seated, and leaf swung.
 * Both show the same window, so that they can be compared.
 */
import type { Answer } from "../job/answer.ts";
import type { Job } from "../job/job.ts";
import { type Scene, sceneAt } from "../motion/scene.ts";
import { toRad } from "../units/quantity.ts";
import type { Drawing, Mark } from "./model.ts";
import { stepWindow } from "./stepWindow.ts";
import { angleWords } from "./stepWords.ts";

export interface StepPair {
  readonly before: Drawing;
  readonly after: Drawing;
}

/**
 * The pictures of step `stepIndex` (from 0) of the order, the second at the leaf angle reached.
 * @throws RangeError when the order has no such step
 */
export function drawStepPair(job: Job, answer: Answer, stepIndex: number): StepPair {
  const step = answer.order[stepIndex];
  if (step === undefined) throw new RangeError(`the order has no step ${stepIndex + 1}`);
  const done = answer.order.slice(0, stepIndex).reduce((set, earlier) => set | (1 << (earlier.bend - 1)), 0);
  const at = (leafDeg: number) =>
    sceneAt(job.part, job.brake, done, step.bend - 1, step.clamped, toRad(leafDeg));
  const [seated, swung] = [at(0), at(step.reached)];
  const { window } = stepWindow([seated, swung], 0);
  const contact: Mark[] =
    step.contact === null
      ? []
      : [{ kind: "cross", layer: "contact", at: { x: step.contact.point[0], y: step.contact.point[1] } }];
  const after = `Bend ${step.bend} with the leaf at ${angleWords(step.reached)}.`;
  return {
    before: { sentence: `Bend ${step.bend} before the leaf moves.`, window, marks: sceneMarks(seated) },
    after: { sentence: after, window, marks: [...sceneMarks(swung), ...contact] },
  };
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
