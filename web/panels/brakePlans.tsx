/**
 * The plans of a brake to be made: what stands against it, the numbered picture, cut list, each piece and each step with its own
 * small drawing, files to print and save. Small screens get the picture drawn for them.
 */
import { useState } from "preact/hooks";
import { usePage } from "../page.ts";
import { printPages } from "../paper/printPages.ts";
import { fileName } from "../store/jobFile.ts";
import type { ShownBrake, ShownSketch } from "../worker/messages.ts";
import { ListTable } from "./listTable.tsx";
import { Picture } from "./picture.tsx";

const CUT_HEADS = ["no.", "count", "piece", "stock", "length", "work"];
/** Narrower than this a screen shows the small picture. */
const SMALL_SCREEN = "(max-width: 700px)";

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
  const { drawing } = plans;
  return (
    <>
      {plans.problems.length > 0 ? (
        <ul class="warnings">
          {plans.problems.map((problem) => (
            <li key={problem}>Not yet right: {problem}</li>
          ))}
        </ul>
      ) : null}
      {drawing ? <Pictures drawing={drawing} name={name} onPutOn={onPutOn} putOnWords={putOnWords} /> : null}
      <ListTable caption="Cut list" heads={CUT_HEADS} rows={plans.cuts} wordy />
      {drawing ? (
        <>
          <Sketches heading="Each piece" sketches={drawing.pieces} />
          <Sketches heading="Order of making" sketches={drawing.steps} open numbered />
        </>
      ) : null}
      {plans.lists.map(({ heading, lines }) =>
        lines.length === 0 ? null : (
          <details key={heading} class="more" open={heading === "Where this stops"}>
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

function Pictures({
  drawing,
  name,
  onPutOn,
  putOnWords,
}: {
  readonly drawing: NonNullable<ShownBrake["drawing"]>;
  readonly name: string;
  readonly onPutOn: (() => void) | null;
  readonly putOnWords: string;
}) {
  const { save: saveFile } = usePage();
  const small = globalThis.matchMedia?.(SMALL_SCREEN).matches ?? false;
  const called = (kind: string) => fileName(`${name} narrow brake`).replace(/json$/, kind);
  const saveDxf = () => {
    for (const { name: piece, text } of drawing.dxf) saveFile(piece, text, "image/vnd.dxf");
  };
  return (
    <>
      <Picture
        svg={small ? drawing.small : drawing.svg}
        words={drawing.sentence}
        name="Drawing of the narrow brake"
        fine
      />
      <div class="row">
        <button type="button" onClick={() => void printPages(drawing.pages)}>
          Print the plans
        </button>
        <button type="button" onClick={saveDxf}>
          Pieces as DXF, {drawing.dxf.length} files
        </button>
        <button type="button" onClick={() => saveFile(called("stl"), drawing.stl, "model/stl")}>
          Whole brake as STL
        </button>
        <button type="button" onClick={() => saveFile(called("svg"), drawing.svg, "image/svg+xml")}>
          Picture as SVG
        </button>
        {onPutOn ? (
          <button type="button" onClick={onPutOn}>
            {putOnWords}
          </button>
        ) : null}
      </div>
    </>
  );
}

/** Small drawings one under the other, made only once the list is opened. */
function Sketches({
  heading,
  sketches,
  open = false,
  numbered = false,
}: {
  readonly heading: string;
  readonly sketches: readonly ShownSketch[];
  readonly open?: boolean;
  readonly numbered?: boolean;
}) {
  const [opened, setOpened] = useState(open);
  return (
    <details
      class="more"
      open={open}
      onToggle={(event) => setOpened((before) => before || event.currentTarget.open)}
    >
      <summary>{heading}</summary>
      {opened
        ? sketches.map(({ words, svg }, i) => (
            <div key={words}>
              <p>{numbered ? `${i + 1}. ${words}` : words}</p>
              <Picture svg={svg} words={words} name={numbered ? `Step ${i + 1}` : words} />
            </div>
          ))
        : null}
    </details>
  );
}
