/**
 * Cuts sheet along straight lines: where a line runs through the sheet it is a chord, and chords divide the sheet into
 * cells. Rings and chords make one net of nodes; a cell is a loop of the net, led with the sheet to its left.
 * A corner nearer to a line than the given nearness counts as on it, so that figures rounded in a drawing leave no slivers.
 */
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";
import { type Region, type Ring, regionHolds, ringHolds, signedArea } from "./ring.ts";

/** A straight line: a point on it and its unit direction. */
export interface Line {
  readonly at: Point;
  readonly ux: number;
  readonly uy: number;
}

/** A cut between two nodes of the net, `from` before `to` along its line. */
export interface Chord {
  readonly from: number;
  readonly to: number;
}

export interface Cell {
  readonly region: Region;
  /** Nodes of its outer loop and of its holes, in the order of their rings. */
  readonly loops: readonly (readonly number[])[];
}

export interface Cells {
  readonly cells: readonly Cell[];
  /** The cell to the left of the step from one node to the next; undefined where no cell has that step. */
  leftOf(from: number, to: number): number | undefined;
}

export class Net {
  readonly nodes: Point[] = [];
  private readonly loops: number[][];

  constructor(private readonly region: Region) {
    this.loops = [region.outer, ...region.holes].map((ring) =>
      ring.map((point) => this.nodes.push(point) - 1),
    );
  }

  /** Where a line runs through the sheet, from one end of it to the other. Adds nodes where it crosses a ring. */
  chordsOn(line: Line, nearMm: Mm): Chord[] {
    const { nodes } = this;
    const off = (node: number) => {
      const { x, y } = nodes[node]!;
      return (x - line.at.x) * line.uy - (y - line.at.y) * line.ux;
    };
    const along = (node: number) => {
      const { x, y } = nodes[node]!;
      return (x - line.at.x) * line.ux + (y - line.at.y) * line.uy;
    };
    const met = new Set<number>();
    const steps = new Set<string>();
    for (const [which, loop] of this.loops.entries()) {
      const longer: number[] = [];
      loop.forEach((a, i) => {
        const b = loop[(i + 1) % loop.length]!;
        longer.push(a);
        const [da, db] = [off(a), off(b)];
        if (Math.abs(da) <= nearMm) met.add(a);
        if (Math.abs(da) <= nearMm || Math.abs(db) <= nearMm || da > 0 === db > 0) return;
        const t = da / (da - db);
        const [from, to] = [nodes[a]!, nodes[b]!];
        const node = nodes.push({ x: from.x + t * (to.x - from.x), y: from.y + t * (to.y - from.y) }) - 1;
        longer.push(node);
        met.add(node);
      });
      this.loops[which] = longer;
      for (const [i, a] of longer.entries()) steps.add(stepKey(a, longer[(i + 1) % longer.length]!));
    }
    const inOrder = [...met].sort((a, b) => along(a) - along(b));
    return inOrder.slice(1).flatMap((to, i) => {
      const from = inOrder[i]!;
      if (steps.has(stepKey(from, to)) || steps.has(stepKey(to, from))) return [];
      const [a, b] = [nodes[from]!, nodes[to]!];
      return regionHolds(this.region, { x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 }) ? [{ from, to }] : [];
    });
  }

  /** The cells into which these chords, none of which cross, divide the sheet. */
  cells(chords: readonly Chord[]): Cells {
    const ways = new Map<number, number[]>();
    const lead = (a: number, b: number) => {
      const known = ways.get(a);
      if (known) known.push(b);
      else ways.set(a, [b]);
    };
    for (const loop of this.loops) for (const [i, a] of loop.entries()) lead(a, loop[(i + 1) % loop.length]!);
    for (const { from, to } of chords) {
      lead(from, to);
      lead(to, from);
    }
    const taken = new Map<string, number>();
    const loops: number[][] = [];
    for (const [a, outward] of ways) {
      for (const b of outward)
        if (!taken.has(stepKey(a, b))) loops.push(this.walk(a, b, ways, taken, loops.length));
    }
    return this.inCells(loops, taken);
  }

  /** Walks round one cell, turning as far left as the net allows at every node. */
  private walk(
    a: number,
    b: number,
    ways: ReadonlyMap<number, readonly number[]>,
    taken: Map<string, number>,
    number: number,
  ): number[] {
    const loop: number[] = [];
    let [from, to] = [a, b];
    while (!taken.has(stepKey(from, to))) {
      taken.set(stepKey(from, to), number);
      loop.push(from);
      const back = this.direction(to, from);
      let [best, bestTurn] = [from, Infinity];
      for (const next of ways.get(to) ?? []) {
        // Clockwise from the way back: the first way met keeps the sheet close to the left.
        const turn = (back - this.direction(to, next) + 4 * Math.PI) % (2 * Math.PI);
        const ahead = turn < 1e-12 ? 2 * Math.PI : turn;
        if (ahead < bestTurn) [best, bestTurn] = [next, ahead];
      }
      [from, to] = [to, best];
    }
    return loop;
  }

  private direction(from: number, to: number): number {
    const [a, b] = [this.nodes[from]!, this.nodes[to]!];
    return Math.atan2(b.y - a.y, b.x - a.x);
  }

  private inCells(loops: readonly (readonly number[])[], taken: ReadonlyMap<string, number>): Cells {
    const rings = loops.map((loop): Ring => loop.map((node) => this.nodes[node]!));
    const areas = rings.map(signedArea);
    const outers = loops.flatMap((_, i) => (areas[i]! > 0 ? [i] : []));
    const cellOf = new Map(outers.map((loop, cell) => [loop, cell]));
    const holes = outers.map((): number[] => []);
    loops.forEach((_, i) => {
      if (areas[i]! > 0) return;
      const within = outers.filter((outer) => ringHolds(rings[outer]!, rings[i]![0]!));
      const least = within.sort((a, b) => areas[a]! - areas[b]!)[0];
      if (least === undefined) return;
      cellOf.set(i, cellOf.get(least)!);
      holes[cellOf.get(least)!]!.push(i);
    });
    const cells = outers.map((outer, cell) => ({
      region: { outer: rings[outer]!, holes: holes[cell]!.map((hole) => rings[hole]!) },
      loops: [outer, ...holes[cell]!].map((loop) => loops[loop]!),
    }));
    return {
      cells,
      leftOf: (from, to) => {
        const loop = taken.get(stepKey(from, to));
        return loop === undefined ? undefined : cellOf.get(loop);
      },
    };
  }
}

function stepKey(from: number, to: number): string {
  return `${from}>${to}`;
}
