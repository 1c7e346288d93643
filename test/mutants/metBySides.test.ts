/**
 * What one element of a seated sheet meets: round posts in the way of its faces, lips on the leaf, the other side; with the
 * angle, the member, the part's feature and the point. Source: plane geometry, worked out beside each post.
 */
import { describe, expect, it } from "vitest";
import type { Brake } from "../../src/brake/brake.ts";
import { Machine } from "../../src/contact/machine.ts";
import { noContact, SideChecks } from "../../src/contact/sideChecks.ts";
import { END_OF_FLAT, FACE_OF_FLAT } from "../../src/contact/strip.ts";
import type { Seat } from "../../src/motion/seat.ts";
import type { Outline } from "../../src/plane/outline.ts";
import { outlineOf } from "../contact/shapes.ts";
import { chainWith, type Joint, seatOnPaper, startAndZone, T } from "./seatOnPaper.ts";

const INSET = 0.01;
const UP: Joint = { turn: 1, angleDeg: 90 };
const DOWN: Joint = { turn: -1, angleDeg: 90 };

const block = (x0: number, y0: number, x1: number, y1: number) =>
  outlineOf([x0, y0], [x1, y0], [x1, y1], [x0, y1]);

/** A round post of radius 1. */
const postAt = (x: number, y: number) =>
  outlineOf([x - 1, y - 1, 1], [x + 1, y - 1, 1], [x + 1, y + 1, 1], [x - 1, y + 1, 1]);

interface Bodies {
  readonly clamp?: Outline;
  readonly bed?: Outline;
  readonly leaf?: Outline;
  readonly frame?: Outline;
}

/** Bodies where they are wanted, all others out of reach. Nose coordinates undone: setback 1, sheet 1 thick. */
function checksOf(seat: Seat, { clamp, bed, leaf, frame }: Bodies): SideChecks {
  const away = block(900, 900, 901, 901);
  const noseAt = clamp ?? away;
  const nose = {
    edges: noseAt.edges.map((edge) => {
      const back = ({ x, y }: { x: number; y: number }) => ({ x: x + seat.noseSetbackMm, y: y - T });
      const moved = { ...edge, from: back(edge.from), to: back(edge.to) };
      return edge.kind === "arc" ? { ...moved, center: back(edge.center) } : moved;
    }),
  } as Outline;
  const brake = {
    clamp: { kind: "profile", noseRadiusMm: 1, outlines: [nose] },
    bed: bed ?? away,
    leaf: { outline: leaf ?? away, swingDeg: 150, pivot: seat.pivot },
    frame: [frame ?? away],
  } as unknown as Brake;
  return new SideChecks(seat, new Machine(brake, T));
}

/** Counts the pairs of features looked into: each is named in the meeting first. */
function watched(checks: SideChecks): () => string[] {
  let pairs: string[] = [];
  let kind = "";
  Object.defineProperty(checks.meeting, "kind", {
    get: () => kind,
    set: (next: string) => {
      kind = next;
      pairs.push(next);
    },
  });
  return () => {
    const seen = pairs;
    pairs = [];
    return seen;
  };
}

const face = (flat: number) => (flat << 2) | FACE_OF_FLAT;
const end = (flat: number) => (flat << 2) | END_OF_FLAT;

describe("a post over the moving flat", () => {
  // The drawn-in upper face stands T − 0.01 off the pivot: −x·sin φ + y·cos φ = T − 0.01 + 1, at (10, 10).
  const phi = Math.acos((T - INSET + 1) / Math.hypot(10, 10)) - Math.PI / 4;
  const point = { x: 10 + Math.sin(phi), y: 10 - Math.cos(phi) };
  const seat = seatOnPaper();

  it.each(["clamp", "bed", "frame"] as const)("is met as the %s, by its face", (member) => {
    const record = noContact();
    checksOf(seat, { [member]: postAt(10, 10) }).withBrake("moving", 0, 0, record);
    expect(record.phiRad).toBeCloseTo(phi, 9);
    expect([record.member, record.tag]).toEqual([member, face(10)]);
    expect(record.x).toBeCloseTo(point.x, 8);
    expect(record.y).toBeCloseTo(point.y, 8);
  });

  it("is no news where something was met before", () => {
    const checks = checksOf(seat, { frame: postAt(10, 10) });
    const record = { phiRad: phi - 1e-6, member: "bed" as const, tag: 77, x: 1, y: 2 };
    checks.withBrake("moving", 0, 0, record);
    expect(record).toEqual({ phiRad: phi - 1e-6, member: "bed", tag: 77, x: 1, y: 2 });
    const later = { ...record, phiRad: phi + 1e-6 };
    checks.withBrake("moving", 0, 0, later);
    expect(later.member).toBe("frame");
  });
});

