/**
 * The part: metal and thickness, then flats and bends as one strip in the order in which they lie on the sheet.
 */

import { useMemo, useState } from "preact/hooks";
import { capital } from "../../src/words/capital.ts";
import { Choice } from "../fields/choice.tsx";
import { usePage } from "../page.ts";
import { litLabel, measuredFlats } from "../stage/measured.ts";
import { hemEnd, withAddition } from "../store/bendKinds.ts";
import { chainFlats } from "../store/chain.ts";
import { flatsEndForEnd, mirror, turnOver } from "../store/chainEdits.ts";
import type { PartFile } from "../store/jobFile.ts";
import { movedSample } from "../store/sample.ts";
import { MorePart } from "../whole/morePart.tsx";
import { ChainStrip } from "./chainStrip.tsx";
import { FinishedPart } from "./finishedPart.tsx";
import { HowMeasured } from "./howMeasured.tsx";
import { MetalFields } from "./metalFields.tsx";
import { ShapeButtons } from "./shapeButtons.tsx";
import { Sketch } from "./sketch.tsx";

const ADDITIONS = [
  { what: "bend", words: "add a bend" },
  { what: "hem", words: "add a hem" },
  { what: "offset", words: "add an offset" },
] as const;
const DIMENSIONS = [
  { value: "outside", words: "Outside" },
  { value: "inside", words: "Inside" },
  { value: "flat", words: "Flats only" },
] as const;

const MEASURED: Readonly<Record<PartFile["dimensions"], string>> = {
  outside: "Flats are measured over the outside, to the mold lines.",
  inside: "Flats are measured between the inner faces.",
  flat: "Flats are measured from bend tangent line to bend tangent line.",
};

export function PartPanel() {
  const { store, snapshot, standing, look } = usePage();
  const { file, sample } = snapshot;
  const [marked, setMarked] = useState<number | null>(null);
  const { job, jobFile } = standing;
  const measured = useMemo(() => (job && jobFile ? measuredFlats(jobFile, job) : []), [job, jobFile]);
  const sheet = job && {
    metal: job.part.metal,
    kFactor: job.part.kFactor,
    thicknessMm: job.part.thicknessMm,
  };
  const known = standing.file === file && standing.problems.length === 0 ? standing : null;
  const blank = {
    widthMm: known?.answer?.blank.developedWidth ?? null,
    lengthMm: known?.job?.part.lengthMm ?? null,
  };
  const turnable = blank.widthMm !== null || (file.part.cutOuts ?? []).length === 0;

  return (
    <section class="panel" aria-labelledby="part-heading">
      <h2 id="part-heading">Part</h2>
      <MetalFields known={sheet} length />
      <div class="row spread">
        <Choice
          label="Dimensions"
          options={DIMENSIONS}
          value={file.part.dimensions}
          onChoose={(value) => store.set(["part", "dimensions"], value, "change how flats are measured")}
        />
        <ShapeButtons />
      </div>
      <p class="hint">{MEASURED[file.part.dimensions]}</p>
      {standing.job && standing.job.part.flatsMm.length === chainFlats(file.part) ? (
        <div class="part-picture">
          <FinishedPart
            job={standing.job}
            measured={measured}
            lit={marked === null ? litLabel(look.now.lit, file.part) : `flat ${marked}`}
            width={640}
            height={240}
            figures
          />
        </div>
      ) : (
        <Sketch file={file} marked={marked} />
      )}
      <MorePart />
      <ChainStrip onMark={setMarked} />
      <HowMeasured />
      <div class="row">
        {ADDITIONS.map(({ what, words }) => (
          <button
            key={what}
            type="button"
            disabled={what === "hem" && hemEnd(file) === null}
            onClick={() => store.replace((now) => withAddition(now, what), words)}
          >
            {capital(words)}
          </button>
        ))}
        <button
          type="button"
          disabled={!turnable}
          onClick={() =>
            store.copy(
              mirror(file, blank),
              sample ? movedSample(sample, flatsEndForEnd(file.part)) : undefined,
              "mirror the part",
            )
          }
        >
          End for end
        </button>
        <button
          type="button"
          disabled={!turnable}
          onClick={() => store.replace((f) => turnOver(f, blank), "turn the part over")}
        >
          Turn over
        </button>
        {turnable ? null : <span class="note">Cut-outs turn with the part once its figures are right.</span>}
      </div>
    </section>
  );
}
