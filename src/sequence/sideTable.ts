/**
 * What the checks say of one side of one seated bend, kept for every set of bends formed on that side.
 * A set is a path from the bend outward (joint by joint: formed or flat); what one more element adds is worked out once
 * and shared by all sets that begin alike, and where all the rest of the sheet keeps off the brake, it is not looked at.
 */
import { Beyond } from "../contact/beyond.ts";
import type { ClearanceChecks } from "../contact/clearance.ts";
import { ElementBox } from "../contact/elementBox.ts";
import { FACE_INSET_MM } from "../contact/gaps.ts";
import type { LoadingChecks, Room } from "../contact/loading.ts";
import type { Side } from "../contact/seatPieces.ts";
import { leadingDirection, trailingDirection } from "../contact/sector.ts";
import { type ContactRecord, noContact, type SideChecks, WHOLE } from "../contact/sideChecks.ts";
import { BARRED, Beginnings, FREE, FREE_ON } from "./beginnings.ts";
import { Pages } from "./pages.ts";
import { NO_WAY, OPEN, Rooms } from "./rooms.ts";
import { SideClearance } from "./sideClearance.ts";
import { SideReach } from "./sideReach.ts";

/** In place of the joints that decide for a side: it meets the brake, or can't be put in or taken out. */
export const BARRED_SIDE = -1;

export class SideTable {
  readonly joints: number;
  /** How far it reaches; only of sides that do not hit. */
  readonly reach: SideReach;
  private readonly kept: Beginnings;
  /** What is blocked before and after, by number; only where heights matter. */
  private readonly blocked = new Pages((beginnings) => new Int32Array(2 * beginnings));
  private readonly rooms: Rooms;
  private readonly clear: SideClearance;
  private readonly openEnds: boolean;
  private readonly beyond: Beyond;
  private readonly box: ElementBox;
  /** The sector that is this side's own to fill: half of what the sweep leaves between the two sides. */
  private readonly fairRad: number;
  /** The set looked at last: by how many joints it was decided, and how. */
  private lastFormed = 0;
  private lastDecided = -1;
  private lastAnswer = 0;
  /** By joints formed: how many of them decide, and two more; 0 not known. */
  private decided: Uint8Array | undefined;
  private readonly record: ContactRecord = noContact();

  constructor(
    private readonly side: Side,
    private readonly checks: SideChecks,
    private readonly loading: LoadingChecks,
    measure: ClearanceChecks,
  ) {
    this.joints = checks.pieces.chainOf(side).joints;
    this.openEnds = checks.machine.brake.openEnds;
    this.kept = new Beginnings(this.joints);
    this.rooms = new Rooms(loading);
    this.beyond = new Beyond(checks, side);
    this.box = new ElementBox(checks, side);
    this.reach = new SideReach(side, checks, this.beyond.mostMm());
    this.clear = new SideClearance(side, this.joints, this.kept, this.beyond, measure);
    const half = Math.max(0, Math.PI - checks.seat.sweepRad) / 2;
    this.fairRad = side === "moving" ? half : Math.PI - half;
  }

  /** How many joints, nearest first, decide what is asked of this side with `formed` made; BARRED_SIDE where it hits. */
  decidedBy(formed: number): number {
    const { decided } = this;
    if (!decided) return this.decide(formed);
    const known = decided[formed]!;
    if (known !== 0) return known - 2;
    const k = this.decide(formed);
    decided[formed] = k + 2;
    return k;
  }

  /** Keeps what decides for every set of joints, a byte each: for searches that ask of all of them. */
  keepDecided(): void {
    this.decided ??= new Uint8Array(1 << this.joints);
  }

  private decide(formed: number): number {
    const differs = formed ^ this.lastFormed;
    // What begins alike, up to the joint that decided last, was looked at for the set before.
    let alike = differs === 0 ? this.joints : 31 - Math.clz32(differs & -differs);
    if (this.lastDecided < 0) alike = -1;
    else if (alike >= this.lastDecided) return this.lastAnswer;
    this.lastFormed = formed;
    for (let k = alike + 1; k <= this.joints; k++) {
      const state = this.stateOf(k, formed & ((1 << k) - 1));
      if (state === FREE && k < this.joints) continue;
      this.lastDecided = k;
      this.lastAnswer = state === BARRED ? BARRED_SIDE : k;
      return this.lastAnswer;
    }
    return this.lastAnswer;
  }

  /** What this side blocks by its first `k` joints, before the bend is made or after; only of sides that do not hit. */
  room(k: number, formed: number, finished: boolean): Room {
    return this.rooms.at(this.roomNumber(k, formed, finished));
  }

  /** Whether it blocks nothing, before or after. */
  isOpen(k: number, formed: number): boolean {
    return this.roomNumber(k, formed, false) === OPEN && this.roomNumber(k, formed, true) === OPEN;
  }

  /** Looks up the last of the elements that the first `k` joints end with (sideReach.ts), be the beginning known or not. */
  readLast(k: number, formed: number): void {
    if (this.kept.state(k, formed) === 0) {
      for (let j = 0; j <= k; j++) this.stateOf(j, formed & ((1 << j) - 1));
    }
    this.reach.lastOf(k, formed);
  }

