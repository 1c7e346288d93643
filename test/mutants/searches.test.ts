/**
 * The order search against plain enumeration of all orders, written down by the reference: verdict, rank, count, and how
 * far one gets where there is none. Source: test/reference/enumerate.ts.
 */
import { expect, it } from "vitest";
import { searchOrders } from "../../src/sequence/search.ts";
import { answerOf, furthestOf, jobOf, rankOf } from "../cases/answers.ts";
import { TRUTHS } from "./truths.ts";

it("finds the count, rank and order that plain enumeration found", () => {
  let [viable, none] = [0, 0];
  for (const { file, viableOrders, rank, furthest } of TRUTHS.searches) {
    const { part, brake, marginMm } = jobOf(file);
    const found = searchOrders(part, brake, marginMm);
    const said = JSON.stringify(file);
    expect(found.viableOrders, said).toBe(BigInt(viableOrders));
    expect(found.viable, said).toBe(viableOrders > 0);
    expect(found.order.length, said).toBe(Math.min(part.bends.length, furthest + 1));
    const answer = answerOf(file);
    if (rank === null) {
      none++;
      expect(furthestOf(answer), said).toBe(furthest);
      continue;
    }
    viable++;
    const mine = rankOf(answer);
    expect([mine.verdict, mine.changes], said).toEqual([rank.verdict, rank.changes]);
    expect(Math.abs((mine.clearance ?? 0) - (rank.clearance ?? 0)), said).toBeLessThan(0.005);
  }
  expect(Math.min(viable, none)).toBeGreaterThan(5);
});
