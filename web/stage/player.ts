/**
 * Plays the fold: the leaf swings through each step in turn and stops where metal meets metal. Where less motion is
 * wished for, the leaf is set to the end of its swing at once.
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

const DEG_PER_SECOND = 55;
const REST_MS = 500;

export class Player {
  private frame = 0;
  private lastMs = 0;
  private restUntil = 0;
  private deg = 0;
  private readonly reel: () => Reel;
  private readonly pull: (deg: number) => void;
  private readonly goTo: (step: number) => void;
  private readonly onChange: (playing: boolean) => void;

  constructor(
    reel: () => Reel,
    pull: (deg: number) => void,
    goTo: (step: number) => void,
    onChange: (playing: boolean) => void,
  ) {
    this.reel = reel;
    this.pull = pull;
    this.goTo = goTo;
    this.onChange = onChange;
  }

  get playing(): boolean {
    return this.frame !== 0;
  }

  /** Starts the present step from rest, or from `fromDeg`. */
  play(fromDeg: number): void {
    const { reachedDeg } = this.reel();
    if (matchMedia("(prefers-reduced-motion: reduce)").matches) {
      this.pull(reachedDeg);
      return;
    }
    this.deg = fromDeg >= reachedDeg - 0.1 ? 0 : fromDeg;
    this.lastMs = performance.now();
    this.restUntil = 0;
    this.frame = requestAnimationFrame((now) => this.tick(now));
    this.onChange(true);
  }

  pause(): void {
    cancelAnimationFrame(this.frame);
    if (this.frame === 0) return;
    this.frame = 0;
    this.onChange(false);
  }

  private tick(now: number): void {
    const passed = Math.min(now - this.lastMs, 100);
    this.lastMs = now;
    const { reachedDeg, stops, step, count } = this.reel();
    if (this.deg < reachedDeg) {
      this.deg = Math.min(reachedDeg, this.deg + (passed / 1000) * DEG_PER_SECOND);
      this.pull(this.deg);
      this.restUntil = now + REST_MS;
    } else if (stops || step + 1 >= count) {
      this.pause();
      return;
    } else if (now >= this.restUntil) {
      this.goTo(step + 1);
      this.deg = 0;
    }
    this.frame = requestAnimationFrame((later) => this.tick(later));
  }
}
