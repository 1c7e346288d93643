/**
 * A stroke as bodies in space, for pictures: sheet and brake in convex solids, with the edges that a person sees. Frame of the
 * stroke: x out to you, y up, w to your right. Made bends are cut into slices (bentSlices.ts); the bend being made is drawn
 * with its inside radius over the angle reached.
 */
import type { Machine } from "../contact/machine.ts";
import { slideAt } from "../motion/slide.ts";
import type { Point } from "../plane/point.ts";
import type { Mm, Rad } from "../units/quantity.ts";
import { slicesOf } from "./bentSlices.ts";
import { type Convex, convexOf } from "./convex.ts";
import { convexPieces } from "./convexPieces.ts";
import type { StrokeElements } from "./elements.ts";
import type { Ring } from "./ring.ts";
import { type Fold, type Placement, placed, type Spot } from "./space.ts";
import { type Body, strokeBodies, type Tooling } from "./strokeBodies.ts";
import type { BendSet, Interval, StrokePlan } from "./strokePlan.ts";

export type Segment = readonly [from: Spot, to: Spot];

export interface BodyInSpace {
  readonly member: Body["member"] | "part";
  /** Of the part, from 0; of a made bend the face beyond it. */
  readonly face?: number;
  /** From the left, from 0. */
  readonly finger?: number;
  readonly solids: readonly Convex[];
  readonly edges: readonly Segment[];
  /** Of a piece of the brake: what it has at every station from one to the other. */
  readonly profile?: Interval & { readonly ring: Ring };
}

/** How far bodies that run on past the part are shown beyond it. */
const BESIDE_MM: Mm = 12;
/** Corners of a profile flatter than this are a rounding. */
const EDGE_COS = Math.cos(Math.PI / 9);

/** The part with the leaf at an angle. */
export function partInSpace(elements: StrokeElements, made: BendSet, leafRad: Rad): BodyInSpace[] {
  const { plan } = elements;
  const { thicknessMm, sheet, facePieces, stripPieces } = plan.part;
  const swung = (spot: Spot) => swungSpot(elements, leafRad, spot);
  const still = (spot: Spot) => spot;
  const bodies: BodyInSpace[] = [];
  for (const [face, side] of plan.sides.entries()) {
    const at = side === "moving" ? swung : still;
    const { outer, holes } = sheet.faces[face]!;
    const placement = elements.placementOf(face, made);
    bodies.push({
      member: "part",
      face,
      ...plate([outer, ...holes], facePieces[face]!, placement, thicknessMm, at),
    });
    const link = plan.links[face];
    if (!link?.ownsStrips) continue;
    const before = elements.placementOf(link.from, made);
    const pieces = stripPieces.get(link.hinge)!;
    const bent = ((made >>> link.hinge.bend) & 1) === 1;
    bodies.push({
      member: "part",
      face,
      ...(bent
        ? bend(before, link.fold, pieces, thicknessMm, at)
        : plate(
            link.hinge.strips.map((strip) => strip.outer),
            pieces,
            before,
            thicknessMm,
            at,
          )),
    });
  }
  for (const { hinge, face, fold } of plan.own) {
    const before = elements.placementOf(face, made);
    const pieces = stripPieces.get(hinge)!;
    const formed = { ...fold, angleRad: leafRad };
    bodies.push({
      member: "part",
      face,
      ...(leafRad > FLAT_RAD
        ? bend(before, formed, pieces, thicknessMm, still)
        : plate(
            hinge.strips.map((strip) => strip.outer),
            pieces,
            before,
            thicknessMm,
            still,
          )),
    });
  }
  return bodies;
}

const FLAT_RAD = 1e-3;

/** The brake round the part, its leaf at an angle. */
export function brakeInSpace(
  elements: StrokeElements,
  machine: Machine,
  tooling: Tooling,
  leafRad: Rad,
): BodyInSpace[] {
  const { seat, plan } = elements;
  const [from, to] = reachOf(plan);
  return strokeBodies(machine, seat.noseSetbackMm, tooling).map((body): BodyInSpace => {
    const at = { from: Math.max(body.from, from - BESIDE_MM), to: Math.min(body.to, to + BESIDE_MM) };
    const turned = body.member === "leaf" ? leafRad : 0;
    const [c, s] = [Math.cos(turned), Math.sin(turned)];
    const ring: Point[] = [];
    const { pieces } = body.solid;
    for (let i = 0; i < pieces.length; i += 4) {
      const [x, y] = [pieces[i]!, pieces[i + 1]!];
      ring.push({ x: seat.pivot.x + c * x - s * y, y: seat.pivot.y + s * x + c * y });
    }
    return {
      member: body.member,
      ...(body.finger !== undefined && { finger: body.finger }),
      ...prism(ring, at),
      profile: { ...at, ring },
    };
  });
}

