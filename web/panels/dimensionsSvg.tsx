/**
 * Placed dimensions as SVG: lines, arrowheads, arcs, and each label with its number and figure; a press on one goes to its field.
 */
import type { Placed } from "../drafting/asked.ts";

export function DimensionsSvg({
  placed,
  lit,
  label,
  onPress,
}: {
  readonly placed: readonly Placed[];
  /** Key of the one that shines. */
  readonly lit: string | null;
  readonly label: (key: string) => {
    readonly number: string;
    readonly words: string;
    readonly round: boolean;
  };
  readonly onPress: (key: string) => void;
}) {
  return (
    <>
      {placed.map(({ key, lines, heads }) => (
        <g key={key} class={`dimension${key === lit ? " lit" : ""}`}>
          {lines.map(([a, b], i) => (
            <line key={i} x1={a.x} y1={a.y} x2={b.x} y2={b.y} />
          ))}
          {heads.map((head, i) => (
            <path key={i} d={`M${head.map(({ x, y }) => `${x} ${y}`).join("L")}Z`} />
          ))}
        </g>
      ))}
      {placed.map(({ key, box, whole }) => {
        const { number, words, round } = label(key);
        const [left, top, wide, high] = [
          box.x - box.halfWide,
          box.y - box.halfHigh,
          2 * box.halfWide,
          2 * box.halfHigh,
        ];
        return (
          // biome-ignore lint/a11y/noStaticElementInteractions: a short cut for the pointer; the field itself takes the keys
          <g
            key={key}
            class={`dimension-label${key === lit ? " lit" : ""}${round ? " round" : ""}`}
            data-key={key}
            onClick={() => onPress(key)}
          >
            <rect x={left} y={top} width={wide} height={high} rx={round ? high / 2 : 2} />
            <text x={box.x} y={box.y} text-anchor="middle" dominant-baseline="central">
              {number === "" ? null : <tspan class="number">{number}</tspan>}
              {whole && words !== "" ? <tspan dx={number === "" ? 0 : 5}>{words}</tspan> : null}
            </text>
          </g>
        );
      })}
    </>
  );
}

/** Brings a field into sight with the keys in it. */
export function goToField(id: string): void {
  const field = document.getElementById(id);
  if (!(field instanceof HTMLInputElement || field instanceof HTMLSelectElement)) return;
  for (let fold = field.closest("details"); fold; fold = fold.parentElement?.closest("details") ?? null)
    fold.open = true;
  field.focus();
  if (field instanceof HTMLInputElement) field.select();
}
