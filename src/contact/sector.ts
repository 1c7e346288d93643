/**
 * Sectors as seen from the leaf's pivot: what turns up by φ can't meet what lies in a sector beyond its leading direction
 * and short of its lowest one. Cheap and safe: boxes are taken for pieces, so that a sector is never too small.
 */
import type { Mm } from "../units/quantity.ts";

/** What a piece lies in, from the pivot. */
export interface Box {
  readonly minX: Mm;
  readonly minY: Mm;
  readonly maxX: Mm;
  readonly maxY: Mm;
}

/** More than any direction plus any turn: whoever gets this has to be checked. */
const ALL_ROUND = 4 * Math.PI;

/** Leading direction (radians from +x) of a piece at rest that may slide inward by `slide`; `grow` widens its box. */
export function leadingDirection(F: Box, slide: number, grow: number): number {
  const minX = F.minX - slide - grow;
  if (minX >= 0) return F.maxY + grow > 0 ? Math.atan2(F.maxY + grow, minX) : 0;
  return F.minY - grow >= 0 ? Math.atan2(F.minY - grow, minX) : ALL_ROUND;
}

/** Lowest direction of such a piece, at most 0. */
export function lowestDirection(F: Box, slide: number): number {
  if (F.minY >= 0) return 0;
  return F.minX - slide > 0 ? Math.atan2(F.minY, F.minX - slide) : -ALL_ROUND;
}

/** Smallest direction, in [0, 2π), of a piece that stands; 0 where it reaches under the pivot's level in front. */
export function trailingDirection(F: Box, grow: number): number {
  const maxX = F.maxX + grow;
  if (maxX >= 0) return F.minY - grow >= 0 ? Math.atan2(F.minY - grow, maxX) : 0;
  return F.maxY + grow > 0 ? Math.atan2(F.maxY + grow, maxX) : Math.PI;
}

/**
 * Smallest and largest direction, in [0, 2π], of a closed border given as straight pieces (x1, y1, x2, y2); all round
 * where it crosses the ray along +x. Corners on the pivot itself have no direction and are passed over.
 */
export function directionsOf(pieces: Float64Array): readonly [least: number, most: number] {
  let [least, most] = [2 * Math.PI, 0];
  for (let i = 0; i < pieces.length; i += 4) {
    const [x1, y1, x2, y2] = [pieces[i]!, pieces[i + 1]!, pieces[i + 2]!, pieces[i + 3]!];
    if (y1 < 0 !== y2 < 0 && x1 + (-y1 * (x2 - x1)) / (y2 - y1) > 1e-9) return [0, 2 * Math.PI];
    if (Math.abs(x1) + Math.abs(y1) < 1e-9) continue;
    const direction = Math.atan2(y1, x1);
    const turned = direction < 0 ? direction + 2 * Math.PI : direction;
    least = Math.min(least, turned);
    most = Math.max(most, turned);
  }
  return [least, most];
}
