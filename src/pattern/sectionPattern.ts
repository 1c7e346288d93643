/**
 * A section with ends and spans as a pattern. Across, flats and allowances follow each other as in the section; along its
 * length a flat with ends is a chain of its own (end, length, end). A flat without an end of its own stops level with the
 * deepest tangent line there. x runs from flat 1 to the last flat, y from start to finish. Exact.
 */
import type { Bend } from "../part/part.ts";
import type { Mm } from "../units/quantity.ts";
import type { FaceName } from "./faceName.ts";
import { type Built, built, FAR_EDGE, hang, type Panel, rootPanel, type Stretch } from "./panels.ts";

/** A link of a chain that stands on a flat or wall: its size as dimensioned, and the bend before it. */
export interface Link {
  readonly sizeMm: Mm;
  readonly bend: Bend;
}

export interface SectionEnd {
  readonly flat: number;
  readonly at: "start" | "finish";
  /** The end itself, then its lips outward. */
  readonly links: readonly Link[];
  /** Along the flat's edge, measured as the flat is; the flat's tangent lines where not given. */
  readonly fromMm?: Mm;
  readonly toMm?: Mm;
}

export interface SectionSpan {
  readonly flat: number;
  readonly fromMm: Mm;
  readonly toMm: Mm;
}

export interface WholeSection {
  /** Tangent-to-tangent lengths, one more than there are bends. */
  readonly flatsMm: readonly Mm[];
  readonly bends: readonly Bend[];
  readonly lengthMm: Mm;
  readonly ends: readonly SectionEnd[];
  readonly spans: readonly SectionSpan[];
  /** What a bend takes off a dimension that it ends. */
  readonly taken: (bend: Bend) => Mm;
}

/** Why a section with ends is no blank; all counted from 0. */
export type SectionFault =
  /** A flat, at its length, must be longer than its ends take up. */
  | { readonly kind: "length"; readonly flat: number; readonly leastMm: Mm }
  /** An end (link 0) or its lip must be larger than its bends take up. */
  | { readonly kind: "link"; readonly end: number; readonly link: number; readonly leastMm: Mm }
  /** Two flats share no part of the length. */
  | { readonly kind: "apart"; readonly bend: number }
  /** An end lies beside its flat. */
  | { readonly kind: "beside"; readonly end: number };

export type SectionResult =
  | { readonly ok: true; readonly built: Built }
  | { readonly ok: false; readonly fault: SectionFault };

const refused = (fault: SectionFault): SectionResult => ({ ok: false, fault });

/** The blank of a section with ends; its bends are those of the section, then those of the ends in order. */
export function sectionPattern(section: WholeSection): SectionResult {
  const { flatsMm, bends, ends } = section;
  const alongMm = flatsMm.map((_, flat) => lengthOf(section, flat));
  const short = alongMm.findIndex(({ fromMm, toMm }) => toMm <= fromMm);
  if (short >= 0) {
    const { fromMm, toMm } = alongMm[short]!;
    const taken = section.lengthMm - (toMm - fromMm);
    return refused({ kind: "length", flat: short, leastMm: taken });
  }
  const first = alongMm[0]!;
  const root = rootPanel({ kind: "flat", flat: 0 }, flatsMm[0]!, first.toMm - first.fromMm);
  const panels: Panel[] = [root];
  for (const [i, bend] of bends.entries()) {
    const [here, next] = [alongMm[i]!, alongMm[i + 1]!];
    const strip = {
      fromMm: Math.max(here.fromMm, next.fromMm) - here.fromMm,
      toMm: Math.min(here.toMm, next.toMm) - here.fromMm,
    };
    if (strip.toMm <= strip.fromMm) return refused({ kind: "apart", bend: i });
    const base = { fromMm: next.fromMm - here.fromMm, toMm: next.toMm - here.fromMm };
    const name: FaceName = { kind: "flat", flat: i + 1 };
    panels.push(hang(panels[i]!, FAR_EDGE, { name, bend, strip, base, far: base, depthMm: flatsMm[i + 1]! }));
  }
  for (const [i, end] of ends.entries()) {
    const fault = hangEnd(section, panels[end.flat]!, end, i);
    if (fault) return refused(fault);
  }
  return {
    ok: true,
    built: built(root, [...bends, ...ends.flatMap(({ links }) => links.map((link) => link.bend))]),
  };
}

/** Where a flat runs along the length, between tangent lines. */
function lengthOf({ lengthMm, ends, spans, taken }: WholeSection, flat: number): Stretch {
  const span = spans.find((one) => one.flat === flat);
  const takenAt = (at: SectionEnd["at"]): Mm => {
    const mine = ends.filter((end) => end.at === at && end.flat === flat);
    if (mine.length > 0 || span) return Math.max(0, ...mine.map(({ links }) => taken(links[0]!.bend)));
    const others = ends.filter((end) => end.at === at && !spans.some((one) => one.flat === end.flat));
    return Math.max(0, ...others.map(({ links }) => taken(links[0]!.bend)));
  };
  return {
    fromMm: (span?.fromMm ?? 0) + takenAt("start"),
    toMm: (span?.toMm ?? lengthMm) - takenAt("finish"),
  };
}

/** Hangs an end with its lips on its flat; a fault where one of them can't be. */
function hangEnd(
  section: WholeSection,
  flat: Panel,
  end: SectionEnd,
  number: number,
): SectionFault | undefined {
  const { flatsMm, bends, taken } = section;
  const wide = flatsMm[end.flat]!;
  const before = bends[end.flat - 1];
  const offMm = before ? taken(before) : 0;
  const [fromMm, toMm] = [
    end.fromMm === undefined ? 0 : end.fromMm - offMm,
    end.toMm === undefined ? wide : end.toMm - offMm,
  ];
  // The finish edge runs from the high side of the flat to the low one.
  const [edge, plate] =
    end.at === "start" ? [0, { fromMm, toMm }] : [2, { fromMm: wide - toMm, toMm: wide - fromMm }];
  let strip = { fromMm: Math.max(0, plate.fromMm), toMm: Math.min(wide, plate.toMm) };
  if (strip.toMm <= strip.fromMm) return { kind: "beside", end: number };
  let [on, onEdge, base] = [flat, edge, plate];
  for (const [link, { sizeMm, bend }] of end.links.entries()) {
    const next = end.links[link + 1];
    const takenMm = taken(bend) + (next ? taken(next.bend) : 0);
    const depthMm = sizeMm - takenMm;
    if (depthMm <= 0) return { kind: "link", end: number, link, leastMm: takenMm };
    const wall: FaceName = { kind: "end", flat: end.flat, at: end.at };
    const name: FaceName = link === 0 ? wall : { kind: "lip", of: wall, number: link - 1 };
    on = hang(on, onEdge, { name, bend, strip, base, far: base, depthMm });
    onEdge = FAR_EDGE;
    base = { fromMm: 0, toMm: plate.toMm - plate.fromMm };
    strip = base;
  }
  return undefined;
}
