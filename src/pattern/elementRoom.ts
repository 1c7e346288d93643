/**
 * What one element of a stroke leaves free for getting the part in or out by the front: heights of the sheet over what
 * stands still, heights of the holder over the sheet, and heights of fingers that stand over its stations.
 */
import { BlockedHeights, blockHeights } from "../contact/blockedHeights.ts";
import type { Spot } from "../contact/overlap.ts";
import type { SolidBody } from "../contact/solidBody.ts";
import type { Mm } from "../units/quantity.ts";
import { Kept } from "./kept.ts";
import { overlapsBody } from "./laid.ts";
import type { Body } from "./strokeBodies.ts";
import type { Lying } from "./strokeHandling.ts";
import type { Interval } from "./strokePlan.ts";

export interface ElementRoom {
  /** Overlaps the brake, fingers apart, where it lies. */
  readonly overlaps: boolean;
  readonly sheet: BlockedHeights;
  readonly clamp: BlockedHeights;
  /** Heights that a finger anywhere over some stations blocks. */
  readonly fingers: readonly (Interval & { readonly heights: BlockedHeights })[];
}

/** Whether an element is out of the way of everything. */
export function blocksNothing({ overlaps, sheet, clamp, fingers }: ElementRoom): boolean {
  return !overlaps && sheet.bounds.length === 0 && clamp.bounds.length === 0 && fingers.length === 0;
}

/** The room of some lying shapes round all bodies but fingers, and what fingers of these profiles over them would block. */
export function elementRoom(
  liftMm: Mm,
  bodies: readonly Body[],
  fingers: readonly SolidBody[],
  lying: readonly Lying[],
): ElementRoom {
  const spot: Spot = { x: 0, y: 0 };
  const room = { overlaps: false, sheet: new BlockedHeights(), clamp: new BlockedHeights() };
  /** How a shape lies over an interval, if it blocks anything at all. */
  const near = ({ minW, maxW, rough, over }: Lying, { from, to }: Interval, solid: SolidBody, up: 1 | -1) => {
    if (minW >= to || maxW <= from) return [];
    if (!rough) return over(from, to);
    const heights = new BlockedHeights();
    blockHeights(rough.features, solid, up, liftMm, heights);
    return heights.bounds.length > 0 || overlapsBody(rough, solid, spot) ? over(from, to) : [];
  };
  for (const shape of lying) {
    for (const { member, rises, solid, from, to } of bodies) {
      if (member === "finger") continue;
      const up = rises ? -1 : 1;
      for (const laid of near(shape, { from, to }, solid, up)) {
        room.overlaps ||= overlapsBody(laid, solid, spot);
        blockHeights(laid.features, solid, up, liftMm, rises ? room.clamp : room.sheet);
      }
    }
  }
  const over = lying.flatMap((shape) => {
    const [heights, at] = [new BlockedHeights(), { from: shape.minW, to: shape.maxW }];
    const ever = { from: -Infinity, to: Infinity };
    for (const solid of fingers)
      for (const laid of near(shape, ever, solid, -1))
        blockHeights(laid.features, solid, -1, liftMm, heights);
    return heights.bounds.length === 0 ? [] : [{ ...at, heights }];
  });
  return { ...room, fingers: over };
}

/** The rooms of all elements of a state together. */
export interface StateRoom {
  readonly overlaps: boolean;
  /** How far the sheet must rise over what stands still. */
  readonly riseMm: Mm;
  readonly clamp: BlockedHeights;
  readonly fingers: ElementRoom["fingers"];
  /** What `frontLift` told, by the number of the setup. */
  readonly lifts: Kept<Mm>;
}

/** Rooms put together. */
export function stateRoom(rooms: readonly ElementRoom[]): StateRoom {
  const [sheet, clamp] = [new BlockedHeights(), new BlockedHeights()];
  for (const room of rooms) {
    sheet.addAll(room.sheet);
    clamp.addAll(room.clamp);
  }
  return {
    overlaps: rooms.some(({ overlaps }) => overlaps),
    riseMm: sheet.leastFree(0),
    clamp,
    fingers: rooms.flatMap(({ fingers }) => fingers),
    lifts: new Kept(),
  };
}

/** How far the sheet must rise and the clamp over it for the front; Infinity where there is no way. */
export function frontLift(room: StateRoom, fingers: readonly Interval[]): Mm {
  if (room.overlaps) return Infinity;
  const clamp = new BlockedHeights();
  clamp.addAll(room.clamp);
  for (const one of room.fingers)
    if (fingers.some(({ from, to }) => from < one.to && to > one.from)) clamp.addAll(one.heights);
  return room.riseMm + clamp.leastFree(0);
}

/** Stations that fingers lifted by this over the sheet can't have. */
export function stationsUnder({ fingers }: StateRoom, liftedMm: Mm): Interval[] {
  return fingers.filter(({ heights }) => heights.leastFree(liftedMm) > liftedMm);
}

/** Lifts worth trying: where fingers have just passed some element. */
export function liftsToTry({ fingers, clamp }: StateRoom, mostMm: Mm): Mm[] {
  const tops = [clamp, ...fingers.map(({ heights }) => heights)].flatMap(({ bounds }) =>
    bounds.filter((_, i) => i % 2 === 1),
  );
  return [...new Set([0, ...tops])].filter((mm) => mm <= mostMm).sort((a, b) => a - b);
}
