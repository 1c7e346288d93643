/**
 * A box to tick with a pencil. Page millimetres.
 */
import type { Mm } from "../units/quantity.ts";
import type { Mark } from "./model.ts";

/** A square of `sideMm`, its top left corner at (`left`, `top`). @example tickBox(0, 0, 5).length // 4 */
export function tickBox(left: Mm, top: Mm, sideMm: Mm): readonly Mark[] {
  const corners = [
    { x: left, y: top - sideMm },
    { x: left + sideMm, y: top - sideMm },
    { x: left + sideMm, y: top },
    { x: left, y: top },
  ];
  return corners.map((from, i) => {
    return { kind: "line", layer: "cut", from, to: corners[(i + 1) % corners.length] ?? from };
  });
}
