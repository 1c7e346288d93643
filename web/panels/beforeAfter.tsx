/**
 * A way out before and after: the part as it stops now, and with the way carried out, each at its worst moment.
 */
import { useEffect, useRef, useState } from "preact/hooks";
import type { Answer } from "../../src/jobFile/answer.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { usePage } from "../page.ts";
import { paintStill } from "../stage/still.ts";
import { adopt } from "../store/adopt.ts";
import { fileText } from "../store/jobFile.ts";
import type { Way } from "../worker/messages.ts";

const LIMIT_MS = 20_000;

interface Answered {
  readonly job: Job;
  readonly answer: Answer;
}

/** Whether the drawing stands beside the ways, so that a way is shown over it; else under the way itself. */
export function hasRoomBeside(): boolean {
  return matchMedia("(min-width: 1000px)").matches;
}

export function BeforeAfter({ way }: { readonly way: Way }) {
  const { standing, asker } = usePage();
  const [after, setAfter] = useState<Answered | null>(null);
  useEffect(() => {
    let there = true;
    setAfter(null);
    const adopted = adopt(way.file);
    if (adopted.ok)
      void asker.askOnce({ kind: "check", text: fileText(adopted.file) }, LIMIT_MS).then((reply) => {
        if (there && reply?.kind === "answer") setAfter({ job: reply.job, answer: reply.answer });
      });
    return () => {
      there = false;
    };
  }, [way]);
  const { job, answer } = standing;
  if (job === null || answer === null) return null;
  return (
    <div class="before-after">
      <Side name="Now" shown={{ job, answer }} />
      <Side name="Then" shown={after} />
    </div>
  );
}

function Side({ name, shown }: { readonly name: string; readonly shown: Answered | null }) {
  const { theme } = usePage().look.now;
  const canvas = useRef<HTMLCanvasElement>(null);
  useEffect(() => {
    if (shown) paintStill(canvas.current!, shown);
  }, [shown?.answer, theme]);
  return (
    <figure>
      <div class="still-box">
        <canvas ref={canvas} role="img" aria-label={`${name}, at the worst moment`} />
      </div>
      <figcaption>{name}</figcaption>
    </figure>
  );
}
