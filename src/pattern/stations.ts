/**
 * Stations along a stroke's bend line where a finger can't stand because of one element: it would meet it while it lies,
 * swings or is finished. A station is free only where an interval round it was shown free; what lies between two blocked
 * stations less than a millimetre apart counts as blocked. Ends are good to 0.001 mm, to the careful side.
 */
import type { Machine } from "../contact/machine.ts";
import type { Spot } from "../contact/overlap.ts";
import type { SolidBody } from "../contact/solidBody.ts";
import type { Mm } from "../units/quantity.ts";
import type { Element, StrokeElements } from "./elements.ts";
import { overlapsBody } from "./laid.ts";
import type { Shape } from "./shape.ts";
import { type Body, isHolder } from "./strokeBodies.ts";
import { ContactSearch } from "./strokeContact.ts";
import type { Interval } from "./strokePlan.ts";

/** Ends of blocked stations are found this exactly. */
const EXACT_MM: Mm = 0.001;

/** Stretches no longer than this are told by their ends. */
const COARSE_MM: Mm = 1;

/** The clamp's bodies that each finger carries. */
export function fingerBodies(machine: Machine, noseSetbackMm: Mm): readonly SolidBody[] {
  return machine.clampAt(noseSetbackMm).filter((_, i) => !isHolder(machine.brake, i));
}

/** Where no finger of these profiles can stand because of an element, in order. */
export function blockedStations(
  elements: StrokeElements,
  machine: Machine,
  bodies: readonly SolidBody[],
  { side, strips, faces }: Element,
): Interval[] {
  const search = new ContactSearch(elements, machine, true);
  const spot: Spot = { x: 0, y: 0 };
  const meets = (shape: Shape, from: number, to: number) =>
    bodies.some((solid) => {
      const body: Body = { member: "finger", solid, rises: true, from, to };
      search.forget();
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
    const block = (a: number, b: number): void => {
      found = merged([...found, { from: Math.min(a, b), to: Math.max(a, b) }]);
    };
    const ends =
      shape.straight || long > COARSE_MM ? [false, false] : [from, to].map((w) => meets(shape, w, w));
    if (shape.straight || long < EXACT_MM || (ends[0] && ends[1])) block(from, to);
    else if (ends[0] === ends[1]) {
      look(shape, from, (from + to) / 2);
      look(shape, (from + to) / 2, to);
    } else {
      // Blocked at one end: what else is blocked lies no nearer to the other than the last free place found.
      let [blocked, free] = ends[0] ? [from, to] : [to, from];
      const [start, end] = [blocked, free];
      while (Math.abs(free - blocked) > EXACT_MM) {
        const at = (blocked + free) / 2;
        if (meets(shape, at, at)) blocked = at;
        else free = at;
      }
      block(start, free);
      look(shape, Math.min(free, end), Math.max(free, end));
    }
  };
  // Plates first: of the bends beside them little is left to ask about then.
  for (const shape of [...strips, ...faces].sort((a, b) => Number(b.straight) - Number(a.straight)))
    look(shape, shape.minW, shape.maxW);
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
