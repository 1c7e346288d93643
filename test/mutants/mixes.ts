/**
 * Bends whose flats may be off, laid out in every mix on paper's terms: the stage asked for, the sheet of one mix, and what all
 * mixes together take up. For truths about getting in and out whatever the mix (contact/alwaysHandled.ts).
 */
import type { Brake } from "../../src/brake/brake.ts";
import { type Stage, stagesOf } from "../../src/motion/stages.ts";
import { jobOf } from "../cases/answers.ts";
import { stageOf } from "../reference/pairs.ts";
import type { State } from "../reference/plainJob.ts";
import type { RandomJob } from "../reference/randomJob.ts";
import type { Corner, Shape } from "../reference/shape.ts";
import { type Point, pointToSegment } from "./roundedBlocks.ts";

export const T = 1;
export const R = 2;
export const POST_MM = 0.02;
const INSET_MM = 0.01;
const CHORD_MM = 0.01;
/** Nearer than this to the border of what the mixes take up a post says nothing. */
export const SURE_MM = 0.06;
/** A bend is taken up to 2 % of its outer radius larger, and its hollow filled to the chord of an eighth of a turn. */
const BEND_MM = 0.2;
const SHIFTS = 7;

export interface Setup {
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

export function fileOf(
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
export function stageIn(setup: Setup, brake: Brake): Stage {
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
export function outside([x, y]: Point, polygon: readonly Point[]): number {
  let [inside, least] = [false, Infinity];
  polygon.forEach((a, i) => {
    const b = polygon[(i + 1) % polygon.length]!;
    least = Math.min(least, pointToSegment([x, y], a, b));
    if (a[1] > y !== b[1] > y && x < a[0] + ((y - a[1]) * (b[0] - a[0])) / (b[1] - a[1])) inside = !inside;
  });
  return inside ? -least : least;
}

export interface Region {
  readonly polygons: readonly (readonly Point[])[];
  readonly sureMm: number;
}

/** What the sheet takes up in all mixes: by flat one hull, by bend its shifts. */
export function regionsOf(setup: Setup): Region[] {
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

export const SETUPS: readonly Setup[] = [
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
