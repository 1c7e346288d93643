/**
 * The plans of a brake to be made: what stands against it, the drawing to look at, print and save, cut list, hardware,
 * order of making.
 */
import { usePage } from "../page.ts";
import { printPages } from "../paper/printPages.ts";
import { fileName } from "../store/jobFile.ts";
import type { ShownBrake } from "../worker/messages.ts";
import { ListTable } from "./listTable.tsx";
import { Picture } from "./picture.tsx";

const CUT_HEADS = ["count", "piece", "stock", "length", "work"];
const HARDWARE_HEADS = ["count", "item", "size", "remark"];

export function BrakePlans({
  plans,
  name,
  onPutOn,
  putOnWords,
}: {
  readonly plans: ShownBrake;
  readonly name: string;
  /** Null where nothing can be put on it. */
  readonly onPutOn: (() => void) | null;
  readonly putOnWords: string;
}) {
  const { save: saveFile } = usePage();
  const { drawing } = plans;
  const save = (as: "svg" | "dxf", text: string) =>
    saveFile(
      fileName(`${name} narrow brake`).replace(/json$/, as),
      text,
      as === "svg" ? "image/svg+xml" : "image/vnd.dxf",
    );
  return (
    <>
      {plans.problems.length > 0 ? (
        <ul class="warnings">
          {plans.problems.map((problem) => (
            <li key={problem}>Not yet right: {problem}</li>
          ))}
        </ul>
      ) : null}
      {drawing ? (
        <>
          <Picture svg={drawing.preview} words={drawing.sentence} name="Drawing of the narrow brake" fine />
          <div class="row">
            <button type="button" onClick={() => void printPages(drawing.pages)}>
              Print the plans
            </button>
            <button type="button" onClick={() => save("dxf", drawing.dxf)}>
              Narrow brake as DXF
            </button>
            <button type="button" onClick={() => save("svg", drawing.svg)}>
              Narrow brake at true size, SVG
            </button>
            {onPutOn ? (
              <button type="button" onClick={onPutOn}>
                {putOnWords}
              </button>
            ) : null}
          </div>
        </>
      ) : null}
      <ListTable caption="Cut list" heads={CUT_HEADS} rows={plans.cuts} wordy />
      <ListTable caption="Hardware" heads={HARDWARE_HEADS} rows={plans.hardware} wordy />
      {plans.lists.map(({ heading, lines }) =>
        lines.length === 0 ? null : (
          <details
            key={heading}
            class="more"
            open={heading === "Order of making" || heading === "Where this stops"}
          >
            <summary>{heading}</summary>
            <ol class="told">
              {lines.map((line) => (
                <li key={line}>{line}</li>
              ))}
            </ol>
          </details>
        ),
      )}
      <p class="note">{plans.cautions}</p>
    </>
  );
}
