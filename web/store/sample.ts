/**
 * How a part was read off a sample with callipers: for each flat the side that was measured, and one overall size to
 * check the sum by. Kept beside the job; the lengths themselves and how sure they are stand in the job file.
 */

import { lengthInUnit } from "../../src/jobFile/inUnit.ts";
import { writtenLength } from "../../src/jobFile/writtenLength.ts";
import { insideBendSetback, outsideBendSetback } from "../../src/part/bendSetback.ts";
import type { Part } from "../../src/part/part.ts";
import { type LengthUnit, parseLength } from "../../src/units/length.ts";
import { flatPath } from "./chain.ts";
import { doubtOf, usualDoubt } from "./doubts.ts";
import { getAt, type JobFile, setAt, type Typed } from "./jobFile.ts";

export type Side = "outside" | "inside";

/** One flat's reading. What is left out: the job file's own side, the length as the job file has it. */
export interface FlatSample {
  readonly side?: Side;
  /** How far off it may be, where that was typed: the figure that counts stands in the job file. */
  readonly doubt?: Typed;
  /** The reading as typed, where it is not the job file's figure itself. */
  readonly reading?: Typed;
}

export interface OverallSample {
  readonly reading: Typed;
  readonly doubt?: Typed;
  /** Measured along this flat, from 0, or square to it. */
  readonly flat: number;
  readonly square: boolean;
}

export interface Sample {
  readonly flats: readonly FlatSample[];
  readonly overall: OverallSample;
}

/** A sample of which nothing has been read yet. */
export const NOTHING_READ: Sample = { flats: [], overall: { reading: "", flat: 0, square: false } };

/** How a job's part was read: a job that says how sure its readings are is the copy of a sample, whoever wrote it. */
export function sampleOf(job: { readonly file: JobFile; readonly sample?: Sample }): Sample | null {
  return job.sample ?? (job.file.part.doubts === undefined ? null : NOTHING_READ);
}

/** Readings closer than this are the same. */
const SAME_MM = 0.001;
const MOST_FLATS = 61;
const LONGEST_WORD = 80;

type Bends = Pick<Part, "bends" | "thicknessMm">;

/** The side of a flat's reading. */
export function sideOf(sample: Sample, file: JobFile, flat: number): Side {
  return sample.flats[flat]?.side ?? (file.part.dimensions === "inside" ? "inside" : "outside");
}

/** How far the bends at a flat's ends carry a length beyond the bend tangent lines. */
function beyond(how: JobFile["part"]["dimensions"], flat: number, { bends, thicknessMm }: Bends): number {
  const ends = [bends[flat - 1], bends[flat]];
  return ends.reduce((sum, bend) => {
    if (bend === undefined || how === "flat") return sum;
    const shape = { ...bend, thicknessMm };
    return sum + (how === "outside" ? outsideBendSetback(shape) : insideBendSetback(shape));
  }, 0);
}

/** The reading of a flat: as it was typed, or worked out from the job's own figure. */
export function readingOf(sample: Sample, file: JobFile, flat: number, part: Bends | null): Typed {
  const own = getAt(file, flatPath(file, flat)) as Typed;
  const side = sideOf(sample, file, flat);
  if (side === file.part.dimensions || part === null) return own;
  const typed = sample.flats[flat]?.reading;
  const ownMm = parseLength(own, file.units);
  if (ownMm === undefined) return typed ?? own;
  const readMm = ownMm + beyond(side, flat, part) - beyond(file.part.dimensions, flat, part);
  const typedMm = typed === undefined ? undefined : parseLength(typed, file.units);
  if (typed !== undefined && typedMm !== undefined && Math.abs(typedMm - readMm) < SAME_MM) return typed;
  return Number(readMm.toFixed(4)) === 0 ? own : writtenLength(readMm, file.units);
}

