/**
 * The same sweep on general libraries, sampled every half degree: the moving side's outline is turned and slid, and asked
 * whether it intersects the brake. No sampling can tell the angle better than its step; the time is what is compared.
 */
import Flatten from "@flatten-js/core";
import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import GeometryFactory from "jsts/org/locationtech/jts/geom/GeometryFactory.js";
import DistanceOp from "jsts/org/locationtech/jts/operation/distance/DistanceOp.js";
import RelateOp from "jsts/org/locationtech/jts/operation/relate/RelateOp.js";
import paperCore from "paper/dist/paper-core.js";
import { seatFor } from "../../src/motion/seat.ts";
import { slideAt } from "../../src/motion/slide.ts";
import { formedJoints } from "../../src/part/chain.ts";
import { facesOf } from "../../src/part/faces.ts";
import { movedOutline } from "../../src/plane/move.ts";
import type { Edge, Outline } from "../../src/plane/outline.ts";
import type { SweepCase } from "./sweepJob.ts";

const STEP_RAD = Math.PI / 360;
const INSET_MM = 0.01;

/** First sampled angle at which the moving side meets clamp, bed or frame; Infinity if none. */
export type Sampler = () => number;

type Xy = readonly [number, number];

function movingCorners(at: SweepCase): {
  readonly corners: Xy[];
  readonly startX: number;
  slide(phi: number): number;
} {
  const seat = seatFor(at.part, at.brake, at.bend, "start");
  const { movingChain: chain, thicknessMm: T } = seat;
  const faces = facesOf(chain, formedJoints(chain, at.bendsDone), T, 0);
  const under = faces.under.flatMap((edge) => drawnIn(edge, INSET_MM));
  const over = faces.over.flatMap((edge) => drawnIn(edge, -INSET_MM)).reverse();
  return { corners: [...under, ...over], startX: seat.movingTangentX, slide: (phi) => slideAt(seat, phi) };
}

/** Points of an edge moved to its left by `by`; an arc in steps of about 6°. */
function drawnIn(edge: Edge, by: number): Xy[] {
  if (edge.kind === "line") {
    const length = Math.hypot(edge.to.x - edge.from.x, edge.to.y - edge.from.y);
    const [nx, ny] = [-(edge.to.y - edge.from.y) / length, (edge.to.x - edge.from.x) / length];
    return [
      [edge.from.x + by * nx, edge.from.y + by * ny],
      [edge.to.x + by * nx, edge.to.y + by * ny],
    ];
  }
  const steps = Math.max(2, Math.ceil(Math.abs(edge.sweepRad) / 0.1));
  const radius = edge.radius - Math.sign(edge.sweepRad) * by;
  return Array.from({ length: steps - 1 }, (_, i): Xy => {
    const a = edge.startRad + (edge.sweepRad * (i + 1)) / steps;
    return [edge.center.x + radius * Math.cos(a), edge.center.y + radius * Math.sin(a)];
  });
}

function corners(outline: Outline): Xy[] {
  return outline.edges.flatMap((edge) =>
    edge.kind === "line" ? [[edge.from.x, edge.from.y] as const] : drawnIn(edge, 0),
  );
}

function standing(at: SweepCase): Outline[] {
  const seat = seatFor(at.part, at.brake, at.bend, "start");
  const clamp = at.brake.clamp.outlines.map((o) => movedOutline(o, -seat.noseSetbackMm, seat.thicknessMm));
  return [...clamp, at.brake.bed, ...at.brake.frame];
}

function sampled(at: SweepCase, meets: (moved: Xy[]) => boolean): Sampler {
  return () => posesOf(at, STEP_RAD, meets);
}

/** Goes through the sampled poses until one is what is looked for; its angle, else Infinity. */
function posesOf(at: SweepCase, stepRad: number, wanted: (moved: Xy[]) => boolean): number {
  const { corners: rest, startX, slide } = movingCorners(at);
  for (let phi = 0; phi <= Math.PI / 2 + 1e-12; phi += stepRad) {
    const [c, s, x0] = [Math.cos(phi), Math.sin(phi), startX + slide(phi)];
    if (wanted(rest.map(([x, y]): Xy => [c * (x + x0) - s * y, s * (x + x0) + c * y]))) return phi;
  }
  return Number.POSITIVE_INFINITY;
}

