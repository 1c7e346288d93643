/**
 * Nests against a brute force that cuts every mix of rows by hand, and against cutting one by one: nothing overlaps,
 * every cut goes edge to edge. Sums by hand stand beside the fixed cases.
 */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Nest, type NestQuestion, nestOnSheet } from "../../src/blank/nest.ts";

const size = (most: number) => fc.integer({ min: 5, max: most });
const question: fc.Arbitrary<NestQuestion> = fc.record({
  blank: fc.record({ widthMm: size(120), lengthMm: size(400) }),
  sheet: fc.record({ widthMm: size(600), lengthMm: size(900) }),
  grain: fc.constantFrom("across" as const, "free" as const),
  kerfMm: fc.constantFrom(0, 0.2, 3),
});

/** Most blanks that any pile of rows gives, tried one row after the other. */
function mostByHand({ blank, sheet, grain, kerfMm }: NestQuestion): number {
  const inRow = (piece: number) => {
    let count = 0;
    for (let reached = piece; reached <= sheet.widthMm + 1e-9; reached += kerfMm + piece) count += 1;
    return count;
  };
  const rows = [{ tall: blank.widthMm, gives: inRow(blank.lengthMm) }];
  if (grain === "free") rows.push({ tall: blank.lengthMm, gives: inRow(blank.widthMm) });
  const known = new Map<number, number>();
  const from = (left: number): number => {
    const key = Math.round(left * 1e6);
    const stored = known.get(key);
    if (stored !== undefined) return stored;
    const most = Math.max(
      0,
      ...rows
        .filter((row) => row.tall <= left + 1e-9)
        .map((row) => row.gives + from(left - row.tall - kerfMm)),
    );
    known.set(key, most);
    return most;
  };
  return from(sheet.lengthMm);
}

function overlaps(nest: Nest): boolean {
  return nest.places.some((a, i) =>
    nest.places.slice(i + 1).some((b) => {
      const wide = Math.min(a.at.x + a.widthMm, b.at.x + b.widthMm) - Math.max(a.at.x, b.at.x);
      const tall = Math.min(a.at.y + a.heightMm, b.at.y + b.heightMm) - Math.max(a.at.y, b.at.y);
      return wide > 1e-9 && tall > 1e-9;
    }),
  );
}

