/**
 * How far the readings of the flats may be off, as the job file has it: one doubt for all flats, or one for each.
 */
import { usualDoubtMm } from "../../src/part/sample.ts";
import { type LengthUnit, parseLength } from "../../src/units/length.ts";
import { chainFlats } from "./chain.ts";
import { type JobFile, setAt, type Typed } from "./jobFile.ts";

/** The doubt of a reading that says nothing of it, as the file writes it: what callipers give. */
export function usualDoubt(units: LengthUnit): Typed {
  return units === "in" ? "1/64" : usualDoubtMm(units);
}

/** The doubt of one flat of the chain; the usual one where the file has none. */
export function doubtOf({ part, units }: JobFile, flat: number): Typed {
  const { doubts } = part;
  if (doubts === undefined) return usualDoubt(units);
  return isList(doubts) ? (doubts[flat] ?? usualDoubt(units)) : doubts;
}

/** The file with the doubt of one flat as typed; an empty box means the usual one. */
export function withDoubt(file: JobFile, flat: number, typed: Typed): JobFile {
  const next = String(typed).trim() === "" ? usualDoubt(file.units) : typed;
  const all = Array.from({ length: chainFlats(file.part) }, (_, i) => (i === flat ? next : doubtOf(file, i)));
  return setAt(file, ["part", "doubts"], all);
}

/** The file with the usual doubt for all flats, or with none. */
export function withDoubts(file: JobFile, doubtful: boolean): JobFile {
  return setAt(file, ["part", "doubts"], doubtful ? usualDoubt(file.units) : undefined);
}

/** The doubts of flats that have been put in another order, or added to: `from` names the old flat, or none. */
export function movedDoubts(file: JobFile, from: readonly (number | null)[]): JobFile["part"]["doubts"] {
  const { doubts } = file.part;
  if (doubts === undefined || !isList(doubts)) return doubts;
  return from.map((old) => (old === null ? usualDoubt(file.units) : doubtOf(file, old)));
}

/** A doubt in mm: the usual one where none is typed, null where it can't be read. */
export function doubtMm(typed: Typed | undefined, units: LengthUnit): number | null {
  if (typed === undefined || String(typed).trim() === "") return usualDoubtMm(units);
  const mm = parseLength(typed, units);
  return mm === undefined || mm < 0 || mm > 1e6 ? null : mm;
}

function isList(doubts: NonNullable<JobFile["part"]["doubts"]>): doubts is readonly Typed[] {
  return Array.isArray(doubts);
}
