/**
 * Random jobs on brakes that no catalogue shows: pivots off the bed's edge, leaves with hooks and grooves, frames that
 * reach into the swing, clamps of two pieces with hollow corners. For fast-check, in the keys of the job file, in mm.
 */
import fc from "fast-check";
import { atScale } from "../cases/sameJob.ts";
import type { End, PlainBrake, PlainClamp, State } from "../reference/plainJob.ts";
import { noseKept, type RandomJob, randomJobs } from "../reference/randomJob.ts";
import type { Corner } from "../reference/shape.ts";

export const between = (min: number, max: number) =>
  fc.integer({ min: 0, max: 1000 }).map((part) => Number((min + ((max - min) * part) / 1000).toFixed(4)));

/** Pivots on a grid of 0.05 mm: nearer to the bed's edge the leaf would graze it by less than a nanometre. */
const pivots = fc
  .tuple(
    fc.integer({ min: -12, max: 8 }),
    fc.oneof(
      { weight: 9, arbitrary: fc.nat(24) },
      { weight: 1, arbitrary: fc.integer({ min: -20, max: -4 }) },
    ),
  )
  .map(([x, y]): [number, number] => [x / 20, y / 20]);

function turned(profile: readonly Corner[], angleDeg: number, x: number, y: number): Corner[] {
  const [c, s] = [Math.cos((angleDeg * Math.PI) / 180), Math.sin((angleDeg * Math.PI) / 180)];
  return profile.map(([px, py, radius = 0]): Corner => {
    const at = [x + c * px - s * py, y + s * px + c * py].map((length) => Number(length.toFixed(4)));
    return [at[0]!, at[1]!, radius];
  });
}

/** A C-shaped piece, hollow corners rounded inside. */
function cShape(wide: number, high: number, thick: number, round: number): Corner[] {
  return [
    [0, 0],
    [wide, 0, round],
    [wide, high, round],
    [0, high],
    [0, high - thick],
    [wide - thick, high - thick, round],
    [wide - thick, thick, round],
    [0, thick],
  ];
}

const framePiece: fc.Arbitrary<Corner[]> = fc
  .record({
    wide: between(8, 20),
    high: between(11, 22),
    round: between(0, 1.5),
    angle: between(0, 360),
    x: between(-60, 60),
    y: between(25, 80),
    hollow: fc.boolean(),
  })
  .map(({ wide, high, round, angle, x, y, hollow }) => {
    const block: Corner[] = [
      [0, 0, round],
      [wide, 0],
      [wide, high, round],
      [0, high],
    ];
    return turned(hollow ? cShape(wide, high, 3.5, round) : block, angle, x, y);
  });

const leafProfile: fc.Arbitrary<Corner[]> = fc
  .record({
    long: between(5, 40),
    thick: between(4, 15),
    round: between(0, 1),
    hook: between(0, 25),
    groove: between(0, 2.5),
    kind: fc.constantFrom("plain", "hook", "groove", "falling"),
  })
  .map(({ long, thick, round, hook, groove, kind }): Corner[] => {
    switch (kind) {
      case "hook":
        return [
          [0, -thick],
          [long, -thick, round],
          [long, -thick - hook - 1],
          [long + 4, -thick - hook - 1],
          [long + 4, 0, round],
          [0, 0],
        ];
      case "groove":
        return [
          [0, -thick],
          [long, -thick],
          [long, 0],
          [0.7 * long, 0, round / 4],
          [0.7 * long, -groove - 0.5],
          [0.3 * long, -groove - 0.5],
          [0.3 * long, 0, round / 4],
          [0, 0],
        ];
      case "falling":
        return [
          [0, -thick],
          [long, -thick],
          [long, -groove - 0.1],
          [0.5 * long, 0],
          [0, 0],
        ];
      default:
        return [
          [0, -thick],
          [long, -thick, round],
          [long, 0, round],
          [0, 0],
        ];
    }
  });

const bedProfile: fc.Arbitrary<Corner[]> = fc
  .record({ drop: between(4, 50), ledge: between(3, 30), back: between(1.5, 20) })
  .map(({ drop, ledge, back }): Corner[] => [
    [-160, -drop - ledge],
    [-back, -drop - ledge],
    [-back, -drop, 1],
    [0, -drop],
    [0, 0],
    [-160, 0],
  ]);

