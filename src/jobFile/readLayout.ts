/**
 * What a job says of the sheet beside the section: grain, doubts of the flats' readings, cut-outs of the flat blank.
 * All may be left out. Angles of the grain in degrees from the bend lines; lengths in mm.
 */
import { layOut } from "../blank/blank.ts";
import { type CutOut, overlap, type Span } from "../blank/cutOut.ts";
import { SheetCells } from "../blank/sheetCells.ts";
import type { Part } from "../part/part.ts";
import type { Deg, Mm } from "../units/quantity.ts";
import { foundText } from "./problem.ts";
import { angleAt, lengthAt, type Reading, refuse, sayLimit } from "./reading.ts";
import type { JobFile } from "./schema.ts";

export interface SheetLayout {
  /** From the bend lines: 0 along them, 90 across. */
  readonly grainDeg?: Deg;
  /** How far each flat's length may be off, either way. */
  readonly doubtsMm?: readonly Mm[];
  readonly cutOuts?: readonly CutOut[];
}

type PartFile = JobFile["part"];
type CutOutFile = NonNullable<PartFile["cutOuts"]>[number];

/** The word for the blank's other end, whose place only the blank knows to the last decimal. */
const TO_THE_END = "end";

/** A figure typed in as it is printed lies this near to the edge or bend tangent line that it means. */
export const AS_PRINTED_MM: Mm = 0.05;

/** The layout as the file gives it, with the problems noted; `part` is what the brake forms of the same file. */
export function readLayout(reading: Reading, file: PartFile, part: Part): SheetLayout {
  return {
    ...(file.grain !== undefined && { grainDeg: readGrain(reading, file.grain) }),
    ...(file.doubts !== undefined && { doubtsMm: readDoubts(reading, file.doubts, part) }),
    ...(file.cutOuts !== undefined && { cutOuts: readCutOuts(reading, file.cutOuts, part) }),
  };
}

function readGrain(reading: Reading, written: NonNullable<PartFile["grain"]>): Deg {
  if (written === "along") return 0;
  if (written === "across") return 90;
  const allowed = '"across", "along" or an angle from 0 to 180 degrees, measured from the bend lines';
  return angleAt(reading, "part.grain", written, { from: 0, to: 180, allowed });
}

function readDoubts(reading: Reading, written: NonNullable<PartFile["doubts"]>, { flatsMm }: Part): Mm[] {
  if (Array.isArray(written)) {
    if (written.length !== flatsMm.length) {
      const allowed = `one length for all flats, or a list of ${flatsMm.length}, one for each flat`;
      refuse(reading, "part.doubts", written, allowed);
      return [];
    }
    return written.map((doubt, i) =>
      readDoubt(reading, `part.doubts[${i}]`, doubt, flatsMm[i] ?? 0, "the flat"),
    );
  }
  const doubtMm = readDoubt(reading, "part.doubts", written, Math.min(...flatsMm), "the shortest flat");
  return flatsMm.map(() => doubtMm);
}

/** A doubt as long as its flat would leave nothing of it. */
function readDoubt(reading: Reading, path: string, written: string | number, flatMm: Mm, flat: string): Mm {
  const doubtMm = lengthAt(reading, path, written, "atLeast0");
  if (!(doubtMm >= flatMm)) return doubtMm;
  const limit = sayLimit(reading.units, "most")(flatMm);
  return refuse(reading, path, written, `less than ${limit}, ${flat} between its bend tangent lines`);
}

function readCutOuts(reading: Reading, written: readonly CutOutFile[], part: Part): CutOut[] {
  const { lengthMm } = part;
  if (lengthMm === undefined) {
    if (written.length === 0) return [];
    const allowed = "the length along the bend lines, since part.cutOuts are measured along it";
    refuse(reading, "part.length", undefined, allowed);
    return [];
  }
  const before = reading.problems.length;
  const { developedWidthMm: widthMm, bends } = layOut(part);
  const lines = [0, widthMm, ...bends.flatMap(({ tangentsMm }) => tangentsMm)];
  const across = { sizeMm: widthMm, size: "blank's width", lines };
  const along = { sizeMm: lengthMm, size: "part's length", lines: [0, lengthMm] };
  const cutOuts = written.map((one, i) => ({
    acrossMm: readSpan(reading, `part.cutOuts[${i}].across`, one.across, across),
    alongMm: readSpan(reading, `part.cutOuts[${i}].along`, one.along, along),
  }));
  if (reading.problems.length === before) noteOverlaps(reading, cutOuts);
  if (reading.problems.length === before && !new SheetCells({ widthMm, lengthMm }, cutOuts).inOnePiece()) {
    const found = "cut-outs that part the blank";
    reading.problems.push({ path: "part.cutOuts", found, allowed: "such that it stays in one piece" });
  }
  return cutOuts;
}

/** One way across the blank: its size, what to call it, and the lines that a place may be meant to lie on. */
interface Way {
  readonly sizeMm: Mm;
  readonly size: string;
  readonly lines: readonly Mm[];
}

function readSpan(
  reading: Reading,
  path: string,
  written: readonly (string | number)[],
  { sizeMm, size, lines }: Way,
): Span {
  const before = reading.problems.length;
  const [from = 0, to = 0] = written;
  const fromMm = meant(lengthAt(reading, `${path}[0]`, from, "atLeast0"), lines);
  const toMm = to === TO_THE_END ? sizeMm : meant(lengthAt(reading, `${path}[1]`, to, "above0"), lines);
  if (reading.problems.length > before) return [Number.NaN, Number.NaN];
  const limit = sayLimit(reading.units, "most")(sizeMm);
  if (toMm > sizeMm) {
    return [fromMm, refuse(reading, `${path}[1]`, to, `at most ${limit}, the ${size}, or "${TO_THE_END}"`)];
  }
  if (fromMm < toMm) return [fromMm, toMm];
  const allowed = `less than the ${foundText(to)} where the cut-out ends`;
  return [refuse(reading, `${path}[0]`, from, allowed), toMm];
}

/** The line that a place is typed in for, or the place itself. */
function meant(placeMm: Mm, lines: readonly Mm[]): Mm {
  return lines.find((line) => Math.abs(placeMm - line) < AS_PRINTED_MM) ?? placeMm;
}

/** Each cut-out is held against those before it; the later one is told. */
function noteOverlaps({ problems }: Reading, cutOuts: readonly CutOut[]): void {
  cutOuts.forEach((one, i) => {
    const first = cutOuts.findIndex((other, j) => j < i && overlap(one, other));
    if (first < 0) return;
    const found = `a cut-out that overlaps cut-out ${first + 1}`;
    problems.push({ path: `part.cutOuts[${i}]`, found, allowed: "clear of all others" });
  });
}
