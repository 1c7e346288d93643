/**
 * The blank of a whole part as it lies on the bench: dyed blue, its bends scribed and numbered, tangent lines fine, relief
 * holes drilled.
 */
import type { WholeShown } from "./wholeShown.ts";

/** Numbers stand this high in a plan of a hundred. */
const NUMBER = 4.2;

export function WholePlan({ whole }: { readonly whole: WholeShown }) {
  const { answer, bends, blank } = whole;
  const { x, y, wide, high } = blank.box;
  const size = (NUMBER * Math.max(wide, high)) / 100;
  const room = size * 0.4;
  const count = answer.blank.bends.length;
  const holes = answer.blank.reliefHoles.length;
  const words = `The blank with ${count} ${count === 1 ? "bend" : "bends"}, those down broken${holes > 0 ? `, and ${holes} relief ${holes === 1 ? "hole" : "holes"}` : ""}`;
  return (
    <svg
      class="dyed plan-of-whole"
      viewBox={`${x - room} ${y - room} ${wide + 2 * room} ${high + 2 * room}`}
      role="img"
      aria-label={words}
    >
      <path class="sheet-of-blank" fill-rule="evenodd" d={blank.path} />
      {answer.blank.bends.flatMap(({ tangents }, i) =>
        tangents.map(([from, to], k) => (
          <line key={`${i} ${k}`} class="tangent" x1={from[0]} y1={-from[1]} x2={to[0]} y2={-to[1]} />
        )),
      )}
      {answer.blank.bends.map(({ bend, line: [from, to] }) => (
        <line key={bend} class={bends[bend - 1]!.turn} x1={from[0]} y1={-from[1]} x2={to[0]} y2={-to[1]} />
      ))}
      {answer.blank.reliefHoles.map(({ x: cx, y: cy, diameter }) => (
        <circle key={`${cx} ${cy}`} class="cut" cx={cx} cy={-cy} r={diameter / 2} />
      ))}
      {answer.blank.bends.map(({ bend, line: [from, to] }) => {
        const [cx, cy] = [(from[0] + to[0]) / 2, -(from[1] + to[1]) / 2];
        return (
          <g key={bend} class="number">
            <circle cx={cx} cy={cy} r={size * 0.75} />
            <text x={cx} y={cy + size * 0.35} text-anchor="middle" style={{ fontSize: `${size}px` }}>
              {bend}
            </text>
          </g>
        );
      })}
    </svg>
  );
}
