/**
 * Getting in and out whatever the mix of flats that are off: against posts set where some mix has sheet, or where none has; and
 * lifts that just do, or don't. Source: the sheet as test/reference lays it out for the corners of the box of mixes (what lies
 * between is their convex hull for a flat, its shifts for a bend); lifts added up on paper.
 */
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Brake } from "../../src/brake/brake.ts";
import { alwaysHandled } from "../../src/contact/alwaysHandled.ts";
import { Machine } from "../../src/contact/machine.ts";
import { seatFor } from "../../src/motion/seat.ts";
import { type Stage, stagesOf } from "../../src/motion/stages.ts";
import { jobOf } from "../cases/answers.ts";
import { between } from "../contact/roughJob.ts";
import { outlineOf } from "../contact/shapes.ts";
import { stageOf } from "../reference/pairs.ts";
import type { State } from "../reference/plainJob.ts";
import type { RandomJob } from "../reference/randomJob.ts";
import type { Corner, Shape } from "../reference/shape.ts";
import { type Point, pointToSegment } from "./roundedBlocks.ts";

const T = 1;
const R = 2;
const POST_MM = 0.02;
const INSET_MM = 0.01;
const CHORD_MM = 0.01;
/** Nearer than this to the border of what the mixes take up a post says nothing. */
const SURE_MM = 0.06;
/** A bend is taken up to 2 % of its outer radius larger, and its hollow filled to the chord of an eighth of a turn. */
const BEND_MM = 0.2;
const SHIFTS = 7;

interface Setup {
  readonly flats: readonly number[];
  /** Angles, down where negative. */
  readonly bends: readonly number[];
  readonly half: readonly number[];
  readonly done: readonly number[];
  readonly bend: number;
  readonly end: "start" | "end";
  readonly leftDeg?: number;
  readonly radius?: number;
}

/** Bodies so small that the sheet itself keeps off them all. */
const NOSE: Corner[] = [
  [0, 0, 0.3],
  [0, 0.31],
  [-1, 0.31],
  [-1, 0],
];

function fileOf(
  { flats, bends, radius = R }: Setup,
  told: { lift?: number; openEnds?: boolean; frame?: Corner[][]; clamp?: Corner[] } = {},
): RandomJob {
  const { lift = 80, openEnds = true, frame = [], clamp = NOSE } = told;
  return {
    noseroom: 1,
    units: "mm",
    part: {
      thickness: T,
      insideRadius: radius,
      kFactor: 0.4,
      dimensions: "flat",
      flats: [...flats],
      bends: bends.map((angle) => ({
        angle: Math.abs(angle),
        turn: angle > 0 ? ("up" as const) : ("down" as const),
        overbend: Math.abs(angle),
      })),
      ...{ name: "mixes", material: "mild steel" },
    },
    brake: {
      clamp: { type: "profile", noseRadius: 0.3, profiles: [clamp] },
      bed: {
        profile: [
          [-1, -1],
          [0, -1],
          [0, 0],
          [-1, 0],
        ],
      },
      leaf: {
        profile: [
          [0, -1],
          [1, -1],
          [1, 0],
          [0, 0],
        ],
        swing: 150,
      },
      frame,
      lift,
      openEnds,
      ...{ name: "mixes" },
    },
  };
}

/** The stage asked, the second stroke where the bend is left part way. */
function stageIn(setup: Setup, brake: Brake): Stage {
  const { part } = jobOf(fileOf(setup));
  const { done, bend, end: clamped, leftDeg } = setup;
  const before = done.map((one) => ({ bend: one, clamped: "start" as const }));
  const first = leftDeg === undefined ? [] : [{ bend, clamped, toDeg: leftDeg }];
  return stagesOf(part, brake, [...before, ...first, { bend, clamped }]).at(-1)!;
}

interface Laid {
  readonly kind: string;
  readonly shape: Shape;
}

