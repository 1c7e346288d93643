/**
 * A stroke judged after any set of bends, for the order search: what each element meets, blocks and keeps clear of is worked
 * out once and shared by all sets that agree in the bends that decide where it lies. Says no only where the whole stroke,
 * judged by itself (stroke.ts), would say no.
 */
import type { Machine } from "../contact/machine.ts";
import { liftsToTry, stationsUnder } from "./elementRoom.ts";
import { StrokeElements } from "./elements.ts";
import { type FingerSet, type RowQuestion, rowOf } from "./fingerRows.ts";
import { type FingerRow, fewestFingers } from "./fingerSets.ts";
import { shortOf } from "./gripAndFlange.ts";
import { barredStretch, leastBare, type Missing, missingFinger } from "./missingFinger.ts";
import { type Base, SharedHandling } from "./sharedHandling.ts";
import { blockedStations, merged } from "./stations.ts";
import type { StrokeRules } from "./stroke.ts";
import { type PlacedFinger, strokeBodies, type Tooling } from "./strokeBodies.ts";
import { ContactSearch } from "./strokeContact.ts";
import type { WholeHandling } from "./strokeHandling.ts";
import type { BendSet, Interval, StrokePlan } from "./strokePlan.ts";
import { type StrokeState, strokeState } from "./strokeState.ts";
import { type Along, placedBrakes, rowQuestion, tooShort } from "./tooling.ts";

/** A way in which a stroke can be made: how the brake stands to it and how the part gets in and out. */
export interface HeldStroke {
  readonly tooling: Tooling;
  readonly set: FingerSet;
  readonly load: WholeHandling;
  readonly unload: WholeHandling;
}

/** The best row in the stations that are free, and whether fingers alone are at fault where there is none. */
interface FreeRow {
  readonly state: StrokeState;
  readonly question: RowQuestion;
  readonly onlyFingers: boolean;
  readonly row: readonly PlacedFinger[] | undefined;
}

/** A row for a stroke that can't be made, and what is wrong with fingers there. */
export interface RowShown {
  readonly row: readonly PlacedFinger[];
  readonly missing?: Missing;
  /** Stations over which no finger can stand because of a face, too long to stay bare. */
  readonly barred?: Interval & { readonly face: number };
}

/** What is known of the rows in some free stations. */
interface Rows {
  readonly question: RowQuestion;
  readonly fewest: readonly FingerRow[];
  /** By set; undefined where it has no row. */
  readonly bySet: Map<string, FingerRow | undefined>;
}

/** So many rows are tried for a part that gets in or out by another way than the front. */
const MOST_SLOW = 3;

function isOnHolder({ load, unload }: HeldStroke): boolean {
  return load !== "fingers off" && unload !== "fingers off";
}

export class StrokeJudge {
  readonly elements: StrokeElements;
  private readonly bases: readonly Base[];
  private readonly hitting = new Map<string, boolean>();
  private readonly pairs = new Map<string, boolean>();
  private readonly stations = new Map<string, readonly Interval[]>();
  private readonly handling: SharedHandling;
  private readonly rows = new Map<string, Rows>();

  constructor(
    readonly plan: StrokePlan,
    private readonly machine: Machine,
    private readonly along: Along,
    private readonly rules: StrokeRules,
  ) {
    this.elements = new StrokeElements(plan);
    this.bases = placedBrakes(plan, along)
      .filter((tooling) => !tooShort(plan, tooling))
      .map((tooling) => ({
        tooling,
        bodies: strokeBodies(machine, this.elements.seat.noseSetbackMm, tooling),
      }));
    this.handling = new SharedHandling(this.elements, machine, this.bases);
  }

  /** All ways to make the stroke after some bends, rows of the `wished` sets among them; none where it can't be made. */
  held(made: BendSet, wished: readonly FingerSet[]): HeldStroke[] {
    const { seat } = this.elements;
    if (seat.sweepRad < seat.overbendRad || seat.pinched || this.plan.overload) return [];
    const state = strokeState(this.elements, made);
    if (!state || shortOf(state, this.rules) || this.meetsItself(state)) return [];
    for (const base of this.bases.keys()) {
      if (this.meetsBrake(state, base)) continue;
      const ways = this.along.fingers
        ? this.onFingers(state, base, wished)
        : [this.handled(state, base, [], [])];
      const held = ways.filter((way): way is HeldStroke => way !== undefined);
      if (held.length > 0) return held;
    }
    return [];
  }

