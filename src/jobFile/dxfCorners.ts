/**
 * A closed ring of lines and arcs as corners with radii, the way a job file writes profiles.
 * An arc tangent to two straight neighbours becomes the radius of their corner, exactly; others become short chords.
 */
import type { Corner } from "../plane/fillet.ts";
import type { Point } from "../plane/point.ts";
import type { DxfEdge } from "./dxfRings.ts";

/** How far a chord may stray from its arc. */
const STRAY_MM = 0.005;
/** Directions this near are tangent, in radians (0.3°). */
const TANGENT_RAD = 0.005;
/** Corners of more turn than this stand too far out to be written as a corner. */
const MOST_TURN_RAD = 2.8;
const SAME_MM = 1e-4;

interface Arc {
  readonly sweep: number;
  readonly radius: number;
  readonly center: Point;
}

function arcOf({ from, to, bulge }: DxfEdge): Arc {
  const sweep = 4 * Math.atan(bulge);
  const chord = Math.hypot(to.x - from.x, to.y - from.y);
  const radius = chord / 2 / Math.sin(Math.abs(sweep) / 2);
  const middle = { x: (from.x + to.x) / 2, y: (from.y + to.y) / 2 };
  const off = (Math.sign(sweep) * chord) / 2 / Math.tan(Math.abs(sweep) / 2);
  const left = { x: -(to.y - from.y) / chord, y: (to.x - from.x) / chord };
  return { sweep, radius, center: { x: middle.x + left.x * off, y: middle.y + left.y * off } };
}

const direction = (a: Point, b: Point) => Math.atan2(b.y - a.y, b.x - a.x);
const turn = (from: number, to: number) => Math.atan2(Math.sin(to - from), Math.cos(to - from));

/** Neighbouring arcs of one circle made one, so that a rounding drawn in two pieces is still a corner. */
function merged(ring: readonly DxfEdge[]): readonly DxfEdge[] {
  const out: DxfEdge[] = [];
  for (const edge of ring) {
    const before = out.at(-1);
    if (before && before.bulge !== 0 && edge.bulge !== 0) {
      const [a, b] = [arcOf(before), arcOf(edge)];
      const same =
        Math.hypot(a.center.x - b.center.x, a.center.y - b.center.y) < 1e-3 &&
        Math.abs(a.radius - b.radius) < 1e-3;
      const sweep = a.sweep + b.sweep;
      if (same && Math.abs(sweep) < 3) {
        out[out.length - 1] = { from: before.from, to: edge.to, bulge: Math.tan(sweep / 4) };
        continue;
      }
    }
    out.push(edge);
  }
  return out;
}

/** Starts the ring at a straight edge, so that no rounding is split over the ends of the list. */
function fromStraight(ring: readonly DxfEdge[]): readonly DxfEdge[] {
  const start = ring.findIndex((edge) => edge.bulge === 0);
  return start <= 0 ? ring : [...ring.slice(start), ...ring.slice(0, start)];
}

/** The ring's corners. */
export function cornersOf(drawn: readonly DxfEdge[]): readonly Corner[] {
  const ring = merged(fromStraight(drawn));
  const corners: Corner[] = [];
  const put = (corner: Corner) => {
    const before = corners.at(-1);
    if (before && Math.hypot(before.x - corner.x, before.y - corner.y) < SAME_MM) return;
    corners.push(corner);
  };
  const rounded = ring.map((edge, i) => {
    const [before, after] = [ring.at(i - 1)!, ring[(i + 1) % ring.length]!];
    if (edge.bulge === 0 || before.bulge !== 0 || after.bulge !== 0) return null;
    return roundedCorner(before, edge, after);
  });
  ring.forEach((edge, i) => {
    const corner = rounded[i];
    if (corner) {
      put(corner);
      return;
    }
    // A straight edge's start is said already when a rounding ends there.
    if (!rounded.at(i - 1)) put(edge.from);
    if (edge.bulge === 0) return;
    const arc = arcOf(edge);
    const most = 2 * Math.acos(Math.max(0, 1 - STRAY_MM / arc.radius));
    const count = Math.min(200, Math.max(2, Math.ceil(Math.abs(arc.sweep) / most)));
    const start = direction(arc.center, edge.from);
    for (let k = 1; k < count; k++) {
      const angle = start + (arc.sweep * k) / count;
      put({ x: arc.center.x + arc.radius * Math.cos(angle), y: arc.center.y + arc.radius * Math.sin(angle) });
    }
  });
  const [first, last] = [corners[0], corners.at(-1)];
  if (first && last && corners.length > 1 && Math.hypot(first.x - last.x, first.y - last.y) < SAME_MM)
    corners.pop();
  return corners;
}

function roundedCorner(before: DxfEdge, edge: DxfEdge, after: DxfEdge): Corner | null {
  const { sweep, radius } = arcOf(edge);
  const chord = direction(edge.from, edge.to);
  const [into, out] = [chord - sweep / 2, chord + sweep / 2];
  const smooth =
    Math.abs(turn(direction(before.from, before.to), into)) < TANGENT_RAD &&
    Math.abs(turn(out, direction(after.from, after.to))) < TANGENT_RAD;
  if (!smooth || Math.abs(sweep) > MOST_TURN_RAD) return null;
  const reach = radius * Math.tan(Math.abs(sweep) / 2);
  return { x: edge.from.x + reach * Math.cos(into), y: edge.from.y + reach * Math.sin(into), radius };
}
