/**
 * The part against itself, put together from pairs of elements: beside sides and checks that say what they are told to and count
 * what they are asked. Source: any pair meets or the least of all pairs, listed; sectors and distances from the pivot on paper.
 */
import { describe, expect, it } from "vitest";
import type { ClearanceChecks, ClearanceRecord } from "../../src/contact/clearance.ts";
import type { ContactRecord, SideChecks } from "../../src/contact/sideChecks.ts";
import { SelfTable } from "../../src/sequence/selfTable.ts";
import { formedOn, jointsOf, pathOver } from "../../src/sequence/sidePath.ts";
import type { SideTable } from "../../src/sequence/sideTable.ts";

const DEG = Math.PI / 180;
const SWEEP_RAD = 90 * DEG;
const SLIDE_MM = 2;

interface Reach {
  readonly angle: number;
  readonly near?: number;
  readonly rise?: number;
  readonly lastNear?: number;
  readonly lastFar?: number;
  readonly lastAngle?: number;
  /** Direction in which the other side's run is seen so far out. */
  readonly runRises?: (nearMm: number) => number;
}

/** A side that reaches so by its first k joints. */
function side(joints: number, of: (k: number, formed: number) => Reach) {
  const on = (path: number) => of(jointsOf(path), formedOn(path));
  const reach = {
    lastNear: 0,
    lastFar: Infinity,
    lastAngle: 0,
    angle: (path: number) => on(path).angle,
    near: (path: number) => on(path).near ?? 0,
    rise: (path: number) => on(path).rise ?? 0,
    runRises: (nearMm: number) => of(0, 0).runRises?.(nearMm) ?? 0,
  };
  return {
    joints,
    reach,
    readLast(path: number) {
      const { angle, lastNear = 0, lastFar = Infinity, lastAngle = angle } = on(path);
      Object.assign(reach, { lastNear, lastFar, lastAngle });
    },
  };
}

type Pair = readonly [m: number, formedMoving: number, c: number, formedClamped: number];

/** A table over two sides; `mm` says how far elements m and c keep apart, 0 where they meet. */
function tableOf(
  moving: ReturnType<typeof side>,
  clamped: ReturnType<typeof side>,
  mm: (...pair: Pair) => number,
) {
  const asked: string[] = [];
  const checks = {
    seat: { sweepRad: SWEEP_RAD },
    pieces: { turning: { maxSlide: SLIDE_MM } },
    withSelf(...[m, fm, c, fc, record]: [...Pair, ContactRecord]) {
      asked.push(`${[m, fm, c, fc]}`);
      if (mm(m, fm, c, fc) === 0) record.phiRad = Math.min(record.phiRad, 1);
    },
  };
  const measure = {
    betweenElements(...[m, fm, c, fc, gap]: [...Pair, ClearanceRecord]) {
      asked.push(`${[m, fm, c, fc]}`);
      gap.mm = Math.min(gap.mm, mm(m, fm, c, fc));
    },
  };
  const as = <T>(stub: unknown) => stub as T;
  const table = new SelfTable(
    as<SideTable>(moving),
    as<SideTable>(clamped),
    as<SideChecks>(checks),
    as<ClearanceChecks>(measure),
  );
  return { table, asked };
}

/** Sides that may reach anywhere: only a look at the elements tells. */
const anywhere = (joints: number) => side(joints, () => ({ angle: joints === 3 ? Math.PI : 0 }));
/** Two sides of three and of two joints, decided by so many of them. */
const sidesOf = (formedMoving: number, formedClamped: number, byMoving: number, byClamped: number) => ({
  moving: pathOver(3, formedMoving),
  clamped: pathOver(2, formedClamped),
  decideMoving: pathOver(byMoving, formedMoving),
  decideClamped: pathOver(byClamped, formedClamped),
});
const all = (formedMoving: number, formedClamped: number) => sidesOf(formedMoving, formedClamped, 3, 2);

/** All sets of three and of two joints, in a mixed order. */
const SETS = Array.from({ length: 32 }, (_, i) => (13 * i + 5) % 32).map((i) => [i >> 2, i & 3] as const);

/** Of every pair of beginnings a figure, the same in every run. */
const figure = ([m, fm, c, fc]: Pair, seed: number) =>
  ((m * 7 + fm * 31 + c * 13 + fc * 57 + seed * 101) * 2654435761) % 97;

function pairsOf(fm: number, fc: number): Pair[] {
  return [0, 1, 2, 3].flatMap((m) =>
    [0, 1, 2].map((c): Pair => [m, fm & ((1 << m) - 1), c, fc & ((1 << c) - 1)]),
  );
}

