/**
 * Levers that a part gives leaf and bed, against figures by hand: tangent lengths, as a drawing of the trough has them.
 */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { foldingForces } from "../../src/narrowBrake/strength/foldingForces.ts";
import { outcomeOf } from "../../src/ways/folds.ts";
import { harderOf, sheetToFold } from "../../src/ways/sheetToFold.ts";
import { shopMadeBar } from "../../src/ways/shopMadeBar.ts";
import { readAs } from "./tryWays.ts";

const IN = 25.4;

const { file, job } = readAs(
  readFileSync(fileURLToPath(new URL("../../examples/cable-trough-bar.json", import.meta.url)), "utf8"),
);

describe("the trough: web 3/8 in, flanges 1/2 in outside, .032 sheet, inside radius .032", () => {
  // Bend setback of a square bend is r + T: .032 + .032 in. The flange is flat for 1/2 less one of them, the web for
  // 3/8 less two. In the order that is best, bend 1 turns flange 1 with the web clamped, bend 2 the web with flange 3 clamped.
  const bendSetback = IN * (0.032 + 0.032);
  const flange = IN / 2 - bendSetback;
  const web = (3 * IN) / 8 - 2 * bendSetback;
  const sheet = sheetToFold(job, outcomeOf(job, job.marginMm).order, 300);

  test("the leaf turns the web, its shortest, by the tangent length", () => {
    expect(sheet.shortestFlangeMm).toBeCloseTo(web, 6);
  });

  test("the bar holds the web, its shortest, by the tangent length", () => {
    expect(sheet.shortestClampedMm).toBeCloseTo(web, 6);
  });

  test("the other order of holding turns the flange", () => {
    const order = [
      { bend: 1, clamped: "end" as const },
      { bend: 2, clamped: "start" as const },
    ];
    const other = sheetToFold(job, order, 300);
    expect(other.shortestFlangeMm).toBeCloseTo(flange, 6);
    expect(harderOf(other, sheet).shortestFlangeMm).toBeCloseTo(web, 6);
  });

  test("the clamp is designed for both levers at half of these", () => {
    const { design } = shopMadeBar([file])!;
    const moment = design.loads.momentPerLength.value;
    const { leafNPerMm, clampNPerMm } = foldingForces(moment, web / 2, web / 2, 90);
    // Statics by hand: the leaf lifts with m/a, the bed with m/b, the nose holds down both.
    expect(leafNPerMm).toBeCloseTo((2 * moment) / web, 9);
    expect(clampNPerMm).toBeCloseTo((4 * moment) / web, 9);
    expect(design.loads.leafNPerMm.value).toBeCloseTo(leafNPerMm, 6);
    expect(design.loads.clampNPerMm.value).toBeCloseTo(clampNPerMm, 6);
  });
});

describe("the made brake", () => {
  const bar = shopMadeBar([file])!;
  const { clamp, bed } = bar.brake as unknown as {
    clamp: Record<string, string>;
    bed: { profile: string[][] };
  };
  const inches = (written: string | number) => {
    const text = String(written);
    const [whole = "0", fraction] = text.replace("-", "").split(" ");
    const parts = [whole, fraction ?? "0"].map((one) => one.split("/").map(Number));
    const size = parts.reduce((sum, [above = 0, below = 1]) => sum + above / below, 0);
    return text.startsWith("-") ? -size : size;
  };

  test("has the holder of its own plan, and a cap and a spine for its bed", () => {
    const { holder, cap } = sizesOf(["holder", "cap"]);
    expect(inches(clamp.holderDepth!) * IN).toBeCloseTo(holder!.deepMm, 3);
    expect(inches(clamp.holderHeight!) * IN).toBeCloseTo(holder!.highMm, 3);
    expect(Math.min(...bed.profile.map(([x]) => inches(x!))) * IN).toBeCloseTo(-cap!.deepMm, 3);
    expect(bed.profile).toHaveLength(8);
  });

  test("stands out as far as its own holder asks for", () => {
    const { bar: strip, holder } = sizesOf(["bar", "holder"]);
    expect(strip!.frontMm - holder!.frontMm).toBeCloseTo(bar.limits.overhangMm, 6);
    expect(inches(clamp.holderBack!) * IN).toBeCloseTo(bar.limits.overhangMm, 3);
  });

  function sizesOf(ids: readonly string[]) {
    const { pieces } = bar.design.plan!.assembly;
    return Object.fromEntries(
      ids.map((id) => {
        const { shape } = pieces.find((piece) => piece.id === id)!;
        const profile = "profile" in shape ? shape.profile : [];
        const [xs, ys] = [profile.map(([x]) => x), profile.map(([, y]) => y)];
        const frontMm = Math.max(...xs);
        return [
          id,
          { frontMm, deepMm: frontMm - Math.min(...xs), highMm: Math.max(...ys) - Math.min(...ys) },
        ];
      }),
    );
  }
});
