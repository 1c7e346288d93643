/**
 * The sheet of a planned stroke, element by element: a face with the strips that lead to it. Where an element lies depends
 * only on the bends between it and the stroke's bend, so what is known of it is shared by all sets of bends that agree in
 * those.
 */
import { FACE_INSET_MM } from "../contact/gaps.ts";
import { SeatPieces } from "../contact/seatPieces.ts";
import type { Seat } from "../motion/seat.ts";
import type { Mm } from "../units/quantity.ts";
import { type MadeBend, type Slice, slicesOf } from "./bentSlices.ts";
import { faceShapes, type Surroundings, stripShapes, zoneShapes } from "./elementShapes.ts";
import type { Setting, Shape } from "./shape.ts";
import { beyondFold, dot, type Fold, type Placement, placed, turned } from "./space.ts";
import type { BendSet, Interval, OwnHinge, StrokePlan, StrokeSide } from "./strokePlan.ts";

/** Two lines of one stroke lie this near each other. */
const ONE_LINE_MM: Mm = 0.01;
/** Directions whose cosine is off 1 by less are one. */
const ONE_WAY = 1e-6;

/** A face and the strips that lead to it, as they lie with the leaf at rest. */
export interface Element {
  /** Its number among all elements of the stroke met so far, from 1. */
  readonly number: number;
  readonly face: number;
  readonly side: StrokeSide;
  readonly placement: Placement;
  /** The face lies in the plane of its side's run. */
  readonly run: boolean;
  /** The strips before it are made, and turn up like the stroke's bend. */
  readonly bentUp: boolean;
  /** Reach of the run along x, where there is any. */
  readonly reach: Interval | undefined;
  /** Drawn in, for contact: of the strips, of the face. */
  readonly strips: readonly Shape[];
  readonly faces: readonly Shape[];
  /** With true faces, for clearance. */
  readonly trueStrips: () => readonly Shape[];
  readonly trueFaces: () => readonly Shape[];
}

export class StrokeElements {
  readonly seat: Seat;
  readonly pieces: SeatPieces;
  readonly stretches: readonly Interval[];
  /** By face, then by the bends that decide where it lies. */
  private readonly known: readonly Map<BendSet, Element>[];
  private readonly placements: readonly Map<BendSet, Placement>[];
  private count = 0;
  private readonly drawnIn: Surroundings;
  private readonly bare: Surroundings;
  private zone: ReturnType<typeof zoneShapes> | undefined;

  constructor(readonly plan: StrokePlan) {
    this.known = plan.sides.map(() => new Map());
    this.placements = plan.sides.map(() => new Map());
    // The run's own depth moves neither seat nor swing.
    this.seat = plan.seat(1, 1);
    this.pieces = new SeatPieces(plan.seat(1, LONG_MM));
    this.stretches = plan.own
      .flatMap(({ hinge }) =>
        hinge.strips.map(({ outer }) => {
          const ws = outer.map((point) => placed(plan.laid, point, 0)[2]);
          return { from: Math.min(...ws), to: Math.max(...ws) };
        }),
      )
      .sort((a, b) => a.from - b.from);
    const { thicknessMm } = plan.part;
    const setting = (insetMm: Mm, closed: boolean): Setting => {
      const cut = new Map<Fold, readonly Slice[]>();
      const slices = (made: Omit<MadeBend, "before">) => {
        const known = cut.get(made.fold) ?? slicesOf(made, thicknessMm, insetMm);
        cut.set(made.fold, known);
        return known;
      };
      return { pieces: this.pieces, pivot: this.seat.pivot, thicknessMm, insetMm, closed, slices };
    };
    const around = (of: Setting): Surroundings => ({
      setting: of,
      stretches: this.stretches,
      startX: this.seat.movingTangentX,
    });
    this.drawnIn = around(setting(FACE_INSET_MM, false));
    this.bare = around(setting(0, true));
  }

  /** Whether the stroke's lines lie on one line after these bends. */
  onOneLine(set: BendSet): OwnHinge | undefined {
    return this.plan.own.find(({ face, fold }) => !this.onLine(this.placementOf(face, set), fold));
  }

  /** The element of a face after these bends. */
  element(face: number, set: BendSet): Element {
    const deciding = set & this.plan.deciding[face]!;
    const known = this.known[face]!.get(deciding);
    if (known) return known;
    const made = this.make(face, set);
    this.known[face]!.set(deciding, made);
    return made;
  }

