/**
 * Takes in a job file from anywhere (import, link, saved store) and keeps what has the contract's shape.
 * What does not fit is left out and said in a sentence; nothing read here is ever treated as markup.
 */
import { unitMeant } from "../../src/units/length.ts";
import { adoptPart } from "./adoptPart.ts";
import { adoptFingers, adoptStrokes } from "./adoptWhole.ts";
import { chainFlats } from "./chain.ts";
import { firstJob } from "./firstJob.ts";
import type {
  BrakeFile,
  ClampFile,
  FramePiece,
  HandFinishFile,
  JobFile,
  OrderFile,
  Profile,
  Typed,
} from "./jobFile.ts";
import { isBag, MOST_BENDS, MOST_PROFILES, present, profile, Sieve, shown, vertex } from "./sieve.ts";
import { isWhole } from "./wholeFile.ts";

export type Adopted =
  | { readonly ok: true; readonly file: JobFile; readonly leftOut: readonly string[] }
  | { readonly ok: false; readonly sentence: string };

const ALONG = ["length", "fingerGap"];
const HOLDER = ["holderBack", "holderHeight", "holderDepth"];
const CLAMP_FIGURES: Readonly<Record<ClampFile["type"], readonly string[]>> = {
  finger: ["noseAngle", "noseRadius", "height", "footDepth", "topRadius", ...HOLDER, "shim", ...ALONG],
  bar: ["thickness", "depth", "noseRadius", "noseAngle", "topRadius", ...HOLDER, "shim", ...ALONG],
  profile: ["noseRadius", "shim", ...ALONG],
};

function stretch(value: unknown): readonly [Typed, Typed] | undefined {
  if (!Array.isArray(value) || value.length !== 2) return undefined;
  const [from, to] = value as [unknown, unknown];
  const typed = (end: unknown): end is Typed => typeof end === "number" || typeof end === "string";
  return typed(from) && typed(to) ? [from, to] : undefined;
}

/** A profile, or one with a name. */
function framePiece(sieve: Sieve) {
  return (value: unknown, path: string): FramePiece | undefined => {
    if (!isBag(value)) return profile(sieve)(value, path);
    const shape = profile(sieve)(value.profile, `${path}.profile`);
    sieve.unknownKeys(value, path, ["name", "profile", "along"]);
    if (!shape) return undefined;
    const name = sieve.word(value, "name", path) ?? "";
    const along = value.along === undefined ? undefined : stretch(value.along);
    if (value.along !== undefined && along === undefined) sieve.drop(`${path}.along`);
    return { name, profile: shape, ...(along && { along }) };
  };
}

function adoptClamp(sieve: Sieve, value: unknown, usual: ClampFile): ClampFile {
  const at = "brake.clamp";
  const bag = sieve.bag(value, at);
  const type = sieve.oneOf(bag, "type", at, ["finger", "bar", "profile"] as const);
  if (type === undefined) return usual;
  const keys = CLAMP_FIGURES[type];
  sieve.unknownKeys(bag, at, ["type", "fingers", ...(type === "profile" ? ["profiles"] : []), ...keys]);
  const figures: Record<string, Typed | undefined> = {};
  for (const key of keys) figures[key] = sieve.typed(bag, key, at);
  const profiles =
    type === "profile"
      ? sieve.list<Profile>(bag.profiles, `${at}.profiles`, MOST_PROFILES, profile(sieve))
      : undefined;
  return present<ClampFile>({
    type,
    ...figures,
    profiles,
    fingers: adoptFingers(sieve, bag.fingers),
  } as ClampFile);
}

