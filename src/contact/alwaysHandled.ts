/**
 * Whether a part gets in and out at one stage of an order however its flats are off within some box: proved, not tried.
 * Every piece is taken at all its places at once (sweptPiece.ts); what blocks no height for that blocks none for any mix.
 * Never yes where some mix is blocked; no may be too careful by what the outlines are larger than the pieces.
 */
import { type Seat, seatFor } from "../motion/seat.ts";
import type { Stage } from "../motion/stages.ts";
import { formedJoints } from "../part/chain.ts";
import type { Mm } from "../units/quantity.ts";
import { blockHeights } from "./blockedHeights.ts";
import { FOR_CONTACT, type Side } from "./element.ts";
import { Features } from "./features.ts";
import { FACE_INSET_MM } from "./gaps.ts";
import { LoadingChecks, openRoom, type Room } from "./loading.ts";
import type { Machine } from "./machine.ts";
import type { Spot } from "./overlap.ts";
import { SideChecks } from "./sideChecks.ts";
import { bendCorners, Drift, hullOverlaps, pieceOf, straightCorners } from "./sweptPiece.ts";

/**
 * Whether every part whose flats are off by at most `halfMm[flat]` either way goes in and comes out.
 */
export function alwaysHandled(stage: Stage, halfMm: readonly Mm[], machine: Machine): boolean {
  const { part, brake, bendsDone, bend, clamped, begun } = stage;
  const seat = seatFor(part, brake, bend, clamped, begun?.fromDeg);
  const goesIn = begun ? seatFor(begun.part, brake, bend, clamped) : seat;
  const pass = (of: Seat, finished: boolean) =>
    new SweptHandling(of, bendsDone, halfMm, machine, finished).isFree();
  return pass(goesIn, begun !== undefined) && pass(seat, true);
}

class SweptHandling {
  private readonly checks: SideChecks;
  private readonly room: Room = openRoom();
  private readonly piece = new Features(12, 12, 4);
  private readonly spot: Spot = { x: 0, y: 0 };

  constructor(
    private readonly seat: Seat,
    private readonly bendsDone: number,
    private readonly halfMm: readonly Mm[],
    private readonly machine: Machine,
    private readonly finished: boolean,
  ) {
    this.checks = new SideChecks(seat, machine);
  }

  isFree(): boolean {
    this.takeIn("moving");
    this.takeIn("clamped");
    const loading = new LoadingChecks(this.checks);
    const zone = openRoom();
    loading.bendZone(this.finished, zone);
    return loading.handling(this.room, openRoom(), zone) !== "blocked";
  }

  /** Takes in the pieces of one side. */
  private takeIn(side: Side): void {
    const { checks, seat, piece, halfMm } = this;
    const chain = checks.pieces.chainOf(side);
    const formed = formedJoints(chain, this.bendsDone);
    const halfThickMm = seat.thicknessMm / 2 - FACE_INSET_MM;
    const drift = new Drift();
    for (let k = 0; k <= chain.joints; k++) {
      this.layOut(side, k, formed);
      const half = halfMm[chain.flatNumber[k]!] ?? 0;
      for (const corners of bendCorners(piece)) this.block(drift.over(corners));
      if (!piece.hasCore) {
        // The first flat lies wholly in the bend zone; at rest it leads straight out.
        drift.add(1, 0, half);
        continue;
      }
      this.block(drift.over(straightCorners(piece, halfThickMm, half)));
      const [dx, dy] = [piece.coreX2 - piece.coreX1, piece.coreY2 - piece.coreY1];
      const length = Math.hypot(dx, dy);
      drift.add(dx / length, dy / length, half);
    }
  }

  private layOut(side: Side, k: number, formed: number): void {
    const { pieces } = this.checks;
    const { piece, finished } = this;
    if (side === "moving" && k === 0 && !finished) pieces.movingAtRest(piece, 0, 0, FACE_INSET_MM);
    else pieces.element(piece, { side, k, formed }, FOR_CONTACT, finished ? "finished" : "rest");
  }

  private block(hull: ReturnType<Drift["over"]>): void {
    const { machine, checks, room, spot } = this;
    const { liftMm } = machine.brake;
    const piece = pieceOf(hull);
    for (const body of checks.clamp) {
      room.overlaps ||= hullOverlaps(hull, piece, body, spot);
      blockHeights(piece, body, -1, liftMm, room.clamp);
    }
    for (const body of checks.still) {
      room.overlaps ||= hullOverlaps(hull, piece, body, spot);
      blockHeights(piece, body, 1, liftMm, room.sheet);
    }
  }
}
