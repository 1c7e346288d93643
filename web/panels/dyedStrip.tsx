/**
 * The blank as it lies on the bench: dyed blue, bend tangent lines scribed, sight lines broken, cut-outs cut away,
 * relief holes drilled. To its true shape where it has cut-outs, else a strip.
 */
import type { CutOut } from "../../src/blank/cutOut.ts";
import type { Answer } from "../../src/job/answer.ts";

const WIDE = 600;
const STRIP_HIGH = 64;
const MOST_HIGH = 420;

export function DyedStrip({
  blank,
  sightsMm,
  cutOuts,
  lengthMm,
}: {
  readonly blank: Answer["blank"];
  readonly sightsMm: readonly number[];
  readonly cutOuts: readonly CutOut[];
  readonly lengthMm: number | undefined;
}) {
  const cut = cutOuts.length > 0 && lengthMm !== undefined;
  const trueHigh = cut ? (lengthMm / blank.developedWidth) * WIDE : STRIP_HIGH;
  const high = Math.min(MOST_HIGH, Math.max(STRIP_HIGH, trueHigh));
  const x = (mm: number) => (mm / blank.developedWidth) * WIDE;
  // The blank's start lies at the foot, as on the drawing.
  const y = (mm: number) => high - (mm / (lengthMm ?? 1)) * high;
  const ends = [0, ...blank.bends.flatMap((bend) => bend.tangents), blank.developedWidth];
  const holes = cut ? (blank.reliefHoles ?? []) : [];
  const words = cut
    ? `The blank with its bend tangent lines, sight lines broken, ${cutOuts.length} cut-outs and ${holes.length} relief holes`
    : "The blank with its bend tangent lines, and sight lines broken";
  return (
    <svg class="dyed" viewBox={`0 0 ${WIDE} ${high}`} role="img" aria-label={words}>
      <rect width={WIDE} height={high} />
      {blank.bends.map((bend, i) => (
        <g key={bend.bend}>
          <line x1={x(bend.tangents[0])} x2={x(bend.tangents[0])} y1={0} y2={high} />
          <line x1={x(bend.tangents[1])} x2={x(bend.tangents[1])} y1={0} y2={high} />
          <line class="sight" x1={x(sightsMm[i]!)} x2={x(sightsMm[i]!)} y1={0} y2={high} />
        </g>
      ))}
      {cut
        ? cutOuts.map(({ acrossMm, alongMm }, i) => (
            <rect
              key={i}
              class="cut"
              x={x(acrossMm[0])}
              width={x(acrossMm[1]) - x(acrossMm[0])}
              y={y(alongMm[1])}
              height={y(alongMm[0]) - y(alongMm[1])}
            />
          ))
        : null}
      {holes.map((hole, i) => (
        <ellipse
          key={i}
          class="cut"
          cx={x(hole.x)}
          cy={y(hole.y)}
          rx={x(hole.diameter / 2)}
          ry={y(0) - y(hole.diameter / 2)}
        />
      ))}
      {blank.bends.length < 12
        ? Array.from({ length: blank.bends.length + 1 }, (_, i) => (
            <text
              key={i}
              x={(x(ends[2 * i]!) + x(ends[2 * i + 1]!)) / 2}
              y={high / 2 + 4}
              text-anchor="middle"
            >
              {i + 1}
            </text>
          ))
        : null}
    </svg>
  );
}
