/**
 * What every piece of sheet of a stroke can tell about itself: how it lies over an interval of w with the leaf at rest,
 * what of it sweeps with the leaf, how it lies once the bend is made, and which face of the part it is.
 */
import type { SeatPieces } from "../contact/seatPieces.ts";
import type { Box } from "../contact/sector.ts";
import type { Swing } from "../motion/swing.ts";
import { convexHull } from "../plane/convexHull.ts";
import type { Point } from "../plane/point.ts";
import type { Mm } from "../units/quantity.ts";
import { type ArcFrame, keptSide, type MadeBend, type Slice } from "./bentSlices.ts";
import { type Laid, laidArc, laidHull } from "./laid.ts";
import type { Ring } from "./ring.ts";
import { distanceTo, Solid, type SolidBodies } from "./solid.ts";

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
  /** Round all of it with the leaf at rest, from the pivot. */
  readonly box: Box;
  /**
   * One convex outline round all of it with the leaf at rest, and with the bend made: what that keeps clear of, all of it
   * keeps clear of. Only of a shape of several pieces.
   */
  readonly rough: Laid | undefined;
  readonly roughFinished: Laid | undefined;
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
  /** Slices of a made bend, each bend cut once. */
  slices(made: Omit<MadeBend, "before">): readonly Slice[];
  /** Runs are closed at their start, for what is measured and not swept into. */
  readonly closed: boolean;
}

/** Keeps what a shape looks like over all of its length: most bodies run past both its ends. */
export abstract class LaidShape implements Shape {
  abstract readonly straight: boolean;
  abstract readonly run: boolean;
  private wholeRest: readonly Laid[] | undefined;
  private wholeSwept: readonly Swept[] | undefined;
  private wholeFinished: readonly Laid[] | undefined;
  private bounds: Box | undefined;

  constructor(
    protected readonly setting: Setting,
    readonly minW: number,
    readonly maxW: number,
  ) {}

  abstract placeOf(at: Point, from: number, to: number): { readonly w: number; readonly face: number };
  protected abstract layRest(from: number, to: number): readonly Laid[];
  protected abstract layFinished(from: number, to: number): readonly Laid[];

  protected laySwept(from: number, to: number): readonly Swept[] {
    return this.rest(from, to).map((laid) => ({ laid, swing: this.setting.pieces.turning, ridesLeaf: true }));
  }

  get rough(): Laid | undefined {
    return undefined;
  }

  get roughFinished(): Laid | undefined {
    return undefined;
  }

  rest(from: number, to: number): readonly Laid[] {
    if (!this.isWhole(from, to)) return this.layRest(from, to);
    this.wholeRest ??= this.layRest(this.minW, this.maxW);
    return this.wholeRest;
  }

  swept(from: number, to: number): readonly Swept[] {
    if (!this.isWhole(from, to)) return this.laySwept(from, to);
    this.wholeSwept ??= this.laySwept(this.minW, this.maxW);
    return this.wholeSwept;
  }

  finished(from: number, to: number): readonly Laid[] {
    if (!this.isWhole(from, to)) return this.layFinished(from, to);
    this.wholeFinished ??= this.layFinished(this.minW, this.maxW);
    return this.wholeFinished;
  }

  get box(): Box {
    this.bounds ??= boxRound(this.boxed);
    return this.bounds;
  }

  protected get boxed(): readonly Laid[] {
    const swept = this.swept(this.minW, this.maxW).map(({ laid }) => laid);
    return [...this.rest(this.minW, this.maxW), ...swept];
  }

  private isWhole(from: number, to: number): boolean {
    return this.straight ? from < this.maxW && to > this.minW : from <= this.minW && to >= this.maxW;
  }
}

function boxRound(laid: readonly Laid[]): Box {
  return {
    minX: Math.min(...laid.map(({ features }) => features.minX)),
    minY: Math.min(...laid.map(({ features }) => features.minY)),
    maxX: Math.max(...laid.map(({ features }) => features.maxX)),
    maxY: Math.max(...laid.map(({ features }) => features.maxY)),
  };
}

/** Convex bodies that are no part of a run: a plate, or a made bend across in slices. */
export class SolidShape extends LaidShape {
  readonly straight: boolean;
  readonly run = false;
  private readonly around: { ring?: readonly Point[]; rest?: Laid; finished?: Laid } = {};

  constructor(
    setting: Setting,
    private readonly bodies: SolidBodies,
    private readonly face: number,
  ) {
    super(setting, bodies.minW, bodies.maxW);
    this.straight = bodies.straight;
  }

  override get rough(): Laid | undefined {
    if (this.bodies instanceof Solid) return undefined;
    this.around.rest ??= laidHull(this.outline, this.setting.pivot);
    return this.around.rest;
  }

  override get roughFinished(): Laid | undefined {
    if (this.bodies instanceof Solid) return undefined;
    this.around.finished ??= laidHull(finishedRing(this.setting, this.outline), this.setting.pivot);
    return this.around.finished;
  }

  protected override get boxed(): readonly Laid[] {
    return this.rough ? [this.rough] : super.boxed;
  }

  private get outline(): readonly Point[] {
    this.around.ring ??= convexHull(this.bodies.corners);
    return this.around.ring;
  }

  placeOf(at: Point, from: number, to: number) {
    const { solids } = this.bodies;
    const here = solids.filter(({ minW, maxW }) => minW <= to && maxW >= from);
    const off = (solid: Solid) => distanceTo(solid.over(from, to), at);
    const [nearest] = here.map((solid) => ({ solid, mm: off(solid) })).sort((a, b) => a.mm - b.mm);
    return { w: (nearest?.solid ?? solids[0]!).stationOf(at, from, to), face: this.face };
  }

  protected layRest(from: number, to: number): readonly Laid[] {
    return this.rings(from, to).map((ring) => laidHull(ring, this.setting.pivot));
  }

  protected layFinished(from: number, to: number): readonly Laid[] {
    return this.rings(from, to).map((ring) => laidHull(finishedRing(this.setting, ring), this.setting.pivot));
  }

  private rings(from: number, to: number): (readonly Point[])[] {
    const rings: (readonly Point[])[] = [];
    for (const solid of this.bodies.solids) {
      const ring = solid.over(from, to);
      if (ring.length > 2) rings.push(ring);
    }
    return rings;
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
export class ArcShape extends LaidShape {
  readonly straight: boolean;
  readonly run = false;

  constructor(
    setting: Setting,
    private readonly arc: ArcFrame,
    private readonly made: MadeBend,
    /** Pieces of the strip: x is the distance across the bend, y is w. */
    private readonly flat: readonly Ring[],
    private readonly face: number,
  ) {
    const ws = flat.flatMap((ring) => ring.map(({ y }) => y));
    super(setting, Math.min(...ws), Math.max(...ws));
    this.straight = flat.length === 1 && flat.every(isUpright);
  }

  protected layRest(from: number, to: number): readonly Laid[] {
    return this.laid(from, to, this.arc);
  }

  protected layFinished(from: number, to: number): readonly Laid[] {
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
