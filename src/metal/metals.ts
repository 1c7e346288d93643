/**
 * The metals that the shop keeps, by the names that a job may use: strengths, modulus, density, starting K-factor, least bend
 * radii and springback, each with its source in steels.ts, aluminums.ts and here.
 * Typical values differ from sheet to sheet by 10 % and more: a test strip is better than any of them.
 */
import { ALUMINUMS } from "./aluminums.ts";
import type { TabulatedMetal } from "./metal.ts";
import { radiiBrass, radiiCopper } from "./radiusTables.ts";
import { SOFT_K } from "./startingK.ts";
import { STEELS } from "./steels.ts";

const COPPERS: readonly TabulatedMetal[] = [
  {
    name: "copper",
    yieldMpa: 190,
    ultimateMpa: 250,
    modulusMpa: 117_000,
    densityKgM3: 8930,
    kFactor: SOFT_K.kFactor,
    radii: radiiCopper,
    springback: { row: "E-Cu" },
    sources: {
      strength: "typical of cold-rolled (H00) roofing copper to ASTM B370, from memory",
      modulus: "17 000 ksi for C11000, from memory",
      density: "common practice: 8930 kg/m³",
      kFactor: SOFT_K.kSource,
    },
  },
  {
    name: "brass",
    yieldMpa: 350,
    ultimateMpa: 430,
    modulusMpa: 110_000,
    densityKgM3: 8530,
    kFactor: SOFT_K.kFactor,
    radii: radiiBrass,
    springback: { row: "CuZn33" },
    sources: {
      strength:
        "C26000 cartridge brass, half hard, ASTM B36: ultimate 57 to 67 ksi; yield 51 ksi typical, from memory",
      modulus: "16 000 ksi for C26000, from memory",
      density: "0.308 lb/in³ for C26000, from memory",
      kFactor: SOFT_K.kSource,
    },
  },
];

const METALS: readonly TabulatedMetal[] = [...STEELS, ...ALUMINUMS, ...COPPERS];

/**
 * The metal of that name, or undefined. Case, blanks, dashes and the ways to write aluminium and galvanised don't matter;
 * an aluminium alloy may carry the word "aluminum".
 * @example metalNamed("6061 t6")?.name // "6061-T6"
 * @example metalNamed("unobtainium") // undefined
 */
export function metalNamed(name: string): TabulatedMetal | undefined {
  const wanted = plainName(name);
  return METALS.find((metal) => plainName(metal.name) === wanted);
}

/** Names of the table, as they are to be written. @example metalNames().length // 29 */
export function metalNames(): readonly string[] {
  return METALS.map((metal) => metal.name);
}

/**
 * Names of the table that hold what was written, for "steel" or "6061"; none where too much or nothing is written.
 * @example metalsLike("6061") // ["6061-O", "6061-T4", "6061-T6"]
 */
export function metalsLike(name: string): readonly string[] {
  const part = plainName(name);
  return part.length < 3 ? [] : metalNames().filter((known) => plainName(known).includes(part));
}

function plainName(name: string): string {
  return name
    .slice(0, 60)
    .toLowerCase()
    .replace(/alumini?um|[\s\-_.]/gu, "")
    .replace("galvanised", "galvanized");
}
