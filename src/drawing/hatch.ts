/**
 * The hatch of a cut body: at 45° to its main outline (ISO 128-3, from memory), so fixed to the body however it turns, and
 * never within 10° of one of its long edges, which it would seem to double. Bodies are told apart by direction and pitch.
 */
import type { Edge, Outline } from "../plane/outline.ts";
import { distanceBetween } from "../plane/point.ts";
import type { Deg, Mm } from "../units/quantity.ts";
import { inkOf } from "./ink.ts";
import type { Layer } from "./model.ts";

/** An edge of at least this share of the longest is long. */
const LONG_SHARE = 0.25;
/** Kept a little over the 10° that are asked for. */
const LEAST_DEG: Deg = 11;
/** Turned from the direction wished for, in this order, until no long edge is near. */
const TURNS: readonly Deg[] = [0, 90, 15, -15, 75, 105, 30, -30];

export interface Hatch {
  /** Counter-clockwise from the x axis of the drawing, from 0 to 180. */
  readonly angleDeg: Deg;
  readonly spacingMm: Mm;
}

const directionDeg = ({ from, to }: Edge): Deg =>
  half((Math.atan2(to.y - from.y, to.x - from.x) * 180) / Math.PI);
const half = (deg: Deg): Deg => ((deg % 180) + 180) % 180;

/** Angle between two directions, from 0 to 90. @example apartDeg(170, 10) // 20 */
export function apartDeg(one: Deg, other: Deg): Deg {
  const off = half(one - other);
  return Math.min(off, 180 - off);
}

/** Directions of the straight edges that are long, the longest first. */
export function longEdgesDeg({ edges }: Outline): readonly Deg[] {
  const lines = edges
    .filter(({ kind }) => kind === "line")
    .map((edge) => ({ deg: directionDeg(edge), mm: distanceBetween(edge.from, edge.to) }));
  const longest = Math.max(0, ...lines.map(({ mm }) => mm));
  // Of edges that are equally long the first one of the outline leads, so that turning a square changes nothing.
  return lines
    .filter(({ mm }) => mm >= LONG_SHARE * longest)
    .sort((a, b) => (Math.abs(a.mm - b.mm) < 1e-6 * longest ? 0 : b.mm - a.mm))
    .map(({ deg }) => deg);
}

/** The hatch of a body of a layer; undefined where the layer has none. */
export function hatchOf(layer: Layer, body: Outline): Hatch | undefined {
  const { hatch } = inkOf(layer);
  if (hatch === undefined) return undefined;
  const long = longEdgesDeg(body);
  const [main = 0] = long;
  const room = (deg: Deg) => Math.min(90, ...long.map((edge) => apartDeg(deg, edge)));
  const wished = TURNS.map((turn) => half(main + hatch.angleDeg + turn));
  const clear = wished.find((deg) => room(deg) >= LEAST_DEG);
  const widest = wished.reduce((best, deg) => (room(deg) > room(best) ? deg : best));
  return { angleDeg: clear ?? widest, spacingMm: hatch.spacingMm };
}
