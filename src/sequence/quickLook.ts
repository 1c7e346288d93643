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

  /**
   * Whether the bend can be made. Either side is given by its bends as they stand in the set of bends done, and as joints
   * formed, nearest first.
   */
  canMake(movingBends: number, formedMoving: number, clampedBends: number, formedClamped: number): boolean {
    if (this.never) return false;
    const m = this.moving[movingBends] || this.lookAtMoving(movingBends, formedMoving);
    if (m === BARRED) return false;
    const c = this.clamped[clampedBends] || this.lookAtClamped(clampedBends, formedClamped);
    if (c === BARRED) return false;
    if ((m & c & OPEN) !== 0 && (m >>> ANGLE_SHIFT) + (c >>> ANGLE_SHIFT) < this.free) return true;
    return this.seat.canMake(formedMoving, formedClamped);
  }

  private lookAtMoving(bends: number, formed: number): number {
    const { moving } = this.seat;
    const k = moving.decidedBy(formed);
    const sign = k === BARRED_SIDE ? BARRED : signOf(moving, k, formed);
    this.moving[bends] = sign;
    return sign;
  }

  private lookAtClamped(bends: number, formed: number): number {
    const { clamped } = this.seat;
    const k = clamped.decidedBy(formed);
    const sign = k === BARRED_SIDE ? BARRED : signOf(clamped, k, formed);
    this.clamped[bends] = sign;
    return sign;
  }
}

/** The number of a free side, decided by its first k joints. */
function signOf(side: SideTable, k: number, formed: number): number {
  const steps = Math.min(ANGLE_STEPS, Math.max(0, Math.ceil(side.reach.reachInto(k, formed) / STEP_RAD)));
  return (steps << ANGLE_SHIFT) | (side.isOpen(k, formed) ? OPEN : FREE);
}
