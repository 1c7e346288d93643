/**
 * Pieces of a brake seen from the operator's right and above, in parallel projection: nearer pieces over farther ones.
 * All pieces are convex, so each shows as the hull of its corners, with the edges of the faces that are turned to the viewer.
 * Order: where two pictures overlap, the piece whose front is nearer there is drawn later; exact for pieces that don't overlap.
 */

import type { Mark } from "../../drawing/model.ts";
import { polygon } from "../../drawing/polygon.ts";
import { convexHull } from "../../plane/convexHull.ts";
import type { Point } from "../../plane/point.ts";
import {
  areaOf,
  boxOfShape,
  isRound,
  type Piece,
  type Prism,
  type Round,
  rectangle,
  type Xyw,
} from "../solid.ts";

/** Where x, y and w point on the page: x to the lower left, y up, w to the right and a little up. */
const ACROSS = { x: -0.42, y: 0, w: 0.94 } as const;
const UP = { x: -0.32, y: 1, w: 0.14 } as const;
/** Toward the viewer: what both rows above leave unmoved. */
const TOWARD: Xyw = [1, 0.32 - (0.14 * 0.42) / 0.94, 0.42 / 0.94];
/** Sharper than this is an edge; flatter is a rounding told by points. */
const EDGE_COS = Math.cos(Math.PI / 9);
const ROUND_POINTS = 24;

export interface Seen {
  readonly piece: Piece;
  readonly hull: readonly Point[];
  readonly marks: readonly Mark[];
}

/** Where a point of the brake comes to lie on the page. */
export function onPage([x, y, w]: Xyw): Point {
  return { x: ACROSS.x * x + ACROSS.w * w, y: UP.x * x + UP.y * y + UP.w * w };
}

/** Pieces from the farthest to the nearest, each with its marks. */
export function seenInParallel(pieces: readonly Piece[]): Seen[] {
  const shown = pieces.flatMap((piece) =>
    standingOut(piece, pieces).map((shape): Shown => {
      const { hull, edges } = isRound(shape) ? roundSeen(shape) : prismSeen(shape);
      const marks: Mark[] = [
        { kind: "outline", layer: "face", outline: polygon(hull) },
        ...edges.map(([from, to]): Mark => ({ kind: "line", layer: "dimension", from, to })),
      ];
      return { piece, hull, marks, solid: solidOf(shape) };
    }),
  );
  return fromFarToNear(shown);
}

interface Shown extends Seen {
  readonly solid: Prism;
}

type Segment = readonly [from: Point, to: Point];

function prismSeen({ profile, from, to }: Prism): { hull: Point[]; edges: Segment[] } {
  const near = profile.map(([x, y]) => onPage([x, y, to]));
  const far = profile.map(([x, y]) => onPage([x, y, from]));
  const count = profile.length;
  const normals = profile.map(([x, y], i) => {
    const [nx, ny] = profile[(i + 1) % count]!;
    const length = Math.hypot(nx - x, ny - y) || 1;
    return [(ny - y) / length, (x - nx) / length] as const;
  });
  const turn = turnOf(profile);
  const facing = normals.map(([nx, ny]) => turn * (nx * TOWARD[0] + ny * TOWARD[1]) > 1e-9);
  const edges: Segment[] = [];
  for (let i = 0; i < count; i++) {
    edges.push([near[i]!, near[(i + 1) % count]!]);
    const before = (i + count - 1) % count;
    const cos = normals[i]![0] * normals[before]![0] + normals[i]![1] * normals[before]![1];
    if (cos < EDGE_COS && facing[i] && facing[before]) edges.push([near[i]!, far[i]!]);
  }
  return { hull: hullOf([...near, ...far]), edges };
}

function roundSeen({ diameter, from, to }: Round): { hull: Point[]; edges: Segment[] } {
  const axis: Xyw = [to[0] - from[0], to[1] - from[1], to[2] - from[2]];
  const [u, v] = squareTo(axis);
  const ring = (at: Xyw) =>
    Array.from({ length: ROUND_POINTS }, (_, i) => {
      const angle = (2 * Math.PI * i) / ROUND_POINTS;
      const [cos, sin] = [(Math.cos(angle) * diameter) / 2, (Math.sin(angle) * diameter) / 2];
      return onPage([
        at[0] + cos * u[0] + sin * v[0],
        at[1] + cos * u[1] + sin * v[1],
        at[2] + cos * u[2] + sin * v[2],
      ]);
    });
  const towardEnd = axis[0] * TOWARD[0] + axis[1] * TOWARD[1] + axis[2] * TOWARD[2] > 0;
  const near = ring(towardEnd ? to : from);
  const far = ring(towardEnd ? from : to);
  return {
    hull: hullOf([...near, ...far]),
    edges: near.map((point, i) => [point, near[(i + 1) % ROUND_POINTS]!] as const),
  };
}

/** Two directions square to an axis that runs along x, y or w. */
function squareTo([x, y]: Xyw): readonly [Xyw, Xyw] {
  if (Math.abs(x) > 1e-9)
    return [
      [0, 1, 0],
      [0, 0, 1],
    ];
  return Math.abs(y) > 1e-9
    ? [
        [1, 0, 0],
        [0, 0, 1],
      ]
    : [
        [1, 0, 0],
        [0, 1, 0],
      ];
}

function hullOf(points: readonly Point[]): Point[] {
  return [...convexHull(points)];
}

