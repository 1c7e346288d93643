/**
 * What one element of a seated sheet meets: round posts in the way of its faces, lips on the leaf, the other side; with the
 * angle, the member, the part's feature and the point. Source: plane geometry, worked out beside each post.
 */
import { describe, expect, it } from "vitest";
import { noContact } from "../../src/contact/sideChecks.ts";
import { outlineOf } from "../contact/shapes.ts";
import { chainWith, seatOnPaper, startAndZone, T } from "./seatOnPaper.ts";
import { block, checksOf, end, face, fall, INSET, postAt, UP, watched } from "./sides.ts";

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

it("lifts the free end, as far out as it has slid, to a ceiling, and tells where", () => {
  const seat = seatOnPaper({ moving: chainWith([20], []) });
  const out = (phi: number) => startAndZone(seat, phi)[0] + 20;
  // The end's upper corner, its faces drawn in, comes up to y = 9.
  const phi = fall((at) => 9 - out(at) * Math.sin(at) - (T - INSET) * Math.cos(at), 0, 1);
  const record = noContact();
  checksOf(seat, { frame: block(-5, 9, 40, 12) }).withBrake("moving", 0, 0, record);
  expect(record.phiRad).toBeCloseTo(phi, 8);
  expect([record.member, record.tag]).toEqual(["frame", end(10)]);
  expect(record.x).toBeCloseTo(out(phi) * Math.cos(phi) - (T - INSET) * Math.sin(phi), 7);
  expect(record.y).toBeCloseTo(9, 7);
});

it("takes a begun flange up from where it was left", () => {
  // Its inner face, drawn in, stands 21.01 past the start; the post at (17, 13) comes over to it, 1 round.
  const seat = seatOnPaper({ fromDeg: 20 });
  const apart = (at: number) =>
    startAndZone(seat, at)[0] + 21 + INSET - (17 * Math.cos(at) + 13 * Math.sin(at)) - 1;
  expect(apart(seat.fromRad)).toBeGreaterThan(0);
  const phi = fall(apart, seat.fromRad, 0.65);
  const record = noContact();
  checksOf(seat, { frame: postAt(17, 13) }).withBrake("moving", 1, 1, record);
  expect(record.phiRad).toBeCloseTo(phi, 8);
  expect([record.member, record.tag]).toEqual(["frame", face(11)]);
});

it("runs the start that the zone has cut onto a tip that lies in the zone until then", () => {
  // r = 0.2, so the zone's end, 1.2·tan(φ/2) out, is slower than what stands 0.9 over the flat's lower face. At φ = 0.5 it is
  // at the tip of a needle that leads along the sheet.
  const [phi, high] = [0.5, 0.9];
  const seat = seatOnPaper({ angleDeg: 135, radius: 0.2 });
  const [start, zone] = startAndZone(seat, phi);
  expect(zone).toBeGreaterThan(start + 1);
  const along = (x: number, y: number): [number, number] => [
    x * Math.cos(phi) - y * Math.sin(phi),
    x * Math.sin(phi) + y * Math.cos(phi),
  ];
  const needle = outlineOf(along(zone, high), along(zone - 0.3, high + 0.02), along(zone - 0.3, high - 0.02));
  const record = noContact();
  checksOf(seat, { frame: needle }).withBrake("moving", 0, 0, record);
  expect(record.phiRad).toBeCloseTo(phi, 8);
  expect([record.member, record.tag]).toEqual(["frame", face(10)]);
  expect(Math.hypot(record.x - along(zone, high)[0], record.y - along(zone, high)[1])).toBeLessThan(1e-7);
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
    // In the throat a begun bend is like any other.
    const begun = noContact();
    checksOf(seatOnPaper({ fromDeg: 30 }), { frame: block(-30, 0.4, -28, 0.6) }).withBrake(
      "clamped",
      1,
      0,
      begun,
    );
    expect([begun.phiRad, begun.member]).toEqual([0, "frame"]);
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

it("meets the clamped flat's start with what has come down into the bend zone", () => {
  // Three bends up bring the last flange down over the bend: its outer face, drawn in, at x = −1.89 from y = 3 to 0.8, the
  // clamped flat's start at x = −2. Turned back by φ and less the slide, its upper corner comes to that face.
  const seat = seatOnPaper();
  const over = seat.movingTangentX + 2 - 2 + 1.9;
  const moving = chainWith([2, 1, over, 2.2], [UP, UP, UP]);
  const slide = (at: number) => startAndZone(seat, at)[0] - seat.movingTangentX;
  const high = T - INSET;
  const phi = fall((at) => -1.9 + INSET - (-2 * Math.cos(at) + high * Math.sin(at) - slide(at)), 0, 0.5);
  const record = noContact();
  checksOf(seatOnPaper({ moving }), {}).withSelf(3, 7, 0, 0, record);
  expect(record.phiRad).toBeCloseTo(phi, 8);
  expect([record.member, record.tag]).toEqual(["part", face(13)]);
  expect(Math.hypot(record.x + 2, record.y - high)).toBeLessThan(1e-7);
});
