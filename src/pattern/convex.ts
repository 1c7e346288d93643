/**
 * A convex solid of space between two rings of equally many corners, as half spaces: for what hides what, and for cuts.
 */
import type { Point } from "../plane/point.ts";
import { keptSide } from "./bentSlices.ts";
import { cross, dot, type Spot } from "./space.ts";

export interface Convex {
  readonly corners: readonly Spot[];
  /** Outward unit normals with how far along them the solid reaches. */
  readonly planes: readonly { readonly out: Spot; readonly reach: number }[];
}

/** Half spaces flatter than this are of no face. */
const NO_AREA = 1e-9;

/** The solid between two rings, straight from each corner of one to that of the other. */
export function convexOf(first: readonly Spot[], second: readonly Spot[]): Convex {
  const corners = [...first, ...second];
  const middle = corners.reduce<Spot>(
    (sum, [x, y, w]) => [
      sum[0] + x / corners.length,
      sum[1] + y / corners.length,
      sum[2] + w / corners.length,
    ],
    [0, 0, 0],
  );
  const sides = first.map((spot, i) => {
    const next = (i + 1) % first.length;
    return [spot, first[next]!, second[next]!, second[i]!];
  });
  const planes = [first, second, ...sides].flatMap((ring) => {
    const normal = normalOf(ring);
    const long = Math.hypot(...normal);
    if (long < NO_AREA) return [];
    const unit: Spot = [normal[0] / long, normal[1] / long, normal[2] / long];
    const at = dot(unit, ring[0]!);
    const outward = dot(unit, middle) <= at;
    const out: Spot = outward ? unit : [-unit[0], -unit[1], -unit[2]];
    return [{ out, reach: outward ? at : -at }];
  });
  return { corners, planes };
}

/** Twice the area of a ring, as a vector square to it. */
function normalOf(ring: readonly Spot[]): Spot {
  const [origin] = ring;
  let sum: Spot = [0, 0, 0];
  for (let i = 1; i + 1 < ring.length; i++) {
    const [a, b] = [ring[i]!, ring[i + 1]!].map(
      (spot): Spot => [spot[0] - origin![0], spot[1] - origin![1], spot[2] - origin![2]],
    ) as [Spot, Spot];
    const add = cross(a, b);
    sum = [sum[0] + add[0], sum[1] + add[1], sum[2] + add[2]];
  }
  return sum;
}

/** What a solid has at one station w, as a polygon of the section; empty beside it. */
export function cutAt({ planes, corners }: Convex, w: number): Point[] {
  const ws = corners.map((corner) => corner[2]);
  if (w < Math.min(...ws) || w > Math.max(...ws)) return [];
  const far = 4 * Math.max(...corners.map(([x, y]) => Math.hypot(x, y)), 1);
  let ring: Point[] = [
    { x: -far, y: -far },
    { x: far, y: -far },
    { x: far, y: far },
    { x: -far, y: far },
  ];
  for (const { out, reach } of planes) {
    if (Math.hypot(out[0], out[1]) < NO_AREA) continue;
    const side = ({ x, y }: Point) => reach - out[2] * w - out[0] * x - out[1] * y;
    ring = [...keptSide(ring, side)];
  }
  return ring;
}
