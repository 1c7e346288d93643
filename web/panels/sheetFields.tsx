/**
 * How the blank lies in the sheet and what is cut out of it: the grain, and the cut-outs as a table of places.
 */
import { Choice } from "../fields/choice.tsx";
import { Field, useProblem } from "../fields/field.tsx";
import { TakeAway } from "../fields/takeAway.tsx";
import { asTyped } from "../fields/typed.ts";
import { usePage } from "../page.ts";
import { newCutOut } from "../store/cutOuts.ts";
import type { CutOutFile, Typed } from "../store/jobFile.ts";

const GRAINS = [
  { value: "unsaid", words: "Not said" },
  { value: "across", words: "Across the bends" },
  { value: "along", words: "Along the bends" },
  { value: "angle", words: "At an angle" },
] as const;
type GrainChoice = (typeof GRAINS)[number]["value"];

/** Halfway: neither across nor along until the person says. */
const FIRST_ANGLE = 45;

export function GrainFields() {
  const { store, snapshot } = usePage();
  const { grain } = snapshot.file.part;
  const chosen: GrainChoice =
    grain === undefined ? "unsaid" : grain === "across" || grain === "along" ? grain : "angle";
  const choose = (next: GrainChoice) =>
    store.set(
      ["part", "grain"],
      next === "unsaid" ? undefined : next === "angle" ? FIRST_ANGLE : next,
      "say how the grain runs",
    );
  return (
    <div class="row spread">
      <Choice label="Grain of the sheet" options={GRAINS} value={chosen} onChoose={choose} />
      {chosen === "angle" ? (
        <Field
          label="Grain, from the bend lines"
          unit="°"
          path={["part", "grain"]}
          kind="angle"
          note="0 along them, 90 across"
        />
      ) : null}
    </div>
  );
}

const PLACES = [
  { key: "across", at: 0, head: "from", label: "across the bends from" },
  { key: "across", at: 1, head: "to", label: "across the bends to" },
  { key: "along", at: 0, head: "from", label: "along the bends from" },
  { key: "along", at: 1, head: "to", label: "along the bends to" },
] as const;

export function CutOutTable() {
  const { store, snapshot, standing } = usePage();
  const { part, units } = snapshot.file;
  const cutOuts = part.cutOuts ?? [];
  const problem = useProblem(["part", "cutOuts"]);
  const lengthProblem = useProblem(["part", "length"]);
  const put = (next: readonly CutOutFile[], did: string) =>
    store.set(["part", "cutOuts"], next.length === 0 ? undefined : next, did);
  const type = (row: number, { key, at }: (typeof PLACES)[number], typed: Typed) =>
    store.set(["part", "cutOuts", row, key, at], typed, `change cut-out ${row + 1}`, true);
  const isWrong = (row: number, { key, at }: (typeof PLACES)[number]) =>
    standing.problems.some(
      ({ path }) =>
        path === `part.cutOuts[${row}].${key}[${at}]` ||
        path === `part.cutOuts[${row}].${key}` ||
        path === `part.cutOuts[${row}]`,
    );
  return (
    <>
      {cutOuts.length === 0 ? null : (
        <div class="corners cut-outs">
          <table>
            <caption>
              Cut-outs of the blank<span class="unit"> {units}</span>
            </caption>
            <thead>
              <tr>
                <th scope="col" rowSpan={2}>
                  no.
                </th>
                <th scope="colgroup" colSpan={2}>
                  across, from the edge of flat 1
                </th>
                <th scope="colgroup" colSpan={2}>
                  along the bends
                </th>
                <th scope="col" rowSpan={2}>
                  <span class="heard">change</span>
                </th>
              </tr>
              <tr>
                {PLACES.map((place) => (
                  <th key={place.label} scope="col">
                    {place.head}
                  </th>
                ))}
              </tr>
            </thead>
            <tbody>
              {cutOuts.map((cutOut, row) => (
                <tr key={row}>
                  <th scope="row">{row + 1}</th>
                  {PLACES.map((place) => (
                    <td key={place.label}>
                      <input
                        type="text"
                        inputMode={place.at === 0 ? "decimal" : "text"}
                        autocomplete="off"
                        aria-label={`Cut-out ${row + 1}, ${place.label}`}
                        aria-invalid={isWrong(row, place) ? "true" : undefined}
                        maxLength={80}
                        value={String(cutOut[place.key][place.at])}
                        onInput={(event) => type(row, place, asTyped(event.currentTarget.value))}
                      />
                    </td>
                  ))}
                  <td class="row tight">
                    <TakeAway
                      what={`cut-out ${row + 1}`}
                      onClick={() => put(cutOuts.toSpliced(row, 1), `take cut-out ${row + 1} away`)}
                    />
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
          {problem ? <p class="below problem">{problem}</p> : null}
          {lengthProblem && part.length === undefined ? (
            <p class="below problem">
              Give the length along the bends, under Part: cut-outs are measured along it.
            </p>
          ) : null}
          <p class="hint">
            “end” stands for the other end. Where a bend runs into a cut-out it gets a relief hole.
          </p>
        </div>
      )}
      <div class="row">
        <button type="button" onClick={() => put([...cutOuts, newCutOut(units)], "add a cut-out")}>
          Add a cut-out
        </button>
      </div>
    </>
  );
}
