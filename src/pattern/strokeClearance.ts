/**
 * Clearance of one stroke: the least distance in the section plane, over the whole sweep, between the sheet and what
 * shares its stations of w, with true faces. Left out is what touches by design (design, section 6): runs with the clamp,
 * bed and leaf and with each other, and against the body that carries a run its up-turned bends and the faces beyond.
 */
import { LeastDistanceSearch } from "../contact/leastDistance.ts";
import type { Spot as Place } from "../contact/overlap.ts";
import { slideAt } from "../motion/slide.ts";
import { AT_REST, type Swing } from "../motion/swing.ts";
import type { Mm, Rad } from "../units/quantity.ts";
import { farOf, nearOf } from "./boxesApart.ts";
import type { StrokeElements } from "./elements.ts";
import { isOutOfReach, type Laid, laidAs, laidOverlap, overlapsBody } from "./laid.ts";
import type { Shape } from "./shape.ts";
import type { Spot } from "./space.ts";
import type { Body } from "./strokeBodies.ts";
import { overlap } from "./strokeContact.ts";
import type { Interval } from "./strokePlan.ts";
import { type StrokeState, type TrueShape, trueShapes } from "./strokeState.ts";

export interface WholeClearance {
  readonly mm: Mm;
  /** Section frame with w: a point of the part, then of what it is nearest to. */
  readonly points: readonly [Spot, Spot];
}

/** Part against part an interval of w is not halved further than this. */
const SHORTEST_MM = 0.05;

/** The clearance of a stroke from shapes with true faces; undefined where nothing is left to measure. */
export function strokeClearance(state: StrokeState, bodies: readonly Body[]): WholeClearance | undefined {
  const search = new ClearanceSearch(state.elements);
  const [moving, clamped] = [trueShapes(state, "moving"), trueShapes(state, "clamped")];
  for (const body of bodies) {
    for (const one of moving) search.moving(one, body);
    for (const one of clamped) search.clamped(one, body);
  }
  for (const one of moving) for (const other of clamped) search.self(one.shape, other.shape);
  return search.found();
}

/** Shapes that only touch along w share no station. */
const TOUCHING_MM = 0.02;

type Reaching = Pick<Laid, "features" | "near" | "far">;

/** What was measured last and was least so far. */
interface Least {
  readonly shape: Shape;
  readonly over: Interval;
  readonly moving: boolean;
  readonly phiRad: Rad;
  readonly part: { readonly x: Mm; readonly y: Mm };
  readonly other: { readonly x: Mm; readonly y: Mm };
}

export class ClearanceSearch {
  mm = Infinity;
  private least: Least | undefined;
  private readonly spot: Place = { x: 0, y: 0 };
  private readonly kernel = new LeastDistanceSearch();

  constructor(private readonly at: Pick<StrokeElements, "seat" | "pieces">) {}

  moving({ shape, offSupport }: TrueShape, body: Body): void {
    if (!overlap(shape, body) || (shape.run && body.member !== "frame")) return;
    if (body.member === "leaf" && offSupport) return;
    if (this.roughlyFarther(shape, body, true)) return;
    const fixed = laidAs(body.solid.features);
    for (const { laid, swing, ridesLeaf } of shape.swept(body.from, body.to)) {
      if (body.member === "leaf" && !ridesLeaf) continue;
      const on = body.member === "leaf" ? this.at.pieces.sliding : swing;
      this.measure(laid, fixed, on, { shape, over: body, moving: true });
    }
  }

  clamped({ shape, offSupport }: TrueShape, body: Body): void {
    if (!overlap(shape, body) || (shape.run && body.member !== "frame")) return;
    if (body.member === "bed" && offSupport) return;
    if (this.roughlyFarther(shape, body, false)) return;
    const fixed = laidAs(body.solid.features);
    for (const laid of shape.rest(body.from, body.to)) {
      const of = { shape, over: body, moving: false };
      if (body.member === "leaf") this.measure(fixed, laid, this.at.pieces.leafTurning, of);
      else this.measure(laid, fixed, AT_REST, of);
    }
  }

