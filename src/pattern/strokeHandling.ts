/**
 * Ways in and out of one stroke: by the front, along x under the lifted clamp, or by an end, along w past every body on
 * that side, risen and lifted as far as it needs (design, section 7: the sheet by h, the clamp by g above it, h + g no more
 * than the lift). Unloading takes the part with its bend made and relaxed.
 */
import { BlockedHeights, blockHeights } from "../contact/blockedHeights.ts";
import type { Handling } from "../contact/loading.ts";
import type { Spot } from "../contact/overlap.ts";
import type { Mm } from "../units/quantity.ts";
import { type Laid, overlapsBody } from "./laid.ts";
import type { Shape } from "./shape.ts";
import { blockStanding, type Rising } from "./standing.ts";
import type { Body } from "./strokeBodies.ts";
import type { StrokeSide } from "./strokePlan.ts";
import { type StrokeState, sideShapes } from "./strokeState.ts";

/** The contract's ways, and the one of whole parts: fingers come off the holder with the part. */
export type WholeHandling = Handling | "fingers off";

export interface Opening {
  readonly liftMm: Mm;
  readonly openEnds: boolean;
}

/** A piece of sheet at one moment: how it lies over an interval of w, and one outline round all of it where it has several. */
export type Lying = Pick<Shape, "minW" | "maxW"> & {
  over(from: number, to: number): readonly Laid[];
  readonly rough: Laid | undefined;
};

/** A shape of one side before the stroke's bend is made, or after (`finished`). */
export function lyingShape(shape: Shape, side: StrokeSide, finished: boolean): Lying {
  const { minW, maxW } = shape;
  if (finished && side === "moving")
    return { minW, maxW, rough: shape.roughFinished, over: (from, to) => shape.finished(from, to) };
  return { minW, maxW, rough: shape.rough, over: (from, to) => shape.rest(from, to) };
}

/** All sheet of a stroke before its bend is made, or after (`finished`). */
export function lyingShapes(state: StrokeState, finished: boolean): Lying[] {
  const zone = state.elements.ownZone();
  const sides: StrokeSide[] = ["clamped", "moving"];
  return [
    ...sides.flatMap((side) => sideShapes(state, side).map((shape) => lyingShape(shape, side, finished))),
    ...(finished ? zone.bent : zone.flat).map((shape) => lyingShape(shape, "clamped", finished)),
  ];
}

/** The way in, or (`finished`) out. */
export function strokeHandling(
  state: StrokeState,
  bodies: readonly Body[],
  opening: Opening,
  finished: boolean,
): Handling {
  const lying = lyingShapes(state, finished);
  if (overlaps(lying, bodies)) return "blocked";
  const { liftMm, openEnds } = opening;
  const front = frontRise(lying, bodies, liftMm);
  if (front.fits) return "front";
  return openEnds && [true, false].some((toRight) => passesEnd(lying, bodies, liftMm, toRight))
    ? "end"
    : "blocked";
}

/** Heights at which the sheet can't be slid out by the front. */
export function frontRise(lying: readonly Lying[], bodies: readonly Body[], liftMm: Mm): Rise {
  const rise = new Rise(liftMm);
  for (const body of bodies) {
    for (const laid of laidOver(lying, body)) {
      blockHeights(laid.features, body.solid, rise.up(body), liftMm, rise.heightsOf(body));
      if (!rise.fits) return rise;
    }
  }
  return rise;
}

/** Whether the sheet overlaps the brake where it lies before the bend is made, or after (`finished`). */
export function overlapsBrake(state: StrokeState, bodies: readonly Body[], finished: boolean): boolean {
  return overlaps(lyingShapes(state, finished), bodies);
}

function overlaps(lying: readonly Lying[], bodies: readonly Body[]): boolean {
  const spot: Spot = { x: 0, y: 0 };
  return bodies.some((body) => laidOver(lying, body).some((laid) => overlapsBody(laid, body.solid, spot)));
}

function laidOver(lying: readonly Lying[], { from, to }: Pick<Body, "from" | "to">): Laid[] {
  return lying.flatMap((shape) => (shape.minW < to && shape.maxW > from ? shape.over(from, to) : []));
}

/** Heights blocked so far: of the sheet, and of the clamp above it. */
export class Rise {
  readonly sheet = new BlockedHeights();
  readonly clamp = new BlockedHeights();

  constructor(private readonly liftMm: Mm) {}

  up({ rises }: Body): 1 | -1 {
    return rises ? -1 : 1;
  }

  heightsOf({ rises }: Body): BlockedHeights {
    return rises ? this.clamp : this.sheet;
  }

  /** Whether sheet and clamp still find heights within the lift. */
  get fits(): boolean {
    return this.sheet.leastFree(0) + this.clamp.leastFree(0) <= this.liftMm;
  }
}

/** Whether the sheet can be risen and slid out to one side. */
function passesEnd(lying: readonly Lying[], bodies: readonly Body[], liftMm: Mm, toRight: boolean): boolean {
  return endRise(lying, bodies, liftMm, toRight).fits;
}

/** Whether a piece blocks no height. */
function standsFree(laid: Laid, solid: Body["solid"], rising: Omit<Rising, "forGood">): boolean {
  const heights = new BlockedHeights();
  blockStanding(laid, solid, { ...rising, forGood: true }, heights);
  return heights.bounds.length === 0;
}

/** Heights at which the sheet can't be slid out to one side: it passes all of a body that lies on that side of it. */
export function endRise(
  lying: readonly Lying[],
  bodies: readonly Body[],
  liftMm: Mm,
  toRight: boolean,
): Rise {
  const rise = new Rise(liftMm);
  for (const body of bodies) {
    const rising = { up: rise.up(body), liftMm };
    const passed = toRight ? { from: -Infinity, to: body.to } : { from: body.from, to: Infinity };
    const heights = rise.heightsOf(body);
    // What lies beside the body as seen along the bend line, whatever its station, passes it.
    const { minX, maxX } = body.solid.features;
    const near = lying.filter(
      ({ over, minW, maxW, rough }) =>
        (rough ? [rough] : over(minW, maxW)).some(
          ({ features }) => features.minX < maxX && features.maxX > minX,
        ) && !(rough && standsFree(rough, body.solid, rising)),
    );
    for (const laid of laidOver(near, body))
      blockStanding(laid, body.solid, { ...rising, forGood: true }, heights);
    for (const laid of laidOver(near, passed)) {
      blockStanding(laid, body.solid, { ...rising, forGood: false }, heights);
      if (!rise.fits) return rise;
    }
  }
  return rise;
}
