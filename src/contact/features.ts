/**
 * What can touch: a body's boundary as straight segments, rounds (convex arcs, and sharp corners as rounds of
 * radius 0) and hollows (concave arcs), in flat arrays for the contact kernel. Coordinates in mm from the leaf's
 * pivot, material to the left of a segment. Every feature carries its nearest and farthest distance from the pivot.
 */

import type { Slide } from "../motion/slide.ts";
import type { Outline } from "../plane/outline.ts";
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";

/** A cone test that every direction passes: for sharp corners. */
const ANY_DIRECTION = -2;

/** A straight edge from its start, unit direction and length, the material to its left. */
interface StraightEdge {
  readonly x: Mm;
  readonly y: Mm;
  readonly ux: number;
  readonly uy: number;
  readonly length: Mm;
}

/** An arc about (x, y); (mx, my) is its middle direction, `cosHalf` the cosine of half its sweep. */
interface Arc {
  readonly x: Mm;
  readonly y: Mm;
  readonly mx: number;
  readonly my: number;
  readonly cosHalf: number;
}

/** How the start of the moving flat is cut while the bend zone grows into it (src/model.md, section 5). */
export type CutRule = "none" | "pastZone" | "onlyUncut" | "onlyCut";

/** Where a body has none of a kind. */
const NONE = new Float64Array(0);
const NO_TAGS = new Int32Array(0);

const NO_SLIDE: Slide = { slideTan: 0, slideTurn: 0 };

export class Features {
  segments = 0;
  segX: Float64Array;
  segY: Float64Array;
  segUx: Float64Array;
  segUy: Float64Array;
  segLength: Float64Array;
  segOff: Float64Array;
  segNear: Float64Array;
  segFar: Float64Array;
  segTag: Int32Array;
  rounds = 0;
  roundX: Float64Array;
  roundY: Float64Array;
  roundR: Float64Array;
  roundMx: Float64Array;
  roundMy: Float64Array;
  roundCos: Float64Array;
  roundReach: Float64Array;
  roundTag: Int32Array;
  hollows = 0;
  hollowX: Float64Array;
  hollowY: Float64Array;
  hollowR: Float64Array;
  hollowMx: Float64Array;
  hollowMy: Float64Array;
  hollowCos: Float64Array;
  hollowReach: Float64Array;
  hollowTag: Int32Array;

  /** Middle line of a straight piece of sheet, for telling overlap where faces lie in one line. */
  hasCore = false;
  coreX1 = 0;
  coreY1 = 0;
  coreX2 = 0;
  coreY2 = 0;

  minX = Infinity;
  minY = Infinity;
  maxX = -Infinity;
  maxY = -Infinity;
  near = Infinity;
  far = 0;

  cutRule: CutRule = "none";
  /** Distance of the bend zone's end from the pivot along the leaf: cutTan·tan(φ/2). */
  cutTan = 0;
  /** Distance of the body's own start from the pivot along the leaf, at rest. */
  cutStart = 0;
  /** The moving side's slide: the start is cut where the zone has passed it. */
  cutSlide: Slide = NO_SLIDE;
  /** The stretch of the flat run, from the body's start, in which the zone's end must lie for there to be a start in it. */
  cutFrom = 0;
  cutTo = 0;

  constructor(segments: number, rounds: number, hollows: number) {
    // All of a body's figures in one buffer: a buffer for each would cost more than the checks themselves.
    const store = new ArrayBuffer(8 * (8 * segments + 7 * rounds + 7 * hollows));
    let at = 0;
    const f = (n: number) => {
      if (n === 0) return NONE;
      const view = new Float64Array(store, at, n);
      at += 8 * n;
      return view;
    };
    [this.segX, this.segY, this.segUx, this.segUy] = [f(segments), f(segments), f(segments), f(segments)];
    [this.segLength, this.segOff, this.segNear, this.segFar] = [
      f(segments),
      f(segments),
      f(segments),
      f(segments),
    ];
    this.segTag = segments === 0 ? NO_TAGS : new Int32Array(segments);
    [this.roundX, this.roundY, this.roundR, this.roundMx] = [f(rounds), f(rounds), f(rounds), f(rounds)];
    [this.roundMy, this.roundCos, this.roundReach] = [f(rounds), f(rounds), f(rounds)];
    this.roundTag = rounds === 0 ? NO_TAGS : new Int32Array(rounds);
    [this.hollowX, this.hollowY, this.hollowR, this.hollowMx] = [
      f(hollows),
      f(hollows),
      f(hollows),
      f(hollows),
    ];
    [this.hollowMy, this.hollowCos, this.hollowReach] = [f(hollows), f(hollows), f(hollows)];
    this.hollowTag = hollows === 0 ? NO_TAGS : new Int32Array(hollows);
  }

  clear(): void {
    this.segments = this.rounds = this.hollows = 0;
    this.minX = this.minY = this.near = Infinity;
    this.maxX = this.maxY = -Infinity;
    this.far = 0;
    this.hasCore = false;
    this.cutRule = "none";
  }

  /** A straight edge with the material to the left of its direction; shorter than a nanometre it is left out. */
  addSegment(x1: Mm, y1: Mm, x2: Mm, y2: Mm, tag: number): void {
    const length = Math.sqrt((x2 - x1) * (x2 - x1) + (y2 - y1) * (y2 - y1));
    this.addEdge({ x: x1, y: y1, ux: (x2 - x1) / length, uy: (y2 - y1) / length, length }, tag);
  }

