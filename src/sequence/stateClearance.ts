/**
 * The clearances of all states, a state being a set of bends done, the bend made next and the end clamped. The two sides'
 * clearances from the brake lie in the order in which sets are walked through, so that they are at hand again.
 */
import type { SeatTable } from "./seatTable.ts";
import { pathToEnd, pathToStart, sidesOf } from "./sidePath.ts";
import type { SideTable } from "./sideTable.ts";

export class StateClearance {
  /** By seat: what each side keeps from the brake; 0 not known, −1 for a clearance of 0. */
  private readonly moving: (Float32Array | undefined)[] = [];
  private readonly clamped: (Float32Array | undefined)[] = [];

  /** `seats[2·bend]` has the start clamped, the next the end. */
  constructor(
    private readonly seats: readonly SeatTable[],
    private readonly n: number,
  ) {}

  /** From the brake alone; Infinity where nothing is measured. */
  fromBrake(set: number, bend: number, endHeld: number): number {
    const seat = 2 * bend + endHeld;
    const lower = set & ((1 << bend) - 1);
    const upper = set >>> (bend + 1);
    const table = this.seats[seat]!;
    const towardEnd = endHeld === 0 ? this.moving : this.clamped;
    const towardStart = endHeld === 0 ? this.clamped : this.moving;
    const before = kept(towardStart, seat, bend);
    const after = kept(towardEnd, seat, this.n - 1 - bend);
    const near =
      before[lower] || measure(before, lower, endHeld ? table.moving : table.clamped, pathToStart(set, bend));
    const far =
      after[upper] ||
      measure(after, upper, endHeld ? table.clamped : table.moving, pathToEnd(set, bend, this.n));
    return Math.max(0, Math.min(near, far));
  }

  /** From the part's own other side; exact where it is less than `enoughMm`, at most `upToMm` (seatTable.ts), else that or more. */
  fromSelf(set: number, bend: number, endHeld: number, upToMm: number, enoughMm: number = upToMm): number {
    const [moving, clamped] = sidesOf(set, bend, this.n, endHeld);
    return this.seats[2 * bend + endHeld]!.selfDistance(moving, clamped, upToMm, enoughMm);
  }

  /** A bound on the clearance of a bend with one end clamped, whatever the bends done. */
  mostFromBrake(bend: number, endHeld: number): number {
    const { moving, clamped } = this.seats[2 * bend + endHeld]!;
    return Math.min(moving.mostClearance(), clamped.mostClearance());
  }
}

function kept(tables: (Float32Array | undefined)[], seat: number, joints: number): Float32Array {
  const known = tables[seat];
  if (known) return known;
  const made = new Float32Array(1 << joints);
  tables[seat] = made;
  return made;
}

function measure(table: Float32Array, at: number, side: SideTable, path: number): number {
  const mm = side.clearance(path);
  table[at] = mm === 0 ? -1 : mm;
  return table[at]!;
}
