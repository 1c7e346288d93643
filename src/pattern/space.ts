/**
 * Rigid placements of the blank in space. The blank's own space has x and y as in the pattern and z through the sheet:
 * 0 at the unmarked face, T at the marked one. A placement may mirror, where it leads into the left-handed frame of the
 * brake (x out, y up, w to the operator's right). Exact to rounding.
 */
import type { Point } from "../plane/point.ts";
import type { Mm, Rad } from "../units/quantity.ts";

/** Three coordinates; which, is said where they are named. */
export type Spot = readonly [number, number, number];

/** Where the blank's origin comes to lie, and where its three axes point. */
export interface Placement {
  readonly origin: Spot;
  readonly alongX: Spot;
  readonly alongY: Spot;
  readonly alongZ: Spot;
}

/** The blank where it lies. */
export const AS_DRAWN: Placement = {
  origin: [0, 0, 0],
  alongX: [1, 0, 0],
  alongY: [0, 1, 0],
  alongZ: [0, 0, 1],
};

/** Where a point of the blank's space is placed. @example placed(AS_DRAWN, { x: 1, y: 2 }, 0.5) // [1, 2, 0.5] */
export function placed({ origin, alongX, alongY, alongZ }: Placement, { x, y }: Point, z: Mm): Spot {
  return [
    origin[0] + x * alongX[0] + y * alongY[0] + z * alongZ[0],
    origin[1] + x * alongX[1] + y * alongY[1] + z * alongZ[1],
    origin[2] + x * alongX[2] + y * alongY[2] + z * alongZ[2],
  ];
}

/** A direction of the blank, as placed. */
export function turned({ alongX, alongY, alongZ }: Placement, [x, y, z]: Spot): Spot {
  return [
    x * alongX[0] + y * alongY[0] + z * alongZ[0],
    x * alongX[1] + y * alongY[1] + z * alongZ[1],
    x * alongX[2] + y * alongY[2] + z * alongZ[2],
  ];
}

/** A made bend as the sheet before it sees it: a point of its tangent line, the way over it, its arc. */
export interface Fold {
  readonly tangent: Point;
  /** Unit direction across the bend, away from the sheet before it. */
  readonly nx: number;
  readonly ny: number;
  readonly allowanceMm: Mm;
  /** z of the bend's axis, and +1 where the bend turns up, toward the marked face. */
  readonly axisZ: Mm;
  readonly up: 1 | -1;
  readonly angleRad: Rad;
}

/** Placement of the sheet beyond a made bend, from that of the sheet before it. */
export function beyondFold(before: Placement, fold: Fold): Placement {
  const { tangent, nx, ny, allowanceMm, axisZ, up, angleRad } = fold;
  const [c, s] = [Math.cos(angleRad), up * Math.sin(angleRad)];
  // A direction of the blank turned about the bend's axis.
  const turn = ([x, y, z]: Spot): Spot => {
    const across = x * nx + y * ny;
    const more = across * (c - 1) - z * s;
    return [x + more * nx, y + more * ny, across * s + z * c];
  };
  const [ox, oy, oz] = turn([-allowanceMm * nx - tangent.x, -allowanceMm * ny - tangent.y, -axisZ]);
  return {
    origin: placed(before, { x: ox + tangent.x, y: oy + tangent.y }, oz + axisZ),
    alongX: turned(before, turn([1, 0, 0])),
    alongY: turned(before, turn([0, 1, 0])),
    alongZ: turned(before, turn([0, 0, 1])),
  };
}

export function dot(a: Spot, b: Spot): number {
  return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
}

/** a × b, by the rule of right-handed axes. */
export function cross(a: Spot, b: Spot): Spot {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}
