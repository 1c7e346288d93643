/**
 * Fillet welds as lines: the largest stress in the throat under a force that acts off the weld, in its plane and out of it.
 * Weld treated as a line (Blodgett, Design of Welded Structures, section 7.4, from memory); throat 0.707 of the leg; allowed
 * 0.30 of the electrode's strength, 145 MPa for E70 (AWS D1.1, clause 2; Shigley, table 9-6: 21.0 ksi).
 * Exact for lines of no width; the greatest stress stands at the end of some line.
 */
import type { Mm, Mpa } from "../../units/quantity.ts";

/** Strength of E70 weld metal, 70 ksi. */
const ELECTRODE_MPA: Mpa = 482;
export const WELD_ALLOWED_MPA: Mpa = 0.3 * ELECTRODE_MPA;
export const THROAT_OF_LEG = Math.SQRT1_2;

type Point = readonly [x: Mm, y: Mm];
export type WeldLine = readonly [from: Point, to: Point];

export interface WeldLoad {
  /** In the plane of the weld, N. */
  readonly force: Point;
  /** Where its line of action goes through that plane. */
  readonly at: Point;
  /** How far off the plane it acts. */
  readonly offMm: Mm;
}

/**
 * Largest stress in the throat, MPa.
 * @example weldStress([[[0, 0], [100, 0]]], 10, { force: [7071, 0], at: [50, 0], offMm: 0 }) // 10
 */
export function weldStress(lines: readonly WeldLine[], legMm: Mm, load: WeldLoad): Mpa {
  const { centroid, length, xx, yy, xy } = figuresOf(lines);
  const [fx, fy] = load.force;
  const twist = (load.at[0] - centroid[0]) * fy - (load.at[1] - centroid[1]) * fx;
  const polar = xx + yy;
  // Out of the plane the force turns the weld about both axes of the plane at once.
  const [mx, my] = [fy * load.offMm, fx * load.offMm];
  const spread = xx * yy - xy * xy;
  const worst = Math.max(
    ...lines.flat().map(([x, y]) => {
      const [rx, ry] = [x - centroid[0], y - centroid[1]];
      const inX = fx / length - (twist * ry) / polar;
      const inY = fy / length + (twist * rx) / polar;
      const out =
        spread < 1e-6 * polar ** 2 ? lineOut(mx, my, rx, ry, polar) : outOf(mx, my, rx, ry, [xx, yy, xy]);
      return Math.hypot(inX, inY, out);
    }),
  );
  return worst / (THROAT_OF_LEG * legMm);
}

function outOf(
  mx: number,
  my: number,
  rx: Mm,
  ry: Mm,
  [xx, yy, xy]: readonly [xx: number, yy: number, xy: number],
): number {
  const spread = xx * yy - xy * xy;
  const a = (my * xx - mx * xy) / spread;
  const b = (mx * yy - my * xy) / spread;
  return a * rx + b * ry;
}

/** A single straight line bends only along itself. */
function lineOut(mx: number, my: number, rx: Mm, ry: Mm, polar: number): number {
  return (Math.hypot(mx, my) * Math.hypot(rx, ry)) / polar;
}

/** xx: second moment about the x axis (of y²); yy: of x²; xy: of x·y; all about the centroid, mm³. */
function figuresOf(lines: readonly WeldLine[]) {
  const parts = lines.map(([a, b]) => ({
    a,
    b,
    long: Math.hypot(b[0] - a[0], b[1] - a[1]),
    middle: [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2] as const,
  }));
  const length = parts.reduce((sum, { long }) => sum + long, 0);
  const mean = (i: 0 | 1) => parts.reduce((sum, { long, middle }) => sum + long * middle[i], 0) / length;
  const centroid: Point = [mean(0), mean(1)];
  const moment = (i: 0 | 1, j: 0 | 1) =>
    parts.reduce((sum, { a, b, long, middle }) => {
      const own = (long * (b[i] - a[i]) * (b[j] - a[j])) / 12;
      return sum + own + long * (middle[i] - centroid[i]) * (middle[j] - centroid[j]);
    }, 0);
  return { centroid, length, xx: moment(1, 1), yy: moment(0, 0), xy: moment(0, 1) };
}
