/**
 * A closed profile as a table of corners: x, y and an optional corner radius. For beds, leaves, frames and clamps
 * of any shape; the corners run round the outline, the last joins the first.
 */
import { pathText } from "../../src/jobFile/problem.ts";
import { usePage } from "../page.ts";
import { Sign } from "../panels/sign.tsx";
import { getAt, type KeyPath, type Profile, type Typed, type Vertex } from "../store/jobFile.ts";
import { useProblem } from "./field.tsx";
import { TakeAway } from "./takeAway.tsx";
import { asTyped } from "./typed.ts";

const COLUMNS = ["x", "y", "radius"] as const;

export function CornerTable({
  label,
  path,
  onRemove,
}: {
  readonly label: string;
  readonly path: KeyPath;
  readonly onRemove?: () => void;
}) {
  const { store, snapshot, standing } = usePage();
  const profile = (getAt(snapshot.file, path) ?? []) as Profile;
  const problem = useProblem(path);
  const put = (next: Profile, did: string) => store.set(path, next, did);

  const type = (row: number, column: number, text: string) => {
    const old = profile[row]!;
    const cells: (Typed | undefined)[] = [old[0], old[1], old[2]];
    cells[column] = text.trim() === "" && column === 2 ? undefined : asTyped(text);
    const next = cells.filter((cell) => cell !== undefined) as unknown as Vertex;
    store.set([...path, row], next, `change a corner of ${label.toLowerCase()}`, true);
  };
  const addAfter = (row: number) => {
    const here = profile[row]!;
    const next = profile[(row + 1) % profile.length]!;
    const between = (k: 0 | 1): Typed => {
      const middle = (Number(here[k]) + Number(next[k])) / 2;
      return Number.isFinite(middle) ? Number(middle.toFixed(4)) : here[k];
    };
    put(profile.toSpliced(row + 1, 0, [between(0), between(1)]), `add a corner to ${label.toLowerCase()}`);
  };

  return (
    <div class="corners">
      <table>
        <caption>
          {label}
          <span class="unit"> {snapshot.file.units}</span>
        </caption>
        <thead>
          <tr>
            <th scope="col">corner</th>
            {COLUMNS.map((name) => (
              <th key={name} scope="col">
                {name}
              </th>
            ))}
            <th scope="col">
              <span class="heard">change</span>
            </th>
          </tr>
        </thead>
        <tbody>
          {profile.map((vertex, row) => (
            <tr key={row}>
              <th scope="row">{row + 1}</th>
              {COLUMNS.map((name, column) => {
                const at = pathText([...path, row] as readonly PropertyKey[]);
                const wrong = standing.problems.some((p) => p.path === `${at}[${column}]` || p.path === at);
                return (
                  <td key={name}>
                    <input
                      type="text"
                      inputMode="decimal"
                      autocomplete="off"
                      aria-label={`${label}, corner ${row + 1}, ${name}`}
                      aria-invalid={wrong ? "true" : undefined}
                      maxLength={80}
                      value={vertex[column] === undefined ? "" : String(vertex[column])}
                      onInput={(event) => type(row, column, event.currentTarget.value)}
                    />
                  </td>
                );
              })}
              <td class="row tight">
                <button
                  type="button"
                  class="quiet"
                  aria-label={`Add a corner after corner ${row + 1}`}
                  onClick={() => addAfter(row)}
                >
                  <Sign name="plus" />
                </button>
                <TakeAway
                  what={`corner ${row + 1}`}
                  disabled={profile.length < 4}
                  onClick={() =>
                    put(profile.toSpliced(row, 1), `take a corner of ${label.toLowerCase()} away`)
                  }
                />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {problem ? <p class="below problem">{problem}</p> : null}
      {onRemove ? (
        <button type="button" onClick={onRemove}>
          Take {label.toLowerCase()} away
        </button>
      ) : null}
    </div>
  );
}
