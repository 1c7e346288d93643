/**
 * What the checks say of one side of one seated bend, kept for every set of bends formed on that side.
 * A set is a path from the bend outward (joint by joint: formed or flat); what one more element adds is worked out once
 * and shared by all sets that begin alike, so that 2·2^n elements a role do for all sets of all bends.
 */
import type { ClearanceChecks, ClearanceRecord } from "../contact/clearance.ts";
import { FACE_INSET_MM } from "../contact/gaps.ts";
import { isOpen, type LoadingChecks, openRoom, type Room } from "../contact/loading.ts";
import type { Side } from "../contact/seatPieces.ts";
import { leadingDirection, trailingDirection } from "../contact/sector.ts";
import { type ContactRecord, noContact, type SideChecks } from "../contact/sideChecks.ts";

const UNKNOWN = 0;
const FREE = 1;
const HITS = 2;

/** Nothing blocked, and the sheet in the brake's way where it is seated: the first two in every table of rooms. */
const OPEN = 0;
const SEATED_WRONG = 1;

export class SideTable {
  private readonly joints: number;
  private readonly state: Uint8Array;
  private readonly loadRoom: Int32Array;
  private readonly unloadRoom: Int32Array;
  private readonly rooms: Room[] = [openRoom(), { ...openRoom(), overlaps: true }];
  private readonly openEnds: boolean;
  private readonly angle: Float32Array;
  private readonly near: Float32Array;
  private clear: Float32Array | undefined;
  private readonly record: ContactRecord = noContact();
  /** What one more element blocks; kept for the next as long as nothing was put into it. */
  private own: Room | undefined;
  /** Elements worked out so far. */
  elements = 0;

  constructor(
    private readonly side: Side,
    private readonly checks: SideChecks,
    private readonly loading: LoadingChecks,
    private readonly measure: ClearanceChecks,
  ) {
    this.joints = checks.pieces.chainOf(side).joints;
    this.openEnds = checks.machine.brake.openEnds;
    const nodes = 2 << this.joints;
    this.state = new Uint8Array(nodes);
    this.loadRoom = new Int32Array(nodes);
    this.unloadRoom = side === "moving" ? new Int32Array(nodes) : this.loadRoom;
    this.angle = new Float32Array(nodes);
    this.near = new Float32Array(nodes);
  }

  /** Number of the node for all joints decided as in `formed`. */
  leaf(formed: number): number {
    return (1 << this.joints) | formed;
  }

  /** Whether this side, with the joints in `formed` made, meets the brake during the sweep. */
  hits(formed: number): boolean {
    const node = this.leaf(formed);
    return (this.state[node] || this.workOut(this.joints, formed)) === HITS;
  }

  /** What this side blocks before the bend is made; only of sides that do not hit. */
  roomToLoad(formed: number): Room {
    return this.rooms[this.loadRoom[this.leaf(formed)]!]!;
  }

  /** What this side blocks after the bend is made; only of sides that do not hit. */
  roomToUnload(formed: number): Room {
    return this.rooms[this.unloadRoom[this.leaf(formed)]!]!;
  }

  /** Moving side: largest direction from the pivot at rest, in radians from the leaf. Clamped: smallest one. */
  reachAngle(formed: number): number {
    return this.angle[this.leaf(formed)]!;
  }

  /** Least distance from the pivot of all that lies beyond the run along bed or leaf. */
  offRunNear(formed: number): number {
    return this.near[this.leaf(formed)]!;
  }

  /** Clearance of this side from the brake; Infinity where nothing is measured. */
  clearance(formed: number): number {
    this.clear ??= new Float32Array(2 << this.joints).fill(-1);
    return this.clearanceAt(this.clear, this.joints, formed);
  }

  private clearanceAt(clear: Float32Array, k: number, formed: number): number {
    const node = (1 << k) | formed;
    const known = clear[node]!;
    if (known >= 0) return known;
    const before = k === 0 ? Infinity : this.clearanceAt(clear, k - 1, formed & ((1 << (k - 1)) - 1));
    const record: ClearanceRecord = { mm: before, partX: 0, partY: 0, otherX: 0, otherY: 0 };
    this.measure.withBrake(this.side, k, formed, record);
    clear[node] = record.mm;
    return record.mm;
  }

  private workOut(k: number, formed: number): number {
    const node = (1 << k) | formed;
    const known = this.state[node]!;
    if (known !== UNKNOWN) return known;
    const shorter = formed & ((1 << (k - 1)) - 1);
    const before = (1 << (k - 1)) | shorter;
    if (k > 0 && this.workOut(k - 1, shorter) === HITS) {
      this.state[node] = HITS;
      return HITS;
    }
    this.elements++;
    const { record, checks, side } = this;
    record.phiRad = Infinity;
    checks.withBrake(side, k, formed, record);
    if (record.phiRad < Infinity) {
      this.state[node] = HITS;
      return HITS;
    }
    // The check leaves the element as it lies at rest in `checks.a`, but for the first moving flat.
    if (side === "moving" && k === 0) checks.pieces.firstFlatAtRest(checks.a, FACE_INSET_MM);
    this.reach(node, before, k, formed);
    if (this.openEnds) {
      // Sliding in along the bend line is always left, so heights decide nothing: only a wrong seat blocks.
      const wrong = side === "moving" && this.loading.finishedOverlapsLeaf(checks.a, k, formed);
      this.unloadRoom[node] = wrong ? SEATED_WRONG : k > 0 ? this.unloadRoom[before]! : OPEN;
    } else this.heights(node, before, k, formed);
    this.state[node] = FREE;
    return FREE;
  }

  private heights(node: number, before: number, k: number, formed: number): void {
    const { side, checks } = this;
    this.own ??= openRoom();
    this.loading.piece(checks.a, this.own);
    this.loadRoom[node] = this.withOwn(k > 0 ? this.loadRoom[before]! : OPEN);
    if (side === "clamped") return;
    this.own ??= openRoom();
    this.loading.element(side, k, formed, true, this.own);
    this.unloadRoom[node] = this.withOwn(k > 0 ? this.unloadRoom[before]! : OPEN);
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
  private reach(node: number, before: number, k: number, formed: number): void {
    const moving = this.side === "moving";
    const { checks } = this;
    let angle = k > 0 ? this.angle[before]! : moving ? 0 : Math.PI;
    let near = k > 0 ? this.near[before]! : Infinity;
    if (!checks.inRun(this.side, k, formed)) {
      near = Math.min(near, checks.a.near - FACE_INSET_MM);
      const slide = moving ? checks.pieces.turning.maxInward : 0;
      angle = moving
        ? Math.max(angle, leadingDirection(checks.a, slide, FACE_INSET_MM))
        : Math.min(angle, trailingDirection(checks.a, FACE_INSET_MM));
    }
    // Rounded to be safe on the side that asks for the exact check.
    this.angle[node] = moving ? angle + 1e-6 : angle - 1e-6;
    this.near[node] = near * (1 - 1e-6);
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
