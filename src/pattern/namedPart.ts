/**
 * A cut pattern with its faces in an order that a person expects, and named: as they were built up, or counted outward
 * from the largest. The first face is always the one that lies as in the blank when nothing else says so.
 */
import type { FaceName } from "./faceName.ts";
import type { Built } from "./panels.ts";
import type { Pattern } from "./pattern.ts";
import {
  faceAt,
  type Hinge,
  largestFace,
  type SheetPart,
  type SheetPartResult,
  sheetPartOf,
} from "./sheetPart.ts";

export interface NamedPart extends SheetPart {
  readonly names: readonly FaceName[];
}

export type NamedPartResult =
  | { readonly ok: true; readonly part: NamedPart }
  | Extract<SheetPartResult, { ok: false }>;

/** Cuts a pattern; `names` are those of the panels that it was built of, none for a drawn one. */
export function namedPartOf(pattern: Pattern, names: Built["names"] = []): NamedPartResult {
  const result = sheetPartOf(pattern);
  if (!result.ok) return result;
  const { part } = result;
  const named = names.flatMap(({ at, name }) => {
    const face = faceAt(part, at);
    return face === undefined ? [] : [{ face, name }];
  });
  const walked = outward(part).filter((face) => !named.some((one) => one.face === face));
  const order = [
    ...named,
    ...walked.map((face, i): { face: number; name: FaceName } => ({
      face,
      name: { kind: "face", number: named.length + i },
    })),
  ];
  const placeOf = (face: number) => order.findIndex((one) => one.face === face);
  return {
    ok: true,
    part: {
      pattern,
      faces: order.map(({ face }) => part.faces[face]!),
      hinges: part.hinges.map(
        (hinge): Hinge => ({
          ...hinge,
          left: hinge.left.map(placeOf),
          right: hinge.right.map(placeOf),
        }),
      ),
      names: order.map(({ name }) => name),
    },
  };
}

/** Faces from the largest outward, nearest bends first. */
function outward(part: SheetPart): number[] {
  const order = [largestFace(part)];
  for (const face of order) {
    for (const { left, right } of part.hinges) {
      if (!left.includes(face) && !right.includes(face)) continue;
      for (const next of [...left, ...right]) if (!order.includes(next)) order.push(next);
    }
  }
  return order;
}
