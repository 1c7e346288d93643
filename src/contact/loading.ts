/**
 * Getting the part in and out: how far sheet and clamp must rise so that the sheet slides along x without overlap.
 * design, section 7: the sheet rises by h, the clamp by g above it, h + g ≤ lift, both along free paths; `front` if it then
 * slides, else `end` if the seated part is free and the ends are open, else `blocked`.
 */
import type { Seat } from "../motion/seat.ts";
import { BlockedHeights, blockHeights } from "./blockedHeights.ts";
import { Features } from "./features.ts";
import { FACE_INSET_MM } from "./gaps.ts";
import type { Machine } from "./machine.ts";
import { bordersOverlap, type Spot, sheetOverlapsBody } from "./overlap.ts";
import type { SeatPieces, Side } from "./seatPieces.ts";
import { type SideChecks, WHOLE } from "./sideChecks.ts";
import type { SolidBody } from "./solidBody.ts";

export type Handling = "front" | "end" | "blocked";

/** What one element or side leaves free: heights for the sheet, for the clamp above it, and whether it overlaps. */
export interface Room {
  readonly sheet: BlockedHeights;
  readonly clamp: BlockedHeights;
  overlaps: boolean;
}

export function isOpen(room: Room): boolean {
  return !room.overlaps && room.sheet.bounds.length === 0 && room.clamp.bounds.length === 0;
}

export function openRoom(): Room {
  return { sheet: new BlockedHeights(), clamp: new BlockedHeights(), overlaps: false };
}

export class LoadingChecks {
  private readonly pieces: SeatPieces;
  private readonly seat: Seat;
  private readonly machine: Machine;
  private readonly still: readonly SolidBody[];
  private readonly a = new Features(12, 12, 4);
  private readonly b = new Features(12, 12, 4);
  private readonly spot: Spot = { x: 0, y: 0 };

  constructor(private readonly checks: SideChecks) {
    this.pieces = checks.pieces;
    this.seat = checks.seat;
    this.machine = checks.machine;
    this.still = [this.machine.bed, this.machine.leaf, ...this.machine.frame];
  }

  /** Adds what element k blocks: before the bend is made, or (`finished`) after. */
  element(side: Side, k: number, formed: number, finished: boolean, room: Room): void {
    if (side === "moving" && finished) this.pieces.layMoving(true);
    if (side === "moving" && k === 0 && !finished) this.pieces.firstFlatAtRest(this.a, FACE_INSET_MM);
    else this.pieces.element(this.a, side, k, formed, WHOLE, FACE_INSET_MM, false);
    if (side === "moving" && finished) this.pieces.layMoving(false);
    this.piece(this.a, room);
  }

  /** Adds what a piece of sheet blocks, where it stands. */
  piece(piece: Features, room: Room): void {
    const { checks } = this;
    const { liftMm } = this.machine.brake;
    for (const body of checks.clamp) {
      room.overlaps ||= sheetOverlapsBody(piece, body, this.spot);
      blockHeights(piece, body, -1, liftMm, room.clamp);
    }
    for (const body of this.still) {
      room.overlaps ||= sheetOverlapsBody(piece, body, this.spot);
      blockHeights(piece, body, 1, liftMm, room.sheet);
    }
  }

  /** Adds what the bend zone itself blocks. */
  bendZone(finished: boolean, room: Room): void {
    this.pieces.bendZone(this.a, finished);
    this.piece(this.a, room);
  }

  /** Whether the two sides overlap with the bend finished (`formed…` as in sideChecks.ts). */
  sidesOverlapFinished(formedMoving: number, formedClamped: number): boolean {
    const { pieces, checks } = this;
    for (let m = 0; m <= this.seat.movingChain.joints; m++) {
      pieces.layMoving(true);
      pieces.element(this.a, "moving", m, formedMoving, WHOLE, FACE_INSET_MM, false);
      pieces.layMoving(false);
      for (let c = 0; c <= this.seat.clampedChain.joints; c++) {
        if (checks.inRun("moving", m, formedMoving) && checks.inRun("clamped", c, formedClamped)) continue;
        pieces.element(this.b, "clamped", c, formedClamped, WHOLE, FACE_INSET_MM, false);
        if (bordersOverlap(this.a, this.b, this.spot)) return true;
      }
    }
    return false;
  }

  /** The way of handling that the room of all pieces together leaves. */
  handling(...rooms: readonly Room[]): Handling {
    if (rooms.some((room) => room.overlaps)) return "blocked";
    const { liftMm, openEnds } = this.machine.brake;
    const sheet = leastFreeOf(rooms.map((room) => room.sheet));
    const clamp = leastFreeOf(rooms.map((room) => room.clamp));
    if (sheet + clamp <= liftMm) return "front";
    return openEnds ? "end" : "blocked";
  }
}

function leastFreeOf(lists: readonly BlockedHeights[]): number {
  const busy = lists.filter((list) => list.bounds.length > 0);
  if (busy.length === 0) return 0;
  if (busy.length === 1) return busy[0]!.leastFree();
  const all = new BlockedHeights();
  for (const list of busy) all.addAll(list);
  return all.leastFree();
}
