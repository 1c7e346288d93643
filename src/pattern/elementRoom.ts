/**
 * What one element of a stroke leaves free for getting the part in or out by the front: heights of the sheet over what
 * stands still, heights of the holder over the sheet, and heights of fingers that stand over its stations.
 */
import { BlockedHeights, blockHeights } from "../contact/blockedHeights.ts";
import type { Machine } from "../contact/machine.ts";
import type { Spot } from "../contact/overlap.ts";
import type { Mm } from "../units/quantity.ts";
import type { StrokeElements } from "./elements.ts";
import { type Laid, overlapsBody } from "./laid.ts";
import { fingerBodies } from "./stations.ts";
import type { Body, PlacedFinger } from "./strokeBodies.ts";
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

/** The room of some lying shapes round all bodies but fingers, and what fingers over them would block. */
export function elementRoom(
  { seat }: StrokeElements,
  machine: Machine,
  bodies: readonly Body[],
  lying: readonly Lying[],
): ElementRoom {
  const spot: Spot = { x: 0, y: 0 };
  const { liftMm } = machine.brake;
  const room = { overlaps: false, sheet: new BlockedHeights(), clamp: new BlockedHeights() };
  const standing = bodies.filter(({ member }) => member !== "finger");
  for (const shape of lying) {
    for (const body of standing) {
      for (const laid of over(shape, body)) {
        room.overlaps ||= overlapsBody(laid, body.solid, spot);
        if (body.rises) blockHeights(laid.features, body.solid, -1, liftMm, room.clamp);
        else blockHeights(laid.features, body.solid, 1, liftMm, room.sheet);
      }
    }
  }
  const solids = fingerBodies(machine, seat.noseSetbackMm);
  const fingers = lying.flatMap((shape) => {
    const heights = new BlockedHeights();
    for (const laid of shape.over(shape.minW, shape.maxW))
      for (const solid of solids) blockHeights(laid.features, solid, -1, liftMm, heights);
    return heights.bounds.length === 0 ? [] : [{ from: shape.minW, to: shape.maxW, heights }];
  });
  return { ...room, fingers };
}

function over(shape: Lying, { from, to }: Interval): readonly Laid[] {
  return shape.minW < to && shape.maxW > from ? shape.over(from, to) : [];
}

/** The rooms of all elements of a state together. */
export interface StateRoom {
  readonly overlaps: boolean;
  /** How far the sheet must rise over what stands still. */
  readonly riseMm: Mm;
  readonly clamp: BlockedHeights;
  readonly fingers: ElementRoom["fingers"];
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
  };
}

/** How far the sheet must rise and the clamp over it for the front; Infinity where there is no way. */
export function frontLift(room: StateRoom, row: readonly PlacedFinger[]): Mm {
  if (room.overlaps) return Infinity;
  const clamp = new BlockedHeights();
  clamp.addAll(room.clamp);
  for (const one of room.fingers)
    if (row.some(({ fromMm, widthMm }) => fromMm < one.to && fromMm + widthMm > one.from))
      clamp.addAll(one.heights);
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
