/**
 * A new job as the person expects it: an angle in the metal and on the brake that were used last.
 */
import { SHAPES, withShape } from "./chainEdits.ts";
import type { JobFile } from "./jobFile.ts";
import { present } from "./sieve.ts";

/** The job after `last`: same unit, metal, thickness, radius and brake, nothing else of its part. */
export function newJob({ part, order: _order, finishByHand: _byHand, ...last }: JobFile): JobFile {
  const { material, thickness, insideRadius, kFactor, flats, bends } = part;
  const blank = present({
    name: "New part",
    material,
    thickness,
    insideRadius,
    kFactor,
    dimensions: "outside" as const,
    flats,
    bends,
  });
  const angle = withShape({ ...last, part: blank }, SHAPES[0]!);
  return { ...angle, part: { ...angle.part, name: blank.name } };
}