  /** All elements after these bends. */
  all(set: BendSet): Element[] {
    return this.plan.part.sheet.faces.map((_, face) => this.element(face, set));
  }

  /** The stroke's own strips, flat and as finished bends. */
  ownZone(): ReturnType<typeof zoneShapes> {
    this.zone ??= zoneShapes(this.plan, this.drawnIn);
    return this.zone;
  }

  placementOf(face: number, set: BendSet): Placement {
    const link = this.plan.links[face];
    if (!link) return this.plan.laid;
    const deciding = set & this.plan.deciding[face]!;
    const known = this.placements[face]!.get(deciding);
    if (known) return known;
    const from = this.placementOf(link.from, set);
    const bent = link.beyond && !link.own && (set >>> link.hinge.bend) & 1;
    const placement = bent ? beyondFold(from, link.fold) : from;
    this.placements[face]!.set(deciding, placement);
    return placement;
  }

  private make(face: number, set: BendSet): Element {
    const { plan, drawnIn, bare } = this;
    const side = plan.sides[face]!;
    const placement = this.placementOf(face, set);
    const run = this.inRun(placement);
    const link = plan.links[face];
    const before = link && this.placementOf(link.from, set);
    const made = link !== undefined && ((set >>> link.hinge.bend) & 1) === 1;
    const bend = link && plan.part.sheet.pattern.bends[link.hinge.bend]!;
    const stripsOf = (around: Surroundings) => {
      if (!link?.ownsStrips || !before) return [];
      const pieces = plan.part.stripPieces.get(link.hinge)!;
      const strip = { before, fold: link.fold, pieces, made, run: !made && this.inRun(before) };
      return stripShapes(around, strip, side, face);
    };
    const facesOf = (around: Surroundings) =>
      faceShapes(around, { placement, pieces: plan.part.facePieces[face]!, run }, side, face);
    let [trueStrips, trueFaces]: (readonly Shape[] | undefined)[] = [];
    return {
      number: ++this.count,
      face,
      side,
      placement,
      run,
      bentUp: link?.beyond === true && made && bend!.turn === plan.bend.turn,
      reach: run ? this.reachOf(face, placement) : undefined,
      strips: stripsOf(drawnIn),
      faces: facesOf(drawnIn),
      trueStrips: () => {
        trueStrips ??= stripsOf(bare);
        return trueStrips;
      },
      trueFaces: () => {
        trueFaces ??= facesOf(bare);
        return trueFaces;
      },
    };
  }

  private reachOf(face: number, placement: Placement): Interval {
    const xs = this.plan.part.sheet.faces[face]!.outer.map((point) => placed(placement, point, 0)[0]);
    return { from: Math.min(...xs), to: Math.max(...xs) };
  }

  /** Whether a placement lays the sheet flat between y = 0 and y = T, with the face up that lies up in the brake. */
  private inRun({ origin, alongX, alongY, alongZ }: Placement): boolean {
    const { markedFaceUp, part } = this.plan;
    if (alongZ[1] > 0 !== markedFaceUp) return false;
    const flat = Math.abs(alongX[1]) < COPLANAR && Math.abs(alongY[1]) < COPLANAR;
    return flat && Math.abs(origin[1] - (markedFaceUp ? 0 : part.thicknessMm)) < LEVEL_MM;
  }

  /** Whether a hinge's clamped side lies flat on the bed with its tangent line where the stroke's is. */
  private onLine(placement: Placement, { tangent, nx, ny }: Fold): boolean {
    const { thicknessMm } = this.plan.part;
    const spot = placed(placement, tangent, 0);
    const other = placed(placement, tangent, thicknessMm);
    return (
      dot(turned(placement, [nx, ny, 0]), [1, 0, 0]) > 1 - ONE_WAY &&
      Math.abs(spot[0] - this.seat.clampedTangentX) < ONE_LINE_MM &&
      Math.abs(Math.min(spot[1], other[1])) < ONE_LINE_MM
    );
  }
}

/** Sheet whose height and slope over the bed are less than this lies in the plane of the run. */
const COPLANAR = 1e-6;
const LEVEL_MM: Mm = 1e-4;

/** Longer than any run: how far along it the bend zone may grow. */
const LONG_MM: Mm = 1e5;
