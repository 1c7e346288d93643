/**
 * The best rank of a whole part by trying everything: all orders, either side of each bend clamped, all finger sets, each stroke
 * judged whole and by itself. Places of fingers are tried one by one, so that nothing of the search for rows is taken over.
 */
import { Machine } from "../../src/contact/machine.ts";
import type { WholeJob } from "../../src/jobFile/wholeJob.ts";
import { StrokeElements } from "../../src/pattern/elements.ts";
import { regionArea } from "../../src/pattern/ring.ts";
import { type JudgedStroke, judgeStroke } from "../../src/pattern/stroke.ts";
import type { PlacedFinger, Tooling } from "../../src/pattern/strokeBodies.ts";
import { type Stroke, type StrokePlan, strokePlan } from "../../src/pattern/strokePlan.ts";
import { strokeState } from "../../src/pattern/strokeState.ts";
import { strokesOf } from "../../src/pattern/strokes.ts";

/** Tight or not, fingers off or not, turns, mm² swung, finger changes: the lower, the better, the first before the next. */
export type Rank = readonly [tight: number, off: number, turns: number, area: number, changes: number];

/** A stroke as one made it: how the part lay and which fingers were on. */
export interface Made {
  readonly stroke: Stroke;
  readonly tight: boolean;
  readonly off: boolean;
  readonly fingers: readonly number[];
}

interface Way {
  readonly stroke: Stroke;
  readonly plan: StrokePlan;
  readonly elements: StrokeElements;
  readonly area: number;
}

/** Between the places that line up with the ends of a line, one every so many mm. */
const GRID_MM = 8;

export class AllOrders {
  private readonly machine: Machine;
  private readonly ways: readonly Way[];
  private readonly sets: readonly (readonly number[])[];
  private readonly known = new Map<string, Made | undefined>();
  private readonly stopped = new Map<string, boolean>();

  constructor(private readonly job: WholeJob) {
    this.machine = new Machine(job.brake, job.part.thicknessMm);
    this.ways = strokesOf(job.part).flatMap((stroke): Way[] => {
      const planned = strokePlan(job.part, job.brake, stroke);
      if (!planned.ok) return [];
      return [
        { stroke, plan: planned.plan, elements: new StrokeElements(planned.plan), area: swung(planned.plan) },
      ];
    });
    this.sets = job.along.fingers ? subsets(job.along.fingers) : [[]];
  }

  /** The rank of strokes in order. */
  rankOf(order: readonly Made[]): Rank {
    const ways = order.map(({ stroke }) => this.wayOf(stroke));
    const sum = (of: (i: number) => number) => order.reduce((all, _, i) => all + (i === 0 ? 0 : of(i)), 0);
    return [
      order.some(({ tight }) => tight) ? 1 : 0,
      order.some(({ off }) => off) ? 1 : 0,
      sum((i) => turns(ways[i - 1]!.plan, ways[i]!.plan)),
      ways.reduce((all, { area }) => all + area, 0),
      sum((i) => changes(order[i - 1]!.fingers, order[i]!.fingers)),
    ];
  }

  /** The best rank of all; undefined where no order can be made. */
  best(): Rank | undefined {
    const whole = 2 ** this.job.part.sheet.pattern.bends.length - 1;
    for (const [tight, off] of [
      [0, 0],
      [0, 1],
      [1, 0],
      [1, 1],
    ] as const) {
      const least = this.leastFrom(0, undefined, whole, { tight, off, memo: new Map() });
      if (least) return [tight, off, ...least];
    }
    return undefined;
  }

  private leastFrom(made: number, last: Made | undefined, whole: number, at: Allowed): Least | undefined {
    if (made === whole) return [0, 0, 0];
    const key = last ? `${made}|${last.stroke.bends}@${last.stroke.clampedFace}|${last.fingers}` : "";
    if (at.memo.has(key)) return at.memo.get(key);
    let best: Least | undefined;
    for (const { stroke, area, plan } of this.ways) {
      const makes = stroke.bends.reduce((set, bend) => set | (1 << bend), 0);
      if (made & makes) continue;
      for (const set of this.sets) {
        const one = this.judged(made, stroke, set, at);
        const after = one && this.leastFrom(made | makes, one, whole, at);
        if (!one || !after) continue;
        const turned = last ? turns(this.wayOf(last.stroke).plan, plan) : 0;
        const changed = last ? changes(last.fingers, one.fingers) : 0;
        const sum: Least = [after[0] + turned, after[1] + area, after[2] + changed];
        if (!best || compare(sum, best) < 0) best = sum;
      }
    }
    at.memo.set(key, best);
    return best;
  }

