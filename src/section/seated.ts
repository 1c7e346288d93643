/**
 * One bend with one end clamped, for every set of bends done: whether it can be made, and with what clearance.
 * Joins the two sides with what needs both: the part against itself, and the room to load and unload.
 */
import { Beyond } from "../contact/beyond.ts";
import { ClearanceChecks } from "../contact/clearance.ts";
import type { Side } from "../contact/element.ts";
import { isOpen, LoadingChecks, openRoom, type Room } from "../contact/loading.ts";
import type { Machine } from "../contact/machine.ts";
import { noContact, SideChecks } from "../contact/sideChecks.ts";
import { holdFault } from "../motion/holds.ts";
import type { Seat } from "../motion/seat.ts";
import { Shared } from "../order/shared.ts";
import { Itself } from "./itself.ts";
import { Beginning } from "./side.ts";

export class Seated {
  private readonly loading: LoadingChecks;
  private readonly moving: Shared<Beginning>;
  private readonly clamped: Shared<Beginning>;
  private readonly itself: Itself;
  /** The nose pinches nothing; the leaf swings far enough and meets neither bed nor clamp by itself. */
  private readonly isPossible: boolean;
  /** There is enough sheet to grip and to push, whatever bends are made. */
  private readonly isAlwaysHeld: boolean;
  private readonly open = openRoom();
  private beginnings = 0;
  private readonly zoneToLoad: Room = openRoom();
  private readonly zoneToUnload: Room = openRoom();

  constructor(
    readonly seat: Seat,
    private readonly machine: Machine,
  ) {
    const checks = new SideChecks(seat, machine);
    const measure = new ClearanceChecks(checks);
    this.loading = new LoadingChecks(checks);
    this.moving = this.sideOf("moving", checks, measure);
    this.clamped = this.sideOf("clamped", checks, measure);
    this.itself = new Itself(checks, measure);
    const alone = noContact();
    checks.leafWithBrake(alone);
    this.isPossible =
      !seat.pinched &&
      !seat.overload &&
      seat.sweepRad >= seat.overbendRad &&
      alone.phiRad === Number.POSITIVE_INFINITY;
    // With every other bend made both runs are as short as they get.
    this.isAlwaysHeld = holdFault(seat, machine.brake, -1) === undefined;
    this.loading.bendZone(false, this.zoneToLoad);
    this.loading.bendZone(true, this.zoneToUnload);
  }

  /** Whether the bend can be made after the bends in `set`. */
  canMake(set: number): boolean {
    if (!this.isPossible) return false;
    if (!this.isAlwaysHeld && holdFault(this.seat, this.machine.brake, set) !== undefined) return false;
    const moving = this.moving.of(set);
    if (moving.barred) return false;
    const clamped = this.clamped.of(set);
    if (clamped.barred) return false;
    if (!this.goes(moving.load, clamped.load, this.zoneToLoad)) return false;
    if (!this.goes(moving.unload, clamped.unload, this.zoneToUnload)) return false;
    if (this.itself.areParted(moving, clamped)) return true;
    return !this.itself.meets(this.moving.upTo(set, never), this.clamped.upTo(set, never));
  }

  /** Clearance of a bend that can be made; exact where it is less than `enoughMm`, else that or more. */
  clearanceMm(set: number, enoughMm: number): number {
    const { moving, clamped, itself } = this;
    const isClearOn = (side: Beginning) => side.isClearOn;
    const brakeMm = Math.min(
      moving.upTo(set, isClearOn).clearanceMm,
      clamped.upTo(set, isClearOn).clearanceMm,
    );
    const enough = Math.min(brakeMm, enoughMm);
    if (itself.leastMm(moving.of(set), clamped.of(set)) >= enough) return brakeMm;
    return Math.min(brakeMm, itself.distanceMm(moving.upTo(set, never), clamped.upTo(set, never), enough));
  }

  private goes(moving: Room | undefined, clamped: Room | undefined, zone: Room): boolean {
    if (!moving && !clamped && isOpen(zone)) return true;
    return this.loading.handling(moving ?? this.open, clamped ?? this.open, zone) !== "blocked";
  }

  private sideOf(side: Side, checks: SideChecks, measure: ClearanceChecks): Shared<Beginning> {
    const { seat, pieces } = checks;
    const { joints, bendNumber } = pieces.chainOf(side);
    const half = Math.max(0, Math.PI - seat.sweepRad) / 2;
    const setting = {
      side,
      joints,
      checks,
      measure,
      loading: this.loading,
      beyond: new Beyond(checks, side),
      slideMm: side === "moving" ? pieces.turning.maxInward : 0,
      runTopMm: Math.max(0, seat.thicknessMm - seat.pivot.y),
      fairRad: side === "moving" ? half : Math.PI - half,
      count: () => this.beginnings++,
    };
    return new Shared(Array.from(bendNumber), new Beginning(setting));
  }
}

const never = () => false;
