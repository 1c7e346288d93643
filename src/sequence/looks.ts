/**
 * The look at a whole layer of sets, seat by seat: which of them let the seat's bend be made next.
 * Quick looks are made for the seats that are asked for alone: two threads share a search by its seats (partner.ts).
 */
import { formedToward } from "./bendSets.ts";
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
    for (let i = 0; i < sets.length; i++) {
      const set = sets[i]!;
      if ((set & bit) !== 0) continue;
      const lower = set & (bit - 1);
      const upper = set >>> (bend + 1);
      const towardStart = formedToward("start", bend, set, backs[i]!, n);
      const canMake = endHeld
        ? quick.canMake(lower, towardStart, upper, upper)
        : quick.canMake(upper, upper, lower, towardStart);
      if (canMake) ways[set] = ways[set]! | bit;
    }
  }
}
