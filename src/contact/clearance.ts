/**
 * Clearance of one element of the sheet over a bend's sweep: distance to the brake and to the part's other side,
 * leaving out what touches by design (src/model.md, section 6): runs lying on bed, leaf and under the clamp; on the body that
 * carries a run, an up-turned bend at the run's end with the flat right beyond it; the bend zone. True faces, no inset.
 */
import { AT_REST, type Swing } from "../motion/swing.ts";
import { FLAT, JOINT, type Look, type Side, WHOLE } from "./element.ts";
import type { Features } from "./features.ts";
import { LeastDistanceSearch } from "./leastDistance.ts";
import type { Machine } from "./machine.ts";
import type { SeatPieces } from "./seatPieces.ts";
import type { SideChecks } from "./sideChecks.ts";

/** The least clearance so far; points from the leaf's pivot in the section frame. */
export interface ClearanceRecord {
  mm: number;
  partX: number;
  partY: number;
  otherX: number;
  otherY: number;
  /** What the part was measured to: a body of the brake as it was laid out, or a piece of the part's other side. */
  other?: Features;
}

export function noClearance(): ClearanceRecord {
  return { mm: Infinity, partX: 0, partY: 0, otherX: 0, otherY: 0 };
}

export class ClearanceChecks {
  private readonly pieces: SeatPieces;
  private readonly machine: Machine;
  private readonly a: Features;
  private readonly search = new LeastDistanceSearch();

  constructor(private readonly checks: SideChecks) {
    this.pieces = checks.pieces;
    this.machine = checks.machine;
    this.a = this.machine.laidOut.clearance;
  }

  /**
   * Lowers `record` to element k's clearance from the brake. What lies on the body that carries the run can depend on
   * the next joint: then flat k is left to the element after it (`withSupport`), or measured here when it is the last.
   */
  withBrake(side: Side, k: number, formed: number, record: ClearanceRecord): void {
    const parts = this.offRun(side, k, formed);
    const { machine, pieces, checks } = this;
    const swing = side === "moving" ? pieces.turning : AT_REST;
    if (parts) {
      this.fill(this.a, side, k, formed, parts);
      for (const body of checks.clamp) this.measure(this.a, body.features, swing, false, record);
      if (side === "moving") this.measure(this.a, machine.bed.features, swing, false, record);
      else this.measure(machine.leaf.features, this.a, pieces.leafTurning, true, record);
    }
    if (machine.frame.length > 0) {
      this.fill(this.a, side, k, formed, WHOLE);
      for (const body of machine.frame) this.measure(this.a, body.features, swing, false, record);
      if (side === "moving") {
        for (const body of machine.frame) this.measureCutStart(k, formed, body.features, record);
      }
    }
    this.withSupport(side, k, formed, record);
  }

  /**
   * Lowers `record` to the distance that the two sides keep, the two runs left out. Every element is laid out once: on
   * and off the run apart, as either pairs with other pieces.
   */
  betweenSides(formedMoving: number, formedClamped: number, record: ClearanceRecord): void {
    const { pieces, a } = this;
    const { seat, turning } = pieces;
    const { onRun, offRun } = this.layClamped(formedClamped);
    for (let m = 0; m <= seat.movingChain.joints; m++) {
      if (offRun.length > 0) {
        this.fill(a, "moving", m, formedMoving, WHOLE);
        for (let i = 0; i < offRun.length; i++) this.measure(a, offRun[i]!, turning, false, record);
        for (const piece of offRun) this.measureCutStart(m, formedMoving, piece, record);
      }
      const movingOff = this.offRun("moving", m, formedMoving);
      if (!movingOff || onRun.length === 0) continue;
      this.fill(a, "moving", m, formedMoving, movingOff);
      for (let i = 0; i < onRun.length; i++) this.measure(a, onRun[i]!, turning, false, record);
    }
  }

  private layClamped(formed: number): { readonly onRun: Features[]; readonly offRun: Features[] } {
    const onRun: Features[] = [];
    const offRun: Features[] = [];
    let used = 0;
    for (let c = 0; c <= this.pieces.seat.clampedChain.joints; c++) {
      const off = this.offRun("clamped", c, formed);
      for (const [parts, kept] of [
        [off, offRun],
        [WHOLE & ~off, onRun],
      ] as const) {
        if (!parts) continue;
        const F = this.machine.laidOutPiece(used++);
        this.fill(F, "clamped", c, formed, parts);
        kept.push(F);
      }
    }
    return { onRun, offRun };
  }

  /** Where the bend zone has grown past the moving flat's start, the flat starts at the zone's end and is measured there. */
  private measureCutStart(k: number, formed: number, other: Features, record: ClearanceRecord): void {
    for (const swing of this.pieces.zoneEnd(this.a, k, formed))
      this.measure(this.a, other, swing, false, record);
  }

