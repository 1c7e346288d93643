/**
 * Calliper readings and overall sizes: FAA-H-8083-31's U-channel (mold lines 1.00, 2.00, 1.00 in), square sections
 * added up by hand, a random section against a fold of its own in the test, and doubts against plain sampling.
 */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { overallSize } from "../../src/part/overallSize.ts";
import { checkSum, doubtMixes, outsideLengthMm, usualDoubtMm } from "../../src/part/sample.ts";

const INCH = 25.4;
type Turn = "up" | "down";

function bendsOf(turns: readonly Turn[], angleDeg = 90, insideRadiusMm = 1) {
  return turns.map((turn) => ({ turn, angleDeg, insideRadiusMm }));
}

/** Tangent-to-tangent lengths of a part with square bends, from its outside lengths. */
function flatsOf(outside: readonly number[], radius: number, thickness: number): number[] {
  return outside.map((length, i) => {
    const ends = (i > 0 ? 1 : 0) + (i < outside.length - 1 ? 1 : 0);
    return length - ends * (radius + thickness);
  });
}

describe("overallSize", () => {
  test("the handbook's channel of 1, 2, 1 in is 2 in over its web and 1 in high", () => {
    const thicknessMm = 0.04 * INCH;
    const radius = 0.16 * INCH;
    const flatsMm = flatsOf([INCH, 2 * INCH, INCH], radius, thicknessMm);
    // The handbook's flats: .80, 1.60, .80 in.
    expect(flatsMm.map((flat) => flat / INCH)).toEqual(
      [0.8, 1.6, 0.8].map((flat) => expect.closeTo(flat, 9)),
    );
    const channel = { flatsMm, thicknessMm, bends: bendsOf(["up", "up"], 90, radius) };
    expect(overallSize(channel, { flat: 1 }).nominalMm).toBeCloseTo(2 * INCH, 9);
    expect(overallSize(channel, { flat: 1, square: true }).nominalMm).toBeCloseTo(INCH, 9);
    expect(overallSize(channel, { flat: 0 }).nominalMm).toBeCloseTo(INCH, 9);
  });

  test("a hat of 10, 14, 78, 14, 10 is 78 less two sheets plus two brims wide, and 14 high", () => {
    // By hand: outside to outside of the webs 78; each brim of 10 starts at the web's other face: 78 + 2·(10 − T).
    const flatsMm = flatsOf([10, 14, 78, 14, 10], 1, 0.8);
    const hat = { flatsMm, thicknessMm: 0.8, bends: bendsOf(["down", "up", "up", "down"]) };
    expect(overallSize(hat, { flat: 2 }).nominalMm).toBeCloseTo(78 + 2 * (10 - 0.8), 9);
    expect(overallSize(hat, { flat: 2, square: true }).nominalMm).toBeCloseTo(14, 9);
  });

  test("a Z is its two flanges less one sheet wide", () => {
    const flatsMm = flatsOf([20, 30, 25], 1.5, 1);
    const z = { flatsMm, thicknessMm: 1, bends: bendsOf(["up", "down"], 90, 1.5) };
    expect(overallSize(z, { flat: 0 }).nominalMm).toBeCloseTo(20 + 25 - 1, 9);
    expect(overallSize(z, { flat: 0, square: true }).nominalMm).toBeCloseTo(30, 9);
  });

  test("a bend of 180° turned on itself reaches one outer radius past its tangent", () => {
    const hem = { flatsMm: [10, 6], thicknessMm: 1, bends: bendsOf(["up"], 180, 2) };
    expect(overallSize(hem, { flat: 0 }).nominalMm).toBeCloseTo(10 + 3, 9);
    expect(overallSize(hem, { flat: 0, square: true }).nominalMm).toBeCloseTo(6, 9);
  });

  const section = fc
    .array(
      fc.record({
        angleDeg: fc.double({ min: 5, max: 150, noNaN: true }),
        turn: fc.constantFrom<Turn>("up", "down"),
        insideRadiusMm: fc.double({ min: 0.1, max: 6, noNaN: true }),
        flatMm: fc.double({ min: 1, max: 60, noNaN: true }),
      }),
      { minLength: 1, maxLength: 6 },
    )
    .map((parts) => ({
      thicknessMm: 0.8,
      flatsMm: [12, ...parts.map((part) => part.flatMm)],
      bends: parts.map(({ angleDeg, turn, insideRadiusMm }) => ({ angleDeg, turn, insideRadiusMm })),
    }));

  /** Extent by walking the sheet's middle in small steps, half a thickness to either side. */
  function walked(
    part: { flatsMm: number[]; thicknessMm: number; bends: ReturnType<typeof bendsOf> },
    way: number,
  ) {
    const reaches: number[] = [];
    let [x, y, heading] = [0, 0, 0];
    const mark = () => {
      for (const side of [-0.5, 0.5]) {
        const px = x - side * part.thicknessMm * Math.sin(heading);
        const py = y + side * part.thicknessMm * Math.cos(heading);
        reaches.push(px * Math.cos(way) + py * Math.sin(way));
      }
    };
    mark();
    part.flatsMm.forEach((flat, i) => {
      x += flat * Math.cos(heading);
      y += flat * Math.sin(heading);
      mark();
      const bend = part.bends[i];
      if (bend === undefined) return;
      const steps = 2000;
      const turn = ((bend.turn === "up" ? 1 : -1) * bend.angleDeg * Math.PI) / 180 / steps;
      const chord = 2 * (bend.insideRadiusMm + part.thicknessMm / 2) * Math.sin(Math.abs(turn) / 2);
      for (let step = 0; step < steps; step += 1) {
        x += chord * Math.cos(heading + turn / 2);
        y += chord * Math.sin(heading + turn / 2);
        heading += turn;
        mark();
      }
    });
    return Math.max(...reaches) - Math.min(...reaches);
  }

  test("is what walking along the folded sheet gives, both ways", () => {
    fc.assert(
      fc.property(section, (part) => {
        // Along flat 1 and square to it, whose heading is 0.
        expect(overallSize(part, { flat: 0 }).nominalMm).toBeCloseTo(walked(part, 0), 4);
        expect(overallSize(part, { flat: 0, square: true }).nominalMm).toBeCloseTo(
          walked(part, Math.PI / 2),
          4,
        );
      }),
      { numRuns: 60, seed: 4 },
    );
  });

  test("no mix of doubts leaves the range, and the most is reached", () => {
    fc.assert(
      fc.property(section, fc.integer({ min: 1, max: 2 ** 30 }), (part, seed) => {
        const doubts = part.flatsMm.map((_, i) => 0.1 + 0.05 * i);
        const range = overallSize(part, { flat: 0 }, doubts);
        let most = 0;
        const corners = 2 ** part.flatsMm.length;
        for (let mask = 0; mask < corners; mask += 1) {
          const flatsMm = part.flatsMm.map((flat, i) => flat + ((mask >> i) & 1 ? 1 : -1) * (doubts[i] ?? 0));
          const size = overallSize({ ...part, flatsMm }, { flat: 0 }).nominalMm;
          expect(size).toBeLessThanOrEqual(range.mostMm + 1e-9);
          expect(size).toBeGreaterThanOrEqual(range.leastMm - 1e-9);
          most = Math.max(most, size);
        }
        expect(most).toBeCloseTo(range.mostMm, 9);
        const share = ((seed % 1000) / 500 - 1) as number;
        const flatsMm = part.flatsMm.map((flat, i) => flat + share * (i % 2 ? 1 : -1) * (doubts[i] ?? 0));
        const inside = overallSize({ ...part, flatsMm }, { flat: 0 }).nominalMm;
        expect(inside).toBeLessThanOrEqual(range.mostMm + 1e-9);
        expect(inside).toBeGreaterThanOrEqual(range.leastMm - 1e-9);
      }),
      { numRuns: 60, seed: 4 },
    );
  });

  test("refuses a flat that isn't there", () => {
    expect(() => overallSize({ flatsMm: [5], thicknessMm: 1, bends: [] }, { flat: 1 })).toThrow(RangeError);
  });
});

