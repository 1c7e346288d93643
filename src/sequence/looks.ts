/**
 * The look at a whole layer of sets, seat by seat: which of them let the seat's bend be made next.
 * Quick looks are made for the seats that are asked for alone: two threads share a search by its seats (partner.ts).
 */
import type { Layer } from "./layer.ts";
import { QuickLook } from "./quickLook.ts";
import type { SeatTable } from "./seatTable.ts";

export class Looks {
  private readonly quick: (QuickLook | undefined)[] = [];
  private readonly n: number;

  /** `seats[2·bend]` has the start clamped, the next the end. */
  constructor(private readonly seats: readonly SeatTable[]) {
    this.n = seats.length / 2;
  }

  /** Adds the seat's bend to what `ways` holds of each set that lets it be made. */
  look(seat: number, layer: Layer, ways: Int32Array): void {
    const { n } = this;
    this.quick[seat] ??= new QuickLook(this.seats[seat]!);
    const quick = this.quick[seat];
    const bend = seat >> 1;
    const endHeld = (seat & 1) === 1;
    const bit = 1 << bend;
    const { sets, backs } = 2 * bend < n ? layer.backward : layer.forward;
    // The two sides' paths (sidePath.ts): the set and its reverse end with them.
    const toStart = bit;
    const toEnd = 1 << (n - 1 - bend);
    for (let i = 0; i < sets.length; i++) {
      const set = sets[i]!;
      if ((set & bit) !== 0) continue;
      const lower = toStart | (set & (toStart - 1));
      const upper = toEnd | (backs[i]! & (toEnd - 1));
      const canMake = endHeld ? quick.canMake(lower, upper) : quick.canMake(upper, lower);
      if (canMake) ways[set] = ways[set]! | bit;
    }
  }
}
