/**
 * One figure of the job: label, box, the reading echoed below it, and one line that says what would be right.
 * What is typed is never changed by the page; a wrong figure stays as typed.
 */
import { useRef, useState } from "preact/hooks";
import { pathText } from "../../src/jobFile/problem.ts";
import { usePage } from "../page.ts";
import { pathId } from "../store/flats.ts";
import { getAt, type JobFile, type KeyPath, type Typed } from "../store/jobFile.ts";
import { SignKeys } from "./signKeys.tsx";
import { echo, type Kind, valueTyped, writesComma } from "./typed.ts";

export interface FieldProps {
  readonly label: string;
  readonly path: KeyPath;
  readonly kind: Kind;
  /** An optional key: empty takes it away. `hint` says what then holds. */
  readonly optional?: string;
  /** Unit shown at the label's end. */
  readonly unit?: string;
  /** A line below on what this is, or that it is a guess. */
  readonly note?: string;
  readonly wide?: boolean;
  /** Where the figure is not one key as it stands (a depth kept as a negative corner): how it is shown and put back. */
  readonly through?: {
    readonly show: (file: JobFile) => Typed | undefined;
    readonly put: (file: JobFile, value: Typed) => JobFile;
  };
}

/** The problem at a key or inside it. */
export function useProblem(path: KeyPath): string | null {
  const { standing } = usePage();
  const at = pathText(path as readonly PropertyKey[]);
  const problem = standing.problems.find(
    (p) => p.path === at || p.path.startsWith(`${at}.`) || p.path.startsWith(`${at}[`),
  );
  return problem ? `It should be ${problem.allowed}.` : null;
}

export function Field({ label, path, kind, optional, unit, note, wide, through }: FieldProps) {
  const { store, snapshot } = usePage();
  const id = pathId(path);
  const box = useRef<HTMLInputElement>(null);
  const value = through ? through.show(snapshot.file) : getAt(snapshot.file, path);
  const problem = useProblem(path);
  const { material } = snapshot.file.part;
  const hand = {
    comma: writesComma(navigator.language),
    metal: typeof material === "string" ? material : material.name,
  };
  // What was typed stands in the box as long as it means what the file holds: a comma is not turned into a point.
  const [draft, setDraft] = useState<string | null>(null);
  const asDraft = draft !== null && value !== undefined && valueTyped(draft, kind, hand) === value;
  const text = asDraft ? draft : value === undefined ? "" : String(value);
  const reading = problem ? "" : echo(value, kind, snapshot.file.units);
  const below = [problem ? `${id}-p` : "", reading ? `${id}-e` : "", note ? `${id}-n` : ""]
    .filter(Boolean)
    .join(" ");

  const type = (typed: string) => {
    setDraft(typed);
    const read = valueTyped(typed, kind, hand);
    const next = optional !== undefined && typed.trim() === "" ? undefined : read;
    const did = `change ${label.toLowerCase()}`;
    if (through) store.type((file) => through.put(file, read), did, label);
    else store.set(path, next, did, true);
  };

  return (
    <div class={`field kind-${kind}${wide ? " wide" : ""}${problem ? " wrong" : ""}`}>
      <label for={id}>
        {label}
        {unit ? <span class="unit"> {unit}</span> : null}
      </label>
      <span class="boxes">
        <input
          ref={box}
          id={id}
          type="text"
          inputMode={kind === "words" ? "text" : "decimal"}
          autocomplete="off"
          spellcheck={false}
          maxLength={kind === "words" ? 200 : 80}
          value={text}
          placeholder={optional ?? ""}
          aria-invalid={problem ? "true" : undefined}
          aria-describedby={below || undefined}
          onInput={(event) => type(event.currentTarget.value)}
        />
        {kind === "words" ? null : (
          <SignKeys label={label} box={box} onType={type} fractions={snapshot.file.units === "in"} />
        )}
      </span>
      {problem ? (
        <span class="below problem" id={`${id}-p`}>
          {problem}
        </span>
      ) : null}
      {reading ? (
        <span class="below echo" id={`${id}-e`}>
          {reading}
        </span>
      ) : null}
      {note ? (
        <span class="below note" id={`${id}-n`}>
          {note}
        </span>
      ) : null}
    </div>
  );
}
