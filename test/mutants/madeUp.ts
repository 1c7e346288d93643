/**
 * Made-up bends: which can be made when, and how clear, drawn by lot, with every order listed beside them. The ranking of orders
 * knows no more of a part than this.
 */
import type { Part } from "../../src/part/part.ts";
import { countOf, reversedSet } from "../../src/sequence/bendSets.ts";
import type { Reach } from "../../src/sequence/reach.ts";
import type { SeatTable } from "../../src/sequence/seatTable.ts";
import { formedOn } from "../../src/sequence/sidePath.ts";
import { compareRanks, type OrderRank } from "../jobFile/everyOrder.ts";

/** Numbers from 0 to below 1, the same for the same seed. */
function lots(seed: number): () => number {
  let at = seed * 7919 + 1;
  return () => {
    at = (at * 1103515245 + 12345) % 2 ** 31;
    return (at >>> 8) / 2 ** 23;
  };
}

export interface Listed {
  readonly rank: OrderRank;
  readonly order: readonly { readonly bend: number; readonly endHeld: number }[];
}

export class MadeUp {
  readonly part: Part;
  readonly seats: readonly SeatTable[];
  readonly reach: Reach;
  /** Times that a distance of the part from itself was asked for. */
  selfAsked = 0;
  private readonly brakeMm: readonly (readonly [moving: number[], clamped: number[]])[];
  private readonly selfMm: readonly (readonly number[])[];

  /**
   * `n` bends; each can be made in so many of the states, and next to nothing is measured in so many. `closing`: all turn up, and
   * the part comes the nearer to itself the more is made of it, nearest two bends before the last.
   */
  constructor(
    readonly n: number,
    seed: number,
    share: number,
    openShare: number,
    closing = false,
  ) {
    const lot = lots(seed);
    const mm = () => (lot() < openShare ? Number.POSITIVE_INFINITY : Math.ceil(lot() * 16) / 2);
    const turns = Array.from({ length: n }, () => (closing || lot() < 0.6 ? "up" : "down"));
    this.part = { bends: turns.map((turn) => ({ turn })) } as unknown as Part;
    const sides = Array.from({ length: 2 * n }, (_, seat) => {
      const [before, after] = [seat >> 1, n - 1 - (seat >> 1)];
      return seat & 1 ? [before, after] : [after, before];
    });
    const figures = (joints: number) =>
      Array.from({ length: 1 << joints }, () => (closing ? Number.POSITIVE_INFINITY : mm()));
    this.brakeMm = sides.map(([moving, clamped]) => [figures(moving!), figures(clamped!)] as const);
    const apart = (formed: number) =>
      closing ? Math.ceil(160 - 12 * countOf(formed) + 24 * lot()) / 8 : mm();
    this.selfMm = sides.map(() => Array.from({ length: 1 << (n - 1) }, (_, formed) => apart(formed)));
    this.seats = sides.map(([moving], seat) => this.seat(seat, moving!));
    this.reach = this.drawn(lot, share);
  }

  /** How clear a bend is made. */
  clearance(set: number, bend: number, endHeld: number): number {
    const seat = 2 * bend + endHeld;
    const lower = reversedSet(set & ((1 << bend) - 1), bend);
    const upper = set >>> (bend + 1);
    const [moving, clamped] = endHeld ? [lower, upper] : [upper, lower];
    const [movingMm, clampedMm] = this.brakeMm[seat]!;
    const joints = endHeld ? bend : this.n - 1 - bend;
    return Math.min(
      movingMm[moving]!,
      clampedMm[clamped]!,
      this.selfMm[seat]![moving + (clamped << joints)]!,
    );
  }

  /** Every order of `size` bends, with its rank. */
  orders(size: number, marginMm: number): Listed[] {
    const { withStart, withEnd } = this.reach;
    const { bends } = this.part;
    const listed: Listed[] = [];
    const goOn = (set: number, order: Listed["order"], changes: number, least: number): void => {
      if (order.length === size) {
        listed.push({
          order,
          rank: { verdict: least >= marginMm ? "clear" : "tight", changes, clearanceMm: least },
        });
        return;
      }
      for (let bend = 0; bend < this.n; bend++) {
        for (const endHeld of [0, 1]) {
          if ((((endHeld ? withEnd : withStart)[set]! >>> bend) & 1) === 0) continue;
          const before = order.at(-1);
          const more =
            before === undefined
              ? 0
              : Number(before.endHeld !== endHeld) + Number(bends[before.bend]!.turn !== bends[bend]!.turn);
          const mm = Math.min(least, this.clearance(set, bend, endHeld));
          goOn(set | (1 << bend), [...order, { bend, endHeld }], changes + more, mm);
        }
      }
    };
    goOn(0, [], 0, Number.POSITIVE_INFINITY);
    return listed;
  }

  private seat(seat: number, joints: number): SeatTable {
    const side = (figures: readonly number[]) => ({
      clearance: (path: number) => figures[formedOn(path)]!,
      mostClearance: () => Math.max(...figures),
    });
    const [moving, clamped] = this.brakeMm[seat]!;
    return {
      moving: side(moving),
      clamped: side(clamped),
      selfDistance: (movingPath: number, clampedPath: number, _: number, enoughMm: number) => {
        this.selfAsked++;
        const mm = this.selfMm[seat]![formedOn(movingPath) + (formedOn(clampedPath) << joints)]!;
        return mm < enoughMm ? mm : Number.POSITIVE_INFINITY;
      },
    } as unknown as SeatTable;
  }

  private drawn(lot: () => number, share: number): Reach {
    const sets = 1 << this.n;
    const [withStart, withEnd] = [new Int32Array(sets), new Int32Array(sets)];
    const reached = new Uint8Array(sets);
    reached[0] = 1;
    for (let set = 0; set < sets; set++) {
      if (!reached[set]) continue;
      for (let bend = 0; bend < this.n; bend++) {
        const bit = 1 << bend;
        if (set & bit) continue;
        if (lot() < share) withStart[set] = withStart[set]! | bit;
        if (lot() < share) withEnd[set] = withEnd[set]! | bit;
        if ((withStart[set]! | withEnd[set]!) & bit) reached[set | bit] = 1;
      }
    }
    return { withStart, withEnd, reached, statesChecked: 0, viableOrders: 0n };
  }
}

/** The best rank of some orders. */
export function bestOf(listed: readonly Listed[]): OrderRank {
  return listed.map(({ rank }) => rank).reduce((a, b) => (compareRanks(b, a) < 0 ? b : a));
}

/** The set of bends that an order makes. */
export function setOf({ order }: Listed): number {
  return order.reduce((set, { bend }) => set | (1 << bend), 0);
}
