/**
 * The blank: developed width and the lines to scribe, all from one edge, in the user's unit.
 */

import { lengthFigure, lengthWords } from "../../src/drawing/lengthWords.ts";
import type { Answer } from "../../src/job/answer.ts";
import { formatLength, nearestSixtyFourth } from "../../src/units/length.ts";
import { usePage } from "../page.ts";

/** Inches as the nearest 64th beside the decimals, for a steel rule. */
function ruleWords(mm: number, units: "mm" | "in"): string {
  if (units === "mm") return lengthFigure(mm, "mm");
  return `${lengthFigure(mm, "in")} (${nearestSixtyFourth(mm).words.replace("/", "⁄")})`;
}

export function BlankPanel() {
  const { standing } = usePage();
  const { answer, job } = standing;
  if (answer === null || job === null) return null;
  const { units } = job;
  const { blank } = answer;
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
      <DyedStrip blank={blank} />
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
            {blank.bends.map((bend) => (
              <tr key={bend.bend}>
                <th scope="row">{bend.bend}</th>
                <td>
                  {ruleWords(bend.tangents[0], units)} and {ruleWords(bend.tangents[1], units)}
                </td>
                <td>{ruleWords(bend.sightLine, units)}</td>
                <td>{lengthFigure(bend.allowance, units)}</td>
                <td>{lengthFigure(bend.deduction, units)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </section>
    </section>
  );
}

/** The blank as it lies on the bench: dyed blue, bend tangent lines scribed, sight lines broken. */
function DyedStrip({ blank }: { readonly blank: Answer["blank"] }) {
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
      {blank.bends.map((bend) => (
        <g key={bend.bend}>
          <line x1={x(bend.tangents[0])} x2={x(bend.tangents[0])} y1={0} y2={height} />
          <line x1={x(bend.tangents[1])} x2={x(bend.tangents[1])} y1={0} y2={height} />
          <line class="sight" x1={x(bend.sightLine)} x2={x(bend.sightLine)} y1={0} y2={height} />
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
