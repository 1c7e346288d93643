/**
 * What a hand still has to do once the part is off the brake, as the last of the steps: to what angle the leaf brings the
 * bend, over what it is closed, and the way back to the leaf's doing it all.
 */
import { handFinishWords } from "../../src/words/handFinishWords.ts";
import { Field } from "../fields/field.tsx";
import { usePage } from "../page.ts";
import { Sign } from "./sign.tsx";

export function HandFinishes() {
  const { store, snapshot, standing } = usePage();
  const { file } = snapshot;
  const listed = file.finishByHand ?? [];
  const { answer, job } = standing;
  if (listed.length === 0 || answer === null || job === null) return null;
  const leaveOut = (index: number) => {
    const rest = listed.toSpliced(index, 1);
    store.set(["finishByHand"], rest.length > 0 ? rest : undefined, "let the leaf make the whole bend");
  };
  return (
    <ul class="by-hand" aria-label="By hand, off the brake">
      {listed.map(({ bend }, i) => {
        const told = answer.finishByHand?.find((one) => one.bend === bend);
        return (
          <li key={bend} class="step">
            <span class="grip" aria-hidden="true">
              <Sign name="hand" />
            </span>
            <div class="what">
              <p>
                <strong>By hand, off the brake.</strong> {told ? handFinishWords(told, job.units) : ""} The
                part’s dimensions above are those once it is closed.
              </p>
              <div class="fields">
                <Field
                  label={`The leaf leaves bend ${bend} at`}
                  unit="°"
                  path={["finishByHand", i, "to"]}
                  kind="angle"
                />
                <Field
                  label={`Filler bar for bend ${bend}`}
                  path={["finishByHand", i, "filler"]}
                  kind="length"
                  optional="a straight edge"
                />
              </div>
            </div>
            <span class="row tight">
              <button type="button" onClick={() => leaveOut(i)}>
                Let the leaf make all of bend {bend}
              </button>
            </span>
          </li>
        );
      })}
    </ul>
  );
}
