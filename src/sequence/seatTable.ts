/**
 * One bend with one end clamped, for every set of bends done: whether it can be made, and with what clearance.
 * Joins the two sides' tables with what needs both: the part against itself, and the room to load and unload.
 */
import { ClearanceChecks, type ClearanceRecord } from "../contact/clearance.ts";
import { type Handling, isOpen, LoadingChecks, openRoom, type Room } from "../contact/loading.ts";
import type { Machine } from "../contact/machine.ts";
import { type ContactRecord, noContact, SideChecks } from "../contact/sideChecks.ts";
import type { Seat } from "../motion/seat.ts";
import { MEETS_BRAKE, SideTable } from "./sideTable.ts";

const UNKNOWN = 0;
const APART = 1;
const MEETS = 2;

export class SeatTable {
  /** The leaf does not swing far enough, or meets bed or clamp by itself: no state can be made. */
  readonly never: boolean;
  readonly moving: SideTable;
  readonly clamped: SideTable;
  /** Whether the bend zone by itself leaves all room to load and unload. */
  readonly zoneIsOpen: boolean;
  private readonly checks: SideChecks;
  private readonly loading: LoadingChecks;
  private readonly measure: ClearanceChecks;
  private readonly zoneToLoad: Room = openRoom();
  private readonly zoneToUnload: Room = openRoom();
  private readonly movingJoints: number;
  private readonly clampedJoints: number;
  /** By pair of beginnings of the two sides: whether anything of the one meets anything of the other. */
  private pairs: Uint8Array | undefined;
  private readonly record: ContactRecord = noContact();
  private readonly gap: ClearanceRecord = { mm: 0, partX: 0, partY: 0, otherX: 0, otherY: 0 };

  constructor(
    readonly seat: Seat,
    machine: Machine,
  ) {
    this.checks = new SideChecks(seat, machine);
    this.loading = new LoadingChecks(this.checks);
    this.measure = new ClearanceChecks(this.checks);
    this.moving = new SideTable("moving", this.checks, this.loading, this.measure);
    this.clamped = new SideTable("clamped", this.checks, this.loading, this.measure);
    this.movingJoints = seat.movingChain.joints;
    this.clampedJoints = seat.clampedChain.joints;
    const alone = noContact();
    this.checks.leafWithBrake(alone);
    this.never = seat.sweepRad < seat.overbendRad || alone.phiRad < Number.POSITIVE_INFINITY;
    this.loading.bendZone(false, this.zoneToLoad);
    this.loading.bendZone(true, this.zoneToUnload);
    this.zoneIsOpen = isOpen(this.zoneToLoad) && isOpen(this.zoneToUnload);
  }

  /** Whether the bend can be made with these joints formed on the two sides. */
  canMake(formedMoving: number, formedClamped: number): boolean {
    if (this.never) return false;
    const m = this.moving.decidedBy(formedMoving);
    if (m === MEETS_BRAKE) return false;
    const c = this.clamped.decidedBy(formedClamped);
    if (c === MEETS_BRAKE) return false;
    if (this.handling(m, formedMoving, c, formedClamped, false) === "blocked") return false;
    if (this.handling(m, formedMoving, c, formedClamped, true) === "blocked") return false;
    return !this.meetsItself(m, formedMoving, c, formedClamped);
  }

  /** Clearance of both sides from the brake alone; Infinity where nothing is measured. */
  brakeClearance(formedMoving: number, formedClamped: number): number {
    return Math.min(this.moving.clearance(formedMoving), this.clamped.clearance(formedClamped));
  }

  /** Clearance of a state that can be made; exact where it is less than `beyondMm`, else some value not less than that. */
  clearance(formedMoving: number, formedClamped: number, beyondMm: number): number {
    return this.withSelf(
      formedMoving,
      formedClamped,
      this.brakeClearance(formedMoving, formedClamped),
      beyondMm,
    );
  }

  /** The same where the clearance from the brake is known. */
  withSelf(formedMoving: number, formedClamped: number, brakeMm: number, beyondMm: number): number {
    const bar = Math.min(brakeMm, beyondMm);
    if (this.leastSelfDistance(formedMoving, formedClamped) >= bar) return brakeMm;
    const { gap } = this;
    gap.mm = bar;
    this.measure.betweenSides(formedMoving, formedClamped, gap);
    return gap.mm < bar ? gap.mm : brakeMm;
  }

