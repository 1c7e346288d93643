/**
 * The metal of a job: a name of the table, or a metal of the user's own with its strengths in MPa.
 * An own metal starts with the K-factor of mild steel unless the file gives one.
 */
import type { Metal } from "../metal/metal.ts";
import { metalNamed, metalNames, metalsLike } from "../metal/metals.ts";
import { type FigureRange, type Reading, refuse, strengthAt } from "./reading.ts";
import type { JobFile } from "./schema.ts";

export interface MetalRead {
  readonly metal: Metal;
  /** K-factor to start from where the file gives none. */
  readonly kFactor: number;
}

/** Common practice for sheet of no known kind, between 0.41 (soft) and 0.45 (hard). */
const UNKNOWN_K = 0.44;

/** The range of a yield strength, from lead to the hardest spring steel. */
export const YIELD: FigureRange = {
  from: 0,
  to: 5000,
  open: "from",
  allowed: "a yield strength in MPa, greater than 0 and up to 5000",
};

const MODULUS: FigureRange = {
  from: 1000,
  to: 1_000_000,
  allowed: "a modulus of elasticity in MPa, from 1000 to 1000000 (steel 200000, aluminum 69000)",
};
const ULTIMATE: FigureRange = {
  ...YIELD,
  allowed: "an ultimate strength in MPa, greater than 0 and up to 5000",
};

/** The metal, or undefined with the problem noted. */
export function readMetal(reading: Reading, file: JobFile["part"]["material"]): MetalRead | undefined {
  if (typeof file === "string") {
    const known = metalNamed(file);
    if (known) return { metal: known, kFactor: known.kFactor };
    const like = metalsLike(file);
    const names =
      like.length > 0 ? like.map((name) => `"${name}"`).join(" or ") : `one of ${metalNames().join(", ")}`;
    refuse(reading, "part.material", file, `${names}, or {name, yield, modulus} in MPa`);
    return undefined;
  }
  const yieldMpa = strengthAt(reading, "part.material.yield", file.yield, YIELD);
  const modulusMpa = strengthAt(reading, "part.material.modulus", file.modulus, MODULUS);
  const ultimateMpa =
    file.ultimate === undefined
      ? undefined
      : strengthAt(reading, "part.material.ultimate", file.ultimate, ULTIMATE);
  if (ultimateMpa !== undefined && ultimateMpa < yieldMpa) {
    refuse(reading, "part.material.ultimate", file.ultimate, `at least the yield strength, ${yieldMpa} MPa`);
  }
  const metal = { name: file.name, yieldMpa, modulusMpa, ...(ultimateMpa !== undefined && { ultimateMpa }) };
  return { metal, kFactor: UNKNOWN_K };
}