/** The sheet of one mix as it goes in, and as it comes out. */
function laidOut(setup: Setup, off: readonly number[]): readonly Laid[] {
  const state: State = {
    done: setup.bends.map((_, i) => setup.done.includes(i)),
    bend: setup.bend,
    end: setup.end,
  };
  const seated = (flats: readonly number[], bends: readonly number[], formed: boolean): Laid[] => {
    const file = fileOf({ ...setup, flats: flats.map((flat, i) => flat + off[i]!), bends });
    const stage = stageOf(file, state, INSET_MM, CHORD_MM);
    const kinds = [...stage.clampedPieces, { kind: "bend" }, ...stage.movingPieces].map(({ kind }) => kind);
    return stage.motion
      .seated(stage.clampedPieces, stage.movingPieces, formed, INSET_MM, CHORD_MM)
      .map((shape, i) => ({ kind: kinds[i]!, shape }));
  };
  const out = seated(setup.flats, setup.bends, true);
  if (setup.leftDeg === undefined) return [...seated(setup.flats, setup.bends, false), ...out];
  const { begun } = stageIn(setup, jobOf(fileOf(setup)).brake);
  const left = setup.bends.map((angle, i) => (i === setup.bend ? Math.sign(angle) * setup.leftDeg! : angle));
  return [...seated(begun!.part.flatsMm, left, true), ...out];
}

/** All ways of taking one of `count` shares from −1 to 1 for each flat that may be off. */
function mixesOf(half: readonly number[], count: number): number[][] {
  return half.reduce<number[][]>(
    (mixes, most) =>
      mixes.flatMap((mix) =>
        most === 0
          ? [[...mix, 0]]
          : Array.from({ length: count }, (_, i) => [...mix, most * ((2 * i) / (count - 1) - 1)]),
      ),
    [[]],
  );
}

const pointsOf = (shape: Shape): Point[] =>
  Array.from({ length: shape.length / 2 }, (_, i) => [shape[2 * i]!, shape[2 * i + 1]!]);

function hullOf(points: readonly Point[]): Point[] {
  const sorted = points.toSorted((a, b) => a[0] - b[0] || a[1] - b[1]);
  return [sorted, sorted.toReversed()].flatMap((run) => {
    const kept: Point[] = [];
    for (const c of run) {
      const turns = ([ax, ay]: Point, [bx, by]: Point) => (bx - ax) * (c[1] - ay) - (by - ay) * (c[0] - ax);
      while (kept.length > 1 && turns(kept.at(-2)!, kept.at(-1)!) <= 1e-12) kept.pop();
      kept.push(c);
    }
    return kept.slice(0, -1);
  });
}

/** Distance of a point from a polygon's border, less than 0 inside. */
function outside([x, y]: Point, polygon: readonly Point[]): number {
  let [inside, least] = [false, Infinity];
  polygon.forEach((a, i) => {
    const b = polygon[(i + 1) % polygon.length]!;
    least = Math.min(least, pointToSegment([x, y], a, b));
    if (a[1] > y !== b[1] > y && x < a[0] + ((y - a[1]) * (b[0] - a[0])) / (b[1] - a[1])) inside = !inside;
  });
  return inside ? -least : least;
}

interface Region {
  readonly polygons: readonly (readonly Point[])[];
  readonly sureMm: number;
}

/** What the sheet takes up in all mixes: by flat one hull, by bend its shifts. */
function regionsOf(setup: Setup): Region[] {
  const corners = mixesOf(setup.half, 2).map((off) => laidOut(setup, off));
  const between = mixesOf(setup.half, SHIFTS).map((off) => laidOut(setup, off));
  // Between two shifts that are tried a bend may reach farther by half a step in each flat.
  const stepMm = setup.half.reduce((sum, half) => sum + half, 0) / (SHIFTS - 1);
  return corners[0]!.map(({ kind }, i) =>
    kind === "bend"
      ? { polygons: between.map((mix) => pointsOf(mix[i]!.shape)), sureMm: BEND_MM + stepMm }
      : { polygons: [hullOf(corners.flatMap((mix) => pointsOf(mix[i]!.shape)))], sureMm: SURE_MM },
  );
}

