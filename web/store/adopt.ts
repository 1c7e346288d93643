/**
 * Takes in a job file from anywhere (import, link, saved store) and keeps what has the contract's shape.
 * What does not fit is left out and said in a sentence; nothing read here is ever treated as markup.
 */
import { firstJob } from "./firstJob.ts";
import type {
  BendFile,
  BrakeFile,
  ClampFile,
  JobFile,
  OrderFile,
  PartFile,
  Profile,
  Typed,
  Vertex,
} from "./jobFile.ts";

export type Adopted =
  | { readonly ok: true; readonly file: JobFile; readonly leftOut: readonly string[] }
  | { readonly ok: false; readonly sentence: string };

const LONGEST_TEXT = 200_000;
const LONGEST_WORD = 80;
const MOST_BENDS = 60;
const MOST_VERTICES = 5000;
const MOST_PROFILES = 50;

type Bag = Record<string, unknown>;
const isBag = (v: unknown): v is Bag => typeof v === "object" && v !== null && !Array.isArray(v);
const isTyped = (v: unknown): v is Typed =>
  (typeof v === "number" && Number.isFinite(v)) || (typeof v === "string" && v.length <= LONGEST_WORD);

/** A short piece of the file for a sentence, on one line. JSON, since String() would call a toString that the file brings. */
function shown(value: unknown): string {
  const text = typeof value === "string" ? value : JSON.stringify(value);
  return text.replace(/\p{Cc}/gu, " ").slice(0, 40);
}

/** Notes what is left out while it walks a file. */
class Sieve {
  readonly leftOut: string[] = [];

  drop(path: string): undefined {
    if (this.leftOut.length < 12)
      this.leftOut.push(`${path} was left out: it is not of a kind that belongs there.`);
    return undefined;
  }

  typed(bag: Bag, key: string, path: string): Typed | undefined {
    const v = bag[key];
    if (v === undefined) return undefined;
    return isTyped(v) ? v : this.drop(`${path}.${key}`);
  }

  word(bag: Bag, key: string, path: string): string | undefined {
    const v = bag[key];
    if (v === undefined) return undefined;
    return typeof v === "string" ? v.replace(/\p{Cc}/gu, " ").slice(0, 200) : this.drop(`${path}.${key}`);
  }

  oneOf<T extends string>(bag: Bag, key: string, path: string, allowed: readonly T[]): T | undefined {
    const v = bag[key];
    if (v === undefined) return undefined;
    return allowed.find((a) => a === v) ?? this.drop(`${path}.${key}`);
  }

  list<T>(
    v: unknown,
    path: string,
    most: number,
    each: (item: unknown, at: string) => T | undefined,
  ): T[] | undefined {
    if (v === undefined) return undefined;
    if (!Array.isArray(v) || v.length > most) return this.drop(path);
    const out: T[] = [];
    for (const [i, item] of v.entries()) {
      const kept = each(item, `${path}[${i + 1}]`);
      if (kept === undefined) return this.drop(path);
      out.push(kept);
    }
    return out;
  }

  bag(v: unknown, path: string): Bag {
    if (isBag(v)) return v;
    if (v !== undefined) this.drop(path);
    return {};
  }

  unknownKeys(bag: Bag, path: string, known: readonly string[]): void {
    for (const key of Object.keys(bag)) if (!known.includes(key)) this.drop(`${path}.${shown(key)}`);
  }
}

const vertex = (v: unknown): Vertex | undefined =>
  Array.isArray(v) && (v.length === 2 || v.length === 3) && v.every(isTyped)
    ? (v as unknown as Vertex)
    : undefined;

const profile = (sieve: Sieve) => (v: unknown, path: string) =>
  sieve.list(v, path, MOST_VERTICES, vertex) as Profile | undefined;

/** Removes keys that are undefined, so that optional keys stay absent. */
function present<T extends object>(bag: { [K in keyof T]: T[K] | undefined }): T {
  return Object.fromEntries(Object.entries(bag).filter(([, v]) => v !== undefined)) as T;
}

function adoptPart(sieve: Sieve, value: unknown, usual: PartFile): PartFile {
  const bag = sieve.bag(value, "part");
  const keys = [
    "name",
    "material",
    "thickness",
    "insideRadius",
    "kFactor",
    "length",
    "dimensions",
    "flats",
    "bends",
  ];
  sieve.unknownKeys(bag, "part", keys);
  const bends = sieve.list<BendFile>(bag.bends, "part.bends", MOST_BENDS, (item, at) => {
    if (!isBag(item)) return undefined;
    sieve.unknownKeys(item, at, ["angle", "turn", "insideRadius", "overbend"]);
    return present<BendFile>({
      angle: sieve.typed(item, "angle", at) ?? 90,
      turn: sieve.oneOf(item, "turn", at, ["up", "down"] as const) ?? "up",
      insideRadius: sieve.typed(item, "insideRadius", at),
      overbend: sieve.typed(item, "overbend", at),
    });
  });
  const flats = sieve.list<Typed>(bag.flats, "part.flats", MOST_BENDS + 1, (v) =>
    isTyped(v) ? v : undefined,
  );
  const chain = matched(flats ?? usual.flats, bends ?? usual.bends);
  if (flats && bends && flats.length !== bends.length + 1) {
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
    flats: chain.flats,
    bends: chain.bends,
  });
}

