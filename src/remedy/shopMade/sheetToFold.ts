/**
 * What a part in a given order asks of the brake's strength: its shortest flange on the leaf, shortest clamped flat, reach, setbacks.
 * Flats beside the bend: the one on the leaf and the one under the bar.
 * Bound: where the reach of the clamped side isn't given, its developed width is taken, which is never too little.
 */
import type { End, Part } from "../../part/part.ts";
import type { Mm } from "../../units/quantity.ts";
import type { SheetToFold } from "./requirements.ts";

export interface StrengthStep {
  /** Bend, counted from 0. */
  readonly bend: number;
  readonly clamped: End;
  readonly noseSetbackMm: Mm;
  /** How far the clamped side reaches back from the nose, where the engine knows it. */
  readonly reachMm?: Mm;
}

/**
 * The strength side of one part.
 * @param lengthMm along the bends, for a part that doesn't say
 * @throws RangeError where there is no step, or no length anywhere
 */
export function sheetToFold(part: Part, steps: readonly StrengthStep[], lengthMm?: Mm): SheetToFold {
  const along = part.lengthMm ?? lengthMm;
  if (along === undefined) throw new RangeError(`length of ${part.name} is needed for strength`);
  if (steps.length === 0) throw new RangeError(`${part.name} has no bends to make`);
  const beside = steps.map(({ bend, clamped }) => {
    const [start, end] = [part.flatsMm[bend]!, part.flatsMm[bend + 1]!];
    return clamped === "start" ? { clamped: start, moving: end } : { clamped: end, moving: start };
  });
  return {
    name: part.name,
    metal: part.metal,
    thicknessMm: part.thicknessMm,
    lengthMm: along,
    shortestFlangeMm: Math.min(...beside.map(({ moving }) => moving)),
    shortestClampedMm: Math.min(...beside.map(({ clamped }) => clamped)),
    deepestClampedMm: Math.max(...steps.map((step) => step.reachMm ?? developedSide(part, step))),
    overbendDeg: Math.max(...steps.map(({ bend }) => part.bends[bend]!.overbendDeg)),
    noseSetbacksMm: steps.map(({ noseSetbackMm }) => noseSetbackMm),
  };
}

/** Flats and bend allowances of the clamped side, laid flat. */
function developedSide(part: Part, { bend, clamped }: StrengthStep): Mm {
  const from = clamped === "start" ? 0 : bend + 1;
  const to = clamped === "start" ? bend : part.bends.length;
  const flats = part.flatsMm.slice(from, to + 1).reduce((sum, flat) => sum + flat, 0);
  return part.bends.slice(from, to).reduce((sum, { allowanceMm }) => sum + allowanceMm, flats);
}
