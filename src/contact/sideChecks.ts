/**
 * Contact of one element of the sheet with the brake, and of two elements with each other, over a bend's sweep.
 * An element's pose depends only on the joints nearer to the bend, so the search can keep what it found for them.
 * Pairs checked: moving × {clamp, bed, frame, leaf}, clamped × {clamp, bed, frame, leaf}, moving × clamped.
 */
import type { Seat } from "../motion/seat.ts";
import type { Swing } from "../motion/swing.ts";
import { outOfTheWay } from "./blockedHeights.ts";
import { FOR_CONTACT, type Side } from "./element.ts";
import type { Features } from "./features.ts";
import { FirstContactSearch } from "./firstContact.ts";
import { FACE_INSET_MM } from "./gaps.ts";
import type { Machine } from "./machine.ts";
import { bordersOverlap, type Spot, sheetOverlapsBody } from "./overlap.ts";
import { SeatPieces } from "./seatPieces.ts";
import { leadingDirection, lowestDirection, trailingDirection } from "./sector.ts";
import type { SolidBody } from "./solidBody.ts";

/** What is met: a piece of the brake, or the part's own other side. */
export type Member = "clamp" | "bed" | "frame" | "leaf" | "part";

/** Tag of the leaf itself, where no part is in it. */
const THE_LEAF = -1;

/** The first contact seen so far; `tag` names the part's feature (strip.ts), −1 the leaf itself. */
export interface ContactRecord {
  phiRad: number;
  member: Member;
  tag: number;
  /** From the leaf's pivot. */
  x: number;
  y: number;
}

export function noContact(): ContactRecord {
  return { phiRad: Infinity, member: "clamp", tag: 0, x: 0, y: 0 };
}

export class SideChecks {
  readonly pieces: SeatPieces;
  readonly clamp: readonly SolidBody[];
  /** What stands still, and the name of each. */
  readonly fixed: readonly SolidBody[];
  readonly fixedNames: readonly Member[];
  /** What stays where it is while the clamp rises: bed, leaf and frame. */
  readonly still: readonly SolidBody[];
  readonly a: Features;
  readonly b: Features;
  private readonly search = new FirstContactSearch();
  private readonly spot: Spot = { x: 0, y: 0 };
  /** The leaf lies below the pivot's level at rest. */
  readonly leafLow: boolean;

  constructor(
    readonly seat: Seat,
    readonly machine: Machine,
  ) {
    this.pieces = new SeatPieces(seat);
    this.leafLow = machine.leaf.features.maxY <= 1e-9;
    this.clamp = machine.clampAt(seat.noseSetbackMm);
    this.fixed = [...this.clamp, machine.bed, ...machine.frame];
    this.still = [machine.bed, machine.leaf, ...machine.frame];
    this.fixedNames = [
      ...this.clamp.map(() => "clamp" as const),
      "bed",
      ...machine.frame.map(() => "frame" as const),
    ];
    [this.a, this.b] = machine.laidOut.contact;
  }

  /** Lowers `record` to the first contact of element k of a side with the brake. */
  withBrake(side: Side, k: number, formed: number, record: ContactRecord): void {
    const { pieces, a } = this;
    if (side === "moving" && pieces.leafRising) {
      // Whether there is room for the begun part where the leaf is at rest is a matter of loading (step.ts).
      pieces.begunElement(a, k, formed, FOR_CONTACT);
      this.swept(
        this.machine.leaf.features,
        a,
        pieces.leafRising,
        { member: "leaf", tag: "fixedTag" },
        record,
      );
    } else {
      if (side === "moving") pieces.movingAtRest(a, k, formed, FACE_INSET_MM);
      else pieces.element(a, { side, k, formed }, FOR_CONTACT);
      for (let i = 0; i < this.fixed.length; i++) this.atRest(a, this.fixed[i]!, this.fixedNames[i]!, record);
      this.atRest(a, this.machine.leaf, "leaf", record);
      if (record.phiRad <= 0) return;
    }
    if (side === "clamped") {
      // A leaf that lies below the pivot's level at rest leads with its face, in direction φ.
      if (this.leafLow && a.minY >= 0 && trailingDirection(a, 0) > this.seat.sweepRad) return;
      this.swept(
        this.machine.leaf.features,
        a,
        pieces.leafTurning,
        { member: "leaf", tag: "fixedTag" },
        record,
      );
      return;
    }
    // Laid anew where it lay begun, or cut as at rest.
    if (pieces.leafRising || this.inRun(side, k, formed)) pieces.element(a, { side, k, formed }, FOR_CONTACT);
    this.movingWithBrake(a, pieces.turning, true, record);
    if (k === 0) {
      pieces.movingStart(a, FACE_INSET_MM);
      this.movingWithBrake(a, pieces.turning, true, record);
    }
    if (pieces.startCut && pieces.cutStart(a, k, formed, FACE_INSET_MM))
      this.movingWithBrake(a, pieces.startCut, false, record);
  }

