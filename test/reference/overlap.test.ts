/**
 * The reference's own distance and separation against JSTS on random polygons.
 * Source: JSTS's DistanceOp and RelateOp, a general geometry library.
 */
import fc from "fast-check";
import DistanceOp from "jsts/org/locationtech/jts/operation/distance/DistanceOp.js";
import { expect, it } from "vitest";
import { distance, isConvex, overlaps, separation, toJsts } from "./overlap.ts";
import type { Shape } from "./shape.ts";

/** A star-shaped polygon round a centre, counter-clockwise, often hollow in places. */
const star = fc
  .record({
    x: fc.double({ min: -4, max: 4, noNaN: true }),
    y: fc.double({ min: -4, max: 4, noNaN: true }),
    radii: fc.array(fc.double({ min: 0.2, max: 3, noNaN: true }), { minLength: 3, maxLength: 12 }),
  })
  .map(({ x, y, radii }): Shape => {
    const at = (i: number) => (2 * Math.PI * i) / radii.length;
    return Float64Array.from(radii.flatMap((r, i) => [x + r * Math.cos(at(i)), y + r * Math.sin(at(i))]));
  });

it("distance agrees with JSTS, and separation never exceeds it", () => {
  fc.assert(
    fc.property(star, star, (a, b) => {
      const truth = DistanceOp.distance(toJsts(a), toJsts(b)) as number;
      const near = distance(a, b);
      expect(Math.abs(near.gap - truth)).toBeLessThan(1e-9);
      expect(separation(a, isConvex(a), b, isConvex(b))).toBeLessThan(truth + 1e-9);
      if (truth > 1e-9) expect(overlaps(a, b)).toBe(false);
      expect(Math.hypot(near.from[0] - near.to[0], near.from[1] - near.to[1])).toBeCloseTo(near.gap, 9);
    }),
    { seed: 20, numRuns: 2000 },
  );
});
