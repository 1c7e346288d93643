/**
 * A stroke judged after any set of bends, for the order search: what each element meets, blocks and keeps clear of is worked
 * out once and shared by all sets that agree in the bends that decide where it lies. Says no only where the whole stroke,
 * judged by itself (stroke.ts), would say no.
 */
import type { Machine } from "../contact/machine.ts";
import type { SolidBody } from "../contact/solidBody.ts";
import type { Mm, Rad } from "../units/quantity.ts";
import { liftsToTry, stationsUnder } from "./elementRoom.ts";
import { type Element, StrokeElements } from "./elements.ts";
import type { RowQuestion } from "./fingerRows.ts";
import { fewestFingers } from "./fingerSets.ts";
import { shortOf } from "./gripAndFlange.ts";
import { Kept } from "./kept.ts";
import { barredStretch, leastBare, type Missing, missingFinger } from "./missingFinger.ts";
import { type Base, type Setup, Setups, type Wished } from "./setups.ts";
import { SharedHandling } from "./sharedHandling.ts";
import { blockedStations, fingerBodies, merged } from "./stations.ts";
import type { StrokeRules } from "./stroke.ts";
import type { PlacedFinger } from "./strokeBodies.ts";
import { ContactSearch } from "./strokeContact.ts";
import type { WholeHandling } from "./strokeHandling.ts";
import type { BendSet, Interval, StrokePlan } from "./strokePlan.ts";
import { type StrokeState, strokeState } from "./strokeState.ts";
import { StrokeWidths } from "./strokeWidth.ts";
import type { Along } from "./tooling.ts";

/** A way in which a stroke can be made: how the brake stands to it and how the part gets in and out. */
export interface HeldStroke {
  readonly setup: Setup;
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

function isOnHolder({ load, unload }: HeldStroke): boolean {
  return load !== "fingers off" && unload !== "fingers off";
}

export class StrokeJudge {
  readonly elements: StrokeElements;
  readonly setups: Setups;
  private readonly widths: StrokeWidths;
  private readonly handling: SharedHandling;
  private readonly search: ContactSearch;
  private readonly fingers: readonly SolidBody[];
  /** All by the numbers of elements; by base, and of pairs by the moving one, first. */
  private readonly hitting = new Kept<Kept<boolean>>();
  private readonly pairs = new Kept<Kept<boolean>>();
  private readonly stations = new Kept<readonly Interval[]>();

  constructor(
    readonly plan: StrokePlan,
    private readonly machine: Machine,
    private readonly along: Along,
    private readonly rules: StrokeRules,
  ) {
    this.elements = new StrokeElements(plan);
    this.setups = new Setups(plan, machine, this.elements.seat.noseSetbackMm, along);
    this.widths = new StrokeWidths(this.elements);
    this.search = new ContactSearch(this.elements, machine, true);
    this.fingers = along.fingers ? fingerBodies(machine, this.elements.seat.noseSetbackMm) : [];
    this.handling = new SharedHandling(this.elements, machine, this.fingers);
  }

  /**
   * All ways to make the stroke after some bends, rows of the `wished` sets among them, no finger in the `barred` stations; none
   * where it can't be made.
   */
  held(made: BendSet, wished: Wished, barred: readonly Interval[] = []): readonly HeldStroke[] {
    const state = this.swings(made);
    if (!state) return [];
    const blocked = merged([...this.blockedFor(state), ...barred]);
    for (const base of this.setups.bases) {
      if (this.meetsBrake(state, base)) continue;
      const held = this.along.fingers
        ? this.onFingers(state, base, blocked, wished)
        : this.onRows(state, [this.setups.of(base, [], [])]);
      if (held.length > 0) return held;
    }
    return [];
  }

  /** Stations where no finger can stand after some bends. */
  barred(made: BendSet): readonly Interval[] {
    const state = this.swings(made);
    return state ? this.blockedFor(state) : [];
  }

  /** The stroke in a given setup, its fingers in stations that are free; undefined where it can't be made so. */
  allows(made: BendSet, setup: Setup): HeldStroke | undefined {
    const state = this.swings(made);
    const own = this.setups.like(setup);
    if (!state || this.meetsBrake(state, own.base)) return undefined;
    const stands = this.blockedFor(state).every((block) =>
      own.fingers.every(({ from, to }) => to <= block.from || from >= block.to),
    );
    return stands ? this.onRows(state, [own])[0] : undefined;
  }

  /** Least distance during the stroke; exact where it is less than `enoughMm`, else that or more. */
  widthMm(made: BendSet, setup: Setup, enoughMm: Mm): Mm {
    const state = strokeState(this.elements, made);
    return state ? this.widths.widthMm(state, setup, enoughMm) : 0;
  }

  /**
   * How far the leaf swings in a stroke that can't be made: up to what is met first, by a row that meets nothing. Not at all
   * where no such row is, or where the part can't be got in; under 0 where the stroke is not even begun.
   */
  swungRad(made: BendSet): Rad {
    const state = this.begun(made);
    const [first] = this.setups.bases;
    if (!state || !first) return -1;
    const free = this.freeRow(state);
    if (free?.onlyFingers && !free.row) return 0;
    const setup = this.setups.of(first, [], free?.row ?? []);
    if (this.handling.way(state, setup, false) === "blocked") return 0;
    const search = new ContactSearch(this.elements, this.machine);
    for (const element of state.all) if (this.meets(element, first)) this.lookAtBrake(search, element, first);
    for (const moving of this.plan.moving) {
      for (const clamped of this.plan.clamped) {
        if (this.pairMeets(state.all[moving]!, state.all[clamped]!))
          lookAtEachOther(search, state.all[moving]!, state.all[clamped]!);
      }
    }
    return search.found?.leafAngleRad ?? this.elements.seat.sweepRad;
  }

