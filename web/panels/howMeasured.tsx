/**
 * How the part was measured, beyond its flats one by one: an overall size that gives one flat, how closed bends are dimensioned,
 * and by which rule bends are allowed for.
 */
import { useState } from "preact/hooks";
import { finishedPart } from "../../src/jobFile/job.ts";
import { writtenLength } from "../../src/jobFile/writtenLength.ts";
import { overallSize } from "../../src/part/overallSize.ts";
import { Choice, Pick } from "../fields/choice.tsx";
import { Field } from "../fields/field.tsx";
import { usePage } from "../page.ts";
import { measuredFlats } from "../stage/measured.ts";
import { angleFromFlat } from "../store/bendKinds.ts";
import { chainFlats, fileFlat, inChain } from "../store/chain.ts";
import { isRest, withRest } from "../store/flats.ts";

const CLOSED = [
  { value: "corner", words: "To the corner" },
  { value: "tangent", words: "Over the bend" },
] as const;
const ALLOWANCES = [
  { value: "kFactor", words: "K-factor" },
  { value: "din6935", words: "DIN 6935" },
] as const;

export function HowMeasured() {
  const { store, snapshot, standing } = usePage();
  const { file } = snapshot;
  const { part, units } = file;
  const rest = part.flats.findIndex(isRest);
  const { job } = standing;
  const known = job && finishedPart(job).flatsMm.length === chainFlats(part) ? job : null;
  const flats = part.flats.map((_, i) => ({ value: `${i}`, words: `flat ${inChain(part, i) + 1}` }));
  const choose = (value: string) => {
    if (known === null) return;
    const flat = value === "none" ? null : Number(value);
    const made = finishedPart(known);
    const sizeMm = overallSize(made, { flat: inChain(part, flat ?? rest) }).nominalMm;
    const flatMm = rest < 0 ? 0 : restMm(rest);
    store.replace(
      (now) =>
        withRest(now, flat, { size: writtenLength(sizeMm, units), rest: writtenLength(flatMm, units) }),
      flat === null ? "measure every flat" : `work flat ${inChain(part, flat) + 1} out`,
    );
  };
  /** The length of the flat that was left over, as the part's other flats are measured. */
  const restMm = (index: number) => {
    if (known === null) return 0;
    const flat = inChain(part, index);
    const [low = 0, high = 0] = measuredFlats(file, known)[flat]?.pastMm ?? [];
    return (finishedPart(known).flatsMm[flat] ?? 0) + low + high;
  };
  // Open where a job says something of it; folded and unfolded by hand from then on.
  const [begun] = useState(rest >= 0 || part.closedBends !== undefined || part.allowance !== undefined);
  const closed = part.bends.some((bend) => Number(angleFromFlat(bend)) > 90);
  return (
    <details class="more" open={begun}>
      <summary>Overall size, closed bends, allowance</summary>
      <div class="fields">
        <Pick
          label="Work out from an overall size"
          options={[{ value: "none", words: "no flat: all are measured" }, ...flats]}
          value={rest < 0 ? "none" : `${rest}`}
          onChoose={choose}
        />
        {part.overall ? (
          <>
            <Field
              label="Size over everything"
              path={["part", "overall", "size"]}
              kind="length"
              note="Over the outside of the finished part"
            />
            <Pick
              label="Measured along"
              options={flats}
              value={`${fileFlat(part, part.overall.along - 1)}`}
              onChoose={(value) =>
                store.set(
                  ["part", "overall", "along"],
                  inChain(part, Number(value)) + 1,
                  "say where the overall size was measured",
                )
              }
            />
          </>
        ) : null}
      </div>
      <div class="row spread">
        {closed || part.closedBends !== undefined ? (
          <div>
            <Choice
              label="Bends past 90°, flats measured"
              options={CLOSED}
              value={part.closedBends ?? "corner"}
              onChoose={(value) =>
                store.set(
                  ["part", "closedBends"],
                  value === "corner" ? undefined : value,
                  "change how closed bends are measured",
                )
              }
            />
            <ClosedPicture to={part.closedBends ?? "corner"} />
          </div>
        ) : null}
        <Choice
          label="Bends allowed for by"
          options={ALLOWANCES}
          value={part.allowance ?? "kFactor"}
          onChoose={(value) =>
            store.set(
              ["part", "allowance"],
              value === "kFactor" ? undefined : value,
              "change the bend allowance",
            )
          }
        />
      </div>
    </details>
  );
}

/** A bend past square, dimensioned to where its outsides would meet or to its outermost point. */
function ClosedPicture({ to }: { readonly to: "corner" | "tangent" }) {
  const at = to === "corner" ? 112 : 86;
  return (
    <svg class="edge-picture" viewBox="0 0 124 64" aria-hidden="true">
      <path class="body" d="M6 48H66Q76 48 70 40L42 12L50 4L80 34Q92 48 72 58H6Z" />
      {to === "corner" ? <path class="gauge" d="M72 58H112L80 34" /> : null}
      <path class="dim" d={`M6 44V20M${at} 62V20M6 26H${at}`} />
    </svg>
  );
}
