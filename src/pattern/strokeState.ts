/**
 * A planned stroke after some bends are made: all its sheet, and how deep the coplanar runs are.
 */
import type { Mm } from "../units/quantity.ts";
import type { Element, StrokeElements } from "./elements.ts";
import type { Shape } from "./shape.ts";
import type { BendSet, StrokePlan } from "./strokePlan.ts";

export interface StrokeState {
  readonly elements: StrokeElements;
  readonly plan: StrokePlan;
  readonly made: BendSet;
  readonly all: readonly Element[];
  /** Depth of the clamped coplanar run from the bend tangent line, and of the swung one. */
  readonly gripMm: Mm;
  readonly flangeMm: Mm;
}

/** A state of a stroke; undefined where its bends don't lie on one line then. */
export function strokeState(elements: StrokeElements, made: BendSet): StrokeState | undefined {
  if (elements.onOneLine(made)) return undefined;
  const all = elements.all(made);
  const { clampedTangentX, movingTangentX } = elements.seat;
  let [least, most] = [clampedTangentX, movingTangentX];
  for (const { side, reach } of all) {
    if (!reach) continue;
    if (side === "clamped") least = Math.min(least, reach.from);
    else most = Math.max(most, reach.to);
  }
  return {
    elements,
    plan: elements.plan,
    made,
    all,
    gripMm: clampedTangentX - least,
    flangeMm: most - movingTangentX,
  };
}

/** Shapes of one side of a stroke, drawn in for contact. */
export function sideShapes({ all }: StrokeState, side: Element["side"]): Shape[] {
  return all.flatMap((element) => (element.side === side ? [...element.strips, ...element.faces] : []));
}

/** A shape with true faces, and whether it is left out of the clearance from the body that carries its side. */
export interface TrueShape {
  readonly shape: Shape;
  readonly offSupport: boolean;
}

/** Shapes of one side with true faces. */
export function trueShapes(state: StrokeState, side: Element["side"]): TrueShape[] {
  return state.all.flatMap((element) => (element.side === side ? trueElement(state, element.face) : []));
}

/** Shapes of an element with true faces. */
export function trueElement(state: StrokeState, face: number): TrueShape[] {
  const element = state.all[face]!;
  const off = isOffSupport(state, element);
  return [
    ...element.trueStrips().map((shape) => ({ shape, offSupport: off.strips })),
    ...element.trueFaces().map((shape) => ({ shape, offSupport: off.faces })),
  ];
}

/**
 * Whether an element's strips and face are left out of the clearance from the body that carries its side: an up-turned made
 * bend at a run's end, and the face right beyond it.
 */
export function isOffSupport(
  { all, plan }: StrokeState,
  element: Element,
): { readonly strips: boolean; readonly faces: boolean } {
  const before = (of: Element) => {
    const link = plan.links[of.face];
    return link && all[link.from];
  };
  const strips = element.bentUp && (element.run || before(element)?.run === true);
  // A run may also lie farther out, led up to by a bend at this face's other end.
  const faces =
    !element.run && (strips || all.some((next) => next.run && next.bentUp && before(next) === element));
  return { strips, faces };
}
