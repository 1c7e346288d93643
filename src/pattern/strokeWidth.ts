/**
 * The clearance of a stroke after any set of bends, for ranking: the least of what its elements keep from the brake, from
 * the fingers of a row and from each other, each worked out once and shared like all that is known of elements.
 */
import type { Machine } from "../contact/machine.ts";
import type { Mm } from "../units/quantity.ts";
import type { StrokeElements } from "./elements.ts";
import { type Body, strokeBodies, type Tooling } from "./strokeBodies.ts";
import { ClearanceSearch } from "./strokeClearance.ts";
import type { BendSet } from "./strokePlan.ts";
import { type StrokeState, strokeState, type TrueShape, trueElement } from "./strokeState.ts";

/** A distance as far as it was looked into: exact where it is less than `upToMm`, else that or more. */
interface Told {
  readonly mm: Mm;
  readonly upToMm: Mm;
}

export class StrokeWidths {
  private readonly known = new Map<string, Told>();

  constructor(
    private readonly elements: StrokeElements,
    private readonly machine: Machine,
  ) {}

  /** Least distance during the stroke; exact where it is less than `enoughMm`, else that or more. */
  widthMm(made: BendSet, tooling: Tooling, enoughMm: Mm): Mm {
    const state = strokeState(this.elements, made);
    if (!state) return 0;
    const bodies = strokeBodies(this.machine, this.elements.seat.noseSetbackMm, tooling);
    const standing = toolingKey(tooling);
    let least = enoughMm;
    for (const { face, side } of state.all) {
      const shapes = trueElement(state, face);
      const off = shapes.map(({ offSupport }) => (offSupport ? "o" : "m")).join("");
      const key = `${this.keyOf(state, face)}|${off}|${standing}`;
      least = Math.min(
        least,
        this.told(key, least, (search) => withBrake(search, shapes, side, bodies)),
      );
    }
    const { sides } = this.elements.plan;
    for (const [moving, side] of sides.entries()) {
      if (side === "clamped") continue;
      for (const [clamped, other] of sides.entries()) {
        if (other === "moving") continue;
        const key = `${this.keyOf(state, moving)}/${this.keyOf(state, clamped)}`;
        const between = (search: ClearanceSearch) => betweenSides(search, state, moving, clamped);
        least = Math.min(least, this.told(key, least, between));
      }
    }
    return least;
  }

  private keyOf({ made, plan }: StrokeState, face: number): string {
    return `${face}:${made & plan.deciding[face]!}`;
  }

  private told(key: string, upToMm: Mm, measure: (search: ClearanceSearch) => void): Mm {
    const known = this.known.get(key);
    if (known && (known.mm < known.upToMm || known.upToMm >= upToMm)) return known.mm;
    const search = new ClearanceSearch(this.elements, this.machine);
    search.mm = upToMm;
    measure(search);
    this.known.set(key, { mm: search.mm, upToMm });
    return search.mm;
  }
}

function withBrake(
  search: ClearanceSearch,
  shapes: readonly TrueShape[],
  side: "clamped" | "moving",
  bodies: readonly Body[],
): void {
  for (const shape of shapes) for (const body of bodies) search[side](shape, body);
}

function betweenSides(search: ClearanceSearch, state: StrokeState, moving: number, clamped: number): void {
  const others = trueElement(state, clamped);
  for (const one of trueElement(state, moving))
    for (const other of others) search.self(one.shape, other.shape);
}

function toolingKey({ fingers, placedMm }: Tooling): string {
  const row = fingers?.map(({ widthMm, fromMm }) => `${fromMm},${widthMm}`).join(";") ?? "";
  return `${placedMm ?? ""}|${row}`;
}
