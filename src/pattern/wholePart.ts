/**
 * A whole part ready for its strokes: sheet, faces and strips with their convex pieces. Made once; strokes share it.
 */
import type { Metal } from "../metal/metal.ts";
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";
import { convexPieces } from "./convexPieces.ts";
import type { NamedPart } from "./namedPart.ts";
import { type Ring, regionHolds } from "./ring.ts";
import { faceAt, type Hinge } from "./sheetPart.ts";

export interface WholePart {
  readonly name: string;
  readonly metal: Metal;
  readonly thicknessMm: Mm;
  readonly kFactor: number;
  readonly sheet: NamedPart;
  /** Convex pieces of each face, and of each hinge's strips. */
  readonly facePieces: readonly (readonly Ring[])[];
  readonly stripPieces: ReadonlyMap<Hinge, readonly Ring[]>;
}

/** Makes a cut and named pattern ready. */
export function wholePartOf(
  about: Pick<WholePart, "name" | "metal" | "thicknessMm" | "kFactor">,
  sheet: NamedPart,
): WholePart {
  return {
    ...about,
    sheet,
    facePieces: sheet.faces.map(convexPieces),
    stripPieces: new Map(sheet.hinges.map((hinge) => [hinge, hinge.strips.flatMap(convexPieces)])),
  };
}

/**
 * A face on the side of the part that a point of the blank lies on: the face that holds it, or one beside the strip that
 * does, on the near side of its bend. Undefined beside the sheet.
 */
export function faceBeside({ sheet }: WholePart, point: Point): number | undefined {
  const face = faceAt(sheet, point);
  if (face !== undefined) return face;
  const hinge = sheet.hinges.find(({ strips }) => strips.some((strip) => regionHolds(strip, point)));
  if (!hinge) return undefined;
  const { from, to } = sheet.pattern.bends[hinge.bend]!;
  const left = (to.x - from.x) * (point.y - from.y) - (to.y - from.y) * (point.x - from.x) > 0;
  return (left ? hinge.left : hinge.right)[0];
}
