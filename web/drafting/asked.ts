/**
 * What is to be labelled on a drawing, and how a label may be placed. All in canvas points, y down.
 */
import type { Point } from "../../src/plane/point.ts";
import type { Box, Piece } from "./boxes.ts";

export interface Size {
  readonly halfWide: number;
  readonly halfHigh: number;
}

interface Asked {
  /** Its own among all that are placed together. */
  readonly key: string;
  readonly size: Size;
}

/** A length between two points of the drawing. */
export interface AskedLength extends Asked {
  readonly kind: "length";
  readonly from: Point;
  readonly to: Point;
  /** Side on which each end's face lies, seen from `from` to `to`: 1 right, -1 left, 0 both. */
  readonly faces: readonly [1 | 0 | -1, 1 | 0 | -1];
  /** From the line between the points to a face. */
  readonly half: number;
  /** Size of the number alone, where its figure finds no room. */
  readonly small: Size;
  /** Which piece of the sheet it is, so that its own metal is no obstacle to its extension lines. */
  readonly own: number;
}

/** A number at a point, on a leader where it stands off. */
export interface AskedNote extends Asked {
  readonly kind: "note";
  readonly at: Point;
  /** Which way it is tried first. */
  readonly away: Point;
  /** Half of the sheet there. */
  readonly half: number;
  /** Always with a leader, as of a radius. */
  readonly led?: boolean;
}

/** An angle at a corner, counter-clockwise as seen, from one direction to another. */
export interface AskedAngle extends Asked {
  readonly kind: "angle";
  readonly at: Point;
  readonly fromRad: number;
  readonly toRad: number;
}

export type AskedLabel = AskedLength | AskedNote | AskedAngle;

export interface Placed {
  readonly key: string;
  readonly box: Box;
  /** Whether its figure found room; else its number stands alone. */
  readonly whole: boolean;
  readonly lines: readonly Piece[];
  /** Arrowheads, tip first. */
  readonly heads: readonly (readonly [Point, Point, Point])[];
  readonly arc?: {
    readonly at: Point;
    readonly radius: number;
    readonly fromRad: number;
    readonly toRad: number;
  };
}

/** One way to place a label; the cheapest that keeps off everything is taken. */
export interface Choice {
  readonly box: Box;
  readonly whole: boolean;
  readonly cost: number;
  /** Piece of the sheet that its strokes may touch. */
  readonly own?: number;
  /** What is drawn with it, worked out only where its box is free. */
  readonly drawn: () => Drawn;
}

export interface Drawn extends Pick<Placed, "lines" | "heads" | "arc"> {
  /** Of the lines those that should not run over metal: dimension line and leader, then extension lines. */
  readonly strokes: readonly Piece[];
  readonly extensions: readonly Piece[];
}
