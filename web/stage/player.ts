/**
 * Plays the fold: the part goes in, the leaf swings through each step in turn and stops where metal meets metal; between two
 * steps the part is turned. Where less motion is wished for, nothing moves: each step's end stands for a while.
 */

export interface Reel {
  /** Steps in the order. */
  readonly count: number;
  readonly step: number;
  /** Where the present step's swing ends: reached angle in degrees. */
  readonly reachedDeg: number;
  /** Whether the present step stops short. */
  readonly stops: boolean;
}

/** What the player moves. */
export interface Hands {
  pull(deg: number): void;
  goTo(step: number): void;
  /** The part at a share of its way into the present step; `fresh` as a flat blank. */
  turn(share: number, fresh: boolean): void;
  changed(playing: boolean): void;
}

const DEG_PER_SECOND = 55;
const REST_MS = 500;
const TURN_MS = 1100;
/** How long a step's end stands where nothing moves. */
const STILL_MS = 1600;

export class Player {
  private frame = 0;
  private lastMs = 0;
  private restUntil = 0;
  private deg = 0;
  /** Share of the way into the step; null once the part is in. */
  private way: number | null = null;
  private fresh = false;
  private readonly reel: () => Reel;
  private readonly hands: Hands;

  constructor(reel: () => Reel, hands: Hands) {
    this.reel = reel;
    this.hands = hands;
  }

  get playing(): boolean {
    return this.frame !== 0;
  }

  /** Starts the present step from rest, or from `fromDeg`. */
  play(fromDeg: number): void {
    const { reachedDeg } = this.reel();
    if (isStill()) {
      this.hands.pull(reachedDeg);
      return;
    }
    this.deg = fromDeg >= reachedDeg - 0.1 ? 0 : fromDeg;
    this.way = null;
    this.start();
  }

  /** Plays the whole fold once, from the flat blank. */
  tell(): void {
    this.pause();
    this.hands.goTo(0);
    this.deg = 0;
    this.way = 0;
    this.fresh = true;
    this.start();
  }

  pause(): void {
    cancelAnimationFrame(this.frame);
    if (this.way !== null) this.hands.turn(1, false);
    this.way = null;
    if (this.frame === 0) return;
    this.frame = 0;
    this.hands.changed(false);
  }

  private start(): void {
    cancelAnimationFrame(this.frame);
    this.lastMs = performance.now();
    this.restUntil = 0;
    this.frame = requestAnimationFrame((now) => this.tick(now));
    this.hands.changed(true);
  }

  private tick(now: number): void {
    const passed = Math.min(now - this.lastMs, 100);
    this.lastMs = now;
    const { reachedDeg, stops, step, count } = this.reel();
    if (isStill() && this.deg < reachedDeg) {
      this.way = null;
      this.deg = reachedDeg;
      this.hands.pull(reachedDeg);
      this.restUntil = now + STILL_MS;
    } else if (this.way !== null) {
      this.way = Math.min(1, this.way + passed / TURN_MS);
      this.hands.turn(this.way, this.fresh);
      if (this.way === 1) this.way = null;
    } else if (this.deg < reachedDeg) {
      this.deg = Math.min(reachedDeg, this.deg + (passed / 1000) * DEG_PER_SECOND);
      this.hands.pull(this.deg);
      this.restUntil = now + REST_MS;
    } else if (stops || step + 1 >= count) {
      this.pause();
      return;
    } else if (now >= this.restUntil) {
      this.hands.goTo(step + 1);
      this.deg = 0;
      this.way = 0;
      this.fresh = false;
    }
    this.frame = requestAnimationFrame((later) => this.tick(later));
  }
}

const isStill = () => matchMedia("(prefers-reduced-motion: reduce)").matches;