describe.each([1, 2, 3, 4, 5, 6])("two sides whose elements meet as they come, %i", (seed) => {
  const meet = (...pair: Pair) => (figure(pair, seed) < 6 ? 0 : 5);

  it("meet where any pair of elements does, each looked at once", () => {
    const { table, asked } = tableOf(anywhere(3), anywhere(2), meet);
    for (const [fm, fc] of SETS) {
      const any = (fm !== 0 || fc !== 0) && pairsOf(fm, fc).some((pair) => meet(...pair) === 0);
      expect(table.meets(all(fm, fc)), `${fm} ${fc}`).toBe(any);
    }
    expect(new Set(asked).size).toBe(asked.length);
  });

  it("keep the least distance of any pair, each measured once", () => {
    const apart = (...pair: Pair) => figure(pair, seed) / 4;
    const { table, asked } = tableOf(anywhere(3), anywhere(2), apart);
    for (const [fm, fc] of SETS) {
      const least = Math.min(...pairsOf(fm, fc).map((pair) => apart(...pair)));
      const found = table.distance(all(fm, fc), 20, 20);
      if (least < 20) expect(found, `${fm} ${fc}`).toBe(least);
      else expect(found).toBe(Number.POSITIVE_INFINITY);
    }
    expect(new Set(asked).size).toBe(asked.length);
    const before = asked.length;
    for (const [fm, fc] of SETS) table.distance(all(fm, fc), 20, 20);
    expect(asked.length).toBe(before);
  });
});

describe("a distance", () => {
  it("is measured anew where it is asked farther than before, and not where it is asked less far", () => {
    const { table, asked } = tableOf(anywhere(3), anywhere(2), () => 7);
    expect(table.distance(all(1, 1), 5, 5)).toBe(Number.POSITIVE_INFINITY);
    const before = asked.length;
    expect(table.distance(all(1, 1), 4, 4)).toBe(Number.POSITIVE_INFINITY);
    expect(asked.length).toBe(before);
    expect(table.distance(all(1, 1), 9, 9)).toBe(7);
    expect(table.distance(all(1, 1), 9, 9)).toBe(7);
  });

  it("is nothing where a pair meets, however often it is asked", () => {
    const { table } = tableOf(anywhere(3), anywhere(2), (m) => (m === 2 ? 0 : 4));
    for (let time = 0; time < 2; time++) expect(table.distance(all(7, 3), 9, 9)).toBe(0);
  });
});

/** Asks one pair of sides, told by their sectors, whether they meet and how far apart they are. */
function seen(moving: Reach, clamped: Reach, { upTo = 100, enough = 100 } = {}) {
  const meet = tableOf(
    side(3, () => moving),
    side(2, () => clamped),
    () => 0,
  );
  const meets = meet.table.meets(all(7, 3));
  const far = tableOf(
    side(3, () => moving),
    side(2, () => clamped),
    () => 0,
  );
  far.table.distance(all(7, 3), upTo, enough);
  return { meets, looks: meet.asked.length, measures: far.asked.length };
}

describe("sides seen from the pivot", () => {
  it.each([
    // The sweep takes 90° of half a turn: 40° and 130° leave nothing, 39° and 131° two degrees.
    [39, 131, 0, 0, false],
    [40, 129, 0, 0, true],
    [41, 131.5, 0, 0, false],
    [0, 90, 0, 0, true],
    [42, 131, 0, 0, true],
    // The other's run stands higher than what reaches on: 50° up from the leaf, with the clamped side at 139° and 141°.
    [0, 139, 50, 0, true],
    [0, 141, 50, 0, false],
    // The run on the bed rises 60°, so that the moving side may reach 30° less the sweep.
    [29, 180, 0, 60, false],
    [31, 180, 0, 60, true],
  ])(
    "%i° on the leaf and %i° on the bed, runs that rise %i° and %i°: looked at %s",
    (m, c, run, other, looked) => {
      // A run is seen as far up as the side that it may meet says.
      const found = seen({ angle: m * DEG, rise: other * DEG }, { angle: c * DEG, rise: run * DEG });
      expect(found.meets).toBe(looked);
      expect(found.looks > 0).toBe(looked);
    },
  );

  it.each([
    // 30° apart, 20 and 30 mm from the pivot of which 2 mm may slide: 18 mm times the sine.
    [30, 20, 30, 9, 0],
    [30, 20, 30, 9.01, 1],
    [30, 30, 20, 9, 0],
    [30, 30, 20, 9.01, 1],
    // Past a right angle the nearer point itself is the nearest.
    [90, 20, 30, 18, 0],
    [90, 20, 30, 18.01, 1],
  ])(
    "%i° apart and %i and %i mm out are measured for %f mm or not",
    (apart, near, other, enough, measured) => {
      const moving = { angle: 0, near };
      const clamped = { angle: 90 * DEG + (apart + 1e-9) * DEG, near: other };
      const { measures } = seen(moving, clamped, { upTo: 100, enough: enough - 1e-6 });
      expect(Math.min(1, measures)).toBe(measured);
    },
  );

  it("are looked at no farther out than decides", () => {
    const angles = [0, 0, 170 * DEG, 170 * DEG];
    const { table, asked } = tableOf(
      side(3, (k) => ({ angle: angles[k]! })),
      side(2, (k) => ({ angle: (k < 2 ? 180 : 10) * DEG })),
      () => 0,
    );
    expect(table.meets(sidesOf(7, 3, 1, 1))).toBe(false);
    expect(asked).toEqual([]);
    expect(table.meets(sidesOf(7, 3, 2, 1))).toBe(true);
  });
});

