/**
 * The distance between two features as a function of the leaf angle φ, in one form for every kind of pair:
 * f = k0 + k1·cos φ + k2·sin φ + s·(k3 + k4·cos φ + k5·sin φ + k6·s), with s = s(φ) the slide (motion/swing.ts).
 * Derived by writing the moving point (U + s, V) turned by φ; f is a distance (straight edges) or a squared one (arcs).
 */
import type { Moment, Swing } from "../motion/swing.ts";

/** One curve at a time, set anew for each pair: a sweep has dozens of them. */
export class PairCurve {
  /** k0 … k6 */
  readonly k = new Float64Array(7);

  /** Moving point (U, V) over a fixed line n·p = off: f = signed distance outside the line. */
  pointOverLine(U: number, V: number, nx: number, ny: number, off: number): void {
    const { k } = this;
    k[0] = -off;
    k[1] = U * nx + V * ny;
    k[2] = U * ny - V * nx;
    k[3] = 0;
    k[4] = nx;
    k[5] = ny;
    k[6] = 0;
  }

  /** Fixed point (x, y) over a moving line m·p = off: f = signed distance outside the line. */
  lineOverPoint(x: number, y: number, mx: number, my: number, off: number): void {
    const { k } = this;
    k[0] = -off;
    k[1] = mx * x + my * y;
    k[2] = mx * y - my * x;
    k[3] = -mx;
    k[4] = 0;
    k[5] = 0;
    k[6] = 0;
  }

  /** Squared distance between a moving point (U, V) and a fixed point (x, y); `sign` −1 turns it over. */
  pointFromPoint(U: number, V: number, x: number, y: number, sign: number): void {
    const { k } = this;
    k[0] = sign * (U * U + V * V + x * x + y * y);
    k[1] = -2 * sign * (U * x + V * y);
    k[2] = -2 * sign * (U * y - V * x);
    k[3] = 2 * sign * U;
    k[4] = -2 * sign * x;
    k[5] = -2 * sign * y;
    k[6] = sign;
  }

  /** Takes `by` off at every angle. */
  lower(by: number): void {
    this.k[0] = this.k[0]! - by;
  }

  /** f where cos φ = c, sin φ = s and the slide is u. */
  value(c: number, s: number, u: number): number {
    const { k } = this;
    return k[0]! + k[1]! * c + k[2]! * s + u * (k[3]! + k[4]! * c + k[5]! * s + k[6]! * u);
  }

  /** f′ at a moment; `turns` 0 for a motion that only slides. */
  rate(turns: number, { cos: c, sin: s, slide: u, slideRate: u1 }: Moment): number {
    const { k } = this;
    return (
      u1 * (k[3]! + k[4]! * c + k[5]! * s + 2 * k[6]! * u) +
      turns * (k[2]! * c - k[1]! * s + u * (k[5]! * c - k[4]! * s))
    );
  }

  /** A bound on |f″| over the whole swing. */
  mostBend({ maxSlide, maxSlideRate, maxSlideBend, turns }: Swing): number {
    const { k } = this;
    const turning = Math.sqrt(k[1]! * k[1]! + k[2]! * k[2]!);
    const sliding = Math.sqrt(k[4]! * k[4]! + k[5]! * k[5]!);
    return (
      turns * (turning + sliding * (2 * maxSlideRate + maxSlide)) +
      (Math.abs(k[3]!) + sliding) * maxSlideBend +
      2 * Math.abs(k[6]!) * (maxSlideRate * maxSlideRate + maxSlide * maxSlideBend)
    );
  }
}
