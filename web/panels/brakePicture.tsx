/**
 * The brake's figures in one picture, not to scale, so that a small radius is seen as well as a deep bed: each with its name
 * and what is typed. The field under the keys shines; a press on a dimension goes to its field.
 */
import type { ComponentChildren } from "preact";
import { usePage } from "../page.ts";
import { pathId } from "../store/flats.ts";
import { getAt, type JobFile } from "../store/jobFile.ts";
import { type Figure, LEAF_AND_BED, SHAPES, type Where } from "./brakeFigures.ts";
import { goToField } from "./dimensionsSvg.tsx";

const tip = ([x, y, deg]: readonly [...Where, number]): string => {
  const at = (far: number, side: number) => {
    const rad = (deg * Math.PI) / 180;
    const [dx, dy] = [Math.cos(rad), Math.sin(rad)];
    return `${(x - far * dx - side * dy).toFixed(1)} ${(y - far * dy + side * dx).toFixed(1)}`;
  };
  return `M${x} ${y}L${at(9, 2.8)}L${at(9, -2.8)}Z`;
};

export function BrakePicture() {
  const { snapshot, look } = usePage();
  const { file } = snapshot;
  const { lit } = look.now;
  const { type } = file.brake.clamp;
  const { body, figures } = SHAPES[type];
  const all: readonly Figure[] = [...figures, ...LEAF_AND_BED];
  const shining = all.some((figure) => shines(figure, lit));
  return (
    <svg
      class={`brake-picture${shining ? " one-shines" : ""}`}
      viewBox="0 -14 720 370"
      role="img"
      aria-label="The brake with the names of its figures, not to scale. The field that you fill in shines in it."
    >
      <path class="body bed" d="M130 200H390V300H130Z" />
      <path class="body leaf" d="M392 200H510V240H392Z" />
      {type === "profile" ? null : <path class="body holder" d="M180 92V30H260V92Z" />}
      <path class="body clamp" d={body} />
      <path class="sheet" d="M236 192H500V199H236Z" />
      {["bed", "leaf"].map((name, i) => (
        <text key={name} class="name" x={i === 0 ? 250 : 450} y={i === 0 ? 272 : 222} text-anchor="middle">
          {name}
        </text>
      ))}
      {all.map((figure) => (
        <FigureMark key={figure.name} figure={figure} file={file} lit={lit} />
      ))}
    </svg>
  );
}

/** What is typed for a figure and how far off it may be; of a depth kept as a negative corner its amount. */
function typedWords(file: JobFile, { path, doubt, usual, unit = "" }: Figure): string {
  const value = getAt(file, path);
  const minus = path[1] === "bed" || path[1] === "leaf" ? "" : "−";
  const none = value === undefined || value === "";
  const said = none ? (usual ?? "") : `${String(value).replace(/^[-−]/u, minus)}${unit}`;
  const off = doubt && getAt(file, doubt);
  return off === undefined || off === "" ? said : `${said} ± ${off}`;
}

/** Whether the field of a figure or of its doubt is being filled in. */
const shines = ({ path, doubt }: Figure, lit: string | null) =>
  lit !== null && (pathId(path) === lit || (doubt !== undefined && pathId(doubt) === lit));

function FigureMark({
  figure,
  file,
  lit,
}: {
  readonly figure: Figure;
  readonly file: JobFile;
  readonly lit: string | null;
}): ComponentChildren {
  const { name, path, lines, tips, at, anchor, hidden } = figure;
  const id = pathId(path);
  if (hidden && lit !== id && getAt(file, path) === undefined) return null;
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: a short cut for the pointer; the field itself takes the keys
    <g class={`figure${shines(figure, lit) ? " lit" : ""}`} data-field={id} onClick={() => goToField(id)}>
      <path class="line" d={lines} />
      <path class="tip" d={tips.map(tip).join("")} />
      <text x={at[0]} y={at[1]} text-anchor={anchor} dominant-baseline="central">
        {name} <tspan class="value">{typedWords(file, figure)}</tspan>
      </text>
    </g>
  );
}
