/**
 * Name, metal and sheet of a part: from the table, or the person's own figures.
 */
import type { Metal } from "../../src/metal/metal.ts";
import { metalNames } from "../../src/metal/metals.ts";
import { Pick } from "../fields/choice.tsx";
import { Field } from "../fields/field.tsx";
import { usePage } from "../page.ts";
import { sameMetal, withMetal } from "../store/metals.ts";
import { MetalFigures } from "./metalFigures.tsx";

const OWN = "own figures";
/** Marks a kept metal in the list, so that it may be called like one of the table. */
const KEPT = "own: ";

export function MetalFields({
  known,
  length,
}: {
  /** The figures that the answer was worked out with. */
  readonly known: { readonly metal: Metal; readonly kFactor: number; readonly thicknessMm: number } | null;
  /** Whether the part has a length along its bends. */
  readonly length: boolean;
}) {
  const { store, snapshot } = usePage();
  const { file } = snapshot;
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
  const chooseMetal = (name: string) => {
    const figures = {
      name: "own metal",
      yield: known?.metal.yieldMpa ?? 250,
      modulus: known?.metal.modulusMpa ?? 200_000,
      ...(known?.metal.ultimateMpa === undefined ? {} : { ultimate: known.metal.ultimateMpa }),
    };
    const mine = kept.find((one) => `${KEPT}${one.name}` === name);
    store.set(["part", "material"], mine ?? (name === OWN ? figures : name), "change the metal");
  };

  return (
    <>
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
        {length ? (
          <Field
            label="Length along the bends"
            path={["part", "length"]}
            kind="length"
            optional="not given"
          />
        ) : null}
      </div>
      {known && !own ? <MetalFigures {...known} units={file.units} /> : null}
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
    </>
  );
}
