/**
 * The part of a whole job: a box, a section with ends and spans, or a drawn pattern, made into faces and bends. What is no
 * part, a strip that crosses another or faces that overlap once folded, is told with its key and its place in the blank.
 */
import type { Brake } from "../brake/brake.ts";
import { bendLeftAt } from "../part/leftOpen.ts";
import type { Part } from "../part/part.ts";
import { faceNameWords } from "../pattern/faceName.ts";
import { overlappingFaces } from "../pattern/facesOverlap.ts";
import { type NamedPart, namedPartOf } from "../pattern/namedPart.ts";
import type { Built } from "../pattern/panels.ts";
import type { LineBend, Pattern } from "../pattern/pattern.ts";
import { type WholePart, wholePartOf } from "../pattern/wholePart.ts";
import type { Corner } from "../plane/fillet.ts";
import { formAll } from "./formAll.ts";
import { formPart } from "./formPart.ts";
import type { HandFinish } from "./job.ts";
import { notePatternFault } from "./patternSlips.ts";
import { readBox } from "./readBox.ts";
import { endBends, readSectionBuilt } from "./readEnds.ts";
import { readFinishByHand } from "./readFinishByHand.ts";
import { lengthAt, type Reading, refuse } from "./reading.ts";
import { readCorners, readOutline } from "./readOutline.ts";
import { readPart } from "./readPart.ts";
import type { JobFile } from "./schema.ts";
import type { WholeFile } from "./wholeSchema.ts";

export interface WholePartRead {
  /** The part as the leaf makes it. */
  readonly part: WholePart;
  /** The part as it is in the end, where some bend is closed by hand. */
  readonly finished?: WholePart;
  readonly finishByHand?: readonly HandFinish[];
  /** The panels that it was built of; a drawn pattern has none. */
  readonly built?: Built;
}

/** The part, or undefined with the problems noted. */
export function readWholePart(reading: Reading, file: WholeFile, brake: Brake): WholePartRead | undefined {
  const { box, pattern, flats, bends } = file.part;
  const ways = [box && "box", pattern && "pattern", (flats ?? bends) && "flats and bends"].filter(Boolean);
  if (ways.length !== 1) {
    const found = ways.length === 0 ? "none of them" : ways.join(" and ");
    const allowed = "one of box, pattern, or flats and bends with ends or spans";
    reading.problems.push({ path: "part", found, allowed });
    return undefined;
  }
  const made = pattern
    ? readPattern(reading, file, pattern, brake)
    : box
      ? fromBuilt(readBox(reading, file, box, brake))
      : fromBuilt(readSection(reading, file, brake));
  if (!made) return undefined;
  const { formed, pattern: cut, built } = made;
  const result = namedPartOf(cut, built?.names);
  if (!result.ok) {
    notePatternFault(reading, file.part, result.fault);
    return undefined;
  }
  const { name, metal, thicknessMm, kFactor } = formed;
  const part = wholePartOf({ name, metal, thicknessMm, kFactor }, result.part);
  const overlap = overlappingFaces(part);
  if (overlap) {
    noteOverlap(reading, file, result.part, overlap);
    return undefined;
  }
  const own = { part, ...(built && { built }) };
  if (!file.finishByHand?.length) return own;
  const finishByHand = readFinishByHand(reading, file.finishByHand, formed);
  if (reading.problems.length > 0) return undefined;
  const left = namedPartOf(leftOpen(cut, finishByHand), built?.names);
  if (!left.ok) {
    notePatternFault(reading, file.part, left.fault);
    return undefined;
  }
  const leafs = wholePartOf({ name, metal, thicknessMm, kFactor }, left.part);
  return { ...own, part: leafs, finished: part, finishByHand };
}

/** The pattern as the leaf leaves it: such a bend takes up less of its strip, from the same middle line. */
function leftOpen(pattern: Pattern, byHand: readonly HandFinish[]): Pattern {
  const bends = pattern.bends.map((bend, i): LineBend => {
    const left = byHand.find((one) => one.bend === i);
    return left ? { ...bend, ...bendLeftAt(bend, pattern.thicknessMm, left.toDeg) } : bend;
  });
  return { ...pattern, bends };
}

