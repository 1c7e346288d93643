/**
 * The blank of a pan: a bottom with four square walls, corners cut out, a relief hole where the bends meet.
 * Flats and allowances as for any bend (FAA-H-8083-31, folding a box); walls end at the inside bend tangent lines, so
 * that no wall stands in another's way. Exact for the radius and K-factor given.
 */
import { bendAllowance } from "../part/allowance.ts";
import { insideBendSetback, outsideBendSetback } from "../part/bendSetback.ts";
import type { Edge, Outline } from "../plane/outline.ts";
import type { Point } from "../plane/point.ts";
import type { Mm, Rad } from "../units/quantity.ts";
import { type BendStrip, type ReliefHole, reliefHoles } from "./relief.ts";

export interface Pan {
  /** Clear sizes of the bottom between the walls' inner faces. */
  readonly insideWidthMm: Mm;
  readonly insideLengthMm: Mm;
  /** Height of the walls, outside. */
  readonly wallMm: Mm;
  readonly thicknessMm: Mm;
  readonly insideRadiusMm: Mm;
  readonly kFactor: number;
}

/** One direction of the blank, measured from its edge. */
export interface PanSide {
  readonly sizeMm: Mm;
  /** The two bends that cross it, the nearer first. */
  readonly bends: readonly [BendStrip, BendStrip];
  /** Where to sight each bend with the bottom clamped. */
  readonly sightLinesMm: readonly [Mm, Mm];
}

export interface PanBlank {
  /** Along x: the walls at the left and right. */
  readonly across: PanSide;
  /** Along y: the walls at the foot and head. */
  readonly along: PanSide;
  readonly allowanceMm: Mm;
  readonly holes: readonly ReliefHole[];
  /** To be cut: the cross of bottom and walls, the relief holes running into its corners. */
  readonly outline: Outline;
}

const SQUARE = 90;
const QUARTER: Rad = Math.PI / 2;

/**
 * Lay out a pan.
 * @example layOutPan({ insideWidthMm: 150, insideLengthMm: 220, wallMm: 40, thicknessMm: 0.8, insideRadiusMm: 1.2, kFactor: 0.44 }).holes.length // 4
 * @throws RangeError when a size is not above zero, or bottom or walls are too small for their bends and holes
 */
export function layOutPan(pan: Pan): PanBlank {
  const { thicknessMm, insideRadiusMm, kFactor } = pan;
  if (!(thicknessMm > 0 && insideRadiusMm >= 0)) {
    throw new RangeError("a pan needs a thickness above zero and an inside radius of zero or more");
  }
  const shape = { angleDeg: SQUARE, insideRadiusMm, thicknessMm };
  const allowanceMm = bendAllowance(shape, kFactor);
  const wallFlatMm = pan.wallMm - outsideBendSetback(shape);
  const side = (insideMm: Mm): PanSide => {
    const bottomMm = insideMm - 2 * insideBendSetback(shape);
    return sideOf(wallFlatMm, allowanceMm, bottomMm, insideRadiusMm);
  };
  const across = side(pan.insideWidthMm);
  const along = side(pan.insideLengthMm);
  const holes = reliefHoles(across.bends, along.bends, thicknessMm);
  const holeRadiusMm = (holes[0]?.diameterMm ?? 0) / 2;
  const bottoms = [pan.insideWidthMm, pan.insideLengthMm].map((inside) => inside - 2 * insideRadiusMm);
  if (
    !(wallFlatMm > 0 && wallFlatMm + allowanceMm > holeRadiusMm && Math.min(...bottoms) > 2 * holeRadiusMm)
  ) {
    throw new RangeError(
      "bottom and walls of a pan must be larger than their bends and relief holes take up",
    );
  }
  return { across, along, allowanceMm, holes, outline: outlineOf(across, along, holeRadiusMm) };
}

function sideOf(wallFlatMm: Mm, allowanceMm: Mm, bottomMm: Mm, insideRadiusMm: Mm): PanSide {
  const near = wallFlatMm + allowanceMm;
  const far = near + bottomMm;
  return {
    sizeMm: far + allowanceMm + wallFlatMm,
    bends: [
      { tangentsMm: [wallFlatMm, near], inside: "far", insideRadiusMm },
      { tangentsMm: [far, far + allowanceMm], inside: "near", insideRadiusMm },
    ],
    sightLinesMm: [near - insideRadiusMm, far + insideRadiusMm],
  };
}

/** Counter-clockwise from the foot of the lower wall; each inner corner is three quarters of its relief hole. */
function outlineOf(across: PanSide, along: PanSide, holeRadiusMm: Mm): Outline {
  const [left, right] = insideLines(across);
  const [low, high] = insideLines(along);
  const [width, length] = [across.sizeMm, along.sizeMm];
  const run = new CutRun({ x: left, y: 0 });
  run.to({ x: right, y: 0 }).round({ x: right, y: low }, -QUARTER, holeRadiusMm);
  run.to({ x: width, y: low }).to({ x: width, y: high }).round({ x: right, y: high }, 0, holeRadiusMm);
  run
    .to({ x: right, y: length })
    .to({ x: left, y: length })
    .round({ x: left, y: high }, QUARTER, holeRadiusMm);
  run
    .to({ x: 0, y: high })
    .to({ x: 0, y: low })
    .round({ x: left, y: low }, 2 * QUARTER, holeRadiusMm);
  run.to({ x: left, y: 0 });
  return { edges: run.edges };
}

/** The inside bend tangent lines, on which the walls end. */
function insideLines({ bends }: PanSide): readonly [Mm, Mm] {
  return [bends[0].tangentsMm[1], bends[1].tangentsMm[0]];
}

/** A cut that is led from point to point. */
class CutRun {
  readonly edges: Edge[] = [];
  private at: Point;

  constructor(from: Point) {
    this.at = from;
  }

  to(point: Point): this {
    this.edges.push({ kind: "line", from: this.at, to: point });
    this.at = point;
    return this;
  }

  /** Up to a hole, and clockwise round three quarters of it, from the direction `startRad` as seen from its centre. */
  round(center: Point, startRad: Rad, radius: Mm): this {
    const on = (angleRad: Rad): Point => {
      return { x: center.x + radius * Math.cos(angleRad), y: center.y + radius * Math.sin(angleRad) };
    };
    const sweepRad = -3 * QUARTER;
    this.to(on(startRad));
    const to = on(startRad + sweepRad);
    this.edges.push({ kind: "arc", from: this.at, to, center, radius, startRad, sweepRad });
    this.at = to;
    return this;
  }
}