  /** Clearance of this side from the brake; Infinity where nothing is measured. */
  clearance(formed: number): number {
    return this.clear.of(formed);
  }

  /** A clearance from the brake that no set of joints formed beats. */
  mostClearance(): number {
    return this.clear.most();
  }

  private stateOf(k: number, formed: number): number {
    const known = this.kept.state(k, formed);
    if (known !== 0) return known;
    const state = this.workOut(k, formed);
    this.kept.keepState(k, formed, state);
    return state;
  }

  /** Looks at element `k`, those before it being free. */
  private workOut(k: number, formed: number): number {
    if (!this.isFree(k, formed)) return BARRED;
    return k < this.joints && this.restIsFree(k, formed) ? FREE_ON : FREE;
  }

  /** Whether element `k` misses the brake and leaves a way in and out; keeps what it reaches and blocks. */
  private isFree(k: number, formed: number): boolean {
    const inRun = this.checks.inRun(this.side, k, formed);
    if (inRun || !this.keepsOff(k, formed)) return this.isFreeLaidOut(k, formed, inRun);
    return this.openEnds || this.leavesHeights(k, formed, true);
  }

  /** Whether the element, which is not in the run, is seen to meet nothing without being laid out; keeps what it reaches. */
  private keepsOff(k: number, formed: number): boolean {
    const { box, checks } = this;
    if (checks.pieces.leafRising) return false;
    box.take(k, formed);
    if (!box.keepsOff()) return false;
    this.reach.keep(k, formed, false, box.near, box.far, box.direction);
    return true;
  }

  private isFreeLaidOut(k: number, formed: number, inRun: boolean): boolean {
    const { record, checks, side, loading } = this;
    const { pieces, a } = checks;
    record.phiRad = Number.POSITIVE_INFINITY;
    checks.withBrake(side, k, formed, record);
    if (record.phiRad < Number.POSITIVE_INFINITY) return false;
    // The check leaves the element as it lies at rest in `a`, but for what the bend zone may grow into.
    if (side === "moving" && k === 0) pieces.firstFlatAtRest(a, FACE_INSET_MM);
    else if (side === "moving" && pieces.startCut)
      pieces.element(a, side, k, formed, WHOLE, FACE_INSET_MM, false);
    const direction =
      side === "moving"
        ? leadingDirection(a, this.reach.slideMm, FACE_INSET_MM)
        : trailingDirection(a, FACE_INSET_MM);
    this.reach.keep(k, formed, inRun, a.near - FACE_INSET_MM, a.far + FACE_INSET_MM, direction);
    // Sliding in along the bend line is always left where ends are open: then only a wrong seat blocks.
    if (this.openEnds) return side === "clamped" || !loading.finishedOverlapsLeaf(a, k, formed);
    return this.leavesHeights(k, formed, false);
  }

  /** Whether all that may come beyond flat `k` keeps off the brake and in this side's sector; takes it into what is kept. */
  private restIsFree(k: number, formed: number): boolean {
    const { beyond } = this;
    const angle = this.reach.angle(k, formed);
    beyond.after(k, formed);
    const bound = this.side === "moving" ? Math.max(angle, this.fairRad) : Math.min(angle, this.fairRad);
    if (!this.isFreeThere(bound)) return false;
    this.reach.widen(k, formed, beyond.near, beyond.direction);
    return true;
  }

  /** Whether what `beyond` has taken in keeps off the brake, blocks no height and stays on this side of a direction. */
  private isFreeThere(boundRad: number): boolean {
    const { beyond } = this;
    // A direction that is not known is not a number: no comparison holds.
    if (!(this.side === "moving" ? beyond.direction <= boundRad : beyond.direction >= boundRad)) return false;
    return beyond.keepsOff() && (this.openEnds || (beyond.letsPass(false) && beyond.letsPass(true)));
  }

  private roomNumber(k: number, formed: number, finished: boolean): number {
    if (this.openEnds) return OPEN;
    const set = formed & ((1 << k) - 1);
    return this.blocked.of(k, set)[2 * this.blocked.at(k, set) + (finished ? 1 : 0)]!;
  }

  /**
   * Takes in the heights that element `k` blocks; whether any are left that let this side pass. The element lies in the
   * checks' `a`, or is known to overlap nothing and lies in the box.
   */
  private leavesHeights(k: number, formed: number, boxed: boolean): boolean {
    const load = this.roomWith(k, formed, false, boxed);
    const unload = this.side === "moving" && load !== NO_WAY ? this.roomWith(k, formed, true, boxed) : load;
    const page = this.blocked.of(k, formed);
    const at = 2 * this.blocked.at(k, formed);
    page[at] = load;
    page[at + 1] = unload;
    return unload !== NO_WAY;
  }

  /** Number of the room that is left with element `k`. */
  private roomWith(k: number, formed: number, finished: boolean, boxed: boolean): number {
    const { side, checks, loading, rooms } = this;
    const before = k === 0 ? OPEN : this.roomNumber(k - 1, formed, finished);
    if (boxed && this.box.letsPass(finished)) return before;
    const room = rooms.ofElement(before);
    if (boxed) loading.heightsOf(side, k, formed, finished, room);
    else if (finished) loading.element(side, k, formed, finished, room);
    else loading.piece(checks.a, room);
    return rooms.joined(before);
  }
}
