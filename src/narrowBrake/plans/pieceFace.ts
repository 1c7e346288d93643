/**
 * How a piece is looked at on its own drawing: the face in which its holes are seen, measured along from its left end (or its round
 * end) and across from its working edge, and its end view.
 * Exact; everything is read off the piece.
 */
import type { Mm } from "../../units/quantity.ts";
import {
  arcPoints,
  type Box,
  boxOfShape,
  type Hole,
  isRound,
  type Piece,
  type Xy,
  type Xyw,
} from "../solid.ts";

type Axis = 0 | 1 | 2;

export interface FaceHole {
  readonly alongMm: Mm;
  readonly acrossMm: Mm;
  readonly diameterMm: Mm;
  readonly tapped: string | undefined;
  /** Null where it goes right through. */
  readonly deepMm: Mm | null;
  readonly reason: string | undefined;
  /** Open to the lower edge of the face: the outline shows it. */
  readonly slot: boolean;
}

export interface PieceFace {
  readonly longMm: Mm;
  readonly wideMm: Mm;
  readonly thickMm: Mm;
  /** What along and across are measured from: "left end", "front edge". */
  readonly alongFrom: string;
  readonly acrossFrom: string;
  /** Outline of the face, x along and y against across: its working edge on top. */
  readonly outline: readonly (readonly [along: Mm, across: Mm])[];
  readonly holes: readonly FaceHole[];
  /** The section square to the bend, as it stands in the brake; undefined for rounds and where the face shows it. */
  readonly end: readonly (readonly [x: Mm, y: Mm])[] | undefined;
}

export function faceOf(piece: Piece): PieceFace {
  const { shape, holes } = piece;
  const box = boxOfShape(shape);
  const [thickAxis, acrossAxis, alongAxis] = axesOf(piece, box);
  const size = (axis: Axis) => box.max[axis] - box.min[axis];
  // Ears and feet are measured from the end that is toward the operator, or up.
  const along = (at: Xyw) => (alongAxis === 2 ? at[2] - box.min[2] : box.max[alongAxis] - at[alongAxis]);
  const across = (at: Xyw) => box.max[acrossAxis] - at[acrossAxis];
  const [longMm, wideMm] = [size(alongAxis), size(acrossAxis)];
  const profile = isRound(shape) ? undefined : shape.profile;
  const shows = thickAxis === 2 && profile !== undefined;
  return {
    longMm,
    wideMm,
    thickMm: size(thickAxis),
    alongFrom: alongAxis === 0 ? "front end" : alongAxis === 1 ? "top end" : "left end",
    acrossFrom: acrossAxis === 0 ? "front edge" : "top edge",
    outline: shows
      ? profile.map(([x, y]) => [along([x, y, 0]), across([x, y, 0])] as const)
      : [
          [0, 0],
          [longMm, 0],
          [longMm, wideMm],
          ...holes
            .filter(({ slot }) => slot)
            .flatMap(({ from, diameter }) => slotIn(along(from), across(from), diameter / 2, wideMm)),
          [0, wideMm],
        ],
    holes: holes.map((hole) => ({
      alongMm: along(hole.from),
      acrossMm: across(hole.from),
      diameterMm: hole.diameter,
      tapped: hole.tapped,
      deepMm: throughDepth(hole, size(thickAxis)),
      reason: hole.reason,
      slot: hole.slot === true,
    })),
    end: shows ? undefined : profile,
  };
}

/** From the lower edge up to the hole, half round it and back. */
function slotIn(along: Mm, across: Mm, radius: Mm, edge: Mm): readonly Xy[] {
  return [[along + radius, edge], ...arcPoints([along, across], radius, 0, -Math.PI), [along - radius, edge]];
}

function throughDepth({ from, to }: Hole, thickMm: Mm): Mm | null {
  const deep = Math.hypot(to[0] - from[0], to[1] - from[1], to[2] - from[2]);
  return deep >= thickMm - 1e-6 ? null : deep;
}

/** Axis looked along, then across, then along the piece. */
function axesOf({ name, shape, holes }: Piece, box: Box): readonly [Axis, Axis, Axis] {
  const size = (axis: Axis) => box.max[axis] - box.min[axis];
  if (isRound(shape)) {
    const axes: Axis[] = [0, 1, 2];
    const long = axes.reduce((a, b) =>
      Math.abs(shape.to[b] - shape.from[b]) > Math.abs(shape.to[a] - shape.from[a]) ? b : a,
    );
    const [first, second] = axes.filter((axis) => axis !== long) as [Axis, Axis];
    return [first, second, long];
  }
  const hole = holes[0];
  if (hole) {
    const drilled = ([0, 1, 2] as const).find((axis) => Math.abs(hole.to[axis] - hole.from[axis]) > 1e-9)!;
    if (drilled === 2) return name === "leaf ear" ? [2, 0, 1] : [2, 1, 0];
    const across = drilled === 0 ? 1 : 0;
    // A washer or a foot is longer front to back than along the bend.
    return size(2) >= size(across) ? [drilled, across, 2] : [drilled, 2, across];
  }
  if (shape.profile.length > 4 && size(2) < Math.max(size(0), size(1))) return [2, 1, 0];
  return size(0) >= size(1) ? [1, 0, 2] : [0, 1, 2];
}

/** Holes of one kind, with the letter that marks them on the drawing. */
export interface HoleKind {
  readonly letter: string;
  readonly holes: readonly FaceHole[];
}

/** Holes sorted into kinds by size, thread and depth. */
export function holeKinds({ holes }: PieceFace): HoleKind[] {
  const keys = new Map<string, FaceHole[]>();
  for (const hole of holes) {
    const key = [
      hole.diameterMm.toFixed(4),
      hole.tapped,
      hole.deepMm?.toFixed(4),
      hole.reason === "countersink",
    ].join();
    keys.set(key, [...(keys.get(key) ?? []), hole]);
  }
  return [...keys.values()].map((of, i) => ({ letter: String.fromCharCode(65 + i), holes: of }));
}
