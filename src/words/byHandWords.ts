/**
 * Bends made by hand over a block, in the foreman's words.
 */
import { formatLength, type LengthUnit } from "../units/length.ts";
import type { Deg, Mm } from "../units/quantity.ts";
import { angleWords } from "./angleWords.ts";

export interface BlockBend {
  readonly bend: number;
  readonly insideRadius: Mm;
  readonly angle: Deg;
  readonly overbend: Deg;
}

/**
 * Which bends, the block's radius, and the angle between its two faces: what the finished flats include, less the springback.
 * @example byHandWords([{ bend: 2, insideRadius: 1, angle: 90, overbend: 92 }], "mm").split(", and let")[0] // "Last of all, by hand: fold bend 2 over a block with an edge rounded to 1 mm and its faces at 88°"
 */
export function byHandWords(bends: readonly BlockBend[], units: LengthUnit): string {
  const blocks = new Map<string, number[]>();
  for (const { bend, insideRadius, angle, overbend } of bends) {
    const radius = `${formatLength(insideRadius, units)} ${units}`;
    const block = `over a block with an edge rounded to ${radius} and its faces at ${angleWords(180 - overbend)}, and let it spring back to ${angleWords(angle)}`;
    blocks.set(block, [...(blocks.get(block) ?? []), bend]);
  }
  const said = [...blocks].map(([block, which]) => `fold ${bendsWords(which)} ${block}`);
  return `Last of all, by hand: ${said.join("; ")}. Clamp the sheet to the block with a straight bar on the tangent line, and work along the whole line with a mallet or a hardwood block, a little at a time.`;
}

function bendsWords(bends: readonly number[]): string {
  if (bends.length === 1) return `bend ${bends[0]}`;
  return `bends ${bends.slice(0, -1).join(", ")} and ${bends.at(-1)}`;
}
