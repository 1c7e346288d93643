/**
 * Whether a bend can be made, told from one byte a side where that is enough: most states neither hit, nor need room to
 * load, nor come near themselves. Bytes lie in the order in which the sets are walked through, so that they are at hand.
 * Exact: what the bytes leave open is asked of the seat's table.
 */
import type { SeatTable } from "./seatTable.ts";
import { MEETS_BRAKE, type SideTable } from "./sideTable.ts";

/** 0: not looked at yet. */
const HITS = 1;
const FREE = 2;
/** Free, and blocks no height. */
const OPEN = 4;
/** From here up: how far the side reaches into the free sector, in steps. */
const ANGLE_SHIFT = 3;
const ANGLE_STEPS = 31;
const STEP_RAD = Math.PI / 30;

export class QuickLook {
  private readonly moving: Uint8Array;
  private readonly clamped: Uint8Array;
  /** Sides that reach by less than so many steps together stay apart; 0 where the bytes alone can't tell. */
  private readonly free: number;
  private readonly never: boolean;

  constructor(private readonly seat: SeatTable) {
    this.never = seat.never;
    this.moving = new Uint8Array(this.never ? 0 : 1 << seat.moving.joints);
    this.clamped = new Uint8Array(this.never ? 0 : 1 << seat.clamped.joints);
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
    if (m === HITS) return false;
    const c = this.clamped[clampedBends] || this.lookAtClamped(clampedBends, formedClamped);
    if (c === HITS) return false;
    if ((m & c & OPEN) !== 0 && (m >>> ANGLE_SHIFT) + (c >>> ANGLE_SHIFT) < this.free) return true;
    return this.seat.canMake(formedMoving, formedClamped);
  }

  private lookAtMoving(bends: number, formed: number): number {
    const { moving } = this.seat;
    const k = moving.decidedBy(formed);
    const byte = k === MEETS_BRAKE ? HITS : byteOf(moving, k, formed);
    this.moving[bends] = byte;
    return byte;
  }

  private lookAtClamped(bends: number, formed: number): number {
    const { clamped } = this.seat;
    const k = clamped.decidedBy(formed);
    const byte = k === MEETS_BRAKE ? HITS : byteOf(clamped, k, formed);
    this.clamped[bends] = byte;
    return byte;
  }
}

/** The byte of a free side, decided by its first k joints. */
function byteOf(side: SideTable, k: number, formed: number): number {
  const steps = Math.min(ANGLE_STEPS, Math.max(0, Math.ceil(side.reachInto(k, formed) / STEP_RAD)));
  return (steps << ANGLE_SHIFT) | (side.isOpen(k, formed) ? OPEN : FREE);
}