  private movingWithBrake(F: Features, swing: Swing, ridesLeaf: boolean, record: ContactRecord): void {
    const leading = leadingDirection(F, swing.maxInward, 0) + swing.sweepRad;
    const lowest = lowestDirection(F, swing.maxInward);
    for (let i = 0; i < this.fixed.length; i++) {
      const body = this.fixed[i]!;
      if (leading < body.leastDirection && lowest > body.mostDirection - 2 * Math.PI) continue;
      this.swept(F, body.features, swing, { member: this.fixedNames[i]!, tag: "movingTag" }, record);
    }
    if (ridesLeaf)
      this.swept(
        F,
        this.machine.leaf.features,
        this.pieces.sliding,
        { member: "leaf", tag: "movingTag" },
        record,
      );
  }

  /** Lowers `record` to the first contact of moving element m with clamped element c. The two flats at the bend can't meet. */
  withSelf(m: number, formedMoving: number, c: number, formedClamped: number, record: ContactRecord): void {
    const { pieces, a, b } = this;
    if (this.inRun("moving", m, formedMoving) && this.inRun("clamped", c, formedClamped)) return;
    pieces.element(b, { side: "clamped", k: c, formed: formedClamped }, FOR_CONTACT);
    pieces.movingAtRest(a, m, formedMoving, FACE_INSET_MM);
    // A part whose bend was begun before lay like that, free of itself, when the bend before was done.
    const fromFlat = this.seat.fromRad === 0;
    if (fromFlat && record.phiRad > 0 && bordersOverlap(a, b, this.spot)) {
      this.note(record, 0, "part", lastTag(a));
    }
    if (this.inRun("moving", m, formedMoving))
      pieces.element(a, { side: "moving", k: m, formed: formedMoving }, FOR_CONTACT);
    this.swept(a, b, pieces.turning, { member: "part", tag: "movingTag" }, record);
    // What has come through the bend zone, which is checked against nothing, may meet the flat where it starts.
    if (b.near > pieces.startReachMm) return;
    if (m === 0) {
      pieces.movingStart(a, FACE_INSET_MM);
      this.swept(a, b, pieces.turning, { member: "part", tag: "movingTag" }, record);
    }
    if (pieces.startCut && pieces.cutStart(a, m, formedMoving, FACE_INSET_MM))
      this.swept(a, b, pieces.startCut, { member: "part", tag: "movingTag" }, record);
  }

  /** Lowers `record` to the first contact of the swinging leaf itself with clamp and bed. */
  leafWithBrake(record: ContactRecord): void {
    const { leafWellOff, leafJustOff } = this.machine;
    for (let i = 0; i < this.fixed.length; i++) {
      const [member, body] = [this.fixedNames[i]!, this.fixed[i]!];
      if (member === "frame") continue;
      if (record.phiRad > 0 && bordersOverlap(leafWellOff, body.features, this.spot)) {
        this.note(record, 0, member, THE_LEAF);
      }
      this.swept(leafJustOff, body.features, this.pieces.leafTurning, { member }, record);
    }
  }

  /** Whether joint and flat of element k all lie in the plane of the side's first flat, joined to it without a bend. */
  inRun(side: Side, k: number, formed: number): boolean {
    return (formed & ((1 << k) - 1)) === 0 && k <= this.pieces.chainOf(side).joints;
  }

  /** Whether a box of sheet blocks no height of sheet or clamp (blockedHeights.ts). */
  blocksNoHeight(box: Pick<Features, "minX" | "minY" | "maxY">): boolean {
    const { liftMm } = this.machine.brake;
    for (const body of this.clamp) if (!outOfTheWay(body, -1, liftMm, box)) return false;
    for (const body of this.still) if (!outOfTheWay(body, 1, liftMm, box)) return false;
    return true;
  }

  private atRest(F: Features, body: SolidBody, member: Member, record: ContactRecord): void {
    if (record.phiRad > 0 && sheetOverlapsBody(F, body, this.spot)) this.note(record, 0, member, lastTag(F));
  }

  private note(record: ContactRecord, phiRad: number, member: Member, tag: number): void {
    record.phiRad = phiRad;
    record.member = member;
    record.tag = tag;
    record.x = this.spot.x;
    record.y = this.spot.y;
  }

  /** `tag` says which of the two is the part; the leaf itself where neither is. */
  private swept(
    A: Features,
    B: Features,
    swing: Swing,
    { member, tag }: { readonly member: Member; readonly tag?: "movingTag" | "fixedTag" },
    record: ContactRecord,
  ): void {
    const limit = Math.min(record.phiRad, this.seat.sweepRad);
    const found = this.search.find(A, B, swing, limit);
    if (!found) return;
    [this.spot.x, this.spot.y] = [found.x, found.y];
    if (swing === this.pieces.sliding) {
      // Found in the frame of the leaf: turn the point with it.
      const [cos, sin] = [Math.cos(found.phiRad), Math.sin(found.phiRad)];
      [this.spot.x, this.spot.y] = [cos * found.x - sin * found.y, sin * found.x + cos * found.y];
    }
    this.note(record, found.phiRad, member, tag ? found[tag] : THE_LEAF);
  }
}

/** Tag of the piece's last edge: its free end where it has one. */
function lastTag(F: Features): number {
  return F.segTag[F.segments - 1]!;
}