/** On @flatten-js/core: polygons of points, `intersect` (its Relations.intersect is about ten times slower). */
export function flattenSampler(at: SweepCase): Sampler {
  const polygon = (points: readonly Xy[]) => new Flatten.Polygon(points.map(([x, y]) => Flatten.point(x, y)));
  const bodies = standing(at).map((outline) => polygon(corners(outline)));
  return sampled(at, (moved) => {
    const part = polygon(moved);
    return bodies.some((body) => part.intersect(body).length > 0);
  });
}

/** On jsts: polygons of points, `RelateOp.intersects`. */
export function jstsSampler(at: SweepCase): Sampler {
  const factory = new GeometryFactory();
  const polygon = (points: readonly Xy[]) => {
    const ring = [...points, points[0]!].map(([x, y]) => new Coordinate(x, y));
    return factory.createPolygon(factory.createLinearRing(ring));
  };
  const bodies = standing(at).map((outline) => polygon(corners(outline)));
  return sampled(at, (moved) => {
    const part = polygon(moved);
    return bodies.some((body) => RelateOp.intersects(part, body));
  });
}

/** On paper's path booleans: what part and body have in common has an area where they overlap. */
export function paperSampler(at: SweepCase): Sampler {
  // Its types are those of the whole library, declared for the page.
  const scope = paperCore as unknown as paper.PaperScope;
  scope.setup(new scope.Size(10, 10));
  const path = (points: readonly Xy[]) =>
    new scope.Path({ segments: points.map(([x, y]) => [x, y]), closed: true, insert: false });
  const bodies = standing(at).map((outline) => path(corners(outline)));
  return sampled(at, (moved) => {
    const part = path(moved);
    return bodies.some(
      (body) => Math.abs((part.intersect(body, { insert: false }) as paper.Path).area) > 1e-9,
    );
  });
}

/** By hand: every edge of the one against every edge of the other, nothing left out. */
export function plainSampler(at: SweepCase): Sampler {
  const bodies = standing(at).map(corners);
  return sampled(at, (moved) => bodies.some((body) => edgesCross(moved, body)));
}

function edgesCross(a: readonly Xy[], b: readonly Xy[]): boolean {
  const side = (p: Xy, q: Xy, r: Xy) => (q[0] - p[0]) * (r[1] - p[1]) - (q[1] - p[1]) * (r[0] - p[0]);
  return a.some((p, i) => {
    const q = a[(i + 1) % a.length]!;
    return b.some((r, j) => {
      const s = b[(j + 1) % b.length]!;
      return side(p, q, r) * side(p, q, s) < 0 && side(r, s, p) * side(r, s, q) < 0;
    });
  });
}

/** Least distance from clamp, bed and frame over the sampled sweep, in mm. */
export type Distance = () => number;

function leastOver(at: SweepCase, stepRad: number, distance: (moved: Xy[]) => number): Distance {
  return () => {
    let least = Number.POSITIVE_INFINITY;
    posesOf(at, stepRad, (moved) => {
      least = Math.min(least, distance(moved));
      return false;
    });
    return least;
  };
}

export function flattenClearance(at: SweepCase): Distance {
  const polygon = (points: readonly Xy[]) => new Flatten.Polygon(points.map(([x, y]) => Flatten.point(x, y)));
  const bodies = standing(at).map((outline) => polygon(corners(outline)));
  // Its distance of polygons is slow: ten times coarser, and still dearer.
  return leastOver(at, 10 * STEP_RAD, (moved) =>
    Math.min(...bodies.map((body) => polygon(offBend(moved)).distanceTo(body)[0])),
  );
}

export function jstsClearance(at: SweepCase): Distance {
  const factory = new GeometryFactory();
  const polygon = (points: readonly Xy[]) =>
    factory.createPolygon(
      factory.createLinearRing([...points, points[0]!].map(([x, y]) => new Coordinate(x, y))),
    );
  const bodies = standing(at).map((outline) => polygon(corners(outline)));
  return leastOver(at, STEP_RAD, (moved) =>
    Math.min(...bodies.map((body) => DistanceOp.distance(polygon(offBend(moved)), body))),
  );
}

/** Without the run on the leaf, which lies on what it touches by design: the outline's first and last corner. */
function offBend(points: readonly Xy[]): Xy[] {
  return points.slice(1, -1);
}
