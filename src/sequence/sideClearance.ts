/**
 * The clearance of one side of one seated bend from the brake, for every set of bends formed on that side: the least over its
 * elements, each measured once for all sets that begin alike, and none where the rest of the sheet keeps off farther.
 */
import type { Beyond } from "../contact/beyond.ts";
import type { ClearanceChecks, ClearanceRecord } from "../contact/clearance.ts";
import type { Side } from "../contact/element.ts";
import { BARRED, type Beginnings } from "./beginnings.ts";
import { Pages } from "./pages.ts";
import { FLAT_AT_BEND, formedOn, jointsOf } from "./sidePath.ts";
import { WidestFirst } from "./widestFirst.ts";

/** Deeper than any joint: all of the side is taken in. */
const DONE = 99;
/** After so many looks for the widest the bound at hand will do. */
const MOST_LOOKS = 400;

export class SideClearance {
  private readonly measured: ClearanceRecord = { mm: 0, partX: 0, partY: 0, otherX: 0, otherY: 0 };
  /** By beginning: what its elements keep; 0 not known, −1 for a clearance of 0. */
  private readonly pages: Pages<Float32Array>;
  private mostMm: number | undefined;

  constructor(
    private readonly side: Side,
    private readonly joints: number,
    private readonly kept: Beginnings,
    private readonly beyond: Beyond,
    private readonly measure: ClearanceChecks,
  ) {
    this.pages = new Pages(joints, (beginnings) => new Float32Array(beginnings));
  }

  /** Clearance of a whole side; Infinity where nothing is measured. */
  of(path: number): number {
    // Sets that begin alike have been measured so far: from the longest such beginning on.
    let beyond = 0;
    let mm = this.known(path);
    for (; mm === 0 && path >>> beyond > FLAT_AT_BEND; mm = this.known(path >>> beyond)) beyond++;
    if (mm === 0) mm = this.ofLast(FLAT_AT_BEND, Number.POSITIVE_INFINITY);
    else mm = Math.max(0, mm);
    for (;;) {
      if (beyond === 0 || this.kept.isClearOn(path >>> beyond)) return mm;
      beyond--;
      mm = this.ofLast(path >>> beyond, mm);
    }
  }

  /** A clearance that no set of joints formed beats: of what may be formed the widest is gone on from first. */
  most(): number {
    this.mostMm ??= this.findMost();
    return this.mostMm;
  }

  private known(path: number): number {
    return this.pages.of(path)[this.pages.at(path)]!;
  }

  private findMost(): number {
    const queue = new WidestFirst();
    const begin = (path: number, before: number) => {
      if (this.kept.state(path) === BARRED) return;
      const known = this.known(path);
      const mm = known === 0 ? this.ofLast(path, before) : Math.max(known, 0);
      const k = jointsOf(path);
      queue.put(path, mm, k === this.joints || this.kept.isClearOn(path) ? DONE : k);
    };
    begin(FLAT_AT_BEND, Number.POSITIVE_INFINITY);
    for (let looks = 0; queue.size > 0; looks++) {
      const { width, depth } = queue.first;
      if (depth === DONE || looks === MOST_LOOKS) return width;
      const path = queue.take();
      begin(2 * path, width);
      begin(2 * path + 1, width);
    }
    return -1;
  }

  /** Clearance of a beginning, where that of the elements before its last is `before`. */
  private ofLast(path: number, before: number): number {
    const { measured, beyond } = this;
    const page = this.pages.of(path);
    const at = this.pages.at(path);
    const [k, formed] = [jointsOf(path), formedOn(path)];
    measured.mm = before;
    this.measure.withBrake(this.side, k, formed, measured);
    page[at] = measured.mm === 0 ? -1 : measured.mm;
    const mm = Math.max(0, page[at]!);
    // The last flat may wait for the next joint to be measured, so that what is beyond is taken from the flat before.
    if (k > 0 && k < this.joints) {
      beyond.after(k - 1, formed & ((1 << (k - 1)) - 1));
      if (beyond.leastClearance() >= mm) this.kept.keepClearOn(path);
    }
    return mm;
  }
}
