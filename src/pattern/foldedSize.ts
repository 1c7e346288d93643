/**
 * Outside sizes of the finished part, given back from the blank: the box round the whole with its largest face lying as in
 * the blank, and for each face the box round it and the mold lines of its bends (each edge moved out by the bend's outside
 * setback). Faces are exact; a bend is taken at 48 places of its arc, less than 0.0002 of its radius short.
 */
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";
import { type FoldedStrip, folded, foldOf } from "./folding.ts";
import { distanceToRing } from "./ring.ts";
import { largestFace, type SheetPart } from "./sheetPart.ts";
import { AS_DRAWN, placed, type Spot } from "./space.ts";

export interface FoldedSize {
  readonly sizeMm: readonly [x: Mm, y: Mm, z: Mm];
  readonly facesMm: readonly (readonly [x: Mm, y: Mm])[];
}

const PLACES = 48;

/** A point of a strip lies on the edge of a face that is nearer than this. */
const ON_EDGE_MM: Mm = 0.02;

/** Sizes of the part with all its bends made. */
export function foldedSize(part: SheetPart): FoldedSize {
  const { thicknessMm } = part.pattern;
  const folding = folded(part, largestFace(part), AS_DRAWN, () => true);
  const spots: Spot[] = part.faces.flatMap((face, i) =>
    face.outer.flatMap((point) => [0, thicknessMm].map((z) => placed(folding.faces[i]!, point, z))),
  );
  for (const strip of folding.strips) spots.push(...arcSpots(strip, thicknessMm));
  const extent = (axis: 0 | 1 | 2): Mm =>
    spots.reduce((most, spot) => Math.max(most, spot[axis]), -Infinity) -
    spots.reduce((least, spot) => Math.min(least, spot[axis]), Infinity);
  return {
    sizeMm: [extent(0), extent(1), extent(2)],
    facesMm: part.faces.map((_, face) => faceSize(part, face)),
  };
}

/** Spots on both faces of a made bend, along the edges of its strips. */
function arcSpots({ hinge, before, fold }: FoldedStrip, thicknessMm: Mm): Spot[] {
  const spots: Spot[] = [];
  for (const { outer } of hinge.strips) {
    outer.forEach((from, i) => {
      const to = outer[(i + 1) % outer.length]!;
      for (let k = 0; k < PLACES; k++) {
        const t = k / PLACES;
        const point = { x: from.x + t * (to.x - from.x), y: from.y + t * (to.y - from.y) };
        for (const z of [0, thicknessMm]) spots.push(bentSpot(before, fold, point, z));
      }
    });
  }
  return spots;
}

/** Where a point of a strip is once its bend is made. */
function bentSpot(before: FoldedStrip["before"], fold: FoldedStrip["fold"], point: Point, z: Mm): Spot {
  const { tangent, nx, ny, allowanceMm, axisZ, up, angleRad } = fold;
  const across = (point.x - tangent.x) * nx + (point.y - tangent.y) * ny;
  const turnedRad = (across / allowanceMm) * angleRad;
  const radius = up * (axisZ - z);
  const out = radius * Math.sin(turnedRad) - across;
  return placed(
    before,
    { x: point.x + out * nx, y: point.y + out * ny },
    axisZ - up * radius * Math.cos(turnedRad),
  );
}

function faceSize(part: SheetPart, face: number): readonly [Mm, Mm] {
  const { outer } = part.faces[face]!;
  const points = [...outer];
  for (const hinge of part.hinges) {
    const side = hinge.left.includes(face) ? "left" : hinge.right.includes(face) ? "right" : undefined;
    if (side === undefined) continue;
    const bend = part.pattern.bends[hinge.bend]!;
    const { nx, ny } = foldOf(bend, part.pattern.thicknessMm, side);
    for (const point of hinge.strips.flatMap((strip) => strip.outer)) {
      if (distanceToRing(outer, point) > ON_EDGE_MM) continue;
      points.push({ x: point.x + bend.bendSetbackMm * nx, y: point.y + bend.bendSetbackMm * ny });
    }
  }
  const [xs, ys] = [points.map(({ x }) => x), points.map(({ y }) => y)];
  return [Math.max(...xs) - Math.min(...xs), Math.max(...ys) - Math.min(...ys)];
}
