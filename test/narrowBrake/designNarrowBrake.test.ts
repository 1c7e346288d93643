/**
 * The narrow brake as a whole: a hand calculation, limits that are limits, and what must hold for any parts.
 * Hand figures worked out on paper from the cited formulas; trade facts: common practice, no source.
 */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { chooseBed } from "../../src/narrowBrake/chooseBed.ts";
import { chooseHolder } from "../../src/narrowBrake/chooseHolder.ts";
import { chooseLeaf } from "../../src/narrowBrake/chooseLeaf.ts";
import { designNarrowBrake } from "../../src/narrowBrake/designNarrowBrake.ts";
import type { MemberPlan } from "../../src/narrowBrake/memberPlan.ts";
import type { NarrowBrake } from "../../src/narrowBrake/narrowBrake.ts";
import type { NarrowBrakeRequirements } from "../../src/narrowBrake/requirements.ts";
import { stockIn } from "../../src/narrowBrake/stockSize.ts";
import { sectionOf } from "../../src/narrowBrake/strength/section.ts";
import { MILD_STEEL, TRAY, TROUGH, TROUGH_BRAKE } from "./trough.ts";

const check = (brake: NarrowBrake, member: string, about: string) =>
  brake.checks.find((one) => one.member === member && one.check.includes(about))!;

describe("designNarrowBrake: the trough by hand", () => {
  const brake = designNarrowBrake(TROUGH_BRAKE);

  test("loads: m = 1.25·(2/√3)·290·T²/4, q = m/6.35 and m/4.7625", () => {
    // 1.25 · 1.154701 · 290 · 0.8128² / 4 = 69.1327 N; /6.35 = 10.8870; /4.7625 = 14.5161.
    expect(brake.loads.momentPerLength.value).toBeCloseTo(69.1327, 3);
    expect(brake.loads.leafNPerMm.value).toBeCloseTo(10.887, 3);
    expect(brake.loads.clampNPerMm.value).toBeCloseTo(25.4031, 3);
    expect(brake.loads.clampN.value).toBeCloseTo(25.4031 * 304.8, 0);
    expect(brake.loads.turningNmm.value).toBeCloseTo(69.1327 * 304.8, 0);
    expect(brake.loads.clampN.part).toBe("cable trough");
  });

  test("window: thinnest √(6·25.403·14·1.67/250) = 3.776 mm by strength; a 1/4 in bar is inside (common practice, no source)", () => {
    expect(brake.window.thinnestByStrengthMm).toBeCloseTo(3.7755, 3);
    expect(brake.window.governs).toBe("strength");
    expect(brake.window.thickestMm).toBeCloseTo(7.8994, 4);
    expect(brake.window.stockInsideMm).toContain(6.35);
    // 3/16 and 1/4; 5/16 in is 7.9375 mm and just too thick.
    expect(brake.window.stockInsideMm).toEqual([4.7625, 6.35]);
    expect(brake.plan?.bar.thicknessMm).toBe(4.7625);
  });

  test("bolts: moments about the heel, 1.5 fold, torque K·D·F", () => {
    const { bolts, shape } = brake.plan!.holder;
    const foot = shape.kind === "angle" || shape.kind === "tube" ? shape.widthMm : Number.NaN;
    const tension = (25.4031 * 304.8 * (14 + foot)) / (foot / 2) / 2;
    expect(bolts.tensionN).toBeCloseTo(tension, 0);
    expect(bolts.preloadN).toBeCloseTo(1.5 * tension, 0);
    expect(bolts.torqueNm).toBeCloseTo((0.2 * bolts.thread.diameterMm * 1.5 * tension) / 1000, 2);
    expect(bolts.insideLength).toBe(true);
  });

  test("everything passes, and says formula, source and assumptions", () => {
    expect(brake.problems).toEqual([]);
    expect(brake.feasible).toBe(true);
    expect(brake.checks.length).toBeGreaterThanOrEqual(18);
    for (const one of brake.checks) {
      expect(one.passes).toBe(one.value <= one.limit);
      expect(one.passes).toBe(true);
      expect(one.formula).toMatch(/[=≤]/u);
      expect(one.source.length).toBeGreaterThan(5);
      expect(one.assumptions.length).toBeGreaterThan(0);
    }
  });

  test("lists, words and cautions are there, in the user's unit, without words of programmers", () => {
    expect(brake.cutList.map(({ piece }) => piece)).toContain("clamp bar");
    expect(brake.weightKg).toBeCloseTo(
      brake.cutList.reduce((sum, { weightKg }) => sum + weightKg, 0),
      9,
    );
    // Bar: 4.7625 · 63.5 · 12 7/16 in (315.9 mm) · 7.85e-6 kg/mm³ = 0.750 kg for a 2 1/2 in flat.
    const bar = brake.cutList.find(({ piece }) => piece === "clamp bar")!;
    expect(bar.weightKg).toBeCloseTo(4.7625 * brake.plan!.bar.depthMm * bar.lengthMm * 7.85e-6, 6);
    const words = JSON.stringify(brake);
    expect(words).not.toMatch(/\b(error|invalid|entity|compute|simulation|punch|die|ram|undefined|NaN)\b/iu);
    expect(brake.limits[0]).toBe("A shop aid and no engineer's approval.");
    expect(brake.cautions.join(" ")).toMatch(/cuts.*crush/u);
    expect(brake.hardware[0]!.remark).toMatch(/lbf·ft/u);
    expect(JSON.parse(words)).toEqual(brake);
  });

  test("marked-out lengths stand on sixteenths", () => {
    const sixteenth = 25.4 / 16;
    const { bar, holder, bed, leaf, handle } = brake.plan!;
    for (const mm of [bar.lengthMm, holder.bolts.spacingMm, bed.lengthMm, leaf.lengthMm, handle.reachMm]) {
      expect(mm / sixteenth).toBeCloseTo(Math.round(mm / sixteenth), 9);
    }
    expect(bar.lengthMm).toBeGreaterThanOrEqual(TROUGH.lengthMm + 10);
  });
});