  /** A stroke with one finger set, in some place where it can be made within what is allowed. */
  private judged(
    made: number,
    stroke: Stroke,
    set: readonly number[],
    { tight, off }: Allowed,
  ): Made | undefined {
    const key = `${made}|${stroke.bends}@${stroke.clampedFace}|${set}|${tight}${off}`;
    if (this.known.has(key)) return this.known.get(key);
    const { plan, elements } = this.wayOf(stroke);
    const { along, marginMm, brake } = this.job;
    const state = strokeState(elements, made);
    let found: Made | undefined;
    const rules = { marginMm, leaf: brake.leaf, leastGripMm: 0, leastFlangeMm: 0 };
    const bare = `${made}|${stroke.bends}@${stroke.clampedFace}`;
    // What is stopped with no finger in the way is stopped with any.
    const isStopped =
      this.stopped.get(bare) ??
      (!state || stops(judgeStroke(state, this.machine, along.fingers ? { fingers: [] } : {}, rules)));
    this.stopped.set(bare, isStopped);
    const rows: (readonly PlacedFinger[] | undefined)[] = along.fingers
      ? rowsOf(plan, set, along.fingerGapMm)
      : [undefined];
    for (const row of isStopped ? [] : rows) {
      const tooling: Tooling = row ? { fingers: row } : {};
      const { verdict, load, unload } = judgeStroke(state!, this.machine, tooling, rules);
      const takesOff = load === "fingers off" || unload === "fingers off";
      if (verdict === "hits" || (verdict === "tight" && !tight) || (takesOff && !off)) continue;
      found = { stroke, tight: verdict === "tight", off: takesOff, fingers: set };
      break;
    }
    this.known.set(key, found);
    return found;
  }

  private wayOf({ bends, clampedFace }: Stroke): Way {
    return this.ways.find(
      ({ stroke, plan }) =>
        stroke.bends.join() === bends.join() &&
        (stroke.clampedFace === clampedFace || plan.sides[clampedFace] === "clamped"),
    )!;
  }
}

/** Whether more than the lack of fingers stops a stroke. */
function stops({ contact, refused, swingShort }: JudgedStroke): boolean {
  return contact !== undefined || refused !== undefined || swingShort;
}

type Least = readonly [turns: number, area: number, changes: number];

interface Allowed {
  readonly tight: number;
  readonly off: number;
  readonly memo: Map<string, Least | undefined>;
}

/** Under 0 where a goes before b. */
export function compare(a: readonly number[], b: readonly number[]): number {
  const at = a.findIndex((figure, i) => figure !== b[i]);
  return at < 0 ? 0 : a[at]! - b[at]!;
}

function subsets(stock: readonly { readonly count: number }[]): number[][] {
  return stock.reduce<number[][]>(
    (sets, { count }) => sets.flatMap((set) => Array.from({ length: count + 1 }, (_, n) => [...set, n])),
    [[]],
  );
}

/** A turn about the upright, and a turn-over. */
function turns(a: StrokePlan, b: StrokePlan): number {
  const heading = ({ own }: StrokePlan) => {
    const { nx, ny } = own[0]!.fold;
    return (Math.round((Math.atan2(ny, nx) * 180) / Math.PI) + 360) % 360;
  };
  return (heading(a) === heading(b) ? 0 : 1) + (a.markedFaceUp === b.markedFaceUp ? 0 : 1);
}

function changes(a: readonly number[], b: readonly number[]): number {
  return a.reduce((sum, n, i) => sum + Math.abs(n - b[i]!), 0);
}

/** Sheet beyond the stroke's lines, in whole mm². */
function swung({ part, sides, own }: StrokePlan): number {
  let area = 0;
  for (const [face, region] of part.sheet.faces.entries())
    if (sides[face] === "moving") area += regionArea(region);
  for (const hinge of part.sheet.hinges) {
    const strips = hinge.strips.reduce((sum, strip) => sum + regionArea(strip), 0);
    if (own.some((one) => one.hinge === hinge)) area += strips / 2;
    else if (sides[hinge.left[0]!] === "moving") area += strips;
  }
  return Math.round(area);
}

/** Rows of one set that leave no more than the gap bare: every order of its fingers, side by side or a gap apart, on a grid. */
function rowsOf({ lines }: StrokePlan, set: readonly number[], gapMm: number): PlacedFinger[][] {
  const widths = set.flatMap((n, i) => Array.from({ length: n }, () => WIDTHS_MM[i]!));
  if (widths.length === 0) return [];
  const [from, to] = [lines[0]!.from, Math.max(...lines.map((line) => line.to))];
  const rows: PlacedFinger[][] = [];
  for (const order of ordersOf(widths)) {
    for (let gaps = 0; gaps < 2 ** (order.length - 1); gaps++) {
      const offsets = order.map((_, i) =>
        order.slice(0, i).reduce((sum, width, k) => sum + width + ((gaps >>> k) & 1 ? gapMm : 0), 0),
      );
      const long = offsets.at(-1)! + order.at(-1)!;
      const [least, most] = [Math.max(from - order[0]!, to - gapMm - long), from + gapMm];
      const starts = [from, (from + to - long) / 2, to - long, most, least];
      for (let start = least; start < most; start += GRID_MM) starts.push(start);
      for (const start of new Set(starts)) {
        if (start < least || start > most) continue;
        rows.push(order.map((widthMm, i) => ({ widthMm, fromMm: start + offsets[i]! })));
      }
    }
  }
  return rows;
}

/** Fingers of the shop in which everything is tried. */
export const WIDTHS_MM: readonly number[] = [60, 35, 20];

function ordersOf(widths: readonly number[]): number[][] {
  if (widths.length < 2) return [[...widths]];
  return [...new Set(widths)].flatMap((width) => {
    const rest = [...widths];
    rest.splice(rest.indexOf(width), 1);
    return ordersOf(rest).map((order) => [width, ...order]);
  });
}
