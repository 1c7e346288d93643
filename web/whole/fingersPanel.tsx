/**
 * The fingers that the shop owns: widths and how many of each. Walls stand in the gaps between fingers, so a box is only as
 * good as its set.
 */
import { Field } from "../fields/field.tsx";
import { TakeAway } from "../fields/takeAway.tsx";
import { usePage } from "../page.ts";
import { usualFingers, without } from "../store/wholeEdits.ts";

const PATH = ["brake", "clamp", "fingers"] as const;

export function FingersPanel() {
  const { store, snapshot } = usePage();
  const { file } = snapshot;
  const { fingers } = file.brake.clamp;
  const put = (next: unknown, did: string) => store.set(PATH, next, did);
  return (
    <section class="panel" aria-labelledby="fingers-heading">
      <h2 id="fingers-heading">Fingers you own</h2>
      <p class="hint">
        {fingers
          ? "Measure each width: a hair counts where a wall stands beside it."
          : "No fingers are given: one clamp runs over the length of the brake, and no wall can stand beside it."}
      </p>
      {fingers ? (
        <ul class="fingers">
          {fingers.map((_, i) => (
            <li key={i} class="row tight">
              <Field label={`Width ${i + 1}`} path={[...PATH, i, "width"]} kind="length" />
              <Field label={`How many of ${i + 1}`} path={[...PATH, i, "count"]} kind="factor" />
              <TakeAway
                what={`width ${i + 1}`}
                onClick={() => store.replace((now) => without(now, [...PATH, i]), "take a finger width away")}
              />
            </li>
          ))}
        </ul>
      ) : null}
      <div class="row">
        {fingers ? (
          <>
            <button
              type="button"
              onClick={() => put([...fingers, { width: "", count: 1 }], "add a finger width")}
            >
              Add a width
            </button>
            <button type="button" onClick={() => put(undefined, "use one clamp")}>
              No fingers, one clamp
            </button>
          </>
        ) : (
          <button type="button" onClick={() => put(usualFingers(file.units), "use fingers")}>
            Use fingers
          </button>
        )}
      </div>
      <div class="fields">
        {fingers ? (
          <Field
            label="Longest bare length"
            path={["brake", "clamp", "fingerGap"]}
            kind="length"
            optional={file.units === "in" ? "1/8" : "3"}
            note="Bend line under no finger that still folds straight"
          />
        ) : (
          <Field
            label="Length of the clamp"
            path={["brake", "clamp", "length"]}
            kind="length"
            optional="the brake’s"
          />
        )}
      </div>
    </section>
  );
}
