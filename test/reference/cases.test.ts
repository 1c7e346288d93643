/**
 * The independent reference over every case of test/cases: each figure of the expected answers.
 * Source: the expected answers were made by an independent program for the same model; this one shares no line with it.
 */
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { describe, expect, it } from "vitest";
import { Checks, enumerate, followOrder, rankOf } from "./enumerate.ts";
import type { End, PlainJob } from "./plainJob.ts";

const casesDir = fileURLToPath(new URL("../cases/", import.meta.url));

interface ExpectedBend {
  bend: number;
  clamped: End;
  markedFaceUp: boolean;
  reached: number;
  relaxesTo: number;
  verdict: string;
  clearance: number | null;
  contact: { angle: number; member: string } | null;
  load: string;
  unload: string;
  setback: number;
}

interface Expected {
  verdict: string;
  viableOrders: number;
  rank: { verdict: string; changes: number; swung: number; clearance: number | null };
  furthest: number;
  order: ExpectedBend[];
}

function read<T>(name: string): T {
  return JSON.parse(readFileSync(casesDir + name, "utf8")) as T;
}

const names = readdirSync(casesDir)
  .filter((name) => name.endsWith(".expected.json"))
  .map((name) => name.replace(".expected.json", ""));

/** The same part seen from its other end. */
function turnedRound(job: PlainJob): PlainJob {
  const { part } = job;
  return { ...job, part: { ...part, flats: part.flats.toReversed(), bends: part.bends.toReversed() } };
}

it("finds cases to run", () => {
  expect(names.length).toBeGreaterThanOrEqual(12);
});

describe.each(names)("case %s", (name) => {
  const job = read<PlainJob>(`${name}.json`);
  const expected = read<Expected>(`${name}.expected.json`);
  const checks = new Checks(job);
  const search = enumerate(job, checks);
  const steps = expected.order.map(({ bend, clamped }) => ({ bend: bend - 1, end: clamped }));
  const made = followOrder(job, steps, checks);

  it("counts the viable orders and how far the others get", () => {
    expect(search.viableOrders).toBe(expected.viableOrders);
    expect(search.furthest).toBe(expected.furthest);
    if (job.order === undefined) expect(search.verdict).toBe(expected.verdict);
  });

  it("ranks the order shown, and no order better", () => {
    const rank = rankOf(job, steps, made);
    expect(rank.verdict).toBe(expected.rank.verdict);
    expect(rank.verdict).toBe(expected.verdict);
    expect(rank.changes).toBe(expected.rank.changes);
    expect(Math.abs(rank.swung - expected.rank.swung)).toBeLessThan(0.015);
    expect(rank.clearance === null).toBe(expected.rank.clearance === null);
    expect(Math.abs((rank.clearance ?? 0) - (expected.rank.clearance ?? 0))).toBeLessThan(0.01);
    if (job.order !== undefined || search.rank === null) return;
    expect(search.rank.changes).toBe(expected.rank.changes);
    expect(Math.abs(search.rank.swung - expected.rank.swung)).toBeLessThan(0.015);
    expect(Math.abs((search.rank.clearance ?? 0) - (expected.rank.clearance ?? 0))).toBeLessThan(0.01);
  });

  it.each(expected.order.map((bend, i) => [bend.bend, bend, i] as const))(
    "answers for bend %i",
    (_, bend, i) => {
      const check = made[i]!;
      expect(check.verdict).toBe(bend.verdict);
      expect([check.load, check.unload]).toEqual([bend.load, bend.unload]);
      expect(check.markedFaceUp).toBe(bend.markedFaceUp);
      expect(check.noseSetbackMm).toBeCloseTo(bend.setback, 5);
      expect(Math.abs(check.reachedDeg - bend.reached)).toBeLessThan(0.02);
      expect(Math.abs(check.relaxesToDeg - bend.relaxesTo)).toBeLessThan(0.02);
      expect(check.contact === null).toBe(bend.contact === null);
      if (bend.contact !== null) {
        expect(Math.abs(check.contact!.angleDeg - bend.contact.angle)).toBeLessThan(0.02);
        expect(check.contact!.members).toContain(bend.contact.member);
      }
      expect(check.clearanceMm === null).toBe(bend.clearance === null);
      expect(Math.abs((check.clearanceMm ?? 0) - (bend.clearance ?? 0))).toBeLessThan(0.005);
      if (check.clearance === null) return;
      const [[ax, ay], [bx, by]] = check.clearance.points;
      expect(Math.hypot(ax - bx, ay - by)).toBeCloseTo(check.clearanceMm!, 9);
    },
  );

  it("answers the same for the part seen from its other end", () => {
    const other = enumerate(turnedRound(job));
    expect([other.verdict, other.viableOrders, other.furthest]).toEqual([
      search.verdict,
      search.viableOrders,
      search.furthest,
    ]);
    expect(other.rank?.changes).toBe(search.rank?.changes);
    expect(Math.abs((other.rank?.clearance ?? 0) - (search.rank?.clearance ?? 0))).toBeLessThan(0.002);
  });
});
