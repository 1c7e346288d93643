/**
 * Edges of convex solids in parallel projection with the hidden ones left out: along each edge places are asked whether a
 * solid stands between them and you. The end of what you see is closed in to a hundredth of the step between places.
 */

import type { Convex } from "../pattern/convex.ts";
import type { BodyInSpace, Segment } from "../pattern/inBrake.ts";
import { dot, type Spot } from "../pattern/space.ts";
import type { Point } from "../plane/point.ts";

/** Three directions: to the right and up on the page, and toward you. */
export interface View {
  readonly right: Spot;
  readonly up: Spot;
  readonly toward: Spot;
}

/** From the front left and above, as you stand at the brake: so many degrees to the left, so many above. */
export function fromFrontLeft(leftDeg: number, aboveDeg: number): View {
  const [a, e] = [(leftDeg * Math.PI) / 180, (aboveDeg * Math.PI) / 180];
  return {
    right: [Math.sin(a), 0, Math.cos(a)],
    up: [-Math.sin(e) * Math.cos(a), Math.cos(e), Math.sin(e) * Math.sin(a)],
    toward: [Math.cos(e) * Math.cos(a), Math.sin(e), -Math.cos(e) * Math.sin(a)],
  };
}

/** Straight at the brake from where you stand. */
export const FROM_FRONT: View = { right: [0, 0, 1], up: [0, 1, 0], toward: [1, 0, 0] };

/** Where a spot comes to lie on the page. @example onPage(FROM_FRONT, [5, 2, 3]) // { x: 3, y: 2 } */
export function onPage({ right, up }: View, spot: Spot): Point {
  return { x: dot(right, spot), y: dot(up, spot) };
}

export interface SeenLine {
  readonly body: BodyInSpace;
  readonly from: Point;
  readonly to: Point;
}

/** What stands less than this in front of an edge is the edge's own face. */
const OWN_MM = 0.02;

interface Blind {
  /** Of each of its planes: the outward normal, how far along it the solid reaches, how fast you near it looking that way. */
  readonly planes: Float64Array;
  readonly minX: number;
  readonly maxX: number;
  readonly minY: number;
  readonly maxY: number;
}

/** The edges of all bodies as far as you see them; places along an edge are `stepMm` apart. */
export function seenLines(bodies: readonly BodyInSpace[], view: View, stepMm: number): SeenLine[] {
  const blinds = bodies.flatMap(({ solids }) => solids.map((solid) => blindOf(solid, view)));
  return bodies.flatMap((body) =>
    body.edges.flatMap((edge) => seenOf(edge, blinds, view, stepMm).map((line) => ({ body, ...line }))),
  );
}

function blindOf(solid: Convex, view: View): Blind {
  const points = solid.corners.map((corner) => onPage(view, corner));
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return {
    planes: Float64Array.from(
      solid.planes.flatMap(({ out, reach }) => [...out, reach, dot(out, view.toward)]),
    ),
    minX: Math.min(...xs),
    maxX: Math.max(...xs),
    minY: Math.min(...ys),
    maxY: Math.max(...ys),
  };
}

function seenOf(
  [from, to]: Segment,
  all: readonly Blind[],
  view: View,
  stepMm: number,
): { readonly from: Point; readonly to: Point }[] {
  const [a, b] = [onPage(view, from), onPage(view, to)];
  const blinds = all.filter(
    ({ minX, maxX, minY, maxY }) =>
      minX < Math.max(a.x, b.x) &&
      maxX > Math.min(a.x, b.x) &&
      minY < Math.max(a.y, b.y) &&
      maxY > Math.min(a.y, b.y),
  );
  const spotAt = (t: number): Spot => [
    from[0] + t * (to[0] - from[0]),
    from[1] + t * (to[1] - from[1]),
    from[2] + t * (to[2] - from[2]),
  ];
  const isSeen = (t: number) => !hidden(blinds, spotAt(t));
  const count = Math.max(2, Math.ceil(Math.hypot(b.x - a.x, b.y - a.y) / stepMm));
  const places = Array.from({ length: count + 1 }, (_, i) => Math.min(1 - 1e-6, Math.max(1e-6, i / count)));
  const seen = places.map(isSeen);
  const runs: { from: number; to: number }[] = [];
  places.forEach((t, i) => {
    if (!seen[i]) return;
    const before = places[i - 1];
    if (before !== undefined && seen[i - 1]) {
      runs.at(-1)!.to = t;
      return;
    }
    runs.push({ from: before === undefined ? t : border(isSeen, before, t), to: t });
  });
  for (const run of runs) {
    const next = places[places.indexOf(run.to) + 1];
    if (next !== undefined) run.to = border(isSeen, next, run.to);
  }
  const at = (t: number): Point => ({ x: a.x + t * (b.x - a.x), y: a.y + t * (b.y - a.y) });
  // At the corner that it shares with a seen one, the very end of a hidden edge is not covered by anything.
  const long = Math.hypot(b.x - a.x, b.y - a.y);
  const isReal = ({ from: start, to: end }: { from: number; to: number }) =>
    end - start > 0.99 || (end - start) * long > 5 * OWN_MM;
  return runs.filter(isReal).map((run) => ({ from: at(run.from), to: at(run.to) }));
}

/** The place between a hidden one and a seen one where it comes to be seen. */
function border(isSeen: (t: number) => boolean, hidden: number, seen: number): number {
  let [dark, light] = [hidden, seen];
  for (let i = 0; i < 7; i++) {
    const middle = (dark + light) / 2;
    if (isSeen(middle)) light = middle;
    else dark = middle;
  }
  return light;
}

/** Whether a solid stands between a spot and you. */
function hidden(blinds: readonly Blind[], [x, y, w]: Spot): boolean {
  for (const { planes } of blinds) {
    let [near, far] = [OWN_MM, Number.POSITIVE_INFINITY];
    for (let i = 0; i < planes.length && near + OWN_MM < far; i += 5) {
      const room = planes[i + 3]! - (planes[i]! * x + planes[i + 1]! * y + planes[i + 2]! * w);
      const rate = planes[i + 4]!;
      if (rate > 1e-9) far = Math.min(far, room / rate);
      else if (rate < -1e-9) near = Math.max(near, room / rate);
      else if (room < OWN_MM) far = near;
    }
    if (near + OWN_MM < far) return true;
  }
  return false;
}
