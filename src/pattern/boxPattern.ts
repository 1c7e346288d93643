/**
 * A box as a pattern: a bottom with walls on any of its sides, lips on the walls. Walls end at the tangent lines of their
 * neighbours (open corners) or reach on until their inside edges meet; inward lips of neighbours are cut at 45°. x is the
 * width, y the depth, the front wall at low y. Exact.
 */
import type { Bend } from "../part/part.ts";
import type { Mm } from "../units/quantity.ts";
import type { BoxSide, FaceName } from "./faceName.ts";
import { type Built, built, FAR_EDGE, hang, type Panel, rootPanel, type Stretch } from "./panels.ts";
import type { Link } from "./sectionPattern.ts";

export type { BoxSide };

/** How walls meet at the corners of a box. */
export type Corners =
  | { readonly kind: "open" }
  /** Inside edges meet, `gapMm` apart. */
  | { readonly kind: "meet"; readonly gapMm: Mm }
  /** Tabs on the ends of the left and right walls, bent round the corner behind or before the wall that stands there. */
  | {
      readonly kind: "tab";
      readonly sizeMm: Mm;
      readonly side: "inside" | "outside";
      /** How far off the wall that it lies along. */
      readonly gapMm: Mm;
      readonly bends: readonly Bend[];
    };

export interface Box {
  /** Sizes as dimensioned. */
  readonly widthMm: Mm;
  readonly depthMm: Mm;
  readonly thicknessMm: Mm;
  /** Each wall with its own bend, then its lips outward. */
  readonly walls: Readonly<Partial<Record<BoxSide, readonly Link[]>>>;
  readonly corners: Corners;
  /** Between two lips that are cut to meet. */
  readonly gapMm: Mm;
  readonly taken: (bend: Bend) => Mm;
}

export type BoxFault =
  | { readonly kind: "bottom"; readonly along: "width" | "depth"; readonly leastMm: Mm }
  | { readonly kind: "link"; readonly side: BoxSide; readonly link: number; readonly leastMm: Mm }
  /** A lip of two mitred corners is cut away before its edge. */
  | { readonly kind: "mitre"; readonly side: BoxSide; readonly link: number; readonly mostMm: Mm }
  | { readonly kind: "tab"; readonly leastMm: Mm };

export type BoxResult =
  | { readonly ok: true; readonly built: Built }
  | { readonly ok: false; readonly fault: BoxFault };

/** Sides in the order in which their bends are numbered. */
export const SIDES: readonly BoxSide[] = ["left", "right", "front", "back"];

/** The bottom's edge on which each wall hangs, and the neighbours at that edge's start and end. */
const EDGES: Readonly<Record<BoxSide, { edge: number; before: BoxSide; after: BoxSide }>> = {
  front: { edge: 0, before: "left", after: "right" },
  right: { edge: 1, before: "front", after: "back" },
  back: { edge: 2, before: "right", after: "left" },
  left: { edge: 3, before: "back", after: "front" },
};

/** The blank of a box; its bends go left, right, front, back, each wall's own and then its lips outward. */
export function boxPattern(box: Box): BoxResult {
  const { walls, taken } = box;
  const takenBy = (side: BoxSide) => (walls[side] ? taken(walls[side][0]!.bend) : 0);
  const [acrossMm, alongMm] = [takenBy("left") + takenBy("right"), takenBy("front") + takenBy("back")];
  if (box.widthMm <= acrossMm) return refused({ kind: "bottom", along: "width", leastMm: acrossMm });
  if (box.depthMm <= alongMm) return refused({ kind: "bottom", along: "depth", leastMm: alongMm });
  const root = rootPanel({ kind: "bottom" }, box.widthMm - acrossMm, box.depthMm - alongMm);
  const bends: Bend[] = [];
  const hung = new Map<BoxSide, Panel>();
  for (const side of SIDES) {
    const fault = hangWall(box, root, side, bends, hung);
    if (fault) return refused(fault);
  }
  const fault = hangTabs(box, hung, bends);
  return fault ? refused(fault) : { ok: true, built: built(root, bends) };
}

/** The corners that take a tab, in the order in which their bends are numbered: after those of all walls. */
export function tabCorners(walls: Box["walls"]): { readonly side: BoxSide; readonly toward: BoxSide }[] {
  return (["left", "right"] as const).flatMap((side) =>
    (["front", "back"] as const).flatMap((toward) =>
      walls[side] && walls[toward] ? [{ side, toward }] : [],
    ),
  );
}

