/**
 * Random jobs at the far ends of what the reader takes: sheet of 0.1 to 6 mm, flats of 1 to 3,000 mm and flats of almost
 * nothing, bends of 1° to 150°, clamps, leaves and beds of hardClamp.ts. For fast-check, in the keys of the job file, in mm.
 */
import fc from "fast-check";
import type { PlainBend, PlainBrake } from "../reference/plainJob.ts";
import { noseSet, noseSettings, type RandomJob } from "../reference/randomJob.ts";
import type { Corner } from "../reference/shape.ts";
import { hardClamps, hardLeafAndBed, share, spread } from "./hardClamp.ts";

const LONGEST_MM = 3000;
const SHORTEST_MM = 1;

const angles = fc.oneof(fc.constantFrom(1, 45, 90, 90, 120, 150), share(1, 150));
const bends = fc.record({ angle: angles, up: fc.boolean(), over: fc.oneof(fc.constant(0), share(0, 0.06)) });
const pivots = fc.oneof(
  { weight: 3, arbitrary: fc.constant<[number, number]>([0, 0]) },
  { weight: 1, arbitrary: fc.tuple(share(-0.5, 0.5), share(-0.3, 0.8)) },
);

/** Straight stretches between bends, as shares of the job's size; some are a hair long. */
const stretches = fc.oneof(
  { weight: 9, arbitrary: spread(0.02, 1) },
  { weight: 1, arbitrary: fc.constantFrom(1e-6, 1e-4) },
);

/** Posts thicker than the sheet: what fits inside it stands nowhere in a shop. */
function frames(size: number, thickness: number): fc.Arbitrary<Corner[][]> {
  const post = fc
    .record({ x: share(-2, 2), y: share(0.2, 2), wide: spread(0.02, 0.5), high: spread(0.02, 1) })
    .map(({ x, y, wide, high }): Corner[] => {
      const [right, top] = [x * size + wide * size + thickness, y * size + high * size + thickness];
      return [
        [x * size, y * size],
        [right, y * size],
        [right, top],
        [x * size, top],
      ];
    });
  return fc.array(post, { maxLength: 1 });
}

/** Jobs with 1 to `mostBends` bends. */
export function hardJobs(mostBends: number): fc.Arbitrary<RandomJob> {
  return fc
    .record({
      thickness: spread(0.1, 6),
      size: spread(SHORTEST_MM, LONGEST_MM),
      nose: spread(0.05, 2),
      wider: fc.oneof(fc.constant(0), share(0, 2)),
      kFactor: share(0.25, 0.5),
      bends: fc.array(bends, { minLength: 1, maxLength: mostBends }),
      stretches: fc.array(stretches, { minLength: mostBends + 1, maxLength: mostBends + 1 }),
      allUp: fc.boolean(),
      openEnds: fc.boolean(),
      lift: share(0.05, 2),
      swing: share(95, 175),
      pivot: pivots,
      setting: noseSettings,
    })
    .chain((raw) => {
      const { thickness, kFactor } = raw;
      const size = Math.max(raw.size, 3 * thickness);
      const noseRadius = Number((raw.nose * thickness).toFixed(6));
      const insideRadius = Number((noseRadius + raw.wider * thickness).toFixed(6));
      const made = raw.bends.map(
        (bend): PlainBend => ({
          angle: bend.angle,
          turn: raw.allUp || bend.up ? "up" : "down",
          overbend: Number(Math.min(bend.angle * (1 + bend.over), 165).toFixed(6)),
        }),
      );
      const part = {
        name: "hard",
        material: "mild steel",
        thickness,
        insideRadius,
        kFactor,
        dimensions: "flat" as const,
        flats: raw.stretches
          .slice(0, made.length + 1)
          .map((length) =>
            length < 0.01 ? length : Number(Math.max(SHORTEST_MM, length * size).toPrecision(9)),
          ),
        bends: made,
      };
      return fc
        .record({
          clamp: hardClamps(noseRadius, size),
          sides: hardLeafAndBed(size),
          frame: frames(size, thickness),
        })
        .map(({ clamp, sides, frame }): RandomJob => {
          const brake: PlainBrake = {
            clamp,
            bed: { profile: sides.bed },
            leaf: { profile: sides.leaf, swing: raw.swing, pivot: raw.pivot },
            frame,
            lift: raw.lift * size,
            openEnds: raw.openEnds,
          };
          return {
            noseroom: 1,
            units: "mm",
            part,
            brake: { name: "hard", ...noseSet(brake, { setting: raw.setting, part }) } as PlainBrake,
            margin: 0.5,
          };
        });
    });
}
