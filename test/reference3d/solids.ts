/**
 * Sheet and brake as solids of the manifold-3d library: plates with their faces drawn in, made bends as hulls of thin slices,
 * bodies of the brake as prisms along w. Coordinates x out, y up, and z = −w, so that the frame is right-handed.
 */
import Module, { type Manifold, type Vec3 } from "manifold-3d";
import type { Outline } from "../../src/plane/outline.ts";

const library = await Module();
library.setup();

export type Solid = Manifold;
export type Matrix = readonly number[];

/** The library keeps what it makes until it is told: solids made since then, to be let go of together. */
let made: Solid[] = [];

function kept(solid: Solid): Solid {
  made.push(solid);
  return solid;
}

/** Does some work and lets go of all solids made for it. */
export function freeing<T>(work: () => T): T {
  const before = made;
  made = [];
  try {
    return work();
  } finally {
    for (const solid of made) solid.delete();
    made = before;
  }
}

/** Columns of a rigid map: where the blank's x, y, z axes and its origin go. */
export function mapped(x: Vec3, y: Vec3, z: Vec3, origin: Vec3): Matrix {
  return [...x, 0, ...y, 0, ...z, 0, ...origin, 1];
}

export function at(map: Matrix, [x, y, z]: Vec3): Vec3 {
  const row = (i: number) => map[i]! * x + map[4 + i]! * y + map[8 + i]! * z + map[12 + i]!;
  return [row(0), row(1), row(2)];
}

/** One map after another. */
export function after(second: Matrix, first: Matrix): Matrix {
  const column = (i: number): Vec3 => [first[4 * i]!, first[4 * i + 1]!, first[4 * i + 2]!];
  const turn = (v: Vec3): Vec3 => {
    const [a, o] = [at(second, v), at(second, [0, 0, 0])];
    return [a[0] - o[0], a[1] - o[1], a[2] - o[2]];
  };
  return mapped(turn(column(0)), turn(column(1)), turn(column(2)), at(second, column(3)));
}

type Ring = readonly { readonly x: number; readonly y: number }[];

/** A flat piece of sheet between two heights, with its holes. */
export function plate(outer: Ring, holes: readonly Ring[], from: number, to: number): Solid {
  const rings = [outer, ...holes].map((ring) => ring.map(({ x, y }): [number, number] => [x, y]));
  return moved(kept(library.Manifold.extrude(rings, to - from)), [0, 0, from]);
}

export function hull(points: readonly Vec3[]): Solid {
  return kept(library.Manifold.hull([...points]));
}

export function union(solids: readonly Solid[]): Solid {
  return kept(library.Manifold.union([...solids]));
}

export function placed(solid: Solid, map: Matrix): Solid {
  return kept(solid.transform([...map] as Parameters<Solid["transform"]>[0]));
}

export function moved(solid: Solid, by: Vec3): Solid {
  return kept(solid.translate(by));
}

export function without(solid: Solid, other: Solid): Solid {
  return kept(solid.subtract(other));
}

/** Common volume in mm³. */
export function common(a: Solid, b: Solid): number {
  const shared = a.intersect(b);
  const volume = shared.isEmpty() ? 0 : shared.volume();
  shared.delete();
  return volume;
}

/** How far chords leave the arcs of a profile: at a thousandth a nose met close to the pivot is met a tenth of a degree late. */
const CHORD_MM = 0.0001;

/** A body of the brake over an interval of w: a profile of the section, drawn out along it. */
export function prism(outline: Outline, fromW: number, toW: number): Solid {
  const ring = outline.edges.flatMap((edge): [number, number][] => {
    if (edge.kind === "line") return [[edge.from.x, edge.from.y]];
    const { center, radius, startRad, sweepRad } = edge;
    const count = Math.max(
      2,
      Math.ceil(Math.abs(sweepRad) / (2 * Math.acos(1 - CHORD_MM / Math.max(radius, 2 * CHORD_MM)))),
    );
    return Array.from({ length: count }, (_, i) => {
      const turned = startRad + (sweepRad * i) / count;
      return [center.x + radius * Math.cos(turned), center.y + radius * Math.sin(turned)] as [number, number];
    });
  });
  return moved(kept(library.Manifold.extrude([ring], toW - fromW)), [0, 0, -toW]);
}
