/**
 * Where no order makes the whole part: the order that gets furthest, ending with the bend that blocks it.
 * Most bends made; then the blocking bend that swings furthest before it meets something; then the better rank of the
 * bends made before it. Ties go to the lower bend number, start before end.
 */

import type { Machine } from "../contact/machine.ts";
import { judgeStep, type Step } from "../contact/step.ts";
import type { Part } from "../part/part.ts";
import { countOf } from "./bendSets.ts";
import { bestOrder, type Move } from "./rank.ts";
import type { Reach } from "./reach.ts";
import type { SeatTable } from "./seatTable.ts";

/** Sets with as many bends that are looked into; beyond them the first found stand for the rest. */
const MOST_SETS = 256;

export function furthestOrder(
  part: Part,
  machine: Machine,
  seats: readonly SeatTable[],
  reach: Reach,
  marginMm: number,
): Move[] {
  const sets = furthestSets(reach);
  let best: { readonly set: number; readonly move: Move; readonly swung: number } | undefined;
  for (const set of sets) {
    for (let bend = 0; bend < part.bends.length; bend++) {
      if ((set >>> bend) & 1) continue;
      for (const clamped of ["start", "end"] as const) {
        const swung = swingOf(judgeStep(part, machine.brake, set, bend, clamped, marginMm, machine));
        if (!best || swung > best.swung + 1e-9) best = { set, move: { bend, clamped }, swung };
      }
    }
  }
  const { set, move } = best!;
  return [...bestOrder(part, seats, reach, set, marginMm)!, move];
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
