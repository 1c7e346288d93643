/**
 * Where no order makes the whole part: the order that gets furthest, ending with the bend that blocks it.
 * Most bends made; then the best rank of these; then the blocking bend that swings furthest before it meets something.
 * Ties go to the lower bend number, start before end.
 */
import type { Machine } from "../contact/machine.ts";
import { judgeStep, type Step } from "../contact/step.ts";
import type { Part } from "../part/part.ts";
import { countOf } from "./bendSets.ts";
import type { Move } from "./moves.ts";
import { bestWays, type Way } from "./rank.ts";
import type { Reach } from "./reach.ts";
import type { SeatTable } from "./seatTable.ts";

/** Sets with as many bends that are looked into; beyond them the first found stand for the rest. */
const MOST_SETS = 256;

const SAME_SWING_RAD = 1e-9;

export function furthestOrder(
  part: Part,
  machine: Machine,
  seats: readonly SeatTable[],
  reach: Reach,
  marginMm: number,
): Move[] {
  let best: { readonly way: Way; readonly move: Move; readonly swung: number } | undefined;
  for (const way of bestWays(part, seats, reach, furthestSets(reach), marginMm)) {
    for (let bend = 0; bend < part.bends.length; bend++) {
      if ((way.set >>> bend) & 1) continue;
      for (const clamped of ["start", "end"] as const) {
        const swung = swingOf(judgeStep(part, machine.brake, way.set, bend, clamped, marginMm, machine));
        if (!best || swung > best.swung + SAME_SWING_RAD) best = { way, move: { bend, clamped }, swung };
      }
    }
  }
  return [...best!.way.moves(), best!.move];
}

function furthestSets(reach: Reach): number[] {
  let most = 0;
  let sets: number[] = [];
  reach.reached.forEach((reached, set) => {
    if (!reached) return;
    const count = countOf(set);
    if (count < most) return;
    if (count > most) sets = [];
    most = count;
    if (sets.length < MOST_SETS) sets.push(set);
  });
  return sets;
}

function swingOf(step: Step): number {
  return step.contact ? step.contact.leafAngleRad : step.seat.sweepRad;
}
