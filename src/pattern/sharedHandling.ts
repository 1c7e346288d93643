/**
 * Ways in and out of a stroke after any set of bends, for the order search: what each element blocks is worked out once and
 * shared by all sets that agree in the bends that decide where it lies. The ways are those of handlingOf.ts.
 */
import { BlockedHeights } from "../contact/blockedHeights.ts";
import type { Machine } from "../contact/machine.ts";
import type { SolidBody } from "../contact/solidBody.ts";
import type { Mm } from "../units/quantity.ts";
import {
  blocksNothing,
  type ElementRoom,
  elementRoom,
  frontLift,
  type StateRoom,
  stateRoom,
} from "./elementRoom.ts";
import type { StrokeElements } from "./elements.ts";
import { fitThroughMouth, type Patch, patchesOver } from "./fingersOff.ts";
import { Kept } from "./kept.ts";
import type { Base, Setup } from "./setups.ts";
import {
  endRise,
  frontRise,
  type Lying,
  lyingShape,
  type Rise,
  type WholeHandling,
} from "./strokeHandling.ts";
import type { StrokeState } from "./strokeState.ts";
import { fingerDepth } from "./tooling.ts";

/** The sheet of one element as it lies. */
interface Heap {
  readonly number: number;
  readonly lying: readonly Lying[];
  readonly patches: Kept<readonly Patch[]>;
  /** By base. */
  readonly rooms: Kept<ElementRoom>;
  /** Which way and on which base, or under which row: what keeps it from passing that end. */
  readonly pastBase: Kept<Rise>;
  readonly pastRow: Kept<Rise>;
  /** By row: heights of its fingers for the front. */
  readonly overRow: Kept<BlockedHeights>;
}

export class SharedHandling {
  private readonly heaps = new Kept<Heap>();
  /** The heaps asked for last. */
  private readonly last: { at: number; heaps: readonly Heap[] } = { at: -1, heaps: [] };
  private readonly states = new Map<string, StateRoom>();

  constructor(
    private readonly elements: StrokeElements,
    private readonly machine: Machine,
    private readonly fingers: readonly SolidBody[],
  ) {}

  /** What all elements of a state leave free for the front; before the bend is made, or after (`finished`). */
  room(state: StrokeState, base: Base, finished: boolean): StateRoom {
    const { liftMm } = this.machine.brake;
    let key = String(base.number);
    const rooms: ElementRoom[] = [];
    for (const { number, lying, rooms: known } of this.heapsOf(state, finished)) {
      const room = known.of(base.number, () => elementRoom(liftMm, base.bodies, this.fingers, lying));
      if (blocksNothing(room)) continue;
      rooms.push(room);
      key += `,${number}`;
    }
    const known = this.states.get(key) ?? stateRoom(rooms);
    this.states.set(key, known);
    return known;
  }

  /** The way in, or (`finished`) out. */
  way(state: StrokeState, setup: Setup, finished: boolean): WholeHandling {
    const { brake } = this.machine;
    const { base, row } = setup;
    const room = this.room(state, base, finished);
    if (room.lifts.of(setup.number, () => frontLift(room, setup.fingers)) <= brake.liftMm) return "front";
    if (room.overlaps) return "blocked";
    const heaps = this.heapsOf(state, finished);
    const bareFront = frontLift(room, []) <= brake.liftMm;
    // What leans over the fingers is lower over some of them than it is anywhere.
    if (row.length > 0 && bareFront && this.exactLift(heaps, room, setup) <= brake.liftMm) return "front";
    // What has no way with all fingers away has none with some.
    const bare = [true, false].filter((toRight) => brake.openEnds && this.passesEnd(heaps, base, toRight));
    if (bare.some((toRight) => this.passesEnd(heaps, base, toRight, setup))) return "end";
    if (row.length === 0 || (bare.length === 0 && !bareFront)) return "blocked";
    const above = heaps.flatMap(({ patches, lying }) =>
      patches.of(0, () => patchesOver(this.elements, lying)),
    );
    return fitThroughMouth(state, above, row, fingerDepth(brake)) ? "fingers off" : "blocked";
  }

  /** How far sheet and clamp must rise for the front, each finger under what stands over it alone. */
  private exactLift(heaps: readonly Heap[], room: StateRoom, { number, fingers }: Setup): Mm {
    const { liftMm } = this.machine.brake;
    const clamp = new BlockedHeights();
    clamp.addAll(room.clamp);
    for (const { lying, overRow } of heaps) {
      const heights = overRow.of(number, () => frontRise(lying, fingers, liftMm).clamp);
      clamp.addAll(heights);
    }
    return room.riseMm + clamp.leastFree(0);
  }

  private passesEnd(heaps: readonly Heap[], base: Base, toRight: boolean, setup?: Setup): boolean {
    const [sheet, clamp] = [new BlockedHeights(), new BlockedHeights()];
    const { liftMm } = this.machine.brake;
    const side = toRight ? 1 : 0;
    for (const { lying, pastBase, pastRow } of heaps) {
      const rises = [pastBase.of(2 * base.number + side, () => endRise(lying, base.bodies, liftMm, toRight))];
      if (setup)
        rises.push(pastRow.of(2 * setup.number + side, () => endRise(lying, setup.fingers, liftMm, toRight)));
      for (const rise of rises) {
        sheet.addAll(rise.sheet);
        clamp.addAll(rise.clamp);
      }
      if (sheet.leastFree(0) + clamp.leastFree(0) > liftMm) return false;
    }
    return true;
  }

  private heapsOf({ all, made }: StrokeState, finished: boolean): readonly Heap[] {
    const { last } = this;
    const at = 2 * made + (finished ? 1 : 0);
    if (last.at === at) return last.heaps;
    last.at = at;
    const heaps = all.map(({ number, side, strips, faces }) => {
      // What lies clamped lies so before and after.
      const after = finished && side === "moving";
      return this.heap(2 * number + (after ? 1 : 0), () =>
        [...strips, ...faces].map((shape) => lyingShape(shape, side, finished)),
      );
    });
    const zone = this.heap(finished ? 1 : 0, () => {
      const { flat, bent } = this.elements.ownZone();
      return (finished ? bent : flat).map((shape) => lyingShape(shape, "clamped", finished));
    });
    last.heaps = [...heaps, zone];
    return last.heaps;
  }

  private heap(number: number, lying: () => readonly Lying[]): Heap {
    return this.heaps.of(number, () => ({
      number,
      lying: lying(),
      patches: new Kept(),
      rooms: new Kept(),
      pastBase: new Kept(),
      pastRow: new Kept(),
      overRow: new Kept(),
    }));
  }
}
