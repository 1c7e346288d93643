/**
 * Where to sight each bend of an answered part: the line for the side that the order clamps. The other side has a
 * sight line of its own. A bend that the order does not reach is sighted with the start of the part clamped.
 */
import type { End } from "../part/part.ts";
import type { Mm } from "../units/quantity.ts";
import type { Answer } from "./answer.ts";

export interface SightLine {
  readonly at: Mm;
  readonly clamped: End;
}

/** Sight line of each bend, from the free end of flat 1. */
export function sightLines({ blank, order }: Pick<Answer, "blank" | "order">): SightLine[] {
  return blank.bends.map(({ bend, sightLine }) => {
    const step = order.find((one) => one.bend === bend);
    return { at: step?.sightLine ?? sightLine, clamped: step?.clamped ?? "start" };
  });
}
