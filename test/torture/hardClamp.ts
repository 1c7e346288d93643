/**
 * Clamps, leaves and beds that are hard on a contact kernel: outlines traced with a thousand corners, arcs tangent to
 * arcs with no straight between them, edges of a millionth of a millimetre. In the keys of the job file, in mm.
 */
import fc from "fast-check";
import type { PlainClamp } from "../reference/plainJob.ts";
import type { Corner } from "../reference/shape.ts";

/** A length from `min` to `max`, every power of ten as likely as another. */
export function spread(min: number, max: number): fc.Arbitrary<number> {
  return fc
    .integer({ min: 0, max: 1000 })
    .map((part) => Number((min * (max / min) ** (part / 1000)).toPrecision(6)));
}

export const share = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: 1000 }).map((part) => Number((min + ((max - min) * part) / 1000).toFixed(6)));

/** A smooth blob as a hand-traced photo gives it: many corners, none rounded but for the nose. */
function traced(noseRadius: number, size: number, corners: number, wobble: number, phase: number): Corner[] {
  const foot: Corner[] = [
    [-size, 0],
    [0, 0, noseRadius],
    [0, 3 * noseRadius + size / 10],
  ];
  const top = 3 * noseRadius + size / 10;
  // Round from the front face, up, over and back, in a bumpy quarter of a circle.
  const over = Array.from({ length: corners }, (_, i): Corner => {
    const turn = ((i + 1) / (corners + 1)) * (Math.PI / 2);
    const out = size * (1 - wobble * (1 + Math.sin(9 * turn + phase)) * Math.sin(2 * turn));
    return [-size + out * Math.cos(turn), top + out * Math.sin(turn)];
  });
  return [...foot, ...over, [-size, top + size]];
}

/** Clamps with the given nose radius, of about the given size. */
export function hardClamps(noseRadius: number, size: number): fc.Arbitrary<PlainClamp> {
  const bar = fc
    .record({ thick: spread(0.05, 1), top: share(0, 1), angle: fc.constantFrom(90, 86, 75, 60) })
    .map(({ thick, top, angle }): PlainClamp => {
      const thickness = 2 * noseRadius + thick * size;
      const depth = size + 4 * thickness + 10 * noseRadius;
      return { type: "bar", noseRadius, topRadius: top * noseRadius, noseAngle: angle, thickness, depth };
    });
  const finger = fc
    .record({ high: share(0.2, 2), angle: share(30, 90), holder: fc.boolean() })
    .map(({ high, angle, holder }): PlainClamp => {
      const height = 3 * noseRadius + high * size;
      const footDepth = 4 * height + 10 * noseRadius;
      const on = { holderBack: height / 2, holderHeight: size, holderDepth: height };
      return { type: "finger", noseRadius, noseAngle: angle, height, footDepth, ...(holder && on) };
    });
  // Both front corners rounded to half the thickness: the arcs meet with no straight left between them.
  const bullnose = fc.record({ extra: fc.constantFrom(0, 1e-9, 1e-6, 1e-3), back: share(0.2, 3) }).map(
    ({ extra, back }): PlainClamp => ({
      type: "profile",
      noseRadius,
      profiles: [
        [
          [0, 0, noseRadius],
          [0, 2 * noseRadius + extra, noseRadius],
          [-back * size - 3 * noseRadius, 2 * noseRadius + extra],
          [-back * size - 3 * noseRadius, 0],
        ],
      ],
    }),
  );
  const trace = fc
    .record({ corners: fc.constantFrom(30, 300, 1000), wobble: share(0, 0.1), phase: share(0, 6) })
    .map(
      ({ corners, wobble, phase }): PlainClamp => ({
        type: "profile",
        noseRadius,
        profiles: [traced(noseRadius, size + 5 * noseRadius, corners, wobble, phase)],
      }),
    );
  // A front with a step of almost no height, and an edge of almost no length.
  const stepped = fc
    .record({ step: fc.constantFrom(1e-6, 1e-4, 1e-2), high: share(0.1, 1), deep: share(0.5, 2) })
    .map(({ step, high, deep }): PlainClamp => {
      const low = 2 * noseRadius + (high * size) / 2;
      return {
        type: "profile",
        noseRadius,
        profiles: [
          [
            [0, 0, noseRadius],
            [0, low],
            [-step, low],
            [-step, low + high * size],
            [-deep * size - 4 * noseRadius, low + high * size],
            [-deep * size - 4 * noseRadius, 0],
          ],
        ],
      };
    });
  return fc.oneof(
    { weight: 3, arbitrary: bar },
    { weight: 3, arbitrary: finger },
    { weight: 2, arbitrary: bullnose },
    { weight: 1, arbitrary: trace },
    { weight: 2, arbitrary: stepped },
  );
}

/** A leaf and a bed of about the given size: sharp, rounded all the way, or with a face of many corners. */
export function hardLeafAndBed(
  size: number,
): fc.Arbitrary<{ readonly leaf: Corner[]; readonly bed: Corner[] }> {
  return fc
    .record({
      long: share(0.3, 1.5),
      thick: share(0.2, 1),
      round: fc.constantFrom(0, 0.25, 0.5),
      drop: share(0.1, 2),
      facets: fc.constantFrom(0, 0, 0, 40),
    })
    .map(({ long, thick, round, drop, facets }) => {
      const [length, depth] = [long * size, thick * size];
      const radius = Math.min(round * depth, length / 3);
      const under = Array.from({ length: facets }, (_, i): Corner => {
        const at = (i + 1) / (facets + 1);
        return [at * length, -depth - 0.02 * size * Math.sin(Math.PI * at)];
      });
      const leaf: Corner[] = [[0, -depth], ...under, [length, -depth, radius], [length, 0, radius], [0, 0]];
      const bed: Corner[] = [
        [-4 * size - 20, -drop * size],
        [-0.1 * size, -drop * size],
        [0, (-drop * size) / 2],
        [0, 0],
        [-4 * size - 20, 0],
      ];
      return { leaf, bed };
    });
}
