/**
 * Where no order makes the whole part: the order that gets furthest, ending with the bend that blocks it.
 * Most bends made; then the best rank of these; then the blocking bend that swings furthest before it meets something.
 * Ties go to the lower bend number, start before end.
 */
import type { Machine } from "../contact/machine.ts";
import { judgeStep, type Step } from "../contact/step.ts";
import type { Part } from "../part/part.ts";
import { AskedMoves } from "./askedMoves.ts";
import { countOf } from "./bendSets.ts";
import { MOST_SETS, MostReached } from "./mostReached.ts";
import type { Move } from "./moves.ts";
import { bestWays, bestWaysSoon } from "./rank.ts";
import type { Way } from "./ranking.ts";
import { type Reach, SearchStopped, type Watch } from "./reach.ts";
import type { SeatTable } from "./seatTable.ts";

/** A furthest order is found soon within such a share of all looks, or within so many. */
const SOON_SHARE = 32;
const ALWAYS_SOON = 4096;

const SAME_SWING_RAD = 1e-9;

/** The order that gets furthest, from all that can be reached. */
export function furthestOrder(
  part: Part,
  machine: Machine,
  seats: readonly SeatTable[],
  reach: Reach,
  marginMm: number,
): Move[] {
  return farthestBlocked(
    part,
    machine,
    bestWays(part, seats, reach, furthestSets(reach), marginMm),
    marginMm,
  );
}

/**
 * The same, and how many bends were looked at for it, without looking at all that can be reached: where it is soon seen which
 * sets of most bends are reached, not all bends, and by which ways that no other can beat. Undefined where it is not so.
 * Throws SearchStopped when the watcher says so.
 */
export function furthestSoon(
  part: Part,
  machine: Machine,
  seats: readonly SeatTable[],
  marginMm: number,
  watch?: Watch,
): { readonly order: Move[]; readonly statesChecked: number } | undefined {
  const n = part.bends.length;
  const asked = new AskedMoves(seats);
  const soon = Math.max(ALWAYS_SOON, (n * 2 ** n) / SOON_SHARE);
  const goOn = () => {
    if (watch?.stopped()) throw new SearchStopped();
    return asked.count < soon;
  };
  const goals = new MostReached(n, asked, goOn).sets();
  if (!goals || goals[0] === 0) return undefined;
  const ways = bestWaysSoon(part, seats, asked, goals, marginMm);
  return ways && { order: farthestBlocked(part, machine, ways, marginMm), statesChecked: asked.count };
}

/** Of the ways, and the bends that they leave, the one that swings farthest. */
function farthestBlocked(part: Part, machine: Machine, ways: readonly Way[], marginMm: number): Move[] {
  let best: { readonly way: Way; readonly move: Move; readonly swung: number } | undefined;
  for (const way of ways) {
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
  if (step.refused) return 0;
  return step.contact ? step.contact.leafAngleRad : step.seat.sweepRad;
}
