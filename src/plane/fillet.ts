/**
 * Makes an outline of a closed polygon whose corners may be rounded, convex or hollow.
 * A corner that turns by τ takes t = R·tan(τ/2) from both of its sides; the arc is tangent to both, exact to rounding.
 * Corners may run either way round; the outline runs counter-clockwise.
 */
import type { Mm } from "../units/quantity.ts";
import type { Edge, Outline } from "./outline.ts";
import { distanceBetween, type Point } from "./point.ts";
import { selfCrossing } from "./selfCrossing.ts";

/** A corner of a polygon; `radius` 0 or absent leaves it sharp. */
export interface Corner {
  readonly x: Mm;
  readonly y: Mm;
  readonly radius?: Mm;
}

/** Why corners make no outline. `corner` counts from 0 in the order given. */
export type OutlineFault =
  | { readonly kind: "few" }
  | { readonly kind: "flat" }
  | { readonly kind: "repeated"; readonly corner: number }
  | { readonly kind: "crossing"; readonly corner: number; readonly other: number }
  | { readonly kind: "radius"; readonly corner: number; readonly largestMm: Mm };

export type OutlineResult =
  | { readonly ok: true; readonly outline: Outline }
  | { readonly ok: false; readonly fault: OutlineFault };

/** Corners nearer to each other than this are one corner. */
const SAME_MM = 1e-6;

/** What one corner does to the outline: tangent points, and the turn to the left in radians. */
interface Rounded {
  readonly from: Point;
  readonly to: Point;
  readonly radius: Mm;
  readonly center: Point;
  readonly turnRad: number;
}

/**
 * Outline of a closed polygon, corners rounded as given. The last corner joins the first; don't repeat it.
 * @example filletedOutline([{ x: 0, y: 0 }, { x: 4, y: 0, radius: 1 }, { x: 4, y: 3 }]).outline.edges.length // 4
 */
export function filletedOutline(corners: readonly Corner[]): OutlineResult {
  const count = corners.length;
  if (count < 3) return { ok: false, fault: { kind: "few" } };
  for (let i = 0; i < count; i++) {
    if (distanceBetween(corners[i]!, corners[(i + 1) % count]!) <= SAME_MM) {
      return { ok: false, fault: { kind: "repeated", corner: (i + 1) % count === 0 ? i : i + 1 } };
    }
  }
  const area = signedArea(corners);
  if (Math.abs(area) <= SAME_MM) return { ok: false, fault: { kind: "flat" } };
  const chain = corners.map((corner, index) => ({ corner, index }));
  if (area < 0) chain.reverse();
  const ring = chain.map(({ corner }) => corner);
  const given = (i: number) => chain[i]!.index;

  const sides: Edge[] = ring.map((from, i) => ({ kind: "line", from, to: ring[(i + 1) % count]! }));
  const crossed = selfCrossing(sides);
  if (crossed) return crossing(given(crossed[0]), given(crossed[1]));

  const tight = tightCorner(ring);
  if (tight) return { ok: false, fault: { ...tight, corner: given(tight.corner) } };
  const { edges, owners } = edgesOf(ring);
  // Only roundings can meet what the bare polygon didn't: a spike that reaches into the metal cut off a corner.
  const met = edges.some((edge) => edge.kind === "arc") ? selfCrossing(edges) : undefined;
  if (met) return crossing(given(owners[met[0]]!), given(owners[met[1]]!));
  return { ok: true, outline: { edges } };
}

function crossing(corner: number, other: number): OutlineResult {
  return { ok: false, fault: { kind: "crossing", corner, other } };
}

/** Area of a polygon by the shoelace sum, positive counter-clockwise, taken about its first corner. */
function signedArea(corners: readonly Point[]): number {
  const base = corners[0]!;
  let twice = 0;
  for (let i = 1; i + 1 < corners.length; i++) {
    const [a, b] = [corners[i]!, corners[i + 1]!];
    twice += (a.x - base.x) * (b.y - base.y) - (b.x - base.x) * (a.y - base.y);
  }
  return twice / 2;
}

