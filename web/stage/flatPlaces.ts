/**
 * Where each flat of the part lies at a leaf angle, so that its dimension can stand beside it.
 * Walks both chains on the sheet's middle as the engine's motion lays them; a bend not yet made runs on straight.
 */

import { slideAt } from "../../src/motion/slide.ts";
import { type Chain, formedJoints } from "../../src/part/chain.ts";
import type { Outline } from "../../src/plane/outline.ts";
import type { Point } from "../../src/plane/point.ts";
import { toRad } from "../../src/units/quantity.ts";
import { bentDeg, type StepPose } from "./stepPose.ts";

export interface FlatPlace {
  /** Flat of the part, from 0. */
  readonly flat: number;
  readonly from: Point;
  readonly to: Point;
}

interface Walk {
  x: number;
  y: number;
  heading: number;
}

function walkChain(chain: Chain, formed: number, thickness: number, start: Walk): FlatPlace[] {
  const at = { ...start };
  const places: FlatPlace[] = [];
  for (let k = 0; k <= chain.joints; k++) {
    const from = { x: at.x, y: at.y };
    at.x += chain.flatMm[k]! * Math.cos(at.heading);
    at.y += chain.flatMm[k]! * Math.sin(at.heading);
    places.push({ flat: chain.flatNumber[k]!, from, to: { x: at.x, y: at.y } });
    if (k === chain.joints) break;
    if ((formed >>> k) & 1) {
      const up = chain.turn[k]!;
      const radius = chain.insideRadiusMm[k]! + thickness / 2;
      const centre = {
        x: at.x - up * radius * Math.sin(at.heading),
        y: at.y + up * radius * Math.cos(at.heading),
      };
      at.heading += up * chain.angleRad[k]!;
      at.x = centre.x + up * radius * Math.sin(at.heading);
      at.y = centre.y - up * radius * Math.cos(at.heading);
    } else {
      at.x += chain.allowanceMm[k]! * Math.cos(at.heading);
      at.y += chain.allowanceMm[k]! * Math.sin(at.heading);
    }
  }
  return places;
}

/** Places of all flats in the section frame with the leaf at `leafDeg`. */
export function flatPlaces(pose: StepPose, leafDeg: number): readonly FlatPlace[] {
  const { seat, bendsDone } = pose;
  const T = seat.thicknessMm;
  const turn = toRad(bentDeg(pose, leafDeg));
  const mirrored = walkChain(seat.clampedChain, formedJoints(seat.clampedChain, bendsDone), T, {
    x: 0,
    y: T / 2,
    heading: 0,
  });
  const inThroat = (p: Point): Point => ({ x: seat.clampedTangentX - p.x, y: p.y });
  const onLeafX = seat.movingTangentX + slideAt(seat, turn);
  const onLeaf = (p: Point): Point => {
    const [dx, dy] = [onLeafX + p.x - seat.pivot.x, p.y - seat.pivot.y];
    return {
      x: seat.pivot.x + dx * Math.cos(turn) - dy * Math.sin(turn),
      y: seat.pivot.y + dx * Math.sin(turn) + dy * Math.cos(turn),
    };
  };
  const moving = walkChain(seat.movingChain, formedJoints(seat.movingChain, bendsDone), T, {
    x: 0,
    y: T / 2,
    heading: 0,
  });
  return [
    ...mirrored.map((place) => ({ flat: place.flat, from: inThroat(place.from), to: inThroat(place.to) })),
    ...moving.map((place) => ({ flat: place.flat, from: onLeaf(place.from), to: onLeaf(place.to) })),
  ];
}

/** Each flat as a body of the sheet's thickness, outward from the bend being made; the bends between are left out. */
export function flatBodies(
  pose: StepPose,
  leafDeg: number,
): { readonly clamped: readonly Outline[]; readonly moving: readonly Outline[] } {
  const half = pose.seat.thicknessMm / 2;
  const bodies = flatPlaces(pose, leafDeg).map(({ from, to }): Outline => {
    const run = Math.hypot(to.x - from.x, to.y - from.y) || 1;
    const off = { x: (-(to.y - from.y) / run) * half, y: ((to.x - from.x) / run) * half };
    const at = (p: Point, side: 1 | -1): Point => ({ x: p.x + side * off.x, y: p.y + side * off.y });
    const corners = [at(from, -1), at(to, -1), at(to, 1), at(from, 1)];
    return { edges: corners.map((p, i) => ({ kind: "line", from: p, to: corners[(i + 1) % 4]! })) };
  });
  const count = pose.seat.clampedChain.joints + 1;
  return { clamped: bodies.slice(0, count), moving: bodies.slice(count) };
}
