/**
 * Ellipses and splines of a drawing as chords that stray no more than 0.01 mm. A spline is evaluated by de Boor's algorithm
 * (C. de Boor, A Practical Guide to Splines, from memory), weights included.
 */
import type { Point } from "../plane/point.ts";

/** A curve over a run of its parameter, and where its pieces begin and end. */
export interface Curve {
  readonly at: (t: number) => Point;
  readonly pieces: readonly number[];
}

const STRAY_MM = 0.01;
/** A piece is halved so often at most: 2^9 chords. */
const MOST_HALVINGS = 9;
const MOST_PIECES = 500;
const MOST_DEGREE = 10;

/** Points along a curve; none of a curve that has none. */
export function flattened(curve: Curve | undefined): Point[] {
  if (!curve) return [];
  const { at, pieces } = curve;
  const points = [at(pieces[0]!)];
  for (let i = 1; i < pieces.length; i++) halve(at, pieces[i - 1]!, pieces[i]!, MOST_HALVINGS, points);
  return points.every(({ x, y }) => Math.abs(x) < 1e7 && Math.abs(y) < 1e7) ? points : [];
}

/** Puts the points after `from`; a stretch is looked at in its quarters, so that one that bends both ways is not taken as straight. */
function halve(at: Curve["at"], from: number, to: number, left: number, points: Point[]): void {
  const [a, b] = [at(from), at(to)];
  const strays = [0.25, 0.5, 0.75].some((share) => offChord(at(from + share * (to - from)), a, b) > STRAY_MM);
  if (left === 0 || !strays) {
    points.push(b);
    return;
  }
  const middle = (from + to) / 2;
  halve(at, from, middle, left - 1, points);
  halve(at, middle, to, left - 1, points);
}

function offChord(p: Point, a: Point, b: Point): number {
  const long = Math.hypot(b.x - a.x, b.y - a.y);
  if (long < 1e-9) return Math.hypot(p.x - a.x, p.y - a.y);
  return Math.abs((p.x - a.x) * (b.y - a.y) - (p.y - a.y) * (b.x - a.x)) / long;
}

const allPlain = (values: readonly unknown[]): values is number[] =>
  values.every((v) => typeof v === "number" && Number.isFinite(v) && Math.abs(v) < 1e7);

/** An ellipse or a part of one; its figures as the DXF reference has them (codes 10, 11, 40, 41, 42). */
export function ellipseCurve(entity: { readonly [key: string]: unknown }, mm: number): Curve | undefined {
  const { x, y, majorX, majorY, axisRatio, startAngle = 0, endAngle = 2 * Math.PI } = entity;
  const figures = [x, y, majorX, majorY, axisRatio, startAngle, endAngle];
  if (!allPlain(figures)) return undefined;
  const [cx, cy, ax, ay, ratio, start, end] = figures as [
    number,
    number,
    number,
    number,
    number,
    number,
    number,
  ];
  const turn = 2 * Math.PI;
  const sweep = (((end - start) % turn) + turn) % turn || turn;
  return {
    at: (t) => ({
      x: mm * (cx + ax * Math.cos(t) - ratio * ay * Math.sin(t)),
      y: mm * (cy + ay * Math.cos(t) + ratio * ax * Math.sin(t)),
    }),
    pieces: [0, 1, 2, 3, 4].map((quarter) => start + (sweep * quarter) / 4),
  };
}

/** A spline by its control points; undefined where its figures make none. */
export function splineCurve(entity: { readonly [key: string]: unknown }, mm: number): Curve | undefined {
  const { degree, knots, controlPoints, weights } = entity;
  if (!Array.isArray(knots) || !Array.isArray(controlPoints) || typeof degree !== "number") return undefined;
  const points = controlPoints as readonly Partial<Point>[];
  const w: readonly unknown[] = Array.isArray(weights) ? weights : points.map(() => 1);
  const sound =
    Number.isInteger(degree) &&
    degree >= 1 &&
    degree <= MOST_DEGREE &&
    points.length > degree &&
    points.length <= MOST_PIECES &&
    knots.length === points.length + degree + 1 &&
    w.length === points.length &&
    allPlain([...knots, ...w, ...points.flatMap(({ x, y }) => [x, y])]) &&
    (w as number[]).every((one) => one > 0) &&
    knots.every((knot, i) => i === 0 || knot >= knots[i - 1]);
  if (!sound) return undefined;
  const control = points.map(({ x, y }, i) => {
    const weight = w[i] as number;
    return [x! * weight * mm, y! * weight * mm, weight] as const;
  });
  const pieces = [...new Set<number>(knots.slice(degree, knots.length - degree))];
  if (pieces.length < 2) return undefined;
  return { at: (t) => deBoor(t, degree, knots, control), pieces };
}

function deBoor(
  t: number,
  degree: number,
  knots: readonly number[],
  control: readonly (readonly [number, number, number])[],
): Point {
  let s = degree;
  while (s < control.length - 1 && t >= knots[s + 1]!) s++;
  const d = Array.from({ length: degree + 1 }, (_, j) => [...control[s - degree + j]!]);
  for (let r = 1; r <= degree; r++) {
    for (let j = degree; j >= r; j--) {
      const low = knots[s - degree + j]!;
      const run = knots[s + 1 + j - r]! - low;
      const share = run === 0 ? 0 : (t - low) / run;
      for (let k = 0; k < 3; k++) d[j]![k] = (1 - share) * d[j - 1]![k]! + share * d[j]![k]!;
    }
  }
  const [x, y, weight] = d[degree] as [number, number, number];
  return { x: x / weight, y: y / weight };
}