/** A foot and, above it, a second piece that leans over. */
function twoPieces(noseRadius: number): fc.Arbitrary<PlainClamp> {
  return fc
    .record({
      foot: between(3, 9),
      deep: between(12, 40),
      up: between(0, 12),
      lean: between(-20, 10),
      round: between(0, 2),
    })
    .map(({ foot, deep, up, lean, round }): PlainClamp => {
      const body: Corner[] = [
        [0, 0, noseRadius],
        [0, foot, noseRadius / 2],
        [-deep, foot, round],
        [-deep, foot + 30],
        [-deep - 15, foot + 30],
        [-deep - 15, 0],
      ];
      const visor = turned(cShape(14, 18, 4, round / 2), 30 + lean, -deep - 4, foot + up + 8);
      return { type: "profile", noseRadius, profiles: [body, visor] };
    });
}

function roughBrake(brake: PlainBrake): fc.Arbitrary<PlainBrake> {
  return fc
    .record({
      pivot: pivots,
      moved: fc.boolean(),
      leaf: leafProfile,
      bed: bedProfile,
      frame: fc.array(framePiece, { maxLength: 2 }),
      pieces: twoPieces(brake.clamp.noseRadius),
      two: fc.integer({ min: 0, max: 3 }).map((roll) => roll === 0),
    })
    .map(({ pivot, moved, leaf, bed, frame, pieces, two }) => ({
      ...brake,
      clamp: two ? pieces : brake.clamp,
      bed: { profile: bed },
      leaf: { ...brake.leaf, profile: leaf, pivot: moved ? pivot : [0, 0] },
      frame: [...(brake.frame ?? []), ...frame],
    }));
}

/** Jobs with 1 to `mostBends` bends on rough brakes. */
export function roughJobs(mostBends: number): fc.Arbitrary<RandomJob> {
  return randomJobs(mostBends).chain((job) =>
    roughBrake(job.brake).map((rough): RandomJob => {
      const brake = { name: "rough", ...noseKept(job, { part: job.part, brake: rough }) } as PlainBrake;
      if (typeof brake.setback !== "number") return { ...job, brake };
      // Read as flats, the lengths need not make room for the radii that the nose forms on this brake.
      return { ...job, part: { ...job.part, dimensions: "flat" }, brake };
    }),
  );
}

/** Rough jobs at odd sizes, sheet from 0.1 to 40 mm, with bends of 1° to 150°. */
export function oddJobs(mostBends: number): fc.Arbitrary<RandomJob> {
  return fc
    .tuple(roughJobs(mostBends), fc.double({ min: -0.7, max: 1.3, noNaN: true }))
    .map(([{ part, brake, ...rest }, power]) => {
      const bends = part.bends.map((bend) => {
        const angle = 1 + (149 / 120) * (bend.angle - 10);
        return { ...bend, angle, overbend: (angle * bend.overbend) / bend.angle + 1e-9 };
      });
      const flats = part.flats.map((length) => Math.max(0.6, 0.7 * length));
      // Read as flats, the lengths need not make room for the wider bends.
      const odd = { ...part, dimensions: "flat" as const, bends, flats };
      const wide = noseKept(
        { part, brake },
        { part: odd, brake: { ...brake, leaf: { ...brake.leaf, swing: 180 } } },
      );
      // Held by however little, at any size.
      return atScale({ ...rest, part: odd, brake: { ...wide, leastGrip: 0 } }, 10 ** power) as RandomJob;
    });
}

/** Which of a job's states is looked at: bends done, bend being made, end clamped. */
export interface Pick {
  readonly set: number;
  readonly bend: number;
  readonly end: End;
}

export const picks = (count: number): fc.Arbitrary<Pick[]> =>
  fc.array(fc.record({ set: fc.nat(1023), bend: fc.nat(9), end: fc.constantFrom<End>("start", "end") }), {
    minLength: count,
    maxLength: count,
  });

/** The state picked, as the reference takes it and as the engine does. */
export function stateOf(bends: number, pick: Pick): { readonly state: State; readonly bendsDone: number } {
  const bend = pick.bend % bends;
  const done = Array.from({ length: bends }, (_, i) => i !== bend && ((pick.set >> i) & 1) === 1);
  const bendsDone = done.reduce((sum, made, i) => sum | (Number(made) << i), 0);
  return { state: { done, bend, end: pick.end }, bendsDone };
}
