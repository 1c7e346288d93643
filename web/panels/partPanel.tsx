/**
 * The part: metal and thickness, then flats and bends as one strip in the order in which they lie on the sheet.
 */
import { useMemo, useState } from "preact/hooks";
import { metalNames } from "../../src/metal/metals.ts";
import { capital } from "../../src/words/stepWords.ts";
import { Choice, Pick } from "../fields/choice.tsx";
import { Field } from "../fields/field.tsx";
import { usePage } from "../page.ts";
import { litLabel, measuredFlats } from "../stage/measured.ts";
import { hemEnd, withAddition } from "../store/bendKinds.ts";
import { chainFlats } from "../store/chain.ts";
import { flatsEndForEnd, mirror, turnOver } from "../store/chainEdits.ts";
import type { PartFile } from "../store/jobFile.ts";
import { sameMetal, withMetal } from "../store/metals.ts";
import { movedSample } from "../store/sample.ts";
import { ChainStrip } from "./chainStrip.tsx";
import { FinishedPart } from "./finishedPart.tsx";
import { HowMeasured } from "./howMeasured.tsx";
import { MetalFigures } from "./metalFigures.tsx";
import { ShapeButtons } from "./shapeButtons.tsx";
import { Sketch } from "./sketch.tsx";

const ADDITIONS = [
  { what: "bend", words: "add a bend" },
  { what: "hem", words: "add a hem" },
  { what: "offset", words: "add an offset" },
] as const;
const OWN = "own figures";
/** Marks a kept metal in the list, so that it may be called like one of the table. */
const KEPT = "own: ";
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
  const { material } = file.part;
  const own = typeof material !== "string";
  const kept = snapshot.shelf.metals ?? [];
  const keptAs = own ? kept.find((one) => sameMetal(one, material)) : undefined;
  const names = [...new Set([...metalNames(), ...(own ? [] : [material])])];
  const metals = [
    ...names.map((name) => ({ value: name, words: name })),
    ...kept.map(({ name }) => ({ value: `${KEPT}${name}`, words: `${name}, your own` })),
    { value: OWN, words: OWN },
  ];
  const metal = standing.job?.part.metal;
  const known = standing.file === file && standing.problems.length === 0 ? standing : null;
  const { job, jobFile } = standing;
  const measured = useMemo(() => (job && jobFile ? measuredFlats(jobFile, job) : []), [job, jobFile]);
  const blank = {
    widthMm: known?.answer?.blank.developedWidth ?? null,
    lengthMm: known?.job?.part.lengthMm ?? null,
  };
  const turnable = blank.widthMm !== null || (file.part.cutOuts ?? []).length === 0;

  const chooseMetal = (name: string) => {
    const figures = {
      name: "own metal",
      yield: metal?.yieldMpa ?? 250,
      modulus: metal?.modulusMpa ?? 200_000,
      ...(metal?.ultimateMpa === undefined ? {} : { ultimate: metal.ultimateMpa }),
    };
    const mine = kept.find((one) => `${KEPT}${one.name}` === name);
    store.set(["part", "material"], mine ?? (name === OWN ? figures : name), "change the metal");
  };

  return (
    <section class="panel" aria-labelledby="part-heading">
      <h2 id="part-heading">Part</h2>
      <div class="fields">
        <Field label="Name" path={["part", "name"]} kind="words" wide />
        <Pick
          label="Metal"
          options={metals}
          value={keptAs ? `${KEPT}${keptAs.name}` : own ? OWN : material}
          onChoose={chooseMetal}
        />
        {own ? (
          <>
            <Field label="Metal's name" path={["part", "material", "name"]} kind="words" />
            <Field label="Yield strength" unit="MPa" path={["part", "material", "yield"]} kind="strength" />
            <Field
              label="Elastic modulus"
              unit="MPa"
              path={["part", "material", "modulus"]}
              kind="strength"
            />
            <Field
              label="Ultimate"
              unit="MPa"
              path={["part", "material", "ultimate"]}
              kind="strength"
              optional="not given"
              note="Where the sheet tears; a brake to make is reckoned with it"
            />
          </>
        ) : null}
        <Field
          label="Thickness"
          path={["part", "thickness"]}
          kind="thickness"
          note="Or a gauge: 20 ga steel"
        />
        <Field label="Inside radius" path={["part", "insideRadius"]} kind="length" />
        <Field label="K-factor" path={["part", "kFactor"]} kind="factor" optional="the metal’s" />
        <Field label="Length along the bends" path={["part", "length"]} kind="length" optional="not given" />
      </div>
      {metal && standing.job && !own ? (
        <MetalFigures
          metal={metal}
          kFactor={standing.job.part.kFactor}
          thicknessMm={standing.job.part.thicknessMm}
          units={file.units}
        />
      ) : null}
      {own ? (
        <div class="row">
          {keptAs ? (
            <button
              type="button"
              onClick={() =>
                store.keepMetals(
                  kept.filter((one) => one !== keptAs),
                  "forget a metal",
                )
              }
            >
              Forget this metal
            </button>
          ) : (
            <button type="button" onClick={() => store.keepMetals(withMetal(kept, material), "keep a metal")}>
              Keep this metal for other jobs
            </button>
          )}
        </div>
      ) : null}
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
