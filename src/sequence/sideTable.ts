/**
 * What the checks say of one side of one seated bend, kept for every set of bends formed on that side.
 * A set is a path from the bend outward (joint by joint: formed or flat); what one more element adds is worked out once
 * and shared by all sets that begin alike, and where all the rest of the sheet keeps off the brake, it is not looked at.
 */
import { Beyond } from "../contact/beyond.ts";
import type { ClearanceChecks, ClearanceRecord } from "../contact/clearance.ts";
import { FACE_INSET_MM } from "../contact/gaps.ts";
import { isOpen, type LoadingChecks, openRoom, type Room } from "../contact/loading.ts";
import type { Side } from "../contact/seatPieces.ts";
import { leadingDirection, trailingDirection } from "../contact/sector.ts";
import { type ContactRecord, noContact, type SideChecks } from "../contact/sideChecks.ts";

const UNKNOWN = 0;
const FREE = 1;
const HITS = 2;
/** Free, and so is whatever comes beyond. */
const FREE_ON = 3;

/** Nothing blocked, and the sheet in the brake's way where it is seated: the first two in every table of rooms. */
const OPEN = 0;
const SEATED_WRONG = 1;

/** In place of the joints that decide for a side: it meets the brake. */
export const MEETS_BRAKE = -1;

/** What is kept by the joints formed, for one number of joints; made when first asked for, as few reach far in short trials. */
class Level {
  readonly state: Uint8Array;
  readonly loadRoom: Int32Array;
  readonly unloadRoom: Int32Array;
  readonly angle: Float32Array;
  readonly near: Float32Array;
  /** Clearance so far; 0 not known, −1 for a clearance of 0. */
  clear: Float32Array | undefined;
  /** Where the rest can't lower the clearance. */
  clearOn: Uint8Array | undefined;

  constructor(joints: number, side: Side) {
    const sets = 1 << joints;
    this.state = new Uint8Array(sets);
    this.loadRoom = new Int32Array(sets);
    this.unloadRoom = side === "moving" ? new Int32Array(sets) : this.loadRoom;
    this.angle = new Float32Array(sets);
    this.near = new Float32Array(sets);
  }
}

export class SideTable {
  readonly joints: number;
  private readonly levels: Level[] = [];
  private readonly rooms: Room[] = [openRoom(), { ...openRoom(), overlaps: true }];
  private readonly openEnds: boolean;
  private readonly beyond: Beyond;
  /** The sector that is this side's own to fill: half of what the sweep leaves between the two sides. */
  private readonly fairRad: number;
  /** How far this side slides inward, and the height of a run's upper face over the pivot. */
  private readonly slideMm: number;
  private readonly runTopMm: number;
  private readonly record: ContactRecord = noContact();
  private readonly measured: ClearanceRecord = { mm: 0, partX: 0, partY: 0, otherX: 0, otherY: 0 };
  /** What one more element blocks; kept for the next as long as nothing was put into it. */
  private own: Room | undefined;

  constructor(
    private readonly side: Side,
    private readonly checks: SideChecks,
    private readonly loading: LoadingChecks,
    private readonly measure: ClearanceChecks,
  ) {
    this.joints = checks.pieces.chainOf(side).joints;
    this.openEnds = checks.machine.brake.openEnds;
    this.beyond = new Beyond(checks, side);
    this.slideMm = side === "moving" ? checks.pieces.turning.maxInward : 0;
    this.runTopMm = checks.seat.thicknessMm - checks.seat.pivot.y;
    const half = Math.max(0, Math.PI - checks.seat.sweepRad) / 2;
    this.fairRad = side === "moving" ? half : Math.PI - half;
  }

  /** How many joints, nearest first, decide what is asked of this side with `formed` made; MEETS_BRAKE where it hits. */
  decidedBy(formed: number): number {
    for (let k = 0; k <= this.joints; k++) {
      const state = this.stateOf(k, formed & ((1 << k) - 1));
      if (state === HITS) return MEETS_BRAKE;
      if (state === FREE_ON) return k;
    }
    return this.joints;
  }

