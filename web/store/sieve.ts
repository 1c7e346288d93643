/**
 * Sifts an unknown value from outside for what has the contract's shape, and notes in a sentence what is left out.
 */
import type { Profile, Typed, Vertex } from "./jobFile.ts";

export const LONGEST_WORD = 80;
const MOST_VERTICES = 5000;
export const MOST_BENDS = 60;
export const MOST_PROFILES = 50;

export type Bag = Record<string, unknown>;
export const isBag = (v: unknown): v is Bag => typeof v === "object" && v !== null && !Array.isArray(v);
export const isTyped = (v: unknown): v is Typed =>
  (typeof v === "number" && Number.isFinite(v)) || (typeof v === "string" && v.length <= LONGEST_WORD);

/** A short piece of the file for a sentence, on one line. JSON, since String() would call a toString that the file brings. */
export function shown(value: unknown): string {
  const text = typeof value === "string" ? value : JSON.stringify(value);
  return text.replace(/\p{Cc}/gu, " ").slice(0, 40);
}

/** Notes what is left out while it walks a file. */
export class Sieve {
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
    const word = typeof v === "string" ? v.trim().toLowerCase() : undefined;
    return allowed.find((a) => a.toLowerCase() === word) ?? this.drop(`${path}.${key}`);
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

export const vertex = (v: unknown): Vertex | undefined =>
  Array.isArray(v) && (v.length === 2 || v.length === 3) && v.every(isTyped)
    ? (v as unknown as Vertex)
    : undefined;

export const profile = (sieve: Sieve) => (v: unknown, path: string) =>
  sieve.list(v, path, MOST_VERTICES, vertex) as Profile | undefined;

/** Removes keys that are undefined, so that optional keys stay absent. */
export function present<T extends object>(bag: { [K in keyof T]: T[K] | undefined }): T {
  return Object.fromEntries(Object.entries(bag).filter(([, v]) => v !== undefined)) as T;
}
