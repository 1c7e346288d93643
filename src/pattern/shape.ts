/**
 * What every piece of sheet of a stroke can tell about itself: how it lies over an interval of w with the leaf at rest,
 * what of it sweeps with the leaf, how it lies once the bend is made, and which face of the part it is.
 */
import type { SeatPieces } from "../contact/seatPieces.ts";
import type { Swing } from "../motion/swing.ts";
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";
import { type ArcFrame, keptSide, type MadeBend, unrolled } from "./bentSlices.ts";
import { type Laid, laidArc, laidHull } from "./laid.ts";
import type { Ring } from "./ring.ts";
import type { Solid } from "./solid.ts";

/** A piece that sweeps: on which swing, and whether it also slides along the leaf's face. */
export interface Swept {
  readonly laid: Laid;
  readonly swing: Swing;
  readonly ridesLeaf: boolean;
}

export interface Shape {
  readonly minW: number;
  readonly maxW: number;
  /** Looks the same over all of its length in w. */
  readonly straight: boolean;
  /** Lies in the plane of bed or leaf, joined to the stroke's bend flat. */
  readonly run: boolean;
  /** As it lies with the leaf at rest. */
  rest(from: number, to: number): readonly Laid[];
  /** What of it turns with the leaf; for the moving side alone. */
  swept(from: number, to: number): readonly Swept[];
  /** As it lies with the bend made and relaxed; for the moving side alone. */
  finished(from: number, to: number): readonly Laid[];
  /** Station and face at a point of the section, with the leaf at rest. */
  placeOf(at: Point, from: number, to: number): { readonly w: number; readonly face: number };
}

/** What shapes need of their stroke. */
export interface Setting {
  readonly pieces: SeatPieces;
  readonly pivot: Point;
  readonly thicknessMm: Mm;
  readonly insetMm: Mm;
  /** Runs are closed at their start, for what is measured and not swept into. */
  readonly closed: boolean;
}

/** A convex body that is no part of a run. */
export class SolidShape implements Shape {
  readonly minW: number;
  readonly maxW: number;
  readonly straight: boolean;
  readonly run = false;

  constructor(
    private readonly setting: Setting,
    private readonly solid: Solid,
    private readonly face: number,
  ) {
    this.minW = solid.minW;
    this.maxW = solid.maxW;
    this.straight = solid.straight;
  }

  rest(from: number, to: number): readonly Laid[] {
    const ring = this.solid.over(from, to);
    return ring.length < 3 ? [] : [laidHull(ring, this.setting.pivot)];
  }

  swept(from: number, to: number): readonly Swept[] {
    return this.rest(from, to).map((laid) => ({ laid, swing: this.setting.pieces.turning, ridesLeaf: true }));
  }

  finished(from: number, to: number): readonly Laid[] {
    const ring = this.solid.over(from, to);
    return ring.length < 3 ? [] : [laidHull(finishedRing(this.setting, ring), this.setting.pivot)];
  }

  placeOf(at: Point, from: number, to: number) {
    return { w: this.solid.stationOf(at, from, to), face: this.face };
  }
}

/** A ring of the section once the bend is made and relaxed. */
export function finishedRing({ pieces, pivot }: Setting, ring: readonly Point[]): Point[] {
  return ring.map(({ x, y }) => {
    const done = pieces.finishedPoint(x - pivot.x, y - pivot.y);
    return { x: done.x + pivot.x, y: done.y + pivot.y };
  });
}

/** A made bend whose axis runs along w. */
export class ArcShape implements Shape {
  readonly minW: number;
  readonly maxW: number;
  readonly straight: boolean;
  readonly run = false;
  /** Pieces of the strip: x is the distance across the bend, y is w. */
  private readonly flat: readonly Ring[];

  constructor(
    private readonly setting: Setting,
    private readonly arc: ArcFrame,
    private readonly made: MadeBend,
    private readonly face: number,
  ) {
    this.flat = made.pieces.map((piece) =>
      unrolled(made, piece).map(({ across, w }) => ({ x: across, y: w })),
    );
    const ws = this.flat.flatMap((ring) => ring.map(({ y }) => y));
    this.minW = Math.min(...ws);
    this.maxW = Math.max(...ws);
    this.straight = this.flat.length === 1 && this.flat.every(isUpright);
  }

  rest(from: number, to: number): readonly Laid[] {
    return this.laid(from, to, this.arc);
  }

  swept(from: number, to: number): readonly Swept[] {
    return this.rest(from, to).map((laid) => ({ laid, swing: this.setting.pieces.turning, ridesLeaf: true }));
  }

  finished(from: number, to: number): readonly Laid[] {
    const { center, startRad } = this.arc;
    const out = { x: center.x + Math.cos(startRad), y: center.y + Math.sin(startRad) };
    const [at, beside] = finishedRing(this.setting, [center, out]) as [Point, Point];
    const turned = { ...this.arc, center: at, startRad: Math.atan2(beside.y - at.y, beside.x - at.x) };
    return this.laid(from, to, turned);
  }

  placeOf(_at: Point, from: number, to: number) {
    return { w: (Math.max(from, this.minW) + Math.min(to, this.maxW)) / 2, face: this.face };
  }

  private laid(from: number, to: number, arc: ArcFrame): Laid[] {
    const { thicknessMm, insetMm, pivot } = this.setting;
    const { allowanceMm, angleRad } = this.made.fold;
    return this.flat.flatMap((ring) => {
      const kept = clippedW(ring, from, to);
      if (kept.length < 2) return [];
      const across = kept.map(({ x }) => Math.min(allowanceMm, Math.max(0, x)));
      const turnedRad = {
        from: (Math.min(...across) / allowanceMm) * angleRad,
        to: (Math.max(...across) / allowanceMm) * angleRad,
      };
      return turnedRad.to - turnedRad.from < 1e-9
        ? []
        : [laidArc(arc, thicknessMm, insetMm, pivot, turnedRad)];
    });
  }
}

/** The part of a convex ring, y for w, within an interval of w. */
export function clippedW(ring: Ring, from: number, to: number): Ring {
  return keptSide(
    keptSide(ring, ({ y }) => y - from),
    ({ y }) => to - y,
  );
}

/** Whether a ring is a rectangle along w. */
export function isUpright(ring: Ring): boolean {
  const ws = ring.map(({ y }) => y);
  const [low, high] = [Math.min(...ws), Math.max(...ws)];
  return (
    ring.length === 4 &&
    ring.every(({ y }) => Math.abs(y - low) < 1e-7 || Math.abs(y - high) < 1e-7) &&
    ring.every(({ x, y }) =>
      ring.some((other) => Math.abs(other.x - x) < 1e-7 && Math.abs(other.y - y) > 1e-7),
    )
  );
}
