/**
 * Edits of a bend order of the person's own: moved, the other end clamped, a bend made in two strokes and in one again.
 * Of two steps of one bend the first always begins it and the second finishes it, with the same end clamped.
 */
import type { OrderFile, Typed } from "./jobFile.ts";

type Order = readonly OrderFile[];

/** The step at `from` moved to `to`; where that turns the strokes of a bend round, they change places. */
export function movedStep(order: Order, from: number, to: number): Order {
  const next = [...order];
  const [step] = next.splice(from, 1);
  if (step === undefined) return order;
  next.splice(to, 0, step);
  return strokesInTurn(next);
}

function strokesInTurn(order: Order): Order {
  return order.map((step, i): OrderFile => {
    const later = order.slice(i + 1).find(({ bend }) => bend === step.bend);
    const earlier = order.slice(0, i).find(({ bend }) => bend === step.bend);
    const { bend, clamped } = step;
    if (later) return { ...step, to: step.to ?? later.to ?? "" };
    return earlier ? { bend, clamped } : step;
  });
}

/** The other end of the part clamped for a bend, in both of its strokes where it has two. */
export function otherEnd(order: Order, bend: number): Order {
  return order.map((step) =>
    step.bend === bend ? { ...step, clamped: step.clamped === "start" ? "end" : "start" } : step,
  );
}

/** The bend of the step at `at` begun in a step of its own, right before, and left at an angle. */
export function inTwoStrokes(order: Order, at: number, leftAt: Typed): Order {
  const step = order[at];
  if (step === undefined) return order;
  return order.toSpliced(at, 0, { ...step, to: leftAt });
}

/** The step that begins a bend taken out: the bend is made at once where it was to be finished. */
export function inOneStroke(order: Order, at: number): Order {
  return order.toSpliced(at, 1);
}
