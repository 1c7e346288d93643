/**
 * The shop: every part that is kept here on every brake that is kept here, as a table, with the sentence that decides.
 * Worked out on asking, in a worker of its own; what is shown says when a job has changed since.
 */
import { useEffect, useRef, useState } from "preact/hooks";
import { inUnit } from "../../src/jobFile/inUnit.ts";
import { usePage } from "../page.ts";
import { differentBrakes } from "../store/brakes.ts";
import { fileText } from "../store/jobFile.ts";
import { openJob, type ShelfJob } from "../store/shelf.ts";
import { Asker } from "../worker/asker.ts";
import type { FitShown } from "../worker/messages.ts";
import { Sign } from "./sign.tsx";

const LIMIT_MS = 120_000;
const SIGNS = { clear: "clear", tight: "tight", hits: "cross", unfit: "cross" } as const;

type Found =
  | { readonly of: readonly ShelfJob[]; readonly fit: FitShown }
  | { readonly of: readonly ShelfJob[]; readonly sentence: string };

export function FitPanel() {
  const { snapshot } = usePage();
  const { shelf } = snapshot;
  const asker = useRef<Asker | null>(null);
  const [busy, setBusy] = useState(false);
  const [found, setFound] = useState<Found | null>(null);
  useEffect(() => () => asker.current?.stop(), []);

  const run = async () => {
    setBusy(true);
    asker.current ??= new Asker();
    const { units } = openJob(shelf).file;
    const files = shelf.jobs.map((job) => inUnit(job.file, units));
    // Each brake goes over in the job that has it, to be read by the one reader.
    const brakes = differentBrakes(files, shelf, units).map(({ name, brake }) => ({
      name,
      job: fileText({ ...files[0]!, brake }),
    }));
    const reply = await asker.current.askOnce({ kind: "fit", jobs: files.map(fileText), brakes }, LIMIT_MS);
    setBusy(false);
    if (reply?.kind === "fit") setFound({ of: shelf.jobs, fit: reply.fit });
    else
      setFound({
        of: shelf.jobs,
        sentence:
          reply?.kind === "failed"
            ? reply.sentence
            : "It took too long: take some jobs away, or press again.",
      });
  };
  const stale = found !== null && found.of !== shelf.jobs;
  return (
    <section class="panel" aria-labelledby="fit-heading">
      <h2 id="fit-heading">All parts, all brakes</h2>
      <p class="hint">
        Every part of your jobs ({partsWords(shelf.jobs.length)}) on every brake of your shelf and your jobs.
        Which brake makes which part, and what would make the rest.
      </p>
      <div class="row">
        <button type="button" aria-busy={busy} onClick={() => (busy ? undefined : void run())}>
          Try every part on every brake
        </button>
      </div>
      <div role="status" class="fit-said">
        {busy ? <p class="hint">Trying…</p> : null}
        {!busy && stale ? <p class="hint">A job has changed since: try again.</p> : null}
        {!busy && found && "sentence" in found ? <p>{found.sentence}</p> : null}
        {!busy && found && "fit" in found ? (
          <p>
            <strong>{found.fit.sentence}</strong> {found.fit.leftOut.join(" ")}
          </p>
        ) : null}
      </div>
      {found && "fit" in found && found.fit.rows.length > 0 ? <FitTable fit={found.fit} /> : null}
    </section>
  );
}

function partsWords(count: number): string {
  return count === 1 ? "there is one; add jobs below for more" : `there are ${count}`;
}

function FitTable({ fit }: { readonly fit: FitShown }) {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than a phone must be scrolled with the keys too
    <section class="scroll list fit" tabIndex={0} aria-label="Every part on every brake">
      <table>
        <caption>Every part on every brake</caption>
        <thead>
          <tr>
            <th scope="col">part</th>
            {fit.brakes.map((brake, i) => (
              <th key={i} scope="col">
                {brake}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {fit.rows.map(({ part, cells }, row) => (
            <tr key={row}>
              <th scope="row">{part}</th>
              {cells.map((cell, i) => (
                <td key={i} class={cell.verdict} data-verdict={cell.verdict}>
                  <span class="outcome">
                    <Sign name={SIGNS[cell.verdict]} /> {cell.words}
                  </span>
                  {cell.more === "" ? null : <span class="note">{cell.more}</span>}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
