/**
 * The steps: the best order found or the user's own. Steps are moved by dragging or with the keys; moving one
 * makes the order the user's own, checked as it stands.
 */
import { useMemo, useRef, useState } from "preact/hooks";
import { clearanceMember } from "../../src/drawing/step.ts";
import { angleWords, faceWords, outcomeSentence, throatWords } from "../../src/drawing/stepWords.ts";
import type { StepAnswer } from "../../src/job/answer.ts";
import { usePage } from "../page.ts";
import type { OrderFile } from "../store/jobFile.ts";
import { Sign, VERDICT_SIGNS } from "./sign.tsx";

/** The order that stands in an answer, as the file writes it. */
function asOrder(steps: readonly StepAnswer[]): readonly OrderFile[] {
  return steps.map(({ bend, clamped }) => ({ bend, clamped }));
}

export function StepsPanel() {
  const { store, snapshot, standing, look } = usePage();
  const { file } = snapshot;
  const { answer, job, problems } = standing;
  const own = file.order !== undefined;
  const list = useRef<HTMLOListElement>(null);
  const [dragged, setDragged] = useState<number | null>(null);
  const nearest = useMemo(
    () => (job && answer ? answer.order.map((_, i) => clearanceMember(job, answer, i)) : []),
    [job, answer],
  );
  if (answer === null || job === null) return null;
  const steps = answer.order;
  const bendCount = job.part.bends.length;
  const orderable = problems.length === 0 && file.part.bends.length === steps.length;

  const put = (order: readonly OrderFile[], did: string) => store.set(["order"], order, did);
  const move = (from: number, to: number) => {
    if (to < 0 || to >= steps.length || from === to) return;
    const order = [...asOrder(steps)];
    const [step] = order.splice(from, 1);
    order.splice(to, 0, step!);
    put(order, `move bend ${step!.bend}`);
    if (look.now.step === from) look.set({ step: to });
  };
  const otherEnd = (at: number) => {
    const order = asOrder(steps).map((step, i) =>
      i === at
        ? { ...step, clamped: step.clamped === "start" ? ("end" as const) : ("start" as const) }
        : step,
    );
    put(order, `clamp the other side for bend ${steps[at]!.bend}`);
  };
  /** Which place the pointer is over, by the middles of the cards. */
  const placeAt = (y: number) => {
    const cards = [...(list.current?.children ?? [])];
    const at = cards.findIndex((card) => y < card.getBoundingClientRect().bottom);
    return at < 0 ? cards.length - 1 : at;
  };

  return (
    <section class="panel" aria-labelledby="steps-heading">
      <h2 id="steps-heading">Steps</h2>
      <p class="hint">
        {own
          ? "Your own order, checked as it stands. "
          : "The best order found. Move a step to try your own. "}
        {viableWords(answer.viableOrders, own)}
      </p>
      {own ? (
        <div class="row">
          <button type="button" onClick={() => store.set(["order"], undefined, "go back to the best order")}>
            Find the best order again
          </button>
        </div>
      ) : null}
      <ol class="steps" ref={list}>
        {steps.map((step, i) => (
          <li
            key={`${step.bend}`}
            class={`step ${step.verdict}${look.now.step === i ? " shown" : ""}${dragged === i ? " dragged" : ""}`}
          >
            <span
              class="grip"
              aria-hidden="true"
              onPointerDown={(event) => {
                if (!orderable) return;
                event.currentTarget.setPointerCapture(event.pointerId);
                setDragged(i);
              }}
              onPointerUp={(event) => {
                if (dragged !== null) move(dragged, placeAt(event.clientY));
                setDragged(null);
              }}
              onPointerCancel={() => setDragged(null)}
            >
              <Sign name="grip" />
            </span>
            <div class="what">
              <p>
                <strong>
                  {i + 1}. Bend {step.bend}
                </strong>
                , {throatWords(step, bendCount)} in the throat, {faceWords(step)}, leaf to{" "}
                {angleWords(step.overbend)}.
              </p>
              <p class="outcome">
                <Sign name={VERDICT_SIGNS[step.verdict]} />
                {outcomeSentence(step, job.units, job.brake.clamp.kind, nearest[i])} {handlingWords(step)}
              </p>
            </div>
            <span class="row tight">
              <button
                type="button"
                aria-pressed={look.now.step === i}
                onClick={() => look.set({ step: i })}
                aria-label={`Show step ${i + 1}, bend ${step.bend}`}
              >
                Show
              </button>
              <button
                type="button"
                class="quiet"
                disabled={!orderable || i === 0}
                onClick={() => move(i, i - 1)}
                aria-label={`Bend ${step.bend} earlier`}
                title="Earlier"
              >
                <Sign name="up" />
              </button>
              <button
                type="button"
                class="quiet"
                disabled={!orderable || i === steps.length - 1}
                onClick={() => move(i, i + 1)}
                aria-label={`Bend ${step.bend} later`}
                title="Later"
              >
                <Sign name="down" />
              </button>
              <button
                type="button"
                class="quiet"
                disabled={!orderable}
                onClick={() => otherEnd(i)}
                aria-label={`Clamp the other side for bend ${step.bend}`}
                title="Clamp the other side"
              >
                <Sign name="swap" />
              </button>
            </span>
          </li>
        ))}
      </ol>
    </section>
  );
}

function viableWords(count: number | bigint, own: boolean): string {
  if (own) return "";
  if (count === 0 || count === 0n) return "No order at all folds this part on this brake.";
  if (count === 1 || count === 1n) return "It is the only order that folds.";
  return `${count.toLocaleString()} orders fold.`;
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