const SETUPS: readonly Setup[] = [
  { flats: [20, 15], bends: [90], half: [1.5, 2], done: [], bend: 0, end: "start" },
  { flats: [20, 9, 15], bends: [90, 90], half: [0, 1.5, 1], done: [0], bend: 1, end: "start" },
  { flats: [12, 9, 15], bends: [90, 90], half: [1, 1.5, 0], done: [], bend: 1, end: "start" },
  { flats: [12, 9, 25], bends: [-60, 90], half: [1.5, 1, 0], done: [0], bend: 1, end: "start" },
  { flats: [12, 9, 25], bends: [90, 60], half: [1.5, 1, 0], done: [1], bend: 0, end: "end" },
  { flats: [25, 12, 9], bends: [90, -100], half: [0, 1.5, 1], done: [1], bend: 0, end: "start" },
  { flats: [25, 12, 9], bends: [90, 45], half: [0, 1, 1.5], done: [], bend: 0, end: "start" },
  {
    flats: [14, 8, 9, 11],
    bends: [90, 70, 90],
    half: [0, 0.8, 1.2, 0],
    done: [0, 1],
    bend: 2,
    end: "start",
  },
  {
    flats: [25, 8, 9, 11],
    bends: [90, 70, -80],
    half: [0, 1.2, 0.8, 0],
    done: [1, 2],
    bend: 0,
    end: "start",
  },
  { flats: [20, 15], bends: [90], half: [1.5, 2], done: [], bend: 0, end: "start", leftDeg: 40 },
  { flats: [25, 12, 9], bends: [90, -100], half: [0, 1.5, 1], done: [1], bend: 0, end: "start", leftDeg: 50 },
  { flats: [25, 12, 10, 15], bends: [30, 50, 60], half: [0, 0, 2, 0], done: [1, 2], bend: 0, end: "start" },
  // At so tight a radius the flat next to the bend lies all in the bend zone.
  {
    flats: [20, 0.5, 12],
    bends: [110, 20],
    half: [0, 0.4, 1],
    done: [1],
    bend: 0,
    end: "start",
    radius: 0.3,
  },
];

interface Probe {
  readonly at: Point;
  readonly free: boolean;
}

/** Where the moving side starts at rest: bend setback and allowance on paper, the pivot on the bed's edge. */
function zoneStart({ bends, bend, radius = R }: Setup): number {
  const angle = (Math.abs(bends[bend]!) * Math.PI) / 180;
  return (radius + 0.4 * T) * angle - (radius + T) * Math.tan(angle / 2);
}

const MOST = 40;
const PLACES = fc.sample(fc.noBias(fc.tuple(fc.nat(9999), fc.nat(9999), between(-4, 4), between(-4, 4))), {
  seed: 5,
  numRuns: 450,
});

const known = new Map<Setup, readonly Probe[]>();

/** Posts about the sheet of some mix, where it is sure whether any mix meets them. */
function probesOf(setup: Setup): readonly Probe[] {
  const before = known.get(setup);
  if (before) return before;
  const regions = regionsOf(setup);
  const zoneMm = zoneStart(setup);
  const [met, free]: [Probe[], Probe[]] = [[], []];
  for (const [piece, corner, dx, dy] of PLACES) {
    const { polygons } = regions[piece % regions.length]!;
    const polygon = polygons[corner % polygons.length]!;
    const [x, y] = polygon[corner % polygon.length]!;
    const at: Point = [x + dx, y + dy];
    // Sheet nearer to the apex than the leaf's edge is bend zone, and not looked at.
    if (at[0] > zoneMm - 1 && at[0] < 1 && Math.abs(at[1]) < 2) continue;
    const off = (by: (region: Region) => number) => (region: Region) =>
      region.polygons.some((some) => outside(at, some) < by(region));
    if (regions.some(off(() => -SURE_MM))) met.push({ at, free: false });
    else if (free.length < MOST && !regions.some(off(({ sureMm }) => sureMm))) free.push({ at, free: true });
    if (met.length >= MOST && free.length >= MOST) break;
  }
  const probes = [...met.slice(0, MOST), ...free];
  known.set(setup, probes);
  return probes;
}

/** The brake with a post in the place of one of its bodies, or beside them. */
function withPost(brake: Brake, stage: Stage, body: string, [x, y]: Point): Brake {
  const post = (dx: number, dy: number) =>
    outlineOf(
      [x + dx - POST_MM, y + dy],
      [x + dx, y + dy - POST_MM],
      [x + dx + POST_MM, y + dy],
      [x + dx, y + dy + POST_MM],
    );
  switch (body) {
    case "clamp": {
      const { part, bend, clamped, begun } = stage;
      const { noseSetbackMm } = seatFor(part, brake, bend, clamped, begun?.fromDeg);
      return {
        ...brake,
        clamp: { ...brake.clamp, outlines: [...brake.clamp.outlines, post(noseSetbackMm, -T)] },
      };
    }
    case "bed":
      return { ...brake, bed: post(0, 0) };
    case "leaf":
      return { ...brake, leaf: { ...brake.leaf, outline: post(0, 0) } };
    default:
      return { ...brake, frame: [post(0, 0)] };
  }
}

