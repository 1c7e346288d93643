/**
 * What the checks say of one side of one seated bend, kept for every set of bends formed on that side.
 * A set is a path from the bend outward (joint by joint: formed or flat); what one more element adds is worked out once
 * and shared by all sets that begin alike, and where all the rest of the sheet keeps off the brake, it is not looked at.
 */
import { Beyond } from "../contact/beyond.ts";
import type { ClearanceChecks } from "../contact/clearance.ts";
import { FACE_INSET_MM } from "../contact/gaps.ts";
import type { LoadingChecks, Room } from "../contact/loading.ts";
import type { Side } from "../contact/seatPieces.ts";
import { leadingDirection, trailingDirection } from "../contact/sector.ts";
import { type ContactRecord, noContact, type SideChecks, WHOLE } from "../contact/sideChecks.ts";
import {
  ANGLE,
  BARRED,
  Beginnings,
  LAST_ANGLE,
  LAST_FAR,
  LAST_NEAR,
  LOAD_ROOM,
  NEAR,
  type Page,
  RISE,
  STATE,
  STATE_BITS,
  UNLOAD_ROOM,
} from "./beginnings.ts";
import { OPEN, Rooms } from "./rooms.ts";
import { SideClearance } from "./sideClearance.ts";

const UNKNOWN = 0;
const FREE = 1;
/** Free, and so is whatever comes beyond. */
const FREE_ON = 3;

/** In place of the joints that decide for a side: it meets the brake, or can't be put in or taken out. */
export const BARRED_SIDE = -1;

/** In place of the last element's direction: it lies in the run, low over bed or leaf. */
const IN_RUN = -1;

export class SideTable {
  readonly joints: number;
  /** The last element of what `lastOf` was asked: distances from the pivot, direction; −1 where it lies in the run. */
  lastNear = 0;
  lastFar = 0;
  lastAngle = 0;
  private readonly kept: Beginnings;
  private readonly rooms: Rooms;
  private readonly clear: SideClearance;
  private readonly openEnds: boolean;
  private readonly beyond: Beyond;
  /** The sector that is this side's own to fill: half of what the sweep leaves between the two sides. */
  private readonly fairRad: number;
  /** How far this side slides inward, and the height of a run's upper face over the pivot. */
  private readonly slideMm: number;
  private readonly runTopMm: number;
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
    this.kept = new Beginnings(!this.openEnds);
    this.rooms = new Rooms(loading);
    this.beyond = new Beyond(checks, side);
    this.clear = new SideClearance(side, this.joints, this.kept, this.beyond, measure);
    this.slideMm = side === "moving" ? checks.pieces.turning.maxInward : 0;
    this.runTopMm = Math.max(0, checks.seat.thicknessMm - checks.seat.pivot.y);
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

  /** Moving side: largest direction from the pivot at rest, in radians from the leaf. Clamped: smallest one. */
  reachAngle(k: number, formed: number): number {
    return this.real(k, formed, ANGLE);
  }

  /** Least distance from the pivot of all that lies beyond the run along bed or leaf. */
  offRunNear(k: number, formed: number): number {
    return this.real(k, formed, NEAR);
  }

  /** Direction in which a run of the other side is seen so far out. */
  offRunRise(k: number, formed: number): number {
    return this.real(k, formed, RISE);
  }

  /** Direction in which a run of sheet is seen, above bed or leaf, where it may meet what this side has so far out. */
  runRises(nearMm: number): number {
    const from = nearMm - this.slideMm;
    return from > this.runTopMm ? Math.asin(this.runTopMm / from) : Math.PI / 2;
  }

  /** How far this side reaches into the sector that the sweep leaves free, with what that asks of the other's run. */
  reachInto(k: number, formed: number): number {
    const angle = this.reachAngle(k, formed);
    return (this.side === "moving" ? angle : Math.PI - angle) + this.offRunRise(k, formed);
  }

  /** Looks up the last of the elements that the first `k` joints end with, into lastNear, lastFar and lastAngle. */
  lastOf(k: number, formed: number): void {
    const { whole, real } = this.kept.page(k, formed);
    const at = this.kept.at(formed);
    if ((whole[at + STATE]! & STATE_BITS) === UNKNOWN) {
      for (let j = 0; j <= k; j++) this.stateOf(j, formed & ((1 << j) - 1));
    }
    this.lastNear = real[at + LAST_NEAR]!;
    this.lastFar = real[at + LAST_FAR]!;
    this.lastAngle = real[at + LAST_ANGLE]!;
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
    const page = this.kept.page(k, formed);
    const at = this.kept.at(formed);
    const known = page.whole[at + STATE]! & STATE_BITS;
    if (known !== UNKNOWN) return known;
    const state = this.workOut(page, at, k, formed);
    page.whole[at + STATE] = page.whole[at + STATE]! | state;
    return state;
  }

  /** Looks at element `k`, those before it being free. */
  private workOut(page: Page, at: number, k: number, formed: number): number {
    if (!this.isFree(page, at, k, formed)) return BARRED;
    return k < this.joints && this.restIsFree(page, at, k, formed) ? FREE_ON : FREE;
  }

