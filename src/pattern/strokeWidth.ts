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

export class StrokeWidths {
  private readonly known = new Map<string, Mm>();

  constructor(
    private readonly elements: StrokeElements,
    private readonly machine: Machine,
  ) {}

  /** Least distance during the stroke; Infinity where nothing is left to measure. */
  widthMm(made: BendSet, tooling: Tooling): Mm {
    const state = strokeState(this.elements, made);
    if (!state) return 0;
    const bodies = strokeBodies(this.machine, this.elements.seat.noseSetbackMm, tooling);
    const standing = toolingKey(tooling);
    let least = Infinity;
    for (const { face, side } of state.all) {
      const shapes = trueElement(state, face);
      const off = shapes.map(({ offSupport }) => (offSupport ? "o" : "m")).join("");
      least = Math.min(
        least,
        this.told(`${this.keyOf(state, face)}|${off}|${standing}`, () =>
          this.withBrake(shapes, side, bodies),
        ),
      );
    }
    const { sides } = this.elements.plan;
    for (const [moving, side] of sides.entries()) {
      if (side === "clamped") continue;
      for (const [clamped, other] of sides.entries()) {
        if (other === "moving") continue;
        const key = `${this.keyOf(state, moving)}/${this.keyOf(state, clamped)}`;
        least = Math.min(
          least,
          this.told(key, () => this.between(trueElement(state, moving), trueElement(state, clamped))),
        );
      }
    }
    return least;
  }

  private keyOf({ made, plan }: StrokeState, face: number): string {
    return `${face}:${made & plan.deciding[face]!}`;
  }

  private told(key: string, measure: () => Mm): Mm {
    const known = this.known.get(key);
    if (known !== undefined) return known;
    const mm = measure();
    this.known.set(key, mm);
    return mm;
  }

  private withBrake(shapes: readonly TrueShape[], side: "clamped" | "moving", bodies: readonly Body[]): Mm {
    const search = new ClearanceSearch(this.elements, this.machine);
    for (const shape of shapes) for (const body of bodies) search[side](shape, body);
    return search.mm;
  }

  private between(moving: readonly TrueShape[], clamped: readonly TrueShape[]): Mm {
    const search = new ClearanceSearch(this.elements, this.machine);
    for (const one of moving) for (const other of clamped) search.self(one.shape, other.shape);
    return search.mm;
  }
}

function toolingKey({ fingers, placedMm }: Tooling): string {
  const row = fingers?.map(({ widthMm, fromMm }) => `${fromMm},${widthMm}`).join(";") ?? "";
  return `${placedMm ?? ""}|${row}`;
}