  /** The row of fewest fingers that meets nothing after some bends, whatever else is in the way; undefined where none does. */
  freeRow(made: BendSet): FreeRow | undefined {
    const { seat } = this.elements;
    const state = strokeState(this.elements, made);
    const [first] = this.bases;
    if (!this.along.fingers || !state || !first || seat.pinched || this.plan.overload) return undefined;
    if (shortOf(state, this.rules)) return undefined;
    const free = this.bases.find((_, base) => !this.meetsBrake(state, base));
    const { tooling } = free ?? first;
    const question = rowQuestion(this.plan, this.along, tooling, this.blockedFor(state));
    const onlyFingers = free !== undefined && !this.meetsItself(state);
    return { state, question, onlyFingers, row: fewestFingers(question)[0]?.row };
  }

  /**
   * The row to show for a stroke that can't be made: one that meets nothing, so that what really is in the way is told; and
   * where fingers alone are at fault, which one is missing or what bars them. Undefined where the stroke is not even begun.
   */
  rowAfter(made: BendSet): RowShown | undefined {
    const found = this.freeRow(made);
    if (!found) return undefined;
    const { state, question, onlyFingers, row } = found;
    if (row) return { row };
    const { from, to } = this.plan.lines[0]!;
    if (!onlyFingers) return { row: leastBare(question, to - from) ?? [] };
    const barred = barredStretch(question);
    if (!barred) {
      const missing = missingFinger(question);
      return missing && { row: missing.instead ?? [], missing };
    }
    const middle = (barred.from + barred.to) / 2;
    const face = state.all.findIndex((element) =>
      this.blockedBy(state, element.face).some((one) => one.from <= middle && one.to >= middle),
    );
    return { row: leastBare(question, to - from) ?? [], barred: { ...barred, face } };
  }

  /** Stations where no finger can stand, whatever it is lifted by. */
  blockedFor(state: StrokeState): Interval[] {
    return merged(state.all.flatMap(({ face }) => this.blockedBy(state, face)));
  }

  /** The same because of one element. */
  private blockedBy(state: StrokeState, face: number): readonly Interval[] {
    const key = this.keyOf(state, face);
    const known = this.stations.get(key);
    if (known) return known;
    const { side, strips, faces } = state.all[face]!;
    const blocked = blockedStations(this.elements, this.machine, [...strips, ...faces], side);
    this.stations.set(key, blocked);
    return blocked;
  }

  /** What all judgements of an element have in common: its face, and which of the bends that decide it are made. */
  keyOf({ made }: StrokeState, face: number): string {
    return `${face}:${made & this.plan.deciding[face]!}`;
  }

  /** Whether anything meets a body that is no finger. */
  private meetsBrake(state: StrokeState, base: number): boolean {
    return this.plan.part.sheet.faces.some((_, face) => this.meets(state, face, base));
  }

  /** Whether an element meets a body that is no finger. */
  private meets(state: StrokeState, face: number, base: number): boolean {
    const key = `${base}:${this.keyOf(state, face)}`;
    const known = this.hitting.get(key);
    if (known !== undefined) return known;
    const search = new ContactSearch(this.elements, this.machine);
    const { side, strips, faces } = state.all[face]!;
    for (const shape of [...strips, ...faces]) {
      for (const body of this.bases[base]!.bodies) {
        if (side === "clamped") search.clamped(shape, body);
        else search.moving(shape, body);
      }
    }
    if (face === this.plan.anchor) search.leafItself(this.bases[base]!.bodies);
    this.hitting.set(key, search.meets);
    return search.meets;
  }

  private meetsItself(state: StrokeState): boolean {
    const { sides } = this.plan;
    return sides.some(
      (side, moving) =>
        side === "moving" &&
        sides.some((other, clamped) => other === "clamped" && this.pairMeets(state, moving, clamped)),
    );
  }

