/**
 * What every check of the brake starts from: the assembly, measured piece by piece, with the loads on it.
 * A figure of a check comes from a piece's own box or holes, never from the sizes that it was made from.
 */
import type { Mm } from "../../units/quantity.ts";
import type { GoverningLoads } from "../governingLoads.ts";
import type { Places } from "../places.ts";
import type { ResolvedRequirements } from "../requirements.ts";
import type { BrakeSizes } from "../sizes.ts";
import { type Assembly, boxOfShape, type Hole, isRound, pieceOf } from "../solid.ts";
import type { Stock } from "../stockSize.ts";
import type { Rectangle } from "../strength/rectangles.ts";

export interface UnderLoad {
  readonly requirements: ResolvedRequirements;
  readonly loads: GoverningLoads;
  readonly sizes: BrakeSizes;
  readonly places: Places;
  readonly assembly: Omit<Assembly, "swing">;
  readonly stock: Stock;
}

export interface Measured extends Rectangle {
  readonly minW: Mm;
  readonly maxW: Mm;
  readonly longMm: Mm;
  readonly wideMm: Mm;
  readonly highMm: Mm;
  /** Of a round; 0 for a flat. */
  readonly diameterMm: Mm;
  readonly holes: readonly Hole[];
}

/** Box and holes of a piece. */
export function measured({ assembly }: Pick<UnderLoad, "assembly">, id: string): Measured {
  const { shape, holes } = pieceOf(assembly, id);
  const { min, max } = boxOfShape(shape);
  return {
    minX: min[0],
    maxX: max[0],
    minY: min[1],
    maxY: max[1],
    minW: min[2],
    maxW: max[2],
    longMm: max[2] - min[2],
    wideMm: max[0] - min[0],
    highMm: max[1] - min[1],
    diameterMm: isRound(shape) ? shape.diameter : 0,
    holes,
  };
}

/** Allowed stress of a piece that is welded or hot rolled, and of one that is cold finished and is not welded. */
export function allowed({ requirements: { steel, coldFinished, safety } }: Pick<UnderLoad, "requirements">) {
  return { welded: steel.yieldMpa / safety.yield, cold: coldFinished.yieldMpa / safety.yield };
}

export const WELDED_COLD = "a weld takes the cold work out of a cold-finished bar: hot rolled yield is taken";
