/**
 * Statics by sums: sections from their fibres, beams by double integration, welds as many short runs that turn about their middle,
 * torsion of a flat by Saint-Venant's series. Nothing of src.
 */
export interface Rect {
  readonly x0: number;
  readonly x1: number;
  readonly y0: number;
  readonly y1: number;
}
export type Vector = readonly [x: number, y: number, w: number];

const FIBRES = 3000;

/** Second moment and least modulus of rectangles together against a load along y, or along x; holes count as negative. */
export function section(rects: readonly (Rect & { readonly less?: boolean })[], along: "x" | "y") {
  const fibres = rects.flatMap((rect) => {
    const [from, to] = along === "y" ? [rect.y0, rect.y1] : [rect.x0, rect.x1];
    const wide = along === "y" ? rect.x1 - rect.x0 : rect.y1 - rect.y0;
    const step = (to - from) / FIBRES;
    return Array.from({ length: FIBRES }, (_, i) => ({
      at: from + (i + 0.5) * step,
      area: (rect.less ? -1 : 1) * wide * step,
    }));
  });
  const area = fibres.reduce((sum, one) => sum + one.area, 0);
  const middle = fibres.reduce((sum, one) => sum + one.area * one.at, 0) / area;
  const inertia = fibres.reduce((sum, one) => sum + one.area * (one.at - middle) ** 2, 0);
  const ends = rects.flatMap((rect) => (along === "y" ? [rect.y0, rect.y1] : [rect.x0, rect.x1]));
  return { inertia, middle, modulus: inertia / Math.max(...ends.map((end) => Math.abs(end - middle))) };
}

/**
 * The same for rectangles that are no mirror of themselves, free to go sideways as they bend: turned to their principal axes (Mohr), the
 * moment split between these, put together again.
 */
export function skewSection(rects: readonly Rect[], along: "x" | "y") {
  const cells = rects.flatMap(({ x0, x1, y0, y1 }) =>
    Array.from({ length: 150 }, (_, i) =>
      Array.from({ length: 150 }, (_, k) => ({
        x: x0 + ((i + 0.5) / 150) * (x1 - x0),
        y: y0 + ((k + 0.5) / 150) * (y1 - y0),
        area: ((x1 - x0) * (y1 - y0)) / 22_500,
      })),
    ).flat(),
  );
  const sum = (of: (cell: (typeof cells)[number]) => number) =>
    cells.reduce((total, cell) => total + cell.area * of(cell), 0);
  const area = sum(() => 1);
  const [midX, midY] = [sum(({ x }) => x) / area, sum(({ y }) => y) / area];
  const ix = sum(({ y }) => (y - midY) ** 2);
  const iy = sum(({ x }) => (x - midX) ** 2);
  const ixy = sum(({ x, y }) => (x - midX) * (y - midY));
  const turn = Math.atan2(-2 * ixy, ix - iy) / 2;
  const [cos, sin] = [Math.cos(turn), Math.sin(turn)];
  const major = (ix + iy) / 2 + Math.hypot((ix - iy) / 2, ixy);
  const minor = ix + iy - major;
  // Against a load along y the moment stands along x: its shares along the major and the minor axis.
  const [toMajor, toMinor] = along === "y" ? [cos, -sin] : [sin, cos];
  const corners = rects.flatMap(({ x0, x1, y0, y1 }) =>
    [x0, x1].flatMap((x) => [y0, y1].map((y) => ({ x, y }))),
  );
  const stresses = corners.map(({ x, y }) => {
    const [u, v] = [(x - midX) * cos + (y - midY) * sin, (y - midY) * cos - (x - midX) * sin];
    return Math.abs((toMajor * v) / major - (toMinor * u) / minor);
  });
  return {
    inertia: 1 / (toMajor ** 2 / major + toMinor ** 2 / minor),
    modulus: 1 / Math.max(...stresses),
    middle: { x: midX, y: midY },
  };
}

/** Modulus of a flat that bends across its thickness. */
export function flatModulus(wide: number, thick: number): number {
  return section([{ x0: 0, x1: wide, y0: 0, y1: thick }], "y").modulus;
}

