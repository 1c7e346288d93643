/**
 * The box of a piece and the pieces of a design by id or name, read off the plain data without any help of src.
 */
import type { NarrowBrakePlan } from "../../src/narrowBrake/narrowBrake.ts";
import type { Named } from "./designs.ts";
import type { PieceLike } from "./solidOverlap.ts";

export type Piece = PieceLike & { readonly item: number; readonly name: string };

export function boxOfPiece({ shape }: PieceLike) {
  if ("profile" in shape) {
    const [xs, ys] = [shape.profile.map(([x]) => x), shape.profile.map(([, y]) => y)];
    return {
      x0: Math.min(...xs),
      x1: Math.max(...xs),
      y0: Math.min(...ys),
      y1: Math.max(...ys),
      w0: shape.from,
      w1: shape.to,
    };
  }
  const r = shape.diameter / 2;
  const side = (i: 0 | 1 | 2) => {
    const along = Math.abs(shape.to[i] - shape.from[i]) > 1e-9;
    return [
      Math.min(shape.from[i], shape.to[i]) - (along ? 0 : r),
      Math.max(shape.from[i], shape.to[i]) + (along ? 0 : r),
    ] as const;
  };
  const [x, y, w] = [side(0), side(1), side(2)];
  return { x0: x[0], x1: x[1], y0: y[0], y1: y[1], w0: w[0], w1: w[1] };
}

export const planOf = (of: Named) => of.design.plan as NarrowBrakePlan;
export const piecesOf = (of: Named) => planOf(of).assembly.pieces as readonly Piece[];
export const one = (pieces: readonly Piece[], id: string) => pieces.find((piece) => piece.id === id)!;
export const named = (pieces: readonly Piece[], name: string) =>
  pieces.filter((piece) => piece.name === name);