  /** What this side blocks before the bend is made, by the first `k` joints; only of sides that do not hit. */
  roomToLoad(k: number, formed: number): Room {
    return this.rooms[this.levels[k]!.loadRoom[formed & ((1 << k) - 1)]!]!;
  }

  /** What this side blocks after the bend is made; only of sides that do not hit. */
  roomToUnload(k: number, formed: number): Room {
    return this.rooms[this.levels[k]!.unloadRoom[formed & ((1 << k) - 1)]!]!;
  }

  /** Whether it blocks nothing, before or after. */
  isOpen(k: number, formed: number): boolean {
    const [level, at] = [this.levels[k]!, formed & ((1 << k) - 1)];
    return level.loadRoom[at] === OPEN && level.unloadRoom[at] === OPEN;
  }

  /** Moving side: largest direction from the pivot at rest, in radians from the leaf. Clamped: smallest one. */
  reachAngle(k: number, formed: number): number {
    return this.levels[k]!.angle[formed & ((1 << k) - 1)]!;
  }

  /** Least distance from the pivot of all that lies beyond the run along bed or leaf. */
  offRunNear(k: number, formed: number): number {
    return this.levels[k]!.near[formed & ((1 << k) - 1)]!;
  }

  /** Direction in which a run of sheet is seen, above bed or leaf, so far out that it may meet what this side has off its run. */
  runRises(offRunNearMm: number): number {
    const from = offRunNearMm - this.slideMm;
    return from > this.runTopMm ? Math.asin(Math.max(0, this.runTopMm) / from) : Math.PI / 2;
  }

  /** How far this side reaches into the sector that the sweep leaves free, with what that asks of the other's run. */
  reachInto(k: number, formed: number): number {
    const angle = this.reachAngle(k, formed);
    return (this.side === "moving" ? angle : Math.PI - angle) + this.runRises(this.offRunNear(k, formed));
  }

  /** Clearance of this side from the brake; Infinity where nothing is measured. */
  clearance(formed: number): number {
    let mm = Number.POSITIVE_INFINITY;
    for (let k = 0; k <= this.joints; k++) {
      const at = formed & ((1 << k) - 1);
      mm = this.clearanceSoFar(k, at, mm);
      if (this.levels[k]!.clearOn![at]) return mm;
    }
    return mm;
  }

  /** Clearance of the first elements, up to flat `k`; `before` is that of those before it. */
  clearanceSoFar(k: number, at: number, before: number): number {
    const level = this.level(k);
    level.clear ??= new Float32Array(1 << k);
    level.clearOn ??= new Uint8Array(1 << k);
    const known = level.clear[at]!;
    if (known !== 0) return Math.max(known, 0);
    const { measured } = this;
    measured.mm = before;
    this.measure.withBrake(this.side, k, at, measured);
    level.clear[at] = measured.mm === 0 ? -1 : measured.mm;
    const mm = Math.max(0, level.clear[at]!);
    // Flat k may wait for the next joint to be measured, so that what is beyond is taken from the flat before.
    if (k > 0 && k < this.joints) {
      this.beyond.after(k - 1, at & ((1 << (k - 1)) - 1));
      if (this.beyond.leastClearance() >= mm) level.clearOn[at] = 1;
    }
    return mm;
  }

  private level(k: number): Level {
    const known = this.levels[k];
    if (known) return known;
    const made = new Level(k, this.side);
    this.levels[k] = made;
    return made;
  }

  private stateOf(k: number, at: number): number {
    const { state } = this.level(k);
    const known = state[at]!;
    if (known !== UNKNOWN) return known;
    const worked = this.workOut(k, at);
    state[at] = worked;
    return worked;
  }

  /** Looks at element `k`, those before it being free. */
  private workOut(k: number, at: number): number {
    const { record, checks, side } = this;
    record.phiRad = Number.POSITIVE_INFINITY;
    checks.withBrake(side, k, at, record);
    if (record.phiRad < Number.POSITIVE_INFINITY) return HITS;
    // The check leaves the element as it lies at rest in `checks.a`, but for the first moving flat.
    if (side === "moving" && k === 0) checks.pieces.firstFlatAtRest(checks.a, FACE_INSET_MM);
    const level = this.level(k);
    this.reach(level, k, at);
    if (this.openEnds) {
      // Sliding in along the bend line is always left, so heights decide nothing: only a wrong seat blocks.
      const wrong = side === "moving" && this.loading.finishedOverlapsLeaf(checks.a, k, at);
      level.unloadRoom[at] = wrong ? SEATED_WRONG : this.roomBefore(k, at, true);
    } else this.heights(level, k, at);
    return k < this.joints && this.restIsFree(level, k, at) ? FREE_ON : FREE;
  }

