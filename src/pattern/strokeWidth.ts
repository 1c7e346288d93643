/**
 * The clearance of a stroke after any set of bends, for ranking: the least of what its elements keep from the brake, from
 * the fingers of a row and from each other, each worked out once and shared like all that is known of elements.
 */
import type { Mm } from "../units/quantity.ts";
import type { StrokeElements } from "./elements.ts";
import { Kept } from "./kept.ts";
import type { Setup } from "./setups.ts";
import type { Body } from "./strokeBodies.ts";
import { ClearanceSearch } from "./strokeClearance.ts";
import { isOffSupport, type StrokeState, trueElement } from "./strokeState.ts";

/** A distance as far as it was looked into: exact where it is less than `upToMm`, else that or more. */
interface Told {
  readonly mm: Mm;
  readonly upToMm: Mm;
}

export class StrokeWidths {
  /** By base, by row or by moving element; then by element. */
  private readonly fromBase = new Kept<Told[]>();
  private readonly fromRow = new Kept<Told[]>();
  private readonly fromEach = new Kept<Told[]>();

  constructor(private readonly elements: StrokeElements) {}

  /** Least distance during the stroke; exact where it is less than `enoughMm`, else that or more. */
  widthMm(state: StrokeState, { number, base, fingers }: Setup, enoughMm: Mm): Mm {
    const told = {
      base: this.fromBase.of(base.number, () => []),
      row: this.fromRow.of(number, () => []),
    };
    let least = enoughMm;
    for (const element of state.all) {
      const off = isOffSupport(state, element);
      const at = 4 * element.number + (off.strips ? 2 : 0) + (off.faces ? 1 : 0);
      const from = (bodies: readonly Body[]) => (search: ClearanceSearch) => {
        for (const shape of trueElement(state, element.face))
          for (const body of bodies) search[element.side](shape, body);
      };
      least = this.told(told.base, at, least, from(base.bodies));
      if (fingers.length > 0) least = this.told(told.row, at, least, from(fingers));
    }
    const { moving, clamped } = this.elements.plan;
    for (const one of moving) {
      const pairs = this.fromEach.of(state.all[one]!.number, () => []);
      for (const other of clamped) {
        least = this.told(pairs, state.all[other]!.number, least, (search) => {
          const others = trueElement(state, other);
          for (const { shape } of trueElement(state, one))
            for (const two of others) search.self(shape, two.shape);
        });
      }
    }
    return least;
  }

  /** The lesser of a distance that is known, or measured now, and `upToMm`. */
  private told(known: Told[], at: number, upToMm: Mm, measure: (search: ClearanceSearch) => void): Mm {
    const told = known[at];
    if (told && (told.mm < told.upToMm || told.upToMm >= upToMm)) return Math.min(upToMm, told.mm);
    const search = new ClearanceSearch(this.elements);
    search.mm = upToMm;
    measure(search);
    known[at] = { mm: search.mm, upToMm };
    return search.mm;
  }
}
