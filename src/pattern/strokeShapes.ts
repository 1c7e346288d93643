/**
 * All the sheet of a seated stroke as shapes: the clamped side, the moving side, and the stroke's own strips.
 * A face or strip in the plane of its side's run is run; any other is a body, or an arc where its bend runs along w.
 */
import type { Mm } from "../units/quantity.ts";
import { arcFrame, bentSlices, isAlongW, keptSide, type MadeBend } from "./bentSlices.ts";
import { foldOf } from "./folding.ts";
import { type Ring, signedArea } from "./ring.ts";
import { type RunPiece, RunShape, ZoneRunShape } from "./runShape.ts";
import { ArcShape, clippedW, type Setting, type Shape, SolidShape } from "./shape.ts";
import { plateSolid } from "./solid.ts";
import { type Placement, placed } from "./space.ts";
import { inRun, type StrokeSeat, type StrokeSide } from "./strokeSeat.ts";

export interface StrokeShapes {
  readonly setting: Setting;
  readonly clamped: readonly Shape[];
  readonly moving: readonly Shape[];
  /** The stroke's own strips, flat, and as finished bends. */
  readonly flatZone: readonly Shape[];
  readonly bentZone: readonly Shape[];
}

/** Shapes with faces drawn in by `insetMm`; `closed` where they are measured rather than swept (shape.ts). */
export function strokeShapes(at: StrokeSeat, insetMm: Mm, closed: boolean): StrokeShapes {
  const { part, pieces, seat } = at;
  const { thicknessMm } = part;
  const setting: Setting = { pieces, pivot: seat.pivot, thicknessMm, insetMm, closed };
  const sides: Record<StrokeSide, { shapes: Shape[]; run: RunPiece[] }> = {
    clamped: { shapes: [], run: [] },
    moving: { shapes: [], run: [] },
  };
  const flat = (ring: Ring, placement: Placement, side: StrokeSide, face: number, offSupport: boolean) => {
    if (inRun(placement, thicknessMm, at.markedFaceUp)) {
      sides[side].run.push({ ring: inSection(ring, placement), face });
      return;
    }
    const solid = plateSolid(ring, placement, insetMm, thicknessMm - insetMm);
    sides[side].shapes.push(new SolidShape(setting, solid, face, offSupport));
  };
  const besideRun = facesBesideRun(at);
  part.facePieces.forEach((rings, face) => {
    for (const ring of rings) flat(ring, at.placements[face]!, at.sides[face]!, face, besideRun.has(face));
  });
  for (const { hinge, made, before, fold, faces, side } of at.strips) {
    const rings = part.stripPieces.get(hinge)!;
    if (!made) {
      for (const ring of rings) flat(ring, before, side, faces[0], besideRun.has(faces[0]));
      continue;
    }
    const up = part.sheet.pattern.bends[hinge.bend]!.turn === at.bend.turn;
    const offSupport = up && faces.some((face) => inRun(at.placements[face]!, thicknessMm, at.markedFaceUp));
    sides[side].shapes.push(...madeShapes(setting, { before, fold, pieces: rings }, faces[0], offSupport));
  }
  return {
    setting,
    clamped: [...sides.clamped.shapes, ...ofRun(setting, sides.clamped.run)],
    moving: [...sides.moving.shapes, ...ofMovingRun(setting, sides.moving.run, at)],
    ...ownZone(at, setting),
  };
}

function madeShapes(setting: Setting, made: MadeBend, face: number, offSupport: boolean): Shape[] {
  const { thicknessMm, insetMm } = setting;
  if (isAlongW(made)) return [new ArcShape(setting, arcFrame(made, thicknessMm), made, face, offSupport)];
  return bentSlices(made, thicknessMm, insetMm).map(
    (solid) => new SolidShape(setting, solid, face, offSupport),
  );
}

/** Faces right beyond an up-turned made bend at a run's end. */
function facesBesideRun(at: StrokeSeat): ReadonlySet<number> {
  const { part, placements, markedFaceUp } = at;
  const isRun = (face: number) => inRun(placements[face]!, part.thicknessMm, markedFaceUp);
  const beside = new Set<number>();
  for (const { hinge, made } of at.strips) {
    if (!made || part.sheet.pattern.bends[hinge.bend]!.turn !== at.bend.turn) continue;
    for (const [here, there] of [
      [hinge.left, hinge.right],
      [hinge.right, hinge.left],
    ] as const) {
      if (here.some(isRun)) for (const face of there) beside.add(face);
    }
  }
  return beside;
}

/** A ring of the blank as x of the section and, for y, w. */
function inSection(ring: Ring, placement: Placement): Ring {
  return ring.map((point) => {
    const [x, , w] = placed(placement, point, 0);
    return { x, y: w };
  });
}

function ofRun(setting: Setting, run: readonly RunPiece[]): Shape[] {
  return run.length === 0 ? [] : [new RunShape(setting, run)];
}

/** The moving run, in the stretches of the stroke's own strips and beside them. */
function ofMovingRun(setting: Setting, run: readonly RunPiece[], { ownStrips, seat }: StrokeSeat): Shape[] {
  const stretches = ownStrips.map(({ stretch }) => stretch).sort((a, b) => a.from - b.from);
  const startX = seat.movingTangentX - ON_LINE_MM;
  const kept = (ring: Ring) => (ring.length < 3 ? [] : [ring]);
  const beside: RunPiece[] = [];
  const zones = stretches.map(({ from, to }) =>
    run.flatMap(({ ring, face }): RunPiece[] => {
      const here = clippedW(ring, from, to);
      beside.push(...kept(keptSide(here, ({ x }) => startX - x)).map((one) => ({ ring: one, face })));
      return kept(keptSide(here, ({ x }) => x - startX)).map((one) => ({ ring: one, face }));
    }),
  );
  const ends = [-Infinity, ...stretches.flatMap(({ from, to }) => [from, to]), Infinity];
  for (let i = 0; i < ends.length; i += 2) {
    for (const { ring, face } of run)
      beside.push(...kept(clippedW(ring, ends[i]!, ends[i + 1]!)).map((one) => ({ ring: one, face })));
  }
  return [
    ...zones.filter((parts) => parts.length > 0).map((parts) => new ZoneRunShape(setting, parts)),
    ...ofRun(
      setting,
      beside.filter(({ ring }) => areaOf(ring) > LEAST_AREA_MM2),
    ),
  ];
}

/** A point this little short of the moving tangent line is on it. */
const ON_LINE_MM: Mm = 1e-6;

/** Clipping leaves slivers of no width. */
const LEAST_AREA_MM2 = 1e-9;

function areaOf(ring: Ring): number {
  return Math.abs(signedArea(ring));
}

function ownZone(at: StrokeSeat, setting: Setting): Pick<StrokeShapes, "flatZone" | "bentZone"> {
  const { part } = at;
  const hinges = new Map(at.ownStrips.map(({ hinge, placement }) => [hinge, placement]));
  const flatZone: Shape[] = [];
  const bentZone: Shape[] = [];
  for (const [hinge, before] of hinges) {
    const pieces = part.stripPieces.get(hinge)!;
    const side = at.sides[hinge.left[0]!] === "clamped" ? ("left" as const) : ("right" as const);
    const face = hinge[side][0]!;
    flatZone.push(
      ...ofRun(
        setting,
        pieces.map((ring) => ({ ring: inSection(ring, before), face })),
      ),
    );
    const fold = foldOf(part.sheet.pattern.bends[hinge.bend]!, part.thicknessMm, side);
    bentZone.push(...madeShapes(setting, { before, fold, pieces }, face, true));
  }
  return { flatZone, bentZone };
}
