/**
 * One bend with one end clamped, for every set of bends done: whether it can be made, and with what clearance.
 * Joins the two sides with what needs both: the part against itself, and the room to load and unload.
 */
import { Beyond } from "../contact/beyond.ts";
import { ClearanceChecks } from "../contact/clearance.ts";
import { isOpen, LoadingChecks, openRoom, type Room } from "../contact/loading.ts";
import type { Machine } from "../contact/machine.ts";
import type { Side } from "../contact/seatPieces.ts";
import { noContact, SideChecks } from "../contact/sideChecks.ts";
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
  private readonly leafPasses: boolean;
  private readonly zoneToLoad: Room = openRoom();
  private readonly zoneToUnload: Room = openRoom();

  constructor(
    readonly seat: Seat,
    machine: Machine,
  ) {
    const checks = new SideChecks(seat, machine);
    const measure = new ClearanceChecks(checks);
    this.loading = new LoadingChecks(checks);
    this.moving = this.sideOf("moving", checks, measure);
    this.clamped = this.sideOf("clamped", checks, measure);
    this.itself = new Itself(checks, measure);
    const alone = noContact();
    checks.leafWithBrake(alone);
    this.leafPasses =
      !seat.pinched && seat.sweepRad >= seat.overbendRad && alone.phiRad === Number.POSITIVE_INFINITY;
    this.loading.bendZone(false, this.zoneToLoad);
    this.loading.bendZone(true, this.zoneToUnload);
  }

  /** Whether the bend can be made after the bends in `set`. */
  canMake(set: number): boolean {
    if (!this.leafPasses) return false;
    const moving = this.moving.of(set, isDecided);
    if (moving.barred) return false;
    const clamped = this.clamped.of(set, isDecided);
    if (clamped.barred) return false;
    if (!this.goes(moving.load, clamped.load, this.zoneToLoad)) return false;
    if (!this.goes(moving.unload, clamped.unload, this.zoneToUnload)) return false;
    if (this.itself.areParted(moving, clamped)) return true;
    return !this.itself.meets(this.moving.of(set, never), this.clamped.of(set, never));
  }

  /** Clearance of a bend that can be made; exact where it is less than `enoughMm`, else that or more. */
  clearanceMm(set: number, enoughMm: number): number {
    const fromBrake = Math.min(
      this.moving.of(set, isClearOn).clearanceMm,
      this.clamped.of(set, isClearOn).clearanceMm,
    );
    const enough = Math.min(fromBrake, enoughMm);
    if (
      this.itself.distanceMm(this.moving.of(set, isDecided), this.clamped.of(set, isDecided), enough) >=
      enough
    )
      return fromBrake;
    return Math.min(
      fromBrake,
      this.itself.distanceMm(this.moving.of(set, never), this.clamped.of(set, never), enough),
    );
  }

  private goes(moving: Room, clamped: Room, zone: Room): boolean {
    if (isOpen(moving) && isOpen(clamped) && isOpen(zone)) return true;
    return this.loading.handling(moving, clamped, zone) !== "blocked";
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
    };
    const numbers = { next: 0 };
    const first = new Beginning(setting, 0, 0, undefined, numbers);
    const next = (before: Beginning, made: boolean) =>
      new Beginning(setting, before.k + 1, before.formed | (Number(made) << before.k), before, numbers);
    return new Shared(Array.from(bendNumber), first, next);
  }
}

const isDecided = ({ barred, freeOn }: Beginning) => barred || freeOn;
const isClearOn = (side: Beginning) => side.isClearOn;
const never = () => false;
