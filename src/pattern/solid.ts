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

/** One or more solids that make up one piece of sheet. */
export interface SolidBodies {
  readonly minW: number;
  readonly maxW: number;
  /** One solid that looks the same over all of its length in w. */
  readonly straight: boolean;
  /** Corners in the section. */
  readonly corners: readonly Point[];
  readonly solids: readonly Solid[];
}

export class Solid implements SolidBodies {
  readonly minW: number;
  readonly maxW: number;
  /** Looks the same over all of its length in w. */
  readonly straight: boolean;
  private whole: Point[] | undefined;

  constructor(
    private readonly first: readonly Spot[],
    private readonly second: readonly Spot[],
  ) {
    let [low, high] = [Infinity, -Infinity];
    for (const ring of [first, second]) {
      for (const [, , w] of ring) {
        if (w < low) low = w;
        if (w > high) high = w;
      }
    }
    [this.minW, this.maxW] = [low, high];
    this.straight = this.everyEdge(([ax, ay, aw], [bx, by, bw]) => {
      const along = Math.abs(bw - aw);
      return Math.abs(bx - ax) + Math.abs(by - ay) < STRAIGHT_MM
        ? along > high - low - STRAIGHT_MM
        : along < STRAIGHT_MM;
    });
  }

  get solids(): readonly Solid[] {
    return [this];
  }

  get corners(): Point[] {
    return [...this.first, ...this.second].map(([x, y]) => ({ x, y }));
  }

  /** The polygon that the body makes in the section over an interval of w, counter-clockwise; empty beside it. */
  over(from: number, to: number): Point[] {
    if (from > this.maxW || to < this.minW) return [];
    if (this.straight || (from <= this.minW && to >= this.maxW)) {
      this.whole ??= convexHull(this.corners);
      return this.whole;
    }
    const seen: Point[] = [];
    for (const ring of [this.first, this.second])
      for (const [x, y, w] of ring) if (w >= from && w <= to) seen.push({ x, y });
    this.everyEdge((a, b) => {
      crossingAt(a, b, from, seen);
      crossingAt(a, b, to, seen);
      return true;
    });
    return convexHull(seen);
  }

  /** Whether something is so of every edge. */
  private everyEdge(so: (a: Spot, b: Spot) => boolean): boolean {
    const { first, second } = this;
    const n = first.length;
    for (let i = 0; i < n; i++) {
      const next = i + 1 === n ? 0 : i + 1;
      if (!so(first[i]!, first[next]!) || !so(second[i]!, second[next]!) || !so(first[i]!, second[i]!))
        return false;
    }
    return true;
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

/** Adds the place where an edge passes a station, if it does. */
function crossingAt(a: Spot, b: Spot, w: number, out: Point[]): void {
  if (a[2] < w === b[2] < w) return;
  const t = (w - a[2]) / (b[2] - a[2]);
  out.push({ x: a[0] + t * (b[0] - a[0]), y: a[1] + t * (b[1] - a[1]) });
}

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