interface Made {
  readonly formed: Part;
  readonly pattern: Pattern;
  readonly built?: Built;
}

function fromBuilt(part: ReturnType<typeof readBox>): Made | undefined {
  if (!part) return undefined;
  const { formed, built } = part;
  const pattern = { thicknessMm: formed.thicknessMm, outline: built.outline, holes: [], bends: built.bends };
  return { formed, pattern, built };
}

function readSection(reading: Reading, file: WholeFile, brake: Brake): ReturnType<typeof readBox> {
  const {
    flats = [],
    bends = [],
    ends: _ends,
    spans: _spans,
    box: _box,
    pattern: _pattern,
    ...sheet
  } = file.part;
  const dimensions = file.part.dimensions;
  if (dimensions === undefined) {
    refuse(reading, "part.dimensions", undefined, '"outside" or "inside" or "flat"');
    return undefined;
  }
  const section = {
    ...file,
    order: undefined,
    part: { ...sheet, dimensions, flats, bends },
  } as unknown as JobFile;
  const asked = readPart(reading, section.part);
  if (!asked) return undefined;
  const own = bends.map((bend, i) => ({ path: `part.bends[${i}]`, bend }));
  const formed = formAll(reading, file, [...own, ...endBends(file.part)], brake);
  if (!formed) return undefined;
  // One setback for all bends is that of the largest, ends among them.
  const noseSetback = brake.noseSetback === "one" ? formed.bends[0]!.noseSetbackMm : brake.noseSetback;
  const alone = formPart(reading, asked, { ...brake, noseSetback }, section);
  if (!alone) return undefined;
  return readSectionBuilt(reading, file, { formed, flatsMm: alone.flatsMm, bends: bends.length });
}

function readPattern(
  reading: Reading,
  file: WholeFile,
  pattern: NonNullable<WholeFile["part"]["pattern"]>,
  brake: Brake,
): Made | undefined {
  const before = reading.problems.length;
  const outline = shape(reading, "part.pattern.outline", pattern.outline);
  const holes = (pattern.holes ?? []).map((hole, i) => shape(reading, `part.pattern.holes[${i}]`, hole));
  const lines = pattern.bends.map(({ line }, i) => {
    const [from, to] = line.map((point, end) => {
      const path = `part.pattern.bends[${i}].line[${end}]`;
      return {
        x: lengthAt(reading, `${path}[0]`, point[0]!, "any"),
        y: lengthAt(reading, `${path}[1]`, point[1]!, "any"),
      };
    });
    if (Math.hypot(to!.x - from!.x, to!.y - from!.y) < 0.1)
      refuse(reading, `part.pattern.bends[${i}].line`, line, "a line longer than 0.1 mm");
    return { from: from!, to: to! };
  });
  const written = pattern.bends.map(({ line: _, ...bend }, i) => ({
    path: `part.pattern.bends[${i}]`,
    bend,
  }));
  const formed = formAll(reading, file, written, brake);
  if (!formed || !outline || reading.problems.length > before) return undefined;
  const bends = lines.map((line, i): LineBend => ({ ...formed.bends[i]!, ...line }));
  const cut = { thicknessMm: formed.thicknessMm, outline, holes: holes as (readonly Corner[])[], bends };
  return { formed, pattern: cut };
}

/** Corners of a closed shape, or undefined with the problem noted. */
function shape(
  reading: Reading,
  path: string,
  corners: NonNullable<WholeFile["part"]["pattern"]>["outline"],
): readonly Corner[] | undefined {
  return readOutline(reading, path, corners) && readCorners({ ...reading, problems: [] }, path, corners);
}

function noteOverlap(
  reading: Reading,
  file: WholeFile,
  { names }: NamedPart,
  [one, other]: readonly [number, number],
): void {
  const path = file.part.box ? "part.box" : file.part.pattern ? "part.pattern" : "part";
  const found = `a part whose ${faceNameWords(names[one]!)} and ${faceNameWords(names[other]!)} overlap once it is folded`;
  reading.problems.push({
    path,
    found,
    allowed: "one whose faces keep clear of each other when all bends are made",
  });
}
