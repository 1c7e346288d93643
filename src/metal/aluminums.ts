/**
 * Aluminium alloys that the shop keeps. Strengths are typical values in ksi and modulus in 1000 ksi, as printed, changed over
 * by 6.894757 MPa/ksi. Springback is published for three kinds; hard 2024 and 7075 are left to the formula.
 */
import type { MetalSources, RadiusTable, TabulatedMetal } from "./metal.ts";
import * as radii from "./radiusTables.ts";
import { AIRCRAFT_K, SOFT_K, type StartingK } from "./startingK.ts";

const MPA_PER_KSI = 6.894757;

const ALUMINUM_STRENGTH =
  "Aluminum Association, typical mechanical properties of wrought alloys (also in Handbook of Materials Selection, aluminum chapter, table 5)";
const ALUMINUM_SOURCES: Omit<MetalSources, "kFactor"> = {
  strength: ALUMINUM_STRENGTH,
  modulus: ALUMINUM_STRENGTH,
  density: "Aluminum Association, nominal densities, from memory",
};

/** Soft and commercially pure aluminium; alloys that hold a shape; soft aircraft alloys. Others are left to the formula. */
const SOFT_ALUMINUM = { springback: { row: "Al99.0" } } as const;
const FIRM_ALUMINUM = { springback: { row: "AlSiMgMn", softer: "Al99.0" } } as const;
const SOFT_AIRCRAFT = { springback: { row: "AlCuMg1", softer: "Al99.0" } } as const;

export const ALUMINUMS: readonly TabulatedMetal[] = [
  { ...aluminum("1100-O", [5, 13], [10, 2710], SOFT_K, radii.radii1100O), ...SOFT_ALUMINUM },
  { ...aluminum("1100-H14", [17, 18], [10, 2710], SOFT_K, radii.radii1100H14), ...SOFT_ALUMINUM },
  {
    ...aluminum("1050-H14", [15, 16], [10, 2705], SOFT_K, {
      ...radii.radii1100H14,
      source: `${radii.radii1100H14.source}: as 1100-H14`,
    }),
    ...SOFT_ALUMINUM,
  },
  { ...aluminum("3003-O", [6, 16], [10, 2730], SOFT_K, radii.radii3003O), ...SOFT_ALUMINUM },
  { ...aluminum("3003-H14", [21, 22], [10, 2730], SOFT_K, radii.radii3003H14), ...FIRM_ALUMINUM },
  {
    ...aluminum("5052-O", [13, 28], [10.2, 2680], SOFT_K, radii.radii5052O),
    otherRadii: radii.other5052O,
    ...SOFT_ALUMINUM,
  },
  {
    ...aluminum("5052-H32", [28, 33], [10.2, 2680], SOFT_K, radii.radii5052H32),
    otherRadii: radii.other5052H32,
    ...FIRM_ALUMINUM,
  },
  {
    ...aluminum("5052-H34", [31, 38], [10.2, 2680], SOFT_K, radii.radii5052H34),
    otherRadii: radii.other5052H34,
    ...FIRM_ALUMINUM,
  },
  {
    ...aluminum("5754-H22", [22, 35], [10.2, 2660], SOFT_K, radii.radii5754H22),
    ...FIRM_ALUMINUM,
    sources: {
      ...ALUMINUM_SOURCES,
      strength:
        "EN 485-2, 5754 H22: yield at least 130 MPa, ultimate 220 to 270 MPa, from memory; typical between",
      kFactor: SOFT_K.kSource,
    },
  },
  {
    ...aluminum("6061-O", [8, 18], [10, 2700], SOFT_K, radii.radii6061O),
    otherRadii: radii.other6061O,
    ...SOFT_ALUMINUM,
  },
  {
    ...aluminum("6061-T4", [21, 35], [10, 2700], AIRCRAFT_K, radii.radii6061T4),
    otherRadii: radii.other6061T4,
    ...FIRM_ALUMINUM,
  },
  {
    ...aluminum("6061-T6", [40, 45], [10, 2700], AIRCRAFT_K, radii.radii6061T6),
    otherRadii: radii.other6061T6,
    springback: { row: "AlSiMgMn" },
  },
  {
    ...aluminum("6082-T6", [41, 48], [10.1, 2700], AIRCRAFT_K, radii.radii6082T6),
    springback: { row: "AlSiMgMn" },
    sources: {
      ...ALUMINUM_SOURCES,
      strength:
        "EN 485-2, 6082 T6: yield at least 260 MPa, ultimate at least 310 MPa, from memory; typical above",
      kFactor: AIRCRAFT_K.kSource,
    },
  },
  {
    ...aluminum("2024-O", [11, 27], [10.6, 2780], SOFT_K, radii.radii2024O),
    otherRadii: radii.other2024O,
    ...SOFT_AIRCRAFT,
  },
  {
    ...aluminum("2024-T3", [50, 70], [10.6, 2780], AIRCRAFT_K, radii.radii2024T3),
    otherRadii: radii.other2024T3,
  },
  aluminum("2024-T4", [47, 68], [10.6, 2780], AIRCRAFT_K, radii.radii2024T4),
  { ...aluminum("7075-O", [15, 33], [10.4, 2810], SOFT_K, radii.radii7075O), ...SOFT_AIRCRAFT },
  {
    ...aluminum("7075-T6", [73, 83], [10.4, 2810], AIRCRAFT_K, radii.radii7075T6),
    otherRadii: radii.other7075T6,
  },
];

function aluminum(
  name: string,
  [yieldKsi, ultimateKsi]: readonly [number, number],
  [modulus1000Ksi, densityKgM3]: readonly [number, number],
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
