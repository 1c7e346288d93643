/**
 * The order search before made-up judges: the best of all orders, the count, the furthest, what is found where not all are ranked.
 * Source: every order listed one by one (madeUp.ts).
 */
import { describe, expect, it } from "vitest";
import { findOrder } from "../../src/order/findOrder.ts";
import { SearchStopped } from "../../src/order/judge.ts";
import { searchOrders } from "../../src/order/search.ts";
import { compareWorths, type Drawing, listOrders, madeUpJudge, worthOf } from "./madeUp.ts";

/** Judges before which most orders are open, few are, or hardly any. */
const DRAWINGS: readonly Drawing[] = [90, 30, 12].flatMap((open, i) =>
  Array.from({ length: 60 }, (_, at) => ({
    seed: 1000 * i + at,
    bends: open > 80 ? 3 : 4,
    open,
    granted: at % 3 === 0 ? 100 : 80,
    wishes: at % 3,
    costGrain: at % 2 === 0 ? 1 : 4,
  })),
);

describe("searchOrders before made-up judges", () => {
  it("finds the best order and the count, or the furthest order", () => {
    const kinds = { order: 0, none: 0, unknown: 0 };
    for (const drawing of DRAWINGS) {
      const judge = madeUpJudge(drawing);
      const [found, listed] = [searchOrders(judge, 12), listOrders(judge)];
      const said = JSON.stringify({ drawing, found: found.order, listed });
      kinds[found.kind]++;
      expect(found.orders, said).toBe(BigInt(listed.orders));
      if (listed.best) {
        expect(found.kind, said).toBe("order");
        expect(compareWorths(worthOf(judge, found.order), listed.best), said).toBe(0);
        continue;
      }
      expect(found.kind, said).toBe("none");
      const made = found.order.slice(0, -1);
      const set = made.reduce((sum, { makes }) => sum | makes, 0);
      expect(set.toString(2).replaceAll("0", "").length, said).toBe(listed.most);
      expect(compareWorths(worthOf(judge, made), listed.bestOfMost), said).toBe(0);
      expect(judge.wanted(set, found.order.at(-1)!.stroke), said).toBe(listed.wanted);
    }
    expect(Math.min(kinds.order, kinds.none)).toBeGreaterThan(30);
  });

  it("of more bends than are ranked finds an order, with what is wished if any has that, or that there is none", () => {
    const kinds = { order: 0, none: 0, unknown: 0 };
    for (const drawing of DRAWINGS) {
      const judge = madeUpJudge(drawing);
      const [found, listed] = [searchOrders(judge, 0), listOrders(judge)];
      const said = JSON.stringify({ drawing, found: found.order, listed });
      kinds[found.kind]++;
      expect(found.orders, said).toBeNull();
      expect(found.kind, said).toBe(listed.best ? "order" : "none");
      const made = found.kind === "order" ? found.order : found.order.slice(0, -1);
      const set = made.reduce((sum, { makes }) => sum | makes, 0);
      expect(set.toString(2).replaceAll("0", "").length, said).toBe(listed.most);
      if (!listed.best) continue;
      const wished = 2 ** judge.wishes - 1;
      if (listed.best.wishes === wished) expect(worthOf(judge, found.order).wishes, said).toBe(wished);
    }
    expect(Math.min(kinds.order, kinds.none)).toBeGreaterThan(30);
  });

  it("counts 15!·2^15 orders exactly where every bend can be made at any time, which is over 2^53", () => {
    const strokes = Array.from({ length: 30 }, (_, stroke) => 1 << (stroke >> 1));
    const held = strokes.map((makes, stroke) => [{ stroke, makes, hold: 0, cost: 0 }]);
    const judge = {
      ...madeUpJudge({ seed: 1, bends: 15, open: 0, granted: 0, wishes: 0, costGrain: 1 }),
      strokes,
      held: (_: number, stroke: number) => held[stroke]!,
    };
    const factorial = strokes.reduce((all, _, i) => (i < 15 ? all * BigInt(i + 1) : all), 1n);
    expect(searchOrders(judge, 15).orders).toBe(factorial << 15n);
  });

  it("is told how far it is and stopped by its watcher, whether orders are ranked or not", () => {
    const judge = madeUpJudge({ seed: 1, bends: 8, open: 90, granted: 90, wishes: 1, costGrain: 1 });
    for (const ranked of [12, 0]) {
      const told: number[] = [];
      const watch = { progress: (fraction: number) => void told.push(fraction), stopped: () => false };
      expect(searchOrders(judge, ranked, watch)).toEqual(searchOrders(judge, ranked));
      expect(told.every((fraction, i) => fraction >= (told[i - 1] ?? 0) && fraction <= 1)).toBe(true);
    }
    const stop = { progress: () => {}, stopped: () => true };
    expect(() => searchOrders(judge, 12, stop)).toThrow(SearchStopped);
  });
});

describe("findOrder before made-up judges", () => {
  it("says none only where there is none, and unknown where it may not judge enough", () => {
    let unknown = 0;
    for (const drawing of DRAWINGS) {
      const judge = madeUpJudge(drawing);
      const cut = findOrder(judge, { mostJudged: 3 });
      if (cut.kind === "unknown") unknown++;
      else expect(cut.kind).toBe(listOrders(judge).best ? "order" : "none");
    }
    expect(unknown).toBeGreaterThan(30);
  });

  it("takes an order that is given, where it can be made", () => {
    const judge = madeUpJudge({ seed: 3, bends: 6, open: 80, granted: 90, wishes: 0, costGrain: 1 });
    const found = findOrder(judge);
    if (found.kind !== "order") throw new Error("no order");
    const { sets } = found;
    const hint = sets.slice(1).map((set, i) => set ^ sets[i]!);
    const again = findOrder(judge, { hint });
    expect(again).toMatchObject({ kind: "order", sets });
    expect(again.judged).toBeLessThanOrEqual(judge.strokes.length * hint.length);
  });
});
