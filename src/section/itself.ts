/**
 * The part against itself while one bend is made: whether its two sides meet, and how far apart they stay, kept for every pair of
 * beginnings. A pair comes from two that are one element shorter and one pair of elements; where sectors or distances from the
 * pivot already tell the two apart, no element is laid out.
 */
import type { ClearanceChecks } from "../contact/clearance.ts";
import { noContact, type SideChecks } from "../contact/sideChecks.ts";
import type { Beginning } from "./side.ts";

export class Itself {
  private readonly meeting = new Map<number, boolean>();
  private readonly distance = new Map<number, number>();
  private distanceUpToMm = 0;
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
    const pair = pairOf(m, c);
    const known = this.meeting.get(pair);
    if (known !== undefined) return known;
    const meet =
      !this.areParted(m, c) &&
      ((m.before !== undefined && this.meets(m.before, c)) ||
        (c.before !== undefined && this.meets(m, c.before)) ||
        this.lastOnesMeet(m, c));
    this.meeting.set(pair, meet);
    return meet;
  }

  /** The distance that two sides which don't meet keep, exact where it is less than `enoughMm`; else that or more. */
  distanceMm(m: Beginning, c: Beginning, enoughMm: number): number {
    if (this.leastMm(m, c) >= enoughMm) return Number.POSITIVE_INFINITY;
    // What was not less than was asked is known of less only.
    if (enoughMm > this.distanceUpToMm) {
      this.distance.clear();
      this.distanceUpToMm = enoughMm;
    }
    return this.distanceOf(m, c);
  }

  private distanceOf(m: Beginning, c: Beginning): number {
    const pair = pairOf(m, c);
    const known = this.distance.get(pair);
    if (known !== undefined) return known;
    const upToMm = this.distanceUpToMm;
    let mm = Number.POSITIVE_INFINITY;
    if (this.leastMm(m, c) < upToMm) {
      if (m.before) mm = this.distanceOf(m.before, c);
      if (c.before) mm = Math.min(mm, this.distanceOf(m, c.before));
      mm = Math.min(mm, this.distanceOfLast(m, c, Math.min(mm, upToMm)));
    }
    this.distance.set(pair, mm);
    return mm;
  }

  private lastOnesMeet(m: Beginning, c: Beginning): boolean {
    if (this.lastOnesKeepMm(m, c) > 0) return false;
    const record = noContact();
    this.checks.withSelf(m.k, m.formed, c.k, c.formed, record);
    return record.phiRad < Number.POSITIVE_INFINITY;
  }

  private distanceOfLast(m: Beginning, c: Beginning, upToMm: number): number {
    if (this.lastOnesKeepMm(m, c) >= upToMm) return Number.POSITIVE_INFINITY;
    const gap = { mm: upToMm, partX: 0, partY: 0, otherX: 0, otherY: 0 };
    this.measure.betweenElements(m.k, m.formed, c.k, c.formed, gap);
    return gap.mm < upToMm ? gap.mm : Number.POSITIVE_INFINITY;
  }

  /**
   * By how much the sectors that two beginnings sweep stay apart; the two runs, which meet nothing of each other, count as far as
   * they rise above bed and leaf out where the other side is.
   */
  private partedRad(m: Beginning, c: Beginning): number {
    const ahead = c.angleRad - Math.max(m.angleRad, c.riseRad);
    return Math.min(ahead, Math.PI - m.riseRad - m.angleRad) - this.sweepRad;
  }

  /**
   * A distance that two beginnings surely keep: they lie in sectors parted by an angle, and of any two points but those of the
   * two runs one lies beyond a known distance from the pivot.
   */
  private leastMm(m: Beginning, c: Beginning): number {
    const parted = this.partedRad(m, c);
    if (parted <= 0) return 0;
    return (Math.min(m.nearMm, c.nearMm) - this.slideMm) * Math.sin(Math.min(parted, Math.PI / 2));
  }

  /** A distance that the last elements of two beginnings surely keep, by where they are seen from the pivot; 0 if unknown. */
  private lastOnesKeepMm(m: Beginning, c: Beginning): number {
    const { slideMm } = this;
    const [moving, clamped] = [m.place, c.place];
    const [movingNear, clampedNear] = [moving?.nearMm ?? 0, clamped?.nearMm ?? 0];
    const inner = movingNear - slideMm;
    const [movingFar, clampedFar] = [moving?.farMm ?? Infinity, clamped?.farMm ?? Infinity];
    const byReach = Math.max(inner - clampedFar, clampedNear - movingFar - slideMm);
    if (byReach > 0) return byReach;
    const leading = moving?.directionRad ?? c.runRises(clampedNear);
    const trailing = clamped?.directionRad ?? Math.PI - m.runRises(movingNear);
    const parted = trailing - leading - this.sweepRad;
    return parted > 0 ? Math.max(inner, clampedNear) * Math.sin(Math.min(parted, Math.PI / 2)) : 0;
  }
}

/** One number for a pair of beginnings of one seat. */
function pairOf(m: Beginning, c: Beginning): number {
  return m.number * 2 ** 26 + c.number;
}
