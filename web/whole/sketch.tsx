/**
 * A drawing from the worker on the page, in the page's colours: bodies hatched each in its own direction, lines by what they
 * stand for, a cross where metal meets metal.
 */
import type { Layer } from "../../src/drawing/model.ts";
import type { Sketched } from "./sketched.ts";

/** Lines of a hatch apart, of the picture's width. */
const HATCH_SHARE = 1 / 60;

export function SketchOf({
  sketch,
  name,
  focusable = false,
}: {
  readonly sketch: Sketched;
  readonly name: string;
  readonly focusable?: boolean;
}) {
  const { window, lines, bodies, words, crosses } = sketch;
  const hatches = [...new Set(bodies.flatMap(({ hatchDeg }) => (hatchDeg === null ? [] : [hatchDeg])))];
  const gap = window.wide * HATCH_SHARE;
  const id = (deg: number) => `${name}-${deg}`;
  const arm = window.wide / 40;
  const shape = (d: string, layer: Layer) => <path key={`${layer}${d}`} class={layer} d={d} />;
  return (
    <svg
      class="drawn-whole"
      viewBox={`${window.x} ${window.y} ${window.wide} ${window.high}`}
      role="img"
      aria-label={sketch.sentence}
      {...(focusable ? { tabIndex: 0 } : {})}
    >
      <defs>
        {hatches.map((deg) => (
          <pattern
            key={deg}
            id={id(deg)}
            width={gap}
            height={gap}
            patternUnits="userSpaceOnUse"
            patternTransform={`rotate(${-deg})`}
          >
            <rect class="ground" width={gap} height={gap} />
            <path class="hatching" d={`M0 0H${gap}`} />
          </pattern>
        ))}
      </defs>
      {bodies.map(({ layer, d, hatchDeg }) =>
        hatchDeg === null ? (
          shape(d, layer)
        ) : (
          <path key={`${layer}${d}`} class={`${layer} hatched`} d={d} fill={`url(#${id(hatchDeg)})`} />
        ),
      )}
      {lines.map(({ d, layer }) => shape(d, layer))}
      {words.map(({ x, y, size, text }) => (
        <text key={`${x}`} x={x} y={y} text-anchor="middle" style={{ fontSize: `${size}px` }}>
          {text}
        </text>
      ))}
      {crosses.map(({ x, y }) => (
        <g key={`${x} ${y}`} class="met">
          <circle cx={x} cy={y} r={arm} />
          <path
            d={`M${x - arm} ${y - arm}l${2 * arm} ${2 * arm}M${x - arm} ${y + arm}l${2 * arm} ${-2 * arm}`}
          />
        </g>
      ))}
    </svg>
  );
}
