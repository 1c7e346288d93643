/**
 * A scale bar of a round length in the user's unit: two fields, one filled, with the length beside it.
 */
import type { Point } from "../plane/point.ts";
import { type LengthUnit, MM_PER_INCH } from "../units/length.ts";
import type { Mark } from "./model.ts";
import { rectangle } from "./polygon.ts";

const ROUND: Readonly<Record<LengthUnit, readonly (readonly [lengthMm: number, words: string])[]>> = {
  mm: [1, 2, 5, 10, 20, 50, 100, 200, 500].map((length) => [length, `${length} mm`] as const),
  in: [
    [MM_PER_INCH / 16, "1/16 in"],
    [MM_PER_INCH / 8, "1/8 in"],
    [MM_PER_INCH / 4, "1/4 in"],
    [MM_PER_INCH / 2, "1/2 in"],
    [MM_PER_INCH, "1 in"],
    [2 * MM_PER_INCH, "2 in"],
    [5 * MM_PER_INCH, "5 in"],
    [10 * MM_PER_INCH, "10 in"],
    [20 * MM_PER_INCH, "20 in"],
  ],
};

/** A scale bar that starts at `at`, the longest round length that is at most `roomMm` long. */
export function scaleBar(at: Point, roomMm: number, textMm: number, units: LengthUnit): Mark[] {
  const lengths = ROUND[units];
  const [lengthMm, words] =
    lengths.findLast(([length]) => length <= roomMm) ?? (lengths[0] as [number, string]);
  const high = textMm * 0.35;
  const middle = { x: at.x + lengthMm / 2, y: at.y };
  return [
    { kind: "outline", layer: "part", outline: rectangle(at, { x: middle.x, y: at.y + high }) },
    {
      kind: "outline",
      layer: "dimension",
      outline: rectangle(middle, { x: at.x + lengthMm, y: at.y + high }),
    },
    {
      kind: "text",
      layer: "note",
      at: { x: at.x + lengthMm + textMm * 0.6, y: at.y - textMm * 0.15 },
      words,
      heightMm: textMm,
      anchor: "start",
    },
  ];
}
