/**
 * One side of a seated bend, joint by joint from the bend outward: whether it meets the brake, what it blocks for loading, where it
 * reaches as seen from the pivot, and how clear it stays. What one more element adds is worked out once for all that begin alike.
 */
import type { Beyond } from "../contact/beyond.ts";
import type { ClearanceChecks, ClearanceRecord } from "../contact/clearance.ts";
import { FACE_INSET_MM } from "../contact/gaps.ts";
import { isOpen, type LoadingChecks, openRoom, type Room } from "../contact/loading.ts";
import type { Side } from "../contact/seatPieces.ts";
import { leadingDirection, trailingDirection } from "../contact/sector.ts";
import { noContact, type SideChecks, WHOLE } from "../contact/sideChecks.ts";

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
}

/** Where an element lies: distances and direction from the pivot at rest; undefined in the run along bed or leaf. */
interface Place {
  readonly nearMm: number;
  readonly farMm: number;
  readonly directionRad: number;
}

const OPEN: Room = openRoom();

/** The flats of a side up to number k, with the joints between them as in `formed` (joint 0, nearest to the bend, in bit 0). */
export class Beginning {
  /** It meets the brake, or leaves no way in or out. */
  readonly barred: boolean;
  /** Whatever comes beyond keeps off the brake and in this side's sector. */
  readonly freeOn: boolean;
  /** What it blocks before the bend is made, and after. */
  readonly load: Room;
  readonly unload: Room;
  /** Moving side: largest direction from the pivot at rest; clamped: smallest one. Only of what lies off the run. */
  angleRad: number;
  /** Least distance from the pivot of what lies off the run. */
  nearMm: number;
  /** Its number among the beginnings of the seat. */
  readonly number: number;
  private lastPlace: Place | undefined | "unknown" = "unknown";
  private mm: number | undefined;
  private wide: boolean | undefined;

  constructor(
    private readonly setting: SideSetting,
    readonly k: number,
    readonly formed: number,
    readonly before: Beginning | undefined,
    numbers: { next: number },
  ) {
    this.number = numbers.next++;
    const { side } = setting;
    this.angleRad = before?.angleRad ?? (side === "moving" ? 0 : Math.PI);
    this.nearMm = before?.nearMm ?? Number.POSITIVE_INFINITY;
    this.load = before?.load ?? OPEN;
    this.unload = before?.unload ?? OPEN;
    this.barred = this.freeOn = before?.freeOn ?? false;
    if (this.freeOn) {
      this.barred = false;
      return;
    }
    this.barred = this.meetsBrake();
    if (this.barred) return;
    if (this.place) this.widen(this.place.nearMm, this.place.directionRad);
    if (setting.checks.machine.brake.openEnds) this.barred = this.liesOnLeaf();
    else {
      this.load = this.roomWith(this.load, false);
      this.unload = side === "moving" ? this.roomWith(this.unload, true) : this.load;
      this.barred = !setting.loading.lets(this.load) || !setting.loading.lets(this.unload);
    }
    this.freeOn = !this.barred && k < setting.joints && this.restIsFree();
  }

  /** Where element k lies. */
  get place(): Place | undefined {
    if (this.lastPlace === "unknown") this.lastPlace = this.placeOfLast();
    return this.lastPlace;
  }

  /** Direction in which a run of the other side is seen where this side may be met. */
  get riseRad(): number {
    return this.runRises(this.nearMm);
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
    const record: ClearanceRecord = {
      mm: Number.POSITIVE_INFINITY,
      partX: 0,
      partY: 0,
      otherX: 0,
      otherY: 0,
    };
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
    checks.pieces.element(a, side, k, formed, WHOLE, FACE_INSET_MM, false);
    const directionRad =
      side === "moving" ? leadingDirection(a, slideMm, FACE_INSET_MM) : trailingDirection(a, FACE_INSET_MM);
    return { nearMm: a.near - FACE_INSET_MM, farMm: a.far + FACE_INSET_MM, directionRad };
  }

  private widen(nearMm: number, directionRad: number): void {
    const wider = this.setting.side === "moving" ? Math.max : Math.min;
    this.angleRad = wider(this.angleRad, directionRad);
    this.nearMm = Math.min(this.nearMm, nearMm);
  }

  /** Sliding in along the bend line is always left where ends are open: then only the leaf gone back to rest may be in the way. */
  private liesOnLeaf(): boolean {
    const { side, checks, loading } = this.setting;
    if (side === "clamped") return false;
    checks.pieces.element(checks.a, side, this.k, this.formed, WHOLE, FACE_INSET_MM, false);
    return loading.finishedOverlapsLeaf(checks.a, this.k, this.formed);
  }

  private roomWith(before: Room, finished: boolean): Room {
    const room = openRoom();
    this.setting.loading.element(this.setting.side, this.k, this.formed, finished, room);
    if (isOpen(room)) return before;
    room.overlaps ||= before.overlaps;
    room.sheet.addAll(before.sheet);
    room.clamp.addAll(before.clamp);
    return room;
  }

  private restIsFree(): boolean {
    const { beyond, side, fairRad, checks } = this.setting;
    beyond.after(this.k, this.formed);
    const moving = side === "moving";
    const bound = moving ? Math.max(this.angleRad, fairRad) : Math.min(this.angleRad, fairRad);
    // A direction that is not known is not a number: no comparison holds.
    if (!(moving ? beyond.direction <= bound : beyond.direction >= bound)) return false;
    if (!beyond.keepsOff()) return false;
    const open = checks.machine.brake.openEnds || (beyond.letsPass(false) && beyond.letsPass(true));
    if (open) this.widen(beyond.near, beyond.direction);
    return open;
  }
}
