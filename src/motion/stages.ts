/**
 * An order walked through: for each of its steps the part as it stands then, so that a bend may be begun, left part way,
 * and finished later. Without such bends every stage is the part itself with a set of bends done.
 */
import type { Brake } from "../brake/brake.ts";
import { LEAST_FOLD_DEG, MOST_FOLD_DEG } from "../part/hem.ts";
import type { End, Part } from "../part/part.ts";
import type { Deg } from "../units/quantity.ts";
import { type Flattening, hemEnd, hemFlattened, hemFolded } from "./hemStrokes.ts";
import { partWayMade } from "./partWay.ts";

/** One step of an order; bends count from 0. */
export interface OrderStep {
  readonly bend: number;
  readonly clamped: End;
  /** Leaves the bend at this angle after springback, to be finished by a later step with the same end clamped. */
  readonly toDeg?: Deg;
  /** Leaf angle of a hem's first stroke; as far as the leaf may go unless given. */
  readonly foldDeg?: Deg;
}

/** A bend as an order comes to it; bends count from 0. */
export interface BendInTurn {
  /** Bends made before, bend 1 in bit 0. */
  readonly bendsDone: number;
  readonly bend: number;
  readonly clamped: End;
}

export interface Stage extends OrderStep, BendInTurn {
  /** The part with bends left part way as they are then; a bend that is begun counts with the angle it is left at. */
  readonly part: Part;
  readonly brake: Brake;
  /** Bends of `part` made before, begun ones among them, bend 1 in bit 0; never the bend itself. */
  readonly bendsDone: number;
  /** Of a bend that was begun before: where it was left, and the part as it goes in. */
  readonly begun?: { readonly fromDeg: Deg; readonly part: Part };
  /** Of a hem: its first stroke, or how it lies under the clamp in its second, where it does at all. */
  readonly hem?: "fold" | { readonly flattening: Flattening | undefined };
}

/**
 * The stages of an order that makes every bend once, some in two strokes; a hem makes two stages, one after the other.
 * @throws RangeError where a bend begun would eat a whole flat, or the first stroke of a hem
 */
export function stagesOf(part: Part, brake: Brake, order: readonly OrderStep[]): Stage[] {
  const left = new Map<number, OrderStep & { readonly toDeg: Deg }>();
  let bendsDone = 0;
  return order.flatMap((step): Stage[] => {
    const { bend, toDeg } = step;
    const fromDeg = left.get(bend)?.toDeg;
    const goesIn = withLeft(part, brake, [...left.values()]);
    left.delete(bend);
    if (toDeg !== undefined) left.set(bend, { ...step, toDeg });
    const whole = withLeft(part, brake, [...left.values()]);
    const before = bendsDone & ~(1 << bend);
    bendsDone |= 1 << bend;
    if (part.bends[bend]!.hem) return hemStages(whole, brake, step, before);
    return [
      {
        ...step,
        part: whole,
        brake,
        bendsDone: before,
        ...(fromDeg !== undefined && { begun: { fromDeg, part: goesIn } }),
      },
    ];
  });
}

/** The two strokes of a hem. */
function hemStages(part: Part, brake: Brake, step: OrderStep, bendsDone: number): Stage[] {
  const { bend, foldDeg = Math.min(MOST_FOLD_DEG, brake.leaf.swingDeg) } = step;
  const folded = hemFolded(part, brake, bend, Math.max(LEAST_FOLD_DEG, foldDeg));
  if (!folded) throw new RangeError(`the first stroke of the hem at bend ${bend + 1} would eat a whole flat`);
  const flattening = hemFlattened(part, brake, bend, folded);
  const flat = flattening ?? { part: folded, brake };
  return [
    { ...step, part: folded, brake, bendsDone, hem: "fold" },
    { ...step, clamped: hemEnd(bend), part: flat.part, brake: flat.brake, bendsDone, hem: { flattening } },
  ];
}

/** The part as it stands with these bends left part way. */
function withLeft(part: Part, brake: Brake, left: readonly (OrderStep & { readonly toDeg: Deg })[]): Part {
  return left.reduce((so, { bend, clamped, toDeg }) => {
    const made = partWayMade(so, bend, clamped, toDeg, brake.leaf.pivot);
    if (!made) throw new RangeError(`bend ${bend + 1} left at ${toDeg} degrees would eat a whole flat`);
    return made;
  }, part);
}
