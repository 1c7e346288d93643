/**
 * The clearance of one side of one seated bend from the brake, for every set of bends formed on that side: the least over its
 * elements, each measured once for all sets that begin alike, and none where the rest of the sheet keeps off farther.
 */
import type { Beyond } from "../contact/beyond.ts";
import type { ClearanceChecks, ClearanceRecord } from "../contact/clearance.ts";
import type { Side } from "../contact/seatPieces.ts";
import { BARRED, type Beginnings } from "./beginnings.ts";
import { Pages } from "./pages.ts";
import { WidestFirst } from "./widestFirst.ts";

/** Deeper than any joint: all of the side is taken in. */
const DONE = 99;
/** After so many looks for the widest the bound at hand will do. */
const MOST_LOOKS = 400;

export class SideClearance {
  private readonly measured: ClearanceRecord = { mm: 0, partX: 0, partY: 0, otherX: 0, otherY: 0 };
  /** By beginning: what its elements keep; 0 not known, −1 for a clearance of 0. */
  private readonly pages = new Pages((beginnings) => new Float32Array(beginnings));
  private mostMm: number | undefined;

  constructor(
    private readonly side: Side,
    private readonly joints: number,
    private readonly kept: Beginnings,
    private readonly beyond: Beyond,
    private readonly measure: ClearanceChecks,
  ) {}

  /** Clearance with `formed` made; Infinity where nothing is measured. */
  of(formed: number): number {
    // Sets that begin alike have been measured so far: from the longest such beginning on.
    let k = this.joints;
    let mm = 0;
    for (; k >= 0 && mm === 0; k--) mm = this.known(k, formed & ((1 << k) - 1));
    k++;
    if (mm === 0) mm = this.ofLast(0, 0, Number.POSITIVE_INFINITY);
    else mm = Math.max(0, mm);
    for (;;) {
      if (k === this.joints || this.kept.isClearOn(k, formed & ((1 << k) - 1))) return mm;
      k++;
      mm = this.ofLast(k, formed & ((1 << k) - 1), mm);
    }
  }

  /** A clearance that no set of joints formed beats: of what may be formed the widest is gone on from first. */
  most(): number {
    this.mostMm ??= this.findMost();
    return this.mostMm;
  }

  private known(k: number, formed: number): number {
    return this.pages.of(k, formed)[this.pages.at(k, formed)]!;
  }

  private findMost(): number {
    const queue = new WidestFirst();
    const begin = (k: number, formed: number, before: number) => {
      if (this.kept.state(k, formed) === BARRED) return;
      const known = this.known(k, formed);
      const mm = known === 0 ? this.ofLast(k, formed, before) : Math.max(known, 0);
      const done = k === this.joints || this.kept.isClearOn(k, formed);
      queue.put((1 << k) | formed, mm, done ? DONE : k);
    };
    begin(0, 0, Number.POSITIVE_INFINITY);
    for (let looks = 0; queue.size > 0; looks++) {
      const { width, depth } = queue.first;
      if (depth === DONE || looks === MOST_LOOKS) return width;
      const node = queue.take();
      const formed = node & ~(1 << depth);
      begin(depth + 1, formed, width);
      begin(depth + 1, formed | (1 << depth), width);
    }
    return -1;
  }

  /** Clearance of the elements up to `k`, where that of those before is `before`. */
  private ofLast(k: number, formed: number, before: number): number {
    const { measured, beyond } = this;
    const page = this.pages.of(k, formed);
    const at = this.pages.at(k, formed);
    measured.mm = before;
    this.measure.withBrake(this.side, k, formed, measured);
    page[at] = measured.mm === 0 ? -1 : measured.mm;
    const mm = Math.max(0, page[at]!);
    // Flat k may wait for the next joint to be measured, so that what is beyond is taken from the flat before.
    if (k > 0 && k < this.joints) {
      beyond.after(k - 1, formed & ((1 << (k - 1)) - 1));
      if (beyond.leastClearance() >= mm) this.kept.keepClearOn(k, formed);
    }
    return mm;
  }
}
