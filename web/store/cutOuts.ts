/**
 * Cut-outs of the flat blank when the part is turned: end for end both their places change, turned over those along the
 * bends. "end" stays the other end. Places are written as the shop writes them: within 0.0002 mm of where they were.
 */
import { writtenLength } from "../../src/jobFile/writtenLength.ts";
import { nearestSixtyFourth, parseLength } from "../../src/units/length.ts";
import type { CutOutFile, JobFile, SpanFile, Typed } from "./jobFile.ts";

/** How large the blank is; null where that is not known. */
export interface BlankSize {
  readonly widthMm: number | null;
  readonly lengthMm: number | null;
}

const SAME_MM = 1e-6;
/** More than writing a place down twice takes away. */
const ROUNDED_MM = 0.0002;

/** A span seen from the other end; what can't be read stays as it is typed. */
function fromOtherEnd([from, to]: SpanFile, sizeMm: number | null, units: JobFile["units"]): SpanFile {
  const place = (typed: Typed) => (typed === "end" ? sizeMm : (parseLength(typed, units) ?? null));
  const [fromMm, toMm] = [place(from), place(to)];
  if (sizeMm === null || fromMm === null || toMm === null) return [from, to];
  const written = (mm: number) => {
    const fraction = nearestSixtyFourth(mm);
    // The blank's width is no round figure: what was a fraction before it was turned is one again after.
    const isFraction = units === "in" && Math.abs(fraction.roundingMm) < ROUNDED_MM;
    const words = mm < SAME_MM ? 0 : isFraction ? fraction.words : writtenLength(mm, units);
    return /^\d+$/.test(String(words)) ? Number(words) : words;
  };
  return [written(sizeMm - toMm), fromMm < SAME_MM ? "end" : written(sizeMm - fromMm)];
}

/** The cut-outs of a part that is turned end for end, or over with flat 1 left where it is. */
export function turnedCutOuts(
  cutOuts: readonly CutOutFile[],
  { widthMm, lengthMm }: BlankSize,
  units: JobFile["units"],
  endForEnd: boolean,
): readonly CutOutFile[] {
  return cutOuts.map(({ across, along }) => ({
    across: endForEnd ? fromOtherEnd(across, widthMm, units) : across,
    along: fromOtherEnd(along, lengthMm, units),
  }));
}

/** A cut-out to start from: a notch at the corner where flat 1 and the blank begin. */
export function newCutOut(units: JobFile["units"]): CutOutFile {
  const side: Typed = units === "in" ? "1/2" : 12;
  return { across: [0, side], along: [0, side] };
}
