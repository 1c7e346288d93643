/**
 * Which sets of bends can be reached, through which bends and ends, and in how many orders: one pass over all sets.
 * What a set can do next does not depend on the order in which it was made, so each set is looked at once.
 */
import type { Part } from "../part/part.ts";
import { Board } from "./board.ts";
import { type Layer, layerOf } from "./layer.ts";
import { Looks } from "./looks.ts";
import { OrderCount } from "./orderCount.ts";
import { partnersSeats } from "./partner.ts";
import type { SeatTable } from "./seatTable.ts";

/** Told now and then how far a long search is; may end it. */
export interface Watch {
  /** 0 to 1. */
  progress(fraction: number): void;
  stopped(): boolean;
}

/** Thrown when the watcher ends a search. */
export class SearchStopped extends Error {
  constructor() {
    super("the search was stopped");
    this.name = "SearchStopped";
  }
}

export interface Reach {
  /** Per set: bends that can be made next with the start (the end) clamped, as masks. */
  readonly withStart: Int32Array;
  readonly withEnd: Int32Array;
  readonly reached: Uint8Array;
  readonly statesChecked: number;
  readonly viableOrders: bigint;
}

/**
 * Looks at every set that can be reached from the flat blank. `seats[2·bend]` has the start clamped, the next the end.
 * `startPartner` starts a second thread that takes its share (partner.ts) of the memory it is handed.
 */
export function reachFrom(
  part: Part,
  seats: readonly SeatTable[],
  watch?: Watch,
  startPartner?: (memory: SharedArrayBuffer) => void,
): Reach {
  const n = part.bends.length;
  const sets = 1 << n;
  const board = startPartner && new Board(Board.memoryFor(n));
  if (board) startPartner(board.memory);
  const reached = board?.reached ?? new Uint8Array(sets);
  const ways: Ways = { withStart: new Int32Array(sets), withEnd: new Int32Array(sets) };
  const orders = new OrderCount(sets);
  const pass = new Pass(seats, ways, board, watch);
  reached[0] = 1;
  let statesChecked = 0;
  try {
    // All sets of equally many bends together, and of these one bend after the other: what is kept for a bend is then at hand.
    for (let made = 0; made < n; made++) {
      const layer = layerOf(made, n, reached);
      pass.through(made, layer);
      statesChecked += 2 * (n - made) * layer.forward.sets.length;
      goOn(layer, ways, reached, orders);
    }
  } finally {
    board?.end();
  }
  return { ...ways, reached, statesChecked, viableOrders: orders.of(sets - 1) };
}

type Ways = Pick<Reach, "withStart" | "withEnd">;

/** Marks what is reached from a layer, and counts the orders. */
function goOn(
  { forward }: Layer,
  { withStart, withEnd }: Ways,
  reached: Uint8Array,
  orders: OrderCount,
): void {
  for (const set of forward.sets) {
    for (let ways = withStart[set]! | withEnd[set]!; ways !== 0; ways &= ways - 1) {
      const bit = ways & -ways;
      reached[set | bit] = 1;
      orders.add(set | bit, set, (withStart[set]! & bit ? 1 : 0) + (withEnd[set]! & bit ? 1 : 0));
    }
  }
}

/** Looks at one layer after the other, with a partner as soon and as long as there is one. */
class Pass {
  private readonly looks: Looks;
  private readonly partners: ReadonlySet<number>;
  private setsDone = 0;

  constructor(
    private readonly seats: readonly SeatTable[],
    private readonly ways: Ways,
    /** While there is a partner to count on. */
    private board: Board | undefined,
    private readonly watch: Watch | undefined,
  ) {
    this.looks = new Looks(seats);
    this.partners = board ? partnersSeats(seats) : new Set();
  }

  through(made: number, layer: Layer): void {
    const { board, partners } = this;
    const partnered = board?.hasPartner === true;
    if (partnered) board.give(made);
    this.lookAt(layer, (seat) => !(partnered && partners.has(seat)));
    if (partnered) {
      if (board.partnerHasDone(made)) this.takeIn(layer, board);
      else {
        // It went, or stands still: from here on alone.
        this.board = undefined;
        this.lookAt(layer, (seat) => partners.has(seat));
      }
    }
    this.setsDone += layer.forward.sets.length;
  }

  private lookAt(layer: Layer, isAsked: (seat: number) => boolean): void {
    const { looks, seats, ways, watch } = this;
    const bends = seats.length / 2;
    for (let bend = 0; bend < bends; bend++) {
      watch?.progress((this.setsDone + (layer.forward.sets.length * bend) / bends) / ways.withStart.length);
      if (watch?.stopped()) throw new SearchStopped();
      if (isAsked(2 * bend)) looks.look(2 * bend, layer, ways.withStart);
      if (isAsked(2 * bend + 1)) looks.look(2 * bend + 1, layer, ways.withEnd);
    }
  }

  /** Takes in what the partner found. */
  private takeIn({ forward }: Layer, found: Ways): void {
    const { withStart, withEnd } = this.ways;
    for (const set of forward.sets) {
      withStart[set] = withStart[set]! | found.withStart[set]!;
      withEnd[set] = withEnd[set]! | found.withEnd[set]!;
    }
  }
}
