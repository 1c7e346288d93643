/**
 * Lengths written into a changed job file read back as they were: exactly where a shop writes them, else to the rounding.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { writtenAtLeast, writtenLength } from "../../src/jobFile/writtenLength.ts";
import { parseLength } from "../../src/units/length.ts";

describe("writtenLength", () => {
  it("writes 64ths of an inch as fractions and the rest in decimals", () => {
    expect(writtenLength(9.525, "in")).toBe("3/8");
    expect(writtenLength(-25.4 * 2.5, "in")).toBe("-2 1/2");
    expect(writtenLength(0.8128, "in")).toBe(0.032);
    expect(writtenLength(9.525, "mm")).toBe(9.525);
  });

  it("reads back within its rounding, and never less where it must be enough", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.001, max: 5000, noNaN: true }),
        fc.constantFrom("in", "mm"),
        (mm, units) => {
          const back = parseLength(writtenLength(mm, units), units)!;
          expect(Math.abs(back - mm)).toBeLessThan(0.0001);
          const enough = parseLength(writtenAtLeast(mm, units), units)!;
          expect(enough).toBeGreaterThanOrEqual(mm);
          expect(enough - mm).toBeLessThan(0.0004);
        },
      ),
      { seed: 1 },
    );
  });
});
