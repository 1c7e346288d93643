/**
 * A side of the sheet from the bend outward, joint by joint, formed or flat, as one number: a 1, then a bit for each joint,
 * the nearest first. Half of a path is the same without its last joint; 2·path and 2·path + 1 go on from it, flat or formed.
 * Paths that begin alike lie together: whatever is kept by path is at hand when sets are walked through in that order.
 */

/** No joint yet: the flat at the bend alone. */
export const FLAT_AT_BEND = 1;

/** The path over all of `joints`, with joint j formed where bit j of `formed` is set, as contact/ counts them. */
export function pathOver(joints: number, formed: number): number {
  let path = FLAT_AT_BEND;
  for (let j = 0; j < joints; j++) path = 2 * path + ((formed >>> j) & 1);
  return path;
}

/** How many joints a path is over. */
export function jointsOf(path: number): number {
  return 31 - Math.clz32(path);
}

/** The joints formed on a path, the nearest in bit 0, as contact/ counts them. */
export function formedOn(path: number): number {
  let formed = 0;
  for (let rest = path; rest > 1; rest >>>= 1) formed = (formed << 1) | (rest & 1);
  return formed;
}

/** Whether no joint of a path is formed. */
export function isFlat(path: number): boolean {
  return (path & (path - 1)) === 0;
}

/** The side of a bend that leads to the start of the part, from the set of bends done. */
export function pathToStart(set: number, bend: number): number {
  return (1 << bend) | (set & ((1 << bend) - 1));
}

/** The side of a bend that leads to the end of a part of n bends. */
export function pathToEnd(set: number, bend: number, n: number): number {
  return pathOver(n - 1 - bend, set >>> (bend + 1));
}
