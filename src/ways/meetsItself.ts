/**
 * Whether the finished part lies in itself or touches itself: then nobody can make it, and no bend can be closed by hand.
 * The finished section as one outline, its edges tried against each other in closed form (plane/selfCrossing.ts).
 * Bound: faces nearer than 1e-7 mm count as touching.
 */

import type { Trial } from "../jobFile/change.ts";
import { relaxedSheet } from "../motion/scene.ts";
import { seatFor } from "../motion/seat.ts";
import { selfCrossing } from "../plane/selfCrossing.ts";

/** @example meetsItself({ part: channel, brake }) // false */
export function meetsItself({ part, brake }: Trial): boolean {
  // A closed hem touches by design.
  if (part.bends.length < 2 || part.bends.some(({ hem }) => hem)) return false;
  const seat = seatFor(part, brake, 0, "start");
  const others = (1 << part.bends.length) - 2;
  return selfCrossing(relaxedSheet(seat, others).edges) !== undefined;
}

/**
 * The two flats, from 0, of the shortest piece of the part that lies in itself; undefined where none does.
 * @example flatsThatMeet({ part: duct, brake }) // [0, 4]
 */
export function flatsThatMeet(trial: Trial): readonly [number, number] | undefined {
  if (!meetsItself(trial)) return undefined;
  const { part, brake } = trial;
  for (let bends = 2; bends <= part.bends.length; bends++) {
    for (let first = 0; first + bends <= part.bends.length; first++) {
      const piece = {
        ...part,
        flatsMm: part.flatsMm.slice(first, first + bends + 1),
        bends: part.bends.slice(first, first + bends),
      };
      if (meetsItself({ part: piece, brake })) return [first, first + bends];
    }
  }
  return undefined;
}
