/**
 * The sheet of one seated bend, cut into the pieces that the checks go through: element k of the moving or the
 * clamped side (its joint and flat k), the start of the moving flat, and the bend zone. All from the leaf's pivot.
 */
import type { Seat } from "../motion/seat.ts";
import { slideAt } from "../motion/slide.ts";
import { type Swing, tableSwing } from "../motion/swing.ts";
import { mostCutMm } from "../motion/zoneCut.ts";
import { type Chain, flatRunMm } from "../part/chain.ts";
import type { Mm } from "../units/quantity.ts";
import { type Element, FLAT, FOR_CONTACT, JOINT, type Look, type Pose, type Side } from "./element.ts";
import type { Features } from "./features.ts";
import { FACE_INSET_MM } from "./gaps.ts";
import { mirroredPlacement, OUTSIDE_OF_BEND, type Placement, Strip, turnedPlacement } from "./strip.ts";
import { endSwings } from "./zoneEnd.ts";

const NO_SWINGS: readonly Swing[] = [];

export class SeatPieces {
  readonly moving: Strip;
  readonly clamped: Strip;
  /** The moving side against what stands: turns and slides. */
  readonly turning: Swing;
  /** The moving side against the leaf: slides only. */
  readonly sliding: Swing;
  /** The leaf alone: turns only. */
  readonly leafTurning: Swing;
  /** The leaf alone, up to where it takes up a bend that was begun before; undefined for one made from the flat. */
  readonly leafRising: Swing | undefined;
  /** The moving flat's start while the bend zone grows past it; undefined where it never does. */
  readonly startCut: Swing | undefined;
  /** Farthest from the pivot that the moving flat's start ever is. */
  readonly startReachMm: number;
  /** How much of the flat run the bend zone takes at most. */
  private readonly mostCutMm: Mm;
  private readonly cutTan: number;
  private readonly startX: number;
  /** What brings a point of the moving side at rest to where it is, but for the bend's turn, once the bend is finished. */
  private readonly finishedDx: number;
  private readonly finishedDy: number;
  private readonly finishedCos: number;
  private readonly finishedSin: number;
  private readonly endSwings: (readonly Swing[])[] = [];
  private readonly poses: Readonly<Record<Pose, Placement>>;
  private readonly inThroat: Placement;
  /** Where the cross-section at the zone's end stands before the swing `startCut` takes it. */
  private readonly atZoneEnd: Placement;

  constructor(readonly seat: Seat) {
    const { movingChain, clampedChain, thicknessMm: T, pivot, slideTan, slideTurn, sweepRad, fromRad } = seat;
    this.moving = new Strip(movingChain, T);
    this.clamped = new Strip(clampedChain, T);
    this.inThroat = mirroredPlacement(seat.clampedTangentX - pivot.x, -pivot.y);
    this.turning = tableSwing(1, slideTan, slideTurn, sweepRad, fromRad);
    this.sliding = tableSwing(0, slideTan, slideTurn, sweepRad, fromRad);
    this.leafTurning = tableSwing(1, 0, 0, sweepRad);
    this.leafRising = fromRad > 0 ? tableSwing(1, 0, 0, Math.min(fromRad, sweepRad)) : undefined;
    this.startX = seat.movingTangentX - pivot.x;
    this.finishedCos = Math.cos(seat.angleRad);
    this.finishedSin = Math.sin(seat.angleRad);
    // Relaxed the part stands on its own apex, SB past the clamped tangent line, turned about it; SB on the bend ends.
    const relaxedApexX = seat.clampedTangentX - pivot.x + seat.relaxedTangentMm;
    this.finishedDx =
      relaxedApexX * this.finishedCos - pivot.y * this.finishedSin + seat.relaxedTangentMm - this.startX;
    this.finishedDy = -relaxedApexX * this.finishedSin - pivot.y * this.finishedCos + pivot.y;
    this.cutTan = seat.bendZoneTan - pivot.y;
    const { startX, finishedDx, finishedDy, finishedCos, finishedSin } = this;
    const begunX = startX + slideAt(seat, fromRad);
    this.poses = {
      rest: turnedPlacement(startX, -pivot.y, 1, 0),
      begun: turnedPlacement(begunX, -pivot.y, Math.cos(fromRad), Math.sin(fromRad)),
      finished: turnedPlacement(startX + finishedDx, finishedDy - pivot.y, finishedCos, finishedSin),
    };
    this.atZoneEnd = turnedPlacement(0, -pivot.y, 1, 0);
    const along = Math.max(
      Math.abs(this.startX) + this.turning.maxSlide,
      this.cutTan * Math.tan(sweepRad / 2),
    );
    this.startReachMm = Math.hypot(along, T + Math.abs(pivot.y));
    this.mostCutMm = mostCutMm(seat);
    this.startCut = this.mostCutMm > 1e-9 ? tableSwing(1, this.cutTan, 0, sweepRad, fromRad) : undefined;
  }