function hangTabs(box: Box, hung: ReadonlyMap<BoxSide, Panel>, bends: Bend[]): BoxFault | undefined {
  const { corners, walls } = box;
  if (corners.kind !== "tab") return undefined;
  for (const [i, { side, toward }] of tabCorners(walls).entries()) {
    const bend = corners.bends[i]!;
    const wall = hung.get(side)!;
    const depthMm = corners.sizeMm - box.taken(bend);
    if (depthMm <= 0) return { kind: "tab", leastMm: box.taken(bend) };
    // A wall's first edge leads outward at its start, its third back at its end.
    const edge = EDGES[side].before === toward ? 0 : 2;
    const [a, b] = [wall.ring[edge]!, wall.ring[edge + 1]!];
    const whole = { fromMm: 0, toMm: Math.hypot(b.x - a.x, b.y - a.y) };
    const name: FaceName = { kind: "tab", of: { kind: "wall", side }, toward };
    hang(wall, edge, { name, bend, strip: whole, base: whole, far: whole, depthMm });
    bends.push(bend);
  }
  return undefined;
}

function refused(fault: BoxFault): BoxResult {
  return { ok: false, fault };
}

function hangWall(
  box: Box,
  root: Panel,
  side: BoxSide,
  bends: Bend[],
  hung: Map<BoxSide, Panel>,
): BoxFault | undefined {
  const links = box.walls[side];
  if (!links) return undefined;
  const { edge, before, after } = EDGES[side];
  const lengthMm = edge % 2 === 0 ? root.ring[1]!.x : root.ring[2]!.y;
  const wall: FaceName = { kind: "wall", side };
  let base: Stretch = {
    fromMm: -reachPast(box, side, before),
    toMm: lengthMm + reachPast(box, side, after),
  };
  let strip: Stretch = { fromMm: Math.max(0, base.fromMm), toMm: Math.min(lengthMm, base.toMm) };
  let [on, onEdge] = [root, edge];
  for (const [link, { sizeMm, bend }] of links.entries()) {
    const next = links[link + 1];
    const takenMm = box.taken(bend) + (next ? box.taken(next.bend) : 0);
    const depthMm = sizeMm - takenMm;
    if (depthMm <= 0) return { kind: "link", side, link, leastMm: takenMm };
    let far = base;
    if (link === 1) {
      // Lips run between the bottom's tangent lines, and no farther than the wall that they hang on.
      const cut = { fromMm: lipCut(box, side, before), toMm: lipCut(box, side, after) };
      base = {
        fromMm: Math.max(0, cut.fromMm - base.fromMm),
        toMm: Math.min(base.toMm, lengthMm - cut.toMm) - base.fromMm,
      };
      strip = base;
      far = {
        fromMm: base.fromMm + (cut.fromMm > 0 ? depthMm : 0),
        toMm: base.toMm - (cut.toMm > 0 ? depthMm : 0),
      };
      const mostMm = (base.toMm - base.fromMm) / 2 + takenMm;
      if (far.toMm <= far.fromMm) return { kind: "mitre", side, link, mostMm };
    }
    const name: FaceName = link === 0 ? wall : { kind: "lip", of: wall, number: link - 1 };
    on = hang(on, onEdge, { name, bend, strip, base, far, depthMm });
    bends.push(bend);
    if (link === 0) hung.set(side, on);
    onEdge = FAR_EDGE;
    // The far edge of the panel just hung begins where its far stretch does.
    if (link > 0) {
      base = { fromMm: 0, toMm: far.toMm - far.fromMm };
      strip = base;
    }
  }
  return undefined;
}

/**
 * By how much a wall runs past the tangent line toward a neighbour: until the inside edges of the two all but meet, or so
 * far that its tab lies against the neighbour. Less than 0 where a tab inside keeps it short.
 */
function reachPast({ corners, walls, thicknessMm }: Box, side: BoxSide, neighbour: BoxSide): Mm {
  const links = walls[neighbour];
  if (corners.kind === "open" || !links) return 0;
  const { bendSetbackMm } = links[0]!.bend;
  // Both inside edges stand off the corner's inside line by this much, square to each other.
  if (corners.kind === "meet") return Math.max(0, bendSetbackMm - thicknessMm - corners.gapMm / Math.SQRT2);
  const corner = tabCorners(walls).findIndex((one) => one.side === side && one.toward === neighbour);
  if (corner < 0) return 0;
  const [wallMm, offMm] = [bendSetbackMm, thicknessMm + corners.gapMm];
  const moldLineMm = corners.side === "inside" ? wallMm - offMm : wallMm + offMm;
  return moldLineMm - corners.bends[corner]!.bendSetbackMm;
}

/** Half the gap where a wall's lip and its neighbour's both turn in and would meet, else 0. */
function lipCut({ walls, gapMm }: Box, side: BoxSide, neighbour: BoxSide): Mm {
  const turnsIn = (of: BoxSide) => {
    const lip = walls[of]?.[1];
    return lip !== undefined && lip.bend.turn === walls[of]![0]!.bend.turn;
  };
  return turnsIn(side) && turnsIn(neighbour) ? Math.max(gapMm / 2, LEAST_CUT_MM) : 0;
}

/** A cut of no gap is still a cut at 45°. */
const LEAST_CUT_MM: Mm = 1e-9;