describe("outsideLengthMm", () => {
  test("an inside reading grows by one sheet at each square bend, none at a free end", () => {
    const bends = bendsOf(["up", "up"]);
    const inside = (lengthMm: number) => ({ lengthMm, doubtMm: 0, side: "inside" as const });
    expect(outsideLengthMm(inside(18.4), 1, bends, 0.8)).toBeCloseTo(20, 9);
    expect(outsideLengthMm(inside(9.2), 0, bends, 0.8)).toBeCloseTo(10, 9);
    expect(outsideLengthMm({ ...inside(20), side: "outside" }, 1, bends, 0.8)).toBe(20);
  });
});

describe("checkSum", () => {
  const bends = bendsOf(["down", "up", "up", "down"]);
  const readings = [10, 14, 78, 14, 10].map((lengthMm) => {
    return { lengthMm, doubtMm: usualDoubtMm("mm"), side: "outside" as const };
  });
  const overall = (lengthMm: number) => ({ lengthMm, doubtMm: 0.25, direction: { flat: 2 } });

  test("a hat that adds up agrees; one that is off by more than all doubts does not", () => {
    // By hand: 96.4 over all; brims and crown are doubtful by 0.25 each, the overall reading too: 1.0 in all.
    expect(checkSum(readings, bends, 0.8, overall(96.4))).toMatchObject({ agrees: true });
    expect(checkSum(readings, bends, 0.8, overall(97.39)).agrees).toBe(true);
    const off = checkSum(readings, bends, 0.8, overall(97.42));
    expect(off.agrees).toBe(false);
    expect(off.expectedMm).toBeCloseTo(96.4, 9);
    expect(off.offMm).toBeCloseTo(1.02, 9);
    expect(off.explainedMm).toBeCloseTo(1, 9);
    expect(checkSum(readings, bends, 0.8, overall(95.38)).agrees).toBe(false);
  });

  test("refuses flats that don't go with the bends", () => {
    expect(() => checkSum(readings.slice(1), bends, 0.8, overall(90))).toThrow(RangeError);
    const short = readings.map((reading) => ({ ...reading, lengthMm: 3 }));
    expect(() => checkSum(short, bends, 0.8, overall(90))).toThrow(/flat 2 is too short/u);
  });
});

test("doubtMixes: as read first, then all ways together, then each alone; sure readings stay", () => {
  expect(doubtMixes([0, 0])).toEqual([[0, 0]]);
  expect(doubtMixes([0.25, 0])).toEqual([
    [0, 0],
    [1, 0],
    [-1, 0],
  ]);
  const mixes = doubtMixes([0.1, 0, 0.2]);
  expect(mixes[0]).toEqual([0, 0, 0]);
  expect(mixes).toContainEqual([1, 0, 1]);
  expect(mixes).toContainEqual([-1, 0, -1]);
  expect(mixes).toContainEqual([0, 0, -1]);
  expect(new Set(mixes.map((mix) => mix.join())).size).toBe(mixes.length);
});

test("usualDoubtMm is a 64th of an inch, or a quarter of a millimetre", () => {
  expect(usualDoubtMm("in") * 64).toBeCloseTo(25.4, 9);
  expect(usualDoubtMm("mm")).toBe(0.25);
});
