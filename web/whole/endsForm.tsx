/**
 * A section with ends: its flats and bends as in a section, then for each flat what stands at its start and its finish along
 * the length.
 */
import { useState } from "preact/hooks";
import { Choice } from "../fields/choice.tsx";
import { usePage } from "../page.ts";
import { ChainStrip } from "../panels/chainStrip.tsx";
import { HowMeasured } from "../panels/howMeasured.tsx";
import { Sketch } from "../panels/sketch.tsx";
import { asSection, withEnd } from "../store/wholeEdits.ts";
import { EdgeKey, Standing } from "./standing.tsx";

const PLACES = ["start", "finish"] as const;

export function EndsForm() {
  const { store, snapshot } = usePage();
  const { file } = snapshot;
  const { flats, ends = [] } = file.part;
  const [marked, setMarked] = useState<number | null>(null);
  return (
    <>
      <Sketch file={file} marked={marked} />
      <ChainStrip onMark={setMarked} />
      <HowMeasured />
      <h3>Ends</h3>
      <p class="hint">Each flat runs along the length from start to finish. Press an edge to close it.</p>
      <ul class="ends" aria-label="What stands at the ends of each flat">
        {flats.map((_, i) => (
          <li key={i} class="end-row">
            {PLACES.map((at) => {
              const found = ends.findIndex((end) => end.flat === i + 1 && end.at === at);
              return (
                <div key={at} class={`side ${at}${found < 0 ? " none" : ""}`}>
                  {found < 0 ? (
                    <EdgeKey
                      words={`end at the ${at} of flat ${i + 1}`}
                      onPress={() =>
                        store.replace((now) => withEnd(now, i + 1, at), `add an end to flat ${i + 1}`)
                      }
                    />
                  ) : (
                    <Standing name={`${at} of flat ${i + 1}`} path={["part", "ends", found]} kind="end" />
                  )}
                </div>
              );
            })}
            <span class="flat-of-plan">Flat {i + 1}</span>
          </li>
        ))}
      </ul>
      {file.part.bends.length > 0 ? (
        <div class="row">
          <button type="button" onClick={() => store.replace(asSection, "go back to the section alone")}>
            Section alone, no ends
          </button>
        </div>
      ) : null}
    </>
  );
}

/** How a section's sizes are measured; of a box the same. */
export function Measured() {
  const { store, snapshot } = usePage();
  const options = [
    { value: "outside", words: "Outside" },
    { value: "inside", words: "Inside" },
    { value: "flat", words: "Flats only" },
  ] as const;
  return (
    <Choice
      label="Dimensions"
      options={options}
      value={snapshot.file.part.dimensions}
      onChoose={(value) => store.set(["part", "dimensions"], value, "change how sizes are measured")}
    />
  );
}
