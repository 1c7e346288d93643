/**
 * The shelf of brakes at the head of the brake's panel: which one the job lies on, whether it is kept as it stands, and
 * the list to pick from, copy, carry to another browser or take away.
 */
import { brakeInUnit } from "../../src/jobFile/inUnit.ts";
import { Pick } from "../fields/choice.tsx";
import { usePage } from "../page.ts";
import {
  brakeOf,
  brakeStands,
  isGuess,
  withBrakeCopied,
  withKept,
  withKeptBeside,
  withoutBrake,
  withPicked,
} from "../store/brakeShelf.ts";
import { openJob, type ShelfBrake } from "../store/shelf.ts";
import { BrakeFiles } from "./brakeFiles.tsx";
import { Sign } from "./sign.tsx";

const KINDS = { finger: "finger", bar: "clamp bar", profile: "own profile" } as const;
/** The job's brake where it is not on the shelf. */
const OWN = "";

/** What is known of a brake of the shelf, for its line in the list. */
function about({ brake, kept, came }: ShelfBrake): string {
  const measured = brake.measured ? `measured ${brake.measured}` : kept ? "no day of measuring" : null;
  return [KINDS[brake.clamp.type], measured, came].filter(Boolean).join(", ");
}

/** How the job's brake stands to the shelf, and what that means for the person. */
function standsWords(
  stands: ReturnType<typeof brakeStands>,
  guess: boolean,
  entry: ShelfBrake | undefined,
): string {
  if (stands === "not kept" && guess)
    return "Figures to start with: measure yours, the guide below shows how.";
  if (stands === "not kept")
    return "These figures stay with this job. Keep the brake, and every new job starts with it.";
  if (stands === "changed")
    return `Changed since you kept ${entry?.brake.name ?? "it"}. The kept figures are safe.`;
  return entry?.brake.measured
    ? `Kept on your shelf, measured ${entry.brake.measured}.`
    : "Kept on your shelf. Say below on which day you measured it.";
}

export function BrakeShelfPanel() {
  const { store, snapshot } = usePage();
  const { shelf } = snapshot;
  const brakes = shelf.brakes ?? [];
  const job = openJob(shelf);
  const entry = brakeOf(shelf, job);
  const stands = brakeStands(shelf);
  const pick = (id: string) => {
    if (id !== OWN) store.reshelve((now) => withPicked(now, id), "pick a brake");
  };
  const options = [
    ...(entry
      ? []
      : [{ value: OWN, words: `${job.file.brake.name || "Brake without a name"}, this job’s own` }]),
    ...brakes.map(({ id, brake }) => ({ value: id, words: brake.name })),
  ];
  const keep = (words: string) => (
    <button type="button" onClick={() => store.reshelve(withKept, "keep the brake")}>
      {words}
    </button>
  );
  return (
    <div class="brake-shelf">
      {brakes.length > 0 ? (
        <div class="fields">
          <Pick label="Brake of this job" options={options} value={entry?.id ?? OWN} onChoose={pick} />
        </div>
      ) : null}
      <p class={`hint${stands === "not kept" && isGuess(job.file) ? " guess" : ""}`} role="status">
        {standsWords(stands, isGuess(job.file), entry)}
      </p>
      <div class="row">
        {stands === "not kept" ? keep("Keep this brake") : null}
        {stands === "changed" && entry ? (
          <>
            {keep("Keep the changes")}
            <button type="button" onClick={() => store.reshelve(withKeptBeside, "keep the brake as another")}>
              Keep as another brake
            </button>
            <button
              type="button"
              onClick={() =>
                store.set(
                  ["brake"],
                  brakeInUnit(entry.brake, entry.units, job.file.units),
                  "go back to the brake as kept",
                )
              }
            >
              Back to it as kept
            </button>
          </>
        ) : null}
      </div>
      <details class="more">
        <summary>Shelf of brakes: {brakes.length === 0 ? "empty yet" : brakes.length}</summary>
        <ul class="brakes">
          {brakes.map((one) => (
            <li key={one.id} class={one === entry ? "on" : ""}>
              <button type="button" class="job" aria-pressed={one === entry} onClick={() => pick(one.id)}>
                <span>
                  {one.brake.name} <span class="note">{about(one)}</span>
                </span>
              </button>
              <button
                type="button"
                aria-label={`Copy the brake ${one.brake.name}`}
                onClick={() => store.reshelve((now) => withBrakeCopied(now, one.id), "copy a brake")}
              >
                Copy
              </button>
              <button
                type="button"
                class="quiet"
                aria-label={`Take the brake ${one.brake.name} away`}
                onClick={() => store.reshelve((now) => withoutBrake(now, one.id), "take a brake away")}
              >
                <Sign name="cross" />
              </button>
            </li>
          ))}
        </ul>
        <BrakeFiles />
      </details>
    </div>
  );
}
