/**
 * A side of the sheet from the bend outward, joint by joint, formed or flat, as one number: a 1, then a bit for each joint,
 * the nearest first. Half of a path is the same without its last joint; 2·path and 2·path + 1 go on from it, flat or formed.
 * Paths that begin alike lie together: whatever is kept by path is at hand when sets are walked through in that order.
 */
import { reversedSet } from "./bendSets.ts";

/** No joint yet: the flat at the bend alone. */
export const FLAT_AT_BEND = 1;

/** The path over all of `joints`, with joint j formed where bit j of `formed` is set, as contact/ counts them. */
export function pathOver(joints: number, formed: number): number {
  return (1 << joints) | reversedSet(formed, joints);
}

/** How many joints a path is over. */
export function jointsOf(path: number): number {
  return 31 - Math.clz32(path);
}

/** The joints formed on a path, the nearest in bit 0, as contact/ counts them. */
export function formedOn(path: number): number {
  return reversedSet(path, jointsOf(path));
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

/** The moving and the clamped side of a bend, `endHeld` 0 with the start clamped, 1 with the end. */
export function sidesOf(set: number, bend: number, n: number, endHeld: number): [number, number] {
  const [lower, upper] = [pathToStart(set, bend), pathToEnd(set, bend, n)];
  return endHeld ? [lower, upper] : [upper, lower];
}
