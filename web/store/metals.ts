/**
 * Metals of the person's own, kept beside the jobs so that another job can take them up.
 */
import type { OwnMetalFile, Typed } from "./jobFile.ts";

const LONGEST_NAME = 200;
const LONGEST_WORD = 80;
const MOST_METALS = 100;

/** Whether two metals have the same name and figures. */
export function sameMetal(one: OwnMetalFile, other: OwnMetalFile): boolean {
  const keys = ["name", "yield", "modulus", "ultimate"] as const;
  return keys.every((key) => String(one[key] ?? "") === String(other[key] ?? ""));
}

/** The list with a metal put on it; one of the same name is replaced. */
export function withMetal(metals: readonly OwnMetalFile[], metal: OwnMetalFile): readonly OwnMetalFile[] {
  return [...metals.filter(({ name }) => name !== metal.name), metal];
}

/** Kept metals read back; what is not a metal is left out. */
export function adoptMetals(text: string | null): readonly OwnMetalFile[] {
  try {
    const kept: unknown = JSON.parse(text ?? "[]");
    return Array.isArray(kept) ? kept.slice(0, MOST_METALS).flatMap(adoptMetal) : [];
  } catch {
    return [];
  }
}

function adoptMetal(kept: unknown): OwnMetalFile[] {
  if (typeof kept !== "object" || kept === null) return [];
  const { name, yield: strength, modulus, ultimate } = kept as Record<string, unknown>;
  if (typeof name !== "string" || name.length > LONGEST_NAME || !isTyped(strength) || !isTyped(modulus))
    return [];
  return [{ name, yield: strength, modulus, ...(isTyped(ultimate) ? { ultimate } : {}) }];
}

function isTyped(v: unknown): v is Typed {
  return (typeof v === "number" && Number.isFinite(v)) || (typeof v === "string" && v.length <= LONGEST_WORD);
}
