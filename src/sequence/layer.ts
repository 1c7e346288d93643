/**
 * The sets of equally many bends that are reached, in the two orders in which they are looked at: of the longer side of a
 * bend, the sets that begin alike, nearest to the bend, come together, so that what is kept for them is at hand.
 */
import { nextOfAsMany, reversedSet } from "./bendSets.ts";

/** Sets in some order, and each run backwards. */
export interface InTurn {
  readonly sets: Int32Array;
  readonly backs: Int32Array;
}

export interface Layer {
  /** Lower sets first. */
  readonly forward: InTurn;
  /** Those first that are lower run backwards. */
  readonly backward: InTurn;
}

/** The sets of `made` of n bends that are reached. */
export function layerOf(made: number, n: number, reached: Uint8Array): Layer {
  const [sets, backs]: [number[], number[]] = [[], []];
  const [setsBack, backsBack]: [number[], number[]] = [[], []];
  const last = ((1 << made) - 1) << (n - made);
  for (let set = (1 << made) - 1; ; set = nextOfAsMany(set)) {
    const back = reversedSet(set, n);
    if (reached[set]) {
      sets.push(set);
      backs.push(back);
    }
    if (reached[back]) {
      setsBack.push(back);
      backsBack.push(set);
    }
    if (set === last) break;
  }
  return { forward: inTurn(sets, backs), backward: inTurn(setsBack, backsBack) };
}

function inTurn(sets: readonly number[], backs: readonly number[]): InTurn {
  return { sets: Int32Array.from(sets), backs: Int32Array.from(backs) };
}