describe.each(SETUPS)("a post", (setup) => {
  const bodies = ["clamp", "bed", "leaf", "frame"];

  it("is met where some mix has sheet, and not where none has", () => {
    const { brake } = jobOf(fileOf(setup));
    const stage = stageIn(setup, brake);
    const probes = probesOf(setup);
    expect(probes.filter(({ free }) => free).length).toBeGreaterThan(10);
    expect(probes.filter(({ free }) => !free).length).toBeGreaterThan(10);
    for (const [i, { at, free }] of probes.entries()) {
      const body = bodies[i % 4]!;
      const machine = new Machine(withPost(brake, stage, body, at), T);
      expect(alwaysHandled(stage, setup.half, machine), `${body} ${at}`).toBe(free);
    }
  });
});

describe("a post in the bend zone", () => {
  // The bend's tangent lines are at −1.86 and −0.51; with the flat of 0.5 all up to −0.01 is bend zone while the leaf is at rest.
  const setup: Setup = { ...SETUPS.at(-1)!, half: [0, 0, 1] };

  it.each([
    [-0.25, true],
    [0.3, false],
  ])("is looked past at %d, where what moves is not yet off it", (x, handled) => {
    const { brake } = jobOf(fileOf(setup));
    const stage = stageIn(setup, brake);
    const machine = new Machine(withPost(brake, stage, "frame", [x, 0.5]), T);
    expect(alwaysHandled(stage, setup.half, machine)).toBe(handled);
  });
});

/** A post right of all, up to 7 over the bed: the sheet slides out over it. */
const POST: Corner[] = [
  [60, -5],
  [64, -5],
  [64, 7],
  [60, 7],
];

describe("the lift that all mixes need", () => {
  const angle: Setup = { flats: [20, 15], bends: [90], half: [1.5, 2], done: [], bend: 0, end: "start" };
  /** A flange stands behind the clamp: with its bend 3 + 10 high, and up to 1.5 more. */
  const behind: Setup = {
    flats: [10, 20, 15],
    bends: [90, 90],
    half: [1.5, 0, 0],
    done: [0],
    bend: 1,
    end: "start",
  };
  /** A flange hangs at the sheet's end, 2 + 8 deep, and up to 1 more. */
  const hanging: Setup = {
    flats: [20, 15, 8],
    bends: [90, -90],
    half: [0, 0, 1],
    done: [1],
    bend: 0,
    end: "start",
  };
  const bodyAt = (x0: number, y0: number, x1: number, y1: number): Corner[] => [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];

  it.each([
    ["over a post", angle, [POST], 7],
    // The clamp stands on the sheet, 1 over the bed.
    ["of the clamp over a flange", behind, [], 14.5 - 1],
    ["of sheet and clamp together", behind, [POST], 7 + 14.5 - 1],
    ["of what hangs over a post", hanging, [POST], 7 + 11],
    // Flat, the sheet passes under; bent, the flange of 3 + 15 and up to 2 more has to pass over.
    ["of the finished bend alone", angle, [bodyAt(60, 10, 64, 15)], 15],
  ] as const)("%s", (_, setup, frame, lift) => {
    for (const [off, handled] of [
      [0.02, true],
      [-0.03, false],
    ] as const) {
      const { brake } = jobOf(fileOf(setup, { lift: lift + off, openEnds: false, frame: [...frame] }));
      const machine = new Machine(brake, T);
      expect(alwaysHandled(stageIn(setup, brake), setup.half, machine)).toBe(handled);
      // Ends that are open always leave a way.
      const open = new Machine({ ...brake, openEnds: true }, T);
      expect(alwaysHandled(stageIn(setup, brake), setup.half, open)).toBe(true);
    }
  });

  it("is not there where the longest mix can't rise past what stands over it", () => {
    // The moving flat starts at (2 + 0.4)·π/2 − 3 = 0.77: its end is at 15.77, with 2 more at 17.77.
    const frame = [POST, bodyAt(17, 5, 18, 6)];
    const { brake } = jobOf(fileOf(angle, { openEnds: false, frame }));
    const machine = new Machine(brake, T);
    expect(alwaysHandled(stageIn(angle, brake), [1.5, 2], machine)).toBe(false);
    expect(alwaysHandled(stageIn(angle, brake), [1.5, 1], machine)).toBe(true);
    expect(alwaysHandled(stageIn(angle, brake), [1.5], machine)).toBe(true);
  });
});
