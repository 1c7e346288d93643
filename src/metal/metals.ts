/**
 * The metals that the shop keeps: strengths, modulus, density, starting K-factor and least bend radii, with sources.
 * Aluminium strengths are typical values in ksi and modulus in 1000 ksi, as printed, changed over by 6.894757 MPa/ksi.
 * Typical values differ from sheet to sheet by 10 % and more: a test strip is better than any of them.
 */
import type { MetalSources, RadiusTable, TabulatedMetal } from "./metal.ts";
import * as radii from "./radiusTables.ts";

const MPA_PER_KSI = 6.894757;

const ALUMINUM_STRENGTH =
  "Aluminum Association, typical mechanical properties of wrought alloys (also in Handbook of Materials Selection, aluminum chapter, table 5)";
const ALUMINUM_SOURCES: Omit<MetalSources, "kFactor"> = {
  strength: ALUMINUM_STRENGTH,
  modulus: ALUMINUM_STRENGTH,
  density: "Aluminum Association, nominal densities, from memory",
};

/** Machinery's Handbook, length of metal for a right-angle bend: 0.64 T + 1.57 R, so K = 0.64/1.5708. */
const SOFT_K = {
  kFactor: 0.41,
  kSource:
    "Machinery's Handbook, 90° bends in aluminum, soft steel, half-hard copper and brass: 0.64 T + 1.57 R (from memory)",
};
/** Machinery's Handbook: 0.71 T + 1.57 R, so K = 0.71/1.5708. */
const HARD_K = {
  kFactor: 0.45,
  kSource:
    "Machinery's Handbook, 90° bends in cold-rolled steel, hard copper, bronze: 0.71 T + 1.57 R (from memory)",
};
/** The aircraft formula (0.01743·R + 0.0078·T) per degree has its neutral line at 0.0078/0.01743 of T. */
const AIRCRAFT_K = {
  kFactor: 0.45,
  kSource: "FAA-H-8083-31, empirical bend allowance (0.01743 R + 0.0078 T) per degree: K = 0.0078/0.01743",
};
const MILD_K = {
  kFactor: 0.44,
  kSource:
    "common practice; between 0.41 and 0.45 of Machinery's Handbook's formulas for soft and cold-rolled steel (from memory)",
};

interface StartingK {
  readonly kFactor: number;
  readonly kSource: string;
}

const STEEL_MODULUS = "MIL-HDBK-5, carbon and low-alloy steels, 29 000 ksi, from memory";
const STEEL_DENSITY = "common practice: 7850 kg/m³ for carbon steel";

const METALS: readonly TabulatedMetal[] = [
  steel("mild steel", [240, 340], MILD_K, radii.radiiLowCarbon, {
    strength:
      "typical of cold-rolled commercial sheet, from memory; ASTM A1008 calls 140 to 275 MPa yield typical of type B",
    modulus: STEEL_MODULUS,
    density: STEEL_DENSITY,
  }),
  steel("galvanized steel", [300, 370], MILD_K, radii.radiiGalvanized, {
    strength:
      "typical of galvanized commercial sheet, from memory; ASTM A653 calls 205 to 380 MPa yield typical of type B",
    modulus: STEEL_MODULUS,
    density: STEEL_DENSITY,
  }),
  steel("4130 annealed", [360, 560], HARD_K, radii.radii4130Annealed, {
    strength: "ASM typical values for 4130, annealed, from memory",
    modulus: STEEL_MODULUS,
    density: STEEL_DENSITY,
  }),
  steel("4130 normalized", [517, 655], HARD_K, radii.radii4130Normalized, {
    strength: "MIL-HDBK-5, 4130 normalized sheet up to 0.187 in: 75 ksi yield, 95 ksi ultimate, from memory",
    modulus: STEEL_MODULUS,
    density: STEEL_DENSITY,
  }),
  {
    ...steel("304 stainless", [290, 580], HARD_K, radii.radiiStainless, {
      strength: "typical of annealed sheet, from memory; ASTM A240 asks for at least 205 and 515 MPa",
      modulus: "193 GPa for annealed 304, from memory",
      density: "8000 kg/m³ for 304, from memory",
    }),
    modulusMpa: 193_000,
    densityKgM3: 8000,
  },
  aluminum("1100-O", [5, 13], 10, 2710, SOFT_K, radii.radii1100O),
  aluminum("1100-H14", [17, 18], 10, 2710, SOFT_K, radii.radii1100H14),
  aluminum("3003-H14", [21, 22], 10, 2730, SOFT_K, radii.radii3003H14),
  aluminum("5052-H32", [28, 33], 10.2, 2680, SOFT_K, radii.radii5052H32),
  aluminum("6061-O", [8, 18], 10, 2700, SOFT_K, radii.radii6061O),
  aluminum("6061-T4", [21, 35], 10, 2700, AIRCRAFT_K, radii.radii6061T4),
  aluminum("6061-T6", [40, 45], 10, 2700, AIRCRAFT_K, radii.radii6061T6),
  aluminum("2024-O", [11, 27], 10.6, 2780, SOFT_K, radii.radii2024O),
  aluminum("2024-T3", [50, 70], 10.6, 2780, AIRCRAFT_K, radii.radii2024T3),
  aluminum("7075-O", [15, 33], 10.4, 2810, SOFT_K, radii.radii7075O),
  {
    name: "copper",
    yieldMpa: 190,
    ultimateMpa: 250,
    modulusMpa: 117_000,
    densityKgM3: 8930,
    kFactor: SOFT_K.kFactor,
    radii: radii.radiiCopper,
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
    radii: radii.radiiBrass,
    sources: {
      strength:
        "C26000 cartridge brass, half hard, ASTM B36: ultimate 57 to 67 ksi; yield 51 ksi typical, from memory",
      modulus: "16 000 ksi for C26000, from memory",
      density: "0.308 lb/in³ for C26000, from memory",
      kFactor: SOFT_K.kSource,
    },
  },
];

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

/** Names of the table, as they are to be written. @example metalNames().length // 17 */
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

function steel(
  name: string,
  [yieldMpa, ultimateMpa]: readonly [number, number],
  { kFactor, kSource }: StartingK,
  table: RadiusTable,
  sources: Omit<MetalSources, "kFactor">,
): TabulatedMetal {
  return {
    name,
    yieldMpa,
    ultimateMpa,
    modulusMpa: 200_000,
    densityKgM3: 7850,
    kFactor,
    radii: table,
    sources: { ...sources, kFactor: kSource },
  };
}

function aluminum(
  name: string,
  [yieldKsi, ultimateKsi]: readonly [number, number],
  modulus1000Ksi: number,
  densityKgM3: number,
  { kFactor, kSource }: StartingK,
  table: RadiusTable,
): TabulatedMetal {
  return {
    name,
    yieldMpa: yieldKsi * MPA_PER_KSI,
    ultimateMpa: ultimateKsi * MPA_PER_KSI,
    modulusMpa: modulus1000Ksi * 1000 * MPA_PER_KSI,
    densityKgM3,
    kFactor,
    radii: table,
    sources: { ...ALUMINUM_SOURCES, kFactor: kSource },
  };
}
