/**
 * One bend with one end clamped, for every set of bends done: whether it can be made, and with what clearance.
 * Joins the two sides' tables with what needs both: the part against itself, and the room to load and unload.
 */
import { ClearanceChecks, type ClearanceRecord } from "../contact/clearance.ts";
import { type Handling, isOpen, LoadingChecks, openRoom, type Room } from "../contact/loading.ts";
import type { Machine } from "../contact/machine.ts";
import { type ContactRecord, noContact, SideChecks } from "../contact/sideChecks.ts";
import type { Seat } from "../motion/seat.ts";
import { SideTable } from "./sideTable.ts";

const UNKNOWN = 0;
const APART = 1;
const MEETS = 2;

export class SeatTable {
  /** The leaf does not swing far enough, or meets bed or clamp by itself: no state can be made. */
  readonly never: boolean;
  readonly moving: SideTable;
  readonly clamped: SideTable;
  private readonly checks: SideChecks;
  private readonly loading: LoadingChecks;
  private readonly measure: ClearanceChecks;
  private readonly zoneToLoad: Room = openRoom();
  private readonly zoneToUnload: Room = openRoom();
  private readonly movingJoints: number;
  private readonly clampedJoints: number;
  /** By pair of nodes of the two sides: whether the two last elements meet. */
  private pairs: Uint8Array | undefined;
  private readonly record: ContactRecord = noContact();
  private readonly gap: ClearanceRecord = { mm: 0, partX: 0, partY: 0, otherX: 0, otherY: 0 };
  /** States whose two sides had to be checked against each other piece by piece. */
  selfChecks = 0;

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
    this.never = seat.sweepRad < seat.overbendRad || alone.phiRad < Infinity;
    this.loading.bendZone(false, this.zoneToLoad);
    this.loading.bendZone(true, this.zoneToUnload);
  }

  /** Whether the bend can be made with these joints formed on the two sides. */
  canMake(formedMoving: number, formedClamped: number): boolean {
    if (this.never || this.moving.hits(formedMoving) || this.clamped.hits(formedClamped)) return false;
    if (this.handling(formedMoving, formedClamped, false) === "blocked") return false;
    if (this.handling(formedMoving, formedClamped, true) === "blocked") return false;
    return !this.meetsItself(formedMoving, formedClamped);
  }

  /** Clearance of both sides from the brake alone; Infinity where nothing is measured. */
  brakeClearance(formedMoving: number, formedClamped: number): number {
    return Math.min(this.moving.clearance(formedMoving), this.clamped.clearance(formedClamped));
  }

  /** Clearance of a state that can be made; exact where it is less than `beyondMm`, else some value not less than that. */
  clearance(formedMoving: number, formedClamped: number, beyondMm: number): number {
    const brake = this.brakeClearance(formedMoving, formedClamped);
    const bar = Math.min(brake, beyondMm);
    if (this.leastSelfDistance(formedMoving, formedClamped) >= bar) return brake;
    this.selfChecks++;
    const { gap } = this;
    gap.mm = bar;
    this.measure.betweenSides(formedMoving, formedClamped, gap);
    return gap.mm < bar ? gap.mm : brake;
  }

  private handling(formedMoving: number, formedClamped: number, finished: boolean): Handling {
    const moving = finished ? this.moving.roomToUnload(formedMoving) : this.moving.roomToLoad(formedMoving);
    const clamped = finished
      ? this.clamped.roomToUnload(formedClamped)
      : this.clamped.roomToLoad(formedClamped);
    const zone = finished ? this.zoneToUnload : this.zoneToLoad;
    if (isOpen(moving) && isOpen(clamped) && isOpen(zone)) return "front";
    return this.loading.handling(moving, clamped, zone);
  }

  /** By how much the sectors that the two sides sweep, seen from the pivot, stay apart. */
  private partedRad(formedMoving: number, formedClamped: number): number {
    return this.clamped.reachAngle(formedClamped) - this.moving.reachAngle(formedMoving) - this.seat.sweepRad;
  }

  /**
   * A distance that the two sides surely keep: they lie in sectors parted by an angle, and of any two points but those
   * of the two runs one lies beyond a known distance from the pivot.
   */
  private leastSelfDistance(formedMoving: number, formedClamped: number): number {
    const parted = this.partedRad(formedMoving, formedClamped);
    if (parted <= 0) return 0;
    const near =
      Math.min(this.moving.offRunNear(formedMoving), this.clamped.offRunNear(formedClamped)) -
      this.checks.pieces.turning.maxInward;
    return parted >= Math.PI / 2 ? near : near * Math.sin(parted);
  }

  private meetsItself(formedMoving: number, formedClamped: number): boolean {
    if (formedMoving === 0 && formedClamped === 0) return false;
    if (this.partedRad(formedMoving, formedClamped) > 0) return false;
    this.selfChecks++;
    this.pairs ??= new Uint8Array(4 << (this.movingJoints + this.clampedJoints));
    for (let m = 0; m <= this.movingJoints; m++) {
      const movingNode = (1 << m) | (formedMoving & ((1 << m) - 1));
      for (let c = 0; c <= this.clampedJoints; c++) {
        const node = movingNode * (2 << this.clampedJoints) + ((1 << c) | (formedClamped & ((1 << c) - 1)));
        let state = this.pairs[node]!;
        if (state === UNKNOWN) {
          this.record.phiRad = Infinity;
          this.checks.withSelf(m, formedMoving, c, formedClamped, this.record);
          state = this.record.phiRad < Infinity ? MEETS : APART;
          this.pairs[node] = state;
        }
        if (state === MEETS) return true;
      }
    }
    return false;
  }
}
