/**
 * What the person wants otherwise than taken for a brake to be made: safety factors, hand force, vise, how far it may give.
 * As typed, kept beside the jobs; an empty box means what is usually taken.
 */
import {
  type NarrowBrakeWishes,
  resolveRequirements,
  STOCK_STEEL,
} from "../../src/narrowBrake/requirements.ts";
import type { Typed } from "./jobFile.ts";

export const WISHES = [
  { key: "load", label: "Safety on load", unit: "" },
  { key: "yield", label: "Safety on yield", unit: "" },
  { key: "bolt", label: "Safety of bolts", unit: "" },
  { key: "pin", label: "Safety of pins", unit: "" },
  { key: "handForceN", label: "Hand force", unit: "N" },
  { key: "viseForceN", label: "Force of the vise", unit: "N" },
  { key: "noseMm", label: "Nose may give", unit: "mm" },
  { key: "angleDeg", label: "Bend angle may lose", unit: "°" },
] as const;

export type WishKey = (typeof WISHES)[number]["key"];
export type Wishes = Readonly<Partial<Record<WishKey, Typed>>>;

const LONGEST_WORD = 80;
const MOST = 1e6;

/** A wish as a number above zero; null where it is none, undefined where nothing is wished. */
export function wishNumber(typed: Typed | undefined): number | null | undefined {
  if (typed === undefined || String(typed).trim() === "") return undefined;
  const value = Number(typed);
  return value > 0 && value < MOST ? value : null;
}

/** The wishes as the engine takes them, or null where one can't be read. */
export function asWishes(typed: Wishes): NarrowBrakeWishes | null {
  const read = WISHES.map(({ key }) => [key, wishNumber(typed[key])] as const);
  if (read.some(([, value]) => value === null)) return null;
  const given: Partial<Record<WishKey, number>> = Object.fromEntries(
    read.filter(([, value]) => value !== undefined),
  );
  const { load, yield: onYield, bolt, pin, handForceN, viseForceN, noseMm, angleDeg } = given;
  const some = <T extends object>(bag: { readonly [K in keyof T]: T[K] | undefined }) =>
    Object.fromEntries(Object.entries(bag).filter(([, value]) => value !== undefined)) as Partial<T>;
  return {
    ...some<{ handForceN: number }>({ handForceN }),
    safety: some<{ load: number; yield: number; bolt: number; pin: number }>({
      load,
      yield: onYield,
      bolt,
      pin,
    }),
    vise: some<{ forceN: number }>({ forceN: viseForceN }),
    give: some<{ noseMm: number; angleDeg: number }>({ noseMm, angleDeg }),
  };
}

/** What is taken where nothing is wished, told by the engine itself. */
export function usualWishes(): Readonly<Record<WishKey, number>> {
  const sheet = {
    name: "any",
    metal: STOCK_STEEL,
    thicknessMm: 1,
    lengthMm: 1,
    shortestFlangeMm: 1,
    shortestClampedMm: 1,
    deepestClampedMm: 1,
    bends: [{ overbendDeg: 90, noseSetbackMm: 1 }],
  };
  const any = { units: "mm" as const, parts: [sheet], thickestByClearanceMm: 1, overhangMm: 1 };
  const taken = resolveRequirements({ ...any, noseRadiusMm: 1, frontBevelDeg: 1 });
  const { safety, handForceN, vise, give } = taken;
  return { ...safety, handForceN, viseForceN: vise.forceN, ...give };
}

/** Kept wishes read back; what is none is left out. */
export function adoptWishes(text: string | null): Wishes | undefined {
  try {
    const kept: unknown = JSON.parse(text ?? "null");
    if (typeof kept !== "object" || kept === null) return undefined;
    const found = WISHES.flatMap(({ key }) => {
      const value = Object.hasOwn(kept, key) ? (kept as Record<string, unknown>)[key] : undefined;
      const typed = typeof value === "number" ? Number.isFinite(value) : typeof value === "string";
      return typed && String(value).length <= LONGEST_WORD ? [[key, value as Typed] as const] : [];
    });
    return found.length === 0 ? undefined : Object.fromEntries(found);
  } catch {
    return undefined;
  }
}
