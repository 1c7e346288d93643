/**
 * The two strokes of a hem as parts in a brake. First an ordinary bend at some leaf angle: its arc takes up other sheet than the
 * finished hem does, half of the difference lies in the flat on either side. Then flattening: the hem lies on the flat beside it, its free
 * edge level with the end of the clamp's underside, and the clamp comes down on both layers. There the rest of the part is checked
 * as a bend of no angle with the hem in the throat; the hem itself lies between bed and clamp.
 */
import type { Brake } from "../brake/brake.ts";
import { leastHemLiftMm } from "../part/hem.ts";
import type { Bend, End, Part } from "../part/part.ts";
import { type Deg, type Mm, toRad } from "../units/quantity.ts";
import { formBends } from "./formBends.ts";

/** So little that nothing moves, and more than nothing for formulas that divide by it. */
const NO_ANGLE_DEG: Deg = 0.001;

/** Which end of the part a hem is at, and so which end lies in the throat to be flattened. */
export function hemEnd(bend: number): End {
  return bend === 0 ? "start" : "end";
}

/** The part with a hem's first stroke as an ordinary bend at this leaf angle; undefined where its arc would eat a whole flat. */
export function hemFolded(part: Part, brake: Brake, bend: number, leafDeg: Deg): Part | undefined {
  const made = part.bends[bend]!;
  const { thicknessMm, kFactor } = part;
  const { kept, foldRadiusMm } = made.hem!;
  const asked = {
    angleDeg: leafDeg * kept,
    overbendDeg: leafDeg,
    turn: made.turn,
    insideRadiusMm: foldRadiusMm,
  };
  const noseSetback = brake.noseSetback === "one" ? "auto" : brake.noseSetback;
  const forming = { thicknessMm, kFactor, brake: { ...brake, noseSetback }, keptAt: () => kept };
  const [formed] = formBends([asked], forming);
  if (!formed?.ok) return undefined;
  const laidMm = (made.allowanceMm - formed.bend.allowanceMm) / 2;
  const flatsMm = part.flatsMm.map((flatMm, i) => (i === bend || i === bend + 1 ? flatMm + laidMm : flatMm));
  if (!flatsMm.every((flatMm) => flatMm > 0)) return undefined;
  return { ...part, flatsMm, bends: part.bends.with(bend, formed.bend) };
}

/** A hem under the clamp. */
export interface Flattening {
  /** The part without its hem, in the throat as far as the hem reaches. Numbers are those of the whole part. */
  readonly part: Part;
  /** The same with the hem drawn: one flat and one bend more beyond the throat's, at the hem's end. */
  readonly drawn: Part;
  readonly brake: Brake;
  /** Where the clamp's underside stands when it has come down on both layers. */
  readonly underClampMm: Mm;
  /** Whether the clamp opens enough for the hem as it was folded. */
  readonly lifts: boolean;
  /** How far it opens, and how far it would have to, from the sheet. */
  readonly liftMm: Mm;
  readonly leastLiftMm: Mm;
}

/** The second stroke; undefined where the flat beside the hem is shorter than it. `folded` is the part after the first one. */
export function hemFlattened(part: Part, brake: Brake, bend: number, folded: Part): Flattening | undefined {
  const made = part.bends[bend]!;
  const hem = made.hem!;
  const T = part.thicknessMm;
  const first = bend === 0;
  const [lip, beside] = first ? [bend, bend + 1] : [bend + 1, bend];
  const coverMm = part.flatsMm[lip]! + made.bendSetbackMm;
  const restMm = part.flatsMm[beside]! - part.flatsMm[lip]!;
  if (restMm <= 0) return undefined;
  const tipMm = tipOf(folded, bend, lip);
  const leastLiftMm = Math.max(leastHemLiftMm(hem, T), tipMm - T);
  const underClampMm = 2 * T + hem.gapMm;
  const ghost = ghostOf(made, part, brake);
  const flatsMm = part.flatsMm.with(lip, coverMm).with(beside, restMm);
  const lifts = brake.liftMm >= leastLiftMm - 1e-9;
  return {
    part: { ...part, flatsMm, bends: part.bends.with(bend, ghost) },
    drawn: {
      ...part,
      flatsMm: part.flatsMm.with(beside, restMm).toSpliced(first ? 1 : beside + 1, 0, part.flatsMm[lip]!),
      bends: part.bends.toSpliced(first ? 1 : bend, 0, ghost),
    },
    // The clamp stands on two layers then, and what is lost of its lift to the hem as folded is lost going in.
    brake: {
      ...brake,
      leastGripMm: 0,
      leastFlangeMm: 0,
      liftMm: Math.max(0, brake.liftMm - Math.max(tipMm - T, T + hem.gapMm)),
    },
    underClampMm,
    lifts,
    liftMm: brake.liftMm,
    leastLiftMm,
  };
}

/** How high the folded hem stands over the bed: the outer face at its tip, or the top of its arc. */
function tipOf(folded: Part, bend: number, lip: number): Mm {
  const { angleDeg, insideRadiusMm } = folded.bends[bend]!;
  const turned = toRad(angleDeg);
  const arcMm = (insideRadiusMm + folded.thicknessMm) * (1 - Math.cos(turned));
  return arcMm + folded.flatsMm[lip]! * Math.sin(turned);
}

/** A bend of no angle where the clamp's underside ends. */
function ghostOf({ turn }: Bend, { thicknessMm, kFactor }: Part, { noseSetback, clamp }: Brake): Bend {
  const insideRadiusMm = Math.max(clamp.noseRadiusMm, thicknessMm);
  const half = toRad(NO_ANGLE_DEG) / 2;
  const allowanceMm = 2 * half * (insideRadiusMm + kFactor * thicknessMm);
  const bendSetbackMm = Math.tan(half) * (insideRadiusMm + thicknessMm);
  return {
    angleDeg: NO_ANGLE_DEG,
    overbendDeg: NO_ANGLE_DEG,
    turn,
    insideRadiusMm,
    allowanceMm,
    bendSetbackMm,
    deductionMm: 2 * bendSetbackMm - allowanceMm,
    noseSetbackMm: typeof noseSetback === "number" ? noseSetback : thicknessMm,
    pinched: false,
    flattens: true,
  };
}
