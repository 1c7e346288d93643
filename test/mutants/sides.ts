/**
 * A seated sheet in a brake of plain blocks and round posts, each where a truth wants it and all others out of reach.
 */
import type { Brake } from "../../src/brake/brake.ts";
import { Machine } from "../../src/contact/machine.ts";
import { SideChecks } from "../../src/contact/sideChecks.ts";
import { END_OF_FLAT, FACE_OF_FLAT } from "../../src/contact/strip.ts";
import type { Seat } from "../../src/motion/seat.ts";
import type { Outline } from "../../src/plane/outline.ts";
import { outlineOf } from "../contact/shapes.ts";
import { type Joint, T } from "./seatOnPaper.ts";

export const INSET = 0.01;
export const UP: Joint = { turn: 1, angleDeg: 90 };
export const DOWN: Joint = { turn: -1, angleDeg: 90 };

export const block = (x0: number, y0: number, x1: number, y1: number) =>
  outlineOf([x0, y0], [x1, y0], [x1, y1], [x0, y1]);

/** A round post of radius 1. */
export const postAt = (x: number, y: number) =>
  outlineOf([x - 1, y - 1, 1], [x + 1, y - 1, 1], [x + 1, y + 1, 1], [x - 1, y + 1, 1]);

interface Bodies {
  readonly clamp?: Outline;
  readonly bed?: Outline;
  readonly leaf?: Outline;
  readonly frame?: Outline;
}

/** Bodies where they are wanted, all others out of reach. Nose coordinates undone: setback 1, sheet 1 thick. */
export function checksOf(seat: Seat, { clamp, bed, leaf, frame }: Bodies): SideChecks {
  const away = block(900, 900, 901, 901);
  const noseAt = clamp ?? away;
  const nose = {
    edges: noseAt.edges.map((edge) => {
      const back = ({ x, y }: { x: number; y: number }) => ({ x: x + seat.noseSetbackMm, y: y - T });
      const moved = { ...edge, from: back(edge.from), to: back(edge.to) };
      return edge.kind === "arc" ? { ...moved, center: back(edge.center) } : moved;
    }),
  } as Outline;
  const brake = {
    clamp: { kind: "profile", noseRadiusMm: 1, outlines: [nose] },
    bed: bed ?? away,
    leaf: { outline: leaf ?? away, swingDeg: 150, pivot: seat.pivot },
    frame: [frame ?? away],
  } as unknown as Brake;
  return new SideChecks(seat, new Machine(brake, T));
}

/** Counts the pairs of features looked into: each is named in the meeting first. */
export function watched(checks: SideChecks): () => string[] {
  let pairs: string[] = [];
  let kind = "";
  Object.defineProperty(checks.meeting, "kind", {
    get: () => kind,
    set: (next: string) => {
      kind = next;
      pairs.push(next);
    },
  });
  return () => {
    const seen = pairs;
    pairs = [];
    return seen;
  };
}

export const face = (flat: number) => (flat << 2) | FACE_OF_FLAT;
export const end = (flat: number) => (flat << 2) | END_OF_FLAT;

/** The angle between two at which a falling figure comes to 0. */
export function fall(f: (phi: number) => number, from: number, to: number): number {
  let [lo, hi] = [from, to];
  for (let i = 0; i < 60; i++) {
    const middle = (lo + hi) / 2;
    if (f(middle) > 0) lo = middle;
    else hi = middle;
  }
  return lo;
}
