/**
 * The memory that two threads of one search share: which sets are reached, what the partner found that can be made next, and
 * whose turn it is. The first thread gives out layer after layer; the partner says when it has looked at its share of one.
 */

/** Places of the few numbers by which the two wait for each other. */
const PARTNER_IS_THERE = 0;
/** Layers given out, and layers done. */
const GIVEN = 1;
const DONE = 2;
/** Goes up as long as the partner gets on. */
const BEAT = 3;
const PLACES = 4;

/** In place of a number of layers: no more will come. */
const OVER = -1;

/** A partner that has not got on for so long is not waited for any more. */
const PATIENCE_MS = 20_000;

export class Board {
  readonly reached: Uint8Array;
  /** Per set, the partner's share of what can be made next. */
  readonly withStart: Int32Array;
  readonly withEnd: Int32Array;
  private readonly turns: Int32Array;

  /** Shared memory for the sets of n bends. */
  static memoryFor(n: number): SharedArrayBuffer {
    return new SharedArrayBuffer(4 * PLACES + 9 * 2 ** n);
  }

  constructor(
    readonly memory: SharedArrayBuffer,
    private readonly patienceMs = PATIENCE_MS,
  ) {
    const sets = (memory.byteLength - 4 * PLACES) / 9;
    this.turns = new Int32Array(memory, 0, PLACES);
    this.withStart = new Int32Array(memory, 4 * PLACES, sets);
    this.withEnd = new Int32Array(memory, 4 * (PLACES + sets), sets);
    this.reached = new Uint8Array(memory, 4 * (PLACES + 2 * sets), sets);
  }

  /** Said by the partner when it comes and when it goes, whatever the reason. */
  partnerIsThere(isThere: boolean): void {
    Atomics.store(this.turns, PARTNER_IS_THERE, isThere ? 1 : 0);
    Atomics.notify(this.turns, DONE);
  }

  get hasPartner(): boolean {
    return Atomics.load(this.turns, PARTNER_IS_THERE) === 1;
  }

  /** Gives out the layer of `made` bends, whose sets are all marked as reached. */
  give(made: number): void {
    this.say(GIVEN, made + 1);
  }

  /** Ends the partner's work. */
  end(): void {
    this.say(GIVEN, OVER);
  }

  /** Waits until the partner has done the layer of `made` bends; whether it has, and not gone or come to a stop before. */
  partnerHasDone(made: number): boolean {
    const { turns } = this;
    for (;;) {
      const done = Atomics.load(turns, DONE);
      if (done > made) return true;
      if (!this.hasPartner) return false;
      const beat = Atomics.load(turns, BEAT);
      Atomics.wait(turns, DONE, done, this.patienceMs);
      const stands = Atomics.load(turns, DONE) === done && Atomics.load(turns, BEAT) === beat;
      if (stands) return false;
    }
  }

  /** Waits, as the partner, for a layer after that of `made` bends; undefined when the search is over. */
  layerAfter(made: number): number | undefined {
    const { turns } = this;
    for (;;) {
      const given = Atomics.load(turns, GIVEN);
      if (given === OVER) return undefined;
      if (given > made + 1) return given - 1;
      Atomics.wait(turns, GIVEN, given);
    }
  }

  /** Said by the partner when it has got on. */
  beat(): void {
    Atomics.add(this.turns, BEAT, 1);
  }

  /** Said by the partner when it has looked at its share of the layer of `made` bends. */
  done(made: number): void {
    this.say(DONE, made + 1);
  }

  private say(place: number, value: number): void {
    Atomics.store(this.turns, place, value);
    Atomics.notify(this.turns, place);
  }
}
