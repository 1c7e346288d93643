/**
 * A made bend as bodies of the section. One whose axis runs along w keeps its arc, over the part of it that the strip has
 * in an interval; any other is cut along its arc into convex slices, each at most 0.0005 mm larger than the sheet: met a
 * millimetre from the pivot, that is 0.03°.
 */
import type { Point } from "../plane/point.ts";
import type { Mm, Rad } from "../units/quantity.ts";
import type { Ring } from "./ring.ts";
import { Solid, type SolidBodies } from "./solid.ts";
import { type Fold, type Placement, placed, type Spot, turned } from "./space.ts";

const SLICE_OFF_MM: Mm = 0.0005;

/** An axis is along w when its direction's w is off 1 by no more. */
const ALONG_W = 1e-9;

/** A bend as placed: the sheet before it, the bend seen from there, and convex pieces of its strip. */
export interface MadeBend {
  readonly before: Placement;
  readonly fold: Fold;
  readonly pieces: readonly Ring[];
}

/** An arc of the section: axis, direction from it to the sheet where the arc starts, way it turns, and its radii. */
export interface ArcFrame {
  readonly center: Point;
  readonly startRad: Rad;
  /** +1 where the sheet is led round counter-clockwise. */
  readonly way: 1 | -1;
  readonly insideRadiusMm: Mm;
}

/** Whether the axis of a made bend runs along w, so that it is an arc of the section. */
export function isAlongW({ before, fold }: MadeBend): boolean {
  const axis = turned(before, [-fold.ny, fold.nx, 0]);
  return Math.abs(Math.abs(axis[2]) - 1) < ALONG_W;
}

/** The arc of a bend whose axis runs along w. */
export function arcFrame({ before, fold }: MadeBend, thicknessMm: Mm): ArcFrame {
  const spot = placed(before, fold.tangent, fold.axisZ);
  const toSheet = turned(before, [0, 0, -fold.up]);
  const ahead = turned(before, [fold.nx, fold.ny, 0]);
  return {
    center: { x: spot[0], y: spot[1] },
    startRad: Math.atan2(toSheet[1], toSheet[0]),
    way: toSheet[0] * ahead[1] - toSheet[1] * ahead[0] > 0 ? 1 : -1,
    insideRadiusMm: fold.up > 0 ? fold.axisZ - thicknessMm : -fold.axisZ,
  };
}

/** Corners of a piece of strip as distance across the bend from its tangent line, and w. */
export function unrolled(
  { before, fold }: MadeBend,
  piece: Ring,
): { readonly across: Mm; readonly w: number }[] {
  return piece.map((point) => {
    const across = (point.x - fold.tangent.x) * fold.nx + (point.y - fold.tangent.y) * fold.ny;
    const onAxis = { x: point.x - across * fold.nx, y: point.y - across * fold.ny };
    return { across, w: placed(before, onAxis, 0)[2] };
  });
}

/** A slice as two rings of corners, near the inside of the bend and near its outside. */
export type Slice = readonly [inner: readonly Spot[], outer: readonly Spot[]];

/** Slices of a made bend as bodies, laid out only for what comes near: until then their outline will do. */
export class BentBody implements SolidBodies {
  readonly minW: number;
  readonly maxW: number;
  readonly straight = false;
  private laid: { corners?: readonly Point[]; solids?: readonly Solid[] } = {};

  /** `slices` as seen by the sheet before the bend, and where that is placed. */
  constructor(
    private readonly slices: readonly Slice[],
    private readonly before: Placement,
  ) {
    const { origin, alongX, alongY, alongZ } = before;
    let [low, high] = [Infinity, -Infinity];
    for (const slice of slices) {
      for (const ring of slice) {
        for (const [x, y, z] of ring) {
          const w = origin[2] + x * alongX[2] + y * alongY[2] + z * alongZ[2];
          if (w < low) low = w;
          if (w > high) high = w;
        }
      }
    }
    [this.minW, this.maxW] = [low, high];
  }

