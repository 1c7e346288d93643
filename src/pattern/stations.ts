/**
 * Stations along a stroke's bend line where a finger can't stand because of one shape: it would meet it while it lies,
 * swings or is finished. A station is free only where an interval round it was shown free; what lies between two blocked
 * stations less than a millimetre apart counts as blocked. Ends are good to 0.001 mm, to the careful side.
 */
import type { Machine } from "../contact/machine.ts";
import type { Spot } from "../contact/overlap.ts";
import type { SolidBody } from "../contact/solidBody.ts";
import type { Mm } from "../units/quantity.ts";
import type { StrokeElements } from "./elements.ts";
import { overlapsBody } from "./laid.ts";
import type { Shape } from "./shape.ts";
import { type Body, isHolder } from "./strokeBodies.ts";
import { ContactSearch } from "./strokeContact.ts";
import type { Interval, StrokeSide } from "./strokePlan.ts";

/** Ends of blocked stations are found this exactly. */
const EXACT_MM: Mm = 0.001;

/** An interval is halved at least down to this before its ends speak for it. */
const COARSE_MM: Mm = 1;

/** The clamp's bodies that each finger carries. */
export function fingerBodies(machine: Machine, noseSetbackMm: Mm): readonly SolidBody[] {
  return machine.clampAt(noseSetbackMm).filter((_, i) => !isHolder(machine.brake, i));
}

/** Where no finger can stand because of some shapes of one side, in order. */
export function blockedStations(
  elements: StrokeElements,
  machine: Machine,
  shapes: readonly Shape[],
  side: StrokeSide,
): Interval[] {
  const bodies = fingerBodies(machine, elements.seat.noseSetbackMm);
  const spot: Spot = { x: 0, y: 0 };
  const meets = (shape: Shape, from: number, to: number) =>
    bodies.some((solid) => {
      const body: Body = { member: "finger", solid, rises: true, from, to };
      const search = new ContactSearch(elements, machine);
      if (side === "clamped") search.clamped(shape, body);
      else search.moving(shape, body);
      if (search.meets) return true;
      if (side === "clamped" || (shape.roughFinished && !overlapsBody(shape.roughFinished, solid, spot)))
        return false;
      return shape.finished(from, to).some((laid) => overlapsBody(laid, solid, spot));
    });
  let found: Interval[] = [];
  const look = (shape: Shape, from: number, to: number): void => {
    // What other sheet blocks already need not be asked again.
    if (found.some((known) => known.from <= from && known.to >= to) || !meets(shape, from, to)) return;
    const long = to - from;
    if (
      shape.straight ||
      long < EXACT_MM ||
      (long < COARSE_MM && meets(shape, from, from) && meets(shape, to, to))
    ) {
      found = merged([...found, { from, to }]);
      return;
    }
    const middle = (from + to) / 2;
    look(shape, from, middle);
    look(shape, middle, to);
  };
  // Plates first: of the bends beside them little is left to ask about then.
  const inTurn = [...shapes].sort((a, b) => Number(b.straight) - Number(a.straight));
  for (const shape of inTurn) {
    if (!meets(shape, shape.minW, shape.maxW)) continue;
    for (const piece of shape.single) look(piece, piece.minW, piece.maxW);
  }
  return found;
}

/** Intervals in order, those that overlap or touch made one. */
export function merged(intervals: readonly Interval[]): Interval[] {
  const all: { from: number; to: number }[] = [];
  for (const { from, to } of [...intervals].sort((a, b) => a.from - b.from)) {
    const last = all.at(-1);
    if (last && from <= last.to + EXACT_MM) last.to = Math.max(last.to, to);
    else all.push({ from, to });
  }
  return all;
}
