/**
 * A blank built up from panels: each hangs on an edge of another by a bend's strip. Gives the outline round them all and
 * the bends' middle lines. A panel's ring runs counter-clockwise; beyond an edge means to the right of its run.
 */
import type { Bend } from "../part/part.ts";
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";
import type { FaceName } from "./faceName.ts";
import type { LineBend } from "./pattern.ts";
import { type Ring, withoutInLine } from "./ring.ts";

/** Edges of a panel that hangs on another: its side where the edge begins, its far edge, its other side, its own base. */
export const FAR_EDGE = 1;

export interface Panel {
  readonly name: FaceName;
  /** For a panel that hangs on another the last edge is its base. */
  readonly ring: Ring;
  readonly joins: Join[];
}

interface Join {
  readonly edge: number;
  readonly from: Point;
  readonly to: Point;
  readonly childFrom: Point;
  readonly childTo: Point;
  readonly bend: Bend;
  readonly child: Panel;
}

/** A stretch of an edge, measured along it from its start. */
export interface Stretch {
  readonly fromMm: Mm;
  readonly toMm: Mm;
}

/** What hangs on an edge: how far along it its base and its far edge reach, its depth beyond the bend's strip. */
export interface Hanging {
  readonly name: FaceName;
  readonly bend: Bend;
  /** Where the strip runs. */
  readonly strip: Stretch;
  readonly base: Stretch;
  readonly far: Stretch;
  readonly depthMm: Mm;
}

/** A panel that all others hang on: a rectangle, its edges low, right, high, left. */
export function rootPanel(name: FaceName, widthMm: Mm, depthMm: Mm): Panel {
  const ring = [
    { x: 0, y: 0 },
    { x: widthMm, y: 0 },
    { x: widthMm, y: depthMm },
    { x: 0, y: depthMm },
  ];
  return { name, ring, joins: [] };
}

/** Hangs a panel on an edge of another and gives it back. */
export function hang(on: Panel, edge: number, hanging: Hanging): Panel {
  const { bend, strip, base, far, depthMm } = hanging;
  const [start, end] = [on.ring[edge]!, on.ring[(edge + 1) % on.ring.length]!];
  const length = Math.hypot(end.x - start.x, end.y - start.y);
  const [ux, uy] = [(end.x - start.x) / length, (end.y - start.y) / length];
  const at = (alongMm: Mm, outMm: Mm): Point => ({
    x: start.x + alongMm * ux + outMm * uy,
    y: start.y + alongMm * uy - outMm * ux,
  });
  const near = bend.allowanceMm;
  const ring = [
    at(base.fromMm, near),
    at(far.fromMm, near + depthMm),
    at(far.toMm, near + depthMm),
    at(base.toMm, near),
  ];
  const child = { name: hanging.name, ring, joins: [] };
  on.joins.push({
    edge,
    from: at(strip.fromMm, 0),
    to: at(strip.toMm, 0),
    childFrom: at(strip.fromMm, near),
    childTo: at(strip.toMm, near),
    bend,
    child,
  });
  return child;
}

export interface Built {
  readonly outline: Ring;
  readonly bends: readonly LineBend[];
  /** A point inside each panel, with its name, the root first. */
  readonly names: readonly { readonly at: Point; readonly name: FaceName }[];
}

/**
 * The blank that panels make, its lower left corner on 0, 0. Bends come in the order of `bendOrder`, those of the panels
 * else in the order in which they were hung.
 */
export function built(root: Panel, bendOrder: readonly Bend[]): Built {
  const outline = withoutInLine(dropRepeats(ringAround(root, 0, root.ring.length)));
  const [minX, minY] = [Math.min(...outline.map(({ x }) => x)), Math.min(...outline.map(({ y }) => y))];
  const moved = ({ x, y }: Point): Point => ({ x: x - minX, y: y - minY });
  const joins = allJoins(root);
  const bends = bendOrder.map((bend): LineBend => {
    const { from, to, childFrom, childTo } = joins.find((join) => join.bend === bend)!;
    return { ...bend, from: moved(between(from, childFrom)), to: moved(between(to, childTo)) };
  });
  const names = [root, ...joins.map(({ child }) => child)].map(({ ring, name }) => {
    const [x, y] = [ring.reduce((sum, p) => sum + p.x, 0), ring.reduce((sum, p) => sum + p.y, 0)];
    return { at: moved({ x: x / ring.length, y: y / ring.length }), name };
  });
  return { outline: outline.map(moved), bends, names };
}

/** The way round a panel and all that hangs on it, over `count` of its edges from edge `first` on, ends included. */
function ringAround({ ring, joins }: Panel, first: number, count: number): Point[] {
  const way: Point[] = [];
  for (let i = 0; i < count; i++) {
    const edge = (first + i) % ring.length;
    const start = ring[edge]!;
    way.push(start);
    const along = (join: Join) => Math.hypot(join.from.x - start.x, join.from.y - start.y);
    const here = joins.filter((join) => join.edge === edge).sort((a, b) => along(a) - along(b));
    for (const { from, to, childFrom, childTo, child } of here)
      way.push(from, childFrom, ...ringAround(child, 0, child.ring.length - 1), childTo, to);
  }
  way.push(ring[(first + count) % ring.length]!);
  return way;
}

function allJoins({ joins }: Panel): Join[] {
  return joins.flatMap((join) => [join, ...allJoins(join.child)]);
}

function between(a: Point, b: Point): Point {
  return { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 };
}

function dropRepeats(ring: readonly Point[]): Ring {
  return ring.filter((point, i) => {
    const before = ring[(i + ring.length - 1) % ring.length]!;
    return Math.hypot(point.x - before.x, point.y - before.y) > 1e-9;
  });
}
