/**
 * Whether the leaf of the assembled brake turns as far as its parts ask, with what the bend may lose on top.
 */
import type { Assembly } from "../solid.ts";
import { checkOf, type StrengthCheck } from "../strengthCheck.ts";
import type { UnderLoad } from "./under.ts";

export function swingCheck({
  requirements,
  assembly,
}: Pick<UnderLoad, "requirements"> & { readonly assembly: Assembly }): StrengthCheck {
  return checkOf({
    member: "leaf",
    check: "angle that it can turn to",
    // Written so that more is worse, as everywhere: what the parts ask for against what is free.
    value: Math.max(...requirements.parts.map((part) => part.overbendDeg)),
    limit: assembly.swing,
    unit: "deg",
    formula: "profiles turned by a quarter of a degree until two of them overlap",
    source: "the assembly itself",
    assumptions: ["no sheet in the brake", "bar at its least setback"],
    pieces: ["leaf", "bar", "holder"],
    grows: null,
  });
}
