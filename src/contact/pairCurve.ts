/**
 * The distance between two features as a function of the leaf angle φ, in one form for every kind of pair:
 * f = k0 + k1·cos φ + k2·sin φ + s·(k3 + k4·cos φ + k5·sin φ + k6·s), with s = s(φ) the slide (motion/swing.ts).
 * Derived by writing the moving point (U + s, V) turned by φ; f is a distance (straight edges) or a squared one (arcs).
 */
import type { Swing } from "../motion/swing.ts";

/** One curve at a time, set anew for each pair: a sweep has dozens of them. */
export class PairCurve {
  k0 = 0;
  k1 = 0;
  k2 = 0;
  k3 = 0;
  k4 = 0;
  k5 = 0;
  k6 = 0;

  /** Moving point (U, V) over a fixed line n·p = off: f = signed distance outside the line. */
  pointOverLine(U: number, V: number, nx: number, ny: number, off: number): void {
    this.k0 = -off;
    this.k1 = U * nx + V * ny;
    this.k2 = U * ny - V * nx;
    this.k3 = 0;
    this.k4 = nx;
    this.k5 = ny;
    this.k6 = 0;
  }

  /** Fixed point (x, y) over a moving line m·p = off: f = signed distance outside the line. */
  lineOverPoint(x: number, y: number, mx: number, my: number, off: number): void {
    this.k0 = -off;
    this.k1 = mx * x + my * y;
    this.k2 = mx * y - my * x;
    this.k3 = -mx;
    this.k4 = 0;
    this.k5 = 0;
    this.k6 = 0;
  }

  /** Squared distance between a moving point (U, V) and a fixed point (x, y); `sign` −1 turns it over. */
  pointFromPoint(U: number, V: number, x: number, y: number, sign: number): void {
    this.k0 = sign * (U * U + V * V + x * x + y * y);
    this.k1 = -2 * sign * (U * x + V * y);
    this.k2 = -2 * sign * (U * y - V * x);
    this.k3 = 2 * sign * U;
    this.k4 = -2 * sign * x;
    this.k5 = -2 * sign * y;
    this.k6 = sign;
  }

  /** Takes `by` off at every angle. */
  lower(by: number): void {
    this.k0 = this.k0 - by;
  }

  /** f where cos φ = c, sin φ = s and the slide is u. */
  value(c: number, s: number, u: number): number {
    return this.k0 + this.k1 * c + this.k2 * s + u * (this.k3 + this.k4 * c + this.k5 * s + this.k6 * u);
  }

  /** f′ there, with u1 the slide's rate; `turns` 0 for a motion that only slides. */
  rate(turns: number, c: number, s: number, u: number, u1: number): number {
    return (
      u1 * (this.k3 + this.k4 * c + this.k5 * s + 2 * this.k6 * u) +
      turns * (this.k2 * c - this.k1 * s + u * (this.k5 * c - this.k4 * s))
    );
  }

  /** A bound on |f″| over the whole swing. */
  mostBend({ maxSlide, maxSlideRate, maxSlideBend, turns }: Swing): number {
    const turning = Math.sqrt(this.k1 * this.k1 + this.k2 * this.k2);
    const sliding = Math.sqrt(this.k4 * this.k4 + this.k5 * this.k5);
    return (
      turns * (turning + sliding * (2 * maxSlideRate + maxSlide)) +
      (Math.abs(this.k3) + sliding) * maxSlideBend +
      2 * Math.abs(this.k6) * (maxSlideRate * maxSlideRate + maxSlide * maxSlideBend)
    );
  }
}
