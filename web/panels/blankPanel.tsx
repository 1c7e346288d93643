/**
 * The blank: developed width and the lines to scribe, all from one edge, in the user's unit; its grain, cut-outs and
 * relief holes.
 */

import { sightLines } from "../../src/jobFile/sightLine.ts";
import { formatLength } from "../../src/units/length.ts";
import { allowanceSentences } from "../../src/words/allowanceWords.ts";
import { lengthFigure, placeFigures, placeWords } from "../../src/words/lengthWords.ts";
import { markingSentences } from "../../src/words/markingWords.ts";
import { throatWords } from "../../src/words/stepWords.ts";
import { usePage } from "../page.ts";
import { fileName, fileText } from "../store/jobFile.ts";
import { DyedStrip } from "./dyedStrip.tsx";
import { ListTable } from "./listTable.tsx";
import { PrintSheet } from "./printSheet.tsx";
import { CutOutTable, GrainFields } from "./sheetFields.tsx";

export function BlankPanel() {
  const { standing, snapshot, asker, store, save: saveFile } = usePage();
  const { answer, job, problems } = standing;
  if (answer === null || job === null) return null;
  const { units } = job;
  const { blank } = answer;
  const sights = sightLines(answer);
  const holes = blank.reliefHoles ?? [];
  const allowances = allowanceSentences(job);
  const save = async (as: "svg" | "dxf") => {
    const reply = await asker.askOnce({ kind: "blank", text: fileText(snapshot.file), as }, 10_000);
    if (reply?.kind !== "written") {
      store.say("The drawing of the blank was not finished: press again.", { about: "blank" });
      return;
    }
    const name = fileName(`${job.part.name} blank`).replace(/json$/, as);
    saveFile(name, reply.text, as === "svg" ? "image/svg+xml" : "image/vnd.dxf");
  };
  return (
    <section class="panel" aria-labelledby="blank-heading">
      <h2 id="blank-heading">Blank</h2>
      <p>
        Cut it <strong>{placeWords(blank.developedWidth, units)}</strong> wide
        {job.part.lengthMm === undefined
          ? ""
          : `, ${formatLength(job.part.lengthMm, units)} ${units} along the bends`}
        .
      </p>
      <DyedStrip
        blank={blank}
        sightsMm={sights.map((sight) => sight.at)}
        cutOuts={job.cutOuts ?? []}
        lengthMm={job.part.lengthMm}
      />
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a table wider than a phone must be scrolled with the keys too */}
      <section class="scroll" tabIndex={0} aria-label="Lines to scribe">
        <table>
          <caption>
            Lines from the edge of flat 1, <span class="unit">{units}</span>
          </caption>
          <thead>
            <tr>
              <th scope="col">bend</th>
              <th scope="col">bend tangent lines</th>
              <th scope="col">sight line</th>
              <th scope="col">allowance</th>
              <th scope="col">deduction</th>
            </tr>
          </thead>
          <tbody>
            {blank.bends.map((bend, i) => (
              <tr key={bend.bend}>
                <th scope="row">{bend.bend}</th>
                <td>
                  {placeFigures(bend.tangents[0], units).join(" ")} and{" "}
                  {placeFigures(bend.tangents[1], units).join(" ")}
                </td>
                <td>
                  {placeFigures(sights[i]!.at, units).join(" ")}
                  <span class="note">
                    {" "}
                    with {throatWords({ bend: bend.bend, clamped: sights[i]!.clamped }, blank.bends.length)}{" "}
                    in the throat
                  </span>
                </td>
                <td>{lengthFigure(bend.allowance, units)}</td>
                <td>{lengthFigure(bend.deduction, units)}</td>
              </tr>
            ))}
          </tbody>
        </table>
        <p class="hint">{markingSentences(job, answer).join(" ")}</p>
      </section>
      {holes.length === 0 ? null : (
        <ListTable
          caption={`Relief holes, ${units}`}
          heads={["bend", "cut-out", "from the edge of flat 1", "from the blank’s start", "drill"]}
          rows={holes.map((hole) => [
            `${hole.bend}`,
            `${hole.cutOut}`,
            placeFigures(hole.x, units).join(" "),
            placeFigures(hole.y, units).join(" "),
            placeFigures(hole.diameter, units).join(" "),
          ])}
        />
      )}
      <GrainFields />
      <CutOutTable />
      {/* Open where the methods differ by more than callipers read: the last sentence then asks for a test strip. */}
      <details class="more" open={allowances.length > 2}>
        <summary>How the bends were allowed for</summary>
        {allowances.map((sentence) => (
          <p key={sentence} class="note">
            {sentence}
          </p>
        ))}
      </details>
      <div class="row">
        <button type="button" disabled={problems.length > 0} onClick={() => void save("svg")}>
          Blank at true size, SVG
        </button>
        <button type="button" disabled={problems.length > 0} onClick={() => void save("dxf")}>
          Blank as DXF
        </button>
        <PrintSheet />
        <button type="button" onClick={() => print()}>
          Print this card
        </button>
      </div>
    </section>
  );
}
