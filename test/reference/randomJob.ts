/**
 * Random jobs for fast-check: whole job files (contract keys, mm) that any reader of the contract takes.
 * Sizes of a hobby shop: sheet 0.5 to 2 mm, flats 1 to 45 mm between tangents, finger, bar and shop-made clamps.
 */
import fc from "fast-check";
import type { PlainBend, PlainBrake, PlainClamp, PlainJob } from "./plainJob.ts";
import type { Corner } from "./shape.ts";
import { bendsOf } from "./sheet.ts";

/** A job file: a plain job with the keys that the contract asks for besides. */
export type RandomJob = PlainJob & { noseroom: 1; units: "mm" };

const between = (min: number, max: number) =>
  fc.integer({ min: 0, max: 1000 }).map((part) => Number((min + ((max - min) * part) / 1000).toFixed(4)));

const holder = fc.option(
  fc.record({ holderBack: between(12, 24), holderHeight: between(10, 60), holderDepth: between(5, 30) }),
  { nil: undefined },
);

/** A finger, a bar or a shop-made clamp with the given nose radius. */
function clampWith(noseRadius: number): fc.Arbitrary<PlainClamp> {
  const finger = fc
    .record({ noseAngle: between(35, 90), height: between(6, 25), footDepth: between(40, 60), holder })
    .map(({ holder: on, ...rest }): PlainClamp => ({ type: "finger", noseRadius, ...rest, ...on }));
  const bar = fc
    .record({
      noseAngle: between(70, 90),
      thickness: between(5, 12),
      depth: between(26, 50),
      top: between(0, 1),
      holder,
    })
    .map(({ holder: on, top, ...rest }): PlainClamp => {
      return { type: "bar", noseRadius, topRadius: Number((top * noseRadius).toFixed(4)), ...rest, ...on };
    });
  const profile = fc
    .record({
      thick: between(4, 8),
      depth: between(15, 35),
      post: between(3, 10),
      high: between(12, 40),
      nose: fc.constantFrom<"own" | "sharp" | "chamfer">("own", "own", "sharp", "chamfer"),
    })
    .map(({ thick, depth, post, high, nose }): PlainClamp => {
      // A chamfer of 1 by 1/2 wants a radius of (1 + 1/4)/(2·1/2) of its run: four fifths of the nose radius fit any bend here.
      const run = 0.8 * noseRadius;
      const noses: Readonly<Record<typeof nose, Corner[]>> = {
        own: [[0, 0, noseRadius]],
        sharp: [[0, 0]],
        chamfer: [
          [-run, 0],
          [0, run / 2],
        ],
      };
      const hook: Corner[] = [
        ...noses[nose],
        [0, thick, noseRadius / 2],
        [-depth, thick],
        [-depth, high],
        [-depth - post, high],
        [-depth - post, 0],
      ];
      return { type: "profile", noseRadius, profiles: [hook] };
    });
  return fc.oneof(finger, bar, profile);
}

/** How the nose is set, before the bends are known: for each, one for all, or off what the widest wants, in thicknesses. */
type NoseSetting = "auto" | "one" | { readonly off: number };

/** Nose settings as often as the model's rules want trying; now and then so far forward that some bend is pinched. */
export const noseSettings: fc.Arbitrary<NoseSetting> = fc.oneof(
  { weight: 4, arbitrary: fc.constant("auto" as const) },
  { weight: 1, arbitrary: fc.constant("one" as const) },
  { weight: 2, arbitrary: fc.record({ off: between(-0.5, 1.5) }) },
);

type BendsOnly = Pick<PlainJob["part"], "thickness" | "insideRadius" | "kFactor" | "bends">;

interface BrakeAsked {
  readonly noseRadius: number;
  readonly shim: number;
  readonly setting: NoseSetting;
  readonly part: BendsOnly;
}

/** The largest setback that a bend of the part wants for itself. */
function largestSetback(brake: PlainBrake, part: BendsOnly): number {
  return Math.max(...bendsOf(part, { ...brake, setback: "auto" }).map((bend) => bend.noseSetback));
}

/** The brake with its nose set: off the largest setback that a bend of the part wants for itself. */
export function noseSet(
  brake: PlainBrake,
  { setting, part }: Pick<BrakeAsked, "setting" | "part">,
): PlainBrake {
  if (typeof setting === "string") return { ...brake, setback: setting };
  const setback = largestSetback(brake, part) + setting.off * part.thickness;
  return { ...brake, setback: Number(setback.toFixed(4)) };
}

/** The brake of a changed job, a given nose setback as far off what its bends want as it was before the change. */
export function noseKept(
  before: Pick<PlainJob, "part" | "brake">,
  { part, brake }: Pick<PlainJob, "part" | "brake">,
): PlainBrake {
  const { setback } = before.brake;
  if (typeof setback !== "number") return brake;
  const off = (setback - largestSetback(before.brake, before.part)) / before.part.thickness;
  return noseSet(brake, { setting: { off }, part });
}

