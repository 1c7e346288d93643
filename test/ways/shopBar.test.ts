/**
 * One bar for several parts: which it makes, and for each of the others a reason that is its own.
 */
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { barForParts, type LeftPart } from "../../src/ways/shopBar.ts";
import { shopMadeBar } from "../../src/ways/shopMadeBar.ts";
import { readAs } from "./tryWays.ts";

function example(name: string) {
  return readAs(readFileSync(fileURLToPath(new URL(`../../examples/${name}.json`, import.meta.url)), "utf8"))
    .file;
}

const trough = example("cable-trough-finger");
const duct = example("no-way");
const tray = example("lens-box-tray");

describe("parts of which one bar makes some", () => {
  const { found, left } = barForParts([duct, trough, tray]);

  test("are designed for, the impossible one first or not", () => {
    expect(found?.makes).toEqual([1]);
    expect(barForParts([trough]).found?.brake).toEqual(found?.brake);
  });

  test("are told why where they are left, each by its own reason", () => {
    expect(left.map(({ part }) => part)).toEqual([0, 2]);
    expect(left[0]?.because).toMatch(
      /^No clamp bar makes it\. On the thinnest, with no holder behind it, the part does not fold: .* at bend \d/u,
    );
    expect(left[1]?.because).toMatch(/^A bar of its own would make it/u);
  });
});

test("barForParts: a web too narrow for clamp and leaf is refused for that, with what there is and what it needs", () => {
  const narrow = {
    ...trough,
    part: { ...trough.part, thickness: "0.063", insideRadius: "0.063", flats: ["1/2", "3/8", "1/2"] },
  };
  const [{ because, refused }] = barForParts([narrow]).left as [LeftPart];
  // Web 0.375 less two setbacks of r + T = 0.126, by hand. The clamp would need 4 T = 0.252, the leaf 2 T + r = 0.189 (common
  // practice, no source): the less that is wanted is told.
  expect(because).toContain("the leaf has 0.123 in of flat sheet to push on and needs 0.189 in at bend 2");
  expect(refused.longestMm).toBe(0);
});

describe("a part that would do with a bar of its own", () => {
  // A wider web of much thicker sheet wants a thick bar; the trough wants a thin one.
  const heavy = {
    ...trough,
    part: {
      ...trough.part,
      name: "heavy channel",
      thickness: "0.080",
      insideRadius: "0.080",
      length: 6,
      flats: ["3/4", "1 1/4", "3/4"],
    },
  };

  test("is told so, and not that no bar makes it", () => {
    expect(shopMadeBar([heavy])?.brake).toBeTruthy();
    const { found, left } = barForParts([trough, heavy]);
    expect(found?.makes).toEqual([0]);
    expect(left.map(({ part, because }) => ({ part, because }))).toEqual([
      { part: 1, because: "A bar of its own would make it, but not one that makes the others too." },
    ]);
  });
});

describe("wishes", () => {
  test("a larger load factor asks for a thicker bar, and so does weaker steel", () => {
    const thinnest = (wishes?: Parameters<typeof barForParts>[1]) =>
      barForParts([trough], wishes).found?.bar.design.window.thinnestByStrengthMm ?? 0;
    // Stress goes with load over thickness squared: thickness with the root of load over yield.
    expect(thinnest({ safety: { load: 2.5 } }) / thinnest()).toBeCloseTo(Math.SQRT2, 6);
    const steel = { name: "weaker", yieldMpa: 355, modulusMpa: 200_000 };
    expect(thinnest({ steel }) / thinnest()).toBeCloseTo(Math.sqrt(370 / 355), 6);
  });
});
