/**
 * What a way out costs the person at the brake: nothing, a turn of a screw, a hammer, a changed part, a changed tool.
 * The whole number is the class, the fraction ranks within it by how large the change is.
 * Common practice, no source.
 */
import type { WayKind } from "../jobFile/way.ts";

const CLASS: Readonly<Record<WayKind, number>> = {
  side: 0,
  order: 1,
  partWay: 1.5,
  lift: 3,
  swing: 3,
  openEnds: 3,
  setback: 3,
  automaticSetback: 3,
  topRadius: 4,
  trimFlat: 5,
  widenFlat: 5,
  twoFlats: 5.5,
  leaveOpen: 6,
  leaveAllOpen: 6.5,
  relief: 7,
  noseAngle: 8,
  thinnerBar: 9,
  leafFace: 10,
  flatAndLeaf: 10.5,
};

/** Another brake of the shop stands ready: dearer than another order, cheaper than any change of part or tool. */
export const OTHER_BRAKE_COST = 2;
/** Another brake, and a flat trimmed for it. */
export const TRIMMED_ON_OTHER_COST = 5.2;
/** A bar to be made: dearest. */
export const SHOP_BAR_COST = 11;
/** Added to a way that hardly works: it comes after all that do. */
export const LAST_COST = 100;

/** A change of this size is as large as any within its class. */
const LARGE: Readonly<Record<"mm" | "deg", number>> = { mm: 50, deg: 90 };

/** @example costOf("trimFlat", 5, "mm") // 5.1 */
export function costOf(kind: WayKind, size = 0, measure: "mm" | "deg" = "mm"): number {
  return CLASS[kind] + Math.min(0.999, size / LARGE[measure]);
}
