/**
 * The packing that cancels the bow of the narrow brake, as rows of a table: five places from an end to the middle.
 * Nine stations from end to end are the same from both ends.
 */
import type { NarrowBrake } from "../narrowBrake.ts";

export const CROWN_PLACES = ["end", "1/8", "1/4", "3/8", "middle"] as const;

/** Millimetres of packing; the places are parts of the length from either end. */
export function crownRows({ bows }: NarrowBrake): string[][] {
  const packing = (member: string, i: number) =>
    bows.find((bow) => bow.member === member)?.crown[i]?.packingMm ?? 0;
  return [
    ["bar and holder", ...CROWN_PLACES.map((_, i) => (packing("holder", i) + packing("bed", i)).toFixed(2))],
    ["leaf and face strip", ...CROWN_PLACES.map((_, i) => packing("leaf", i).toFixed(2))],
  ];
}
