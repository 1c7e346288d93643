/**
 * The part against itself while one bend is made: how far its two sides stay apart, and whether they meet, kept for every pair of
 * beginnings. A pair comes from two that are one element shorter and one pair of elements; where sectors or distances from the
 * pivot already tell the two apart, no element is laid out.
 */
import { type ClearanceChecks, noClearance } from "../contact/clearance.ts";
import { noContact, type SideChecks } from "../contact/sideChecks.ts";
import type { Beginning } from "./side.ts";

export class Itself {
  private readonly meeting = new Map<number, boolean>();
  private readonly sweepRad: number;
  private readonly slideMm: number;

  constructor(
    private readonly checks: SideChecks,
    private readonly measure: ClearanceChecks,
  ) {
    this.sweepRad = checks.seat.sweepRad;
    this.slideMm = checks.pieces.turning.maxSlide;
  }

  /** Whether the sectors that two sides sweep, seen from the pivot, stay apart. */
  areParted(moving: Beginning, clamped: Beginning): boolean {
    return this.partedRad(moving, clamped) > 0;
  }

  /** Whether anything of a moving beginning meets anything of a clamped one, neither of them meeting the brake. */
  meets(m: Beginning, c: Beginning): boolean {
    if (this.areParted(m, c)) return false;
    const pair = pairOf(m, c);
    const known = this.meeting.get(pair);
    if (known !== undefined) return known;
    const meet =
      (m.before !== undefined && this.meets(m.before, c)) ||
      (c.before !== undefined && this.meets(m, c.before)) ||
      this.lastOnesMeet(m, c);
    this.meeting.set(pair, meet);
    return meet;
  }

  /** The distance that two sides which don't meet keep, exact where it is less than `enoughMm`; else that or more. */
  distanceMm(moving: Beginning, clamped: Beginning, enoughMm: number): number {
    const gap = { ...noClearance(), mm: enoughMm };
    this.measure.betweenSides(moving.formed, clamped.formed, gap);
    return gap.mm;
  }

  /**
   * A distance that two beginnings surely keep: they lie in sectors parted by an angle, and of any two points but those of the
   * two runs one lies beyond a known distance from the pivot.
   */
  leastMm(m: Beginning, c: Beginning): number {
    const parted = this.partedRad(m, c);
    if (parted <= 0) return 0;
    return (Math.min(m.nearMm, c.nearMm) - this.slideMm) * Math.sin(Math.min(parted, Math.PI / 2));
  }

  private lastOnesMeet(m: Beginning, c: Beginning): boolean {
    if (this.lastOnesArePlainlyApart(m, c)) return false;
    const record = noContact();
    this.checks.withSelf(m.k, m.formed, c.k, c.formed, record);
    return record.phiRad < Number.POSITIVE_INFINITY;
  }

  /**
   * By how much the sectors that two beginnings sweep stay apart; the two runs, which meet nothing of each other, count as far as
   * they rise above bed and leaf out where the other side is.
   */
  private partedRad(m: Beginning, c: Beginning): number {
    const ahead = c.angleRad - Math.max(m.angleRad, c.riseRad);
    return Math.min(ahead, Math.PI - m.riseRad - m.angleRad) - this.sweepRad;
  }

  /** Whether the last elements of two beginnings are seen to stay apart, by distances or directions from the pivot. */
  private lastOnesArePlainlyApart(m: Beginning, c: Beginning): boolean {
    const inRun = { nearMm: 0, farMm: Number.POSITIVE_INFINITY };
    const [moving, clamped] = [m.place ?? inRun, c.place ?? inRun];
    const inner = moving.nearMm - this.slideMm;
    if (inner > clamped.farMm || clamped.nearMm > moving.farMm + this.slideMm) return true;
    const leading = m.place?.directionRad ?? c.runRises(clamped.nearMm);
    const trailing = c.place?.directionRad ?? Math.PI - m.runRises(moving.nearMm);
    return trailing - leading > this.sweepRad && Math.max(inner, clamped.nearMm) > 0;
  }
}

/** One number for a pair of beginnings of one seat. */
function pairOf(m: Beginning, c: Beginning): number {
  return m.number * 2 ** 26 + c.number;
}
