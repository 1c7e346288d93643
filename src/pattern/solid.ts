/**
 * A convex body of sheet as it stands in the brake: two rings of equally many corners, one near each face of the sheet,
 * straight between. Clipped to an interval of w and projected along w it is a convex polygon of the section; it meets a
 * body of the brake that runs over that interval if and only if the polygon meets the body's profile. Exact.
 */
import { convexHull } from "../plane/convexHull.ts";
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";
import type { Ring } from "./ring.ts";
import { type Placement, placed, type Spot } from "./space.ts";

/** Edges along w, or square to it, within this: the body then looks the same over its whole length. */
const STRAIGHT_MM: Mm = 1e-7;

export class Solid {
  readonly minW: number;
  readonly maxW: number;
  /** Looks the same over all of its length in w. */
  readonly straight: boolean;
  private readonly edges: readonly (readonly [number, number])[];
  /** The first ring, then the second, in the same order. */
  private readonly x: Float64Array;
  private readonly y: Float64Array;
  private readonly w: Float64Array;
  private whole: Point[] | undefined;

  constructor(first: readonly Spot[], second: readonly Spot[]) {
    const n = first.length;
    const spots = [...first, ...second];
    this.x = Float64Array.from(spots, ([x]) => x);
    this.y = Float64Array.from(spots, ([, y]) => y);
    this.w = Float64Array.from(spots, ([, , w]) => w);
    this.minW = Math.min(...this.w);
    this.maxW = Math.max(...this.w);
    this.edges = Array.from({ length: n }, (_, i): [number, number][] => {
      const next = (i + 1) % n;
      return [
        [i, next],
        [n + i, n + next],
        [i, n + i],
      ];
    }).flat();
    this.straight = this.edges.every(([a, b]) => {
      const across = Math.hypot(this.x[b]! - this.x[a]!, this.y[b]! - this.y[a]!);
      const along = Math.abs(this.w[b]! - this.w[a]!);
      const toEnds = along > this.maxW - this.minW - STRAIGHT_MM;
      return across < STRAIGHT_MM ? toEnds : along < STRAIGHT_MM;
    });
  }

  /** Its corners in the section. */
  get corners(): Point[] {
    return Array.from(this.x, (x, i) => ({ x, y: this.y[i]! }));
  }

  /** The polygon that the body makes in the section over an interval of w, counter-clockwise; empty beside it. */
  over(from: number, to: number): Point[] {
    if (from > this.maxW || to < this.minW) return [];
    if (this.straight || (from <= this.minW && to >= this.maxW)) {
      this.whole ??= convexHull(this.corners);
      return this.whole;
    }
    const { x, y, w, edges } = this;
    const seen: Point[] = [];
    for (let i = 0; i < x.length; i++) {
      if (w[i]! >= from && w[i]! <= to) seen.push({ x: x[i]!, y: y[i]! });
    }
    for (const [a, b] of edges) {
      const [wa, wb] = [w[a]!, w[b]!];
      for (let i = 0; i < 2; i++) {
        const end = i === 0 ? from : to;
        if (wa < end === wb < end) continue;
        const t = (end - wa) / (wb - wa);
        seen.push({ x: x[a]! + t * (x[b]! - x[a]!), y: y[a]! + t * (y[b]! - y[a]!) });
      }
    }
    return convexHull(seen);
  }

  /** Where along w, within an interval, the body stands at a point of the section; the nearest place where it just misses. */
  stationOf(at: Point, from: number, to: number): number {
    let [best, nearest] = [(from + to) / 2, Infinity];
    const [low, high] = [Math.max(from, this.minW), Math.min(to, this.maxW)];
    if (this.straight) return (low + high) / 2;
    // Of the places where the body's cross-section comes nearest to the point, the middle one.
    const places: number[] = [];
    for (let i = 0; i <= STATIONS; i++) {
      const w = low + ((high - low) * i) / STATIONS;
      const off = distanceTo(this.over(w, w), at);
      if (off < nearest - 1e-6) {
        nearest = off;
        places.length = 0;
      }
      if (off < nearest + 1e-6) places.push(w);
    }
    if (places.length > 0) best = places[places.length >> 1]!;
    return best;
  }
}

const STATIONS = 200;

/** Distance from a point to a convex polygon, 0 inside. */
export function distanceTo(ring: readonly Point[], { x, y }: Point): Mm {
  let best = Infinity;
  let inside = ring.length > 2;
  ring.forEach((a, i) => {
    const b = ring[(i + 1) % ring.length]!;
    const [dx, dy] = [b.x - a.x, b.y - a.y];
    if (dx * (y - a.y) - dy * (x - a.x) < 0) inside = false;
    const long = dx * dx + dy * dy;
    const t = long === 0 ? 0 : Math.min(1, Math.max(0, ((x - a.x) * dx + (y - a.y) * dy) / long));
    best = Math.min(best, Math.hypot(x - a.x - t * dx, y - a.y - t * dy));
  });
  return inside ? 0 : best;
}

/** A flat piece of sheet as a body, between two heights over the unmarked face. */
export function plateSolid(ring: Ring, placement: Placement, fromZ: Mm, toZ: Mm): Solid {
  return new Solid(
    ring.map((point) => placed(placement, point, fromZ)),
    ring.map((point) => placed(placement, point, toZ)),
  );
}