  private pairMeets(state: StrokeState, moving: number, clamped: number): boolean {
    const key = `${this.keyOf(state, moving)}/${this.keyOf(state, clamped)}`;
    const known = this.pairs.get(key);
    if (known !== undefined) return known;
    const search = new ContactSearch(this.elements, this.machine);
    const [a, b] = [state.all[moving]!, state.all[clamped]!];
    for (const one of [...a.strips, ...a.faces])
      for (const other of [...b.strips, ...b.faces]) search.self(one, other);
    this.pairs.set(key, search.meets);
    return search.meets;
  }

  private onFingers(
    state: StrokeState,
    base: number,
    wished: readonly FingerSet[],
  ): (HeldStroke | undefined)[] {
    const blocked = this.blockedFor(state);
    const tried = new Set<string>();
    let held: readonly HeldStroke[] = [];
    const under = (stations: readonly Interval[]): boolean => {
      const zones = merged([...blocked, ...stations]);
      const key = zones.map(({ from, to }) => `${from},${to}`).join(";");
      if (tried.has(key)) return false;
      tried.add(key);
      const ways = this.onRows(state, base, this.rowsIn(base, zones, key, wished));
      if (ways.some(isOnHolder)) {
        held = ways.filter(isOnHolder);
        return true;
      }
      if (held.length === 0) held = ways;
      return false;
    };
    // Fingers that the sheet can't pass on its way may stand elsewhere.
    if (!under([])) this.liftedStations(state, base).some(under);
    return [...held];
  }

  /** The rows that let the part in and out; of those that it does not pass by the front only the first few are looked at. */
  private onRows(state: StrokeState, base: number, rows: readonly FingerRow[]): HeldStroke[] {
    const held: HeldStroke[] = [];
    let slow = 0;
    for (const { set, row } of rows) {
      if (slow >= MOST_SLOW) break;
      const way = this.handled(state, base, set, row);
      if (way?.load !== "front" || way.unload !== "front") slow++;
      if (way) held.push(way);
    }
    return held;
  }

  /** Stations that fingers lifted so far as to pass something can't have, before the bend is made or after. */
  private liftedStations(state: StrokeState, base: number): Interval[][] {
    const { liftMm } = this.machine.brake;
    return [false, true].flatMap((finished) => {
      const room = this.handling.room(state, base, finished);
      return liftsToTry(room, liftMm).map((mm) => stationsUnder(room, mm));
    });
  }

  /** Rows with the fewest fingers, and those of the wished sets besides, each once. */
  private rowsIn(base: number, zones: readonly Interval[], key: string, wished: readonly FingerSet[]) {
    const known = `${base}|${key}`;
    let rows = this.rows.get(known);
    if (!rows) {
      const question = rowQuestion(this.plan, this.along, this.bases[base]!.tooling, zones);
      const fewest = fewestFingers(question);
      rows = { question, fewest, bySet: new Map(fewest.map((one) => [one.set.join(), one])) };
      this.rows.set(known, rows);
    }
    const { question, fewest, bySet } = rows;
    if (fewest.length === 0) return [];
    for (const set of wished) {
      const named = set.join();
      if (bySet.has(named)) continue;
      const row = rowOf(question, set);
      bySet.set(named, row && { set, row });
    }
    return [...bySet.values()].filter((row) => row !== undefined);
  }

  /** The stroke with a row of fingers, or undefined where the part gets in or out in no way. */
  private handled(
    state: StrokeState,
    base: number,
    set: FingerSet,
    row: readonly PlacedFinger[],
  ): HeldStroke | undefined {
    const tooling: Tooling = {
      ...this.bases[base]!.tooling,
      ...(this.along.fingers && { fingers: row }),
    };
    const standing = this.along.fingers && row;
    const load = this.handling.way(state, base, standing, false);
    if (load === "blocked") return undefined;
    const unload = this.handling.way(state, base, standing, true);
    return unload === "blocked" ? undefined : { tooling, set, load, unload };
  }
}
