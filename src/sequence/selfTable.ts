/**
 * The part against itself while one bend is made: whether its two sides meet, and how far apart they stay, kept for every
 * pair of beginnings of the two sides. A pair of beginnings comes from two that are one element shorter and one pair of
 * elements; where sectors or distances from the pivot already tell the two apart, no element is laid out.
 */
import type { ClearanceChecks, ClearanceRecord } from "../contact/clearance.ts";
import { type ContactRecord, noContact, type SideChecks } from "../contact/sideChecks.ts";
import { FLAT_AT_BEND, formedOn, isFlat, jointsOf } from "./sidePath.ts";
import type { SideTable } from "./sideTable.ts";

const UNKNOWN = 0;
const APART = 1;
const MEET = 2;

const PAGE_BITS = 7;

/** The two sides as whole paths (sidePath.ts), and the beginning that decides for each against the brake. */
export interface Sides {
  moving: number;
  clamped: number;
  decideMoving: number;
  decideClamped: number;
}

export class SelfTable {
  /** By pair of beginnings: whether anything of the one meets anything of the other. */
  private pairs: Uint8Array | undefined;
  /** By pair of beginnings, in pages: the distance kept, Infinity where it is not less than asked; 0 not known, −1 for 0. */
  private distances: (Float32Array | undefined)[] = [];
  private distancesUpToMm = 0;
  private readonly record: ContactRecord = noContact();
  private readonly gap: ClearanceRecord = { mm: 0, partX: 0, partY: 0, otherX: 0, otherY: 0 };
  private readonly sweepRad: number;
  private readonly slideMm: number;

  constructor(
    private readonly moving: SideTable,
    private readonly clamped: SideTable,
    private readonly checks: SideChecks,
    private readonly measure: ClearanceChecks,
  ) {
    this.sweepRad = checks.seat.sweepRad;
    this.slideMm = checks.pieces.turning.maxSlide;
  }

  /** Whether the two sides meet during the sweep, neither of them meeting the brake. */
  meets(sides: Sides): boolean {
    const { moving, clamped } = sides;
    if (isFlat(moving) && isFlat(clamped)) return false;
    if (this.partedRad(moving, clamped, sides) > 0) return false;
    this.pairs ??= new Uint8Array(4 << (this.moving.joints + this.clamped.joints));
    return this.beginningsMeet(this.pairs, moving, clamped, sides);
  }

  /** The distance that the two sides keep, exact where it is less than `enoughMm`, itself at most `upToMm`; else that or more. */
  distance(sides: Sides, upToMm: number, enoughMm: number): number {
    const { moving, clamped } = sides;
    if (this.leastDistance(moving, clamped, sides) >= enoughMm) return Number.POSITIVE_INFINITY;
    // What was not less than was asked is known of less only.
    if (upToMm > this.distancesUpToMm) this.distances = [];
    this.distancesUpToMm = upToMm;
    return this.distanceOf(moving, clamped, sides, upToMm);
  }

  /**
   * By how much the sectors that the beginnings of m and c joints sweep, seen from the pivot, stay apart; the two runs,
   * which meet nothing of each other, count as far as they rise above bed and leaf out where the other side is.
   */
  private partedRad(m: number, c: number, sides: Sides): number {
    const [moving, clamped] = [this.moving.reach, this.clamped.reach];
    // Of two beginnings of one side the shorter is the smaller number.
    const dm = Math.min(m, sides.decideMoving);
    const dc = Math.min(c, sides.decideClamped);
    const leading = moving.angle(dm);
    const trailing = clamped.angle(dc);
    const movingRun = clamped.rise(dc);
    const clampedRun = moving.rise(dm);
    return Math.min(trailing - Math.max(leading, movingRun), Math.PI - clampedRun - leading) - this.sweepRad;
  }

  /**
   * A distance that two beginnings surely keep: they lie in sectors parted by an angle, and of any two points but those
   * of the two runs one lies beyond a known distance from the pivot.
   */
  private leastDistance(m: number, c: number, sides: Sides): number {
    const parted = this.partedRad(m, c, sides);
    if (parted <= 0) return 0;
    const moving = this.moving.reach.near(Math.min(m, sides.decideMoving));
    const clamped = this.clamped.reach.near(Math.min(c, sides.decideClamped));
    return (Math.min(moving, clamped) - this.slideMm) * Math.sin(Math.min(parted, Math.PI / 2));
  }

