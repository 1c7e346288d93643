/**
 * What a part asks of a brake's strength, read off the order in which it is folded there: shortest flange on the leaf,
 * shortest flat under the bar, how far the clamped side reaches back, nose setbacks, largest leaf angle.
 * Flanges are measured from the free end or next bend to the mold line. Exact for that order.
 */
import { sceneAt } from "../motion/scene.ts";
import { seatFor } from "../motion/seat.ts";
import { boxOf } from "../plane/bounding.ts";
import type { Mm } from "../units/quantity.ts";
import type { OrderedBend, Trial } from "./change.ts";
import type { SheetToFold } from "./shopMade/requirements.ts";

/** @example sheetToFold(trial, outcome.order, 304.8).shortestFlangeMm // 9.525 */
export function sheetToFold(trial: Trial, order: readonly OrderedBend[], lengthMm: Mm): SheetToFold {
  const { part, brake } = trial;
  const flanges: Mm[] = [];
  const clampedFlats: Mm[] = [];
  const reaches: Mm[] = [];
  const noseSetbacksMm: Mm[] = [];
  let done = 0;
  for (const { bend: number, clamped } of order) {
    const bend = number - 1;
    const seat = seatFor(part, brake, bend, clamped);
    const { bendSetbackMm } = part.bends[bend]!;
    const [held, turned] = clamped === "start" ? [bend, bend + 1] : [bend + 1, bend];
    flanges.push(part.flatsMm[turned]! + bendSetbackMm);
    clampedFlats.push(part.flatsMm[held]! + bendSetbackMm);
    const { sheet } = sceneAt(part, brake, done, bend, clamped, 0);
    reaches.push(-seat.noseSetbackMm - boxOf(sheet).minX);
    noseSetbacksMm.push(seat.noseSetbackMm);
    done |= 1 << bend;
  }
  return {
    name: part.name,
    metal: part.metal,
    thicknessMm: part.thicknessMm,
    lengthMm,
    shortestFlangeMm: Math.min(...flanges),
    shortestClampedMm: Math.min(...clampedFlats),
    deepestClampedMm: Math.max(...reaches),
    overbendDeg: Math.max(...part.bends.map((bend) => bend.overbendDeg)),
    noseSetbacksMm,
  };
}
