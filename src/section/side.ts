/**
 * One side of a seated bend, joint by joint from the bend outward: whether it meets the brake, what it blocks for loading, where it
 * reaches as seen from the pivot, and how clear it stays. What one more element adds is worked out once for all that begin alike.
 */
import type { Beyond } from "../contact/beyond.ts";
import { type ClearanceChecks, noClearance } from "../contact/clearance.ts";
import { FOR_CONTACT, type Side } from "../contact/element.ts";
import { FACE_INSET_MM } from "../contact/gaps.ts";
import { isOpen, type LoadingChecks, openRoom, type Room } from "../contact/loading.ts";
import { leadingDirection, trailingDirection } from "../contact/sector.ts";
import { noContact, type SideChecks } from "../contact/sideChecks.ts";
import { Told } from "../order/shared.ts";

/** The checks of one side. */
export interface SideSetting {
  readonly side: Side;
  readonly joints: number;
  readonly checks: SideChecks;
  readonly loading: LoadingChecks;
  readonly measure: ClearanceChecks;
  readonly beyond: Beyond;
  /** How far the side slides inward at most, and the height of a run's upper face over the pivot. */
  readonly slideMm: number;
  readonly runTopMm: number;
  /** The sector that is this side's own to fill: half of what the sweep leaves between the two sides. */
  readonly fairRad: number;
  /** Numbers the beginnings of the seat. */
  readonly count: () => number;
}

/** Where an element lies: distances and direction from the pivot at rest; undefined in the run along bed or leaf. */
interface Place {
  readonly nearMm: number;
  readonly farMm: number;
  readonly directionRad: number;
}

/** The flats of a side up to number k, with the joints between them as in `formed` (joint 0, nearest to the bend, in bit 0). */
export class Beginning extends Told<Beginning> {
  readonly number: number;
  /** It meets the brake, or leaves no way in or out. */
  readonly barred: boolean;
  /** It is barred, or whatever comes beyond keeps off the brake and in this side's sector. */
  readonly decides: boolean;
  /** What it blocks before the bend is made, and after; undefined where nothing. */
  readonly load: Room | undefined;
  readonly unload: Room | undefined;
  /** Moving side: largest direction from the pivot at rest; clamped: smallest one. Only of what lies off the run. */
  readonly angleRad: number;
  /** Least distance from the pivot of what lies off the run. */
  readonly nearMm: number;
  /** Direction in which a run of the other side is seen where this side may be met. */
  readonly riseRad: number;
  private lastPlace: Place | undefined | "unknown" = "unknown";
  private mm: number | undefined;
  private wide: boolean | undefined;

  constructor(
    private readonly setting: SideSetting,
    readonly k = 0,
    readonly formed = 0,
    readonly before?: Beginning,
  ) {
    super();
    const { side, loading, beyond, joints } = setting;
    const moving = side === "moving";
    const wider = moving ? Math.max : Math.min;
    this.number = setting.count();
    let angleRad = before?.angleRad ?? (moving ? 0 : Math.PI);
    let nearMm = before?.nearMm ?? Number.POSITIVE_INFINITY;
    this.load = before?.load;
    this.unload = before?.unload;
    this.barred = false;
    this.decides = before?.decides === true;
    if (!this.decides) {
      this.barred = this.meetsBrake();
      if (!this.barred && this.place) {
        angleRad = wider(angleRad, this.place.directionRad);
        nearMm = Math.min(nearMm, this.place.nearMm);
      }
      if (!this.barred && setting.checks.machine.brake.openEnds) this.barred = this.liesOnLeaf();
      else if (!this.barred) {
        this.load = this.roomWith(before?.load, false);
        this.unload = moving ? this.roomWith(before?.unload, true) : this.load;
        this.barred = [this.load, this.unload].some((room) => room && !loading.lets(room));
      }
      this.decides = this.barred;
      if (!this.barred && k < joints && this.restIsFree(angleRad)) {
        this.decides = true;
        angleRad = wider(angleRad, beyond.direction);
        nearMm = Math.min(nearMm, beyond.near);
      }
    }
    this.angleRad = angleRad;
    this.nearMm = nearMm;
    this.riseRad = this.runRises(nearMm);
  }