/** Where the flat part begins and ends along w. */
function reachOf({ part, laid }: StrokePlan): readonly [number, number] {
  const ws = part.sheet.faces.flatMap(({ outer }) => outer.map((point) => placed(laid, point, 0)[2]));
  return [Math.min(...ws), Math.max(...ws)];
}

/** Where a spot of the moving side is with the leaf at an angle. */
function swungSpot({ seat, pieces }: StrokeElements, leafRad: Rad, [x, y, w]: Spot): Spot {
  const [c, s] = [Math.cos(leafRad), Math.sin(leafRad)];
  const [dx, dy] = [x - seat.pivot.x + slideAt(pieces.turning, leafRad), y - seat.pivot.y];
  return [seat.pivot.x + c * dx - s * dy, seat.pivot.y + s * dx + c * dy, w];
}

interface Shape {
  readonly solids: Convex[];
  readonly edges: Segment[];
}

function plate(
  rings: readonly Ring[],
  pieces: readonly Ring[],
  placement: Placement,
  thicknessMm: Mm,
  at: (spot: Spot) => Spot,
): Shape {
  const spots = (ring: Ring, z: Mm) => ring.map((point) => at(placed(placement, point, z)));
  return {
    solids: pieces.map((ring) => convexOf(spots(ring, 0), spots(ring, thicknessMm))),
    edges: rings.flatMap((ring) => {
      const [low, high] = [spots(ring, 0), spots(ring, thicknessMm)];
      return [...closed(low), ...closed(high), ...low.map((spot, i): Segment => [spot, high[i]!])];
    }),
  };
}

function bend(
  before: Placement,
  fold: Fold,
  pieces: readonly Ring[],
  thicknessMm: Mm,
  at: (spot: Spot) => Spot,
): Shape {
  const there = ([x, y, z]: Spot) => at(placed(before, { x, y }, z));
  const slices = slicesOf({ fold, pieces }, thicknessMm, 0).map(([inner, outer]) => [
    inner.map(there),
    outer.map(there),
  ]) as [Spot[], Spot[]][];
  const [start, end] = [0, 1].map((along) =>
    at(placed(before, { x: -fold.ny * along, y: fold.nx * along }, 0)),
  ) as [Spot, Spot];
  const axis: Spot = [end[0] - start[0], end[1] - start[1], end[2] - start[2]];
  // Lines round the bend; those along its axis would draw every slice.
  const round = ([a, b]: Segment) => {
    const way = [b[0] - a[0], b[1] - a[1], b[2] - a[2]];
    const long = Math.hypot(way[0]!, way[1]!, way[2]!);
    const along = Math.abs(way[0]! * axis[0] + way[1]! * axis[1] + way[2]! * axis[2]);
    return long > 1e-9 && along < 0.9 * long;
  };
  return {
    solids: slices.map(([inner, outer]) => convexOf(inner, outer)),
    edges: slices.flatMap(([inner, outer]) => [...closed(inner), ...closed(outer)].filter(round)),
  };
}

function prism(ring: Ring, { from, to }: Interval): Shape {
  const spots = (points: Ring, w: number) => points.map(({ x, y }): Spot => [x, y, w]);
  const [low, high] = [spots(ring, from), spots(ring, to)];
  const sharp = ring.map((point, i) => {
    const before = ring[(i + ring.length - 1) % ring.length]!;
    const next = ring[(i + 1) % ring.length]!;
    const [ax, ay, bx, by] = [point.x - before.x, point.y - before.y, next.x - point.x, next.y - point.y];
    return (ax * bx + ay * by) / (Math.hypot(ax, ay) * Math.hypot(bx, by)) < EDGE_COS;
  });
  return {
    solids: convexPieces({ outer: ring, holes: [] }).map((piece) =>
      convexOf(spots(piece, from), spots(piece, to)),
    ),
    edges: [
      ...closed(low),
      ...closed(high),
      ...low.flatMap((spot, i): Segment[] => (sharp[i] ? [[spot, high[i]!]] : [])),
    ],
  };
}

function closed(spots: readonly Spot[]): Segment[] {
  return spots.map((spot, i) => [spot, spots[(i + 1) % spots.length]!]);
}
