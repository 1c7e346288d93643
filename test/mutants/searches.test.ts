/**
 * The order search against plain enumeration of all orders, written down by the reference: verdict, rank, count, and how
 * far one gets where there is none. Source: test/reference/enumerate.ts.
 */
import { describe, expect, it } from "vitest";
import { searchOrders } from "../../src/sequence/search.ts";
import { answerOf, furthestOf, jobOf, rankOf } from "../cases/answers.ts";
import { TRUTHS } from "./truths.ts";

const CLEARANCE_MM = 0.005;

it("has jobs with an order and jobs without", () => {
  const viable = TRUTHS.searches.filter(({ rank }) => rank !== null).length;
  expect(Math.min(viable, TRUTHS.searches.length - viable)).toBeGreaterThan(5);
});

describe.each(TRUTHS.searches)("a recorded job", ({ file, viableOrders, rank, furthest }) => {
  it("has the count, rank and order that plain enumeration found", () => {
    const { part, brake, marginMm } = jobOf(file);
    const found = searchOrders(part, brake, marginMm);
    expect(found.viableOrders).toBe(BigInt(viableOrders));
    expect(found.viable).toBe(viableOrders > 0);
    expect(found.order.length).toBe(Math.min(part.bends.length, furthest + 1));
    const answer = answerOf(file);
    if (rank === null) {
      expect(furthestOf(answer)).toBe(furthest);
      return;
    }
    const mine = rankOf(answer);
    expect([mine.verdict, mine.changes]).toEqual([rank.verdict, rank.changes]);
    expect(Math.abs((mine.clearance ?? 0) - (rank.clearance ?? 0))).toBeLessThan(CLEARANCE_MM);
  });
});
