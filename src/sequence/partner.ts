/**
 * A second thread that takes half of a search: some of the seats, of every layer of sets (reach.ts). It keeps tables of its own,
 * so the two share nothing but which sets are reached and what can be made next (board.ts).
 */
import type { Brake } from "../brake/brake.ts";
import { Machine } from "../contact/machine.ts";
import type { Part } from "../part/part.ts";
import { Board } from "./board.ts";
import { layerOf } from "./layer.ts";
import { Looks } from "./looks.ts";
import type { SeatTable } from "./seatTable.ts";
import { seatTables } from "./seatTables.ts";

/** What the second thread is handed: plain data and memory to share, so that it can be sent. */
export interface Share {
  readonly part: Part;
  readonly brake: Brake;
  readonly memory: SharedArrayBuffer;
}

/** Starts a second thread that calls `takeShare`. Where it can't, or is slow to, the search goes on by itself. */
export type Partner = (share: Share) => void;

/** A new beginning of a side takes about as long as so many looks at a set. */
const LOOKS_PER_BEGINNING = 4;

/** Does the second thread's share of a search; returns when the search is over. */
export function takeShare({ part, brake, memory }: Share): void {
  const board = new Board(memory);
  try {
    const seats = seatTables(part, brake, new Machine(brake, part.thicknessMm));
    const share = partnersSeats(seats);
    const looks = new Looks(seats);
    board.partnerIsThere(true);
    for (let made = board.layerAfter(-1); made !== undefined; made = board.layerAfter(made)) {
      const layer = layerOf(made, part.bends.length, board.reached);
      for (const seat of share) {
        looks.look(seat, layer, seat & 1 ? board.withEnd : board.withStart);
        board.beat();
      }
      board.done(made);
    }
  } finally {
    board.partnerIsThere(false);
  }
}

/** The seats that the partner takes, about half of the work; those that share a table go together. */
export function partnersSeats(seats: readonly SeatTable[]): ReadonlySet<number> {
  const looks = 2 ** (seats.length / 2 - 1);
  const groups = new Map<SeatTable, number[]>();
  seats.forEach((table, seat) => {
    groups.set(table, [...(groups.get(table) ?? []), seat]);
  });
  const work = [...groups].map(([table, sharing]) => {
    const beginnings = table.never ? 0 : 2 ** (table.moving.joints + 1) + 2 ** (table.clamped.joints + 1);
    return { sharing, cost: LOOKS_PER_BEGINNING * beginnings + looks * sharing.length };
  });
  const share = new Set<number>();
  let [own, partners] = [0, 0];
  for (const { sharing, cost } of work.sort((a, b) => b.cost - a.cost)) {
    if (own <= partners) {
      own += cost;
      continue;
    }
    partners += cost;
    for (const seat of sharing) share.add(seat);
  }
  return share;
}