/** One more flat than bends, whatever came in. */
function matched(flats: readonly Typed[], bends: readonly BendFile[]) {
  const count = Math.max(1, Math.min(flats.length - 1, bends.length));
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

const HOLDER = ["holderBack", "holderHeight", "holderDepth"];
const CLAMP_FIGURES: Readonly<Record<ClampFile["type"], readonly string[]>> = {
  finger: ["noseAngle", "noseRadius", "height", "footDepth", "topRadius", ...HOLDER],
  bar: ["thickness", "depth", "noseRadius", "noseAngle", "topRadius", ...HOLDER],
  profile: ["noseRadius"],
};

function adoptClamp(sieve: Sieve, value: unknown, usual: ClampFile): ClampFile {
  const at = "brake.clamp";
  const bag = sieve.bag(value, at);
  const type = sieve.oneOf(bag, "type", at, ["finger", "bar", "profile"] as const);
  if (type === undefined) return usual;
  const keys = CLAMP_FIGURES[type];
  sieve.unknownKeys(bag, at, type === "profile" ? ["type", "profiles", ...keys] : ["type", ...keys]);
  const figures: Record<string, Typed | undefined> = {};
  for (const key of keys) figures[key] = sieve.typed(bag, key, at);
  const profiles =
    type === "profile"
      ? sieve.list<Profile>(bag.profiles, `${at}.profiles`, MOST_PROFILES, profile(sieve))
      : undefined;
  return present<ClampFile>({ type, ...figures, profiles } as ClampFile);
}

function adoptBrake(sieve: Sieve, value: unknown, usual: BrakeFile): BrakeFile {
  const bag = sieve.bag(value, "brake");
  sieve.unknownKeys(bag, "brake", [
    "name",
    "clamp",
    "bed",
    "leaf",
    "frame",
    "lift",
    "openEnds",
    "setback",
    "rated",
  ]);
  const bed = sieve.bag(bag.bed, "brake.bed");
  const leaf = sieve.bag(bag.leaf, "brake.leaf");
  sieve.unknownKeys(bed, "brake.bed", ["profile"]);
  sieve.unknownKeys(leaf, "brake.leaf", ["profile", "swing", "pivot"]);
  const pivot = leaf.pivot;
  const rated = isBag(bag.rated) ? bag.rated : undefined;
  if (bag.rated !== undefined && rated === undefined) sieve.drop("brake.rated");
  return present<BrakeFile>({
    name: sieve.word(bag, "name", "brake") ?? "Brake without a name",
    clamp: adoptClamp(sieve, bag.clamp, usual.clamp),
    bed: { profile: profile(sieve)(bed.profile, "brake.bed.profile") ?? usual.bed.profile },
    leaf: present<BrakeFile["leaf"]>({
      profile: profile(sieve)(leaf.profile, "brake.leaf.profile") ?? usual.leaf.profile,
      swing: sieve.typed(leaf, "swing", "brake.leaf") ?? usual.leaf.swing,
      pivot: pivot === undefined ? undefined : (vertex(pivot) ?? sieve.drop("brake.leaf.pivot")),
    }),
    frame: sieve.list<Profile>(bag.frame, "brake.frame", MOST_PROFILES, profile(sieve)),
    lift: sieve.typed(bag, "lift", "brake") ?? usual.lift,
    openEnds: typeof bag.openEnds === "boolean" ? bag.openEnds : usual.openEnds,
    setback: sieve.typed(bag, "setback", "brake"),
    rated:
      rated &&
      present<NonNullable<BrakeFile["rated"]>>({
        thickness: sieve.typed(rated, "thickness", "brake.rated") ?? "",
        length: sieve.typed(rated, "length", "brake.rated") ?? "",
        yield: sieve.typed(rated, "yield", "brake.rated") ?? "",
      }),
  });
}

function adoptOrder(sieve: Sieve, value: unknown, bendCount: number): readonly OrderFile[] | undefined {
  const order = sieve.list<OrderFile>(value, "order", MOST_BENDS, (item) => {
    if (!isBag(item)) return undefined;
    const { bend, clamped } = item;
    if (typeof bend !== "number" || !Number.isInteger(bend) || bend < 1 || bend > bendCount) return undefined;
    return clamped === "start" || clamped === "end" ? { bend, clamped } : undefined;
  });
  if (order === undefined) return undefined;
  const named = new Set(order.map((step) => step.bend));
  return named.size === bendCount && order.length === bendCount ? order : sieve.drop("order");
}

/** Keeps what is good of an unknown value; says what it left out. */
export function adopt(value: unknown): Adopted {
  if (!isBag(value))
    return { ok: false, sentence: "That is not a job file: it should be one object with the key noseroom." };
  if (value.noseroom !== 1) {
    const found = value.noseroom === undefined ? "no such key" : shown(value.noseroom);
    return { ok: false, sentence: `This page reads job files with "noseroom": 1; found ${found}.` };
  }
  if (!isBag(value.part) && !isBag(value.brake)) {
    return { ok: false, sentence: "The file has neither a part nor a brake, so there is nothing to open." };
  }
  const sieve = new Sieve();
  sieve.unknownKeys(value, "file", ["noseroom", "units", "part", "brake", "order", "margin"]);
  const units = sieve.oneOf(value, "units", "file", ["mm", "in"] as const) ?? "mm";
  const usual = firstJob(units);
  const part = adoptPart(sieve, value.part, usual.part);
  const file = present<JobFile>({
    noseroom: 1,
    units,
    part,
    brake: adoptBrake(sieve, value.brake, usual.brake),
    order: adoptOrder(sieve, value.order, part.bends.length),
    margin: sieve.typed(value, "margin", "file"),
  });
  return { ok: true, file, leftOut: sieve.leftOut };
}

/** Reads the text of a job file; a cut-off or oversized text is refused with a sentence. */
export function adoptText(text: string): Adopted {
  if (text.length > LONGEST_TEXT) {
    return {
      ok: false,
      sentence: `The file is ${Math.round(text.length / 1000)} kB long; a job file has at most 200 kB.`,
    };
  }
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return { ok: false, sentence: "The file is cut off or is not JSON, so it could not be read." };
  }
  return adopt(value);
}
