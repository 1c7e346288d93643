/**
 * A shape of the reference: a closed polygon, counter-clockwise, as x0, y0, x1, y1, … with arcs flattened.
 * Vertices lie on the true arc, so a flattened arc is short of it by at most the chord error named by the caller.
 */
export type Shape = Float64Array;

/** A profile's vertex: x, y and, where the corner is rounded, its radius. */
export type Corner = readonly [number, number] | readonly [number, number, number];

/** Appends the points of an arc, first and last included; the chord is off by at most `chordMm`. */
export function pushArc(
  out: number[],
  center: readonly [number, number],
  radius: number,
  startRad: number,
  sweepRad: number,
  chordMm: number,
): void {
  const widest = radius > chordMm ? 2 * Math.acos(1 - chordMm / radius) : Math.PI / 2;
  const steps = Math.max(1, Math.ceil(Math.abs(sweepRad) / widest));
  for (let i = 0; i <= steps; i++) {
    const at = startRad + (sweepRad * i) / steps;
    out.push(center[0] + radius * Math.cos(at), center[1] + radius * Math.sin(at));
  }
}

/** Twice the signed area of a ring of corners; positive when counter-clockwise. */
function windingOf(corners: readonly Corner[]): number {
  return corners.reduce((sum, a, i) => {
    const b = corners[(i + 1) % corners.length]!;
    return sum + a[0] * b[1] - b[0] * a[1];
  }, 0);
}

/** A profile with its rounded corners flattened, counter-clockwise whichever way it was given. */
export function flattenProfile(profile: readonly Corner[], chordMm: number): Shape {
  const corners = windingOf(profile) < 0 ? [...profile].reverse() : profile;
  const out: number[] = [];
  corners.forEach((corner, i) => {
    const radius = corner[2] ?? 0;
    if (radius <= 0) {
      out.push(corner[0], corner[1]);
      return;
    }
    const before = corners[(i + corners.length - 1) % corners.length]!;
    const after = corners[(i + 1) % corners.length]!;
    const inRad = Math.atan2(corner[1] - before[1], corner[0] - before[0]);
    const outRad = Math.atan2(after[1] - corner[1], after[0] - corner[0]);
    const turnRad = Math.atan2(Math.sin(outRad - inRad), Math.cos(outRad - inRad));
    const side = turnRad >= 0 ? 1 : -1;
    const cut = radius * Math.tan(Math.abs(turnRad) / 2);
    const center: [number, number] = [
      corner[0] - cut * Math.cos(inRad) - side * radius * Math.sin(inRad),
      corner[1] - cut * Math.sin(inRad) + side * radius * Math.cos(inRad),
    ];
    pushArc(out, center, radius, inRad - (side * Math.PI) / 2, turnRad, chordMm);
  });
  return Float64Array.from(out);
}

/** The shape turned about the origin by `angleRad`, then moved by (dx, dy). */
export function placed(shape: Shape, angleRad: number, dx: number, dy: number): Shape {
  const c = Math.cos(angleRad);
  const s = Math.sin(angleRad);
  const out = new Float64Array(shape.length);
  for (let i = 0; i < shape.length; i += 2) {
    const x = shape[i]!;
    const y = shape[i + 1]!;
    out[i] = c * x - s * y + dx;
    out[i + 1] = s * x + c * y + dy;
  }
  return out;
}

/** The shape seen in a mirror on the line x = 0, still counter-clockwise. */
export function mirrored(shape: Shape): Shape {
  const out = new Float64Array(shape.length);
  for (let i = 0; i < shape.length; i += 2) {
    out[shape.length - 2 - i] = -shape[i]!;
    out[shape.length - 1 - i] = shape[i + 1]!;
  }
  return out;
}

/** What of the shape lies at or right of x = `from`, or null. */
export function rightOf(shape: Shape, from: number): Shape | null {
  const out: number[] = [];
  for (let i = 0; i < shape.length; i += 2) {
    const j = (i + 2) % shape.length;
    const [ax, ay, bx, by] = [shape[i]!, shape[i + 1]!, shape[j]!, shape[j + 1]!];
    if (ax >= from) out.push(ax, ay);
    if (ax >= from !== bx >= from) out.push(from, ay + ((by - ay) * (from - ax)) / (bx - ax));
  }
  return out.length < 6 ? null : Float64Array.from(out);
}

/** Smallest box round the shape: [xmin, ymin, xmax, ymax]. */
export function boxOf(shape: Shape): [number, number, number, number] {
  let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
  for (let i = 0; i < shape.length; i += 2) {
    x0 = Math.min(x0, shape[i]!);
    x1 = Math.max(x1, shape[i]!);
    y0 = Math.min(y0, shape[i + 1]!);
    y1 = Math.max(y1, shape[i + 1]!);
  }
  return [x0, y0, x1, y1];
}
