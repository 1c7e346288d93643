/**
 * Two answers, orders of one part or one part on two brakes, each on its own canvas, played in step: at the same step and the same
 * share of the swing.
 */
import { useEffect, useRef, useState } from "preact/hooks";
import type { Answer } from "../../src/jobFile/answer.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { angleWords } from "../../src/words/angleWords.ts";
import { bendWords, faceWords, throatWords } from "../../src/words/stepWords.ts";
import { usePage } from "../page.ts";
import { paintStill } from "../stage/still.ts";

const SECONDS_A_STEP = 1.6;

export interface PlayedSide {
  readonly key: string;
  readonly name: string;
  readonly job: Job;
  readonly answer: Answer;
}

/** The newest two ticked are played. */
export function newestTwo<T>(ticked: readonly T[], one: T): readonly T[] {
  return ticked.includes(one) ? ticked.filter((other) => other !== one) : [...ticked.slice(-1), one];
}

export function PlayedPair({ sides }: { readonly sides: readonly PlayedSide[] }) {
  const steps = Math.max(...sides.map(({ answer }) => answer.order.length));
  const [at, setAt] = useState(0);
  const [playing, setPlaying] = useState(false);
  useEffect(() => {
    if (!playing) return;
    if (matchMedia("(prefers-reduced-motion: reduce)").matches) {
      setAt((now) => Math.min(steps, Math.floor(now) + 1));
      setPlaying(false);
      return;
    }
    let before = performance.now();
    let frame = requestAnimationFrame(function tick(now) {
      const passed = Math.min(now - before, 100) / 1000 / SECONDS_A_STEP;
      before = now;
      setAt((was) => {
        const next = Math.min(steps, was + passed);
        if (next >= steps) setPlaying(false);
        return next;
      });
      frame = requestAnimationFrame(tick);
    });
    return () => cancelAnimationFrame(frame);
  }, [playing, steps]);
  return (
    <div class="pair">
      <div class="row">
        <button
          type="button"
          onClick={() => {
            if (at >= steps) setAt(0);
            setPlaying(!playing);
          }}
        >
          {playing ? "Pause both" : "Play both"}
        </button>
        <label class="leaf">
          <span>Step</span>
          <input
            type="range"
            min={0}
            max={steps}
            step={0.01}
            value={at}
            aria-valuetext={`step ${Math.min(steps, Math.floor(at) + 1)} of ${steps}`}
            onInput={(event) => {
              setPlaying(false);
              setAt(event.currentTarget.valueAsNumber);
            }}
          />
        </label>
      </div>
      <ul class="stills">
        {sides.map(({ key, ...side }) => (
          <Side key={key} {...side} at={at} />
        ))}
      </ul>
    </div>
  );
}

function Side({ name, job, answer, at }: Omit<PlayedSide, "key"> & { readonly at: number }) {
  const { look } = usePage();
  const { theme } = look.now;
  const canvas = useRef<HTMLCanvasElement>(null);
  const last = answer.order.length - 1;
  const index = Math.min(Math.floor(at), last);
  // The first fifth of a step shows it at rest, the last fifth at its end.
  const share = Math.min(1, Math.max(0, (at - index - 0.2) / 0.6));
  useEffect(
    () => paintStill(canvas.current!, { job, answer }, { index, share }),
    [job, answer, index, share, theme],
  );
  const step = answer.order[index];
  const words = step
    ? `${bendWords(step)}, ${throatWords(step, job.part.bends.length)} in the throat, ${faceWords(step)}, leaf at ${angleWords(step.reached * share)}`
    : "";
  return (
    <li class={`still ${answer.verdict}`}>
      <h3>{name}</h3>
      <div class="still-box">
        <canvas ref={canvas} role="img" aria-label={words} />
      </div>
      <p>
        Step {index + 1}: {words}.
      </p>
    </li>
  );
}