/** One moving and one clamped element, neither side parted from the other by its sector. */
function lastOnes(moving: Partial<Reach>, clamped: Partial<Reach>, upTo: number) {
  return seen({ angle: Math.PI, ...moving }, { angle: 0, ...clamped }, { upTo, enough: upTo });
}

describe("two elements seen from the pivot", () => {
  const round = { lastAngle: 100 * DEG };

  it.each([
    // One wholly beyond the other: 50 mm less 2 mm of slide less 40 mm.
    [{ lastNear: 50 }, { lastFar: 40 }, 8],
    [{ lastFar: 40 }, { lastNear: 50 }, 8],
    [{ lastNear: 60, lastFar: 90 }, { lastNear: 10, lastFar: 40 }, 18],
    // 30° apart once the sweep is taken off, the farther one 20 mm out; of the moving one 2 mm may slide.
    [{ lastNear: 22, lastAngle: 10 * DEG }, { lastNear: 5, lastFar: 30, lastAngle: 130 * DEG }, 10],
    [{ lastNear: 5, lastFar: 30, lastAngle: 10 * DEG }, { lastNear: 20, lastAngle: 130 * DEG }, 10],
    [{ lastNear: 22, lastAngle: 0 }, { lastNear: 5, lastFar: 30, lastAngle: 180 * DEG }, 20],
    // In the run: as high as it is seen from where the other one is.
    [{ lastNear: 20, lastAngle: -1 }, { lastNear: 20, lastAngle: 130 * DEG, runRises: () => 10 * DEG }, 10],
    [{ lastNear: 22, lastAngle: 10 * DEG, runRises: () => 50 * DEG }, { lastAngle: -1 }, 10],
  ])("%# keep a distance known without a look", (moving, clamped, keep) => {
    const less = lastOnes(moving, clamped, keep - 1e-6);
    expect(less).toMatchObject({ meets: false, looks: 0, measures: 0 });
    expect(lastOnes(moving, clamped, keep + 1e-6).measures).toBeGreaterThan(0);
  });

  it.each([
    [
      { lastNear: 41, ...round },
      { lastFar: 40, ...round },
    ],
    [
      { lastFar: 40, ...round },
      { lastNear: 41, ...round },
    ],
    [
      { lastNear: 50, lastAngle: 10 * DEG },
      { lastNear: 20, lastAngle: 99 * DEG },
    ],
    [
      { lastNear: 50, lastAngle: -1 },
      { lastNear: 20, lastAngle: 99 * DEG, runRises: () => 10 * DEG },
    ],
    [{ lastNear: 50, lastAngle: 10 * DEG, runRises: () => 81 * DEG }, { lastAngle: -1 }],
  ])("%# are looked at where nothing is known", (moving, clamped) => {
    expect(lastOnes(moving, clamped, 1e-9)).toMatchObject({ meets: true });
    expect(lastOnes(moving, clamped, 1e-9).measures).toBeGreaterThan(0);
  });

  it("ask how high a run is seen as far out as the other element is", () => {
    const outMm: number[] = [];
    const runRises = (nearMm: number) => {
      outMm.push(nearMm);
      return 10 * DEG;
    };
    lastOnes({ lastNear: 20, lastAngle: -1 }, { lastNear: 33, lastAngle: 130 * DEG, runRises }, 1);
    expect(new Set(outMm)).toEqual(new Set([33]));
    outMm.length = 0;
    lastOnes({ lastNear: 44, lastAngle: 10 * DEG, runRises }, { lastAngle: -1 }, 1);
    expect(new Set(outMm)).toEqual(new Set([44]));
  });
});
