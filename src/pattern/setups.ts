/**
 * How the brake may stand to a stroke: where it is placed along the part, and the rows of fingers that hold the stroke's lines
 * down between stations where none can stand. Each row is worked out and numbered once, whatever was bent before.
 */
import type { Machine } from "../contact/machine.ts";
import type { Mm } from "../units/quantity.ts";
import { type FingerSet, type RowQuestion, rowOf } from "./fingerRows.ts";
import { everyRow, fewestFingers } from "./fingerSets.ts";
import { type Body, type PlacedFinger, strokeBodies, type Tooling } from "./strokeBodies.ts";
import type { Interval, StrokePlan } from "./strokePlan.ts";
import { type Along, placedBrakes, rowQuestion, tooShort } from "./tooling.ts";

/** The brake placed along the part, and all that stands there but fingers. */
export interface Base {
  readonly number: number;
  readonly tooling: Tooling;
  readonly bodies: readonly Body[];
}

/** A base and a row of fingers on it; of a brake without fingers none. */
export interface Setup {
  readonly number: number;
  readonly base: Base;
  readonly set: FingerSet;
  readonly row: readonly PlacedFinger[];
  readonly tooling: Tooling;
  readonly fingers: readonly Body[];
}

/** Sets to be tried besides those of fewest fingers: these, or every one that the stock makes. */
export type Wished = readonly FingerSet[] | "every";

/** What is known of the rows between some stations. */
interface Rows {
  readonly question: RowQuestion;
  readonly setups: Setup[];
  readonly tried: Set<string>;
  /** So many of the wished sets were looked at. */
  wished: number;
}

export class Setups {
  /** Places at which the brake is long enough for the lines. */
  readonly bases: readonly Base[];
  private readonly setups = new Map<string, Setup>();
  private readonly rows = new Map<string, Rows>();

  constructor(
    private readonly plan: StrokePlan,
    private readonly machine: Machine,
    private readonly noseSetbackMm: Mm,
    private readonly along: Along,
  ) {
    this.bases = placedBrakes(plan, along)
      .filter((tooling) => !tooShort(plan, tooling))
      .map((tooling, number) => ({
        number,
        tooling,
        bodies: strokeBodies(machine, noseSetbackMm, tooling),
      }));
  }

  /** A base with a row of fingers. */
  of(base: Base, set: FingerSet, row: readonly PlacedFinger[]): Setup {
    const key = `${base.number}|${row.map(({ fromMm, widthMm }) => `${fromMm},${widthMm}`).join(";")}`;
    const known = this.setups.get(key);
    if (known) return known;
    const tooling = this.along.fingers ? { ...base.tooling, fingers: row } : base.tooling;
    const fingers = strokeBodies(this.machine, this.noseSetbackMm, tooling).filter(
      ({ member }) => member === "finger",
    );
    const setup = { number: this.setups.size, base, set, row, tooling, fingers };
    this.setups.set(key, setup);
    return setup;
  }

  /** The same as another stroke's of the same lines. */
  like({ base, set, row }: Setup): Setup {
    return this.of(this.bases[base.number]!, set, row);
  }

  /** The brake placed as best it can be, with the fewest fingers that would hold the lines if nothing were in their way. */
  roughly(): Setup {
    const [tooling] = placedBrakes(this.plan, this.along) as [Tooling];
    const base = this.bases[0] ?? { number: -1, tooling, bodies: [] };
    const [fewest] = this.along.fingers ? fewestFingers(this.question(base, [])) : [];
    return this.of(base, fewest?.set ?? [], fewest?.row ?? []);
  }

  question(base: Base, blocked: readonly Interval[]): RowQuestion {
    return rowQuestion(this.plan, this.along, base.tooling, blocked);
  }

  /** Rows with the fewest fingers, then those of the wished sets, to which others may be added from call to call; or every row. */
  between(base: Base, blocked: readonly Interval[], wished: Wished): readonly Setup[] {
    const key = `${base.number}|${blocked.map(({ from, to }) => `${from},${to}`).join(";")}`;
    let rows = this.rows.get(key);
    if (!rows) {
      const question = this.question(base, blocked);
      const found = wished === "every" ? everyRow(question) : fewestFingers(question);
      rows = {
        question,
        setups: found.map(({ set, row }) => this.of(base, set, row)),
        tried: new Set(found.map(({ set }) => set.join())),
        wished: 0,
      };
      this.rows.set(key, rows);
    }
    if (rows.setups.length === 0 || wished === "every") return rows.setups;
    for (; rows.wished < wished.length; rows.wished++) {
      const set = wished[rows.wished]!;
      if (rows.tried.has(set.join())) continue;
      const row = rowOf(rows.question, set);
      if (row) rows.setups.push(this.of(base, set, row));
    }
    return [...rows.setups];
  }
}