  /** Whether element `k`, laid out, misses the brake and leaves a way in and out; keeps what it reaches and blocks. */
  private isFree(page: Page, at: number, k: number, formed: number): boolean {
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
        ? leadingDirection(a, this.slideMm, FACE_INSET_MM)
        : trailingDirection(a, FACE_INSET_MM);
    this.keepReach(page, at, k, formed, a.near - FACE_INSET_MM, a.far + FACE_INSET_MM, direction);
    // Sliding in along the bend line is always left where ends are open: then only a wrong seat blocks.
    if (this.openEnds) return side === "clamped" || !loading.finishedOverlapsLeaf(a, k, formed);
    return this.leavesHeights(page, at, k, formed);
  }

  /** Whether all that may come beyond flat `k` keeps off the brake and in this side's sector; takes it into what is kept. */
  private restIsFree({ real }: Page, at: number, k: number, formed: number): boolean {
    const { beyond } = this;
    const angle = real[at + ANGLE]!;
    const moving = this.side === "moving";
    beyond.after(k, formed);
    if (!this.isFreeThere(moving ? Math.max(angle, this.fairRad) : Math.min(angle, this.fairRad)))
      return false;
    real[at + ANGLE] = moving
      ? Math.max(angle, beyond.direction + 1e-6)
      : Math.min(angle, beyond.direction - 1e-6);
    real[at + NEAR] = Math.min(real[at + NEAR]!, beyond.near * (1 - 1e-6));
    real[at + RISE] = this.runRises(real[at + NEAR]!) + 1e-6;
    return true;
  }

  /** Whether what `beyond` has taken in keeps off the brake, blocks no height and stays on this side of a direction. */
  private isFreeThere(boundRad: number): boolean {
    const { beyond } = this;
    // A direction that is not known is not a number: no comparison holds.
    if (!(this.side === "moving" ? beyond.direction <= boundRad : beyond.direction >= boundRad)) return false;
    return beyond.keepsOff() && (this.openEnds || (beyond.letsPass(false) && beyond.letsPass(true)));
  }

  private real(k: number, formed: number, figure: number): number {
    const set = formed & ((1 << k) - 1);
    return this.kept.page(k, set).real[this.kept.at(set) + figure]!;
  }

  private roomNumber(k: number, formed: number, finished: boolean): number {
    if (this.openEnds) return OPEN;
    const set = formed & ((1 << k) - 1);
    return this.kept.page(k, set).whole[this.kept.at(set) + (finished ? UNLOAD_ROOM : LOAD_ROOM)]!;
  }

  private roomBefore(k: number, formed: number, finished: boolean): number {
    return k === 0 ? OPEN : this.roomNumber(k - 1, formed, finished);
  }

  /** Takes in the heights that element `k` blocks; whether any are left that let this side pass. */
  private leavesHeights(page: Page, at: number, k: number, formed: number): boolean {
    const { side, checks, loading, rooms } = this;
    loading.piece(checks.a, rooms.ofElement());
    const load = rooms.joined(this.roomBefore(k, formed, false));
    let unload = load;
    if (side === "moving") {
      loading.element(side, k, formed, true, rooms.ofElement());
      unload = rooms.joined(this.roomBefore(k, formed, true));
    }
    page.whole[at + LOAD_ROOM] = load;
    page.whole[at + UNLOAD_ROOM] = unload;
    return rooms.letsPass(load) && rooms.letsPass(unload);
  }

  /** Keeps directions and distances from the pivot, for telling quickly that the two sides stay apart. */
  private keepReach(
    { real }: Page,
    at: number,
    k: number,
    formed: number,
    nearMm: number,
    farMm: number,
    directionRad: number,
  ): void {
    const moving = this.side === "moving";
    const inRun = this.checks.inRun(this.side, k, formed);
    let angle = k > 0 ? this.reachAngle(k - 1, formed) : moving ? 0 : Math.PI;
    let near = k > 0 ? this.offRunNear(k - 1, formed) : Number.POSITIVE_INFINITY;
    if (!inRun) {
      near = Math.min(near, nearMm);
      angle = moving ? Math.max(angle, directionRad) : Math.min(angle, directionRad);
    }
    // Rounded to be safe on the side that asks for the exact check.
    real[at + ANGLE] = moving ? angle + 1e-6 : angle - 1e-6;
    real[at + NEAR] = near * (1 - 1e-6);
    real[at + RISE] = this.runRises(real[at + NEAR]!) + 1e-6;
    real[at + LAST_NEAR] = inRun ? 0 : Math.max(0, nearMm) * (1 - 1e-6);
    real[at + LAST_FAR] = inRun ? Number.POSITIVE_INFINITY : farMm * (1 + 1e-6);
    real[at + LAST_ANGLE] = inRun ? IN_RUN : Math.max(0, moving ? directionRad + 1e-6 : directionRad - 1e-6);
  }
}