describe("designNarrowBrake: limits are limits", () => {
  test.each([
    ["trough", TROUGH_BRAKE],
    ["tray", { ...TROUGH_BRAKE, units: "mm", parts: [TRAY] }],
    ["narrow leaf", { ...TROUGH_BRAKE, leafFaceMaxMm: 10 }],
  ] as const)(
    "%s: nothing lighter on the rack would do, and without the chosen size the next is heavier",
    (_, asked) => {
      const { requirements, loads, plan, window } = designNarrowBrake(asked);
      const { steel, safety, give } = requirements;
      const allowed = steel.yieldMpa / safety.yield;
      const stock = stockIn(requirements.units);
      const words = (mm: number) => String(mm);
      const { bar, holder, bed, leaf } = plan!;
      for (const t of stock.flatThicknessesMm.filter((one) => one < bar.thicknessMm)) {
        expect(t).toBeLessThan(window.thinnestMm);
      }
      const lighter = (than: number) => ({
        ...stock,
        flatThicknessesMm: [],
        angles: stock.angles.filter(({ shape }) => sectionOf(shape).areaMm2 < than),
        tubes: stock.tubes.filter(({ shape }) => sectionOf(shape).areaMm2 < than),
      });
      const falls = (one: MemberPlan | undefined, allowedDeg: number) =>
        one === undefined || one.stressMpa > allowed || one.angleLostDeg > allowedDeg;
      expect(
        falls(chooseHolder(requirements, loads, lighter(holder.section.areaMm2)), 0.7 * give.angleDeg),
      ).toBe(true);
      expect(
        falls(
          chooseBed(requirements, loads, lighter(bed.section.areaMm2), holder, bar.depthMm),
          give.angleDeg - holder.angleLostDeg,
        ),
      ).toBe(true);
      const leafStock = lighter(sectionOf(leaf.stock.shape).areaMm2);
      if (leaf.stock.shape.kind !== "flat") {
        expect(falls(chooseLeaf(requirements, leafStock, words), give.angleDeg)).toBe(true);
      }
      const without = (name: string) => ({
        ...stock,
        angles: stock.angles.filter((one) => one.name !== name),
        tubes: stock.tubes.filter((one) => one.name !== name),
      });
      const next = chooseHolder(requirements, loads, without(holder.stock.name));
      expect(next!.section.areaMm2).toBeGreaterThanOrEqual(holder.section.areaMm2);
    },
  );

  test("members by hand: holder's load with the bolts' preload, its foot, the wall under the heel, pins, ears", () => {
    const { plan, loads } = designNarrowBrake(TROUGH_BRAKE);
    const { holder, bed, leaf, pin, tongue, handle } = plan!;
    const q = 25.4031;
    const foot = 38.1;
    expect(holder.stock.name).toBe("1 1/2 × 1 1/2 × 1/8 square tube");
    const heel = (1.5 * q * (14 + foot / 2)) / (foot / 2);
    expect(holder.heelNPerMm).toBeCloseTo(heel, 2);
    expect(holder.beam.loadNPerMm).toBeCloseTo(1.5 * q + heel, 2);
    expect(holder.footStressMpa).toBeCloseTo((6 * q * 14) / 2 / 3.175 ** 2, 2);
    // Bed 2 1/2 × 1/4 tube, heel 52.1 mm behind the front, 11.4 mm before the back wall.
    expect(bed.stock.name).toBe("2 1/2 × 2 1/2 × 1/4 square tube");
    expect(bed.wallStressMpa).toBeCloseTo((6 * heel * 52.1 * 11.4) / 63.5 / 6.35 ** 2, 1);
    // Moment at a support of the holder, w·a²/2, over the section less the 3/8 in hole.
    const a = holder.beam.overhangLeftMm;
    const mid = (holder.beam.loadNPerMm * holder.beam.spanMm ** 2) / 8 - (holder.beam.loadNPerMm * a * a) / 2;
    const moment = Math.max((holder.beam.loadNPerMm * a * a) / 2, mid);
    expect(holder.stressMpa).toBeCloseTo(moment / holder.section.modulusXMm3 / (1 - 9.525 / 38.1), 1);
    // Leaf: plain beam between the hinges, twist from both ends.
    const span = leaf.lengthMm + 25;
    const give = (5 * 10.887 * span ** 4) / (384 * 200_000 * leaf.section.secondMomentXMm4);
    expect(leaf.bowMm).toBeCloseTo(give, 4);
    const tube = 3.175 * (38.1 - 3.175) ** 3;
    const twist = (loads.momentPerLength.value * leaf.lengthMm ** 2) / 8 / (200_000 / 2.58) / tube;
    expect(leaf.angleLostDeg).toBeCloseTo(((Math.atan(give / 6.35) + twist) * 180) / Math.PI, 4);
    expect(pin.forceN).toBeCloseTo((10.887 * 304.8) / 2 + 200, 0);
    expect(pin.bearingMpa).toBeCloseTo(pin.forceN / 6.35 / pin.earMm, 2);
    expect(tongue.turningNm).toBeCloseTo((200 * (handle.reachMm + 63.5 + 20)) / 1000, 3);
    expect(tongue.gripN).toBeCloseTo((6 * tongue.turningNm * 1000) / 40, 3);
    expect(plan!.screws.pushEachN).toBeCloseTo((10.887 * 304.8) / plan!.screws.count, 0);
  });

  test("window shut: a clearance under the thinnest bar gives a sentence and no plan", () => {
    const brake = designNarrowBrake({ ...TROUGH_BRAKE, thickestByClearanceMm: 3.5 });
    expect(brake.plan).toBeNull();
    expect(brake.feasible).toBe(false);
    expect(brake.problems).toEqual(["No stock bar is both thick enough to hold and thin enough to clear."]);
    expect(brake.cutList).toEqual([]);
    expect(brake.window.thinnestMm).toBeGreaterThan(3.5);
  });

  test("a front that leans back less than the overbend is called out", () => {
    const brake = designNarrowBrake({ ...TROUGH_BRAKE, frontBevelDeg: 1 });
    expect(brake.feasible).toBe(false);
    expect(brake.problems).toEqual(["The bar's front leans back 1°, and the overbend asks for 2°."]);
  });

  test("a nose radius thicker than strength asks for governs, with the rounding's full height", () => {
    const brake = designNarrowBrake({ ...TROUGH_BRAKE, noseRadiusMm: 4, frontBevelDeg: 30 });
    expect(brake.window.thinnestByNoseMm).toBeCloseTo(6, 9);
    expect(brake.window.governs).toBe("nose");
    expect(brake.plan?.bar.thicknessMm).toBe(6.35);
  });

  test("a weak vise and a weak hand are said", () => {
    const vise = designNarrowBrake({ ...TROUGH_BRAKE, vise: { forceN: 3000 } });
    expect(vise.problems).toHaveLength(1);
    expect(vise.problems[0]).toMatch(/^vise, grip on the tongue: \d+ N, and 3000 N is the limit\.$/u);
    const hand = designNarrowBrake({ ...TROUGH_BRAKE, handForceN: 10 });
    expect(hand.problems.join(" ")).toMatch(/handles would be .* too much for a hand brake/u);
  });

  test("sheet past the bolts puts them beyond its ends, with an unloaded overhang", () => {
    const { holder } = designNarrowBrake({ ...TROUGH_BRAKE, parts: [TRAY] }).plan!;
    expect(holder.bolts.insideLength).toBe(false);
    expect(holder.bolts.spacingMm).toBeGreaterThan(TRAY.lengthMm + 40);
    expect(holder.beam.overhangLeftMm).toBe(0);
  });

  test("leaf face: cut back or on edge to what clears, never taller", () => {
    for (const leafFaceMaxMm of [6, 8, 10, 12]) {
      const { plan, loads } = designNarrowBrake({ ...TROUGH_BRAKE, leafFaceMaxMm });
      expect(plan!.leaf.faceMm).toBeLessThanOrEqual(leafFaceMaxMm);
      expect(loads.leafLeverMm).toBeCloseTo(Math.min(12.7, plan!.leaf.faceMm) / 2, 9);
    }
  });

  test("impossible requirements are named", () => {
    const bad = (change: Partial<NarrowBrakeRequirements>) => () =>
      designNarrowBrake({ ...TROUGH_BRAKE, ...change });
    expect(bad({ parts: [] })).toThrow("at least one part");
    expect(bad({ overhangMm: 0 })).toThrow("overhangMm must be above 0, found 0");
    expect(bad({ parts: [{ ...TROUGH, shortestFlangeMm: -1 }] })).toThrow("shortestFlangeMm of cable trough");
    expect(bad({ parts: [{ ...TROUGH, noseSetbacksMm: [] }] })).toThrow("noseSetbacksMm of cable trough");
    expect(bad({ safety: { yield: Number.NaN } })).toThrow("yield must be above 0");
  });

  test("an unknown ultimate is said among the assumptions", () => {
    const metal = { name: "odd sheet", yieldMpa: 200, modulusMpa: 70_000 };
    const { assumptions } = designNarrowBrake({ ...TROUGH_BRAKE, parts: [{ ...TROUGH, metal }] });
    expect(assumptions.join(" ")).toContain("ultimate strength not given for cable trough");
    expect(designNarrowBrake(TROUGH_BRAKE).assumptions.join(" ")).not.toContain("not given");
  });
});

