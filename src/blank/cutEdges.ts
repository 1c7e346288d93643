/**
 * What is to be cut of a blank with rectangles and holes taken out: straight cuts and arcs, the sheet always to the left.
 * Cut-outs may touch, holes may run over the edge of a cut-out: each cut stands once, and only where sheet meets none.
 * Exact; the area follows from the same edges by Green's theorem.
 */
import type { ArcEdge, Edge, LineEdge } from "../plane/outline.ts";
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";
import type { CutOut } from "./cutOut.ts";
import type { BlankSize } from "./cutReliefs.ts";
import type { ReliefHole } from "./relief.ts";
import { SheetCells } from "./sheetCells.ts";

const FULL_TURN = 2 * Math.PI;

/** A piece of a cut shorter than this is the rounding of a crossing. */
const SPECK_MM: Mm = 1e-7;

/**
 * The edges of what is left of the sheet.
 * @example cutEdges({ widthMm: 9, lengthMm: 9 }, [], []).length // 4
 */
export function cutEdges(size: BlankSize, cutOuts: readonly CutOut[], holes: readonly ReliefHole[]): Edge[] {
  const cells = new SheetCells(size, cutOuts);
  const straight = cells.edges();
  return [
    ...straight.flatMap((edge) => outsideHoles(edge, holes)),
    ...holes.flatMap((hole, i) => roundHole(hole, i, holes, straight, cells)),
  ];
}

/** Area of the sheet that closed edges hold to their left, in square millimetres. @example areaMm2([]) // 0 */
export function areaMm2(edges: readonly Edge[]): number {
  let twice = 0;
  for (const edge of edges) {
    if (edge.kind === "line") {
      twice += edge.from.x * edge.to.y - edge.to.x * edge.from.y;
      continue;
    }
    const { center, radius, from, to, sweepRad } = edge;
    twice += radius * radius * sweepRad + center.x * (to.y - from.y) - center.y * (to.x - from.x);
  }
  return twice / 2;
}

/** The pieces of a straight cut that no hole takes away. */
function outsideHoles({ from, to }: LineEdge, holes: readonly ReliefHole[]): LineEdge[] {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const at = (run: Mm): Point => ({
    x: from.x + ((to.x - from.x) * run) / length,
    y: from.y + ((to.y - from.y) * run) / length,
  });
  const crossings = holes.flatMap((hole) => lineCrossings(from, to, hole));
  return pieces([0, ...crossings.filter((run) => run > 0 && run < length), length]).flatMap(
    ([start, end]) => {
      const middle = at((start + end) / 2);
      if (end - start < SPECK_MM || holes.some((hole) => inHole(middle, hole))) return [];
      return [{ kind: "line", from: start === 0 ? from : at(start), to: end === length ? to : at(end) }];
    },
  );
}

/** How far along from→to the line crosses a hole's edge. */
function lineCrossings(from: Point, to: Point, { center, diameterMm }: ReliefHole): Mm[] {
  const length = Math.hypot(to.x - from.x, to.y - from.y);
  const [ux, uy] = [(to.x - from.x) / length, (to.y - from.y) / length];
  const [dx, dy] = [center.x - from.x, center.y - from.y];
  const off = ux * dy - uy * dx;
  const reach = (diameterMm / 2) ** 2 - off * off;
  if (reach <= 0) return [];
  const foot = ux * dx + uy * dy;
  return [foot - Math.sqrt(reach), foot + Math.sqrt(reach)];
}

/** The arcs of a hole's edge along which there is sheet, clockwise. */
function roundHole(
  hole: ReliefHole,
  index: number,
  holes: readonly ReliefHole[],
  straight: readonly LineEdge[],
  cells: SheetCells,
): ArcEdge[] {
  const { center, diameterMm } = hole;
  const radius = diameterMm / 2;
  const others = holes.filter((_, i) => i !== index);
  const onEdge = (angleRad: number): Point => ({
    x: center.x + radius * Math.cos(angleRad),
    y: center.y + radius * Math.sin(angleRad),
  });
  const turns = [
    ...straight.flatMap(({ from, to }) => {
      const length = Math.hypot(to.x - from.x, to.y - from.y);
      const runs = lineCrossings(from, to, hole).filter((run) => run > -SPECK_MM && run < length + SPECK_MM);
      return runs.map((run) => {
        const share = run / length;
        return Math.atan2(
          from.y + (to.y - from.y) * share - center.y,
          from.x + (to.x - from.x) * share - center.x,
        );
      });
    }),
    ...others.flatMap((other) => circleCrossings(hole, other)),
  ].map((turn) => (turn < 0 ? turn + FULL_TURN : turn));
  const sheetAt = (angleRad: number) => {
    const point = onEdge(angleRad);
    return cells.holdsSheet(point) && !others.some((other) => inHole(point, other));
  };
  const arc = (from: number, to: number): ArcEdge => ({
    kind: "arc",
    from: onEdge(to),
    to: onEdge(from),
    center,
    radius,
    startRad: to,
    sweepRad: from - to,
  });
  const sorted = [...new Set(turns)].sort((a, b) => a - b);
  const first = sorted[0];
  if (first === undefined) return sheetAt(0) ? [arc(0, FULL_TURN)] : [];
  return pieces([...sorted, first + FULL_TURN]).flatMap(([from, to]) =>
    (to - from) * radius > SPECK_MM && sheetAt((from + to) / 2) ? [arc(from, to)] : [],
  );
}

/** Directions from a hole's centre to where its edge crosses another's. */
function circleCrossings(hole: ReliefHole, other: ReliefHole): number[] {
  const [dx, dy] = [other.center.x - hole.center.x, other.center.y - hole.center.y];
  const [r, q, d] = [hole.diameterMm / 2, other.diameterMm / 2, Math.hypot(dx, dy)];
  if (d >= r + q || d <= Math.abs(r - q)) return [];
  const half = Math.acos((r * r + d * d - q * q) / (2 * r * d));
  const toward = Math.atan2(dy, dx);
  return [toward - half, toward + half].map((turn) => Math.atan2(Math.sin(turn), Math.cos(turn)));
}

function inHole(point: Point, { center, diameterMm }: ReliefHole): boolean {
  return Math.hypot(point.x - center.x, point.y - center.y) < diameterMm / 2;
}

function pieces(cuts: readonly number[]): readonly (readonly [number, number])[] {
  const sorted = cuts.toSorted((a, b) => a - b);
  return sorted.slice(1).map((end, i) => [sorted[i] as number, end]);
}
