/**
 * The measuring guide: what to measure on a real brake and how, each with a picture of our own and the tool it takes.
 */
import type { ComponentChildren } from "preact";

interface Measure {
  readonly name: string;
  readonly how: string;
  readonly usual: string;
  readonly picture: ComponentChildren;
}

const BED = "M6 78H70V104H6Z";
const FINGER = "M72 78L48 78H8V22H24L70 72Q75 78 68 78Z";

const MEASURES: readonly Measure[] = [
  {
    name: "Nose angle",
    how: "Lay a bevel gauge on the underside and swing its blade against the front face. Read it on a protractor.",
    usual: "Fingers lean back at about 45°, clamp bars stand at 90° or are bevelled a few degrees.",
    picture: (
      <>
        <path class="body" d={FINGER} />
        <path class="gauge" d="M14 82H112M80 82L28 24" />
        <path class="dim" d="M54 82A26 26 0 0 1 62.6 62.6" />
        <text x="38" y="70">
          β
        </text>
      </>
    ),
  },
  {
    name: "Nose radius",
    how: "Hold radius gauges or drill shanks of known size to the rounding of the nose until no light shows.",
    usual: "About one sheet thickness on a good brake: 1⁄32 in, 0.8 mm.",
    picture: (
      <>
        <path class="body" d="M60 78H8V22H24L62 62Q72 78 60 78Z" />
        <circle class="gauge" cx="58" cy="69" r="9" />
        <path class="dim" d="M58 69L66 65" />
        <text x="78" y="62">
          Rn
        </text>
      </>
    ),
  },
  {
    name: "Nose setback",
    how: "Close the clamp on a scrap of the sheet, leaf down. With a depth gauge on the leaf's face measure back to the nose.",
    usual: "About one sheet thickness more than the nose is rounded; auto works it out.",
    picture: (
      <>
        <path class="body" d="M56 72H8V20H22L58 62Q64 72 56 72Z" />
        <path class="sheet" d="M8 75H110" />
        <path class="body" d={BED} />
        <path class="dim" d="M61 60V44M70 78V44M61 48H70" />
        <text x="76" y="50">
          s
        </text>
      </>
    ),
  },
  {
    name: "Leaf face",
    how: "With the leaf down, measure from the bed's front edge across the leaf's face to its far edge.",
    usual: "From 3⁄4 in to 2 in; short flanges need only a little of it.",
    picture: (
      <>
        <path class="body" d={BED} />
        <path class="body two" d="M72 78H118V92H72Z" />
        <path class="dim" d="M72 74V56M118 74V56M72 60H118" />
        <text x="90" y="54">
          face
        </text>
      </>
    ),
  },
  {
    name: "Lift",
    how: "Open the clamp as far as it goes and measure from the bed up to the underside.",
    usual: "3⁄4 in to 2 in. It decides whether a formed part can be slipped in and out.",
    picture: (
      <>
        <path class="body" d="M64 44H8V10H22L64 36Q70 44 64 44Z" />
        <path class="body" d={BED} />
        <path class="dim" d="M70 44H92M74 78H92M84 44V78" />
        <text x="94" y="64">
          lift
        </text>
      </>
    ),
  },
  {
    name: "Holder set back",
    how: "Measure from the nose back to the front of what carries the clamp bar, and how high that stands.",
    usual: "3⁄4 in and more. A tall return flange meets the holder before the bar.",
    picture: (
      <>
        <path class="body" d="M70 78H8V64H70Q76 71 70 78Z" />
        <path class="body two" d="M8 64V14H40V64Z" />
        <path class="dim" d="M40 56V40M74 60V40M40 46H74" />
        <text x="80" y="48">
          back
        </text>
      </>
    ),
  },
];

export function Guide() {
  return (
    <details class="more guide">
      <summary>How to measure your brake</summary>
      <p class="hint">The usual sizes are common practice: no substitute for measuring.</p>
      <ul class="measures">
        {MEASURES.map((measure) => (
          <li key={measure.name}>
            <svg viewBox="0 0 124 110" role="img" aria-label={`${measure.name}: ${measure.how}`}>
              {measure.picture}
            </svg>
            <div>
              <h3>{measure.name}</h3>
              <p>{measure.how}</p>
              <p class="note">{measure.usual}</p>
            </div>
          </li>
        ))}
      </ul>
    </details>
  );
}
