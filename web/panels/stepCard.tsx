/**
 * One step of the order: what lies in the throat, how far the leaf goes, how it came out, and the handles to change it.
 */

import type { StepAnswer } from "../../src/jobFile/answer.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { angleWords } from "../../src/words/angleWords.ts";
import { bendWords, faceWords, outcomeSentence, throatWords } from "../../src/words/stepWords.ts";
import { Field } from "../fields/field.tsx";
import { Sign, VERDICT_SIGNS } from "./sign.tsx";

export interface StepHandles {
  readonly show: () => void;
  readonly earlier: () => void;
  readonly later: () => void;
  readonly otherEnd: () => void;
  /** Two strokes of an ordinary step, one of a step that begins a bend; neither of one that finishes it. */
  readonly strokes: (() => void) | null;
}

/** How far the leaf goes, and where a bend that is made in two strokes is left or taken up. */
function leafWords({ overbend, angle, stroke, from }: StepAnswer): string {
  const to = `leaf to ${angleWords(overbend)}`;
  if (stroke === "begin") return `${to}, left at ${angleWords(angle)}`;
  return stroke === "finish" ? `taken up at ${angleWords(from ?? 0)}, ${to}` : to;
}

export function StepCard({
  step,
  place,
  inOrder,
  last,
  job,
  own,
  orderable,
  shown,
  handles,
}: {
  readonly step: StepAnswer;
  /** From 0. */
  readonly place: number;
  /** Its place in the order of the file, and whether it is the last there. */
  readonly inOrder: number;
  readonly last: boolean;
  readonly job: Job;
  readonly own: boolean;
  readonly orderable: boolean;
  readonly shown: boolean;
  readonly handles: StepHandles;
}) {
  const named = bendWords(step);
  const begins = step.stroke === "begin";
  return (
    <>
      <div class="what">
        <p>
          <strong>
            {place + 1}. {named}
          </strong>
          , {throatWords(step, job.part.bends.length)} in the throat, {faceWords(step)}, {leafWords(step)}.
        </p>
        <p class="outcome">
          <Sign name={VERDICT_SIGNS[step.verdict]} />
          {outcomeSentence(step, job.units, job.brake.clamp.kind)} {handlingWords(step)}
        </p>
        {own && begins ? (
          <Field
            label={`Leave bend ${step.bend} at`}
            unit="°"
            path={["order", inOrder, "to"]}
            kind="angle"
            note="As it lies when it is taken out"
          />
        ) : null}
      </div>
      <span class="row tight">
        <button
          type="button"
          aria-pressed={shown}
          onClick={handles.show}
          aria-label={`Show step ${place + 1}, ${named.replace("Bend", "bend")}`}
        >
          Show
        </button>
        <button
          type="button"
          class="quiet"
          disabled={!orderable || inOrder === 0}
          onClick={handles.earlier}
          aria-label={`${named} earlier`}
          title="Earlier"
        >
          <Sign name="up" />
        </button>
        <button
          type="button"
          class="quiet"
          disabled={!orderable || last}
          onClick={handles.later}
          aria-label={`${named} later`}
          title="Later"
        >
          <Sign name="down" />
        </button>
        <button
          type="button"
          class="quiet"
          disabled={!orderable}
          onClick={handles.otherEnd}
          aria-label={`Put the other end in the throat for bend ${step.bend}`}
          title="Put the other end in the throat"
        >
          <Sign name="swap" />
        </button>
        {handles.strokes ? (
          <button
            type="button"
            class="quiet"
            disabled={!orderable}
            onClick={handles.strokes}
            aria-label={`Make bend ${step.bend} in ${begins ? "one stroke" : "two strokes"}`}
            title={begins ? "In one stroke" : "In two strokes: begin it, finish it later"}
          >
            <Sign name={begins ? "oneStroke" : "twoStrokes"} />
          </button>
        ) : null}
      </span>
    </>
  );
}

const WAYS: Readonly<Record<StepAnswer["load"], string>> = {
  front: "from the front",
  end: "sideways along the bend",
  blocked: "no way",
};

function handlingWords(step: StepAnswer): string {
  if (step.load === "front" && step.unload === "front") return "";
  if (step.load === step.unload) return `In and out ${WAYS[step.load]}.`;
  return `In ${WAYS[step.load]}, out ${WAYS[step.unload]}.`;
}
