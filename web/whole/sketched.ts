/**
 * A drawing as the page shows it: its lines as one path a layer, bodies one path each, words and crosses. Made in the worker.
 */
import { hatchOf } from "../../src/drawing/hatch.ts";
import type { Drawing, Layer } from "../../src/drawing/model.ts";
import { outlinePath, svgPoint } from "../../src/drawing/pathData.ts";
import type { Mm } from "../../src/units/quantity.ts";

export interface Sketched {
  readonly sentence: string;
  /** mm, y down. */
  readonly window: { readonly x: Mm; readonly y: Mm; readonly wide: Mm; readonly high: Mm };
  readonly lines: readonly { readonly layer: Layer; readonly d: string }[];
  /** With the direction of its hatch, where it has one. */
  readonly bodies: readonly { readonly layer: Layer; readonly d: string; readonly hatchDeg: number | null }[];
  readonly words: readonly { readonly x: Mm; readonly y: Mm; readonly size: Mm; readonly text: string }[];
  readonly crosses: readonly { readonly x: Mm; readonly y: Mm }[];
}

/** The drawing's marks, in the order of their kinds. */
export function sketched({ sentence, window: { min, max }, marks }: Drawing): Sketched {
  const lines = new Map<Layer, string[]>();
  for (const mark of marks) {
    if (mark.kind !== "line") continue;
    const all = lines.get(mark.layer) ?? [];
    all.push(`M${svgPoint(mark.from)}L${svgPoint(mark.to)}`);
    lines.set(mark.layer, all);
  }
  return {
    sentence,
    window: { x: min.x, y: -max.y, wide: max.x - min.x, high: max.y - min.y },
    lines: [...lines].map(([layer, all]) => ({ layer, d: all.join("") })),
    bodies: marks.flatMap((mark) => {
      if (mark.kind !== "outline") return [];
      const { layer, outline } = mark;
      return [{ layer, d: outlinePath(outline), hatchDeg: hatchOf(layer, outline)?.angleDeg ?? null }];
    }),
    words: marks.flatMap((mark) =>
      mark.kind === "text" ? [{ x: mark.at.x, y: -mark.at.y, size: mark.heightMm, text: mark.words }] : [],
    ),
    crosses: marks.flatMap((mark) => (mark.kind === "cross" ? [{ x: mark.at.x, y: -mark.at.y }] : [])),
  };
}
