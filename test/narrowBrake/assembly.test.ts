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
