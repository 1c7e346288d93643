/**
 * Heights at which a piece of sheet, raised where it stands, overlaps a body of the brake: for sliding it out along the
 * bend line. Between two corners both outlines are straight, so the heights of such a strip are one interval; together
 * they are all. Bends are taken in convex pieces a hair larger than they are (contact/sweptPiece).
 */
import type { BlockedHeights } from "../contact/blockedHeights.ts";
import type { SolidBody } from "../contact/solidBody.ts";
import { bendCorners } from "../contact/sweptPiece.ts";
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";
import type { Laid } from "./laid.ts";

/** Strips narrower than this hold nothing. */
const NARROW_MM: Mm = 1e-7;

/** Which way one passes the other, and how far: `up` +1 where the piece rises past the body, −1 where the clamp rises. */
export interface Rising {
  readonly up: 1 | -1;
  readonly liftMm: Mm;
  /** What rises can't pass: every height above one that is blocked is blocked too. */
  readonly forGood: boolean;
}

/** Adds the heights at which a piece overlaps a body. Heights over the lift are of no use and may be left out. */
export function blockStanding(laid: Laid, body: SolidBody, rising: Rising, out: BlockedHeights): void {
  const { features } = laid;
  const B = body.features;
  if (features.minX >= B.maxX || features.maxX <= B.minX) return;
  const { up, liftMm, forGood } = rising;
  const least = up > 0 ? B.minY - features.maxY : features.minY - B.maxY;
  const most = up > 0 ? B.maxY - features.minY : features.maxY - B.minY;
  if (most <= 0 || least >= liftMm) return;
  if (out.blocksAll(Math.max(-1, least), forGood ? Infinity : Math.min(most, liftMm))) return;
  for (const hull of hullsOf(laid)) blockHull(hull, body, rising, out);
}

function blockHull(
  hull: readonly Point[],
  { pieces }: SolidBody,
  { up, forGood }: Rising,
  out: BlockedHeights,
): void {
  const mine = edgesOf(hull);
  const [from, to] = [Math.min(...hull.map(({ x }) => x)), Math.max(...hull.map(({ x }) => x))];
  const its: Edge[] = [];
  const xs = hull.map(({ x }) => x);
  for (let i = 0; i < pieces.length; i += 4) {
    const [x1, x2] = [pieces[i]!, pieces[i + 2]!];
    if (x1 > from && x1 < to) xs.push(x1);
    if (x1 !== x2 && Math.max(x1, x2) > from && Math.min(x1, x2) < to)
      its.push({ x1, y1: pieces[i + 1]!, x2, y2: pieces[i + 3]! });
  }
  xs.sort((a, b) => a - b);
  for (let i = 1; i < xs.length; i++) {
    const [left, right] = [xs[i - 1]!, xs[i]!];
    if (right - left < NARROW_MM) continue;
    const [low, high] = across(mine, left, right) as [Edge, Edge];
    const borders = across(its, left, right);
    for (let b = 0; b + 1 < borders.length; b += 2) {
      let [least, most] = [Infinity, -Infinity];
      for (const x of [left, right]) {
        const [a1, a2] = [heightAt(low, x), heightAt(high, x)];
        const [b1, b2] = [heightAt(borders[b]!, x), heightAt(borders[b + 1]!, x)];
        least = Math.min(least, up > 0 ? b1 - a2 : a1 - b2);
        most = Math.max(most, up > 0 ? b2 - a1 : a2 - b1);
      }
      if (most > 0) out.add(least, forGood ? Infinity : most);
    }
  }
}

interface Edge {
  readonly x1: number;
  readonly y1: number;
  readonly x2: number;
  readonly y2: number;
}

/** A piece as convex outlines. */
function hullsOf({ features, hull }: Laid): (readonly Point[])[] {
  if (hull) return [hull];
  if (features.hollows > 0) return bendCorners(features);
  const { minX, minY, maxX, maxY } = features;
  return [
    [
      { x: minX, y: minY },
      { x: maxX, y: minY },
      { x: maxX, y: maxY },
      { x: minX, y: maxY },
    ],
  ];
}

function edgesOf(hull: readonly Point[]): Edge[] {
  return hull.map(({ x, y }, i) => {
    const next = hull[(i + 1) % hull.length]!;
    return { x1: x, y1: y, x2: next.x, y2: next.y };
  });
}

/** Edges that lead over a strip, from low to high. */
function across(edges: readonly Edge[], left: number, right: number): Edge[] {
  const middle = (left + right) / 2;
  return edges
    .filter(({ x1, x2 }) => Math.min(x1, x2) < middle && Math.max(x1, x2) > middle)
    .sort((a, b) => heightAt(a, middle) - heightAt(b, middle));
}

function heightAt({ x1, y1, x2, y2 }: Edge, x: number): number {
  return y1 + ((x - x1) * (y2 - y1)) / (x2 - x1);
}
