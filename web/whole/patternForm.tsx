/**
 * A drawn flat pattern: a table of its bends with their angles, turns and radii; the outline stays as drawn.
 */
import { Field } from "../fields/field.tsx";
import { usePage } from "../page.ts";

export function PatternForm() {
  const { store, snapshot } = usePage();
  const { pattern } = snapshot.file.part;
  if (!pattern) return null;
  return (
    <ol class="strip" aria-label="Bends of the pattern, numbered as on the plan">
      {pattern.bends.map(({ turn }, i) => {
        const path = ["part", "pattern", "bends", i] as const;
        const other = turn === "up" ? "down" : "up";
        return (
          <li key={i} class="bend">
            <Field label={`Bend ${i + 1}`} unit="°" path={[...path, "angle"]} kind="angle" />
            <div class="row tight">
              <button
                type="button"
                class="turn"
                aria-label={`Turn bend ${i + 1} ${other}; it turns ${turn}`}
                onClick={() => store.set([...path, "turn"], other, `turn bend ${i + 1} ${other}`)}
              >
                Turns {turn}
              </button>
            </div>
            <Field
              label={`Inside radius of bend ${i + 1}`}
              path={[...path, "insideRadius"]}
              kind="length"
              optional="the part’s"
            />
          </li>
        );
      })}
    </ol>
  );
}