it("meets the clamped flange with a post of the leaf, and a begun flat with one that rises from below", () => {
  // Flange up from (−12, 2): its inner face at x = −13, drawn in to −13.01; the post, 1 round, comes over from (8, 20).
  const clamped = chainWith([10, 30], [UP], 30, 40);
  const checks = checksOf(seatOnPaper({ clamped }), { leaf: postAt(8, 20) });
  const record = noContact();
  checks.withBrake("clamped", 1, 1, record);
  const [d, at] = [Math.hypot(8, 20), Math.atan2(20, 8)];
  const phi = Math.acos((-13 - INSET + 1) / d) - at;
  expect(record.phiRad).toBeCloseTo(phi, 9);
  expect([record.member, record.tag]).toEqual(["leaf", face(31)]);
  expect(record.x).toBeCloseTo(-13 - INSET, 8);
  expect(record.y).toBeCloseTo(d * Math.sin(at + phi), 8);

  // The begun flat's lower face, drawn in, leads up at 40°; the post starts 1 over (10, 2).
  const begun = checksOf(seatOnPaper({ fromDeg: 40 }), { leaf: postAt(10, 3) });
  const met = noContact();
  begun.withBrake("moving", 0, 0, met);
  const under = (40 * Math.PI) / 180 - Math.atan2(3, 10) - Math.asin((1 - INSET) / Math.hypot(10, 3));
  expect(met.phiRad).toBeCloseTo(under, 9);
  expect([met.member, met.tag]).toEqual(["leaf", face(10)]);
  // Still under the bend left at 40°, the leaf bears on it from there: what stands over the flat is met as ever.
  const over = checksOf(seatOnPaper({ fromDeg: 20 }), { frame: postAt(10, 10) });
  const late = noContact();
  over.withBrake("moving", 0, 0, late);
  expect(late.phiRad).toBeCloseTo(Math.acos((T - INSET + 1) / Math.hypot(10, 10)) - Math.PI / 4, 9);
});

it("slides the moving flat's start, and it alone, onto a lip of the leaf, and tells the point with the leaf turned", () => {
  // Pivot 1 over the bed: the start at 1.356 slides in by up to 0.43; a lip of 1.1 stands half into the thickness.
  const seat = seatOnPaper({ pivot: [0, 1], moving: chainWith([20, 10, 5], [UP, UP]) });
  const lip = outlineOf([0.2, -4], [1.1, -4], [1.1, -0.5], [0.2, -0.5]);
  let [lo, hi] = [0, 1.2];
  for (let i = 0; i < 60; i++) {
    const middle = (lo + hi) / 2;
    if (startAndZone(seat, middle)[0] > 1.1) lo = middle;
    else hi = middle;
  }
  // From the section frame to the pivot: 1 down.
  const checks = checksOf(seat, {
    leaf: outlineOf(...lip.edges.map(({ from }) => [from.x, from.y + 1] as const)),
  });
  const record = noContact();
  checks.withBrake("moving", 0, 0, record);
  expect(record.phiRad).toBeCloseTo(lo, 8);
  expect([record.member, record.tag]).toEqual(["leaf", face(10)]);
  const along = record.x * Math.cos(lo) + record.y * Math.sin(lo);
  const over = record.y * Math.cos(lo) - record.x * Math.sin(lo);
  expect(along).toBeCloseTo(1.1, 8);
  // Somewhere on the lip's side that the start covers.
  expect(over).toBeGreaterThan(-1);
  expect(over).toBeLessThan(-0.5 + 1e-9);
  const next = noContact();
  checks.withBrake("moving", 1, 0, next);
  expect(next).toEqual(noContact());
});

