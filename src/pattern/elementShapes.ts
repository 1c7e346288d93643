/**
 * Shapes of one element of a stroke: of a face, of the strips that lead to it, and of the stroke's own strips. What lies in
 * the plane of its side's run is run; anything else is a body, or an arc where its bend runs along w.
 */
import type { Mm } from "../units/quantity.ts";
import { arcFrame, BentBody, isAlongW, keptSide, type MadeBend, unrolled } from "./bentSlices.ts";
import { type Ring, signedArea } from "./ring.ts";
import { type RunPiece, RunShape, ZoneRunShape } from "./runShape.ts";
import { ArcShape, clippedW, type Setting, type Shape, SolidShape } from "./shape.ts";
import { plateSolid } from "./solid.ts";
import { type Placement, placed } from "./space.ts";
import type { Interval, StrokePlan, StrokeSide } from "./strokePlan.ts";

/** The stroke round an element: stretches of w of its own strips, and where the moving side's tangent line lies. */
export interface Surroundings {
  readonly setting: Setting;
  readonly stretches: readonly Interval[];
  readonly startX: Mm;
}

interface LaidFace {
  readonly placement: Placement;
  readonly pieces: readonly Ring[];
  readonly run: boolean;
}

/** Shapes of a flat face. */
export function faceShapes(
  around: Surroundings,
  { placement, pieces, run }: LaidFace,
  side: StrokeSide,
  face: number,
): Shape[] {
  const { setting } = around;
  if (!run) {
    const { thicknessMm, insetMm } = setting;
    return pieces.map(
      (ring) => new SolidShape(setting, plateSolid(ring, placement, insetMm, thicknessMm - insetMm), face),
    );
  }
  const parts = pieces.map((ring): RunPiece => ({ ring: inSection(ring, placement), face }));
  return side === "moving" ? movingRun(around, parts) : runOf(setting, parts);
}

interface LaidStrip extends MadeBend {
  readonly made: boolean;
  /** Not made, in the plane of the run. */
  readonly run: boolean;
}

/** Shapes of the strips before a face: a made bend, or flat sheet. */
export function stripShapes(around: Surroundings, strip: LaidStrip, side: StrokeSide, face: number): Shape[] {
  const { before, pieces, run } = strip;
  if (strip.made) return madeShapes(around.setting, strip, face);
  return faceShapes(around, { placement: before, pieces, run }, side, face);
}

function madeShapes(setting: Setting, made: MadeBend, face: number): Shape[] {
  const { before } = made;
  if (!isAlongW(made)) return [new SolidShape(setting, new BentBody(setting.slices(made), before), face)];
  const flat = made.pieces.map((piece) =>
    unrolled(made, piece).map(({ across, w }) => ({ x: across, y: w })),
  );
  return [new ArcShape(setting, arcFrame(made, setting.thicknessMm), made, flat, face)];
}

/** The stroke's own strips: flat, and as finished bends. */
export function zoneShapes(
  { own, part, laid }: StrokePlan,
  { setting }: Surroundings,
): { readonly flat: readonly Shape[]; readonly bent: readonly Shape[] } {
  const strips = own.map(({ hinge, face, fold }) => ({ face, fold, pieces: part.stripPieces.get(hinge)! }));
  return {
    flat: strips.flatMap(({ face, pieces }) =>
      runOf(
        setting,
        pieces.map((ring) => ({ ring: inSection(ring, laid), face })),
      ),
    ),
    bent: strips.flatMap(({ face, fold, pieces }) =>
      madeShapes(setting, { before: laid, fold, pieces }, face),
    ),
  };
}

/** A ring of the blank as x of the section and, for y, w. */
function inSection(ring: Ring, placement: Placement): Ring {
  return ring.map((point) => {
    const [x, , w] = placed(placement, point, 0);
    return { x, y: w };
  });
}

function runOf(setting: Setting, parts: readonly RunPiece[]): Shape[] {
  return parts.length === 0 ? [] : [new RunShape(setting, parts)];
}

/** Moving run in the stretches of the stroke's own strips, and beside them. */
function movingRun({ setting, stretches, startX }: Surroundings, run: readonly RunPiece[]): Shape[] {
  const start = startX - ON_LINE_MM;
  const kept = (ring: Ring) => (ring.length < 3 || Math.abs(signedArea(ring)) < LEAST_AREA_MM2 ? [] : [ring]);
  const beside: RunPiece[] = [];
  const zones = stretches.map(({ from, to }) =>
    run.flatMap(({ ring, face }): RunPiece[] => {
      const here = clippedW(ring, from, to);
      beside.push(...kept(keptSide(here, ({ x }) => start - x)).map((one) => ({ ring: one, face })));
      return kept(keptSide(here, ({ x }) => x - start)).map((one) => ({ ring: one, face }));
    }),
  );
  const ends = [-Infinity, ...stretches.flatMap(({ from, to }) => [from, to]), Infinity];
  for (let i = 0; i < ends.length; i += 2) {
    for (const { ring, face } of run)
      beside.push(...kept(clippedW(ring, ends[i]!, ends[i + 1]!)).map((one) => ({ ring: one, face })));
  }
  return [
    ...zones.filter((parts) => parts.length > 0).map((parts) => new ZoneRunShape(setting, parts)),
    ...runOf(setting, beside),
  ];
}

/** A point this little short of the moving tangent line is on it. */
const ON_LINE_MM: Mm = 1e-6;

/** Clipping leaves slivers of no width. */
const LEAST_AREA_MM2 = 1e-9;
