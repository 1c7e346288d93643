/**
 * The assembly of a few narrow brakes held against assemblyTruths.ts; all lengths and sheets are in test/deep/narrowBrakes.test.ts.
 */
import { expect, test } from "vitest";
import { designNarrowBrake } from "../../src/narrowBrake/designNarrowBrake.ts";
import { assemblyTruths } from "./assemblyTruths.ts";
import { asked, fewDesigns } from "./designs.ts";

assemblyTruths(fewDesigns(), 20);

test("designNarrowBrake: what can't be made is refused with its reason and the longest that would do, and that one can be made", () => {
  const far = asked(
    { metal: { name: "hard", yieldMpa: 500, modulusMpa: 200_000, ultimateMpa: 700 }, thicknessMm: 1.519 },
    24,
    "in",
    true,
  );
  const { plan, refused } = designNarrowBrake(far);
  expect(plan).toBeNull();
  expect(refused!.why).toMatch(/\d.* is the limit/u);
  expect(refused!.longestMm).toBeGreaterThan(0);
  const [part] = far.parts as [(typeof far.parts)[number]];
  expect(
    designNarrowBrake({ ...far, parts: [{ ...part, lengthMm: refused!.longestMm }] }).plan,
  ).not.toBeNull();
  expect(
    designNarrowBrake({ ...far, parts: [{ ...part, lengthMm: refused!.longestMm + 12.7 }] }).plan,
  ).toBeNull();
});

test.each([
  { metal: { name: "5052-H32", yieldMpa: 193, modulusMpa: 70_000, ultimateMpa: 228 }, thicknessMm: 0.813 },
  {
    metal: { name: "mild steel", yieldMpa: 240, modulusMpa: 200_000, ultimateMpa: 340 },
    thicknessMm: 0.912,
  },
  { metal: { name: "6061-T6", yieldMpa: 276, modulusMpa: 68_900, ultimateMpa: 310 }, thicknessMm: 1.6 },
])(
  "designNarrowBrake: $thicknessMm mm $metal.name of 4 to 18 in is never refused, and no two washers crowd each other",
  (sheet) => {
    const flangeMm = Math.max(8, 8 * sheet.thicknessMm);
    for (let lengthIn = 4; lengthIn <= 18; lengthIn += 0.5) {
      const trough = asked(sheet, lengthIn, Number.isInteger(lengthIn) ? "in" : "mm");
      const [part] = trough.parts as [(typeof trough.parts)[number]];
      const { plan, refused } = designNarrowBrake({
        ...trough,
        overhangMm: 14,
        parts: [
          { ...part, shortestFlangeMm: flangeMm, shortestClampedMm: flangeMm, deepestClampedMm: flangeMm },
        ],
      });
      expect(refused, `${lengthIn} in`).toBeNull();
      const washers = plan!.assembly.pieces
        .filter(({ name }) => name === "slotted washer")
        .map(({ shape }) => shape as { from: number; to: number })
        .sort((a, b) => a.from - b.from);
      expect(washers.length).toBeGreaterThan(1);
      washers.slice(1).forEach((one, i) => {
        expect(one.from - washers[i]!.to, `${lengthIn} in`).toBeGreaterThan(5.9);
      });
      expect(plan!.checks.filter(({ passes }) => !passes)).toEqual([]);
    }
  },
);

test.each(["in", "mm"] as const)(
  "designNarrowBrake in %s: a bar between two sizes of the rack is planed from the thicker, told in list and steps",
  (units) => {
    const trough = asked(
      {
        metal: { name: "5052-H32", yieldMpa: 193, modulusMpa: 70_000, ultimateMpa: 228 },
        thicknessMm: 0.813,
      },
      8,
      units,
    );
    const { thinnestMm } = designNarrowBrake(trough).window;
    const thickestByClearanceMm = thinnestMm + 0.06;
    const { plan, window, windowSentence } = designNarrowBrake({ ...trough, thickestByClearanceMm });
    expect(window.stockInsideMm).toEqual([]);
    const { profile } = plan!.assembly.pieces.find(({ id }) => id === "bar")!.shape as {
      profile: readonly (readonly [number, number])[];
    };
    const ys = profile.map(([, y]) => y);
    const thickMm = Math.max(...ys) - Math.min(...ys);
    expect(thickMm).toBeGreaterThanOrEqual(thinnestMm - 1e-9);
    expect(thickMm).toBeLessThanOrEqual(thickestByClearanceMm + 1e-9);
    const told = /planed (?:down )?to ([\d.]+)/u;
    const unitMm = units === "in" ? 25.4 : 1;
    for (const text of [windowSentence, plan!.cutList[0]!.stock])
      expect(Number(told.exec(text)![1]) * unitMm).toBeCloseTo(thickMm, 1);
    expect(plan!.making[0]!.words).toMatch(/Plane or grind the bar to [\d.]+ (in|mm) thick/u);
  },
);
