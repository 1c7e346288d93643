/**
 * Whether two faces of the finished part are in one place: an input error. Convex plates with their faces drawn in by
 * 0.01 mm, parted in space if and only if one of their faces' normals or a cross product of two edges parts them (the
 * separating axis theorem, from memory); plates in touch are apart.
 */
import { FACE_INSET_MM } from "../contact/gaps.ts";
import { folded } from "./folding.ts";
import { largestFace } from "./sheetPart.ts";
import { AS_DRAWN, dot, placed, type Spot } from "./space.ts";
import type { WholePart } from "./wholePart.ts";

/** Plates nearer to each other than this are in touch, not in one place. */
const TOUCH_MM = 1e-6;

interface Plate {
  readonly face: number;
  readonly spots: readonly Spot[];
  /** Normals of its sides and faces, and directions of its edges. */
  readonly normals: readonly Spot[];
  readonly edges: readonly Spot[];
  readonly least: Spot;
  readonly most: Spot;
}

/** Two faces that overlap once all bends are made, undefined where none do. */
export function overlappingFaces(part: WholePart): readonly [number, number] | undefined {
  const { faces } = folded(part.sheet, largestFace(part.sheet), AS_DRAWN, () => true);
  const plates = part.facePieces.flatMap((rings, face) =>
    rings.map((ring): Plate => {
      const place = faces[face]!;
      const [low, high] = [FACE_INSET_MM, part.thicknessMm - FACE_INSET_MM].map((z) =>
        ring.map((point) => placed(place, point, z)),
      ) as [Spot[], Spot[]];
      const edges = low.map((spot, i) => unit(minus(low[(i + 1) % low.length]!, spot)));
      const spots = [...low, ...high];
      const bound = (pick: (...values: number[]) => number): Spot => [
        pick(...spots.map(([x]) => x)),
        pick(...spots.map(([, y]) => y)),
        pick(...spots.map(([, , z]) => z)),
      ];
      return {
        face,
        spots,
        normals: [place.alongZ, ...edges.map((edge) => cross(edge, place.alongZ))],
        edges: [place.alongZ, ...edges],
        least: bound(Math.min),
        most: bound(Math.max),
      };
    }),
  );
  for (const [i, one] of plates.entries()) {
    for (const other of plates.slice(i + 1)) {
      if (one.face === other.face || boxesApart(one, other)) continue;
      if (!parted(one, other)) return [one.face, other.face];
    }
  }
  return undefined;
}

function boxesApart(a: Plate, b: Plate): boolean {
  return [0, 1, 2].some(
    (axis) => a.least[axis]! >= b.most[axis]! - TOUCH_MM || b.least[axis]! >= a.most[axis]! - TOUCH_MM,
  );
}

function parted(a: Plate, b: Plate): boolean {
  const axes = [
    ...a.normals,
    ...b.normals,
    ...a.edges.flatMap((edge) => b.edges.map((other) => cross(edge, other))),
  ];
  return axes.some((axis) => {
    const length = Math.hypot(...axis);
    if (length < 1e-9) return false;
    const [aLow, aHigh] = reach(a.spots, axis);
    const [bLow, bHigh] = reach(b.spots, axis);
    return Math.max(aLow, bLow) >= Math.min(aHigh, bHigh) - TOUCH_MM * length;
  });
}

function reach(spots: readonly Spot[], axis: Spot): readonly [number, number] {
  let [least, most] = [Infinity, -Infinity];
  for (const spot of spots) {
    const at = dot(spot, axis);
    least = Math.min(least, at);
    most = Math.max(most, at);
  }
  return [least, most];
}

function minus(a: Spot, b: Spot): Spot {
  return [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
}

function cross(a: Spot, b: Spot): Spot {
  return [a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0]];
}

function unit(a: Spot): Spot {
  const length = Math.hypot(...a);
  return [a[0] / length, a[1] / length, a[2] / length];
}
