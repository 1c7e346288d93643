/**
 * First contact of one stroke, exact: every piece of sheet over every body's interval of w, and the moving side against the
 * clamped one, handed to the contact kernel in the section plane. Part against part, a projection may say too much: an
 * interval is halved until it is free or shorter than 0.05 mm.
 */
import { FirstContactSearch } from "../contact/firstContact.ts";
import type { Machine } from "../contact/machine.ts";
import type { Spot } from "../contact/overlap.ts";
import { noContact, SideChecks } from "../contact/sideChecks.ts";
import { slideAt } from "../motion/slide.ts";
import type { Swing } from "../motion/swing.ts";
import type { Point } from "../plane/point.ts";
import type { Rad } from "../units/quantity.ts";
import { boxesApart, leafClear, sectorsApart, sidesApart, sweepsClear } from "./boxesApart.ts";
import type { StrokeElements } from "./elements.ts";
import { isOutOfReach, type Laid, laidOverlap, overlapsBody } from "./laid.ts";
import type { Shape } from "./shape.ts";
import type { Body, WholeMember } from "./strokeBodies.ts";
import type { Interval } from "./strokePlan.ts";
import { type StrokeState, sideShapes } from "./strokeState.ts";

export interface WholeContact {
  readonly leafAngleRad: Rad;
  readonly member: WholeMember;
  readonly finger?: number;
  readonly name?: string;
  /** The part's face, from 0; undefined where the leaf meets the brake itself. */
  readonly face: number | undefined;
  /** Section frame. */
  readonly point: Point;
  readonly w: number;
}

/** Part against part an interval of w is not halved further than this. */
const SHORTEST_MM = 0.05;

/** What is not worth a look: intervals that only touch. */
const TOUCHING_MM = 0.01;

/** The first contact of a stroke with the brake or of the part with itself, undefined where there is none. */
export function strokeContact(
  state: StrokeState,
  bodies: readonly Body[],
  machine: Machine,
): WholeContact | undefined {
  const search = new ContactSearch(state.elements, machine);
  const [movingShapes, clampedShapes] = [sideShapes(state, "moving"), sideShapes(state, "clamped")];
  for (const shape of movingShapes) for (const body of bodies) search.moving(shape, body);
  for (const shape of clampedShapes) for (const body of bodies) search.clamped(shape, body);
  for (const moving of movingShapes) {
    for (const clamped of clampedShapes) search.self(moving, clamped);
  }
  search.leafItself(bodies);
  return search.found;
}

/** What was met first so far; where along w is worked out only for who asks. */
interface Raw {
  readonly phiRad: Rad;
  readonly shape: Shape | undefined;
  readonly over: Interval;
  readonly member: WholeMember;
  readonly finger: number | undefined;
  readonly name: string | undefined;
  /** From the pivot. */
  readonly x: number;
  readonly y: number;
  /** Where it is with the leaf at rest, from the pivot. */
  readonly restX: number;
  readonly restY: number;
}

export class ContactSearch {
  private raw: Raw | undefined;
  private readonly kernel = new FirstContactSearch();
  private readonly spot: Spot = { x: 0, y: 0 };

  constructor(
    private readonly at: Pick<StrokeElements, "seat" | "pieces">,
    private readonly machine: Machine,
    /** Not what is met first is asked, only whether anything is. */
    private readonly anyDoes = false,
  ) {}

  /** Begins anew. */
  forget(): void {
    this.raw = undefined;
  }

  /** Whether anything is met. */
  get meets(): boolean {
    return this.raw !== undefined;
  }

  /** What is met first. */
  get found(): WholeContact | undefined {
    if (!this.raw) return undefined;
    const { phiRad, shape, over, member, finger, name, x, y, restX, restY } = this.raw;
    const { x: px, y: py } = this.at.seat.pivot;
    const place = shape?.placeOf({ x: restX + px, y: restY + py }, over.from, over.to);
    return {
      leafAngleRad: phiRad,
      member,
      ...(finger !== undefined && { finger }),
      ...(name !== undefined && { name }),
      face: place?.face,
      point: { x: x + px, y: y + py },
      w: place?.w ?? 0,
    };
  }

