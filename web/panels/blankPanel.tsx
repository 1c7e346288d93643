/**
 * The blank: developed width and the lines to scribe, all from one edge, in the user's unit.
 */

import { allowanceSentences } from "../../src/drawing/allowanceWords.ts";
import { lengthFigure, lengthWords } from "../../src/drawing/lengthWords.ts";
import { sightLines } from "../../src/drawing/sightLine.ts";
import type { Answer } from "../../src/job/answer.ts";
import { formatLength, nearestSixtyFourth } from "../../src/units/length.ts";
import { usePage } from "../page.ts";
import { fileName, fileText } from "../store/jobFile.ts";
import { PrintSheet } from "./printSheet.tsx";

/** Inches as the nearest 64th beside the decimals, for a steel rule. */
function ruleWords(mm: number, units: "mm" | "in"): string {
  if (units === "mm") return lengthFigure(mm, "mm");
  return `${lengthFigure(mm, "in")} (${nearestSixtyFourth(mm).words.replace("/", "⁄")})`;
}

export function BlankPanel() {
  const { standing, snapshot, asker, store, save: saveFile } = usePage();
  const { answer, job, problems } = standing;
  if (answer === null || job === null) return null;
  const { units } = job;
  const { blank } = answer;
  const sights = sightLines(job, answer);
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
        Cut it <strong>{lengthWords(blank.developedWidth, units)}</strong> wide
        {units === "in"
          ? ` (${nearestSixtyFourth(blank.developedWidth).words.replace("/", "⁄")} in on a rule)`
          : ""}
        {job.part.lengthMm === undefined
          ? ""
          : `, ${formatLength(job.part.lengthMm, units)} ${units} along the bends`}
        .
      </p>
      <DyedStrip blank={blank} sightsMm={sights.map((sight) => sight.atMm)} />
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
                  {ruleWords(bend.tangents[0], units)} and {ruleWords(bend.tangents[1], units)}
                </td>
                <td>
                  {ruleWords(sights[i]!.atMm, units)}
                  <span class="note">, {sights[i]!.clamped} clamped</span>
                </td>
                <td>{lengthFigure(bend.allowance, units)}</td>
                <td>{lengthFigure(bend.deduction, units)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
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

/** The blank as it lies on the bench: dyed blue, bend tangent lines scribed, sight lines broken. */
function DyedStrip({
  blank,
  sightsMm,
}: {
  readonly blank: Answer["blank"];
  readonly sightsMm: readonly number[];
}) {
  const [width, height] = [600, 64];
  const x = (mm: number) => (mm / blank.developedWidth) * width;
  const ends = [0, ...blank.bends.flatMap((bend) => bend.tangents), blank.developedWidth];
  return (
    <svg
      class="dyed"
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label="The blank with its bend tangent lines, and sight lines broken"
    >
      <rect width={width} height={height} />
      {blank.bends.map((bend, i) => (
        <g key={bend.bend}>
          <line x1={x(bend.tangents[0])} x2={x(bend.tangents[0])} y1={0} y2={height} />
          <line x1={x(bend.tangents[1])} x2={x(bend.tangents[1])} y1={0} y2={height} />
          <line class="sight" x1={x(sightsMm[i]!)} x2={x(sightsMm[i]!)} y1={0} y2={height} />
        </g>
      ))}
      {blank.bends.length < 12
        ? Array.from({ length: blank.bends.length + 1 }, (_, i) => (
            <text
              key={i}
              x={(x(ends[2 * i]!) + x(ends[2 * i + 1]!)) / 2}
              y={height / 2 + 4}
              text-anchor="middle"
            >
              {i + 1}
            </text>
          ))
        : null}
    </svg>
  );
}
