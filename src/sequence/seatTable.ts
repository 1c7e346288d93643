/**
 * One bend with one end clamped, for every set of bends done: whether it can be made, and with what clearance.
 * Joins the two sides' tables with what needs both: the part against itself, and the room to load and unload.
 */
import { ClearanceChecks } from "../contact/clearance.ts";
import { type Handling, isOpen, LoadingChecks, openRoom, type Room } from "../contact/loading.ts";
import type { Machine } from "../contact/machine.ts";
import { noContact, SideChecks } from "../contact/sideChecks.ts";
import type { Seat } from "../motion/seat.ts";
import { SelfTable, type Sides } from "./selfTable.ts";
import { BARRED_SIDE, SideTable } from "./sideTable.ts";

export class SeatTable {
  /** The nose pinches the sheet, the leaf does not swing far enough, or meets bed or clamp by itself: no state can be made. */
  readonly never: boolean;
  readonly moving: SideTable;
  readonly clamped: SideTable;
  /** Whether the bend zone by itself leaves all room to load and unload. */
  readonly zoneIsOpen: boolean;
  private readonly loading: LoadingChecks;
  private readonly self: SelfTable;
  private readonly zoneToLoad: Room = openRoom();
  private readonly zoneToUnload: Room = openRoom();
  private readonly sides: Sides = { moving: 0, clamped: 0, decideMoving: 0, decideClamped: 0 };

  constructor(
    readonly seat: Seat,
    machine: Machine,
  ) {
    const checks = new SideChecks(seat, machine);
    const measure = new ClearanceChecks(checks);
    this.loading = new LoadingChecks(checks);
    this.moving = new SideTable("moving", checks, this.loading, measure);
    this.clamped = new SideTable("clamped", checks, this.loading, measure);
    this.self = new SelfTable(this.moving, this.clamped, checks, measure);
    const alone = noContact();
    checks.leafWithBrake(alone);
    this.never = seat.pinched || seat.sweepRad < seat.overbendRad || alone.phiRad < Number.POSITIVE_INFINITY;
    this.loading.bendZone(false, this.zoneToLoad);
    this.loading.bendZone(true, this.zoneToUnload);
    this.zoneIsOpen = isOpen(this.zoneToLoad) && isOpen(this.zoneToUnload);
  }

  /** Whether the bend can be made with the two sides as given by their paths (sidePath.ts). */
  canMake(moving: number, clamped: number): boolean {
    if (this.never || !this.missesBrake(moving, clamped)) return false;
    const { sides } = this;
    if (this.handling(sides, false) === "blocked" || this.handling(sides, true) === "blocked") return false;
    return !this.self.meets(sides);
  }

  /** Clearance of both sides from the brake alone; Infinity where nothing is measured. */
  brakeClearance(moving: number, clamped: number): number {
    return Math.min(this.moving.clearance(moving), this.clamped.clearance(clamped));
  }

  /** Clearance of a state that can be made; exact where it is less than `beyondMm`, else some value not less than that. */
  clearance(moving: number, clamped: number, beyondMm: number): number {
    const brake = this.brakeClearance(moving, clamped);
    return Math.min(brake, this.selfDistance(moving, clamped, beyondMm, Math.min(brake, beyondMm)));
  }

  /**
   * Distance of the two sides of a state that can be made; exact where it is less than `enoughMm`, else that or more. What
   * is kept for other states reaches up to `upToMm`, which should not rise from one call to the next.
   */
  selfDistance(moving: number, clamped: number, upToMm: number, enoughMm: number): number {
    this.missesBrake(moving, clamped);
    return this.self.distance(this.sides, upToMm, enoughMm);
  }

  /** Whether neither side meets the brake; takes them in for what is asked next. */
  private missesBrake(moving: number, clamped: number): boolean {
    const { sides } = this;
    sides.moving = moving;
    sides.clamped = clamped;
    sides.decideMoving = this.moving.decidedBy(moving);
    if (sides.decideMoving === BARRED_SIDE) return false;
    sides.decideClamped = this.clamped.decidedBy(clamped);
    return sides.decideClamped !== BARRED_SIDE;
  }

  private handling({ decideMoving, decideClamped }: Sides, finished: boolean): Handling {
    const room = this.moving.room(decideMoving, finished);
    const other = this.clamped.room(decideClamped, finished);
    const zone = finished ? this.zoneToUnload : this.zoneToLoad;
    if (isOpen(room) && isOpen(other) && isOpen(zone)) return "front";
    return this.loading.handling(room, other, zone);
  }
}
