/**
 * What is measured of one element of the sheet, how far and between which two points; what is left out as lying there by design.
 * Source: blocks and flanges on paper, T = 1 and bends of 90° with an inside radius of 2; where the least is on the way, the
 * swing gone through in small steps.
 */
import { describe, expect, it } from "vitest";
import { ClearanceChecks, type ClearanceRecord, noClearance } from "../../src/contact/clearance.ts";
import type { Side } from "../../src/contact/seatPieces.ts";
import type { Seat } from "../../src/motion/seat.ts";
import {
  type Block,
  checksIn,
  type PlainBlocks,
  type PlainJoint,
  plainChain,
  plainSeat,
} from "./plainSeat.ts";
import { type Point, pointToSegment, polygonDistance, turned } from "./roundedBlocks.ts";

const QUARTER = Math.PI / 2;

const UP: PlainJoint = { allowanceMm: 4, insideRadiusMm: 2, angleRad: QUARTER, turn: 1 };
const DOWN: PlainJoint = { ...UP, turn: -1 };

/** The moving side starts at 1, the clamped one at −3 and leads away. */
function measured(
  told: Partial<Seat>,
  blocks: PlainBlocks,
  measure: (checks: ClearanceChecks, record: ClearanceRecord) => void,
): ClearanceRecord {
  const record = noClearance();
  measure(new ClearanceChecks(checksIn(plainSeat(told), blocks)), record);
  return record;
}

function withBrake(told: Partial<Seat>, blocks: PlainBlocks, side: Side, k: number, formed: number) {
  return measured(told, blocks, (checks, record) => checks.withBrake(side, k, formed, record));
}

function corners([x0, y0, x1, y1]: Block): Point[] {
  return [
    [x0, y0],
    [x1, y0],
    [x1, y1],
    [x0, y1],
  ];
}

function offBorder(point: Point, polygon: readonly Point[]): number {
  return Math.min(...polygon.map((a, i) => pointToSegment(point, a, polygon[(i + 1) % polygon.length]!)));
}

/** As far apart as told, the part's point on one border and the other's on the other. */
function expectBetween(record: ClearanceRecord, mm: number, part: readonly Point[], other: readonly Point[]) {
  expect(record.mm).toBeCloseTo(mm, 3);
  expect(Math.hypot(record.partX - record.otherX, record.partY - record.otherY)).toBeCloseTo(record.mm, 6);
  expect(offBorder([record.partX, record.partY], part)).toBeLessThan(1e-3);
  expect(offBorder([record.otherX, record.otherY], other)).toBeLessThan(1e-3);
}

/** Where two polygons come nearest while one swings, by small steps: how far, and the swung one as it stands then. */
function nearest(swung: (phi: number) => readonly Point[], still: readonly Point[], sweepRad: number) {
  let best = { mm: Infinity, at: 0 };
  const look = (from: number, to: number) => {
    for (let i = 0; i <= 200; i++) {
      const at = Math.min(sweepRad, Math.max(0, from + ((to - from) * i) / 200));
      const mm = polygonDistance(swung(at), still);
      if (mm < best.mm) best = { mm, at };
    }
  };
  look(0, sweepRad);
  for (const wide of [0.02, 0.0004]) look(best.at - wide, best.at + wide);
  return { mm: best.mm, swung: swung(best.at) };
}

const turnedBy = (block: Block, phi: number) => corners(block).map((corner) => turned(corner, phi));

/** A flange up at the clamped side's end: 20, bend, 10. It stands from −26 to −25, from 3 to 13 over the bed. */
const CLAMPED_UP = { clampedChain: plainChain([20, 10], [UP]) };
const CLAMPED_FLANGE: Block = [-26, 3, -25, 13];
/** The same down: from −26 to −25, its inside toward the bed. */
const CLAMPED_DOWN = { clampedChain: plainChain([20, 10], [DOWN]) };
/** Up at the moving side's end: at rest from 23 to 24, from 3 to 13 over the leaf. */
const MOVING_UP = { movingChain: plainChain([20, 10], [UP]) };
const MOVING_FLANGE: Block = [23, 3, 24, 13];
const MOVING_DOWN = { movingChain: plainChain([20, 10], [DOWN]) };

