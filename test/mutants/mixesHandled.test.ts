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
import type { Stage } from "../../src/motion/stages.ts";
import { jobOf } from "../cases/answers.ts";
import { between } from "../contact/roughJob.ts";
import { outlineOf } from "../contact/shapes.ts";
import type { Corner } from "../reference/shape.ts";
import {
  fileOf,
  outside,
  POST_MM,
  R,
  type Region,
  regionsOf,
  SETUPS,
  type Setup,
  SURE_MM,
  stageIn,
  T,
} from "./mixes.ts";
import type { Point } from "./roundedBlocks.ts";

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
