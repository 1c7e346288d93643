/**
 * Ways in and out of a stroke after any set of bends, for the order search: what each element blocks is worked out once and
 * shared by all sets that agree in the bends that decide where it lies. The ways are those of handlingOf.ts.
 */
import { BlockedHeights } from "../contact/blockedHeights.ts";
import type { Machine } from "../contact/machine.ts";
import { type ElementRoom, elementRoom, frontLift, type StateRoom, stateRoom } from "./elementRoom.ts";
import type { StrokeElements } from "./elements.ts";
import { fitThroughMouth } from "./fingersOff.ts";
import { type Body, type PlacedFinger, strokeBodies, type Tooling } from "./strokeBodies.ts";
import { endRise, type Lying, lyingShape, type Rise, type WholeHandling } from "./strokeHandling.ts";
import type { StrokeState } from "./strokeState.ts";
import { fingerDepth } from "./tooling.ts";

/** The brake without fingers, placed along the part. */
export interface Base {
  readonly tooling: Tooling;
  readonly bodies: readonly Body[];
}

/** The sheet of one element as it lies, and a name that it shares with all that lie alike. */
interface Heap {
  readonly key: string;
  readonly lying: readonly Lying[];
}

export class SharedHandling {
  private readonly heaps = new Map<string, Heap>();
  private readonly rooms = new Map<string, ElementRoom>();
  private readonly states = new Map<number, StateRoom>();
  private readonly ends = new Map<string, Rise>();
  private readonly ways = new Map<string, WholeHandling>();
  private readonly mouths = new Map<string, boolean>();

  constructor(
    private readonly elements: StrokeElements,
    private readonly machine: Machine,
    private readonly bases: readonly Base[],
  ) {}

  /** What all elements of a state leave free for the front; before the bend is made, or after (`finished`). */
  room(state: StrokeState, base: number, finished: boolean): StateRoom {
    const number = (state.made * this.bases.length + base) * 2 + (finished ? 1 : 0);
    const known = this.states.get(number);
    if (known) return known;
    const made = stateRoom(this.heapsOf(state, finished).map((heap) => this.roomOf(heap, base)));
    this.states.set(number, made);
    return made;
  }

  /** The way in, or (`finished`) out, with a row of fingers; none: the clamp as it is. */
  way(
    state: StrokeState,
    base: number,
    row: readonly PlacedFinger[] | undefined,
    finished: boolean,
  ): WholeHandling {
    const { liftMm } = this.machine.brake;
    const room = this.room(state, base, finished);
    if (frontLift(room, row ?? []) <= liftMm) return "front";
    const key = `${base}|${state.made}|${finished}|${row ? rowKey(row) : ""}`;
    const known = this.ways.get(key);
    if (known) return known;
    const way = this.otherWay(state, base, row, finished);
    this.ways.set(key, way);
    return way;
  }

  private otherWay(
    state: StrokeState,
    base: number,
    row: readonly PlacedFinger[] | undefined,
    finished: boolean,
  ): WholeHandling {
    const { brake } = this.machine;
    const room = this.room(state, base, finished);
    if (room.overlaps) return "blocked";
    const heaps = this.heapsOf(state, finished);
    // What has no way with all fingers away has none with some.
    const bare = [true, false].filter(
      (toRight) => brake.openEnds && this.passesEnd(heaps, base, toRight, undefined),
    );
    if (bare.some((toRight) => !row || this.passesEnd(heaps, base, toRight, row))) return "end";
    if (!row || row.length === 0) return "blocked";
    const bareFront = frontLift(room, []) <= brake.liftMm;
    if (bare.length === 0 && !bareFront) return "blocked";
    const mouth = `${state.made}|${finished}|${rowKey(row)}`;
    const fits = this.mouths.get(mouth) ?? fitThroughMouth(state, row, fingerDepth(brake), finished);
    this.mouths.set(mouth, fits);
    return fits ? "fingers off" : "blocked";
  }

  private passesEnd(
    heaps: readonly Heap[],
    base: number,
    toRight: boolean,
    row: readonly PlacedFinger[] | undefined,
  ): boolean {
    const [sheet, clamp] = [new BlockedHeights(), new BlockedHeights()];
    const { liftMm } = this.machine.brake;
    for (const heap of heaps) {
      for (const rise of [
        this.endOf(heap, base, toRight, undefined),
        row && this.endOf(heap, base, toRight, row),
      ]) {
        if (!rise) continue;
        sheet.addAll(rise.sheet);
        clamp.addAll(rise.clamp);
      }
      if (sheet.leastFree(0) + clamp.leastFree(0) > liftMm) return false;
    }
    return true;
  }

  /** Heights that a heap can't pass an end at: because of the brake without fingers, or of a row of them alone. */
  private endOf(heap: Heap, base: number, toRight: boolean, row: readonly PlacedFinger[] | undefined): Rise {
    const key = `${heap.key}|${base}|${toRight}|${row ? rowKey(row) : ""}`;
    const known = this.ends.get(key);
    if (known) return known;
    const { tooling, bodies } = this.bases[base]!;
    const { noseSetbackMm } = this.elements.seat;
    const all = row
      ? strokeBodies(this.machine, noseSetbackMm, { ...tooling, fingers: row }).filter(
          ({ member }) => member === "finger",
        )
      : bodies.filter(({ member }) => member !== "finger");
    const rise = endRise(heap.lying, all, this.machine.brake.liftMm, toRight);
    this.ends.set(key, rise);
    return rise;
  }

  private roomOf(heap: Heap, base: number): ElementRoom {
    const key = `${base}|${heap.key}`;
    const known = this.rooms.get(key);
    if (known) return known;
    const room = elementRoom(this.elements, this.machine, this.bases[base]!.bodies, heap.lying);
    this.rooms.set(key, room);
    return room;
  }

  private heapsOf(state: StrokeState, finished: boolean): Heap[] {
    const heaps = state.all.map(({ face, side, strips, faces }) => {
      // What lies clamped lies so before and after.
      const after = finished && side === "moving";
      return this.heap(`${face}:${state.made & state.plan.deciding[face]!}:${after}`, () =>
        [...strips, ...faces].map((shape) => lyingShape(shape, side, finished)),
      );
    });
    const zone = this.heap(`zone:${finished}`, () => {
      const { flat, bent } = this.elements.ownZone();
      return (finished ? bent : flat).map((shape) => lyingShape(shape, "clamped", finished));
    });
    return [...heaps, zone];
  }

  private heap(key: string, lying: () => readonly Lying[]): Heap {
    const known = this.heaps.get(key);
    if (known) return known;
    const heap = { key, lying: lying() };
    this.heaps.set(key, heap);
    return heap;
  }
}

function rowKey(row: readonly PlacedFinger[]): string {
  return row.map(({ fromMm, widthMm }) => `${fromMm},${widthMm}`).join(";");
}
