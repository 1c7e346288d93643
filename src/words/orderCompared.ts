/**
 * Two orders of one part against each other: the sequence of the bends, how often the part is turned, and what one does
 * otherwise than the best.
 */

import type { Answer } from "../jobFile/answer.ts";
import type { LengthUnit } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import { capital } from "./capital.ts";
import { lengthWords } from "./lengthWords.ts";
import { throatWords } from "./stepWords.ts";

/** @example sequenceWords([{ bend: 1 }, { bend: 0 }]) // "Bend 2, then bend 1" */
export function sequenceWords(order: readonly { readonly bend: number }[]): string {
  const bends = order.map(({ bend }) => bend + 1);
  if (bends.length <= 2)
    return bends.map((bend, i) => `${i === 0 ? "Bend" : "bend"} ${bend}`).join(", then ");
  return `Bends ${bends.join(", ")}`;
}

/** How often the part is turned between bends. @example turningWords(order) // "turned end for end once, never over" */
export function turningWords({ order }: Pick<Answer, "order">): string {
  const changes = (differs: (i: number) => boolean) => order.slice(1).filter((_, i) => differs(i)).length;
  const often = (count: number) =>
    count === 0 ? "never" : count === 1 ? "once" : count === 2 ? "twice" : `${count} times`;
  const ends = changes((i) => order[i]!.clamped !== order[i + 1]!.clamped);
  const faces = changes((i) => order[i]!.markedFaceUp !== order[i + 1]!.markedFaceUp);
  if (ends === 0 && faces === 0) return "never turned between bends";
  return `turned end for end ${often(ends)}, over ${often(faces)}`;
}

/** The least clearance of an order; null where nothing is near. */
export function leastRoom({ order }: Pick<Answer, "order">): Mm | null {
  const rooms = order.flatMap(({ clearance }) => (clearance === null ? [] : [clearance]));
  return rooms.length === 0 ? null : Math.min(...rooms);
}

/** @example roomWords(answer, "in") // "0.041 in to spare" */
export function roomWords(answer: Pick<Answer, "order">, units: LengthUnit): string {
  const roomMm = leastRoom(answer);
  return roomMm === null ? "nothing near" : `${lengthWords(roomMm, units)} to spare`;
}

/** What an order does otherwise than the best with the same bends, and its turning. */
export function handlingWords(
  answer: Pick<Answer, "order">,
  best: Pick<Answer, "order">,
  bendCount: number,
): string {
  const before = new Map(best.order.map((step) => [step.bend, step.clamped]));
  const other = answer.order.filter(({ bend, clamped }) => before.get(bend) !== clamped);
  const ends = other.map((step) => `${throatWords(step, bendCount)} in the throat for bend ${step.bend}`);
  const turning = turningWords(answer);
  return ends.length === 0 || ends.length > 3
    ? `${capital(turning)}.`
    : `${capital(ends.join(", "))}; ${turning}.`;
}
