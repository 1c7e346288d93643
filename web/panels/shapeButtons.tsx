/**
 * Shapes to start from. The usual size is put in at once; where it does not fold on the brake at hand, the nearest size that
 * does takes its place, and where none does a line says why.
 */
import { useState } from "preact/hooks";
import type { Answer } from "../../src/jobFile/answer.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { verdictSentence } from "../../src/words/verdictWords.ts";
import { usePage } from "../page.ts";
import { resized, SHAPES, type Shape, SIZES, withShape } from "../store/chainEdits.ts";
import { fileText, type JobFile } from "../store/jobFile.ts";
import { NOTHING_READ } from "../store/sample.ts";
import { Asker } from "../worker/asker.ts";

const LIMIT_MS = 10_000;

export function ShapeButtons() {
  const { store, snapshot } = usePage();
  const { file, sample } = snapshot;
  const [told, setTold] = useState<{ readonly file: JobFile; readonly words: string } | null>(null);

  const start = async (shape: Shape) => {
    const put = (size: Shape) => {
      const next = withShape(file, size);
      store.copy(next, sample ? NOTHING_READ : undefined, `start from ${shape.name}`);
      return next;
    };
    const first = put(shape);
    const asker = new Asker();
    const answered = async (size: Shape): Promise<{ job: Job; answer: Answer } | null> => {
      const reply = await asker.askOnce({ kind: "check", text: fileText(withShape(file, size)) }, LIMIT_MS);
      return reply?.kind === "answer" ? { job: reply.job, answer: reply.answer } : null;
    };
    const usual = await answered(shape);
    if (usual?.answer.verdict === "hits") {
      for (const times of SIZES) {
        const other = await answered(resized(shape, times));
        // Whoever has gone on typing meanwhile keeps what is typed.
        if (store.snapshot().file !== first) break;
        if (other === null || other.answer.verdict === "hits") continue;
        const words = `The usual size would not fold on this brake: this one is ${times} times as large.`;
        // In place of the usual size, so that one undo takes the shape away.
        store.undo();
        setTold({ file: put(resized(shape, times)), words });
        asker.stop();
        return;
      }
      const why = verdictSentence(usual.job, usual.answer);
      if (store.snapshot().file === first)
        setTold({
          file: first,
          words: `No size of this shape folds on this brake. At the usual size: ${why}`,
        });
    }
    asker.stop();
  };
  return (
    <fieldset class="choice shapes">
      <legend>Start from</legend>
      <span class="row">
        {SHAPES.map((shape) => (
          <button key={shape.name} type="button" onClick={() => void start(shape)}>
            {shape.name}
          </button>
        ))}
      </span>
      <span role="status" class="note">
        {told?.file === file ? told.words : ""}
      </span>
    </fieldset>
  );
}
