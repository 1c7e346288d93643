/**
 * Getting the part in and out: how far sheet and clamp must rise so that the sheet slides along x without overlap.
 * src/model.md, section 7: the sheet rises by h, the clamp by g above it, h + g ≤ lift, both along free paths; `front` if it then
 * slides, else `end` if the seated part is free and the ends are open, else `blocked`.
 */
import { BlockedHeights, blockHeights } from "./blockedHeights.ts";
import { FOR_CONTACT, type Side } from "./element.ts";
import type { Features } from "./features.ts";
import { FACE_INSET_MM } from "./gaps.ts";
import type { Machine } from "./machine.ts";
import { type Spot, sheetOverlapsBody } from "./overlap.ts";
import type { SeatPieces } from "./seatPieces.ts";
import type { SideChecks } from "./sideChecks.ts";

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
  private readonly machine: Machine;
  private readonly a: Features;
  private readonly spot: Spot = { x: 0, y: 0 };

  constructor(private readonly checks: SideChecks) {
    this.pieces = checks.pieces;
    this.machine = checks.machine;
    this.a = this.machine.laidOut.loading;
  }

  /** Adds what element k blocks: before the bend is made, or (`finished`) after. */
  element(side: Side, k: number, formed: number, finished: boolean, room: Room): void {
    this.layOut(side, k, formed, finished);
    this.piece(this.a, room);
  }

  /** The same of an element that is known to overlap nothing. */
  heightsOf(side: Side, k: number, formed: number, finished: boolean, room: Room): void {
    this.layOut(side, k, formed, finished);
    this.heights(this.a, room);
  }

  private layOut(side: Side, k: number, formed: number, finished: boolean): void {
    if (side === "moving" && k === 0 && !finished) this.pieces.movingAtRest(this.a, 0, 0, FACE_INSET_MM);
    else this.pieces.element(this.a, { side, k, formed }, FOR_CONTACT, finished ? "finished" : "rest");
  }

  /**
   * Whether moving element k, with the bend finished, overlaps the leaf gone back to rest. `F` is the element at rest.
   * Clamp, bed and frame need no look when the sweep was free: the finished pose is one of those it passed.
   */
  finishedOverlapsLeaf(F: Features, k: number, formed: number): boolean {
    const { leaf } = this.machine;
    if (leaf.features.maxY <= 1e-9 && this.pieces.lowestFinished(F) >= 0) return false;
    this.pieces.element(this.a, { side: "moving", k, formed }, FOR_CONTACT, "finished");
    return sheetOverlapsBody(this.a, leaf, this.spot);
  }

  /** Adds what a piece of sheet blocks, where it stands. */
  piece(piece: Features, room: Room): void {
    for (const body of this.checks.clamp) room.overlaps ||= sheetOverlapsBody(piece, body, this.spot);
    for (const body of this.checks.still) room.overlaps ||= sheetOverlapsBody(piece, body, this.spot);
    this.heights(piece, room);
  }

  private heights(piece: Features, room: Room): void {
    const { liftMm } = this.machine.brake;
    for (const body of this.checks.clamp) blockHeights(piece, body, -1, liftMm, room.clamp);
    for (const body of this.checks.still) blockHeights(piece, body, 1, liftMm, room.sheet);
  }

  /** Adds what the bend zone itself blocks. */
  bendZone(finished: boolean, room: Room): void {
    this.pieces.bendZone(this.a, finished);
    this.piece(this.a, room);
  }

  /** Whether a room by itself lets the sheet in or out by the front. */
  lets(room: Room): boolean {
    return !room.overlaps && room.sheet.leastFree(0) + room.clamp.leastFree(0) <= this.machine.brake.liftMm;
  }

  /** The way of handling that the room of all pieces together leaves. */
  handling(moving: Room, clamped: Room, zone: Room): Handling {
    if (moving.overlaps || clamped.overlaps || zone.overlaps) return "blocked";
    const { liftMm, openEnds } = this.machine.brake;
    const sheet = leastFreeOf(moving.sheet, clamped.sheet, zone.sheet);
    const clamp = leastFreeOf(moving.clamp, clamped.clamp, zone.clamp);
    if (sheet + clamp <= liftMm) return "front";
    return openEnds ? "end" : "blocked";
  }
}

function leastFreeOf(a: BlockedHeights, b: BlockedHeights, c: BlockedHeights): number {
  // A height that is free of one list alone need not be free of the others: take turns until all agree.
  let height = 0;
  for (;;) {
    const next = Math.max(a.leastFree(height), b.leastFree(height), c.leastFree(height));
    if (next === height || next === Infinity) return next;
    height = next;
  }
}
