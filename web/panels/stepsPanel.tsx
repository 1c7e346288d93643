/**
 * The steps: the best order found or the user's own. Steps are moved by dragging or with the keys; moving one
 * makes the order the user's own, checked as it stands. A bend may be begun in one step and finished in a later one.
 */
import { useRef, useState } from "preact/hooks";
import type { StepAnswer } from "../../src/jobFile/answer.ts";
import { ordersSentence } from "../../src/words/ordersWords.ts";
import { usePage } from "../page.ts";
import { chainFlats } from "../store/chain.ts";
import type { OrderFile } from "../store/jobFile.ts";
import { inOneStroke, inTwoStrokes, movedStep, otherEnd } from "../store/orderEdits.ts";
import { HandFinishes } from "./handFinishes.tsx";
import { Sign } from "./sign.tsx";
import { StepCard } from "./stepCard.tsx";

/** A hem is one step of the file: that it is flattened goes with its fold. */
const isOrdered = ({ stroke }: StepAnswer) => stroke !== "flatten";

/** The order that stands in an answer, as the file writes it; angles as the person typed them. */
function asOrder(steps: readonly StepAnswer[], own: readonly OrderFile[] | undefined): readonly OrderFile[] {
  return steps
    .filter(isOrdered)
    .map(({ bend, clamped, stroke, angle }, i) =>
      stroke === "begin" ? { bend, clamped, to: own?.[i]?.to ?? angle } : { bend, clamped },
    );
}

export function StepsPanel() {
  const { store, snapshot, standing, look } = usePage();
  const { file } = snapshot;
  const { answer, job, problems } = standing;
  const own = file.order !== undefined;
  const list = useRef<HTMLOListElement>(null);
  const [dragged, setDragged] = useState<number | null>(null);
  if (answer === null || job === null) return null;
  const steps = answer.order;
  const orderable = problems.length === 0 && chainFlats(file.part) === job.part.flatsMm.length;

  const put = (order: readonly OrderFile[], did: string) => store.set(["order"], order, did);
  const order = asOrder(steps, file.order);
  /** Where a step shown stands in the order of the file. */
  const placeOf = (shown: number) => steps.slice(0, shown + 1).filter(isOrdered).length - 1;
  const move = (from: number, to: number) => {
    if (to < 0 || to >= order.length || from === to) return;
    put(movedStep(order, from, to), `move bend ${order[from]!.bend}`);
    if (placeOf(look.now.step) === from) look.set({ step: to });
  };
  const strokesOf = ({ bend, angle, stroke }: StepAnswer, at: number) => {
    if (stroke === "finish" || stroke === "fold" || stroke === "flatten") return null;
    return stroke === "begin"
      ? () => put(inOneStroke(order, at), `make bend ${bend} in one stroke`)
      : () => put(inTwoStrokes(order, at, halfOf(angle)), `make bend ${bend} in two strokes`);
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
          ? "Your own order, checked as it stands."
          : `${ordersSentence(job, answer)} Move a step to try your own.`}
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
            key={`${step.bend} ${step.stroke ?? ""}`}
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
                if (dragged !== null) move(placeOf(dragged), placeOf(placeAt(event.clientY)));
                setDragged(null);
              }}
              onPointerCancel={() => setDragged(null)}
            >
              <Sign name="grip" />
            </span>
            <StepCard
              step={step}
              place={i}
              inOrder={placeOf(i)}
              last={placeOf(i) === order.length - 1}
              job={job}
              own={own}
              orderable={orderable}
              shown={look.now.step === i}
              handles={{
                show: () => look.set({ step: i }),
                earlier: () => move(placeOf(i), placeOf(i) - 1),
                later: () => move(placeOf(i), placeOf(i) + 1),
                otherEnd: () =>
                  put(otherEnd(order, step.bend), `put the other end in the throat for bend ${step.bend}`),
                strokes: strokesOf(step, placeOf(i)),
              }}
            />
          </li>
        ))}
      </ol>
      <HandFinishes />
    </section>
  );
}

/** Half an angle, in whole degrees where it has some. */
function halfOf(angleDeg: number): number {
  return angleDeg < 2 ? angleDeg / 2 : Math.round(angleDeg / 2);
}
