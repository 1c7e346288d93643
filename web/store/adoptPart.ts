/**
 * Takes in the part of a job file from anywhere: flats and bends that belong together, metal, and how the sheet lies.
 */
import { HEM_KINDS } from "../../src/part/part.ts";
import { adoptWhole } from "./adoptWhole.ts";
import type { BendFile, CutOutFile, FlatFile, PartFile, Typed } from "./jobFile.ts";
import { isBag, isTyped, LONGEST_WORD, MOST_BENDS, present, type Sieve } from "./sieve.ts";
import { isWhole } from "./wholeFile.ts";

const MOST_CUT_OUTS = 50;

/** The part, with what does not fit left out; `usual` stands in for what it can't do without. */
export function adoptPart(sieve: Sieve, value: unknown, usual: PartFile): PartFile {
  const bag = sieve.bag(value, "part");
  const keys = [
    "name",
    "material",
    "thickness",
    "insideRadius",
    "kFactor",
    "length",
    "dimensions",
    "closedBends",
    "flats",
    "bends",
    "overall",
    "allowance",
    "grain",
    "doubts",
    "cutOuts",
    "box",
    "pattern",
    "ends",
    "spans",
  ];
  sieve.unknownKeys(bag, "part", keys);
  const bends = sieve.list<BendFile>(bag.bends, "part.bends", MOST_BENDS, (item, at) => {
    if (!isBag(item)) return undefined;
    const keys = [
      "angle",
      "included",
      "turn",
      "insideRadius",
      "overbend",
      "deduction",
      "hem",
      "gap",
      "offset",
    ];
    sieve.unknownKeys(item, at, keys);
    const included = sieve.typed(item, "included", at);
    const hem = sieve.oneOf(item, "hem", at, HEM_KINDS);
    return present<BendFile>({
      hem,
      offset: sieve.typed(item, "offset", at),
      angle: sieve.typed(item, "angle", at) ?? (included === undefined && hem === undefined ? 90 : undefined),
      included,
      gap: sieve.typed(item, "gap", at),
      turn: sieve.oneOf(item, "turn", at, ["up", "down"] as const) ?? "up",
      insideRadius: sieve.typed(item, "insideRadius", at),
      overbend: sieve.typed(item, "overbend", at),
      deduction: sieve.typed(item, "deduction", at),
    });
  });
  const flats = sieve.list<FlatFile>(bag.flats, "part.flats", MOST_BENDS + 1, (v, at) =>
    isTyped(v) ? v : adoptFlat(sieve, v, at),
  );
  const whole = adoptWhole(sieve, bag);
  const isSection = whole.box === undefined && whole.pattern === undefined;
  if (!isSection && (flats ?? bends ?? []).length > 0) sieve.drop("part.flats");
  const least = isWhole(whole) ? 0 : 1;
  const chain = isSection
    ? matched(flats ?? usual.flats, bends ?? usual.bends, least)
    : { flats: [], bends: [] };
  if (isSection && flats && bends && flats.length !== bends.length + 1) {
    sieve.leftOut.push(
      `part.flats has ${flats.length} flats for ${bends.length} bends; one more flat than bends is kept.`,
    );
  }
  return present<PartFile>({
    name: sieve.word(bag, "name", "part") ?? "Part without a name",
    material: adoptMetal(sieve, bag.material) ?? usual.material,
    thickness: sieve.typed(bag, "thickness", "part") ?? "",
    insideRadius: sieve.typed(bag, "insideRadius", "part") ?? "",
    kFactor: sieve.typed(bag, "kFactor", "part"),
    length: sieve.typed(bag, "length", "part"),
    dimensions: sieve.oneOf(bag, "dimensions", "part", ["outside", "inside", "flat"] as const) ?? "outside",
    closedBends: sieve.oneOf(bag, "closedBends", "part", ["corner", "tangent"] as const),
    flats: chain.flats,
    bends: chain.bends,
    box: whole.box,
    pattern: whole.pattern,
    ends: whole.ends,
    spans: whole.spans,
    overall: adoptOverall(sieve, bag.overall),
    allowance: sieve.oneOf(bag, "allowance", "part", ["kFactor", "din6935"] as const),
    grain: sieve.typed(bag, "grain", "part"),
    doubts: adoptDoubts(sieve, bag.doubts),
    cutOuts: sieve.list<CutOutFile>(bag.cutOuts, "part.cutOuts", MOST_CUT_OUTS, (item, at) =>
      adoptCutOut(sieve, item, at),
    ),
  });
}

const EDGES = ["outside", "inside", "tangent"] as const;

/** A flat measured from edge to edge. */
function adoptFlat(sieve: Sieve, value: unknown, at: string): FlatFile | undefined {
  if (!isBag(value)) return undefined;
  sieve.unknownKeys(value, at, ["size", "from", "to"]);
  const [from, to] = [sieve.oneOf(value, "from", at, EDGES), sieve.oneOf(value, "to", at, EDGES)];
  return present<Exclude<FlatFile, Typed>>({ size: sieve.typed(value, "size", at) ?? "", from, to });
}

function adoptOverall(sieve: Sieve, value: unknown): PartFile["overall"] {
  if (!isBag(value)) return undefined;
  sieve.unknownKeys(value, "part.overall", ["size", "along"]);
  const { along } = value;
  if (typeof along !== "number" || !Number.isInteger(along)) return sieve.drop("part.overall");
  return { size: sieve.typed(value, "size", "part.overall") ?? "", along };
}

/** One doubt for all flats, or a list. */
function adoptDoubts(sieve: Sieve, value: unknown): PartFile["doubts"] {
  if (value === undefined || isTyped(value)) return value;
  return sieve.list<Typed>(value, "part.doubts", MOST_BENDS + 1, (v) => (isTyped(v) ? v : undefined));
}

function adoptCutOut(sieve: Sieve, item: unknown, at: string): CutOutFile | undefined {
  if (!isBag(item)) return undefined;
  sieve.unknownKeys(item, at, ["across", "along"]);
  const { across, along } = item;
  return isSpan(across) && isSpan(along) ? { across, along } : undefined;
}

function isSpan(value: unknown): value is CutOutFile["across"] {
  return Array.isArray(value) && value.length === 2 && value.every(isTyped);
}

/** One more flat than bends, whatever came in. */
function matched(flats: readonly FlatFile[], bends: readonly BendFile[], least: number) {
  const count = Math.max(least, Math.min(flats.length - 1, bends.length));
  const keptFlats = flats.slice(0, count + 1);
  while (keptFlats.length < count + 1) keptFlats.push("");
  const keptBends = bends.slice(0, count);
  while (keptBends.length < count) keptBends.push({ angle: 90, turn: "up" });
  return { flats: keptFlats, bends: keptBends };
}

function adoptMetal(sieve: Sieve, value: unknown): PartFile["material"] | undefined {
  if (value === undefined) return undefined;
  if (typeof value === "string") return value.slice(0, LONGEST_WORD);
  if (!isBag(value)) return sieve.drop("part.material");
  const at = "part.material";
  sieve.unknownKeys(value, at, ["name", "yield", "modulus", "ultimate"]);
  return present<Exclude<PartFile["material"], string>>({
    name: sieve.word(value, "name", at) ?? "own metal",
    yield: sieve.typed(value, "yield", at) ?? "",
    modulus: sieve.typed(value, "modulus", at) ?? "",
    ultimate: sieve.typed(value, "ultimate", at),
  });
}