  /** Clearance of element k from the body that carries its side's run: the leaf, or the bed. */
  private withSupport(side: Side, k: number, formed: number, record: ClearanceRecord): void {
    const chain = this.pieces.chainOf(side);
    if (k > 0) {
      const before = this.flatOffSupport(side, k - 1, formed);
      // The flat before waited to see whether this joint leads back into the run's plane.
      if (before && this.mayReturn(side, k - 1, formed) && !this.returnsAt(side, k - 1, formed)) {
        this.measureSupport(side, k - 1, formed, FLAT, record);
      }
    }
    let parts = 0;
    if (k > 0 && this.jointOffSupport(side, k, formed)) parts |= JOINT;
    const waits = k < chain.joints && this.mayReturn(side, k, formed);
    if (!waits && this.flatOffSupport(side, k, formed)) parts |= FLAT;
    if (parts) this.measureSupport(side, k, formed, parts, record);
  }

  private measureSupport(
    side: Side,
    k: number,
    formed: number,
    parts: number,
    record: ClearanceRecord,
  ): void {
    const { machine, pieces, a } = this;
    this.fill(a, side, k, formed, parts);
    if (side === "clamped") {
      this.measure(a, machine.bed.features, AT_REST, false, record);
      return;
    }
    this.measure(a, machine.leaf.features, pieces.sliding, false, record);
    if (!pieces.leafRising) return;
    pieces.begunElement(a, k, formed, measuring(parts));
    this.measure(machine.leaf.features, a, pieces.leafRising, true, record);
  }

  /** Which parts of element k are not in the run: a formed joint never is. */
  private offRun(side: Side, k: number, formed: number): number {
    const flat = this.flatInRun(side, k, formed) ? 0 : FLAT;
    if (k === 0) return flat;
    const formedJoint = (formed >>> (k - 1)) & 1;
    return formedJoint || !this.flatInRun(side, k - 1, formed) ? flat | JOINT : flat;
  }

  private jointOffSupport(side: Side, k: number, formed: number): boolean {
    const before = this.flatInRun(side, k - 1, formed);
    if (!((formed >>> (k - 1)) & 1)) return !before;
    const up = this.pieces.chainOf(side).turn[k - 1]! > 0;
    return !(up && (before || this.flatInRun(side, k, formed)));
  }

  private flatOffSupport(side: Side, k: number, formed: number): boolean {
    if (this.flatInRun(side, k, formed)) return false;
    if (k === 0 || !((formed >>> (k - 1)) & 1)) return true;
    return !(this.pieces.chainOf(side).turn[k - 1]! > 0 && this.flatInRun(side, k - 1, formed));
  }

  private flatInRun(side: Side, k: number, formed: number): boolean {
    if (this.checks.inRun(side, k, formed)) return true;
    const strip = this.pieces.stripOf(side);
    strip.walkTo(k, formed);
    return strip.inFirstPlane();
  }

  /** Whether forming the joint after flat k would bring the sheet back up into the run's plane. */
  private mayReturn(side: Side, k: number, formed: number): boolean {
    const strip = this.pieces.stripOf(side);
    if (strip.chain.turn[k]! < 0 || this.checks.inRun(side, k, formed)) return false;
    strip.walkTo(k, formed);
    strip.turnJoint(k);
    return strip.inFirstPlane();
  }

  private returnsAt(side: Side, k: number, formed: number): boolean {
    return ((formed >>> k) & 1) === 1 && this.mayReturn(side, k, formed);
  }

  private fill(F: Features, side: Side, k: number, formed: number, parts: number): void {
    this.pieces.element(F, { side, k, formed }, measuring(parts));
  }

  private measure(
    A: Features,
    B: Features,
    swing: Swing,
    partIsFixed: boolean,
    record: ClearanceRecord,
  ): void {
    const found = this.search.find(A, B, swing, record.mm);
    if (!found) return;
    record.mm = found.mm;
    let [c, s] = [1, 0];
    // Measured in the frame of the leaf: turn both points with it.
    if (swing === this.pieces.sliding) [c, s] = [Math.cos(found.phiRad), Math.sin(found.phiRad)];
    const [mx, my] = [c * found.movingX - s * found.movingY, s * found.movingX + c * found.movingY];
    const [fx, fy] = [c * found.fixedX - s * found.fixedY, s * found.fixedX + c * found.fixedY];
    [record.partX, record.partY] = partIsFixed ? [fx, fy] : [mx, my];
    [record.otherX, record.otherY] = partIsFixed ? [mx, my] : [fx, fy];
    record.other = partIsFixed ? A : B;
  }
}

/** True faces, each part closed by itself. */
function measuring(parts: number): Look {
  return { parts, insetMm: 0, openCorners: true };
}