  chainOf(side: Side): Chain {
    return side === "moving" ? this.seat.movingChain : this.seat.clampedChain;
  }

  stripOf(side: Side): Strip {
    return side === "moving" ? this.moving : this.clamped;
  }

  /** Element k of the moving side as it stands before the leaf takes it up, where the bend was begun before. */
  begunElement(F: Features, k: number, formed: number, look: Look): void {
    const { seat } = this;
    const { fromRad } = seat;
    const cutMm = Math.max(0, this.cutTan * Math.tan(fromRad / 2) - this.startX - slideAt(seat, fromRad));
    const element = { side: "moving", k, formed } as const;
    if (!this.runFrom(F, element, "begun", cutMm, look.insetMm)) this.element(F, element, look, "begun");
  }

  /** Most that the moving side is shifted before it is turned, in the sweep or to the finished angle. */
  get mostSlideMm(): number {
    return Math.max(this.turning.maxSlide, Math.hypot(this.finishedDx, this.finishedDy));
  }

  /** Where a point of the moving side at rest is once the bend is finished. */
  finishedPoint(x: number, y: number): { readonly x: number; readonly y: number } {
    const [movedX, movedY] = [x + this.finishedDx, y + this.finishedDy];
    return {
      x: this.finishedCos * movedX - this.finishedSin * movedY,
      y: this.finishedSin * movedX + this.finishedCos * movedY,
    };
  }

  /** Not more than the least height over the pivot of a piece at rest once the bend is finished, from its box's corners. */
  lowestFinished(F: Features): number {
    const { finishedDy: up, finishedCos: cos } = this;
    // No bend is of more than half a turn, so its sine is never under 0.
    const fromX = this.finishedSin * (F.minX + this.finishedDx);
    return fromX + Math.min(cos * (F.minY + up), cos * (F.maxY + up));
  }

  /** Lays an element out as it stands; the clamped side has but one pose. */
  element(F: Features, { side, k, formed }: Element, look: Look, pose: Pose = "rest"): void {
    const { parts, insetMm, openCorners } = look;
    const strip = this.stripOf(side).standAt(side === "clamped" ? this.inThroat : this.poses[pose]);
    const { chain } = strip;
    const of = { insetMm, flat: chain.flatNumber[k]!, freeEnd: k === chain.joints };
    F.clear();
    strip.walkTo(k - 1, formed);
    if (k === 0) {
      if (!(parts & FLAT)) return;
      // The clamped flat ends at its tangent line for good; the moving one's start is looked at by itself (movingStart).
      const start = openCorners || side === "clamped" ? 1 : 0;
      strip.addStraight(F, chain.flatMm[0]!, of, start);
      if (side === "moving" && pose === "rest") this.markCut(F, "pastZone");
      return;
    }
    const jointFormed = (formed >>> (k - 1)) & 1;
    const corners = openCorners ? 1 : 0;
    if (jointFormed) {
      if (parts & JOINT) strip.addBend(F, k - 1, insetMm, openCorners ? (parts & FLAT ? 1 : 3) : 0);
      else strip.turnJoint(k - 1);
      if (parts & FLAT) strip.addStraight(F, chain.flatMm[k]!, of, parts & JOINT ? 0 : corners);
      // Where the bend zone takes the whole run before a bend, the bend's own start lies bare. Last of all, since the
      // first edges stand for the straight (overlap.ts).
      if (!openCorners && parts & JOINT && side === "moving" && this.runCutMm(k - 1, formed) > 0) {
        strip.walkTo(k - 1, formed);
        strip.addBendStart(F, k - 1, insetMm);
      }
      return;
    }
    if (side === "moving" && pose === "rest" && (formed & ((1 << k) - 1)) === 0) this.markCut(F, "pastZone");
    const stripMm = chain.allowanceMm[k - 1]!;
    if ((parts & (JOINT | FLAT)) === (JOINT | FLAT)) {
      strip.addStraight(F, stripMm + chain.flatMm[k]!, of, corners);
    } else if (parts & JOINT) {
      strip.addStraight(F, stripMm, { ...of, freeEnd: false }, openCorners ? 3 : 0);
    } else {
      strip.x += stripMm * strip.c;
      strip.y += stripMm * strip.s;
      strip.addStraight(F, chain.flatMm[k]!, of, corners);
    }
  }

  /** Element k of the moving side as it lies at rest, without what is bend zone then. */
  movingAtRest(F: Features, k: number, formed: number, insetMm: number): void {
    const element = { side: "moving", k, formed } as const;
    if (this.runFrom(F, element, "rest", Math.max(0, -this.startX), insetMm)) return;
    this.element(F, element, { ...FOR_CONTACT, insetMm });
  }

