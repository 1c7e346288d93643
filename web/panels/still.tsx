/**
 * One compared answer: its sentence, its order, and the picture at its worst moment.
 */
import { useEffect, useRef } from "preact/hooks";
import type { Answer } from "../../src/jobFile/answer.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { angleWords } from "../../src/words/angleWords.ts";
import { roomWords, turningWords } from "../../src/words/orderCompared.ts";
import { throatWords } from "../../src/words/stepWords.ts";
import { verdictSentence } from "../../src/words/verdictWords.ts";
import { usePage } from "../page.ts";
import { worstStep } from "../stage/stepPose.ts";
import { paintStill } from "../stage/still.ts";

export function Still({
  name,
  job,
  answer,
  ticked,
  onTick,
}: {
  readonly name: string;
  readonly job: Job;
  readonly answer: Answer;
  /** Whether it is one of the two that are played side by side. */
  readonly ticked: boolean;
  readonly onTick: () => void;
}) {
  const { look } = usePage();
  const canvas = useRef<HTMLCanvasElement>(null);
  const { theme } = look.now;
  useEffect(() => paintStill(canvas.current!, { job, answer }), [job, answer, theme]);
  const worst = answer.order[worstStep(answer)];
  const count = job.part.bends.length;
  const order = answer.order
    .map(({ bend, clamped, stroke, angle }) =>
      stroke === "begin"
        ? `${bend} (${throatWords({ bend, clamped }, count)}, left at ${angleWords(angle)})`
        : `${bend} (${throatWords({ bend, clamped }, count)})`,
    )
    .join(", ");
  return (
    <li class={`still ${answer.verdict}`} data-verdict={answer.verdict}>
      <h3>{name}</h3>
      <div class="still-box">
        <canvas
          ref={canvas}
          role="img"
          aria-label={`${name}, at its worst moment${worst ? `, bend ${worst.bend}` : ""}`}
        />
      </div>
      <p>{verdictSentence(job, answer)}</p>
      <p class="note">
        Bends, with what lies in the throat: {order}. The part is {turningWords(answer)}
        {answer.verdict === "hits" ? "" : `; ${roomWords(answer, job.units)}`}.
      </p>
      <label class="tick">
        <input type="checkbox" checked={ticked} onChange={onTick} />
        <span>
          Side by side<span class="heard">: {name}</span>
        </span>
      </label>
    </li>
  );
}
