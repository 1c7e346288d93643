/**
 * Folds a blank back into its section, by geometry alone: walks the developed sheet, turns at each bend about a centre at the
 * inside radius, and measures between the mold lines where they cross. Knows tangent lines, radii and angles; no bend setback formula.
 */
import type { Blank } from "../../src/blank/blank.ts";
import type { Part } from "../../src/part/part.ts";

type Vector = readonly [x: number, y: number];

interface FoldedFlat {
  readonly start: Vector;
  readonly end: Vector;
  readonly direction: Vector;
}

/** Flats on the marked face, in place after all bends; x to the right, y out of the marked face of flat 1. */
export function foldBack(blank: Blank, part: Part): readonly FoldedFlat[] {
  const edges = [0, ...blank.bends.flatMap(({ tangentsMm }) => tangentsMm), blank.developedWidthMm];
  const flats: FoldedFlat[] = [];
  let at: Vector = [0, 0];
  let heading = 0;
  for (let i = 0; i <= part.bends.length; i++) {
    const length = (edges[2 * i + 1] ?? Number.NaN) - (edges[2 * i] ?? Number.NaN);
    const direction: Vector = [Math.cos(heading), Math.sin(heading)];
    const end = plus(at, direction, length);
    flats.push({ start: at, end, direction });
    const bend = part.bends[i];
    if (bend === undefined) break;
    const side = bend.turn === "up" ? 1 : -1;
    // the marked face is the inside of an up bend and the outside of a down bend
    const faceRadius = bend.insideRadiusMm + (side === 1 ? 0 : part.thicknessMm);
    const normal: Vector = [-side * Math.sin(heading), side * Math.cos(heading)];
    const center = plus(end, normal, faceRadius);
    heading += (side * bend.angleDeg * Math.PI) / 180;
    at = plus(center, [side * Math.sin(heading), -side * Math.cos(heading)], faceRadius);
  }
  return flats;
}

/** Dimension of each flat to its bends' mold lines, on the outside or on the inside of each bend. */
export function moldLineDimensions(
  flats: readonly FoldedFlat[],
  part: Part,
  where: "outside" | "inside",
): readonly number[] {
  return flats.map((flat, i) => {
    const [before, after] = [part.bends[i - 1], part.bends[i]];
    const from = before === undefined ? 0 : along(flat, crossing(flats, i - 1, part, where));
    const last = flat.direction[0] * flat.end[0] + flat.direction[1] * flat.end[1];
    const to = after === undefined ? last - origin(flat) : along(flat, crossing(flats, i, part, where));
    return to - from;
  });
}

/** Where the faces of the two flats beside a bend cross when they are run on. */
function crossing(
  flats: readonly FoldedFlat[],
  bend: number,
  part: Part,
  where: "outside" | "inside",
): Vector {
  const [one, other] = [flats[bend], flats[bend + 1]];
  if (one === undefined || other === undefined) throw new Error("no such bend");
  const markedFace = (part.bends[bend]?.turn === "up") === (where === "inside");
  const depth = markedFace ? 0 : -part.thicknessMm;
  const p = plus(one.end, [-one.direction[1], one.direction[0]], depth);
  const q = plus(other.start, [-other.direction[1], other.direction[0]], depth);
  const cross = one.direction[0] * other.direction[1] - one.direction[1] * other.direction[0];
  const t = ((q[0] - p[0]) * other.direction[1] - (q[1] - p[1]) * other.direction[0]) / cross;
  return plus(p, one.direction, t);
}

function origin(flat: FoldedFlat): number {
  return flat.direction[0] * flat.start[0] + flat.direction[1] * flat.start[1];
}

function along(flat: FoldedFlat, [x, y]: Vector): number {
  return flat.direction[0] * x + flat.direction[1] * y - origin(flat);
}

function plus([x, y]: Vector, [dx, dy]: Vector, by: number): Vector {
  return [x + dx * by, y + dy * by];
}