  /** The same by its direction. */
  addEdge({ x, y, ux, uy, length }: StraightEdge, tag: number): void {
    if (!(length >= 1e-6)) return;
    const i = this.segments++;
    this.segX[i] = x;
    this.segY[i] = y;
    this.segUx[i] = ux;
    this.segUy[i] = uy;
    this.segLength[i] = length;
    this.segTag[i] = tag;
    const off = uy * x - ux * y;
    this.segOff[i] = off;
    const from = x * ux + y * uy;
    const to = from + length;
    const high = Math.max(Math.abs(from), Math.abs(to));
    const low = from <= 0 && to >= 0 ? 0 : Math.min(Math.abs(from), Math.abs(to));
    const near = low === 0 ? Math.abs(off) : Math.sqrt(off * off + low * low);
    const far = Math.sqrt(off * off + high * high);
    this.segNear[i] = near;
    this.segFar[i] = far;
    const x2 = x + length * ux;
    const y2 = y + length * uy;
    this.near = Math.min(this.near, near);
    this.far = Math.max(this.far, far);
    this.minX = Math.min(this.minX, x, x2);
    this.maxX = Math.max(this.maxX, x, x2);
    this.minY = Math.min(this.minY, y, y2);
    this.maxY = Math.max(this.maxY, y, y2);
  }

  /** A convex arc. */
  addRound({ x, y, mx, my, cosHalf }: Arc, r: Mm, tag: number): void {
    const i = this.rounds++;
    const reach = Math.sqrt(x * x + y * y);
    this.roundX[i] = x;
    this.roundY[i] = y;
    this.roundR[i] = r;
    this.roundMx[i] = mx;
    this.roundMy[i] = my;
    this.roundCos[i] = cosHalf;
    this.roundReach[i] = reach;
    this.roundTag[i] = tag;
    if (reach - r < this.near) this.near = reach - r;
    if (reach + r > this.far) this.far = reach + r;
    this.include(x, y, r);
  }

  /** A sharp convex corner. */
  addCorner(x: Mm, y: Mm, tag: number): void {
    this.addRound({ x, y, mx: 0, my: 0, cosHalf: ANY_DIRECTION }, 0, tag);
  }

  /** A concave arc: the material is outside its circle. */
  addHollow({ x, y, mx, my, cosHalf }: Arc, r: Mm, tag: number): void {
    const i = this.hollows++;
    const reach = Math.sqrt(x * x + y * y);
    this.hollowX[i] = x;
    this.hollowY[i] = y;
    this.hollowR[i] = r;
    this.hollowMx[i] = mx;
    this.hollowMy[i] = my;
    this.hollowCos[i] = cosHalf;
    this.hollowReach[i] = reach;
    this.hollowTag[i] = tag;
    const near = reach > r ? reach - r : 0;
    if (near < this.near) this.near = near;
    if (reach + r > this.far) this.far = reach + r;
    this.include(x, y, r);
  }

  setCore(x1: Mm, y1: Mm, x2: Mm, y2: Mm): void {
    this.hasCore = true;
    this.coreX1 = x1;
    this.coreY1 = y1;
    this.coreX2 = x2;
    this.coreY2 = y2;
  }

  private include(x: Mm, y: Mm, r: Mm): void {
    if (x - r < this.minX) this.minX = x - r;
    if (x + r > this.maxX) this.maxX = x + r;
    if (y - r < this.minY) this.minY = y - r;
    if (y + r > this.maxY) this.maxY = y + r;
  }
}

/** Features of a fixed outline, moved by `by` (for example minus the pivot). Corners that turn inward can't touch and are left out. */
export function featuresOf(outline: Outline, by: Point): Features {
  const { edges } = outline;
  const tag = 0;
  const features = new Features(edges.length, 2 * edges.length, edges.length);
  edges.forEach((edge, i) => {
    if (edge.kind === "line") {
      features.addSegment(edge.from.x + by.x, edge.from.y + by.y, edge.to.x + by.x, edge.to.y + by.y, tag);
    } else {
      const middle = edge.startRad + edge.sweepRad / 2;
      const [x, y] = [edge.center.x + by.x, edge.center.y + by.y];
      const [mx, my, cosHalf] = [Math.cos(middle), Math.sin(middle), Math.cos(edge.sweepRad / 2)];
      const arc = { x, y, mx, my, cosHalf };
      if (edge.sweepRad > 0) features.addRound(arc, edge.radius, tag);
      else features.addHollow(arc, edge.radius, tag);
    }
    const next = edges[(i + 1) % edges.length]!;
    const [ax, ay] = endDirection(edge, "to");
    const [bx, by2] = endDirection(next, "from");
    // A left turn of more than a hair is a sharp convex corner; a smooth run-over needs none.
    if (ax * by2 - ay * bx > 1e-9) features.addCorner(edge.to.x + by.x, edge.to.y + by.y, tag);
  });
  return features;
}

function endDirection(edge: Outline["edges"][number], end: "from" | "to"): [number, number] {
  if (edge.kind === "line") {
    const length = Math.hypot(edge.to.x - edge.from.x, edge.to.y - edge.from.y);
    return [(edge.to.x - edge.from.x) / length, (edge.to.y - edge.from.y) / length];
  }
  const at = end === "from" ? edge.startRad : edge.startRad + edge.sweepRad;
  const way = Math.sign(edge.sweepRad);
  return [-way * Math.sin(at), way * Math.cos(at)];
}
