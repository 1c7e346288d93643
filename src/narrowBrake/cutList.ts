/**
 * What to saw and what to buy for a narrow brake, read off its assembly: one line for all pieces of one number.
 * Weight from the pieces' volumes and 7850 kg/m³. Lengths are finished lengths; the saw's kerf is extra.
 * Bound: holes are not taken out, under 3 %.
 */
import type { UnderLoad } from "./checks/under.ts";
import type { CutPiece } from "./narrowBrake.ts";
import { type Assembly, type Piece, sawnLength, volumeOf } from "./solid.ts";
import { STEEL_DENSITY_KG_PER_MM3 } from "./strength/weight.ts";
import { workOn } from "./words/pieceWork.ts";

/** Bought ready: nothing to saw or drill. */
const BOUGHT: ReadonlySet<string> = new Set([
  "hold-down nut",
  "lower nut",
  "lift spring",
  "bar screw",
  "setback screw",
  "lock nut",
  "foot bolt",
  "foot nut",
]);

export function cutList({ pieces }: Pick<Assembly, "pieces">, under: UnderLoad): CutPiece[] {
  const items = [...new Set(pieces.map(({ item }) => item))].sort((a, b) => a - b);
  return items.map((item) => {
    const all = pieces.filter((piece) => piece.item === item);
    const [one] = all as [Piece, ...Piece[]];
    const volume = all.reduce((sum, { shape }) => sum + volumeOf(shape), 0);
    return {
      item,
      piece: one.name,
      count: all.length,
      stock: `${one.stock} (${under.requirements.units})`,
      lengthMm: sawnLength(one),
      weightKg: volume * STEEL_DENSITY_KG_PER_MM3,
      work: workOn(one, under),
      bought: BOUGHT.has(one.name),
    };
  });
}