  /** Whether nothing that is met besides could tell more. */
  private get done(): boolean {
    return this.raw !== undefined && (this.anyDoes || this.raw.phiRad <= 0);
  }

  /** Lowers what is found to the first contact of a moving shape with a body. */
  moving(shape: Shape, body: Body): void {
    if (this.done || !overlap(shape, body)) return;
    const { pieces } = this.at;
    const sweptClear = sweepsClear(pieces, shape.box, body);
    if (sweptClear && boxesApart(shape.box, body.solid.features)) return;
    if (this.roughlyClear(shape, body, true)) return;
    this.still(shape, body);
    if (this.done || sweptClear) return;
    for (const { laid, swing, ridesLeaf } of shape.swept(body.from, body.to)) {
      if (isOutOfReach(laid, body.solid.features, swing.maxSlide)) continue;
      if (body.member === "leaf") {
        if (ridesLeaf) this.sweep(laid, body.solid.features, pieces.sliding, { shape, body, moving: true });
      } else if (!sectorsApart(laid, swing, body.solid)) {
        this.sweep(laid, body.solid.features, swing, { shape, body, moving: true });
      }
    }
  }

  /** The same of a clamped shape: it is met where it stands, or by the leaf. */
  clamped(shape: Shape, body: Body): void {
    if (this.done || !overlap(shape, body)) return;
    const { leaf } = this.machine;
    const leafClears = body.member !== "leaf" || leafClear(this.machine, this.at.seat.sweepRad, shape.box);
    if (leafClears && boxesApart(shape.box, body.solid.features)) return;
    if (this.roughlyClear(shape, body, false)) return;
    this.still(shape, body);
    if (this.done || leafClears) return;
    for (const laid of shape.rest(body.from, body.to)) {
      if (isOutOfReach(laid, leaf.features, 0)) continue;
      this.sweep(leaf, laid.features, this.at.pieces.leafTurning, { shape, body, moving: false });
    }
  }

  /** The same of a moving shape with a clamped one. */
  self(moving: Shape, clamped: Shape): void {
    const from = Math.max(moving.minW, clamped.minW) + TOUCHING_MM;
    const to = Math.min(moving.maxW, clamped.maxW) - TOUCHING_MM;
    if (to <= from || this.done || sidesApart(this.at.pieces, moving.box, clamped.box)) return;
    if (this.roughlyApart(moving, clamped)) return;
    this.selfOver(moving, clamped, from, to);
  }

  /** Whether the outline round a shape of several pieces neither lies in a body nor meets it; false where it has none. */
  private roughlyClear({ rough, box }: Shape, { solid, member }: Body, moving: boolean): boolean {
    if (!rough) return false;
    const { turning, sliding, leafTurning, startCut } = this.at.pieces;
    if (startCut || overlapsBody(rough, solid, this.spot)) return false;
    const { features } = solid;
    if (moving) return !this.comesTo(rough.features, features, member === "leaf" ? sliding : turning);
    if (member !== "leaf" || leafClear(this.machine, this.at.seat.sweepRad, box)) return true;
    return !this.comesTo(this.machine.leaf.features, rough.features, leafTurning);
  }

  /** The same of a moving shape and a clamped one, one of them of several pieces. */
  private roughlyApart(moving: Shape, clamped: Shape): boolean {
    if (!moving.rough && !clamped.rough) return false;
    const { turning, startCut } = this.at.pieces;
    if (startCut) return false;
    const whole = (shape: Shape) => (shape.rough ? [shape.rough] : shape.rest(shape.minW, shape.maxW));
    const fixed = whole(clamped);
    return whole(moving).every((laid) =>
      fixed.every(
        (other) =>
          !laidOverlap(laid, other, this.spot) && !this.comesTo(laid.features, other.features, turning),
      ),
    );
  }

  /** Whether features that are apart at rest meet before anything else does. */
  private comesTo(moving: Laid["features"], fixed: Laid["features"], swing: Swing): boolean {
    const limit = Math.min(this.raw?.phiRad ?? Infinity, this.at.seat.sweepRad);
    return this.kernel.find(moving, fixed, swing, limit) !== undefined;
  }