  private handling(
    m: number,
    formedMoving: number,
    c: number,
    formedClamped: number,
    finished: boolean,
  ): Handling {
    const { moving, clamped } = this;
    const room = finished ? moving.roomToUnload(m, formedMoving) : moving.roomToLoad(m, formedMoving);
    const other = finished ? clamped.roomToUnload(c, formedClamped) : clamped.roomToLoad(c, formedClamped);
    const zone = finished ? this.zoneToUnload : this.zoneToLoad;
    if (isOpen(room) && isOpen(other) && isOpen(zone)) return "front";
    return this.loading.handling(room, other, zone);
  }

  /**
   * By how much the sectors that the two sides sweep, seen from the pivot, stay apart; the two runs, which meet nothing of
   * each other, count as far as they rise above bed and leaf out where the other side is.
   */
  private partedRad(m: number, formedMoving: number, c: number, formedClamped: number): number {
    const { moving, clamped } = this;
    const leading = moving.reachAngle(m, formedMoving);
    const trailing = clamped.reachAngle(c, formedClamped);
    const movingRun = clamped.runRises(clamped.offRunNear(c, formedClamped));
    const clampedRun = moving.runRises(moving.offRunNear(m, formedMoving));
    const free = Math.min(trailing - Math.max(leading, movingRun), Math.PI - clampedRun - leading);
    return free - this.seat.sweepRad;
  }

  /**
   * A distance that the two sides surely keep: they lie in sectors parted by an angle, and of any two points but those
   * of the two runs one lies beyond a known distance from the pivot.
   */
  private leastSelfDistance(formedMoving: number, formedClamped: number): number {
    const m = this.moving.decidedBy(formedMoving);
    const c = this.clamped.decidedBy(formedClamped);
    const parted = this.partedRad(m, formedMoving, c, formedClamped);
    if (parted <= 0) return 0;
    const near =
      Math.min(this.moving.offRunNear(m, formedMoving), this.clamped.offRunNear(c, formedClamped)) -
      this.checks.pieces.turning.maxInward;
    return parted >= Math.PI / 2 ? near : near * Math.sin(parted);
  }

  /** Whether the two sides meet during the sweep; `m` and `c` joints decide for them against the brake. */
  private meetsItself(m: number, formedMoving: number, c: number, formedClamped: number): boolean {
    if (formedMoving === 0 && formedClamped === 0) return false;
    if (this.partedRad(m, formedMoving, c, formedClamped) > 0) return false;
    this.pairs ??= new Uint8Array(4 << (this.movingJoints + this.clampedJoints));
    return this.beginningsMeet(
      this.pairs,
      this.movingJoints,
      formedMoving,
      m,
      this.clampedJoints,
      formedClamped,
      c,
    );
  }

  /** Whether any of the first m + 1 moving elements meets any of the first c + 1 clamped ones. */
  private beginningsMeet(
    pairs: Uint8Array,
    m: number,
    formedMoving: number,
    decidingMoving: number,
    c: number,
    formedClamped: number,
    decidingClamped: number,
  ): boolean {
    const moving = formedMoving & ((1 << m) - 1);
    const clamped = formedClamped & ((1 << c) - 1);
    const pair = ((1 << m) | moving) * (2 << this.clampedJoints) + ((1 << c) | clamped);
    const known = pairs[pair]!;
    if (known !== UNKNOWN) return known === MEETS;
    const [dm, dc] = [Math.min(m, decidingMoving), Math.min(c, decidingClamped)];
    const meet =
      this.partedRad(dm, moving, dc, clamped) <= 0 &&
      ((m > 0 && this.beginningsMeet(pairs, m - 1, moving, decidingMoving, c, clamped, decidingClamped)) ||
        (c > 0 && this.beginningsMeet(pairs, m, moving, decidingMoving, c - 1, clamped, decidingClamped)) ||
        this.lastOnesMeet(m, moving, c, clamped));
    pairs[pair] = meet ? MEETS : APART;
    return meet;
  }

  private lastOnesMeet(m: number, formedMoving: number, c: number, formedClamped: number): boolean {
    this.record.phiRad = Number.POSITIVE_INFINITY;
    this.checks.withSelf(m, formedMoving, c, formedClamped, this.record);
    return this.record.phiRad < Number.POSITIVE_INFINITY;
  }
}
