/**
 * Flats and bends as a strip of fields, flat 1 first. Each bend says its angle from flat and which way it turns
 * with the marked face up; overbend and an inside radius of its own fold away until wanted.
 */
import { Fragment } from "preact";
import { Field } from "../fields/field.tsx";
import { usePage } from "../page.ts";
import { flatsAfterRemoval, removeBend } from "../store/chainEdits.ts";
import { sizePath } from "../store/flats.ts";
import { movedSample } from "../store/sample.ts";
import { FlatEnds } from "./flatEnds.tsx";
import { Sign } from "./sign.tsx";

export function ChainStrip({ onMark }: { readonly onMark: (flat: number | null) => void }) {
  const { snapshot } = usePage();
  const { flats } = snapshot.file.part;
  return (
    <ol class="strip" aria-label="Flats and bends, in the order in which they lie on the sheet">
      {flats.map((_, i) => (
        <Fragment key={i}>
          <li class="flat" onFocusCapture={() => onMark(i)} onBlurCapture={() => onMark(null)}>
            <Field label={`Flat ${i + 1}`} path={sizePath(snapshot.file, i)} kind="length" />
            <FlatEnds index={i} />
          </li>
          {i < flats.length - 1 ? <BendItem index={i} /> : null}
        </Fragment>
      ))}
    </ol>
  );
}

function BendItem({ index }: { readonly index: number }) {
  const { store, snapshot } = usePage();
  const { file, sample } = snapshot;
  const bend = file.part.bends[index];
  if (bend === undefined) return null;
  const number = index + 1;
  const other = bend.turn === "up" ? "down" : "up";
  const only = file.part.bends.length < 2;
  return (
    <li class="bend">
      <Field label={`Bend ${number}`} unit="°" path={["part", "bends", index, "angle"]} kind="angle" />
      <div class="row tight">
        <button
          type="button"
          class={`turn ${bend.turn}`}
          aria-label={`Bend ${number} turns ${bend.turn}. Change to ${other}`}
          onClick={() => store.set(["part", "bends", index, "turn"], other, `turn bend ${number} ${other}`)}
        >
          <Sign name={bend.turn === "up" ? "bendUp" : "bendDown"} /> {bend.turn}
        </button>
        <button
          type="button"
          class="quiet"
          disabled={only}
          aria-label={`Take bend ${number} away, with flat ${number + 1}`}
          onClick={() =>
            store.copy(
              removeBend(file, index),
              sample ? movedSample(sample, flatsAfterRemoval(file.part.flats.length, index)) : undefined,
              `take bend ${number} away`,
            )
          }
        >
          <Sign name="cross" />
        </button>
      </div>
      <details class="more">
        <summary aria-label={`More of bend ${number}`}>more</summary>
        <Field
          label={`Overbend to, bend ${number}`}
          unit="°"
          path={["part", "bends", index, "overbend"]}
          kind="angle"
          optional="worked out"
        />
        <Field
          label={`Inside radius, bend ${number}`}
          path={["part", "bends", index, "insideRadius"]}
          kind="length"
          optional="the part’s"
        />
        <Field
          label={`Deduction, bend ${number}`}
          path={["part", "bends", index, "deduction"]}
          kind="length"
          optional="worked out"
          note="From a test strip: what the bend takes off the two flats"
        />
      </details>
    </li>
  );
}