  get corners(): readonly Point[] {
    this.laid.corners ??= this.slices.flatMap(([inner, outer]) =>
      [...inner, ...outer].map((spot) => {
        const [x, y] = this.place(spot);
        return { x, y };
      }),
    );
    return this.laid.corners;
  }

  get solids(): readonly Solid[] {
    this.laid.solids ??= this.slices.map(
      ([inner, outer]) =>
        new Solid(
          inner.map((spot) => this.place(spot)),
          outer.map((spot) => this.place(spot)),
        ),
    );
    return this.laid.solids;
  }

  private place([x, y, z]: Spot): Spot {
    return placed(this.before, { x, y }, z);
  }
}

/** Slices of a made bend in the frame of the blank as the sheet before it lies, its faces drawn in by `insetMm`. */
export function slicesOf({ fold, pieces }: Omit<MadeBend, "before">, thicknessMm: Mm, insetMm: Mm): Slice[] {
  const inside = (fold.up > 0 ? fold.axisZ - thicknessMm : -fold.axisZ) + insetMm;
  const outside = inside + thicknessMm - 2 * insetMm;
  const step = 2 * Math.acos(1 - Math.min(0.5, SLICE_OFF_MM / outside));
  const count = Math.max(1, Math.ceil(fold.angleRad / step));
  const { places, bulges } = boundaries(count, fold.angleRad / count);
  const spotAt = (point: Point, radius: Mm): Spot => {
    const across = acrossOf(fold, point);
    const turnedRad = (across / fold.allowanceMm) * fold.angleRad;
    const out = radius * Math.sin(turnedRad) - across;
    const z = fold.axisZ - fold.up * radius * Math.cos(turnedRad);
    return [point.x + out * fold.nx, point.y + out * fold.ny, z];
  };
  return pieces.flatMap((piece) =>
    places.slice(1).flatMap((to, i): Slice[] => {
      const [from, across] = [places[i]!, fold.allowanceMm];
      const part = between(piece, fold, from * across, to * across);
      if (part.length < 3) return [];
      const bulgeAt = (point: Point) => {
        const share = (acrossOf(fold, point) / across - from) / (to - from);
        return bulges[i]! + share * (bulges[i + 1]! - bulges[i]!);
      };
      return [
        [
          part.map((point) => spotAt(point, inside)),
          part.map((point) => spotAt(point, outside * bulgeAt(point))),
        ],
      ];
    }),
  );
}

/**
 * Where slices end, as shares of the bend, and by how much their outer corners stand out so that no slice is smaller than
 * the sheet: on the arc where the flats begin, elsewhere where tangents meet.
 */
function boundaries(
  count: number,
  stepRad: number,
): { readonly places: number[]; readonly bulges: number[] } {
  const out = 1 / Math.cos(stepRad / 2);
  const inner = Array.from({ length: count }, (_, i) => (i + 0.5) / count);
  return { places: [0, ...inner, 1], bulges: [1, ...inner.map(() => out), 1] };
}

function acrossOf({ tangent, nx, ny }: Fold, { x, y }: Point): Mm {
  return (x - tangent.x) * nx + (y - tangent.y) * ny;
}

/** A convex piece of strip between two distances across the bend. */
function between(piece: Ring, fold: Fold, from: Mm, to: Mm): Ring {
  return keptSide(
    keptSide(piece, (p) => acrossOf(fold, p) - from),
    (p) => to - acrossOf(fold, p),
  );
}

/** The part of a convex ring where `side` is not under 0. */
export function keptSide(ring: Ring, side: (point: Point) => number): Ring {
  return ring.flatMap((point, i) => {
    const next = ring[(i + 1) % ring.length]!;
    const [a, b] = [side(point), side(next)];
    const kept = a >= 0 ? [point] : [];
    if ((a > 0 && b < 0) || (a < 0 && b > 0)) {
      const t = a / (a - b);
      kept.push({ x: point.x + t * (next.x - point.x), y: point.y + t * (next.y - point.y) });
    }
    return kept;
  });
}
