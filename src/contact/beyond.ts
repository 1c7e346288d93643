/**
 * All that may lie beyond a flat of one side, whichever of the joints to come are formed: a disc about the flat's end, as
 * wide as the rest of the sheet is long. Where it keeps off the brake, so does every such rest.
 * Safe: arcs count with their longer face, and the thickness is added, so that a disc is never too small.
 */
import type { Mm, Rad } from "../units/quantity.ts";
import type { Side } from "./element.ts";
import type { SideChecks } from "./sideChecks.ts";
import type { SolidBody } from "./solidBody.ts";

const SPARE_MM = 1e-6;

export class Beyond {
  /** Nearest distance from the pivot, whatever the leaf's angle. */
  near: Mm = 0;
  /** Moving side: its largest direction at rest; clamped: its smallest one (sector.ts). NaN where it is all round. */
  direction: Rad = Number.NaN;
  private x: Mm = 0;
  private y: Mm = 0;
  private r: Mm = 0;
  private lowest: Rad = 0;
  /** By flat: how far the rest of the sheet reaches from its end. */
  private readonly restMm: Float64Array;
  private readonly slideMm: Mm;
  private readonly leafFarMm: Mm;
  private readonly moving: boolean;

  constructor(
    private readonly checks: SideChecks,
    private readonly side: Side,
  ) {
    const { pieces, machine } = checks;
    const chain = pieces.chainOf(side);
    const T = pieces.seat.thicknessMm;
    this.restMm = new Float64Array(chain.joints + 1).fill(T + SPARE_MM);
    for (let k = chain.joints - 1; k >= 0; k--) {
      const arc = (chain.insideRadiusMm[k]! + T) * chain.angleRad[k]!;
      this.restMm[k] = this.restMm[k + 1]! + Math.max(arc, chain.allowanceMm[k]!) + chain.flatMm[k + 1]!;
    }
    this.leafFarMm = machine.leaf.features.far;
    this.moving = side === "moving";
    this.slideMm = this.moving ? pieces.mostSlideMm : 0;
  }

  /** How far from the pivot any of this side can lie, whatever its joints; flat 0 is taken to start near the pivot. */
  mostMm(): Mm {
    this.after(0, 0);
    return this.near + 2 * (this.r + this.slideMm);
  }

  /** Takes in what lies beyond flat `k`, with the joints before it as in `formed`. */
  after(k: number, formed: number): void {
    const strip = this.checks.pieces.stripOf(this.side);
    strip.walkTo(k, formed);
    this.x = strip.placeX(strip.x, strip.y);
    this.y = strip.placeY(strip.x, strip.y);
    this.r = this.restMm[k]!;
    const wide = this.r + this.slideMm;
    const far = Math.sqrt(this.x * this.x + this.y * this.y);
    this.near = far - wide;
    this.direction = Number.NaN;
    // Where the leaf may reach it nothing can be said, whatever its direction.
    if (!(this.near > this.leafFarMm)) return;
    // Not a number, and so are both directions, where the disc holds the pivot.
    const half = Math.asin(wide / far);
    const at = Math.atan2(this.y, this.x);
    if (this.moving) {
      if (this.x - wide < 0 && this.y - wide < 0) return;
      this.direction = at + half;
      this.lowest = at - half;
    } else {
      if (this.x + wide >= 0 && this.y - wide < 0) return;
      this.direction = Math.min(Math.PI, (at < 0 ? at + 2 * Math.PI : at) - half);
    }
  }

  /** Whether nothing there can meet the brake during the sweep, nor overlap it once the leaf is back. */
  keepsOff(): boolean {
    if (!(this.near > this.leafFarMm)) return false;
    for (const body of this.checks.fixed) if (!(this.distanceTo(body) > 0)) return false;
    return true;
  }

  /** Whether nothing there blocks a height, with the bend still to be made or (`finished`) made. */
  letsPass(finished: boolean): boolean {
    const { x, y, r } = this;
    const at = this.moving && finished ? this.checks.pieces.finishedPoint(x, y) : { x, y };
    return this.checks.blocksNoHeight({ minX: at.x - r, minY: at.y - r, maxY: at.y + r });
  }

  /** A distance that all there keeps from the brake over the whole sweep; 0 where none is known. */
  leastClearance(): Mm {
    let least = this.near - this.leafFarMm;
    for (const body of this.checks.fixed) least = Math.min(least, this.distanceTo(body));
    return Math.max(0, least - SPARE_MM);
  }

  /** Distance from a fixed body: by distances from the pivot; by sectors while it swings; by the body's box where it stands. */
  private distanceTo(body: SolidBody): Mm {
    const B = body.features;
    const byReach = this.near - B.far;
    if (byReach > 0) return byReach;
    if (!this.moving) {
      const dx = Math.max(B.minX - this.x, this.x - B.maxX, 0);
      const dy = Math.max(B.minY - this.y, this.y - B.maxY, 0);
      return Math.sqrt(dx * dx + dy * dy) - this.r;
    }
    const ahead = body.leastDirection - this.direction - this.checks.seat.sweepRad;
    const behind = this.lowest - body.mostDirection + 2 * Math.PI;
    const apart = Math.min(ahead, behind);
    // Of two points in sectors so far apart, one at least this far out, the nearest are at right angles to a side.
    return apart > 0 ? this.near * Math.sin(Math.min(apart, Math.PI / 2)) : 0;
  }
}