  /** The moving side against the clamped one, the two runs left out. */
  self(moving: Shape, clamped: Shape): void {
    if (moving.run && clamped.run) return;
    const from = Math.max(moving.minW, clamped.minW);
    const to = Math.min(moving.maxW, clamped.maxW);
    if (to - from <= TOUCHING_MM) return;
    // The moving side keeps its distance from the pivot but for its slide.
    const room = this.mm + this.at.pieces.turning.maxSlide;
    if (nearOf(moving.box) > farOf(clamped.box) + room || nearOf(clamped.box) > farOf(moving.box) + room)
      return;
    const { turning, startCut } = this.at.pieces;
    if (!startCut && (moving.rough || clamped.rough)) {
      const whole = (shape: Shape) => (shape.rough ? [shape.rough] : shape.rest(shape.minW, shape.maxW));
      const fixed = whole(clamped);
      const apart = (one: Laid, other: Laid) =>
        !laidOverlap(one, other, this.spot) && this.isFarther(one, other, turning);
      if (whole(moving).every((one) => fixed.every((other) => apart(one, other)))) return;
    }
    this.selfOver(moving, clamped, from, to);
  }

  /** Whether even the outline round a shape of several pieces keeps farther off a body than the least so far. */
  private roughlyFarther({ rough }: Shape, { member, solid }: Body, moving: boolean): boolean {
    const { turning, sliding, leafTurning, startCut } = this.at.pieces;
    if (!rough || startCut || overlapsBody(rough, solid, this.spot)) return false;
    const body = laidAs(solid.features);
    if (moving) return this.isFarther(rough, body, member === "leaf" ? sliding : turning);
    if (member !== "leaf") return this.isFarther(rough, body, AT_REST);
    return this.isFarther(body, rough, leafTurning);
  }

  private isFarther(moving: Reaching, fixed: Reaching, swing: Swing): boolean {
    if (isOutOfReach(moving, fixed, swing.maxSlide + this.mm)) return true;
    return this.kernel.find(moving.features, fixed.features, swing, this.mm) === undefined;
  }

  /** An interval in which the sides may come nearer than so far is halved. */
  private selfOver(moving: Shape, clamped: Shape, from: number, to: number): void {
    const [mm, least] = [this.mm, this.least];
    const against = clamped.rest(from, to);
    for (const { laid, swing } of moving.swept(from, to)) {
      for (const other of against)
        this.measure(laid, other, swing, { shape: moving, over: { from, to }, moving: true });
    }
    if (this.mm >= mm || to - from < SHORTEST_MM || (moving.straight && clamped.straight)) return;
    [this.mm, this.least] = [mm, least];
    const middle = (from + to) / 2;
    this.selfOver(moving, clamped, from, middle);
    this.selfOver(moving, clamped, middle, to);
  }

  found(): WholeClearance | undefined {
    if (!this.least) return undefined;
    const { shape, over, moving, phiRad, part, other } = this.least;
    const { x: px, y: py } = this.at.seat.pivot;
    let { x, y } = part;
    if (moving) {
      const [c, s] = [Math.cos(phiRad), Math.sin(phiRad)];
      [x, y] = [c * part.x + s * part.y - slideAt(this.at.seat, phiRad), c * part.y - s * part.x];
    }
    const { w } = shape.placeOf({ x: x + px, y: y + py }, over.from, over.to);
    return {
      mm: this.mm,
      points: [
        [part.x + px, part.y + py, w],
        [other.x + px, other.y + py, w],
      ],
    };
  }

  private measure(
    turning: Reaching,
    fixed: Reaching,
    swing: Swing,
    of: Pick<Least, "shape" | "over" | "moving">,
  ): void {
    if (isOutOfReach(turning, fixed, swing.maxSlide + this.mm)) return;
    const nearest = this.kernel.find(turning.features, fixed.features, swing, this.mm);
    if (!nearest) return;
    const { phiRad, movingX, movingY, fixedX, fixedY } = nearest;
    this.mm = nearest.mm;
    let [c, s] = [1, 0];
    // Measured in the frame of the leaf: turn both points with it.
    if (swing === this.at.pieces.sliding) [c, s] = [Math.cos(phiRad), Math.sin(phiRad)];
    const moving = { x: c * movingX - s * movingY, y: s * movingX + c * movingY };
    const still = { x: c * fixedX - s * fixedY, y: s * fixedX + c * fixedY };
    const leafMoves = !of.moving && swing === this.at.pieces.leafTurning;
    const [part, other] = leafMoves ? [still, moving] : [moving, still];
    this.least = { ...of, phiRad, part, other };
  }
}
