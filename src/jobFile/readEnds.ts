/**
 * A section with ends and spans made into its blank. Sizes are taken as `dimensions` says; what leaves no sheet is told by
 * the key that would have to change.
 */
import type { Part } from "../part/part.ts";
import { type SectionEnd, sectionPattern } from "../pattern/sectionPattern.ts";
import type { Mm } from "../units/quantity.ts";
import type { WrittenBend } from "./formAll.ts";
import { type BuiltPart, takenBy } from "./readBox.ts";
import { lengthAt, type Reading, refuse, sayLimit } from "./reading.ts";
import type { WholeFile } from "./wholeSchema.ts";

/** How long a section is taken where nothing depends on it. */
const ANY_LENGTH_MM: Mm = 100;

/** The ends of a section as written: their bends in the order of their numbers. */
export function endBends({ ends = [] }: WholeFile["part"]): WrittenBend[] {
  return ends.flatMap(({ lips = [], angle, turn, insideRadius, overbend }, i) => [
    {
      path: `part.ends[${i}]`,
      bend: {
        angle,
        turn,
        ...(insideRadius !== undefined && { insideRadius }),
        ...(overbend !== undefined && { overbend }),
      },
    },
    ...lips.map(({ size: _, ...bend }, j) => ({ path: `part.ends[${i}].lips[${j}]`, bend })),
  ]);
}

/** A section, read and formed already, with its ends and spans. */
export interface FormedSection {
  /** Sheet and all bends, those of the ends behind the section's own. */
  readonly formed: Part;
  /** The section alone, its flats from tangent line to tangent line. */
  readonly flatsMm: readonly Mm[];
  readonly bends: number;
}

/** The blank of a section with ends and spans, or undefined with the problems noted. */
export function readSectionBuilt(
  reading: Reading,
  { part }: WholeFile,
  { formed, flatsMm, bends }: FormedSection,
): BuiltPart | undefined {
  const before = reading.problems.length;
  const { ends = [], spans = [] } = part;
  const flatAt = (path: string, flat: number): number => {
    if (flat < 1 || flat > flatsMm.length)
      refuse(reading, path, flat, `the number of a flat, from 1 to ${flatsMm.length}`);
    return flat - 1;
  };
  if (part.length === undefined && ends.length + spans.length > 0)
    refuse(
      reading,
      "part.length",
      undefined,
      "the part's length along its bend lines, since it has ends or spans",
    );
  const lengthMm =
    part.length === undefined ? ANY_LENGTH_MM : lengthAt(reading, "part.length", part.length, "above0");
  let used = bends;
  const read = ends.map((end, i): SectionEnd => {
    const path = `part.ends[${i}]`;
    const sizes = [
      lengthAt(reading, `${path}.size`, end.size, "above0"),
      ...(end.lips ?? []).map((lip, j) => lengthAt(reading, `${path}.lips[${j}].size`, lip.size, "above0")),
    ];
    const fromMm = end.from === undefined ? undefined : lengthAt(reading, `${path}.from`, end.from, "any");
    const toMm = end.to === undefined ? undefined : lengthAt(reading, `${path}.to`, end.to, "any");
    if (fromMm !== undefined && toMm !== undefined && toMm <= fromMm)
      refuse(reading, `${path}.to`, end.to, "more than from");
    return {
      flat: flatAt(`${path}.flat`, end.flat),
      at: end.at,
      links: sizes.map((sizeMm) => ({ sizeMm, bend: formed.bends[used++]! })),
      ...(fromMm !== undefined && { fromMm }),
      ...(toMm !== undefined && { toMm }),
    };
  });
  const cut = spans.map((span, i) => {
    const path = `part.spans[${i}]`;
    const fromMm = lengthAt(reading, `${path}.from`, span.from, "atLeast0");
    const toMm = lengthAt(reading, `${path}.to`, span.to, "above0");
    if (toMm <= fromMm) refuse(reading, `${path}.to`, span.to, "more than from");
    if (part.length !== undefined && toMm > lengthMm + 1e-9)
      refuse(reading, `${path}.to`, span.to, "no more than the part's length");
    if (spans.slice(0, i).some((other) => other.flat === span.flat))
      refuse(reading, `${path}.flat`, span.flat, "a flat that no earlier span names");
    return { flat: flatAt(`${path}.flat`, span.flat), fromMm, toMm };
  });
  if (reading.problems.length > before) return undefined;
  const result = sectionPattern({
    flatsMm,
    bends: formed.bends.slice(0, bends),
    lengthMm,
    ends: read,
    spans: cut,
    taken: takenBy(part, formed.thicknessMm),
  });
  if (result.ok) return { formed, built: result.built };
  noteSectionFault(reading, part, result.fault);
  return undefined;
}

function noteSectionFault(
  reading: Reading,
  part: WholeFile["part"],
  fault: Extract<ReturnType<typeof sectionPattern>, { ok: false }>["fault"],
): void {
  const more = sayLimit(reading.units, "least");
  if (fault.kind === "length") {
    const i = (part.spans ?? []).findIndex(({ flat }) => flat === fault.flat + 1);
    const [path, written] =
      i < 0 ? ["part.length", part.length] : [`part.spans[${i}].to`, part.spans![i]!.to];
    refuse(
      reading,
      path,
      written,
      `longer, since the ends of flat ${fault.flat + 1} leave nothing between them`,
    );
  } else if (fault.kind === "link") {
    const end = part.ends![fault.end]!;
    const [path, written] =
      fault.link === 0
        ? [`part.ends[${fault.end}].size`, end.size]
        : [`part.ends[${fault.end}].lips[${fault.link - 1}].size`, end.lips![fault.link - 1]!.size];
    refuse(reading, path, written, `larger than ${more(fault.leastMm)}, which its bends take up`);
  } else if (fault.kind === "apart") {
    const flats = `flats ${fault.bend + 1} and ${fault.bend + 2}`;
    refuse(
      reading,
      "part.spans",
      part.spans,
      `such that ${flats} share some of the length, for bend ${fault.bend + 1}`,
    );
  } else {
    const path = `part.ends[${fault.end}]`;
    refuse(reading, path, part.ends![fault.end], "from and to such that it meets its flat's edge");
  }
}
