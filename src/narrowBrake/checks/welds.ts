/**
 * Where the welds that are checked as lines run, read off the assembly: the ears on the ends of leaf and spine.
 */
import type { WeldLine } from "../strength/weldLines.ts";
import { measured, type UnderLoad } from "./under.ts";

/** Two upright runs at the leaf's end: along its back face, and along its front face or the ear's own edge. */
export function leafEarWeld(under: UnderLoad): readonly WeldLine[] {
  const leaf = measured(under, "leaf");
  const ear = measured(under, "leaf-ear-right");
  const lowY = Math.max(leaf.minY, ear.minY);
  // Clear of the working face by the leg and of the pin's bore.
  const highY = -ear.holes[0]!.diameter / 2 - under.sizes.weldMm;
  const frontX = Math.min(leaf.maxX, ear.maxX);
  return [
    [
      [0, lowY],
      [0, highY],
    ],
    [
      [frontX, lowY],
      [frontX, highY],
    ],
  ];
}

/** Two upright runs at the spine's end, along its front and its back. */
export function bedEarWeld(under: UnderLoad): readonly WeldLine[] {
  const spine = measured(under, "spine");
  const ear = measured(under, "bed-ear-right");
  const lowY = Math.max(spine.minY, ear.minY);
  return [spine.maxX, spine.minX].map((x) => [
    [x, lowY],
    [x, spine.maxY],
  ]);
}