  /** Whether all that may come beyond flat `k` keeps off the brake and in this side's sector; takes it into what is kept. */
  private restIsFree(level: Level, k: number, at: number): boolean {
    const { beyond, side } = this;
    beyond.after(k, at);
    if (!beyond.keepsOff()) return false;
    if (!this.openEnds && !(beyond.letsPass(false) && beyond.letsPass(true))) return false;
    const angle = level.angle[at]!;
    const { direction } = beyond;
    if (
      side === "moving"
        ? !(direction <= Math.max(angle, this.fairRad))
        : !(direction >= Math.min(angle, this.fairRad))
    ) {
      return false;
    }
    level.angle[at] =
      side === "moving" ? Math.max(angle, direction + 1e-6) : Math.min(angle, direction - 1e-6);
    level.near[at] = Math.min(level.near[at]!, beyond.near * (1 - 1e-6));
    return true;
  }

  private roomBefore(k: number, at: number, finished: boolean): number {
    if (k === 0) return OPEN;
    const { loadRoom, unloadRoom } = this.levels[k - 1]!;
    return (finished ? unloadRoom : loadRoom)[at & ((1 << (k - 1)) - 1)]!;
  }

  private heights(level: Level, k: number, at: number): void {
    const { side, checks } = this;
    this.own ??= openRoom();
    this.loading.piece(checks.a, this.own);
    level.loadRoom[at] = this.withOwn(this.roomBefore(k, at, false));
    if (side === "clamped") return;
    this.own ??= openRoom();
    this.loading.element(side, k, at, true, this.own);
    level.unloadRoom[at] = this.withOwn(this.roomBefore(k, at, true));
  }

  /** Number of the room that is left after what `own` blocks; what blocks nothing shares the number before. */
  private withOwn(before: number): number {
    const { own } = this;
    if (!own || isOpen(own)) return before;
    const shared = this.rooms[before]!;
    own.overlaps ||= shared.overlaps;
    own.sheet.addAll(shared.sheet);
    own.clamp.addAll(shared.clamp);
    this.own = undefined;
    if (sameRoom(own, shared)) return before;
    return this.rooms.push(own) - 1;
  }

  /** Directions and distances from the pivot, for telling quickly that the two sides stay apart. */
  private reach(level: Level, k: number, at: number): void {
    const moving = this.side === "moving";
    const { checks } = this;
    const before = at & ((1 << (k - 1)) - 1);
    let angle = k > 0 ? this.levels[k - 1]!.angle[before]! : moving ? 0 : Math.PI;
    let near = k > 0 ? this.levels[k - 1]!.near[before]! : Number.POSITIVE_INFINITY;
    if (!checks.inRun(this.side, k, at)) {
      near = Math.min(near, checks.a.near - FACE_INSET_MM);
      const slide = moving ? checks.pieces.turning.maxInward : 0;
      angle = moving
        ? Math.max(angle, leadingDirection(checks.a, slide, FACE_INSET_MM))
        : Math.min(angle, trailingDirection(checks.a, FACE_INSET_MM));
    }
    // Rounded to be safe on the side that asks for the exact check.
    level.angle[at] = moving ? angle + 1e-6 : angle - 1e-6;
    level.near[at] = near * (1 - 1e-6);
  }
}

function sameRoom(a: Room, b: Room): boolean {
  return (
    a.overlaps === b.overlaps &&
    sameHeights(a.sheet.bounds, b.sheet.bounds) &&
    sameHeights(a.clamp.bounds, b.clamp.bounds)
  );
}

function sameHeights(a: readonly number[], b: readonly number[]): boolean {
  return a.length === b.length && a.every((bound, i) => bound === b[i]);
}
