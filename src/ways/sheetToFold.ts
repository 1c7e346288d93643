/**
 * What a part asks of a brake's strength, read off the order in which it is folded there: shortest flange on the leaf,
 * shortest flat under the bar, how far the clamped side reaches back, leaf angle and nose setback of each bend.
 * Flanges and clamped flats count from bend tangent line to bend tangent line only, the shorter lever and so the larger
 * force: the bend itself bears on neither leaf nor bed. Exact for that order.
 */

import type { OrderedBend, Trial } from "../jobFile/change.ts";
import { hemFolded } from "../motion/hemStrokes.ts";
import { sceneAt } from "../motion/scene.ts";
import { seatFor } from "../motion/seat.ts";
import type { BendToFold, SheetToFold } from "../narrowBrake/requirements.ts";
import { MOST_FOLD_DEG } from "../part/hem.ts";
import { boxOf } from "../plane/bounding.ts";
import type { Mm } from "../units/quantity.ts";

/** @example sheetToFold(trial, outcome.order, 304.8).shortestFlangeMm // 6.35 */
export function sheetToFold(trial: Trial, order: readonly OrderedBend[], lengthMm: Mm): SheetToFold {
  const { brake } = trial;
  // Of a hem its first stroke is what the brake must be strong enough for.
  const part = trial.part.bends.reduce(
    (so, { hem }, bend) => (hem ? (hemFolded(so, brake, bend, MOST_FOLD_DEG) ?? so) : so),
    trial.part,
  );
  const flanges: Mm[] = [];
  const clampedFlats: Mm[] = [];
  const reaches: Mm[] = [];
  const bends: BendToFold[] = [];
  let done = 0;
  for (const { bend: number, clamped } of order) {
    const bend = number - 1;
    const seat = seatFor(part, brake, bend, clamped);
    const [held, turned] = clamped === "start" ? [bend, bend + 1] : [bend + 1, bend];
    flanges.push(part.flatsMm[turned]!);
    clampedFlats.push(part.flatsMm[held]!);
    const { sheet } = sceneAt(part, brake, { bendsDone: done, bend, clamped }, 0);
    reaches.push(-seat.noseSetbackMm - boxOf(sheet).minX);
    bends.push({ overbendDeg: part.bends[bend]!.overbendDeg, noseSetbackMm: seat.noseSetbackMm });
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
    bends,
  };
}

/** What the same part asks for in either of two orders. */
export function harderOf(a: SheetToFold, b: SheetToFold): SheetToFold {
  return {
    ...a,
    shortestFlangeMm: Math.min(a.shortestFlangeMm, b.shortestFlangeMm),
    shortestClampedMm: Math.min(a.shortestClampedMm, b.shortestClampedMm),
    deepestClampedMm: Math.max(a.deepestClampedMm, b.deepestClampedMm),
  };
}
