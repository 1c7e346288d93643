/**
 * The same sweep on general libraries, sampled every half degree: the moving side's outline is turned and slid, and asked
 * whether it intersects the brake. No sampling can tell the angle better than its step; the time is what is compared.
 */
import Flatten from "@flatten-js/core";
import Coordinate from "jsts/org/locationtech/jts/geom/Coordinate.js";
import GeometryFactory from "jsts/org/locationtech/jts/geom/GeometryFactory.js";
import RelateOp from "jsts/org/locationtech/jts/operation/relate/RelateOp.js";
import { seatFor } from "../../src/motion/seat.ts";
import { slideAt } from "../../src/motion/swing.ts";
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
  const { corners: rest, startX, slide } = movingCorners(at);
  const end = Math.PI / 2;
  return () => {
    for (let phi = 0; phi <= end + 1e-12; phi += STEP_RAD) {
      const [c, s, x0] = [Math.cos(phi), Math.sin(phi), startX + slide(phi)];
      if (meets(rest.map(([x, y]): Xy => [c * (x + x0) - s * y, s * (x + x0) + c * y]))) return phi;
    }
    return Infinity;
  };
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