describe("a flange of the clamped side", () => {
  it("is measured from the clamp", () => {
    const clamp: Block = [-21, 6, -4, 9];
    // The leaf comes after and is farther off.
    const record = withBrake(CLAMPED_UP, { clamp: [clamp], leaf: [0, -2, 6, 0] }, "clamped", 1, 1);
    expectBetween(record, 4, corners(CLAMPED_FLANGE), corners(clamp));
  });

  it("is measured from the frame", () => {
    const frame: Block = [-21, 6, -4, 9];
    const record = withBrake(CLAMPED_UP, { frame: [frame] }, "clamped", 1, 1);
    expectBetween(record, 4, corners(CLAMPED_FLANGE), corners(frame));
  });

  it("is measured from the leaf as it swings", () => {
    const sweep = { sweepRad: (5 * Math.PI) / 6, overbendRad: (5 * Math.PI) / 6 };
    const leaf: Block = [0, -2, 20, 0];
    const record = withBrake({ ...CLAMPED_UP, ...sweep }, { leaf }, "clamped", 1, 1);
    // Turned by 150° the leaf's corner is at 20·cos 150° = −17.32.
    expectBetween(
      record,
      25 - 20 * Math.cos(Math.PI / 6),
      corners(CLAMPED_FLANGE),
      turnedBy(leaf, sweep.sweepRad),
    );
  });

  it("is measured from the bed where it hangs", () => {
    const bed: Block = [-21, -8, -1, -4];
    const record = withBrake(CLAMPED_DOWN, { bed }, "clamped", 1, 1);
    expectBetween(record, 4, corners([-26, -12, -25, -2]), corners(bed));
  });

  it("is not measured from the bed where it stands at the run's end", () => {
    const bed: Block = [-21, 6, -4, 9];
    expect(withBrake(CLAMPED_UP, { bed }, "clamped", 1, 1).mm).toBeGreaterThan(20);
  });
});

describe("a flange of the moving side", () => {
  /** Turned by 90° the flange lies from 23 to 24 over the pivot, from −13 to −3. */
  const high: Block = [-10, 15, -5, 20];

  it.each([{ clamp: [high] }, { bed: high }, { frame: [high] }])("is measured from %j", (blocks) => {
    const record = withBrake(MOVING_UP, blocks, "moving", 1, 1);
    expectBetween(record, 3, turnedBy(MOVING_FLANGE, QUARTER), corners(high));
  });

  it("leaves the run to be measured from the frame alone", () => {
    const record = withBrake(MOVING_UP, { frame: [high] }, "moving", 0, 1);
    // Turned by 90° the run's inner face is at −1.
    expectBetween(record, 4, turnedBy([1, 0, 21, 1], QUARTER), corners(high));
    for (const blocks of [{ clamp: [high] }, { bed: high }, { leaf: [1, -9, 30, 0] as Block }])
      expect(withBrake(MOVING_UP, blocks, "moving", 0, 1).mm).toBe(Infinity);
  });

  it("is measured from the leaf where it hangs, in the leaf's own frame", () => {
    const leaf: Block = [1, -8, 19, -4];
    // Slides in by 2·tan(φ/2), 2 at 90°; the bend zone does not grow past its start.
    const slides = { slideTan: -2, bendZoneTan: -2 };
    const record = withBrake({ ...MOVING_DOWN, ...slides }, { leaf }, "moving", 1, 1);
    expectBetween(record, 2, turnedBy([21, -12, 22, -2], QUARTER), turnedBy(leaf, QUARTER));
    expect(withBrake(MOVING_DOWN, { leaf }, "moving", 1, 1).mm).toBeCloseTo(4, 9);
  });

  it("is not measured from the leaf where it stands at the run's end", () => {
    expect(withBrake(MOVING_UP, { leaf: [1, 5, 21, 9] }, "moving", 1, 1).mm).toBeGreaterThan(20);
  });
});

