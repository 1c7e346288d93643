import { describe, expect, it } from "vitest";
import { blankByMethod } from "../../src/blank/blankByMethod.ts";

describe("blankByMethod", () => {
  it("sums the difference over all bends: two of R = T = 1 mm at 90°, one at 45°", () => {
    const bend = (angleDeg: number) => ({ angleDeg, insideRadiusMm: 1 });
    const found = blankByMethod({ thicknessMm: 1, kFactor: 0.44, bends: [bend(90), bend(90), bend(45)] });
    // FAA-H-8083-31: (0.01743 R + 0.0078 T) a degree; DIN 6935: k = 0.65 + 0.5·log10(r/s), neutral line at k·s/2.
    const byK = (225 * Math.PI * 1.44) / 180;
    expect(found.empiricalOffMm).toBeCloseTo(225 * 0.02523 - byK, 9);
    expect(found.din6935OffMm).toBeCloseTo((225 * Math.PI * 1.325) / 180 - byK, 9);
    expect(found.mostOffMm).toBe(Math.abs(found.din6935OffMm));
    expect(found.din6935OffMm).toBeLessThan(0);
  });
});