describe("what overlaps a piece where it lies at rest", () => {
  it("is met at 0, named by the piece's last edge, and nothing is looked into after", () => {
    for (const [member, side, k, tag] of [
      ["frame", "moving", 0, face(10)],
      ["leaf", "moving", 0, face(10)],
      ["bed", "moving", 1, end(11)],
      ["clamp", "clamped", 1, end(31)],
      ["leaf", "clamped", 1, end(31)],
    ] as const) {
      // The joints flat: pieces from 0.36 to 20.4 and to 32.4 on the leaf, from −24 to −36 in the throat.
      const x = side === "clamped" ? -30 : k === 0 ? 10 : 25;
      const checks = checksOf(seatOnPaper(), { [member]: block(x, 0.4, x + 2, 0.6) });
      const pairs = watched(checks);
      const record = noContact();
      checks.withBrake(side, k, 0, record);
      expect([record.phiRad, record.member, record.tag]).toEqual([0, member, tag]);
      expect(pairs()).toEqual([]);
      const before = { ...noContact(), phiRad: 0, tag: 77 };
      checks.withBrake(side, k, 0, before);
      expect(before.tag).toBe(77);
    }
  });

  it("leaves out what is bend zone, at rest and as the zone grows", () => {
    // θ = 135°: the moving flat starts 1.29 before the pivot, all of it bend zone at rest. The bar lies nearer to the pivot
    // than the sheet is thick, and the zone's end runs ahead of it.
    const checks = checksOf(seatOnPaper({ angleDeg: 135 }), { frame: block(-1.2, 0.3, -0.2, 0.6) });
    const record = noContact();
    checks.withBrake("moving", 0, 0, record);
    expect(record).toEqual(noContact());
  });

  it("is the part's other side, where the bend is made from the flat", () => {
    // Up at −13, back over at y 9 to 10 as far as 28; the moving flange stands from 6.4 to 7.4.
    const clamped = chainWith([10, 6, 40], [UP, UP], 30, 40);
    const moving = chainWith([5, 20], [UP]);
    for (const fromDeg of [0, 20]) {
      const checks = checksOf(seatOnPaper({ moving, clamped, fromDeg }), {});
      const record = noContact();
      checks.withSelf(1, 1, 2, 3, record);
      if (fromDeg > 0) {
        expect(record.phiRad).toBeGreaterThan(0);
        continue;
      }
      expect([record.phiRad, record.member, record.tag]).toEqual([0, "part", end(11)]);
      expect(Math.abs(record.x - 6.86)).toBeLessThan(0.51);
      expect(Math.abs(record.y - 9.5)).toBeLessThan(0.51);
      const before = { ...noContact(), phiRad: 0, tag: 77 };
      checks.withSelf(1, 1, 2, 3, before);
      expect([before.tag, before.member]).toEqual([77, "clamp"]);
    }
  });
});

it("meets the other side with the part of the flat that was bend zone at rest", () => {
  // θ = 170°: at φ = 2.9 the zone ends 16.5 out and what is left of the flat at rest starts 28.6 out. Between them, at `out`, its
  // upper face comes to P, the top of a flange that stands up from the throat, its inner face 1 + 1 before the tangent line.
  const seatAt = (clamped = chainWith([1, 1], [UP], 30, 40)) => seatOnPaper({ angleDeg: 170, clamped });
  const phi = 2.9;
  const [c, s] = [Math.cos(phi), Math.sin(phi)];
  const plain = seatAt();
  const x = plain.clampedTangentX - 2 - INSET;
  const out = (x + (T - INSET) * s) / c;
  const [start, zone] = startAndZone(plain, phi);
  expect(zone).toBeLessThan(out - 5);
  expect(start - plain.movingTangentX).toBeGreaterThan(out + 3);
  const y = out * s + (T - INSET) * c;
  const record = noContact();
  checksOf(seatAt(chainWith([1, y - 2], [UP], 30, 40)), {}).withSelf(0, 0, 1, 1, record);
  expect(record.phiRad).toBeCloseTo(phi, 8);
  expect([record.member, record.tag]).toEqual(["part", face(10)]);
  expect(Math.hypot(record.x - x, record.y - y)).toBeLessThan(1e-7);
});

describe("the leaf itself", () => {
  const leaf = block(0, -5, 30, 0);

  it.each([
    ["bed", 0.1, true],
    ["clamp", 0.1, true],
    ["frame", 0.1, false],
    ["bed", 0.005, false],
  ] as const)("dug into the %s by %d mm at rest is told: %s", (member, deep, told) => {
    const checks = checksOf(seatOnPaper(), { leaf, [member]: block(-9, -9, deep, -2) });
    const record = noContact();
    checks.leafWithBrake(record);
    if (!told) {
      expect(record.phiRad).toBeGreaterThan(0);
      return;
    }
    expect([record.phiRad, record.member, record.tag]).toEqual([0, member, -1]);
    expect(record.x).toBeLessThan(0.2);
    const before = { ...noContact(), phiRad: 0, tag: 77 };
    checks.leafWithBrake(before);
    expect(before.tag).toBe(77);
  });

  it("swings into a post, and is named", () => {
    // The post's middle is (10, 10), at 45°; the face is drawn 0.001 down, so one radius off is 0.999 over the pivot's line.
    const checks = checksOf(seatOnPaper(), { leaf, bed: postAt(10, 10) });
    const record = noContact();
    checks.leafWithBrake(record);
    expect(record.phiRad).toBeCloseTo(Math.PI / 4 - Math.asin((1 - 0.001) / Math.hypot(10, 10)), 9);
    expect([record.member, record.tag]).toEqual(["bed", -1]);
  });
});

