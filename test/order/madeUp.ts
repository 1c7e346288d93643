/**
 * Made-up judges, which know nothing of sheet metal, and every order before them listed one by one: what the order search is held
 * to. What can be made, held, measured and is granted is drawn for each set of bends anew.
 */
import type { BendSet, Held, Judge } from "../../src/order/judge.ts";

/** How a judge is drawn: shares in per cent. */
export interface Drawing {
  readonly seed: number;
  readonly bends: number;
  /** Strokes that can be made. */
  readonly open: number;
  /** Wishes that are granted. */
  readonly granted: number;
  readonly wishes: number;
  readonly costGrain: number;
}

/** A judge; strokes make one bend each, either way round, and now and then two at once. */
export function madeUpJudge({ seed, bends, open, granted, wishes, costGrain }: Drawing): Judge<Held> {
  const draw = (...of: readonly number[]) => drawn(seed, of);
  const single = Array.from({ length: 2 * bends }, (_, stroke) => 1 << (stroke >> 1));
  const pairs = single.filter((_, i) => draw(1, i) < 15).map((makes, i) => makes | (1 << (i % bends)));
  const strokes = [...single, ...pairs];
  const heldAs = (stroke: number, hold: number): Held => ({
    stroke,
    makes: strokes[stroke]!,
    hold: 3 * (stroke % 4) + hold,
    cost: draw(2, stroke, hold) % 5,
  });
  return {
    bends,
    strokes,
    costGrain,
    wishes,
    held(set, stroke) {
      if (draw(3, set, stroke) >= open) return [];
      const holds = 1 + (draw(4, set, stroke) % 3);
      return Array.from({ length: holds }, (_, hold) => heldAs(stroke, hold));
    },
    between: (before, after) => (before.hold === after.hold ? 0 : 1 + (draw(5, before.hold, after.hold) % 4)),
    grants: (wish, set, by) => draw(6, wish, set, by.stroke, by.hold) < granted,
    clearanceMm: (set, by) => draw(7, set, by.stroke, by.hold) / 4,
    wanted: (set, stroke) => draw(8, set, stroke),
    blocked: (stroke) => heldAs(stroke, 0),
  };
}

/** A whole number from 0 to 99, always the same for the same figures. */
function drawn(seed: number, of: readonly number[]): number {
  let mixed = seed | 0;
  for (const one of of) {
    mixed = Math.imul(mixed ^ (one + 0x9e3779b9), 0x85ebca6b);
    mixed = Math.imul(mixed ^ (mixed >>> 13), 0xc2b2ae35);
    mixed ^= mixed >>> 16;
  }
  return (mixed >>> 0) % 100;
}

/** What an order is worth: wishes had all through (the dearest in the highest bit), cost in grains, least clearance. */
export interface Worth {
  readonly wishes: number;
  readonly cost: number;
  readonly mm: number;
}

export function worthOf(judge: Judge<Held>, strokes: readonly Held[]): Worth {
  let [set, wishes, cost, mm] = [0, 2 ** judge.wishes - 1, 0, Number.POSITIVE_INFINITY];
  strokes.forEach((by, i) => {
    cost += by.cost + (i === 0 ? 0 : judge.between(strokes[i - 1]!, by));
    mm = Math.min(mm, judge.clearanceMm(set, by, Number.POSITIVE_INFINITY));
    for (let wish = 0; wish < judge.wishes; wish++)
      if (!judge.grants(wish, set, by)) wishes &= ~(1 << (judge.wishes - 1 - wish));
    set |= by.makes;
  });
  return { wishes, cost: Math.round(cost / judge.costGrain), mm };
}

/** Below 0 where `a` is the better. */
export function compareWorths(a: Worth, b: Worth): number {
  return b.wishes - a.wishes || a.cost - b.cost || (a.mm === b.mm ? 0 : b.mm - a.mm);
}

export interface Listed {
  /** Orders of strokes, however held. */
  readonly orders: number;
  readonly best: Worth | undefined;
  /** Most bends made by any order, the best worth of those that make so many, and the least change wanted by a stroke that ends one. */
  readonly most: number;
  readonly bestOfMost: Worth;
  readonly wanted: number;
}

/** Lists every order, stroke by stroke and hold by hold. */
export function listOrders(judge: Judge<Held>): Listed {
  const whole = 2 ** judge.bends - 1;
  const orders = new Set<string>();
  let best: Worth | undefined;
  let [most, wanted] = [-1, 0];
  let bestOfMost: Worth = { wishes: 0, cost: 0, mm: 0 };
  const goOn = (set: BendSet, strokes: readonly Held[]): void => {
    const worth = worthOf(judge, strokes);
    const bends = set.toString(2).replaceAll("0", "").length;
    const wants = Math.min(
      ...judge.strokes.map((makes, i) =>
        (set & makes) === 0 ? judge.wanted(set, i) : Number.POSITIVE_INFINITY,
      ),
    );
    const better = bends - most || wanted - wants || compareWorths(bestOfMost, worth);
    if (better > 0) [most, bestOfMost, wanted] = [bends, worth, wants];
    if (set === whole) {
      orders.add(strokes.map(({ stroke }) => stroke).join(" "));
      if (!best || compareWorths(worth, best) < 0) best = worth;
      return;
    }
    judge.strokes.forEach((makes, stroke) => {
      if ((set & makes) !== 0) return;
      for (const by of judge.held(set, stroke)) goOn(set | makes, [...strokes, by]);
    });
  };
  goOn(0, []);
  return { orders: orders.size, best, most, bestOfMost, wanted };
}
