/**
 * Where one element of a side lies at most, told from a few points about it: most elements are nowhere near the brake, and
 * need not be laid out to know it. A formed joint counts with the corner of its outer face's tangents.
 * Safe: the points' hull holds all of the element, so that a box is never too small.
 */
import type { Mm, Rad } from "../units/quantity.ts";
import type { Side } from "./element.ts";
import { type Box, leadingDirection, lowestDirection, trailingDirection } from "./sector.ts";
import type { SideChecks } from "./sideChecks.ts";
import type { SolidBody } from "./solidBody.ts";

const SPARE_MM = 1e-6;

/** At most: two corners at either end, one in a formed joint. */
const MOST_POINTS = 5;

export class ElementBox implements Box {
  minX: Mm = 0;
  minY: Mm = 0;
  maxX: Mm = 0;
  maxY: Mm = 0;
  /** Not more than the least, not less than the largest distance from the pivot at rest. */
  near: Mm = 0;
  far: Mm = 0;
  /** Moving side: not less than its largest direction at rest, slid in or not; clamped: not more than its smallest one. */
  direction: Rad = 0;
  private readonly x = new Float64Array(MOST_POINTS);
  private readonly y = new Float64Array(MOST_POINTS);
  private points = 0;
  private readonly moving: boolean;
  private readonly slideMm: Mm;
  private readonly inwardMm: Mm;

  constructor(
    private readonly checks: SideChecks,
    private readonly side: Side,
  ) {
    const { pieces } = checks;
    this.moving = side === "moving";
    this.slideMm = this.moving ? pieces.mostSlideMm : 0;
    this.inwardMm = this.moving ? pieces.turning.maxInward : 0;
  }

  /** Takes in element k, which is not the first, where it lies at rest. */
  take(k: number, formed: number): void {
    const strip = this.checks.pieces.stripOf(this.side);
    const { chain, thicknessMm: T } = strip;
    const joint = k - 1;
    strip.walkTo(joint, formed);
    const { x, y, c, s } = strip;
    this.points = 0;
    this.add(strip.placeX(x, y), strip.placeY(x, y));
    this.add(strip.placeX(x - T * s, y + T * c), strip.placeY(x - T * s, y + T * c));
    // By how far the sheet lies from the line that is taken for its outer face.
    let thick = T;
    let outer = 0;
    if ((formed >>> joint) & 1) {
      const R = chain.insideRadiusMm[joint]! + T;
      const tangent = (R * chain.sinHalfAngle[joint]!) / chain.cosHalfAngle[joint]!;
      outer = chain.turn[joint]! > 0 ? 0 : 1;
      const [ax, ay] = [x + tangent * c - outer * T * s, y + tangent * s + outer * T * c];
      this.add(strip.placeX(ax, ay), strip.placeY(ax, ay));
      thick += R * (1 - chain.cosHalfAngle[joint]!);
    }
    strip.walkTo(k, formed);
    const [endX, endY] = [strip.x, strip.y];
    this.add(strip.placeX(endX, endY), strip.placeY(endX, endY));
    const [overX, overY] = [endX - T * strip.s, endY + T * strip.c];
    this.add(strip.placeX(overX, overY), strip.placeY(overX, overY));
    this.measure(outer, thick + SPARE_MM);
    this.direction = this.moving ? leadingDirection(this, this.inwardMm, 0) : trailingDirection(this, 0);
  }

  /** Whether the element surely meets nothing of the brake in the whole sweep, nor overlaps the leaf once that is back. */
  keepsOff(): boolean {
    return this.moving ? this.swingsFree() : this.standsFree();
  }

  /** Whether it blocks no height, with the bend still to be made or (`finished`) made. */
  letsPass(finished: boolean): boolean {
    if (!this.moving || !finished) return this.checks.blocksNoHeight(this.minX, this.minY, this.maxY);
    const { pieces } = this.checks;
    let [minX, minY, maxY] = [Infinity, Infinity, -Infinity];
    for (let i = 0; i < this.points; i++) {
      const { x, y } = pieces.finishedPoint(this.x[i]!, this.y[i]!);
      minX = Math.min(minX, x);
      minY = Math.min(minY, y);
      maxY = Math.max(maxY, y);
    }
    return this.checks.blocksNoHeight(minX, minY, maxY);
  }

  private swingsFree(): boolean {
    const { fixed, machine, seat } = this.checks;
    const near = this.near - this.slideMm;
    if (near <= machine.leaf.features.far) return false;
    const leading = this.direction + seat.sweepRad;
    const lowest = lowestDirection(this, this.inwardMm);
    for (const body of fixed) {
      if (near > body.features.far) continue;
      if (leading < body.leastDirection && lowest > body.mostDirection - 2 * Math.PI) continue;
      return false;
    }
    return true;
  }

  private standsFree(): boolean {
    const { fixed, machine, seat, leafLow } = this.checks;
    for (const body of fixed) if (this.near <= body.features.far && !this.isBeside(body)) return false;
    if (this.near > machine.leaf.features.far) return true;
    // A leaf that lies below the pivot's level at rest leads with its face, in direction φ.
    return leafLow && this.minY > 0 && this.direction > seat.sweepRad;
  }

  private isBeside({ features: B }: SolidBody): boolean {
    return this.minX > B.maxX || this.maxX < B.minX || this.minY > B.maxY || this.maxY < B.minY;
  }

  private add(x: Mm, y: Mm): void {
    const i = this.points++;
    this.x[i] = x;
    this.y[i] = y;
  }

  /** Box and distances of the points; the first and last but one (or `outer` beside them) are joined by the outer face. */
  private measure(outer: number, thick: Mm): void {
    const { x, y, points } = this;
    let [minX, minY, maxX, maxY] = [x[0]!, y[0]!, x[0]!, y[0]!];
    let far = minX * minX + minY * minY;
    for (let i = 1; i < points; i++) {
      const [px, py] = [x[i]!, y[i]!];
      if (px < minX) minX = px;
      else if (px > maxX) maxX = px;
      if (py < minY) minY = py;
      else if (py > maxY) maxY = py;
      const reach = px * px + py * py;
      if (reach > far) far = reach;
    }
    this.minX = minX;
    this.minY = minY;
    this.maxX = maxX;
    this.maxY = maxY;
    this.far = Math.sqrt(far) + SPARE_MM;
    const end = points - 2 + outer;
    const near =
      points < MOST_POINTS
        ? this.lineFromPivot(outer, end)
        : Math.min(this.lineFromPivot(outer, 2), this.lineFromPivot(2, end));
    this.near = Math.sqrt(near) - thick;
  }

  /** Square of the least distance of a line between two points from the pivot. */
  private lineFromPivot(from: number, to: number): number {
    const [x, y] = [this.x[from]!, this.y[from]!];
    const [dx, dy] = [this.x[to]! - x, this.y[to]! - y];
    const length = dx * dx + dy * dy;
    const along = -(x * dx + y * dy);
    const t = along <= 0 ? 0 : along >= length ? 1 : along / length;
    const [nearX, nearY] = [x + t * dx, y + t * dy];
    return nearX * nearX + nearY * nearY;
  }
}