/** Modulus of a circle from strips. */
export function roundModulus(d: number): number {
  const strips = Array.from({ length: FIBRES }, (_, i) => ((i + 0.5) / FIBRES - 0.5) * d);
  return (
    strips.reduce((sum, y) => sum + y * y * 2 * Math.sqrt((d / 2) ** 2 - y * y) * (d / FIBRES), 0) / (d / 2)
  );
}

/** Moment and sag in the middle of a beam loaded on its middle stretch. */
export function beam(load: number, loaded: number, span: number, ei: number) {
  const steps = 4000;
  const dx = span / steps;
  const start = (span - loaded) / 2;
  const moments = Array.from({ length: steps + 1 }, (_, i) => {
    const x = i * dx;
    const under = Math.min(Math.max(x - start, 0), loaded);
    return ((load * loaded) / 2) * x - load * under * Math.max(x - start - under / 2, 0);
  });
  let [slope, y, sag] = [0, 0, 0];
  const ys = [0];
  for (let i = 1; i <= steps; i++) {
    slope += ((moments[i - 1]! + moments[i]!) / 2 / ei) * dx;
    y += slope * dx;
    ys.push(y);
  }
  const tilt = ys.at(-1)! / span;
  for (let i = 0; i <= steps; i++) sag = Math.max(sag, tilt * i * dx - ys[i]!);
  return { moment: Math.max(...moments), sag };
}

/** Torsion constant of a flat, and the largest shear of it under a torque: Saint-Venant's series (Timoshenko & Goodier). */
export function torsion(a: number, b: number) {
  const [t, wide] = [Math.min(a, b), Math.max(a, b)];
  let [sum, edge] = [0, 0];
  for (let n = 1; n < 60; n += 2) {
    const q = (n * Math.PI * wide) / (2 * t);
    sum += Math.tanh(q) / n ** 5;
    edge += q > 300 ? 0 : 1 / (n * n * Math.cosh(q));
  }
  const constant = ((wide * t ** 3) / 3) * (1 - ((192 * t) / (Math.PI ** 5 * wide)) * sum);
  return { constant, shear: (torque: number) => (torque * t * (1 - (8 / Math.PI ** 2) * edge)) / constant };
}

export interface Run {
  readonly from: Vector;
  readonly to: Vector;
  /** Share of it that is welded. */
  readonly share?: number;
}

const minus = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];

/** Largest stress in the throat of fillets that turn as one about their middle under a force: per length f/L + θ × r, over 0.707 of the leg. */
export function weldStress(runs: readonly Run[], leg: number, force: Vector, at: Vector): number {
  const steps = 200;
  const points = runs.flatMap(({ from, to, share = 1 }) => {
    const along = minus(to, from);
    const long = (share * Math.hypot(...along)) / steps;
    return Array.from({ length: steps }, (_, i) => {
      const part = (i + 0.5) / steps;
      return { long, at: from.map((value, k) => value + part * along[k]!) as unknown as Vector };
    });
  });
  const total = points.reduce((sum, { long }) => sum + long, 0);
  const middle = [0, 1, 2].map(
    (k) => points.reduce((sum, one) => sum + one.long * one.at[k]!, 0) / total,
  ) as unknown as Vector;
  const turning = cross(minus(at, middle), force);
  const tensor = [0, 1, 2].map((i) =>
    [0, 1, 2].map((k) =>
      points.reduce((sum, one) => {
        const r = minus(one.at, middle);
        return sum + one.long * ((i === k ? r[0] ** 2 + r[1] ** 2 + r[2] ** 2 : 0) - r[i]! * r[k]!);
      }, 0),
    ),
  );
  const theta = solved(tensor, turning);
  const worst = points.map((one) => {
    const turned = cross(theta, minus(one.at, middle));
    return Math.hypot(...force.map((f, k) => f / total + turned[k]!));
  });
  return Math.max(...worst) / (leg * Math.SQRT1_2);
}

/** Three equations by Cramer's rule. */
function solved(m: readonly (readonly number[])[], right: Vector): Vector {
  const [a, b, c] = m as unknown as readonly [Vector, Vector, Vector];
  const dot = (p: Vector, q: Vector) => p[0] * q[0] + p[1] * q[1] + p[2] * q[2];
  const det = dot(a, cross(b, c));
  // The tensor is symmetric, so that its rows are its columns.
  return [dot(right, cross(b, c)) / det, dot(a, cross(right, c)) / det, dot(a, cross(b, right)) / det];
}
