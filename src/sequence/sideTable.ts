/**
 * What the checks say of one side of one seated bend, kept for every set of bends formed on that side.
 * A set is a path from the bend outward (sidePath.ts); what one more element adds is worked out once
 * and shared by all sets that begin alike, and where all the rest of the sheet keeps off the brake, it is not looked at.
 */
import { Beyond } from "../contact/beyond.ts";
import type { ClearanceChecks } from "../contact/clearance.ts";
import { FOR_CONTACT, type Side } from "../contact/element.ts";
import { ElementBox } from "../contact/elementBox.ts";
import { FACE_INSET_MM } from "../contact/gaps.ts";
import type { LoadingChecks, Room } from "../contact/loading.ts";
import { leadingDirection, trailingDirection } from "../contact/sector.ts";
import { type ContactRecord, noContact, type SideChecks } from "../contact/sideChecks.ts";
import { BARRED, Beginnings, FREE, FREE_ON } from "./beginnings.ts";
import { Pages } from "./pages.ts";
import { NO_WAY, OPEN, Rooms } from "./rooms.ts";
import { SideClearance } from "./sideClearance.ts";
import { FLAT_AT_BEND, formedOn, jointsOf } from "./sidePath.ts";
import { SideReach } from "./sideReach.ts";

/** In place of the beginning that decides for a side: it meets the brake, or can't be put in or taken out. */
export const BARRED_SIDE = 0;

