/**
 * An order walked through: for each of its steps the part as it stands then, so that a bend may be begun, left part way,
 * and finished later. Without such bends every stage is the part itself with a set of bends done.
 */
import type { Brake } from "../brake/brake.ts";
import type { End, Part } from "../part/part.ts";
import type { Deg } from "../units/quantity.ts";
import { partWayMade } from "./partWay.ts";

/** One step of an order; bends count from 0. */
export interface OrderStep {
  readonly bend: number;
  readonly clamped: End;
  /** Leaves the bend at this angle after springback, to be finished by a later step with the same end clamped. */
  readonly toDeg?: Deg;
}

export interface Stage extends OrderStep {
  /** The part with bends left part way as they are then; a bend that is begun counts with the angle it is left at. */
  readonly part: Part;
  readonly brake: Brake;
  /** Bends of `part` made before, begun ones among them, bend 1 in bit 0; never the bend itself. */
  readonly bendsDone: number;
  /** Of a bend that was begun before: where it was left, and the part as it goes in. */
  readonly begun?: { readonly fromDeg: Deg; readonly part: Part };
}

/**
 * The stages of an order that makes every bend once, some in two strokes.
 * @throws RangeError where a bend begun would eat a whole flat
 */
export function stagesOf(part: Part, brake: Brake, order: readonly OrderStep[]): Stage[] {
  const left = new Map<number, OrderStep & { readonly toDeg: Deg }>();
  let bendsDone = 0;
  return order.map((step) => {
    const { bend, toDeg } = step;
    const fromDeg = left.get(bend)?.toDeg;
    const goesIn = withLeft(part, brake, [...left.values()]);
    left.delete(bend);
    if (toDeg !== undefined) left.set(bend, { ...step, toDeg });
    const whole = withLeft(part, brake, [...left.values()]);
    const before = bendsDone & ~(1 << bend);
    bendsDone |= 1 << bend;
    return {
      ...step,
      part: whole,
      brake,
      bendsDone: before,
      ...(fromDeg !== undefined && { begun: { fromDeg, part: goesIn } }),
    };
  });
}

/** The part as it stands with these bends left part way. */
function withLeft(part: Part, brake: Brake, left: readonly (OrderStep & { readonly toDeg: Deg })[]): Part {
  return left.reduce((so, { bend, clamped, toDeg }) => {
    const made = partWayMade(so, bend, clamped, toDeg, brake.leaf.pivot);
    if (!made) throw new RangeError(`bend ${bend + 1} left at ${toDeg} degrees would eat a whole flat`);
    return made;
  }, part);
}