/** File and sample with a flat read as `reading` on `side`; what can't be read goes into the job as typed. */
export function withReading(
  sample: Sample,
  file: JobFile,
  flat: number,
  read: { readonly reading: Typed; readonly side: Side },
  part: Bends | null,
): { readonly file: JobFile; readonly sample: Sample } {
  const { reading, side } = read;
  const readMm = parseLength(reading, file.units);
  const same = side === file.part.dimensions || part === null || readMm === undefined;
  const own = same
    ? reading
    : writtenLength(readMm + beyond(file.part.dimensions, flat, part) - beyond(side, flat, part), file.units);
  return {
    file: setAt(file, flatPath(file, flat), own),
    sample: withFlat(sample, flat, { ...sample.flats[flat], side, reading }),
  };
}

/** The sample with one flat's row replaced. */
export function withFlat(sample: Sample, flat: number, row: FlatSample): Sample {
  const count = Math.max(sample.flats.length, flat + 1);
  return {
    ...sample,
    flats: Array.from({ length: count }, (_, i) => (i === flat ? row : (sample.flats[i] ?? {}))),
  };
}

/** The doubt shown in a flat's box: empty where it is the usual one and was not typed. */
export function doubtShown(sample: Sample, file: JobFile, flat: number): Typed {
  const doubt = doubtOf(file, flat);
  const typed = String(sample.flats[flat]?.doubt ?? "").trim() !== "";
  return !typed && doubt === usualDoubt(file.units) ? "" : doubt;
}

/** The sample when the job is switched to the other unit: every reading the same size as before. */
export function sampleInUnit({ flats, overall }: Sample, from: LengthUnit, to: LengthUnit): Sample {
  const one = <T extends { readonly doubt?: Typed; readonly reading?: Typed }>(row: T): T => ({
    ...row,
    ...(row.doubt === undefined ? {} : { doubt: lengthInUnit(row.doubt, from, to) }),
    ...(row.reading === undefined ? {} : { reading: lengthInUnit(row.reading, from, to) }),
  });
  return { flats: flats.map(one), overall: one(overall) };
}

/** The sample of a part whose flats have been put in another order or taken away: `from` names the old flat, or none. */
export function movedSample(sample: Sample, from: readonly (number | null)[]): Sample {
  const { overall } = sample;
  const flat = from.indexOf(overall.flat);
  return {
    flats: from.map((old) => (old === null ? {} : (sample.flats[old] ?? {}))),
    // A size measured along a flat that is gone says nothing any more.
    overall: flat < 0 ? NOTHING_READ.overall : { ...overall, flat },
  };
}

const isBag = (v: unknown): v is Record<string, unknown> => typeof v === "object" && v !== null;
const isTyped = (v: unknown): v is Typed =>
  (typeof v === "number" && Number.isFinite(v)) || (typeof v === "string" && v.length <= LONGEST_WORD);

/** A kept sample read back; what is not of its shape is left out, and undefined means that there is none. */
export function adoptSample(kept: unknown): Sample | undefined {
  if (!isBag(kept)) return undefined;
  const rows = Array.isArray(kept.flats) ? kept.flats.slice(0, MOST_FLATS) : [];
  const doubtOf = (bag: Record<string, unknown>) => (isTyped(bag.doubt) ? { doubt: bag.doubt } : {});
  const flats = rows.map((row: unknown): FlatSample => {
    if (!isBag(row)) return {};
    return {
      ...(row.side === "inside" || row.side === "outside" ? { side: row.side } : {}),
      ...doubtOf(row),
      ...(isTyped(row.reading) ? { reading: row.reading } : {}),
    };
  });
  const over = isBag(kept.overall) ? kept.overall : {};
  const flat = typeof over.flat === "number" && over.flat >= 0 && over.flat < MOST_FLATS ? over.flat : 0;
  const overall = {
    reading: isTyped(over.reading) ? over.reading : "",
    ...doubtOf(over),
    flat: Math.floor(flat),
    square: over.square === true,
  };
  return { flats, overall };
}