describe("a step at the moving side's end, left part way before", () => {
  // 20, up, 10, down, 10: the last flat from (26, 15) to (36, 16), its bend from (23, 13) to (24, 13).
  const step = { movingChain: plainChain([20, 10, 10], [UP, DOWN]) };
  const fromRad = 0.5;

  it("is passed by the rising leaf", () => {
    // Ahead of the end and farther out: what comes up passes the end at the difference of both distances from the pivot.
    const leaf: Block = [38.5, 20, 45, 22];
    const [end, corner] = [Math.hypot(36, 16), Math.hypot(38.5, 20)];
    const record = withBrake({ ...step, fromRad }, { leaf }, "moving", 2, 3);
    const at = Math.atan2(16, 36) + fromRad;
    expectBetween(
      record,
      corner - end,
      [[end * Math.cos(at), end * Math.sin(at)]],
      [[corner * Math.cos(at), corner * Math.sin(at)]],
    );
    // From rest the leaf carries it along.
    expect(withBrake(step, { leaf }, "moving", 2, 3).mm).toBeCloseTo(Math.hypot(2.5, 4), 9);
  });

  it("is passed at the corner of its bend", () => {
    // Nearer to the pivot than all of the step.
    const leaf: Block = [14, 18, 16, 20];
    const record = withBrake({ ...step, fromRad }, { leaf }, "moving", 2, 3);
    expect(record.mm).toBeCloseTo(Math.hypot(23, 13) - Math.hypot(16, 20), 6);
  });
});

describe("a hat on the moving side", () => {
  // 10, up, 8, down, 10, down, 8, up, 10: from x = 1 the fourth flat goes down at 28 to 29, from 11 to 3.
  const flats = [10, 8, 10, 8, 10];
  const hat = { movingChain: plainChain(flats, [UP, DOWN, DOWN, UP]) };
  const cut = { movingChain: plainChain(flats.slice(0, 4), [UP, DOWN, DOWN]) };
  /** Reaches under the hat with an arm that ends at (23, 5) to (23, 6). */
  const leaf = [
    [0, -5],
    [19, -5],
    [19, 5],
    [23, 5],
    [23, 6],
    [17, 6],
    [17, 0],
    [0, 0],
  ] as const;
  /** The bend before that flat ends at (28, 11). */
  const bend = Math.hypot(5, 5);

  it("has its flat that comes down measured with the next element, once that does not lead back", () => {
    expect(withBrake(hat, { leaf }, "moving", 3, 0b0111).mm).toBeCloseTo(bend, 9);
    expect(withBrake(hat, { leaf }, "moving", 3, 0b1111).mm).toBeCloseTo(bend, 9);
    expect(withBrake(hat, { leaf }, "moving", 4, 0b0111).mm).toBeCloseTo(5, 9);
  });

  it("has it left out beside the run that it leads back into, and that run too", () => {
    expect(withBrake(hat, { leaf }, "moving", 4, 0b1111).mm).toBeGreaterThan(20);
  });

  it("has it measured at once where it is the last", () => {
    expect(withBrake(cut, { leaf }, "moving", 3, 0b0111).mm).toBeCloseTo(5, 9);
  });

  it("has flat 3 on top measured at once", () => {
    // Its bend starts at (13, 11) to (14, 11), 3 from the arm's back corner across and 5 up.
    expect(withBrake(hat, { leaf }, "moving", 2, 0b0011).mm).toBeCloseTo(Math.hypot(3, 5), 9);
  });

  it("upside down has its flat that comes up measured at once, whether the next leads back or not", () => {
    // 10, down, 8, up, 10, up, 8, down, 10: the fourth flat goes up at 28 to 29, from −10 to −2.
    const pan = { movingChain: plainChain(flats, [DOWN, UP, UP, DOWN]) };
    const under: PlainBlocks = { leaf: [0, -6, 23, -5] };
    for (const formed of [0b0111, 0b1111])
      expect(withBrake(pan, under, "moving", 3, formed).mm).toBeCloseTo(5, 9);
    // Straight on: the strip and the last flat from (28, −2) up.
    expect(withBrake(pan, under, "moving", 4, 0b0111).mm).toBeCloseTo(Math.hypot(5, 3), 9);
  });
});

