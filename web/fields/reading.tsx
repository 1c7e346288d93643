/**
 * A figure that is not a key of the job file: label, box, the reading echoed below, and one line on what would be right.
 */
import { useRef } from "preact/hooks";
import type { LengthUnit } from "../../src/units/length.ts";
import type { Typed } from "../store/jobFile.ts";
import { SignKeys } from "./signKeys.tsx";
import { asTyped, echo } from "./typed.ts";

export function ReadingField({
  label,
  value,
  units,
  usual,
  problem,
  onType,
}: {
  readonly label: string;
  readonly value: Typed;
  readonly units: LengthUnit;
  /** Shown in the empty box: what then holds. */
  readonly usual?: string;
  readonly problem: string | null;
  readonly onType: (value: Typed) => void;
}) {
  const box = useRef<HTMLInputElement>(null);
  const id = `reading-${label.toLowerCase().replaceAll(" ", "-")}`;
  const said = problem ?? echo(value, "length", units);
  return (
    <div class={`field kind-length${problem ? " wrong" : ""}`}>
      <label for={id}>{label}</label>
      <span class="boxes">
        <input
          ref={box}
          id={id}
          type="text"
          inputMode="decimal"
          autocomplete="off"
          spellcheck={false}
          maxLength={80}
          value={String(value)}
          placeholder={usual ?? ""}
          aria-invalid={problem ? "true" : undefined}
          aria-describedby={said ? `${id}-b` : undefined}
          onInput={(event) => onType(asTyped(event.currentTarget.value))}
        />
        <SignKeys
          label={label}
          box={box}
          onType={(text) => onType(asTyped(text))}
          fractions={units === "in"}
        />
      </span>
      {said ? (
        <span class={`below ${problem ? "problem" : "echo"}`} id={`${id}-b`}>
          {said}
        </span>
      ) : null}
    </div>
  );
}
