/**
 * The blank: developed width and the lines to scribe, all from one edge, in the user's unit.
 */

import { lengthFigure, lengthWords } from "../../src/drawing/lengthWords.ts";
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
      <div class="scroll" tabIndex={0} role="region" aria-label="Lines to scribe">
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
      </div>
    </section>
  );
}