  /** Number of a pair of beginnings. */
  private pairOf(m: number, c: number): number {
    return m * (2 << this.clamped.joints) + c;
  }

  /** Whether any element of moving beginning `m` meets any of clamped beginning `c`. */
  private beginningsMeet(pairs: Uint8Array, m: number, c: number, sides: Sides): boolean {
    const pair = this.pairOf(m, c);
    const known = pairs[pair]!;
    if (known !== UNKNOWN) return known === MEET;
    const meet =
      this.partedRad(m, c, sides) <= 0 &&
      ((m > FLAT_AT_BEND && this.beginningsMeet(pairs, m >>> 1, c, sides)) ||
        (c > FLAT_AT_BEND && this.beginningsMeet(pairs, m, c >>> 1, sides)) ||
        this.lastOnesMeet(m, c));
    pairs[pair] = meet ? MEET : APART;
    return meet;
  }

  private lastOnesMeet(m: number, c: number): boolean {
    if (this.lastOnesKeep(m, c) > 0) return false;
    this.record.phiRad = Number.POSITIVE_INFINITY;
    this.checks.withSelf(jointsOf(m), formedOn(m), jointsOf(c), formedOn(c), this.record);
    return this.record.phiRad < Number.POSITIVE_INFINITY;
  }

  private distanceOf(m: number, c: number, sides: Sides, upToMm: number): number {
    const pair = this.pairOf(m, c);
    const page = this.pageOf(pair);
    const at = pair & ((1 << PAGE_BITS) - 1);
    const known = page[at]!;
    if (known !== 0) return Math.max(known, 0);
    let mm = Number.POSITIVE_INFINITY;
    if (this.leastDistance(m, c, sides) < upToMm) {
      if (m > FLAT_AT_BEND) mm = this.distanceOf(m >>> 1, c, sides, upToMm);
      if (c > FLAT_AT_BEND) mm = Math.min(mm, this.distanceOf(m, c >>> 1, sides, upToMm));
      mm = Math.min(mm, this.distanceOfLast(m, c, Math.min(mm, upToMm)));
    }
    page[at] = mm === 0 ? -1 : mm;
    return Math.max(page[at]!, 0);
  }

  private distanceOfLast(m: number, c: number, upToMm: number): number {
    if (this.lastOnesKeep(m, c) >= upToMm) return Number.POSITIVE_INFINITY;
    const { gap } = this;
    gap.mm = upToMm;
    this.measure.betweenElements(jointsOf(m), formedOn(m), jointsOf(c), formedOn(c), gap);
    return gap.mm < upToMm ? gap.mm : Number.POSITIVE_INFINITY;
  }

  /** A distance that the last elements of two beginnings surely keep, from where they are seen from the pivot; 0 if unknown. */
  private lastOnesKeep(m: number, c: number): number {
    const { slideMm } = this;
    const [moving, clamped] = [this.moving.reach, this.clamped.reach];
    this.moving.readLast(m);
    this.clamped.readLast(c);
    const inner = moving.lastNear - slideMm;
    const byReach = Math.max(inner - clamped.lastFar, clamped.lastNear - moving.lastFar - slideMm);
    if (byReach > 0) return byReach;
    const leading = moving.lastAngle < 0 ? clamped.runRises(clamped.lastNear) : moving.lastAngle;
    const trailing = clamped.lastAngle < 0 ? Math.PI - moving.runRises(moving.lastNear) : clamped.lastAngle;
    const parted = trailing - leading - this.sweepRad;
    return parted > 0 ? Math.max(inner, clamped.lastNear) * Math.sin(Math.min(parted, Math.PI / 2)) : 0;
  }

  private pageOf(pair: number): Float32Array {
    const known = this.distances[pair >>> PAGE_BITS];
    if (known) return known;
    const made = new Float32Array(1 << PAGE_BITS);
    this.distances[pair >>> PAGE_BITS] = made;
    return made;
  }
}
