/**
 * A narrow brake to make for the parts that are ticked: how thick its clamp bar may be, the drawing, what to buy and in
 * which order to make it. Designed on asking; what is shown always belongs to the parts and wishes as they stand.
 */
import { useState } from "preact/hooks";
import { usePage } from "../page.ts";
import { adopt } from "../store/adopt.ts";
import { withArrivals } from "../store/brakeShelf.ts";
import { fileText, type JobFile } from "../store/jobFile.ts";
import type { ShelfJob } from "../store/shelf.ts";
import { asWishes, type Wishes } from "../store/wishes.ts";
import type { NarrowBrakePlans } from "../worker/messages.ts";
import { BrakePlans } from "./brakePlans.tsx";
import { WishFields } from "./wishFields.tsx";

const LIMIT_MS = 110_000;

interface Shown {
  /** What it was asked for. */
  readonly jobs: readonly ShelfJob[];
  readonly wishes: Wishes | undefined;
  readonly plans: NarrowBrakePlans | null;
  /** A sentence where there is nothing to show. */
  readonly sentence: string | null;
}

const nameOf = (job: ShelfJob) => job.file.part.name || "Part without a name";

/** The same parts in the same unit, whatever brakes they lie on now. */
function sameParts(one: readonly ShelfJob[], other: readonly ShelfJob[]): boolean {
  return (
    one.length === other.length &&
    one.every(
      ({ id, file }, i) =>
        other[i]?.id === id && other[i].file.part === file.part && other[i].file.units === file.units,
    )
  );
}

export function NarrowBrakePanel() {
  const { store, snapshot, standing, asker } = usePage();
  const { shelf } = snapshot;
  const [busy, setBusy] = useState(false);
  const [shown, setShown] = useState<Shown | null>(null);
  const [more, setMore] = useState<ReadonlySet<string>>(new Set());
  if (standing.answer === null) return null;
  // The open part is always among them, and stands first: its unit is that of the plans.
  const open = shelf.jobs.find(({ id }) => id === shelf.openId) ?? shelf.jobs[0]!;
  const others = shelf.jobs.filter((job) => job !== open);
  const jobs = [open, ...others.filter(({ id }) => more.has(id))];
  const fresh = shown && shown.wishes === shelf.wishes && sameParts(shown.jobs, jobs) ? shown : null;
  const wishes = asWishes(shelf.wishes ?? {});
  const one = jobs.length === 1;

  const design = async () => {
    if (wishes === null) return;
    setBusy(true);
    const texts = jobs.map((job) => fileText(job.file));
    const reply = await asker.askOnce({ kind: "narrowBrake", texts, wishes }, LIMIT_MS);
    setBusy(false);
    const of = { jobs, wishes: shelf.wishes, plans: null };
    if (reply?.kind === "narrowBrake") setShown({ ...of, plans: reply.plans, sentence: null });
    else if (reply?.kind === "problems")
      setShown({ ...of, sentence: `Put the figures right first. ${reply.problems[0]?.sentence ?? ""}` });
    else if (reply?.kind === "failed") setShown({ ...of, sentence: reply.sentence });
    else setShown({ ...of, sentence: "It was not finished: press again." });
  };
  const putOn = (plans: NarrowBrakePlans) => {
    const files = new Map<string, JobFile>();
    for (const [i, job] of jobs.entries()) {
      const adopted = adopt(plans.files[i]);
      if (adopted.ok) files.set(job.id, adopted.file);
    }
    const came = { came: "a narrow brake to make" };
    store.reshelve(
      (now) => withArrivals(now, files, came),
      `put the ${files.size === 1 ? "part" : "parts"} on the narrow brake`,
    );
  };
  const plans = fresh?.plans ?? null;
  const made = plans?.makes.length ?? 0;

  return (
    <section class="panel" aria-labelledby="narrow-heading">
      <h2 id="narrow-heading">Narrow brake</h2>
      <p class="hint">
        A small brake to make yourself, with a clamp bar thin enough for the part and stiff enough to hold it.
      </p>
      {others.length === 0 ? null : (
        <fieldset class="ticks">
          <legend>Parts that it must make, beside {nameOf(open)}</legend>
          {others.map((job) => (
            <label key={job.id} class="tick">
              <input
                type="checkbox"
                checked={more.has(job.id)}
                onChange={(event) => {
                  const next = new Set(more);
                  if (event.currentTarget.checked) next.add(job.id);
                  else next.delete(job.id);
                  setMore(next);
                }}
              />
              <span>{nameOf(job)}</span>
            </label>
          ))}
        </fieldset>
      )}
      <WishFields />
      <div class="row">
        <button
          type="button"
          disabled={busy || wishes === null || standing.problems.length > 0}
          onClick={() => void design()}
        >
          {one
            ? "Design a narrow brake for this part"
            : `Design a narrow brake for these ${jobs.length} parts`}
        </button>
      </div>
      <div role="status" class="narrow">
        {busy ? <p class="hint">Trying bars…</p> : null}
        {!busy && shown && !fresh ? (
          <p class="hint">
            {shown.wishes === shelf.wishes ? "The part has changed since" : "A wish has changed since"}:
            design its brake again.
          </p>
        ) : null}
        {fresh?.sentence ? <p>{fresh.sentence}</p> : null}
        {plans?.shown ? (
          <p>
            <strong>{plans.shown.window}</strong> {plans.shown.notes.join(" ")}
          </p>
        ) : null}
        {plans && !one && made > 0 ? (
          <p>It makes {plans.makes.map((i) => nameOf(jobs[i]!)).join(", ")}.</p>
        ) : null}
        {plans?.left.map(({ part, because }) => (
          <p key={part}>
            {one ? "" : `${nameOf(jobs[part]!)}: `}
            {because}
          </p>
        ))}
      </div>
      {plans?.shown ? (
        <BrakePlans
          plans={plans.shown}
          name={nameOf(open)}
          onPutOn={made > 0 ? () => putOn(plans) : null}
          putOnWords={made > 1 ? `Put these ${made} parts on it` : "Put the part on it"}
        />
      ) : null}
    </section>
  );
}
