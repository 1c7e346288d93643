/**
 * Fewest changes of all orders that make every bend, and the most that the least clearance of such an order can be, by one plain
 * pass over all sets of bends: every move is measured and nothing bounded (src/model.md, section 8).
 */
import type { Part } from "../../src/part/part.ts";
import type { Reach } from "../../src/sequence/reach.ts";

export function widestPlainly(
  { bends }: Pick<Part, "bends">,
  { withStart, withEnd }: Pick<Reach, "withStart" | "withEnd">,
  clearance: (set: number, bend: number, endHeld: number) => number,
): { readonly changes: number; readonly mm: number } {
  const n = bends.length;
  const best = Array.from({ length: 4 << n }, () => ({ changes: Number.POSITIVE_INFINITY, mm: -1 }));
  for (let set = 0; set < 1 << n; set++) {
    for (let bend = 0; bend < n; bend++) {
      for (const endHeld of [0, 1]) {
        if ((((endHeld ? withEnd : withStart)[set]! >>> bend) & 1) === 0) continue;
        const mm = clearance(set, bend, endHeld);
        const hold = endHeld + (bends[bend]!.turn === "up" ? 2 : 0);
        const to = best[4 * (set | (1 << bend)) + hold]!;
        for (let before = 0; before < 4; before++) {
          const from = set === 0 ? { changes: 0, mm: Number.POSITIVE_INFINITY } : best[4 * set + before]!;
          const other = set === 0 ? 0 : before ^ hold;
          const changes = from.changes + (other & 1) + (other >> 1);
          const through = Math.min(from.mm, mm);
          if (changes > to.changes || (changes === to.changes && through <= to.mm)) continue;
          [to.changes, to.mm] = [changes, through];
        }
      }
    }
  }
  return best
    .slice(-4)
    .reduce((a, b) => (b.changes < a.changes || (b.changes === a.changes && b.mm > a.mm) ? b : a));
}
