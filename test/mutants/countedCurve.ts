/**
 * A curve of one pair that counts the looks at it: value and slope look at its fifth figure once each, the bound on its bend twice.
 */
import type { PairCurve } from "../../src/contact/pairCurve.ts";

export function counted(...figures: readonly number[]): {
  readonly curve: PairCurve;
  readonly looks: () => number;
} {
  let looks = 0;
  const curve = new Proxy(Float64Array.from(figures), {
    get: (list, key) => {
      if (key === "4") looks++;
      return Reflect.get(list, key);
    },
    set: (list, key, value: number) => Reflect.set(list, key, value),
  });
  return { curve, looks: () => looks };
}
