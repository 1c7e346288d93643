/**
 * Whether the brake is rated for the sheet: full plastic moment σy·T²/4 per unit length of bend, times the length,
 * against the same for the rated sheet (plastic bending of a rectangle, textbook mechanics; from memory).
 */

import type { Job } from "../jobFile/job.ts";
import type { Mm } from "../units/quantity.ts";

export function forceWarnings({ part, brake }: Job, say: (mm: Mm) => string): string[] {
  const { rating } = brake;
  if (!rating) return [];
  const warnings: string[] = [];
  const moment = (part.metal.yieldMpa * part.thicknessMm ** 2) / 4;
  const rated = (rating.yieldMpa * rating.thicknessMm ** 2) / 4;
  const { lengthMm } = part;
  if (lengthMm !== undefined && lengthMm > rating.lengthMm) {
    warnings.push(`The part is ${say(lengthMm)} long, the brake takes ${say(rating.lengthMm)}.`);
  }
  if (moment > rated * (1 + 1e-9)) {
    warnings.push(
      `Each inch or millimetre of this bend takes ${percent(moment / rated)} of the rated force: ${say(part.thicknessMm)} ${part.metal.name} against ${say(rating.thicknessMm)} at ${Math.round(rating.yieldMpa)} MPa (plastic moment, yield × thickness² / 4).`,
    );
  } else if (lengthMm !== undefined && moment * lengthMm > rated * rating.lengthMm * (1 + 1e-9)) {
    warnings.push(
      `The whole bend takes ${percent((moment * lengthMm) / (rated * rating.lengthMm))} of the force that the brake is rated for (plastic moment × length).`,
    );
  }
  return warnings;
}

function percent(ratio: number): string {
  return `${Math.round(100 * ratio)} %`;
}