/** 1 for a profile that runs counter-clockwise, −1 else. */
function turnOf(profile: readonly (readonly [number, number])[]): number {
  const twice = profile.reduce((sum, [x, y], i) => {
    const [nx, ny] = profile[(i + 1) % profile.length]!;
    return sum + x * ny - nx * y;
  }, 0);
  return Math.sign(twice);
}

/** Each piece after all that lie behind it; where the pictures of two overlap, the one whose front is nearer there is drawn later. */
function fromFarToNear(shapes: readonly Shown[]): Shown[] {
  const behind = shapes.map((one, i) =>
    shapes.flatMap((other, k) => {
      if (k === i) return [];
      const spot = sharedSpot(one.hull, other.hull);
      return spot && frontAt(one.solid, spot) > frontAt(other.solid, spot) + 1e-6 ? [k] : [];
    }),
  );
  const drawn: Shown[] = [];
  const seen = new Set<number>();
  const visit = (i: number) => {
    if (seen.has(i)) return;
    seen.add(i);
    for (const k of behind[i]!) visit(k);
    drawn.push(shapes[i]!);
  };
  shapes.forEach((_, i) => {
    visit(i);
  });
  return drawn;
}

/** A spot within both hulls, the middle of what they share; undefined where they share nothing. */
function sharedSpot(a: readonly Point[], b: readonly Point[]): Point | undefined {
  let rest = [...a];
  for (let i = 0; i < b.length && rest.length > 0; i++) {
    const [from, to] = [b[i]!, b[(i + 1) % b.length]!];
    const side = ({ x, y }: Point) => (to.x - from.x) * (y - from.y) - (to.y - from.y) * (x - from.x);
    rest = rest.flatMap((point, k) => {
      const next = rest[(k + 1) % rest.length]!;
      const [here, there] = [side(point), side(next)];
      const kept = here >= 0 ? [point] : [];
      if (here >= 0 === there >= 0) return kept;
      const t = here / (here - there);
      return [...kept, { x: point.x + (next.x - point.x) * t, y: point.y + (next.y - point.y) * t }];
    });
  }
  if (rest.length < 3 || areaOf(rest.map(({ x, y }) => [x, y] as const)) < 1e-3) return undefined;
  return {
    x: rest.reduce((sum, { x }) => sum + x, 0) / rest.length,
    y: rest.reduce((sum, { y }) => sum + y, 0) / rest.length,
  };
}

/** How far toward the viewer the front of a solid stands at a spot of the picture. */
function frontAt(solid: Prism, { x, y }: Point): number {
  const w = x / ACROSS.w;
  const start: Xyw = [0, y - UP.w * w, w];
  let [low, high] = [Number.NEGATIVE_INFINITY, Number.POSITIVE_INFINITY];
  const keep = (rate: number, room: number) => {
    // rate · t ≤ room
    if (rate > 1e-12) high = Math.min(high, room / rate);
    else if (rate < -1e-12) low = Math.max(low, room / rate);
  };
  keep(TOWARD[2], solid.to - start[2]);
  keep(-TOWARD[2], start[2] - solid.from);
  const turn = turnOf(solid.profile);
  solid.profile.forEach(([px, py], i) => {
    const [nx, ny] = solid.profile[(i + 1) % solid.profile.length]!;
    const normal = [turn * (ny - py), turn * (px - nx)] as const;
    keep(
      normal[0] * TOWARD[0] + normal[1] * TOWARD[1],
      normal[0] * (px - start[0]) + normal[1] * (py - start[1]),
    );
  });
  return high >= low - 1e-6 ? high : (high + low) / 2;
}

/** What shows of a piece: a round that runs through others shows only where it stands out of them. */
function standingOut(piece: Piece, pieces: readonly Piece[]): (Prism | Round)[] {
  const { shape } = piece;
  if (!isRound(shape)) return [shape];
  const axis = ([0, 1, 2] as const).find((i) => Math.abs(shape.to[i] - shape.from[i]) > 1e-9)!;
  const [start, end] = [shape.from[axis], shape.to[axis]].sort((a, b) => a - b) as [number, number];
  const through = pieces
    .filter((other) => other !== piece && !(isRound(other.shape) && other.shape.diameter < shape.diameter))
    .map(({ shape: other }) => boxOfShape(other))
    .filter(({ min, max }) =>
      ([0, 1, 2] as const).every(
        (i) => i === axis || (shape.from[i] > min[i] - 1e-6 && shape.from[i] < max[i] + 1e-6),
      ),
    )
    .map(({ min, max }) => [min[axis], max[axis]] as const)
    .sort((a, b) => a[0] - b[0]);
  const out: (readonly [number, number])[] = [];
  let at = start;
  for (const [from, to] of through) {
    if (from > at + 1e-6 && at < end) out.push([at, Math.min(from, end)]);
    at = Math.max(at, to);
  }
  if (at < end - 1e-6) out.push([at, end]);
  return out.map(([from, to]) => {
    const put = (value: number): Xyw => {
      const point: [number, number, number] = [...shape.from];
      point[axis] = value;
      return point;
    };
    return { diameter: shape.diameter, from: put(from), to: put(to) };
  });
}

/** A solid that stands for a shape where it is asked which is nearer. */
function solidOf(shape: Prism | Round): Prism {
  if (!isRound(shape)) return shape;
  const { min, max } = boxOfShape(shape);
  return { profile: rectangle(min[0], min[1], max[0], max[1]), from: min[2], to: max[2] };
}