  /**
   * The row to show for a stroke that can't be made: one that meets nothing, so that what really is in the way is told; and
   * where fingers alone are at fault, which one is missing or what bars them. Undefined where the stroke is not even begun.
   */
  rowAfter(made: BendSet): RowShown | undefined {
    const begun = this.begun(made);
    const found = begun && this.freeRow(begun);
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
      this.blockedBy(element).some((one) => one.from <= middle && one.to >= middle),
    );
    return { row: leastBare(question, to - from) ?? [], barred: { ...barred, face } };
  }

  /** The stroke after some bends; undefined where it is not even begun. */
  private begun(made: BendSet): StrokeState | undefined {
    if (this.elements.seat.pinched || this.plan.overload) return undefined;
    const state = strokeState(this.elements, made);
    return state && !shortOf(state, this.rules) ? state : undefined;
  }

  /** The same where the leaf swings far enough and the part doesn't meet itself. */
  private swings(made: BendSet): StrokeState | undefined {
    const { seat } = this.elements;
    const state = seat.sweepRad < seat.overbendRad ? undefined : this.begun(made);
    return state && !this.meetsItself(state) ? state : undefined;
  }

  /** The row of fewest fingers that meets nothing, whatever else is in the way; undefined where there are no fingers. */
  private freeRow(state: StrokeState): FreeRow | undefined {
    const [first] = this.setups.bases;
    if (!this.along.fingers || !first) return undefined;
    const free = this.setups.bases.find((base) => !this.meetsBrake(state, base));
    const question = this.setups.question(free ?? first, this.blockedFor(state));
    const onlyFingers = free !== undefined && !this.meetsItself(state);
    return { state, question, onlyFingers, row: fewestFingers(question)[0]?.row };
  }

  /** Stations where no finger can stand, whatever it is lifted by. */
  private blockedFor({ all }: StrokeState): Interval[] {
    return merged(all.flatMap((element) => this.blockedBy(element)));
  }

  /** The same because of one element. */
  private blockedBy(element: Element): readonly Interval[] {
    return this.stations.of(element.number, () =>
      blockedStations(this.elements, this.machine, this.fingers, element),
    );
  }

  /** Whether anything meets a body that is no finger. */
  private meetsBrake({ all }: StrokeState, base: Base): boolean {
    return all.some((element) => this.meets(element, base));
  }

  private meets(element: Element, base: Base): boolean {
    return this.hitting
      .of(base.number, () => new Kept())
      .of(element.number, () => this.lookAtBrake(this.anyContact(), element, base));
  }

  private anyContact(): ContactSearch {
    this.search.forget();
    return this.search;
  }

  /** Whether an element, or the leaf with the anchor, meets a body that is no finger. */
  private lookAtBrake(
    search: ContactSearch,
    { face, side, strips, faces }: Element,
    { bodies }: Base,
  ): boolean {
    for (const shape of [...strips, ...faces]) for (const body of bodies) search[side](shape, body);
    if (face === this.plan.anchor) search.leafItself(bodies);
    return search.meets;
  }

  private meetsItself({ all }: StrokeState): boolean {
    const { moving, clamped } = this.plan;
    return moving.some((one) => clamped.some((other) => this.pairMeets(all[one]!, all[other]!)));
  }

  private pairMeets(moving: Element, clamped: Element): boolean {
    return this.pairs
      .of(moving.number, () => new Kept())
      .of(clamped.number, () => lookAtEachOther(this.anyContact(), moving, clamped));
  }

  private onFingers(
    state: StrokeState,
    base: Base,
    blocked: readonly Interval[],
    wished: Wished,
  ): readonly HeldStroke[] {
    const held = new Map<Setup, HeldStroke>();
    const under = (stations: readonly Interval[]): boolean => {
      const zones = stations.length === 0 ? blocked : merged([...blocked, ...stations]);
      for (const way of this.onRows(state, this.setups.between(base, zones, wished)))
        held.set(way.setup, way);
      return wished !== "every" && [...held.values()].some(isOnHolder);
    };
    // Fingers that the sheet can't pass on its way may stand elsewhere.
    if (!under([])) this.liftedStations(state, base).some(under);
    const ways = [...held.values()];
    const onHolder = wished === "every" ? [] : ways.filter(isOnHolder);
    return onHolder.length > 0 ? onHolder : ways;
  }

  /** The rows that let the part in and out. */
  private onRows(state: StrokeState, setups: readonly Setup[]): HeldStroke[] {
    return setups.flatMap((setup) => {
      const load = this.handling.way(state, setup, false);
      const unload = load === "blocked" ? load : this.handling.way(state, setup, true);
      return unload === "blocked" ? [] : [{ setup, load, unload }];
    });
  }

  /** Stations that fingers lifted so far as to pass something can't have, before the bend is made or after. */
  private liftedStations(state: StrokeState, base: Base): Interval[][] {
    const { liftMm } = this.machine.brake;
    return [false, true].flatMap((finished) => {
      const room = this.handling.room(state, base, finished);
      return liftsToTry(room, liftMm).map((mm) => stationsUnder(room, mm));
    });
  }
}

function lookAtEachOther(search: ContactSearch, moving: Element, clamped: Element): boolean {
  for (const one of [...moving.strips, ...moving.faces])
    for (const other of [...clamped.strips, ...clamped.faces]) search.self(one, other);
  return search.meets;
}