describe("where the bend zone grows past the moving flat's start", () => {
  it("measures its cut from the frame", () => {
    const seat = { movingChain: plainChain([20]), bendZoneTan: 4 };
    // Sheet nearer than 4·tan(φ/2) to the pivot is bend zone.
    const swung = (phi: number) => turnedBy([Math.max(1, 4 * Math.tan(phi / 2)), 0, 21, 1], phi);
    const frame: Block = [-3, 0, -1, 3];
    const { mm, swung: sheet } = nearest(swung, corners(frame), QUARTER);
    const record = withBrake(seat, { frame: [frame] }, "moving", 0, 0);
    expectBetween(record, mm, sheet, corners(frame));
    // The clamped run is another matter: this one lies 5 under the frame.
    const over: Block = [-3, 6, -1, 9];
    expect(withBrake(seat, { frame: [over] }, "clamped", 0, 0).mm).toBeCloseTo(5, 9);
  });

  it.each(["element by element", "at once"])("measures its cut from the other side, %s", (how) => {
    // 20, up, 5, up, 20: the last flat comes back over the bed from −23 to −3, from 10 to 11.
    const clampedChain = plainChain([20, 5, 20], [UP, UP]);
    const seat = { movingChain: plainChain([20]), clampedChain, bendZoneTan: 14 };
    const swung = (phi: number) => turnedBy([Math.max(1, 14 * Math.tan(phi / 2)), 0, 21, 1], phi);
    const back = corners([-23, 10, -3, 11]);
    const { mm, swung: sheet } = nearest(swung, back, QUARTER);
    const record = measured(seat, {}, (checks, found) => {
      if (how === "at once") checks.betweenSides(0, 3, found);
      else checks.betweenElements(0, 0, 2, 3, found);
    });
    expectBetween(record, mm, sheet, back);
  });
});

describe("the two sides", () => {
  const sweepRad = (5 * Math.PI) / 6;
  const sweep = { sweepRad, overbendRad: sweepRad };
  const between = (told: Partial<Seat>, m: number, formedM: number, c: number, formedC: number) => [
    measured(told, {}, (checks, record) => checks.betweenElements(m, formedM, c, formedC, record)),
    measured(told, {}, (checks, record) => checks.betweenSides(formedM, formedC, record)),
  ];

  it("are not measured run on run", () => {
    for (const record of between({ ...CLAMPED_UP, ...MOVING_UP, ...sweep }, 0, 0, 0, 0))
      expect(record.mm).toBe(Infinity);
  });

  it("are measured from a moving flange to the clamped run", () => {
    const told = { movingChain: plainChain([20, 8], [UP]), ...sweep };
    const run = corners([-23, 0, -3, 1]);
    const { mm, swung } = nearest((phi) => turnedBy([23, 3, 24, 11], phi), run, sweepRad);
    for (const record of between(told, 1, 1, 0, 0)) expectBetween(record, mm, swung, run);
  });

  it("are measured from the moving run to a clamped flange", () => {
    const told = { ...CLAMPED_UP, ...sweep };
    const flange = corners(CLAMPED_FLANGE);
    const { mm, swung } = nearest((phi) => turnedBy([1, 0, 21, 1], phi), flange, sweepRad);
    for (const record of between(told, 0, 0, 1, 1)) expectBetween(record, mm, swung, flange);
  });

  it("are not measured from a run that comes back to the clamped one, but its bend is", () => {
    // The hat again, folded to 170°: its last flat is over the clamped run, 4.4 off it. The bend before it ends 31 from the
    // pivot and the clamped run starts at 37.
    const told = {
      movingChain: plainChain([10, 8, 10, 8, 30], [UP, DOWN, DOWN, UP]),
      clampedChain: plainChain([10, 1, 1, 1, 1], Array(4).fill({ ...UP, angleRad: 0.3 })),
      clampedTangentX: -37,
      sweepRad: (17 * Math.PI) / 18,
      overbendRad: (17 * Math.PI) / 18,
    };
    const [record] = between(told, 4, 0b1111, 0, 0);
    expect(record!.mm).toBeGreaterThan(37 - Math.hypot(31, 1));
    expect(record!.mm).toBeLessThan(10);
  });
});
