/**
 * What is nested of a part: the rectangle that straight cuts take out of the sheet, the way its bends run in it, and of a
 * whole part the true outline inside. Exact.
 */
import type { WholePart } from "../pattern/wholePart.ts";
import { boxOf } from "../plane/bounding.ts";
import { filletedOutline } from "../plane/fillet.ts";
import { movedOutline, turnedOutline } from "../plane/move.ts";
import type { Outline } from "../plane/outline.ts";
import type { Mm } from "../units/quantity.ts";
import type { Nest } from "./nest.ts";

export interface NestedBlank {
  readonly widthMm: Mm;
  readonly lengthMm: Mm;
  /** Bends that don't all run along its length lie along the grain whichever way it is laid. */
  readonly bothWays?: true;
  /** Outline and holes in their place on the sheet. */
  readonly shapeAt?: (place: Nest["places"][number]) => readonly Outline[];
}

/** Bends are taken as parallel to an axis to this. */
const LEVEL = 1e-6;

/** The blank of a whole part, its bends along its length where they run one way. */
export function nestedWhole({ sheet: { pattern } }: WholePart): NestedBlank {
  const outlines = [pattern.outline, ...pattern.holes].map((corners) => {
    const made = filletedOutline(corners);
    if (!made.ok) throw new RangeError("the blank of a part that was read has a closed outline");
    return made.outline;
  });
  const box = boxOf(outlines[0]!);
  const [alongXMm, alongYMm] = [box.maxX - box.minX, box.maxY - box.minY];
  const runs = (along: "x" | "y") =>
    pattern.bends.every(({ from, to }) => Math.abs(from[along] - to[along]) < LEVEL);
  const level = runs("y");
  const [widthMm, lengthMm] = level ? [alongYMm, alongXMm] : [alongXMm, alongYMm];
  return {
    widthMm,
    lengthMm,
    ...(!level && !runs("x") && { bothWays: true as const }),
    shapeAt: ({ at, laid }) => {
      // Laid across, its width lies along the sheet's length.
      const turnRad = (laid === "across") === level ? 0 : Math.PI / 2;
      const turned = outlines.map((outline) => turnedOutline(outline, { x: 0, y: 0 }, turnRad));
      const { minX, minY } = boxOf(turned[0]!);
      return turned.map((outline) => movedOutline(outline, at.x - minX, at.y - minY));
    },
  };
}
