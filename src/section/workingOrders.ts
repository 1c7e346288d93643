/**
 * All orders that work, put together by the sequence of their bends: what differs within one is only which ends are clamped, and each
 * bend's end can be chosen by itself, since what it meets depends on the bends made before alone. Best first, by the rank of the search:
 * clear, changes of end and face, swung width (src/model.md, section 8).
 */
import type { Brake } from "../brake/brake.ts";
import { Machine } from "../contact/machine.ts";
import type { End, Part } from "../part/part.ts";
import type { Mm } from "../units/quantity.ts";
import { ENDS, type Move, SectionJudge } from "./sectionJudge.ts";

export interface OrderGroup {
  /** Bends from 0, each with the ends that work and, of these, the one of the best order. */
  readonly steps: readonly { readonly bend: number; readonly ends: readonly End[]; readonly best: End }[];
  readonly orders: number;
  /** Changes of end and face of the best order. */
  readonly changes: number;
  /** Whether its best order keeps the margin everywhere. */
  readonly clear: boolean;
}

/** Sequences of more bends than these are too many to list. */
export const MOST_LISTED_BENDS = 7;

interface Sequence {
  readonly set: number;
  readonly moves: readonly (readonly Move[])[];
  readonly clear: boolean;
}

/**
 * Groups of working orders, best first, of equal ones that of the order shown; undefined for more bends than are listed.
 */
export function workingOrders(
  { part, brake, marginMm }: { readonly part: Part; readonly brake: Brake; readonly marginMm: Mm },
  shown: readonly number[],
): readonly OrderGroup[] | undefined {
  const count = part.bends.length;
  if (count > MOST_LISTED_BENDS) return undefined;
  const judge = new SectionJudge(part, new Machine(brake, part.thicknessMm), marginMm, "all");
  const whole = (1 << count) - 1;
  const known = new Map<number, readonly Move[]>();
  const movesAt = (set: number, bend: number): readonly Move[] => {
    const key = set * count + bend;
    const found = known.get(key) ?? ENDS.flatMap((_, end) => [...judge.held(set, 2 * bend + end)]);
    known.set(key, found);
    return found;
  };
  const leads = new Array<boolean>(whole + 1).fill(false);
  leads[whole] = true;
  const bends = Array.from({ length: count }, (_, bend) => bend);
  const left = (set: number) => bends.filter((bend) => !((set >>> bend) & 1));
  for (let set = whole - 1; set >= 0; set--)
    leads[set] = left(set).some((bend) => leads[set | (1 << bend)] && movesAt(set, bend).length > 0);
  let sequences: Sequence[] = [{ set: 0, moves: [], clear: true }];
  for (let made = 0; made < count; made++) {
    sequences = sequences.flatMap(({ set, moves, clear }) =>
      left(set).flatMap((bend): Sequence[] => {
        const next = set | (1 << bend);
        const by = leads[next] ? movesAt(set, bend) : [];
        if (by.length === 0) return [];
        const clearBy = judge.wishes === 0 ? by : by.filter((move) => judge.grants(0, set, move));
        const stays = clear && clearBy.length > 0;
        return [{ set: next, moves: [...moves, by], clear: stays }];
      }),
    );
  }
  const isShown = ({ best }: { readonly best: readonly Move[] }) =>
    Number(best.every(({ bend }, i) => bend === shown[i]));
  const ranked = sequences.map((one) => ({ one, ...bestOf(one, judge) }));
  ranked.sort(
    (a, b) => Number(b.one.clear) - Number(a.one.clear) || a.cost - b.cost || isShown(b) - isShown(a),
  );
  return ranked.map(({ one, best }) => groupOf(one, best));
}

/** The cheapest choice of ends through a sequence. */
function bestOf(
  { moves }: Sequence,
  judge: SectionJudge,
): { readonly cost: number; readonly best: readonly Move[] } {
  let ways = (moves[0] ?? []).map((move) => ({ cost: move.cost, best: [move] as readonly Move[] }));
  for (const step of moves.slice(1)) {
    ways = step.map((move) => {
      const through = ways.map(({ cost, best }) => ({
        cost: cost + judge.between(best.at(-1)!, move) + move.cost,
        best: [...best, move],
      }));
      return through.reduce((least, way) => (way.cost < least.cost ? way : least));
    });
  }
  return ways.reduce((least, way) => (way.cost < least.cost ? way : least), {
    cost: Number.POSITIVE_INFINITY,
    best: [] as readonly Move[],
  });
}

function groupOf({ moves, clear }: Sequence, best: readonly Move[]): OrderGroup {
  const changes = best.reduce((sum, { hold }, i) => {
    const other = i === 0 ? 0 : hold ^ best[i - 1]!.hold;
    return sum + (other & 1) + (other >>> 1);
  }, 0);
  return {
    steps: best.map(({ bend, clamped }, i) => ({
      bend,
      ends: moves[i]!.map((move) => move.clamped),
      best: clamped,
    })),
    orders: moves.reduce((product, step) => product * step.length, 1),
    changes,
    clear,
  };
}