function turnAt(ring: readonly Corner[], i: number): number {
  const before = ring[(i + ring.length - 1) % ring.length]!;
  const here = ring[i]!;
  const after = ring[(i + 1) % ring.length]!;
  const [ax, ay] = [here.x - before.x, here.y - before.y];
  const [bx, by] = [after.x - here.x, after.y - here.y];
  return Math.atan2(ax * by - ay * bx, ax * bx + ay * by);
}

/** How much of each side a corner's rounding takes. */
function reachAt(ring: readonly Corner[], i: number): Mm {
  return (ring[i]!.radius ?? 0) * Math.tan(Math.abs(turnAt(ring, i)) / 2);
}

/** The first corner whose rounding doesn't fit beside its neighbours', with the radius that would. */
function tightCorner(ring: readonly Corner[]): { kind: "radius"; corner: number; largestMm: Mm } | undefined {
  const reaches = ring.map((_, i) => reachAt(ring, i));
  for (let i = 0; i < ring.length; i++) {
    const next = (i + 1) % ring.length;
    const length = distanceBetween(ring[i]!, ring[next]!);
    if (reaches[i]! + reaches[next]! <= length + SAME_MM / 1000) continue;
    // Blame the longer of the two; the other keeps what it asks for.
    const corner = reaches[i]! >= reaches[next]! ? i : next;
    const other = corner === i ? next : i;
    const room = Math.max(0, length - reaches[other]!);
    return { kind: "radius", corner, largestMm: room / Math.tan(Math.abs(turnAt(ring, corner)) / 2) };
  }
  return undefined;
}

function roundedCorner(ring: readonly Corner[], i: number): Rounded {
  const here = ring[i]!;
  const turnRad = turnAt(ring, i);
  const reach = reachAt(ring, i);
  // A corner that hardly turns has nothing to round.
  if (reach <= SAME_MM) return { from: here, to: here, radius: 0, center: here, turnRad };
  const before = ring[(i + ring.length - 1) % ring.length]!;
  const after = ring[(i + 1) % ring.length]!;
  const inLength = distanceBetween(before, here);
  const outLength = distanceBetween(here, after);
  const [ix, iy] = [(here.x - before.x) / inLength, (here.y - before.y) / inLength];
  const [ox, oy] = [(after.x - here.x) / outLength, (after.y - here.y) / outLength];
  const radius = here.radius ?? 0;
  const left = Math.sign(turnRad) * radius;
  const from = { x: here.x - ix * reach, y: here.y - iy * reach };
  return {
    from,
    to: { x: here.x + ox * reach, y: here.y + oy * reach },
    radius,
    center: { x: from.x - iy * left, y: from.y + ix * left },
    turnRad,
  };
}

/** Lines and arcs in turn, with the corner at which each begins. A side used up by its roundings falls away. */
function edgesOf(ring: readonly Corner[]): { edges: Edge[]; owners: number[] } {
  const rounded = ring.map((_, i) => roundedCorner(ring, i));
  const edges: Edge[] = [];
  const owners: number[] = [];
  rounded.forEach((corner, i) => {
    const next = rounded[(i + 1) % rounded.length]!;
    const usedUp = distanceBetween(corner.to, next.from) <= SAME_MM;
    const to = usedUp ? next.from : corner.to;
    if (corner.radius > 0) {
      const { from, center, radius, turnRad } = corner;
      const startRad = Math.atan2(from.y - center.y, from.x - center.x);
      edges.push({ kind: "arc", from, to, center, radius, startRad, sweepRad: turnRad });
      owners.push(i);
    }
    if (!usedUp) {
      edges.push({ kind: "line", from: corner.to, to: next.from });
      owners.push(i);
    }
  });
  return { edges, owners };
}