/** The brake, with what does not fit left out; `usual` stands in for what it can't do without. */
export function adoptBrake(sieve: Sieve, value: unknown, usual: BrakeFile): BrakeFile {
  const bag = sieve.bag(value, "brake");
  sieve.unknownKeys(bag, "brake", [
    "name",
    "measured",
    "clamp",
    "bed",
    "leaf",
    "frame",
    "lift",
    "openEnds",
    "length",
    "setback",
    "leastGrip",
    "leastFlange",
    "doubts",
    "rated",
  ]);
  const bed = sieve.bag(bag.bed, "brake.bed");
  const leaf = sieve.bag(bag.leaf, "brake.leaf");
  sieve.unknownKeys(bed, "brake.bed", ["profile"]);
  sieve.unknownKeys(leaf, "brake.leaf", ["profile", "swing", "pivot"]);
  const pivot = leaf.pivot;
  const doubts = bag.doubts === undefined ? undefined : sieve.bag(bag.doubts, "brake.doubts");
  if (doubts) sieve.unknownKeys(doubts, "brake.doubts", ["overbend", "setback", "noseRadius"]);
  const rated = isBag(bag.rated) ? bag.rated : undefined;
  if (bag.rated !== undefined && rated === undefined) sieve.drop("brake.rated");
  return present<BrakeFile>({
    name: sieve.word(bag, "name", "brake") ?? "Brake without a name",
    measured: sieve.word(bag, "measured", "brake"),
    clamp: adoptClamp(sieve, bag.clamp, usual.clamp),
    bed: { profile: profile(sieve)(bed.profile, "brake.bed.profile") ?? usual.bed.profile },
    leaf: present<BrakeFile["leaf"]>({
      profile: profile(sieve)(leaf.profile, "brake.leaf.profile") ?? usual.leaf.profile,
      swing: sieve.typed(leaf, "swing", "brake.leaf") ?? usual.leaf.swing,
      pivot: pivot === undefined ? undefined : (vertex(pivot) ?? sieve.drop("brake.leaf.pivot")),
    }),
    frame: sieve.list<FramePiece>(bag.frame, "brake.frame", MOST_PROFILES, framePiece(sieve)),
    lift: sieve.typed(bag, "lift", "brake") ?? usual.lift,
    openEnds: typeof bag.openEnds === "boolean" ? bag.openEnds : usual.openEnds,
    length: sieve.typed(bag, "length", "brake"),
    setback: sieve.typed(bag, "setback", "brake"),
    leastGrip: sieve.typed(bag, "leastGrip", "brake"),
    leastFlange: sieve.typed(bag, "leastFlange", "brake"),
    doubts:
      doubts &&
      present<NonNullable<BrakeFile["doubts"]>>({
        overbend: sieve.typed(doubts, "overbend", "brake.doubts"),
        setback: sieve.typed(doubts, "setback", "brake.doubts"),
        noseRadius: sieve.typed(doubts, "noseRadius", "brake.doubts"),
      }),
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
  const order = sieve.list<OrderFile>(value, "order", 2 * MOST_BENDS, (item, at) => {
    if (!isBag(item)) return undefined;
    sieve.unknownKeys(item, at, ["bend", "clamped", "to"]);
    const { bend, clamped } = item;
    if (typeof bend !== "number" || !Number.isInteger(bend) || bend < 1 || bend > bendCount) return undefined;
    if (clamped !== "start" && clamped !== "end") return undefined;
    return present<OrderFile>({ bend, clamped, to: sieve.typed(item, "to", at) });
  });
  if (order === undefined) return undefined;
  // Steps that leave a bend part way stand beside those that finish it; the reader says which order can't be.
  const finished = order.filter((step) => step.to === undefined);
  const named = new Set(finished.map((step) => step.bend));
  return named.size === bendCount && finished.length === bendCount ? order : sieve.drop("order");
}

function adoptHandFinish(sieve: Sieve, value: unknown, bendCount: number): JobFile["finishByHand"] {
  return sieve.list<HandFinishFile>(value, "finishByHand", MOST_BENDS, (item, at) => {
    if (!isBag(item)) return undefined;
    sieve.unknownKeys(item, at, ["bend", "to", "filler"]);
    const { bend } = item;
    if (typeof bend !== "number" || !Number.isInteger(bend) || bend < 1 || bend > bendCount) return undefined;
    return present<HandFinishFile>({
      bend,
      to: sieve.typed(item, "to", at) ?? "",
      filler: sieve.typed(item, "filler", at),
    });
  });
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
  sieve.unknownKeys(value, "file", ["noseroom", "units", "part", "brake", "order", "finishByHand", "margin"]);
  const units = unitMeant(value.units) ?? sieve.oneOf(value, "units", "file", ["mm", "in"] as const) ?? "mm";
  const usual = firstJob(units);
  const part = adoptPart(sieve, value.part, usual.part);
  const whole = isWhole(part);
  const bends = chainFlats(part) - 1;
  const file = present<JobFile>({
    noseroom: 1,
    units,
    part,
    brake: adoptBrake(sieve, value.brake, usual.brake),
    // Strokes of a whole part are another list; only its own panels read it.
    order: whole
      ? (adoptStrokes(sieve, value.order) as unknown as JobFile["order"])
      : adoptOrder(sieve, value.order, bends),
    finishByHand: adoptHandFinish(sieve, value.finishByHand, whole ? MOST_BENDS : bends),
    margin: sieve.typed(value, "margin", "file"),
  });
  return { ok: true, file, leftOut: sieve.leftOut };
}
