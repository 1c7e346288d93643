/**
 * The slant of a photo taken out by four corners of a rectangle of known size that lies in the clamp's plane: the projective
 * map from a square to a quadrilateral (Heckbert, Fundamentals of Texture Mapping, 1989, section 2.2.3, from memory), turned
 * round. Exact for a lens without distortion.
 */
import type { Point } from "../../src/plane/point.ts";

/** Millimetres in the plane for a spot of the photo, y down; null where the four corners go round no rectangle. */
export type Flattened = (spot: Point) => Point;

/** The flattening that makes `corners`, in their order around, a rectangle of `wideMm` by `highMm`. */
export function flattened(corners: readonly Point[], wideMm: number, highMm: number): Flattened | null {
  const [a, b, c, d] = corners;
  if (!a || !b || !c || !d || !(wideMm > 0) || !(highMm > 0) || !isConvex([a, b, c, d])) return null;
  const [sx, sy] = [a.x - b.x + c.x - d.x, a.y - b.y + c.y - d.y];
  const [dx1, dx2, dy1, dy2] = [b.x - c.x, d.x - c.x, b.y - c.y, d.y - c.y];
  const det = dx1 * dy2 - dx2 * dy1;
  const g = (sx * dy2 - dx2 * sy) / det;
  const h = (dx1 * sy - sx * dy1) / det;
  const m = [
    [b.x - a.x + g * b.x, d.x - a.x + h * d.x, a.x],
    [b.y - a.y + g * b.y, d.y - a.y + h * d.y, a.y],
    [g, h, 1],
  ] as const;
  return ({ x, y }) => {
    // u and v of the unit square: (m00 − x·g)u + (m01 − x·h)v = x − m02, and the same for y.
    const [p, q, r] = [m[0][0] - x * g, m[0][1] - x * h, x - m[0][2]];
    const [s, t, w] = [m[1][0] - y * g, m[1][1] - y * h, y - m[1][2]];
    const all = p * t - q * s;
    return { x: ((r * t - q * w) / all) * wideMm, y: ((p * w - r * s) / all) * highMm };
  };
}

/** Whether four corners go round one way without crossing. */
function isConvex(corners: readonly Point[]): boolean {
  const turns = corners.map((b, i) => {
    const [a, c] = [corners[(i + 3) % 4]!, corners[(i + 1) % 4]!];
    return (b.x - a.x) * (c.y - b.y) - (b.y - a.y) * (c.x - b.x);
  });
  return turns.every((turn) => turn > 1) || turns.every((turn) => turn < -1);
}
