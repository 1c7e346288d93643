/**
 * A point well inside a face: the middle of its largest convex piece.
 */
import type { Point } from "../plane/point.ts";
import { signedArea } from "./ring.ts";
import type { WholePart } from "./wholePart.ts";

/** The point, in the blank. */
export function innerPoint({ facePieces }: WholePart, face: number): Point {
  const [largest] = [...facePieces[face]!].sort((a, b) => signedArea(b) - signedArea(a));
  const n = largest!.length;
  return {
    x: largest!.reduce((sum, { x }) => sum + x, 0) / n,
    y: largest!.reduce((sum, { y }) => sum + y, 0) / n,
  };
}