function brakeWith(asked: BrakeAsked): fc.Arbitrary<PlainBrake> {
  const { noseRadius, shim } = asked;
  return fc
    .record({
      clamp: clampWith(noseRadius).map((clamp): PlainClamp => (shim > 0 ? { ...clamp, shim } : clamp)),
      leafLong: between(6, 40),
      leafThick: between(4, 15),
      leafRound: fc.boolean(),
      bedDrop: between(5, 60),
      pivotX: fc.oneof(
        { weight: 5, arbitrary: fc.constant(0) },
        { weight: 1, arbitrary: between(-0.4, 0.4) },
      ),
      pivotY: fc.oneof({ weight: 3, arbitrary: fc.constant(0) }, { weight: 1, arbitrary: between(0, 0.6) }),
      post: fc.option(fc.record({ x: between(-140, -60), y: between(5, 40), high: between(5, 60) }), {
        nil: undefined,
      }),
      swing: between(95, 140),
      lift: between(2, 45),
      openEnds: fc.boolean(),
    })
    .map(
      ({ clamp, leafLong, leafThick, leafRound, bedDrop, pivotX, pivotY, post, swing, lift, openEnds }) => {
        const leaf: Corner[] = [
          [0, -leafThick],
          [leafLong, -leafThick, leafRound ? leafThick / 3 : 0],
          [leafLong, 0, leafRound ? leafThick / 4 : 0],
          [0, 0],
        ];
        const bed: Corner[] = [
          [-160, -bedDrop],
          [-3, -bedDrop],
          [0, Math.max(-bedDrop, -20)],
          [0, 0],
          [-160, 0],
        ];
        const column = (at: { x: number; y: number; high: number }): Corner[] => [
          [at.x - 10, at.y],
          [at.x, at.y],
          [at.x, at.y + at.high],
          [at.x - 10, at.y + at.high],
        ];
        const brake = {
          clamp,
          bed: { profile: bed },
          leaf: { profile: leaf, swing, pivot: [pivotX, pivotY] as [number, number] },
          frame: post === undefined ? [] : [column(post)],
          lift,
          openEnds,
        };
        return noseSet(brake, asked);
      },
    );
}

interface RawBend {
  angle: number;
  up: boolean;
  over: number;
  wider: number | undefined;
}

/** Jobs with 1 to `mostBends` bends. @example fc.sample(randomJobs(3), { seed: 1, numRuns: 5 }) */
export function randomJobs(mostBends: number): fc.Arbitrary<RandomJob> {
  const rawBend: fc.Arbitrary<RawBend> = fc.record({
    angle: fc.oneof(fc.constant(90), fc.constantFrom(30, 45, 60, 120), between(10, 130)),
    up: fc.boolean(),
    over: fc.oneof(fc.constant(0), between(0, 0.04)),
    wider: fc.option(between(0, 1.5), { nil: undefined }),
  });
  return fc
    .record({
      bends: fc.array(rawBend, { minLength: 1, maxLength: mostBends }),
      flats: fc.array(fc.oneof(between(1, 45), between(4, 16)), {
        minLength: mostBends + 1,
        maxLength: mostBends + 1,
      }),
      thickness: between(0.5, 2),
      noseRadius: between(0.3, 1.5),
      wider: fc.oneof(fc.constant(0), between(0, 1.2)),
      kFactor: between(0.33, 0.5),
      dimensions: fc.constantFrom("outside" as const, "inside" as const, "flat" as const),
      allUp: fc.boolean(),
      shim: fc.oneof({ weight: 4, arbitrary: fc.constant(0) }, { weight: 1, arbitrary: between(0.2, 0.8) }),
      setting: noseSettings,
    })
    .chain((raw) => {
      const insideRadius = Number((raw.noseRadius + raw.shim + raw.wider).toFixed(4));
      const bends = raw.bends.map((bend): PlainBend => {
        const overbend = Number((bend.angle * (1 + bend.over)).toFixed(4));
        const own =
          bend.wider === undefined ? {} : { insideRadius: Number((insideRadius + bend.wider).toFixed(4)) };
        return { angle: bend.angle, turn: raw.allUp || bend.up ? "up" : "down", overbend, ...own };
      });
      const { thickness, kFactor, dimensions, noseRadius, shim, setting } = raw;
      const asked = { thickness, insideRadius, kFactor, bends };
      return brakeWith({ noseRadius, shim, setting, part: asked }).map((brake): RandomJob => {
        const formed = bendsOf(asked, brake);
        const off = (i: number): number => {
          const bend = formed[i];
          if (bend === undefined || dimensions === "flat") return 0;
          return dimensions === "outside" ? bend.setbackOut : bend.radius * Math.tan(bend.theta / 2);
        };
        const flats = raw.flats
          .slice(0, bends.length + 1)
          .map((length, i) => Number((length + off(i - 1) + off(i)).toFixed(4)));
        const part = { name: "random", material: "mild steel", ...asked, dimensions, flats };
        return {
          noseroom: 1,
          units: "mm",
          part,
          brake: { name: "random", ...brake } as PlainBrake,
          margin: 0.5,
        };
      });
    });
}