describe("nestOnSheet", () => {
  test("gives as many as trying every pile of rows, and none overlap or hang over", () => {
    fc.assert(
      fc.property(question, (asked) => {
        const nest = nestOnSheet(asked);
        expect(nest?.perSheet ?? 0).toBe(mostByHand(asked));
        if (nest === undefined) return;
        expect(nest.places.length).toBe(nest.perSheet);
        if (nest.places.length < 120) expect(overlaps(nest)).toBe(false);
        const right = Math.max(...nest.places.map(({ at, widthMm }) => at.x + widthMm));
        const top = Math.max(...nest.places.map(({ at, heightMm }) => at.y + heightMm));
        expect(right).toBeLessThan(asked.sheet.widthMm + 1e-5);
        expect(top).toBeLessThan(asked.sheet.lengthMm + 1e-5);
        const area = nest.places.reduce((sum, place) => sum + place.widthMm * place.heightMm, 0);
        // Blanks, waste of the strips (what their cuts take away included) and the whole rest make up the sheet.
        const stripsMm = asked.sheet.lengthMm - nest.restMm;
        const waste = (nest.wastePercent / 100) * stripsMm * asked.sheet.widthMm;
        const whole = asked.sheet.widthMm * asked.sheet.lengthMm;
        expect((area + waste + nest.restMm * asked.sheet.widthMm) / whole).toBeCloseTo(1, 6);
        expect(nest.restMm).toBeLessThanOrEqual(asked.sheet.lengthMm - top + 1e-6);
        expect(nest.restMm).toBeGreaterThanOrEqual(asked.sheet.lengthMm - top - asked.kerfMm - 1e-6);
      }),
      { numRuns: 300, seed: 4 },
    );
  });

  test("no cut runs through a blank", () => {
    fc.assert(
      fc.property(question, (asked) => {
        const nest = nestOnSheet(asked);
        if (nest === undefined || nest.places.length > 150) return;
        const through = nest.cuts.filter(({ from, to }) =>
          nest.places.some(({ at, widthMm, heightMm }) =>
            from.y === to.y
              ? from.y > at.y + 1e-9 && from.y < at.y + heightMm - 1e-9
              : from.x > at.x + 1e-9 &&
                from.x < at.x + widthMm - 1e-9 &&
                from.y < at.y + heightMm - 1e-9 &&
                to.y > at.y + 1e-9,
          ),
        );
        expect(through).toEqual([]);
      }),
      { numRuns: 100, seed: 4 },
    );
  });

  test("a 48 × 96 in sheet gives 80 strips of 2.4 × 24 in with their bends across the grain", () => {
    // By hand: 48 / 24 = 2 in a row, 96 / 2.4 = 40 rows; 39 cuts across, 1 in each row: the sheet's edges need none.
    const inch = 25.4;
    const nest = nestOnSheet({
      blank: { widthMm: 2.4 * inch, lengthMm: 24 * inch },
      sheet: { widthMm: 48 * inch, lengthMm: 96 * inch },
      grain: "across",
      kerfMm: 0,
    });
    expect(nest?.perSheet).toBe(80);
    expect(nest?.rows.length).toBe(40);
    expect(nest?.cuts.length).toBe(39 + 40);
    expect(nest?.wastePercent).toBeCloseTo(0, 9);
  });

  test("grain kept gives less than grain free where the blank is long: 500 × 300 from 400 × 1000", () => {
    // By hand: kept, 500 along the bends does not go into 400. Free, 500 lies along the sheet: 1 a row, 2 rows.
    const asked = {
      blank: { widthMm: 300, lengthMm: 500 },
      sheet: { widthMm: 400, lengthMm: 1000 },
      kerfMm: 0,
    };
    expect(nestOnSheet({ ...asked, grain: "across" })).toBeUndefined();
    const free = nestOnSheet({ ...asked, grain: "free" });
    expect(free?.perSheet).toBe(2);
    expect(free?.rows.every((row) => row.laid === "along")).toBe(true);
    expect(free?.wastePercent).toBeCloseTo(25, 9);
  });

  test("few wanted: the least of the sheet's length is used", () => {
    // By hand: 4 wanted of 100 × 300, 1000 wide: 3 a row laid across take 2 rows, 200 long; 10 a row laid along
    // take 1 row, 300 long.
    const nest = nestOnSheet({
      blank: { widthMm: 100, lengthMm: 300 },
      sheet: { widthMm: 1000, lengthMm: 2000 },
      grain: "free",
      kerfMm: 0,
      wanted: 4,
    });
    expect(nest?.perSheet).toBe(4);
    expect(nest?.sheets).toBe(1);
    expect(nest?.rows.map((row) => [row.laid, row.count])).toEqual([
      ["across", 3],
      ["across", 1],
    ]);
  });

  test("many wanted: sheets are counted up", () => {
    const asked: NestQuestion = {
      blank: { widthMm: 100, lengthMm: 500 },
      sheet: { widthMm: 1000, lengthMm: 2000 },
      grain: "across",
      kerfMm: 0,
      wanted: 41,
    };
    expect(nestOnSheet(asked)?.sheets).toBe(2);
    expect(nestOnSheet({ ...asked, wanted: 40 })?.sheets).toBe(1);
  });

  test.each([
    [{ widthMm: 0, lengthMm: 5 }, 0, 1],
    [{ widthMm: 5, lengthMm: Number.NaN }, 0, 1],
    [{ widthMm: 5, lengthMm: 5 }, -1, 1],
    [{ widthMm: 5, lengthMm: 5 }, 0, 1.5],
    [{ widthMm: 5, lengthMm: 5 }, 0, 0],
  ])("refuses %j with kerf %d and %d wanted", (blank, kerfMm, wanted) => {
    const sheet = { widthMm: 50, lengthMm: 50 };
    expect(() => nestOnSheet({ blank, sheet, grain: "free", kerfMm, wanted })).toThrow(RangeError);
  });
});
