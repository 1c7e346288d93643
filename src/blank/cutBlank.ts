/**
 * The blank with its cut-outs: relief holes, what is to be cut, and how much of the sheet is left.
 * The check of the bends stays in the section: cut-outs change nothing there, and what is cut away hits nothing.
 */
import type { Bend, Part } from "../part/part.ts";
import { chained } from "../plane/chained.ts";
import type { Edge } from "../plane/outline.ts";
import { layOut, type Strip } from "./blank.ts";
import { areaMm2, cutEdges } from "./cutEdges.ts";
import type { CutOut } from "./cutOut.ts";
import { type CutRelief, cutReliefs } from "./cutReliefs.ts";

export interface CutBlank {
  readonly holes: readonly CutRelief[];
  /** All cuts, loop by loop, the sheet to the left of each. */
  readonly edges: readonly Edge[];
  readonly leftMm2: number;
  readonly takenMm2: number;
}

/**
 * Lays out what is cut. Without cut-outs it is the plain rectangle.
 * @throws RangeError when the part has no length along the bend lines
 */
export function cutBlank(
  part: Pick<Part, "thicknessMm" | "lengthMm"> &
    Strip & { readonly bends: readonly Pick<Bend, "insideRadiusMm">[] },
  cutOuts: readonly CutOut[],
): CutBlank {
  const { lengthMm, thicknessMm } = part;
  if (lengthMm === undefined) throw new RangeError("a blank with cut-outs needs its length along the bends");
  const { developedWidthMm: widthMm, bends } = layOut(part);
  const onBlank = bends.map(({ tangentsMm }, i) => ({
    tangentsMm,
    insideRadiusMm: part.bends[i]?.insideRadiusMm ?? 0,
  }));
  const size = { widthMm, lengthMm };
  const holes = cutReliefs(onBlank, cutOuts, size, thicknessMm);
  const edges = chained(cutEdges(size, cutOuts, holes));
  const leftMm2 = areaMm2(edges);
  return { holes, edges, leftMm2, takenMm2: widthMm * lengthMm - leftMm2 };
}
