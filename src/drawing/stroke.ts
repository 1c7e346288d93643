/**
 * Marks brought down to what any pen can do: straight strokes, arcs and words, each on its layer.
 * Crosses and dimensions become strokes here, so that every pen sets them alike. Exact but for rounding.
 */
import type { Point } from "../plane/point.ts";
import type { Mm, Rad } from "../units/quantity.ts";
import { dimensionStrokes } from "./dimensionStrokes.ts";
import type { Layer, Mark } from "./model.ts";

/** A line or an arc as the model has it, or words whose angle is always said. */
export type Stroke =
  | Extract<Mark, { kind: "line" | "arc" }>
  | (Extract<Mark, { kind: "text" }> & { readonly angleRad: Rad });

const CROSS_ARM_MM: Mm = 2.6;

/**
 * Strokes of one mark, in the drawing's frame; `pageMm` is what a millimetre of the page is in the drawing.
 * @example strokesOf({ kind: "cross", layer: "contact", at: { x: 0, y: 0 } }, 1).length // 2
 */
export function strokesOf(mark: Mark, pageMm: number): readonly Stroke[] {
  switch (mark.kind) {
    case "line":
    case "arc":
      return [mark];
    case "text":
      return [{ ...mark, angleRad: mark.angleRad ?? 0 }];
    case "outline":
      return mark.outline.edges.map((edge) => ({ ...edge, layer: mark.layer }));
    case "cross":
      return cross(mark.layer, mark.at, CROSS_ARM_MM * pageMm);
    case "dimension":
      return ofDimension(mark, pageMm);
  }
}

function cross(layer: Layer, { x, y }: Point, half: Mm): readonly Stroke[] {
  return [
    { kind: "line", layer, from: { x: x - half, y: y - half }, to: { x: x + half, y: y + half } },
    { kind: "line", layer, from: { x: x - half, y: y + half }, to: { x: x + half, y: y - half } },
  ];
}

function ofDimension(mark: Extract<Mark, { kind: "dimension" }>, pageMm: number): readonly Stroke[] {
  const { layer, words } = mark;
  const { lines, heads, words: place } = dimensionStrokes(mark, pageMm);
  const runs = [...lines, ...heads.map((head) => [...head, ...head.slice(0, 1)])];
  const strokes: Stroke[] = runs.flatMap((run) =>
    run.slice(1).map((to, index) => ({ kind: "line", layer, from: run[index] ?? to, to }) as const),
  );
  return [...strokes, { kind: "text", layer, words, ...place }];
}