  /** A moving element less what of it lies in the first `cutMm` of the flat run; false where it is not in the run. */
  private runFrom(F: Features, { k, formed }: Element, pose: Pose, cutMm: number, insetMm: number): boolean {
    const endMm = this.runMm(k, formed);
    if (endMm === 0) return false;
    const fromMm = Math.max(cutMm, k === 0 ? 0 : this.runMm(k - 1, formed));
    F.clear();
    if (fromMm >= endMm) return true;
    const stands = this.moving.standAt(this.poses[pose]);
    const { chain } = stands;
    stands.walkTo(-1, 0);
    stands.x += fromMm;
    const of = { insetMm, flat: chain.flatNumber[k]!, freeEnd: k === chain.joints };
    stands.addStraight(F, endMm - fromMm, of, 0);
    return true;
  }

  /** The cross-section where the moving flat starts, while the bend zone has not grown past it. */
  movingStart(F: Features, insetMm: number): void {
    const moving = this.moving.standAt(this.poses.rest);
    F.clear();
    moving.addStart(F, insetMm, moving.chain.flatNumber[0]!);
    this.markCut(F, "onlyUncut");
  }

  /**
   * The cross-section where the flat run starts while the bend zone's end lies in element k; false where it never does.
   * Rides on the swing `startCut`.
   */
  cutStart(F: Features, k: number, formed: number, insetMm: number): boolean {
    const endMm = this.runMm(k, formed);
    if (!this.startCut || endMm === 0) return false;
    const fromMm = k === 0 ? 0 : this.runMm(k - 1, formed);
    if (this.mostCutMm <= fromMm) return false;
    F.clear();
    const moving = this.moving.standAt(this.atZoneEnd);
    moving.addStart(F, insetMm, moving.chain.flatNumber[k]!);
    this.markCut(F, "onlyCut");
    F.cutFrom = fromMm;
    F.cutTo = endMm;
    return true;
  }

  /**
   * The cross-section where the flat run starts while the zone's end lies in element k, and the swings of the leaf in which
   * it does: none where it never does. Each swing ends where the zone's end comes into the element or leaves it, so that
   * what is nearest just there is seen.
   */
  zoneEnd(F: Features, k: number, formed: number): readonly Swing[] {
    const endMm = this.runMm(k, formed);
    if (!this.startCut || endMm === 0) return NO_SWINGS;
    this.endSwings[k] ??= endSwings(this.seat, k);
    const swings = this.endSwings[k];
    if (swings.length === 0) return swings;
    const moving = this.moving.standAt(this.atZoneEnd);
    F.clear();
    moving.addStart(F, 0, moving.chain.flatNumber[k]!);
    return swings;
  }

  /** Length of the moving side's flats 0 to k with the strips between; 0 where a formed joint breaks the run. */
  private runMm(k: number, formed: number): Mm {
    return formed & ((1 << k) - 1) ? 0 : flatRunMm(this.moving.chain, k);
  }

  /** By how much the bend zone at most reaches past the run of flats 0 to k; 0 where it does not, or they are no run. */
  private runCutMm(k: number, formed: number): Mm {
    const run = this.runMm(k, formed);
    return this.startCut && run > 0 ? Math.max(0, this.mostCutMm - run) : 0;
  }

  /** The bend zone as a still flat strip, or as the finished bend. */
  bendZone(F: Features, finished: boolean): void {
    const { seat } = this;
    const T = seat.thicknessMm;
    const x = seat.clampedTangentX - seat.pivot.x;
    const y = -seat.pivot.y;
    F.clear();
    const tag = (seat.bend << 2) | OUTSIDE_OF_BEND;
    if (!finished) {
      const end = x + seat.allowanceMm;
      F.addSegment(x, y + FACE_INSET_MM, end, y + FACE_INSET_MM, tag);
      F.addSegment(end, y + T - FACE_INSET_MM, x, y + T - FACE_INSET_MM, tag);
      F.setCore(x, y + T / 2, end, y + T / 2);
      return;
    }
    const middle = -Math.PI / 2 + seat.angleRad / 2;
    const r = seat.insideRadiusMm;
    const cosHalf = Math.cos(seat.angleRad / 2);
    const arc = { x, y: y + T + r, mx: Math.cos(middle), my: Math.sin(middle), cosHalf };
    F.addRound(arc, r + T - FACE_INSET_MM, tag);
    F.addHollow(arc, r + FACE_INSET_MM, tag);
  }

  private markCut(F: Features, rule: Features["cutRule"]): void {
    if (!this.startCut) return;
    F.cutRule = rule;
    F.cutTan = this.cutTan;
    F.cutStart = this.startX;
    F.cutSlide = this.seat;
  }
}
