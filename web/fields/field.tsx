/**
 * One figure of the job: label, box, the reading echoed below it, and one line that says what would be right.
 * What is typed is never changed by the page; a wrong figure stays as typed.
 */
import { useRef } from "preact/hooks";
import { pathText } from "../../src/jobFile/problem.ts";
import { usePage } from "../page.ts";
import { getAt, type JobFile, type KeyPath, type Typed } from "../store/jobFile.ts";
import { FractionKeys } from "./fractionKeys.tsx";
import { asTyped, echo, type Kind } from "./typed.ts";

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
  const id = `field-${path.join("-")}`;
  const box = useRef<HTMLInputElement>(null);
  const value = through ? through.show(snapshot.file) : getAt(snapshot.file, path);
  const problem = useProblem(path);
  const text = value === undefined ? "" : String(value);
  const reading = problem ? "" : echo(value, kind, snapshot.file.units);
  const below = [problem ? `${id}-p` : "", reading ? `${id}-e` : "", note ? `${id}-n` : ""]
    .filter(Boolean)
    .join(" ");

  const type = (typed: string) => {
    const next =
      optional !== undefined && typed.trim() === "" ? undefined : kind === "words" ? typed : asTyped(typed);
    const did = `change ${label.toLowerCase()}`;
    if (through) store.type((file) => through.put(file, asTyped(typed)), did, label);
    else store.set(path, next, did, true);
  };
  const fractions = snapshot.file.units === "in" && (kind === "length" || kind === "thickness");

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
        {fractions ? <FractionKeys label={label} box={box} onType={type} /> : null}
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
