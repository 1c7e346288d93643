/**
 * Compare: the best order beside the user's own, and one part on several brakes, each answered by the same engine
 * with the picture at its worst moment. Worked out on asking, in a worker of its own.
 */
import { useEffect, useRef, useState } from "preact/hooks";
import type { Answer } from "../../src/jobFile/answer.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { usePage } from "../page.ts";
import { differentBrakes } from "../store/brakes.ts";
import { usualBrake, usualClamp } from "../store/firstJob.ts";
import { type BrakeFile, fileText, type JobFile } from "../store/jobFile.ts";
import type { Shelf } from "../store/shelf.ts";
import { Asker } from "../worker/asker.ts";
import { OrdersPanel } from "./ordersPanel.tsx";
import { newestTwo, PlayedPair } from "./playedPair.tsx";
import { Still } from "./still.tsx";

interface Row {
  readonly name: string;
  readonly file: JobFile;
}

type Result = { readonly name: string } & (
  | { readonly job: Job; readonly answer: Answer }
  | { readonly sentence: string }
);

const LIMIT_MS = 60_000;

function withBrake(file: JobFile, brake: BrakeFile): JobFile {
  const { order: _order, finishByHand: _byHand, ...rest } = file;
  return { ...rest, brake };
}

/** Brakes to compare: of every job on the shelf, and the two usual clamps; each kind once. */
function brakesOf({ jobs, brakes }: Shelf, now: JobFile): readonly Row[] {
  const usual = (["finger", "bar"] as const).map((kind) => ({
    name: `Usual ${kind === "bar" ? "clamp bar" : "finger"}`,
    brake: { ...usualBrake(now.units), clamp: usualClamp(kind, now.units) },
  }));
  const files = jobs.map((job) => job.file);
  return differentBrakes([now, ...files], { brakes: brakes ?? [] }, now.units, usual).map(
    ({ name, brake }) => ({
      name,
      file: withBrake(now, brake),
    }),
  );
}

export function ComparePanel() {
  const { snapshot, standing } = usePage();
  const { file, shelf } = snapshot;
  const asker = useRef<Asker | null>(null);
  const [results, setResults] = useState<readonly Result[] | null>(null);
  const [left, setLeft] = useState<ReadonlySet<string>>(new Set());
  const [pair, setPair] = useState<readonly string[]>([]);
  const [title, setTitle] = useState("");
  useEffect(() => () => asker.current?.stop(), []);

  const run = async (name: string, rows: readonly Row[]) => {
    asker.current?.stop();
    const mine = new Asker();
    asker.current = mine;
    setTitle(name);
    setResults([]);
    const found: Result[] = [];
    for (const row of rows) {
      const reply = await mine.askOnce({ kind: "check", text: fileText(row.file) }, LIMIT_MS);
      if (asker.current !== mine) return;
      if (reply?.kind === "answer") found.push({ name: row.name, job: reply.job, answer: reply.answer });
      else if (reply?.kind === "problems")
        found.push({ name: row.name, sentence: reply.problems[0]?.sentence ?? "It can't be read." });
      else found.push({ name: row.name, sentence: "It took too long to work out." });
      setResults([...found]);
      setPair(found.flatMap((one) => ("answer" in one ? [one.name] : [])).slice(0, 2));
    }
    mine.stop();
  };

  const sides = (results ?? []).flatMap((one) =>
    "answer" in one && pair.includes(one.name) ? [{ key: one.name, ...one }] : [],
  );
  const { order: _order, ...withoutOrder } = file;
  const own = file.order !== undefined;
  const brakes = brakesOf(shelf, file);
  const chosen = brakes.filter((row) => !left.has(row.name));
  const readable = standing.problems.length === 0;
  return (
    <section class="panel" aria-labelledby="compare-heading">
      <h2 id="compare-heading">Compare</h2>
      <div class="row">
        <button
          type="button"
          disabled={!readable || !own}
          onClick={() =>
            void run("Two orders", [
              { name: "Best order", file: withoutOrder },
              { name: "Your own order", file },
            ])
          }
        >
          Best order beside your own
        </button>
        {own ? null : <span class="note">Move a step above to have an order of your own.</span>}
      </div>
      <OrdersPanel />
      <fieldset class="ticks">
        <legend>Brakes</legend>
        {brakes.map((row) => (
          <label key={row.name} class="tick">
            <input
              type="checkbox"
              checked={!left.has(row.name)}
              onChange={(event) => {
                const next = new Set(left);
                if (event.currentTarget.checked) next.delete(row.name);
                else next.add(row.name);
                setLeft(next);
              }}
            />
            <span>{row.name}</span>
          </label>
        ))}
      </fieldset>
      <button
        type="button"
        disabled={!readable || chosen.length === 0}
        onClick={() => void run("This part on several brakes", chosen)}
      >
        This part on these brakes
      </button>
      {results ? (
        <div aria-live="polite">
          <h3>{title}</h3>
          <ul class="stills">
            {results.map((result) =>
              "answer" in result ? (
                <Still
                  key={result.name}
                  {...result}
                  ticked={pair.includes(result.name)}
                  onTick={() => setPair((now) => newestTwo(now, result.name))}
                />
              ) : (
                <li key={result.name} class="still unread">
                  <h3>{result.name}</h3>
                  <p>{result.sentence}</p>
                </li>
              ),
            )}
          </ul>
          {sides.length === 2 ? <PlayedPair sides={sides} /> : null}
        </div>
      ) : null}
    </section>
  );
}