  private selfOver(moving: Shape, clamped: Shape, from: number, to: number): void {
    const before = this.raw;
    const against = clamped.rest(from, to);
    if (against.length === 0 || this.done) return;
    const where = { shape: moving, moving: true, from, to };
    for (const laid of moving.rest(from, to)) {
      // Both runs lie flat at rest, side by side in the blank.
      if (moving.run && clamped.run) break;
      for (const other of against) if (!this.done && laidOverlap(laid, other, this.spot)) this.note(0, where);
    }
    for (const { laid, swing } of this.done ? [] : moving.swept(from, to)) {
      for (const other of against) {
        if (isOutOfReach(laid, other, swing.maxSlide) || sidesApart(this.at.pieces, laid, other)) continue;
        if (moving.run && clamped.run && this.behindBend(other)) continue;
        this.sweep(laid, other.features, swing, where);
      }
    }
    if (this.raw === before || to - from < SHORTEST_MM || (moving.straight && clamped.straight)) return;
    this.raw = before;
    const middle = (from + to) / 2;
    this.selfOver(moving, clamped, from, middle);
    this.selfOver(moving, clamped, middle, to);
  }

  /** Clamped run that ends at the bend: between it and the moving run lies the bend zone. */
  private behindBend({ maxX }: Laid): boolean {
    const { seat } = this.at;
    return maxX <= seat.clampedTangentX - seat.pivot.x + 1e-6;
  }

  /** The swinging leaf itself against clamp and bed. */
  leafItself(bodies: readonly Body[]): void {
    const record = noContact();
    new SideChecks(this.at.seat, this.machine).leafWithBrake(record);
    if (record.phiRad >= (this.raw?.phiRad ?? this.at.seat.sweepRad)) return;
    const member = record.member === "clamp" ? bodies[0]!.member : record.member;
    const { phiRad, x, y } = record;
    const over = { from: 0, to: 0 };
    this.raw = {
      phiRad,
      shape: undefined,
      over,
      member,
      finger: undefined,
      name: undefined,
      x,
      y,
      restX: x,
      restY: y,
    };
  }

  private still(shape: Shape, body: Body): void {
    if (boxesApart(shape.box, body.solid.features)) return;
    for (const laid of shape.rest(body.from, body.to)) {
      if (this.done || !overlapsBody(laid, body.solid, this.spot)) continue;
      this.note(0, { shape, body, moving: false, from: body.from, to: body.to });
    }
  }

  private sweep(
    laid: Pick<Laid, "features">,
    fixed: Laid["features"],
    swing: Swing,
    of: { readonly shape: Shape; readonly moving: boolean; readonly body?: Body } & Partial<Interval>,
  ): void {
    const { spot } = this;
    const { pieces, seat } = this.at;
    const limit = Math.min(this.raw?.phiRad ?? Infinity, seat.sweepRad);
    const first = this.kernel.find(laid.features, fixed, swing, limit);
    if (!first) return;
    const { phiRad: phi, x, y } = first;
    [spot.x, spot.y] = [x, y];
    if (swing === pieces.sliding) {
      // Found in the frame of the leaf: turn the point with it.
      const [cos, sin] = [Math.cos(phi), Math.sin(phi)];
      [spot.x, spot.y] = [cos * x - sin * y, sin * x + cos * y];
    }
    const { body } = of;
    this.note(phi, { ...of, from: body?.from ?? of.from!, to: body?.to ?? of.to! });
  }

  private note(
    phi: Rad,
    of: Interval & { readonly shape: Shape; readonly moving: boolean; readonly body?: Body },
  ): void {
    const { x, y } = this.spot;
    let [restX, restY] = [x, y];
    if (of.moving && phi > 0) {
      // Back to where the sheet was with the leaf at rest.
      const [c, s] = [Math.cos(phi), Math.sin(phi)];
      [restX, restY] = [c * x + s * y - slideAt(this.at.seat, phi), c * y - s * x];
    }
    const { shape, from, to, body } = of;
    const member: WholeMember = body?.member ?? "part";
    const [finger, name] = [body?.finger, body?.name];
    this.raw = { phiRad: phi, shape, over: { from, to }, member, finger, name, x, y, restX, restY };
  }
}

/** Whether a shape and a body share any of w. */
export function overlap(shape: Pick<Shape, "minW" | "maxW">, { from, to }: Interval): boolean {
  return shape.minW < to && shape.maxW > from;
}
