/**
 * Scales of technical drawings: ISO 5455 for millimetres, the quarter and eighth habits of inch shops. The largest that fits.
 */
import { onItsSide } from "../../drawing/page.ts";
import type { PageSize } from "../../drawing/pageSize.ts";
import type { LengthUnit } from "../../units/length.ts";

const SCALES: Readonly<Record<LengthUnit, readonly number[]>> = {
  mm: [1, 2, 5, 10, 20, 50],
  in: [1, 2, 4, 8, 16, 32],
};

export interface Scale {
  /** Page millimetres to a millimetre of the thing. */
  readonly ratio: number;
  /** "1:5". */
  readonly words: string;
}

/** @example scaleFor({ wideMm: 400, highMm: 50 }, { wideMm: 180, highMm: 60 }, "mm").words // "1:5" */
export function scaleFor(
  thing: { readonly wideMm: number; readonly highMm: number },
  room: { readonly wideMm: number; readonly highMm: number },
  units: LengthUnit,
): Scale {
  const list = SCALES[units];
  const down =
    list.find((one) => thing.wideMm / one <= room.wideMm && thing.highMm / one <= room.highMm) ??
    list.at(-1)!;
  return { ratio: 1 / down, words: `1:${down}` };
}

/** The page, upright or on its side, on which the thing comes out larger; on its side where both are alike. */
export function largerOf(
  upright: PageSize,
  units: LengthUnit,
  thing: { readonly wideMm: number; readonly highMm: number },
  roomOf: (size: PageSize) => { readonly wideMm: number; readonly highMm: number },
): { readonly size: PageSize; readonly scale: Scale } {
  const [lying, standing] = [onItsSide(upright), upright].map((size) => ({
    size,
    scale: scaleFor(thing, roomOf(size), units),
  })) as [{ size: PageSize; scale: Scale }, { size: PageSize; scale: Scale }];
  return standing.scale.ratio > lying.scale.ratio ? standing : lying;
}
