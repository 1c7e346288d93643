/**
 * The metals table against printed handbook values (test/sources/bendHandbooks.ts) and its own promise: a source on every figure.
 */
import { describe, expect, it } from "vitest";
import { metalNamed, metalNames } from "../../src/metal/metals.ts";
import { radiusLimits } from "../../src/metal/radiusLimits.ts";
import {
  aluminumTypical,
  associationRadii,
  associationRadiiBeside,
  associationThicknessesIn,
  faaRadii,
  faaRadiiThicknessesIn,
  machineryRightAngle,
} from "../sources/bendHandbooks.ts";

function metal(name: string) {
  const found = metalNamed(name);
  if (found === undefined) throw new Error(`${name} is not in the table`);
  return found;
}

describe("metalNamed", () => {
  it("knows every metal of the contract", () => {
    const wanted =
      "mild steel,galvanized steel,DC01,S235,4130 annealed,4130 normalized,304 stainless,316 stainless,1.4301,1100-O,1100-H14,1050-H14,3003-O,3003-H14,5052-O,5052-H32,5052-H34,5754-H22,6061-O,6061-T4,6061-T6,6082-T6,2024-O,2024-T3,2024-T4,7075-O,7075-T6,copper,brass";
    expect(metalNames().join()).toBe(wanted);
    for (const name of metalNames()) expect(metalNamed(name)?.name).toBe(name);
  });

  it.each([
    ["MILD STEEL", "mild steel"],
    ["6061t6", "6061-T6"],
    ["6061 T6 aluminum", "6061-T6"],
    ["aluminium 2024-t3", "2024-T3"],
    ["galvanised steel", "galvanized steel"],
    [" 304  Stainless ", "304 stainless"],
  ])("finds %s", (written, name) => {
    expect(metalNamed(written)?.name).toBe(name);
  });

  it.each(["", "6061", "steel wool", "T6", "aluminum", "__proto__"])("does not guess at %j", (written) => {
    expect(metalNamed(written)).toBeUndefined();
  });
});

describe("the table's figures", () => {
  it.each(Object.entries(aluminumTypical))(
    "%s has the Aluminum Association's typical values",
    (name, ksi) => {
      const { ultimateMpa, yieldMpa, modulusMpa } = metal(name);
      // ksi to MPa by NIST SP 811: 6.894757
      expect(ultimateMpa / 6.894757).toBeCloseTo(ksi[0], 9);
      expect(yieldMpa / 6.894757).toBeCloseTo(ksi[1], 9);
      expect(modulusMpa / 6894.757).toBeCloseTo(ksi[2], 9);
    },
  );

  it.each(metalNames())("%s is whole: sane figures and a source on each", (name) => {
    const figures = metal(name);
    expect(figures.yieldMpa).toBeGreaterThan(20);
    expect(figures.ultimateMpa).toBeGreaterThan(figures.yieldMpa);
    expect(figures.modulusMpa).toBeGreaterThan(60_000);
    expect(figures.modulusMpa).toBeLessThan(215_000);
    expect(figures.densityKgM3).toBeGreaterThan(2600);
    expect(figures.densityKgM3).toBeLessThan(9000);
    expect(figures.kFactor).toBeGreaterThan(0.3);
    expect(figures.kFactor).toBeLessThanOrEqual(0.5);
    expect(figures.radii.columns.length).toBeGreaterThan(0);
    for (const source of [...Object.values(figures.sources), figures.radii.source])
      expect(source.length).toBeGreaterThan(10);
  });

  it("starts K where Machinery's Handbook's right-angle formulas put it", () => {
    const { softOfT, hardOfT, ofR } = machineryRightAngle;
    expect(Math.abs(metal("5052-H32").kFactor - softOfT / ofR)).toBeLessThan(0.005);
    expect(Math.abs(metal("4130 annealed").kFactor - hardOfT / ofR)).toBeLessThan(0.005);
    expect(metal("mild steel").kFactor).toBeGreaterThan(softOfT / ofR);
    expect(metal("mild steel").kFactor).toBeLessThan(hardOfT / ofR);
  });
});

describe("radiusLimits", () => {
  it.each(Object.entries(faaRadii))("%s has AC 43.13-1B's ranges at its thicknesses", (name, printed) => {
    printed.split(" ").forEach((range, i) => {
      const thicknessMm = (faaRadiiThicknessesIn[i] ?? 0) * 25.4;
      const [least = Number.NaN, easy = least] = range.split("-").map(Number);
      const limits = radiusLimits(metal(name), thicknessMm);
      expect(limits?.leastMm).toBeCloseTo(least * thicknessMm, 9);
      expect(limits?.easyMm).toBeCloseTo(easy * thicknessMm, 9);
    });
  });

  it.each(Object.entries(associationRadii))("%s has the Aluminum Association's radii", (name, printed) => {
    printed.forEach((multiple, i) => {
      const thicknessMm = (associationThicknessesIn[i] ?? 0) * 25.4;
      const limits = radiusLimits(metal(name), thicknessMm);
      expect(limits?.leastMm).toBeCloseTo(multiple * thicknessMm, 9);
      expect(limits?.easyMm).toBe(limits?.leastMm);
    });
  });

  it.each(Object.entries(associationRadiiBeside))(
    "%s tells the stricter table beside the other",
    (name, printed) => {
      let stricter = 0;
      printed.forEach((multiple, i) => {
        const thicknessMm = (associationThicknessesIn[i] ?? 0) * 25.4;
        const limits = radiusLimits(metal(name), thicknessMm)!;
        if (limits.stricter) stricter++;
        const told = Math.max(limits.leastMm, limits.stricter?.leastMm ?? 0);
        expect(told).toBeGreaterThanOrEqual(multiple * thicknessMm - 1e-9);
        if (limits.stricter) expect(limits.stricter.leastMm).toBeCloseTo(multiple * thicknessMm, 9);
      });
      expect(stricter).toBeGreaterThan(0);
    },
  );

  it("goes straight between columns: FAA-H-8083-31's .16 in for .040 2024-T3 falls in the range", () => {
    const limits = radiusLimits(metal("2024-T3"), 0.04 * 25.4);
    expect((limits?.leastMm ?? 0) / 25.4).toBeCloseTo(0.04 * 2.25, 9);
    expect((limits?.easyMm ?? 0) / 25.4).toBeGreaterThanOrEqual(0.16);
  });

  it("keeps the end columns beyond the table, and knows nothing of a metal without one", () => {
    expect(radiusLimits(metal("2024-T3"), 0.1)?.leastMm).toBeCloseTo(0.15, 12);
    expect(radiusLimits(metal("2024-T3"), 10)?.leastMm).toBeCloseTo(50, 12);
    expect(radiusLimits({ name: "own", yieldMpa: 200, modulusMpa: 2e5 }, 1)).toBeUndefined();
  });
});
