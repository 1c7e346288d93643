/**
 * Whole answers against plain enumeration of all orders, written down by the reference: count, rank, and how far one gets
 * where there is none. Half of the parts have many orders, so that the best wants finding.
 * Source: test/reference/enumerate.ts, recorded.
 */
import { describe, expect, it } from "vitest";
import { answerOf, furthestOf, rankOf } from "../cases/answers.ts";
import { RECORDED, type RecordedSearch } from "./recorded.ts";

const CLEARANCE_MM = 0.005;

it("has orders of every verdict, least clearances to tell them apart, and jobs without an order", () => {
  const count = (what: (truth: RecordedSearch) => boolean) => RECORDED.searches.filter(what).length;
  expect(count(({ rank }) => rank?.verdict === "tight")).toBeGreaterThan(15);
  expect(count(({ rank }) => rank?.verdict === "clear" && rank.clearance !== null)).toBeGreaterThan(15);
  expect(count(({ rank }) => rank === null)).toBeGreaterThan(10);
});

describe.each(RECORDED.searches)("a recorded job", ({ file, viableOrders, rank, furthest }) => {
  it("has the count, rank and order that plain enumeration found", () => {
    const answer = answerOf(file);
    expect(Number(answer.viableOrders)).toBe(viableOrders);
    expect(furthestOf(answer)).toBe(furthest);
    if (rank === null) {
      expect(answer.verdict).toBe("hits");
      return;
    }
    const mine = rankOf(answer);
    expect([mine.verdict, mine.changes]).toEqual([rank.verdict, rank.changes]);
    // The ranking takes it to 0.01 mm.
    expect(Math.abs(mine.swung - rank.swung)).toBeLessThan(0.006);
    if (rank.clearance === null) expect(mine.clearance).toBeNull();
    else expect(Math.abs(mine.clearance! - rank.clearance)).toBeLessThan(CLEARANCE_MM);
  });
});
