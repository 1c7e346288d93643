/**
 * Whole strokes of one part on one brake, each asked of the search's own tables: the same yes or no as sequence/search.ts.
 * Tables are made when a bend is first asked for.
 */
import type { Machine } from "../contact/machine.ts";
import { seatFor } from "../motion/seat.ts";
import type { End, Part } from "../part/part.ts";
import { SeatTable } from "../sequence/seatTable.ts";
import { sidesOf } from "../sequence/sidePath.ts";
import type { Mm } from "../units/quantity.ts";

/** The end clamped, by number. */
export const ENDS: readonly End[] = ["start", "end"];

export class WholeStrokes {
  private readonly seats: (SeatTable | undefined)[] = [];

  /** A stroke passes with every clearance at least `leastMm`; 0 asks for no contact only. */
  constructor(
    private readonly part: Part,
    private readonly machine: Machine,
    private readonly leastMm: Mm,
  ) {}

  /** Whether `bend` (from 0) can be made after a set of others, bend 1 in bit 0. */
  passes(set: number, bend: number, end: 0 | 1): boolean {
    const seat = this.seatOf(bend, end);
    const [moving, clamped] = sidesOf(set, bend, this.part.bends.length, end);
    if (!seat.canMake(moving, clamped)) return false;
    return this.leastMm <= 0 || seat.clearance(moving, clamped, this.leastMm) >= this.leastMm;
  }

  private seatOf(bend: number, end: 0 | 1): SeatTable {
    const at = 2 * bend + end;
    this.seats[at] ??= new SeatTable(seatFor(this.part, this.machine.brake, bend, ENDS[end]!), this.machine);
    return this.seats[at];
  }
}
