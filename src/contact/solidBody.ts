/**
 * A fixed body of the brake made ready for the checks: its touchable features, its outline as short straight pieces
 * for loading, and whether a point lies inside. Coordinates from the leaf's pivot.
 * Pieces leave an arc by at most 0.004 mm, well inside the 0.01 mm by which the sheet's faces are drawn in.
 */
import type { Outline } from "../plane/outline.ts";
import type { Point } from "../plane/point.ts";
import { type Features, featuresOf } from "./features.ts";
import { directionsOf } from "./sector.ts";

const PIECE_OFF_MM = 0.004;

/** By how much a direction may be off because arcs are taken as straight pieces; a body on the pivot has none there. */
const ARC_BULGE_RAD = 0.01;

export class SolidBody {
  readonly features: Features;
  /** x1, y1, x2, y2 of each straight piece, run with the material to the left. */
  readonly pieces: Float64Array;
  /** Smallest and largest direction in which the body is seen from the pivot (sector.ts). */
  readonly leastDirection: number;
  readonly mostDirection: number;
  /** Those of the pieces that face right (run up), up (run left) and down (run right). */
  readonly facingRight: Float64Array;
  readonly facingUp: Float64Array;
  readonly facingDown: Float64Array;

  constructor(outline: Outline, pivot: Point) {
    this.features = featuresOf(outline, { x: -pivot.x, y: -pivot.y });
    const corners: number[] = [];
    for (const edge of outline.edges) {
      if (edge.kind === "line") {
        corners.push(edge.from.x - pivot.x, edge.from.y - pivot.y);
        continue;
      }
      const count = arcPieces(edge.radius, Math.abs(edge.sweepRad));
      for (let i = 0; i < count; i++) {
        const at = edge.startRad + (edge.sweepRad * i) / count;
        corners.push(
          edge.center.x - pivot.x + edge.radius * Math.cos(at),
          edge.center.y - pivot.y + edge.radius * Math.sin(at),
        );
      }
    }
    const n = corners.length / 2;
    this.pieces = new Float64Array(4 * n);
    for (let i = 0; i < n; i++) {
      const j = (i + 1) % n;
      this.pieces.set([corners[2 * i]!, corners[2 * i + 1]!, corners[2 * j]!, corners[2 * j + 1]!], 4 * i);
    }
    const [least, most] = directionsOf(this.pieces);
    // An arc bulges past its straight pieces: a hundredth of a radian is far more than that at any radius.
    this.leastDirection = least - ARC_BULGE_RAD;
    this.mostDirection = most + ARC_BULGE_RAD;
    this.facingRight = this.facing((_dx, dy) => dy > 0);
    this.facingUp = this.facing((dx) => dx < 0);
    this.facingDown = this.facing((dx) => dx > 0);
  }

  private facing(wanted: (dx: number, dy: number) => boolean): Float64Array {
    const { pieces } = this;
    const kept: number[] = [];
    for (let i = 0; i < pieces.length; i += 4) {
      if (wanted(pieces[i + 2]! - pieces[i]!, pieces[i + 3]! - pieces[i + 1]!))
        kept.push(...pieces.subarray(i, i + 4));
    }
    return Float64Array.from(kept);
  }

  /** Whether a point lies inside the outline (a ray to the right crosses it an odd number of times). */
  contains(x: number, y: number): boolean {
    const { pieces, features } = this;
    if (x < features.minX || x > features.maxX || y < features.minY || y > features.maxY) return false;
    let inside = false;
    for (let i = 0; i < pieces.length; i += 4) {
      const [x1, y1, x2, y2] = [pieces[i]!, pieces[i + 1]!, pieces[i + 2]!, pieces[i + 3]!];
      if (y1 > y !== y2 > y && x < x1 + ((y - y1) * (x2 - x1)) / (y2 - y1)) inside = !inside;
    }
    return inside;
  }
}

/** How many straight pieces stand for an arc. */
export function arcPieces(radius: number, sweepRad: number): number {
  const stepRad = 2 * Math.acos(Math.max(0.5, 1 - PIECE_OFF_MM / Math.max(radius, PIECE_OFF_MM)));
  return Math.max(2, Math.ceil(sweepRad / stepRad));
}
