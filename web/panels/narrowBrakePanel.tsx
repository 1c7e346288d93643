/**
 * A narrow brake to make for this part: how thick its clamp bar may be, the drawing, what to buy and in which order to
 * make it. Designed on asking; what is shown always belongs to the part as it stands.
 */
import { useState } from "preact/hooks";
import { usePage } from "../page.ts";
import { printPages } from "../paper/printPages.ts";
import { adopt } from "../store/adopt.ts";
import { fileName, fileText, type PartFile } from "../store/jobFile.ts";
import type { NarrowBrakePlans } from "../worker/messages.ts";
import { ListTable } from "./listTable.tsx";
import { Picture } from "./picture.tsx";

const LIMIT_MS = 60_000;
const CUT_HEADS = ["count", "piece", "stock", "length", "work"];
const HARDWARE_HEADS = ["count", "item", "size", "remark"];

interface Shown {
  readonly part: PartFile;
  readonly units: "mm" | "in";
  readonly plans: NarrowBrakePlans | null;
  /** A sentence where there is nothing to show. */
  readonly sentence: string | null;
}

const NO_BAR =
  "No clamp bar makes this part: none that is thin enough to clear is strong and stiff enough, or the part meets itself or the holder.";

export function NarrowBrakePanel() {
  const { store, snapshot, standing, asker } = usePage();
  const { file } = snapshot;
  const [busy, setBusy] = useState(false);
  const [shown, setShown] = useState<Shown | null>(null);
  if (standing.answer === null) return null;
  const fresh = shown?.part === file.part && shown.units === file.units ? shown : null;

  const design = async () => {
    setBusy(true);
    const reply = await asker.askOnce({ kind: "narrowBrake", text: fileText(file) }, LIMIT_MS);
    setBusy(false);
    const of = { part: file.part, units: file.units };
    if (reply?.kind === "narrowBrake")
      setShown({ ...of, plans: reply.plans, sentence: reply.plans ? null : NO_BAR });
    else if (reply?.kind === "problems")
      setShown({ ...of, plans: null, sentence: "Put the figures of the job right first." });
    else if (reply?.kind === "failed") setShown({ ...of, plans: null, sentence: reply.sentence });
    else setShown({ ...of, plans: null, sentence: "It was not finished: press again." });
  };
  const putOn = (plans: NarrowBrakePlans) => {
    const adopted = adopt(plans.file);
    if (adopted.ok) store.replace(() => adopted.file, "put the part on the narrow brake");
  };

  return (
    <section class="panel" aria-labelledby="narrow-heading">
      <h2 id="narrow-heading">Narrow brake</h2>
      <p class="hint">
        A small brake to make yourself, with a clamp bar thin enough for this part and stiff enough to hold
        it.
      </p>
      <div class="row">
        <button type="button" disabled={busy || standing.problems.length > 0} onClick={() => void design()}>
          Design a narrow brake for this part
        </button>
      </div>
      <div role="status" class="narrow">
        {busy ? <p class="hint">Trying bars…</p> : null}
        {!busy && shown && !fresh ? (
          <p class="hint">The part has changed since: design its brake again.</p>
        ) : null}
        {fresh?.sentence ? <p>{fresh.sentence}</p> : null}
        {fresh?.plans ? (
          <p>
            <strong>{fresh.plans.window}</strong> {fresh.plans.notes.join(" ")}
          </p>
        ) : null}
      </div>
      {fresh?.plans ? (
        <Plans plans={fresh.plans} name={file.part.name} onPutOn={() => putOn(fresh.plans!)} />
      ) : null}
    </section>
  );
}

function Plans({
  plans,
  name,
  onPutOn,
}: {
  readonly plans: NarrowBrakePlans;
  readonly name: string;
  readonly onPutOn: () => void;
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
            {plans.file ? (
              <button type="button" onClick={onPutOn}>
                Put the part on it
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
