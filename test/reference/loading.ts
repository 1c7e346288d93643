/**
 * Loading and unloading. Part rises by h, clamp by g above it, h + g ≤ lift; then the part slides along x.
 * All h (or g) at which two edges bar the slide are one interval, the y-range of their difference right of 0: exact.
 */
import { overlaps, separation } from "./overlap.ts";
import type { Stage } from "./pairs.ts";
import type { Shape } from "./shape.ts";

export type Handling = "front" | "end" | "blocked";

const HAIR = 1e-9;

type Segment = readonly [number, number, number, number];

/** Edges of the shapes that face a way, told by the sign of their run along one axis (0 = x, 1 = y). */
function facing(shapes: readonly Shape[], axis: 0 | 1, way: 1 | -1): Segment[] {
  const edges: Segment[] = [];
  for (const shape of shapes) {
    for (let i = 0; i < shape.length; i += 2) {
      const j = i + 2 === shape.length ? 0 : i + 2;
      if ((shape[j + axis]! - shape[i + axis]!) * way <= 0) continue;
      edges.push([shape[i]!, shape[i + 1]!, shape[j]!, shape[j + 1]!]);
    }
  }
  return edges;
}

/** The four differences b − p of two edges' ends, in order round their parallelogram. */
function differences(p: Segment, b: Segment): [number, number][] {
  return [
    [b[0] - p[0], b[1] - p[1]],
    [b[2] - p[0], b[3] - p[1]],
    [b[2] - p[2], b[3] - p[3]],
    [b[0] - p[2], b[1] - p[3]],
  ];
}

/** The y-range of a closed ring of points where x is above `least`, or just at it; null when there is none. */
function heights(ring: readonly [number, number][], least: number, onLine: boolean): [number, number] | null {
  let [low, high] = [Infinity, -Infinity];
  const take = (y: number) => {
    low = Math.min(low, y);
    high = Math.max(high, y);
  };
  ring.forEach(([x, y], i) => {
    const [nx, ny] = ring[(i + 1) % ring.length]!;
    if (!onLine && x > least) take(y);
    if (x > least !== nx > least) take(y + ((ny - y) * (least - x)) / (nx - x));
  });
  return high >= low ? [low, high] : null;
}

export interface Barred {
  /** Open intervals of the rise at which the slide is barred. */
  intervals: [number, number][];
  /** How far the rise itself is free. */
  free: number;
}

/** True where the slide is barred at this rise. */
export function barsSlide(barred: Barred, rise: number): boolean {
  return barred.intervals.some(([low, high]) => low < rise && rise < high);
}

/** Looks at the part rising against bodies (sign 1), or at bodies rising off the part (sign −1). */
export function barredBy(part: readonly Shape[], bodies: readonly Shape[], sign: 1 | -1): Barred {
  const barred: Barred = { intervals: [], free: Infinity };
  const rightSides = facing(bodies, 1, 1);
  for (const p of facing(part, 1, -1)) {
    const leftmost = Math.min(p[0], p[2]);
    for (const b of rightSides) {
      if (Math.max(b[0], b[2]) <= leftmost + HAIR) continue;
      const slide = heights(differences(p, b), HAIR, false);
      if (slide === null || slide[1] - slide[0] <= HAIR) continue;
      barred.intervals.push(sign === 1 ? slide : [-slide[1], -slide[0]]);
    }
  }
  const bodySides = facing(bodies, 0, sign);
  for (const p of facing(part, 0, sign === 1 ? -1 : 1)) {
    for (const b of bodySides) {
      if (Math.max(b[0], b[2]) <= Math.min(p[0], p[2]) + HAIR) continue;
      if (Math.min(b[0], b[2]) >= Math.max(p[0], p[2]) - HAIR) continue;
      const at = heights(differences(p, b), 0, true);
      if (at === null) continue;
      const [low, high] = sign === 1 ? at : [-at[1], -at[0]];
      if (high > HAIR) barred.free = Math.min(barred.free, Math.max(0, low));
    }
  }
  return barred;
}

/** The least rise from which the slide is free; Infinity where none can be reached. */
function leastRise(barred: Barred): number {
  let rise = 0;
  for (const [low, high] of barred.intervals.sort((a, b) => a[0] - b[0])) {
    if (high <= rise) continue;
    if (rise === 0 ? low < -HAIR : low <= rise + HAIR) rise = high;
  }
  return rise <= barred.free + HAIR ? rise : Infinity;
}

/** Whether the seated sheet overlaps the brake with its leaf at rest. */
export function overlapsBrake(stage: Stage, seated: readonly Shape[]): boolean {
  const { machine, clamp } = stage;
  const bodies = [machine.bed, machine.leaf, ...machine.frame, ...clamp];
  const meets = (a: Shape, b: Shape) => separation(a, false, b, false) <= 0 && overlaps(a, b);
  return seated.some((piece) => bodies.some((body) => meets(piece, body)));
}

/** How the seated sheet (pieces in the section frame, faces inset) comes in or out with the leaf at rest. */
export function handlingOf(stage: Stage, seated: readonly Shape[], seatedOverlaps: boolean): Handling {
  if (seatedOverlaps) return "blocked";
  const { machine, clamp } = stage;
  const below = [machine.bed, machine.leaf, ...machine.frame];
  const partRise = leastRise(barredBy(seated, below, 1));
  if (partRise <= machine.lift + HAIR) {
    const clampRise = leastRise(barredBy(seated, clamp, -1));
    if (partRise + clampRise <= machine.lift + HAIR) return "front";
  }
  return machine.openEnds ? "end" : "blocked";
}
