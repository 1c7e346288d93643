/**
 * Where every beginning of one side reaches, as seen from the pivot: for telling quickly that the two sides stay apart.
 * Kept in 65,534 steps of half a turn or of the side's length, each rounded to be safe on the side that asks for the exact
 * check; what lies in the run, low over bed or leaf, counts by the height of the run alone.
 */
import type { Side } from "../contact/element.ts";
import type { SideChecks } from "../contact/sideChecks.ts";
import { Pages } from "./pages.ts";
import { FLAT_AT_BEND } from "./sidePath.ts";

/** Where each figure of a beginning stands, counted from its first. */
const ANGLE = 0;
const NEAR = 1;
/** Direction in which a run of the other side is seen out at NEAR. */
const RISE = 2;
/** Of the last element alone: its distances from the pivot and its direction. */
const LAST_NEAR = 3;
const LAST_FAR = 4;
const LAST_ANGLE = 5;
const FIGURES = 6;

/** No distance at all, or in place of the last element's direction: it lies in the run. */
const NONE = 0xffff;
const MOST_STEPS = NONE - 1;
/** Past half a turn a side is past all that the other one may leave free. */
const RAD_PER_STEP = (1.001 * Math.PI) / MOST_STEPS;
/** Rounding of the figures and of the steps themselves, in steps. */
const SPARE_STEPS = 0.01;

/** In place of the last element's direction: it lies in the run. */
const IN_RUN = -1;

export class SideReach {
  /** The last element of what `lastOf` was asked: distances from the pivot, direction; −1 where it lies in the run. */
  lastNear = 0;
  lastFar = 0;
  lastAngle = 0;
  private readonly pages: Pages<Uint16Array>;
  private readonly moving: boolean;
  /** How far this side slides inward. */
  readonly slideMm: number;
  /** Height of a run's upper face over the pivot. */
  private readonly runTopMm: number;
  private readonly mmPerStep: number;

  /** `mostMm`: about how far from the pivot anything of this side is at most; what is farther is safe, but coarse. */
  constructor(side: Side, { pieces, seat }: SideChecks, mostMm: number) {
    this.moving = side === "moving";
    const { joints } = pieces.chainOf(side);
    this.pages = new Pages(joints, (beginnings) => new Uint16Array(FIGURES * beginnings));
    this.slideMm = this.moving ? pieces.turning.maxInward : 0;
    this.runTopMm = Math.max(0, seat.thicknessMm - seat.pivot.y);
    this.mmPerStep = mostMm / MOST_STEPS;
  }

  /** Moving side: largest direction from the pivot at rest, in radians from the leaf. Clamped: smallest one. */
  angle(path: number): number {
    return this.steps(path, ANGLE) * RAD_PER_STEP;
  }

  /** Least distance from the pivot of all that lies beyond the run along bed or leaf; Infinity where nothing does. */
  near(path: number): number {
    return this.mmOf(this.steps(path, NEAR));
  }

  /** Direction in which a run of the other side is seen so far out. */
  rise(path: number): number {
    return this.steps(path, RISE) * RAD_PER_STEP;
  }

  /** Direction in which a run of sheet is seen, above bed or leaf, where it may meet what this side has so far out. */
  runRises(nearMm: number): number {
    const from = nearMm - this.slideMm;
    return from > this.runTopMm ? Math.asin(this.runTopMm / from) : Math.PI / 2;
  }

  /** How far this side reaches into the sector that the sweep leaves free, with what that asks of the other's run. */
  reachInto(path: number): number {
    const angle = this.angle(path);
    return (this.moving ? angle : Math.PI - angle) + this.rise(path);
  }

  /** Looks up the last of the elements of a beginning, into lastNear, lastFar and lastAngle. */
  lastOf(path: number): void {
    const steps = this.pages.of(path);
    const at = FIGURES * this.pages.at(path);
    this.lastNear = steps[at + LAST_NEAR]! * this.mmPerStep;
    this.lastFar = this.mmOf(steps[at + LAST_FAR]!);
    const angle = steps[at + LAST_ANGLE]!;
    this.lastAngle = angle === NONE ? IN_RUN : angle * RAD_PER_STEP;
  }

  /** Takes in the last element: its distances from the pivot and its direction, which count for nothing where it lies in the run. */
  keep(path: number, inRun: boolean, nearMm: number, farMm: number, directionRad: number): void {
    const steps = this.pages.of(path);
    const at = FIGURES * this.pages.at(path);
    let rise = 0;
    let nearBefore = NONE;
    if (path === FLAT_AT_BEND) {
      steps[at + ANGLE] = this.moving ? 0 : Math.floor(Math.PI / RAD_PER_STEP - SPARE_STEPS);
    } else {
      const before = path >>> 1;
      const page = this.pages.of(before);
      const from = FIGURES * this.pages.at(before);
      steps[at + ANGLE] = page[from + ANGLE]!;
      nearBefore = page[from + NEAR]!;
      rise = page[from + RISE]!;
    }
    steps[at + NEAR] = nearBefore;
    if (!inRun) this.take(steps, at, nearMm, directionRad);
    steps[at + LAST_NEAR] = inRun ? 0 : this.nearSteps(nearMm);
    steps[at + LAST_FAR] = inRun ? NONE : this.farSteps(farMm);
    steps[at + LAST_ANGLE] = inRun ? NONE : this.angleSteps(directionRad);
    // Most elements lie no nearer than those before.
    if (path !== FLAT_AT_BEND && steps[at + NEAR] === nearBefore) steps[at + RISE] = rise;
    else this.keepRise(steps, at);
  }

  /** Takes in all that may come beyond. */
  widen(path: number, nearMm: number, directionRad: number): void {
    const steps = this.pages.of(path);
    const at = FIGURES * this.pages.at(path);
    this.take(steps, at, nearMm, directionRad);
    this.keepRise(steps, at);
  }

  private take(steps: Uint16Array, at: number, nearMm: number, directionRad: number): void {
    const angle = this.angleSteps(directionRad);
    steps[at + ANGLE] = this.moving
      ? Math.max(steps[at + ANGLE]!, angle)
      : Math.min(steps[at + ANGLE]!, angle);
    steps[at + NEAR] = Math.min(steps[at + NEAR]!, this.nearSteps(nearMm));
  }

  private keepRise(steps: Uint16Array, at: number): void {
    steps[at + RISE] = Math.ceil(this.runRises(this.mmOf(steps[at + NEAR]!)) / RAD_PER_STEP + SPARE_STEPS);
  }

  private steps(path: number, figure: number): number {
    return this.pages.of(path)[FIGURES * this.pages.at(path) + figure]!;
  }

  private mmOf(steps: number): number {
    return steps === NONE ? Number.POSITIVE_INFINITY : steps * this.mmPerStep;
  }

  private angleSteps(directionRad: number): number {
    const steps = directionRad / RAD_PER_STEP;
    const safe = this.moving ? Math.ceil(steps + SPARE_STEPS) : Math.floor(steps - SPARE_STEPS);
    return Math.max(0, Math.min(MOST_STEPS, safe));
  }

  private nearSteps(mm: number): number {
    return Math.max(0, Math.min(MOST_STEPS, Math.floor(mm / this.mmPerStep - SPARE_STEPS)));
  }

  private farSteps(mm: number): number {
    return Math.min(NONE, Math.ceil(mm / this.mmPerStep + SPARE_STEPS));
  }
}
