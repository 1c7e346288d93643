/**
 * Whether the leaf of the assembled brake turns as far as a bend asks, with what the bend may lose on top.
 */
import type { Deg, Mm } from "../../units/quantity.ts";
import { checkOf, type StrengthCheck } from "../strengthCheck.ts";

interface Turn {
  readonly askedDeg: Deg;
  /** How far the leaf turns free. */
  readonly deg: Deg;
  /** How far the bar stands in front of its drawn place. */
  readonly forwardMm: Mm;
}

export function swingCheck({ askedDeg, deg, forwardMm }: Turn): StrengthCheck {
  return checkOf({
    member: "leaf",
    check:
      forwardMm === 0
        ? "angle that it can turn to"
        : "angle that it can turn to, bar forward for another bend",
    // Written so that more is worse, as everywhere: what the parts ask for against what is free.
    value: askedDeg,
    limit: deg,
    unit: "deg",
    formula: "profiles turned by a quarter of a degree until two of them overlap",
    source: "the assembly itself",
    assumptions: ["no sheet in the brake", "bar at the nose setback of that bend"],
    pieces: ["leaf", "bar", "holder"],
    grows: null,
  });
}
