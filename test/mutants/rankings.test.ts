/**
 * Parts with many orders, of which the best wants finding: count, rank and clearance as plain enumeration found them; half of
 * each group of answers must turn on the ranking. Source: test/reference/enumerate.ts, recorded in rankings.json.
 */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { judgeStep } from "../../src/contact/step.ts";
import { searchOrders } from "../../src/sequence/search.ts";
import { jobOf } from "../cases/answers.ts";
import type { SearchTruth } from "./truths.ts";

const CLEARANCE_MM = 0.005;

const rankings = (
  JSON.parse(readFileSync(new URL("rankings.json", import.meta.url), "utf8")) as {
    readonly searches: readonly SearchTruth[];
  }
).searches;

it("has orders of every verdict, and least clearances to tell them apart", () => {
  const count = (what: (truth: SearchTruth) => boolean) => rankings.filter(what).length;
  expect(count(({ rank }) => rank?.verdict === "tight")).toBeGreaterThan(15);
  expect(count(({ rank }) => rank?.verdict === "clear" && rank.clearance !== null)).toBeGreaterThan(15);
  expect(count(({ rank }) => rank === null)).toBeGreaterThan(5);
});

describe.each(rankings)("a recorded part", ({ file, viableOrders, rank, furthest }) => {
  it("has the order that plain enumeration ranks first", () => {
    const { part, brake, marginMm } = jobOf(file);
    const { order, viable, viableOrders: count } = searchOrders(part, brake, marginMm);
    expect(count).toBe(BigInt(viableOrders));
    expect(viable).toBe(viableOrders > 0);
    expect(order.length).toBe(Math.min(part.bends.length, furthest + 1));
    if (rank === null) return;
    let [done, changes, least] = [0, 0, Infinity];
    order.forEach(({ bend, clamped }, i) => {
      const { clearanceMm } = judgeStep(part, brake, done, bend, clamped, marginMm);
      least = Math.min(least, clearanceMm ?? Infinity);
      done |= 1 << bend;
      const before = order[i - 1];
      if (!before) return;
      changes += Number(before.clamped !== clamped);
      changes += Number(part.bends[before.bend]!.turn !== part.bends[bend]!.turn);
    });
    expect(changes).toBe(rank.changes);
    expect(least < marginMm ? "tight" : "clear").toBe(rank.verdict);
    if (rank.clearance === null) expect(least).toBe(Infinity);
    else expect(Math.abs(least - rank.clearance)).toBeLessThan(CLEARANCE_MM);
  });
});
