/**
 * Steels that the shop keeps, carbon and stainless. Strengths are typical of the sheet one buys, not the standard's least.
 * Springback of low-carbon and austenitic sheet is published; 4130 is left to the formula.
 */
import type { MetalSources, RadiusTable, TabulatedMetal } from "./metal.ts";
import * as radii from "./radiusTables.ts";
import { HARD_K, MILD_K, type StartingK } from "./startingK.ts";

const STEEL_MODULUS = "MIL-HDBK-5, carbon and low-alloy steels, 29 000 ksi, from memory";
const STEEL_DENSITY = "common practice: 7850 kg/m³ for carbon steel";

const MILD = { springback: { row: "DC01", softer: "DC04" } } as const;
const AUSTENITIC = { springback: { row: "X12CrNi18-8" }, modulusMpa: 193_000, densityKgM3: 8000 } as const;
const AUSTENITIC_FIGURES = {
  modulus: "193 GPa for annealed austenitic stainless, from memory",
  density: "8000 kg/m³ for austenitic stainless, from memory",
};
const STEEL_FIGURES = { modulus: STEEL_MODULUS, density: STEEL_DENSITY };

export const STEELS: readonly TabulatedMetal[] = [
  {
    ...steel("mild steel", [240, 340], MILD_K, radii.radiiLowCarbon, {
      strength:
        "typical of cold-rolled commercial sheet, from memory; ASTM A1008 calls 140 to 275 MPa yield typical of type B",
      ...STEEL_FIGURES,
    }),
    ...MILD,
  },
  {
    ...steel("galvanized steel", [300, 370], MILD_K, radii.radiiGalvanized, {
      strength:
        "typical of galvanized commercial sheet, from memory; ASTM A653 calls 205 to 380 MPa yield typical of type B",
      ...STEEL_FIGURES,
    }),
    ...MILD,
  },
  {
    ...steel("DC01", [220, 340], MILD_K, radii.radiiLowCarbon, {
      strength: "EN 10130, DC01: yield up to 280 MPa, ultimate 270 to 410 MPa, from memory; typical between",
      ...STEEL_FIGURES,
    }),
    ...MILD,
  },
  {
    ...steel("S235", [280, 420], MILD_K, radii.radiiLowCarbon, {
      strength:
        "EN 10025-2, S235: yield at least 235 MPa, ultimate 360 to 510 MPa, from memory; typical between",
      ...STEEL_FIGURES,
    }),
    ...MILD,
  },
  {
    ...steel("4130 annealed", [360, 560], HARD_K, radii.radii4130Annealed, {
      strength: "ASM typical values for 4130, annealed, from memory",
      ...STEEL_FIGURES,
    }),
    otherRadii: radii.other4130Annealed,
  },
  {
    ...steel("4130 normalized", [517, 655], HARD_K, radii.radii4130Normalized, {
      strength:
        "MIL-HDBK-5, 4130 normalized sheet up to 0.187 in: 75 ksi yield, 95 ksi ultimate, from memory",
      ...STEEL_FIGURES,
    }),
    otherRadii: radii.other4130Normalized,
  },
  {
    ...steel("304 stainless", [290, 580], HARD_K, radii.radiiStainless, {
      strength: "typical of annealed sheet, from memory; ASTM A240 asks for at least 205 and 515 MPa",
      ...AUSTENITIC_FIGURES,
    }),
    ...AUSTENITIC,
  },
  {
    ...steel("316 stainless", [290, 580], HARD_K, radii.radiiStainless, {
      strength: "typical of annealed sheet, from memory; ASTM A240 asks for at least 205 and 515 MPa",
      ...AUSTENITIC_FIGURES,
    }),
    ...AUSTENITIC,
  },
  {
    ...steel("1.4301", [290, 620], HARD_K, radii.radiiStainless, {
      strength: "typical of cold-rolled sheet, from memory; EN 10088-2 asks for at least 230 and 540 MPa",
      ...AUSTENITIC_FIGURES,
    }),
    ...AUSTENITIC,
  },
];

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
