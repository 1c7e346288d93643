/**
 * The sizes of a whole part that could be changed to let it fold, read from its file: lips, walls and ends, flats of a
 * section, each with the keys that hold it and what it is called.
 */
import type { WholeFile } from "../jobFile/wholeSchema.ts";
import type { KeyChange } from "../jobFile/wholeWay.ts";
import { SIDES } from "../pattern/boxPattern.ts";
import { type LengthUnit, parseLength } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";

type Path = KeyChange["path"];

export interface Sized {
  /** Keys that get the size: of one lip or wall, or of all that are alike. */
  readonly paths: readonly Path[];
  readonly mm: Mm;
  readonly what: string;
}

export interface Lip extends Sized {
  /** Its bend's number in the file. */
  readonly bend: number;
  readonly turn: { readonly path: Path; readonly to: string };
}

/** All lips, all walls, ends and flats, and how wide, deep or long the part is. */
export interface Sizes {
  readonly lips: readonly Lip[];
  readonly walls: readonly Sized[];
  readonly over: readonly Sized[];
}

/** The sizes of a part; a drawn pattern has none. */
export function sizesOf({ part, units }: WholeFile): Sizes {
  const { box, ends = [], flats = [], bends = [] } = part;
  const lips: Lip[] = [];
  const walls: Sized[] = [];
  const over: Sized[] = [];
  let bend = bends.length;
  const put = (path: Path, written: unknown, what: string, into = walls) => {
    const mm = lengthOf(written, units);
    if (mm !== undefined) into.push({ paths: [path], mm, what });
  };
  if (!box) put(["part", "length"], part.length, "the length", over);
  for (const key of ["width", "depth"] as const) put(["part", "box", key], box?.[key], `the ${key}`, over);
  const putLips = (
    path: Path,
    own: readonly WrittenLip[],
    what: string,
    turns: readonly [string, string],
  ) => {
    for (const [i, { size, turn }] of own.entries()) {
      bend++;
      const mm = lengthOf(size, units);
      if (mm === undefined) continue;
      const at = [...path, "lips", i];
      const to = turn === turns[1] ? turns[0] : turns[1];
      lips.push({ paths: [[...at, "size"]], mm, what, bend, turn: { path: [...at, "turn"], to } });
    }
  };
  for (const [i, flat] of flats.entries()) put(["part", "flats", i], flat, `flat ${i + 1}`);
  for (const side of SIDES) {
    const wall = box?.walls[side];
    if (wall === undefined) continue;
    bend++;
    const path = ["part", "box", "walls", side];
    if (typeof wall !== "object") put(path, wall, `the ${side} wall`);
    else {
      put([...path, "height"], wall.height, `the ${side} wall`);
      putLips(path, wall.lips ?? [], `the ${side} wall's lip`, ["in", "out"]);
    }
  }
  for (const [e, { size, lips: own = [] }] of ends.entries()) {
    bend++;
    const path = ["part", "ends", e];
    put([...path, "size"], size, `end ${e + 1}`);
    putLips(path, own, `the lip of end ${e + 1}`, ["up", "down"]);
  }
  return { lips, walls, over };
}

interface WrittenLip {
  readonly size: unknown;
  readonly turn?: string | undefined;
}

function lengthOf(written: unknown, units: LengthUnit): Mm | undefined {
  return typeof written === "number" || typeof written === "string" ? parseLength(written, units) : undefined;
}

/** Those of one size as one, `called` so where they are all. */
export function alike(all: readonly Sized[], called: string): Sized[] {
  return [...new Set(all.map(({ mm }) => mm))].flatMap((mm) => {
    const same = all.filter((one) => one.mm === mm);
    if (same.length < 2) return [];
    const what = same.length === all.length ? called : same.map((one) => one.what).join(" and ");
    return [{ paths: same.flatMap(({ paths }) => paths), mm, what }];
  });
}