describe("designNarrowBrake: any parts", () => {
  const parts = fc.record({
    thicknessMm: fc.double({ min: 0.5, max: 1.2, noNaN: true }),
    lengthMm: fc.double({ min: 100, max: 400, noNaN: true }),
    shortestFlangeMm: fc.double({ min: 9, max: 30, noNaN: true }),
    shortestClampedMm: fc.double({ min: 9, max: 30, noNaN: true }),
    deepestClampedMm: fc.double({ min: 30, max: 150, noNaN: true }),
    overhangMm: fc.double({ min: 6, max: 25, noNaN: true }),
    units: fc.constantFrom<"mm" | "in">("mm", "in"),
  });
  const runs = { numRuns: 60, seed: 5 };

  const brakeFor = (p: { overhangMm: number; units: "mm" | "in" } & Partial<typeof TROUGH>) => {
    const { overhangMm, units, ...sheet } = p;
    return designNarrowBrake({
      ...TROUGH_BRAKE,
      units,
      overhangMm,
      thickestByClearanceMm: 25,
      parts: [{ ...TROUGH, ...sheet }],
    });
  };

  test("a plan's members keep their limits, and a failed check is always a problem", () => {
    fc.assert(
      fc.property(parts, (p) => {
        const brake = brakeFor(p);
        const failed = brake.checks.filter(({ passes }) => !passes);
        expect(brake.problems.length).toBeGreaterThanOrEqual(failed.length);
        expect(brake.feasible).toBe(brake.plan !== null && brake.problems.length === 0);
        // Strength is never traded away: only straightness, vise or handle may fail.
        for (const { member, check: about } of failed) {
          expect(`${member} ${about}`).toMatch(/^vise|mid-length/u);
        }
        if (brake.plan === null) return;
        const { bar, holder, bed } = brake.plan;
        expect(bar.depthMm).toBeGreaterThanOrEqual(
          bar.overhangMm + 2 * (holder.bolts.behindNoseMm - bar.overhangMm) - 1e-9,
        );
        expect("widthMm" in bed.shape && bed.shape.widthMm >= bar.depthMm).toBe(true);
      }),
      runs,
    );
  });

  test("thicker sheet, longer overhang and shorter flange never allow a thinner bar", () => {
    fc.assert(
      fc.property(parts, fc.double({ min: 1.01, max: 1.5, noNaN: true }), (p, more) => {
        const base = brakeFor(p).window.thinnestMm;
        expect(
          brakeFor({ ...p, thicknessMm: p.thicknessMm * more }).window.thinnestMm,
        ).toBeGreaterThanOrEqual(base);
        expect(brakeFor({ ...p, overhangMm: p.overhangMm * more }).window.thinnestMm).toBeGreaterThanOrEqual(
          base,
        );
        expect(
          brakeFor({ ...p, shortestFlangeMm: p.shortestFlangeMm / more }).window.thinnestMm,
        ).toBeGreaterThanOrEqual(base - 1e-9);
      }),
      runs,
    );
  });

  test("a second, easier part changes no governing load", () => {
    const easy = {
      ...TROUGH,
      name: "drip edge",
      thicknessMm: 0.5,
      lengthMm: 200,
      shortestFlangeMm: 20,
      shortestClampedMm: 25,
    };
    const alone = designNarrowBrake(TROUGH_BRAKE);
    const both = designNarrowBrake({ ...TROUGH_BRAKE, parts: [easy, TROUGH] });
    expect(both.loads.clampNPerMm).toEqual(alone.loads.clampNPerMm);
    expect(both.window.thinnestMm).toBe(alone.window.thinnestMm);
    expect(both.loads.momentPerLength.part).toBe("cable trough");
    expect(check(both, "clamp bar", "bending").assumptions.join(" ")).toContain("cable trough");
  });

  test("setback screws travel over the spread of all parts", () => {
    const one = designNarrowBrake({ ...TROUGH_BRAKE, units: "mm" });
    const two = designNarrowBrake({
      ...TROUGH_BRAKE,
      units: "mm",
      parts: [TROUGH, { ...TROUGH, name: "Z clip", metal: MILD_STEEL, noseSetbacksMm: [4.8] }],
    });
    // Spread 0.1 and 4.0, plus 3 of spare, up to whole millimetres.
    expect(one.plan!.screws.travelMm).toBe(4);
    expect(two.plan!.screws.travelMm).toBe(7);
    expect(two.plan!.screws.turns).toBeCloseTo(7 / two.plan!.screws.thread.pitchMm, 9);
  });
});