export class SideTable {
  readonly joints: number;
  /** How far it reaches; only of sides that do not hit. */
  readonly reach: SideReach;
  private readonly kept: Beginnings;
  /** What is blocked before and after, by number; only where heights matter. */
  private readonly blocked: Pages<Int32Array>;
  private readonly rooms: Rooms;
  private readonly clear: SideClearance;
  private readonly openEnds: boolean;
  private readonly beyond: Beyond;
  private readonly box: ElementBox;
  /** The sector that is this side's own to fill: half of what the sweep leaves between the two sides. */
  private readonly fairRad: number;
  /** The side looked at last: by how many joints it was decided, and how. */
  private lastPath = 0;
  private lastJoints = 0;
  private lastDecided = BARRED_SIDE;
  /** By set of joints: how many of them decide, and two more; 1 where it is barred, 0 not known. */
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
    this.blocked = new Pages(this.joints, (beginnings) => new Int32Array(2 * beginnings));
    this.rooms = new Rooms(loading);
    this.beyond = new Beyond(checks, side);
    this.box = new ElementBox(checks, side);
    this.reach = new SideReach(side, checks, this.beyond.mostMm());
    this.clear = new SideClearance(side, this.joints, this.kept, this.beyond, measure);
    const half = Math.max(0, Math.PI - checks.seat.sweepRad) / 2;
    this.fairRad = side === "moving" ? half : Math.PI - half;
  }

  /** The beginning that decides what is asked of a whole side; BARRED_SIDE where it hits. */
  decidedBy(path: number): number {
    const { decided } = this;
    if (!decided) return this.decide(path);
    const at = path - (1 << this.joints);
    const known = decided[at]!;
    if (known === 1) return BARRED_SIDE;
    if (known !== 0) return path >>> (this.joints - (known - 2));
    const by = this.decide(path);
    decided[at] = by === BARRED_SIDE ? 1 : jointsOf(by) + 2;
    return by;
  }

  /** Keeps what decides for every set of joints, a byte each: for searches that ask of all of them. */
  keepDecided(): void {
    this.decided ??= new Uint8Array(1 << this.joints);
  }

  private decide(path: number): number {
    const { joints } = this;
    let k = 0;
    if (this.lastPath !== 0) {
      // What begins alike, up to the joint that decided last, was looked at for the side before.
      const alike = joints - jointsOf(2 * (path ^ this.lastPath) + 1);
      if (alike >= this.lastJoints) return this.lastDecided;
      k = alike + 1;
    }
    this.lastPath = path;
    for (; ; k++) {
      const state = this.stateOf(path >>> (joints - k));
      if (state === FREE && k < joints) continue;
      this.lastJoints = k;
      this.lastDecided = state === BARRED ? BARRED_SIDE : path >>> (joints - k);
      return this.lastDecided;
    }
  }

  /** What this side blocks by a beginning, before the bend is made or after; only of sides that do not hit. */
  room(path: number, finished: boolean): Room {
    return this.rooms.at(this.roomNumber(path, finished));
  }

  /** Whether it blocks nothing, before or after. */
  isOpen(path: number): boolean {
    return this.roomNumber(path, false) === OPEN && this.roomNumber(path, true) === OPEN;
  }

  /** Looks up the last of the elements of a beginning (sideReach.ts), be that known or not. */
  readLast(path: number): void {
    if (this.kept.state(path) === 0) {
      for (let beyond = jointsOf(path); beyond >= 0; beyond--) this.stateOf(path >>> beyond);
    }
    this.reach.lastOf(path);
  }

  /** Clearance of this side from the brake; Infinity where nothing is measured. */
  clearance(path: number): number {
    return this.clear.of(path);
  }

  /** A clearance from the brake that no set of joints formed beats. */
  mostClearance(): number {
    return this.clear.most();
  }

  private stateOf(path: number): number {
    const known = this.kept.state(path);
    if (known !== 0) return known;
    const state = this.workOut(path);
    this.kept.keepState(path, state);
    return state;
  }

  /** Looks at the last element of a beginning, those before it being free. */
  private workOut(path: number): number {
    const [k, formed] = [jointsOf(path), formedOn(path)];
    if (!this.isFree(path, k, formed)) return BARRED;
    return k < this.joints && this.restIsFree(path, k, formed) ? FREE_ON : FREE;
  }

  /** Whether element `k` misses the brake and leaves a way in and out; keeps what it reaches and blocks. */
  private isFree(path: number, k: number, formed: number): boolean {
    const inRun = this.checks.inRun(this.side, k, formed);
    if (inRun || !this.keepsOff(path, k, formed)) return this.isFreeLaidOut(path, k, formed, inRun);
    return this.openEnds || this.leavesHeights(path, k, formed, true);
  }

  /** Whether the element, which is not in the run, is seen to meet nothing without being laid out; keeps what it reaches. */
  private keepsOff(path: number, k: number, formed: number): boolean {
    const { box, checks } = this;
    if (checks.pieces.leafRising) return false;
    box.take(k, formed);
    if (!box.keepsOff()) return false;
    this.reach.keep(path, false, box.near, box.far, box.direction);
    return true;
  }

  private isFreeLaidOut(path: number, k: number, formed: number, inRun: boolean): boolean {
    const { record, checks, side, loading } = this;
    const { pieces, a } = checks;
    record.phiRad = Number.POSITIVE_INFINITY;
    checks.withBrake(side, k, formed, record);
    if (record.phiRad < Number.POSITIVE_INFINITY) return false;
    // The check leaves the element as it lies at rest in `a`, but for what the bend zone may grow into.
    if (side === "moving" && k === 0) pieces.movingAtRest(a, 0, 0, FACE_INSET_MM);
    else if (side === "moving" && pieces.startCut) pieces.element(a, { side, k, formed }, FOR_CONTACT);
    const direction =
      side === "moving"
        ? leadingDirection(a, this.reach.slideMm, FACE_INSET_MM)
        : trailingDirection(a, FACE_INSET_MM);
    this.reach.keep(path, inRun, a.near - FACE_INSET_MM, a.far + FACE_INSET_MM, direction);
    // Sliding in along the bend line is always left where ends are open: then only a wrong seat blocks.
    if (this.openEnds) return side === "clamped" || !loading.finishedOverlapsLeaf(a, k, formed);
    return this.leavesHeights(path, k, formed, false);
  }

  /** Whether all that may come beyond flat `k` keeps off the brake and in this side's sector; takes it into what is kept. */
  private restIsFree(path: number, k: number, formed: number): boolean {
    const { beyond } = this;
    const angle = this.reach.angle(path);
    beyond.after(k, formed);
    const bound = this.side === "moving" ? Math.max(angle, this.fairRad) : Math.min(angle, this.fairRad);
    if (!this.isFreeThere(bound)) return false;
    this.reach.widen(path, beyond.near, beyond.direction);
    return true;
  }

  /** Whether what `beyond` has taken in keeps off the brake, blocks no height and stays on this side of a direction. */
  private isFreeThere(boundRad: number): boolean {
    const { beyond } = this;
    // A direction that is not known is not a number: no comparison holds.
    if (!(this.side === "moving" ? beyond.direction <= boundRad : beyond.direction >= boundRad)) return false;
    return beyond.keepsOff() && (this.openEnds || (beyond.letsPass(false) && beyond.letsPass(true)));
  }

  private roomNumber(path: number, finished: boolean): number {
    if (this.openEnds) return OPEN;
    return this.blocked.of(path)[2 * this.blocked.at(path) + (finished ? 1 : 0)]!;
  }

  /**
   * Takes in the heights that element `k` blocks; whether any are left that let this side pass. The element lies in the
   * checks' `a`, or is known to overlap nothing and lies in the box.
   */
  private leavesHeights(path: number, k: number, formed: number, boxed: boolean): boolean {
    const load = this.roomWith(path, k, formed, false, boxed);
    const unload =
      this.side === "moving" && load !== NO_WAY ? this.roomWith(path, k, formed, true, boxed) : load;
    const page = this.blocked.of(path);
    const at = 2 * this.blocked.at(path);
    page[at] = load;
    page[at + 1] = unload;
    return unload !== NO_WAY;
  }

  /** Number of the room that is left with element `k`. */
  private roomWith(path: number, k: number, formed: number, finished: boolean, boxed: boolean): number {
    const { side, checks, loading, rooms } = this;
    const before = path === FLAT_AT_BEND ? OPEN : this.roomNumber(path >>> 1, finished);
    if (boxed && this.box.letsPass(finished)) return before;
    const room = rooms.ofElement(before);
    if (boxed) loading.heightsOf(side, k, formed, finished, room);
    else if (finished) loading.element(side, k, formed, finished, room);
    else loading.piece(checks.a, room);
    return rooms.joined(before);
  }
}