  protected next(made: boolean): Beginning {
    return new Beginning(this.setting, this.k + 1, this.formed | (Number(made) << this.k), this);
  }

  /** Where element k lies. */
  get place(): Place | undefined {
    if (this.lastPlace === "unknown") this.lastPlace = this.placeOfLast();
    return this.lastPlace;
  }

  /** Direction in which a run of sheet is seen, above bed or leaf, where it may meet what this side has so far out. */
  runRises(nearMm: number): number {
    const { slideMm, runTopMm } = this.setting;
    const from = nearMm - slideMm;
    return from > runTopMm ? Math.asin(runTopMm / from) : Math.PI / 2;
  }

  /** Clearance from the brake; Infinity where nothing is measured. */
  get clearanceMm(): number {
    if (this.mm !== undefined) return this.mm;
    const { before, setting } = this;
    const record = noClearance();
    if (before) record.mm = before.clearanceMm;
    setting.measure.withBrake(setting.side, this.k, this.formed, record);
    this.mm = record.mm;
    return record.mm;
  }

  /** Whether what comes beyond can't lower the clearance. */
  get isClearOn(): boolean {
    this.wide ??= this.restIsWide();
    return this.wide;
  }

  private restIsWide(): boolean {
    const { k, formed, before, setting } = this;
    if (before?.isClearOn) return true;
    // The last flat may wait for the next joint to be measured, so that what is beyond is taken from the flat before.
    if (k === 0 || k === setting.joints) return false;
    setting.beyond.after(k - 1, formed & ((1 << (k - 1)) - 1));
    return setting.beyond.leastClearance() >= this.clearanceMm;
  }

  private meetsBrake(): boolean {
    const { checks, side } = this.setting;
    const record = noContact();
    checks.withBrake(side, this.k, this.formed, record);
    return record.phiRad < Number.POSITIVE_INFINITY;
  }

  private placeOfLast(): Place | undefined {
    const { k, formed, setting } = this;
    const { checks, side, slideMm } = setting;
    if (checks.inRun(side, k, formed)) return undefined;
    const { a } = checks;
    checks.pieces.element(a, { side, k, formed }, FOR_CONTACT);
    const directionRad =
      side === "moving" ? leadingDirection(a, slideMm, FACE_INSET_MM) : trailingDirection(a, FACE_INSET_MM);
    return { nearMm: a.near - FACE_INSET_MM, farMm: a.far + FACE_INSET_MM, directionRad };
  }

  /** Sliding in along the bend line is always left where ends are open: then only the leaf gone back to rest may be in the way. */
  private liesOnLeaf(): boolean {
    const { side, checks, loading } = this.setting;
    if (side === "clamped") return false;
    checks.pieces.element(checks.a, { side, k: this.k, formed: this.formed }, FOR_CONTACT);
    return loading.finishedOverlapsLeaf(checks.a, this.k, this.formed);
  }

  private roomWith(before: Room | undefined, finished: boolean): Room | undefined {
    const room = openRoom();
    this.setting.loading.element(this.setting.side, this.k, this.formed, finished, room);
    if (isOpen(room)) return before;
    if (!before) return room;
    room.overlaps ||= before.overlaps;
    room.sheet.addAll(before.sheet);
    room.clamp.addAll(before.clamp);
    return room;
  }

  private restIsFree(angleRad: number): boolean {
    const { beyond, side, fairRad, checks } = this.setting;
    beyond.after(this.k, this.formed);
    const { direction } = beyond;
    // A direction that is not known is not a number: no comparison holds.
    const isApart =
      side === "moving" ? direction <= Math.max(angleRad, fairRad) : direction >= Math.min(angleRad, fairRad);
    if (!isApart || !beyond.keepsOff()) return false;
    return checks.machine.brake.openEnds || (beyond.letsPass(false) && beyond.letsPass(true));
  }
}
