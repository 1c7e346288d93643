/**
 * Where no order makes all bends: the order that gets furthest, ending with the stroke that is blocked. Most bends made; of these
 * the best rank; of these the blocked stroke in which the leaf swings furthest. Ties go to the lower set, then the lower stroke.
 */
import { type BendSet, countOf, type Held, type Judge } from "./judge.ts";
import type { Way } from "./rank.ts";

const SAME_SWING_RAD = 1e-9;

/** Of some sets those of most bends. */
export function mostBends(sets: Iterable<BendSet>): Set<BendSet> {
  let [most, found] = [0, new Set<BendSet>()];
  for (const set of sets) {
    const bends = countOf(set);
    if (bends > most) [most, found] = [bends, new Set()];
    if (bends === most) found.add(set);
  }
  return found;
}

/** Of the ways, and the strokes that they leave, the one in which the leaf swings furthest. */
export function furthestBlocked<S extends Held>(judge: Judge<S>, ways: readonly Way<S>[]): S[] {
  let [best, most]: [S[], number] = [[], Number.NEGATIVE_INFINITY];
  for (const { goal, strokes } of ways) {
    judge.strokes.forEach((makes, stroke) => {
      if ((goal & makes) !== 0) return;
      const swung = judge.swingRad(goal, stroke);
      if (swung <= most + SAME_SWING_RAD) return;
      most = swung;
      best = [...strokes, judge.blocked(stroke)];
    });
  }
  return best;
}