describe("pieces are looked into only where they can meet:", () => {
  const low = block(0, -5, 40, 0);
  const high = block(0, -5, 40, 0.5);

  it.each([
    // Seen from the pivot the flange starts at atan2(32, −13): 112°.
    ["a flange past the sweep of a low leaf", low, 90, UP, false],
    ["a flange past the sweep of a leaf that stands up", high, 90, UP, true],
    ["a flange that the leaf comes to", low, 120, UP, true],
    ["a flange that hangs down", low, 90, DOWN, true],
  ] as const)("%s", (_, leaf, angleDeg, joint, looked) => {
    const clamped = chainWith([10, 30], [joint], 30, 40);
    const checks = checksOf(seatOnPaper({ clamped, angleDeg }), { leaf });
    const pairs = watched(checks);
    checks.withBrake("clamped", 1, 1, noContact());
    expect(pairs().length > 0).toBe(looked);
  });

  it.each([
    ["a body past the sweep", [-20, 10, -15, 15], UP, false],
    ["a body in the sweep", [2, 20, 6, 25], UP, true],
    ["a body under the leaf", [23.5, -12, 26, -8], UP, false],
    ["a body under the leaf, for a flange that hangs down", [23.5, -12, 26, -8], DOWN, true],
  ] as const)("%s", (_, [x0, y0, x1, y1], joint, looked) => {
    // The sweep of 60° ends before 110°, what the flange's box adds to it.
    const seat = seatOnPaper({ sweepDeg: 60, moving: chainWith([20, 10], [joint]) });
    const checks = checksOf(seat, { frame: block(x0, y0, x1, y1) });
    const pairs = watched(checks);
    checks.withBrake("moving", 1, 1, noContact());
    expect(pairs().length > 0).toBe(looked);
  });

  it("two flats joined through the bend never", () => {
    const checks = checksOf(seatOnPaper(), {});
    const pairs = watched(checks);
    const record = noContact();
    for (const m of [0, 1]) for (const c of [0, 1]) checks.withSelf(m, 0, c, 0, record);
    expect([pairs(), record]).toEqual([[], noContact()]);
    checks.withSelf(1, 0, 1, 1, record);
    expect(pairs().length).toBeGreaterThan(0);
  });

  it("the leaf for a piece where it lies, for what rides on it and for its start, not for the start that the zone cuts", () => {
    const checks = checksOf(seatOnPaper({ angleDeg: 135 }), {});
    expect(checks.pieces.startCut).toBeDefined();
    const { leaf } = checks.machine;
    const { features } = leaf;
    const asked: object[] = [];
    Object.defineProperty(leaf, "features", {
      get: () => {
        asked.push(features);
        return features;
      },
    });
    checks.withBrake("moving", 0, 0, noContact());
    expect(asked).toHaveLength(3);
  });
});

it("draws no corner where a piece only joins the next", () => {
  const three = (flat: number) => chainWith([20, 10, 5], [UP, UP], flat, flat + 10);
  const of = (fromDeg: number) => seatOnPaper({ fromDeg, moving: three(10), clamped: three(30) });
  const checks = checksOf(of(0), {});
  const counts = () => [checks.a, checks.b].map((F) => [F.segments, F.rounds, F.hollows]);
  checks.withBrake("clamped", 1, 0, noContact());
  expect(counts()[0]).toEqual([2, 0, 0]);
  checks.withBrake("clamped", 1, 1, noContact());
  expect(counts()[0]).toEqual([2, 1, 1]);
  checks.withBrake("moving", 1, 0, noContact());
  checks.withSelf(1, 0, 1, 1, noContact());
  expect(counts()).toEqual([
    [2, 0, 0],
    [2, 1, 1],
  ]);
  // Begun: the leaf's four corners and sides against two faces and a bend, once as it rises, once as it carries them.
  const begun = checksOf(of(30), { leaf: block(20, -5, 24, -1) });
  const pairs = watched(begun);
  begun.withBrake("moving", 1, 1, noContact());
  const seen = pairs();
  const most = { roundOnEdge: 4 * 2 + 4, edgeOnRound: 4 + 4 * 2 };
  for (const [kind, count] of Object.entries(most))
    expect(seen.filter((one) => one === kind).length, kind).toBeLessThanOrEqual(count);
});
