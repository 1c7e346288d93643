/**
 * The strips that bends take up: sheet between the two tangent lines of a bend, as far as its line runs. A hole across
 * the line leaves two strips of one bend. Lines at half the allowance either side of the middle line.
 */
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";
import type { Chord, Line, Net } from "./cells.ts";
import type { LineBend, PatternFault } from "./pattern.ts";
import { regionHolds } from "./ring.ts";

/** A line may end this far from the sheet's edge: what a drawing rounds. */
const EDGE_MM: Mm = 0.05;

/** A corner nearer to a tangent line than this lies on it; less where the strip itself is narrow. */
const NEAR_MM: Mm = 0.005;

export interface BendStrips {
  /** A point inside each strip, on the middle line. */
  readonly middles: readonly Point[];
  /** Cuts along the tangent line on the left of the way from `from` to `to`, and on its right. */
  readonly left: readonly Chord[];
  readonly right: readonly Chord[];
}

type Found =
  | { readonly ok: true; readonly strips: BendStrips }
  | { readonly ok: false; readonly fault: PatternFault };

/** Unit direction of a bend's line, and its length. */
export function wayOf({ from, to }: Pick<LineBend, "from" | "to">) {
  const lengthMm = Math.hypot(to.x - from.x, to.y - from.y);
  return { lengthMm, ux: (to.x - from.x) / lengthMm, uy: (to.y - from.y) / lengthMm };
}

/** The strips of a bend in the sheet of a net; nodes are added to it where tangent lines meet its rings. */
export function stripsOf(net: Net, bend: LineBend, number: number): Found {
  const { lengthMm, ux, uy } = wayOf(bend);
  const nearMm = Math.min(NEAR_MM, bend.allowanceMm / 8);
  const beside = (offMm: Mm): Line => ({
    at: { x: bend.from.x - uy * offMm, y: bend.from.y + ux * offMm },
    ux,
    uy,
  });
  const left = net.chordsOn(beside(bend.allowanceMm / 2), nearMm);
  const right = net.chordsOn(beside(-bend.allowanceMm / 2), nearMm);
  const { cells, leftOf } = net.cells([...left, ...right]);
  const refuse = (fault: PatternFault): Found => ({ ok: false, fault });

  const along = (node: number) => {
    const { x, y } = net.nodes[node]!;
    return (x - bend.from.x) * ux + (y - bend.from.y) * uy;
  };
  const at = (alongMm: Mm): Point => ({ x: bend.from.x + alongMm * ux, y: bend.from.y + alongMm * uy });
  const middles: Point[] = [];
  const outside: Point[] = [];
  for (const { from, to } of net.chordsOn(beside(0), nearMm)) {
    const [a, b] = [along(from), along(to)];
    const middle = at((a + b) / 2);
    if (Math.min(b, lengthMm) - Math.max(a, 0) <= EDGE_MM) {
      outside.push(middle);
      continue;
    }
    if (a < -EDGE_MM) return refuse({ kind: "short", bend: number, at: bend.from, byMm: -a });
    if (b > lengthMm + EDGE_MM)
      return refuse({ kind: "short", bend: number, at: bend.to, byMm: b - lengthMm });
    middles.push(middle);
  }
  if (middles.length === 0) return refuse({ kind: "noSheet", bend: number, at: at(lengthMm / 2) });
  const mine = new Set(middles.map((middle) => cells.findIndex(({ region }) => regionHolds(region, middle))));
  const astray = outside.find((middle) => [...mine].some((cell) => regionHolds(cells[cell]!.region, middle)));
  // A cut that ends between the tangent lines leaves the strip joined to the sheet beside it.
  if (astray)
    return refuse({ kind: "openCut", bend: number, at: at(alongOf(astray, bend) < 0 ? 0 : lengthMm) });
  const bounds = ({ from, to }: Chord) =>
    mine.has(leftOf(from, to) ?? -1) || mine.has(leftOf(to, from) ?? -1);
  const strips = { middles, left: left.filter(bounds), right: right.filter(bounds) };
  for (const [chords, side] of [
    [strips.left, 1],
    [strips.right, -1],
  ] as const) {
    if (chords.length > 0) continue;
    const middle = middles[0]!;
    const off = (side * bend.allowanceMm) / 2;
    return refuse({
      kind: "nothingLeft",
      bend: number,
      at: { x: middle.x - uy * off, y: middle.y + ux * off },
    });
  }
  return { ok: true, strips };
}

function alongOf(point: Point, bend: LineBend): Mm {
  const { ux, uy } = wayOf(bend);
  return (point.x - bend.from.x) * ux + (point.y - bend.from.y) * uy;
}
