/**
 * Whether a bend can be made, told from one small number a side where that is enough: most states neither hit, nor need room to
 * load, nor come near themselves. They lie in the order in which the sets are walked through, so that they are at hand.
 * Exact: what they leave open is asked of the seat's table.
 */
import type { SeatTable } from "./seatTable.ts";
import { BARRED_SIDE, type SideTable } from "./sideTable.ts";

/** 0: not looked at yet. */
const BARRED = 1;
const FREE = 2;
/** Free, and blocks no height. */
const OPEN = 4;
/** From here up: how far the side reaches into the free sector, in steps. */
const ANGLE_SHIFT = 3;
const ANGLE_STEPS = 2 ** 13 - 1;
const STEP_RAD = Math.PI / 4000;

export class QuickLook {
  private readonly moving: Uint16Array;
  private readonly clamped: Uint16Array;
  /** Sides that reach by less than so many steps together stay apart; 0 where these alone can't tell. */
  private readonly free: number;
  private readonly never: boolean;

  constructor(private readonly seat: SeatTable) {
    this.never = seat.never;
    seat.moving.keepDecided();
    seat.clamped.keepDecided();
    this.moving = new Uint16Array(this.never ? 0 : 1 << seat.moving.joints);
    this.clamped = new Uint16Array(this.never ? 0 : 1 << seat.clamped.joints);
    const steps = Math.floor((Math.PI - seat.seat.sweepRad) / STEP_RAD - 1e-6);
    this.free = seat.zoneIsOpen ? Math.max(0, Math.min(ANGLE_STEPS, steps)) : 0;
  }

  /** Whether the bend can be made, with the two sides as given by their paths (sidePath.ts). */
  canMake(movingPath: number, clampedPath: number): boolean {
    if (this.never) return false;
    const { moving, clamped } = this;
    const m = moving[movingPath & (moving.length - 1)] || lookAt(this.seat.moving, movingPath, moving);
    if (m === BARRED) return false;
    const c = clamped[clampedPath & (clamped.length - 1)] || lookAt(this.seat.clamped, clampedPath, clamped);
    if (c === BARRED) return false;
    if ((m & c & OPEN) !== 0 && (m >>> ANGLE_SHIFT) + (c >>> ANGLE_SHIFT) < this.free) return true;
    return this.seat.canMake(movingPath, clampedPath);
  }
}

/** The number of a side, kept in the place of its path's joints. */
function lookAt(side: SideTable, path: number, kept: Uint16Array): number {
  const by = side.decidedBy(path);
  const sign = by === BARRED_SIDE ? BARRED : signOf(side, by);
  kept[path & (kept.length - 1)] = sign;
  return sign;
}

/** The number of a free side, decided by a beginning. */
function signOf(side: SideTable, by: number): number {
  const steps = Math.min(ANGLE_STEPS, Math.max(0, Math.ceil(side.reach.reachInto(by) / STEP_RAD)));
  return (steps << ANGLE_SHIFT) | (side.isOpen(by) ? OPEN : FREE);
}
