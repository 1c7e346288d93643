/**
 * Pairs of changes by the same size, looked for only where no single change does: two flats, or a flat and the leaf's face.
 */
import type { Change, Trial } from "../jobFile/change.ts";
import { boxOf } from "../plane/bounding.ts";
import type { Mm } from "../units/quantity.ts";
import { type Family, LEAST_FLAT_MM, MOST_WIDER_MM, SHORTEST_LEAF_MM } from "./family.ts";

/** Up to so many flats every two are tried together. */
const MOST_PAIRED = 8;

/** Pairs of changes by the same size: two flats, or a flat and the leaf's face. Only where no single change does. */
export function pairsOf({ part, brake }: Trial): Family[] {
  const count = part.flatsMm.length;
  if (count > MOST_PAIRED) return [];
  const least = Math.max(LEAST_FLAT_MM, 2 * part.thicknessMm);
  const room = (flat: number, sign: 1 | -1) => (sign > 0 ? MOST_WIDER_MM : part.flatsMm[flat]! - least);
  const flat = (index: number, byMm: Mm): Change => ({ kind: "flat", flat: index + 1, byMm });
  const shared = { measure: "mm", base: 0, sign: 1 } as const;
  const families: Family[] = [];
  for (let a = 0; a < count; a++) {
    for (let b = a + 1; b < count; b++) {
      for (const [signA, signB] of SIGNS) {
        families.push({
          ...shared,
          kind: "twoFlats",
          most: Math.min(room(a, signA), room(b, signB)),
          changes: (byMm) => [flat(a, signA * byMm), flat(b, signB * byMm)],
          index: a + 1,
          also: b + 1,
        });
      }
    }
  }
  const leafMm = boxOf(brake.leaf.outline).maxX;
  const withLeaf = part.flatsMm.map(
    (_, a): Family => ({
      ...shared,
      kind: "flatAndLeaf",
      most: Math.min(room(a, -1), leafMm - SHORTEST_LEAF_MM),
      changes: (byMm) => [flat(a, -byMm), { kind: "leafFace", toMm: leafMm - byMm }],
      index: a + 1,
    }),
  );
  return [...families, ...withLeaf];
}

const SIGNS: readonly (readonly [1 | -1, 1 | -1])[] = [
  [-1, -1],
  [-1, 1],
  [1, -1],
];
