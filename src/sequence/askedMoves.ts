/**
 * Moves asked one by one of the seats' tables, for searches that need few of them.
 */
import type { Allowed } from "./moves.ts";
import type { SeatTable } from "./seatTable.ts";
import { sidesOf } from "./sidePath.ts";

export class AskedMoves implements Allowed {
  private readonly known = new Map<number, boolean>();
  private readonly n: number;

  /** `seats[2·bend]` has the start clamped, the next the end. */
  constructor(private readonly seats: readonly SeatTable[]) {
    this.n = seats.length / 2;
  }

  /** How many have been asked. */
  get count(): number {
    return this.known.size;
  }

  has(set: number, bend: number, endHeld: number): boolean {
    const seat = 2 * bend + endHeld;
    const at = set * this.seats.length + seat;
    const known = this.known.get(at);
    if (known !== undefined) return known;
    const [moving, clamped] = sidesOf(set, bend, this.n, endHeld);
    const can = this.seats[seat]!.canMake(moving, clamped);
    this.known.set(at, can);
    return can;
  }
}
