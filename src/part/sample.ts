/**
 * Copying a part from a sample: what callipers read of each flat, inside or outside, and how sure each reading is.
 * Turns readings into outside lengths, and checks them against an overall size. Sums of doubts are worst cases.
 */
import { type Mm, toRad } from "../units/quantity.ts";
import { outsideBendSetback } from "./bendSetback.ts";
import { type Direction, overallSize } from "./overallSize.ts";
import type { Part } from "./part.ts";

export interface Reading {
  readonly lengthMm: Mm;
  /** The true length is at most so far off, either way. */
  readonly doubtMm: Mm;
}

export interface FlatReading extends Reading {
  /** To the mold lines outside, or between the inner faces; a free end is the same for both. */
  readonly side: "outside" | "inside";
}

export interface OverallReading extends Reading {
  readonly direction: Direction;
}

export interface SumCheck {
  readonly agrees: boolean;
  /** Overall size that the flats add up to, and what it was read as, less that. */
  readonly expectedMm: Mm;
  readonly offMm: Mm;
  /** What all doubts together can explain. */
  readonly explainedMm: Mm;
}

/** What of a bend a measured sample tells. */
export type SampleBend = Pick<Part["bends"][number], "angleDeg" | "turn" | "insideRadiusMm">;

/** How sure a reading is that says nothing of it: 1/64 in or 0.25 mm. */
export function usualDoubtMm(units: "mm" | "in"): Mm {
  return units === "in" ? 25.4 / 64 : 0.25;
}

/**
 * Length of flat `index` (from 0) to the outside mold lines: an inside reading grows by T·tan(θ/2) at each bend.
 * @example outsideLengthMm({ lengthMm: 18.4, doubtMm: 0.25, side: "inside" }, 1, [{ angleDeg: 90 }, { angleDeg: 90 }], 0.8) // 20
 */
export function outsideLengthMm(
  reading: FlatReading,
  index: number,
  bends: readonly Pick<SampleBend, "angleDeg">[],
  thicknessMm: Mm,
): Mm {
  if (reading.side === "outside") return reading.lengthMm;
  const ends = [bends[index - 1], bends[index]];
  return ends.reduce(
    (length, bend) => length + (bend === undefined ? 0 : thicknessMm * Math.tan(toRad(bend.angleDeg) / 2)),
    reading.lengthMm,
  );
}

/**
 * Whether readings of the flats and of an overall size can all be true within their doubts.
 * @throws RangeError when there is not one reading more than bends, or a flat is too short for its bends
 */
export function checkSum(
  readings: readonly FlatReading[],
  bends: readonly SampleBend[],
  thicknessMm: Mm,
  overall: OverallReading,
): SumCheck {
  if (readings.length !== bends.length + 1) throw new RangeError("one flat more than bends must be read");
  const flatsMm = readings.map((reading, i) => {
    const taken = [bends[i - 1], bends[i]].reduce((sum, bend) => sum + outsideSetback(bend, thicknessMm), 0);
    const flat = outsideLengthMm(reading, i, bends, thicknessMm) - taken;
    if (!(flat > 0)) throw new RangeError(`flat ${i + 1} is too short for its bends`);
    return flat;
  });
  const doubtsMm = readings.map((reading) => reading.doubtMm);
  const size = overallSize({ flatsMm, bends, thicknessMm }, overall.direction, doubtsMm);
  const offMm = overall.lengthMm - size.nominalMm;
  const reach = offMm >= 0 ? size.mostMm - size.nominalMm : size.nominalMm - size.leastMm;
  const explainedMm = reach + overall.doubtMm;
  return { agrees: Math.abs(offMm) <= explainedMm + 1e-9, expectedMm: size.nominalMm, offMm, explainedMm };
}

/** A mix of the doubts: for each flat, whether it is taken longer, shorter or as read. */
export type DoubtMix = readonly (-1 | 0 | 1)[];

/**
 * Mixes to look at first when a verdict is to be doubted: as read, all longer, all shorter, then each reading alone
 * both ways. Readings without a doubt stay as read.
 * @example doubtMixes([0.25, 0]) // [[0, 0], [1, 0], [-1, 0]]
 */
export function doubtMixes(doubtsMm: readonly Mm[]): readonly DoubtMix[] {
  const doubtful = doubtsMm.flatMap((doubt, i) => (doubt > 0 ? [i] : []));
  const all = (way: -1 | 1): DoubtMix => doubtsMm.map((doubt) => (doubt > 0 ? way : 0));
  const alone = (at: number, way: -1 | 1): DoubtMix => doubtsMm.map((_, i) => (i === at ? way : 0));
  const asRead: DoubtMix = doubtsMm.map(() => 0);
  if (doubtful.length === 0) return [asRead];
  const single = doubtful.flatMap((at) => [alone(at, 1), alone(at, -1)]);
  return doubtful.length === 1 ? [asRead, ...single] : [asRead, all(1), all(-1), ...single];
}

function outsideSetback(bend: SampleBend | undefined, thicknessMm: Mm): Mm {
  return bend === undefined ? 0 : outsideBendSetback({ ...bend, thicknessMm });
}
