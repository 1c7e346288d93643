/**
 * The part of a job as measured in the file: thickness, flats, angles and asked radii, in mm and degrees.
 * What the brake makes of it (formed radius, overbend, tangent lengths) is worked out in formPart.ts.
 */
import type { BendAsked } from "../motion/formBends.ts";
import type { ClosedBends } from "../part/bendSetback.ts";
import { MOST_FOLD_DEG } from "../part/hem.ts";
import type { Hem } from "../part/part.ts";
import type { Deg, Mm } from "../units/quantity.ts";
import { type AskedFlat, type AskedOverall, readFlats, readOverall } from "./readFlats.ts";
import { angleAt, figureAt, lengthAt, type Reading, refuse, thicknessAt } from "./reading.ts";
import { type MetalRead, readMetal } from "./readMetal.ts";
import type { JobFile } from "./schema.ts";

export interface AskedBend extends BendAsked {
  /** Absent: to be worked out from the allowance. */
  readonly deductionMm?: Mm;
  /** Of a hem; then angle and radius are those of its first stroke. */
  readonly hem?: Pick<Hem, "kind" | "gapMm">;
}

export interface AskedPart {
  readonly name: string;
  readonly metal: MetalRead;
  readonly thicknessMm: Mm;
  readonly kFactor: number;
  readonly allowanceBy: "kFactor" | "din6935";
  readonly lengthMm?: Mm;
  readonly closedBends: ClosedBends;
  /** As dimensioned, bend setbacks not yet taken off. */
  readonly flats: readonly AskedFlat[];
  readonly overall?: AskedOverall;
  readonly bends: readonly AskedBend[];
}

type PartFile = JobFile["part"];

/** The part as asked for, or undefined with the problems noted. */
export function readPart(reading: Reading, file: PartFile): AskedPart | undefined {
  const before = reading.problems.length;
  const metal = readMetal(reading, file.material);
  const thicknessMm = thicknessAt(reading, "part.thickness", file.thickness);
  const radiusMm = lengthAt(reading, "part.insideRadius", file.insideRadius, "above0");
  const kFactor =
    file.kFactor === undefined
      ? metal?.kFactor
      : figureAt(reading, "part.kFactor", file.kFactor, { from: 0, to: 1, allowed: "a number from 0 to 1" });
  const lengthMm =
    file.length === undefined ? undefined : lengthAt(reading, "part.length", file.length, "above0");
  const flats = readFlats(reading, file);
  const overall = readOverall(reading, file);
  const bends = file.bends.map((bend, i) => {
    const path = `part.bends[${i}]`;
    const atEdge = i === 0 || i === file.bends.length - 1;
    return bend.hem === undefined
      ? readBend(reading, path, bend, radiusMm)
      : readHem(reading, path, bend, { radiusMm, thicknessMm, atEdge });
  });
  if (reading.problems.length > before || metal === undefined || kFactor === undefined) return undefined;
  return {
    name: file.name,
    metal,
    thicknessMm,
    kFactor,
    ...(lengthMm !== undefined && { lengthMm }),
    closedBends: file.closedBends ?? "corner",
    allowanceBy: file.allowance ?? "kFactor",
    flats,
    ...(overall && { overall }),
    bends,
  };
}

/** A hem, with its first stroke as far as a leaf ever goes. An open or teardrop hem has a gap of one thickness unless said. */
function readHem(
  reading: Reading,
  path: string,
  file: PartFile["bends"][number],
  {
    radiusMm,
    thicknessMm,
    atEdge,
  }: { readonly radiusMm: Mm; readonly thicknessMm: Mm; readonly atEdge: boolean },
): AskedBend {
  const kind = file.hem ?? "closed";
  if (!atEdge)
    refuse(reading, `${path}.hem`, kind, "the first or the last bend, since a hem folds an edge back");
  for (const key of ["angle", "included", "overbend", "deduction"] as const) {
    if (file[key] !== undefined)
      refuse(
        reading,
        `${path}.${key}`,
        file[key],
        "left out, since a hem is folded as far as the leaf gets and then flattened",
      );
  }
  const gapMm =
    file.gap === undefined
      ? kind === "closed"
        ? 0
        : thicknessMm
      : lengthAt(reading, `${path}.gap`, file.gap, "atLeast0");
  if (kind === "closed" && gapMm > 0)
    refuse(reading, `${path}.gap`, file.gap, 'left out, or the hem "open"; a closed hem has no gap');
  if (kind !== "closed" && gapMm === 0)
    refuse(reading, `${path}.gap`, file.gap, 'a length greater than 0, or the hem "closed"');
  const insideRadiusMm =
    file.insideRadius === undefined
      ? radiusMm
      : lengthAt(reading, `${path}.insideRadius`, file.insideRadius, "above0");
  return { angleDeg: MOST_FOLD_DEG, turn: file.turn, insideRadiusMm, hem: { kind, gapMm } };
}

function readBend(
  reading: Reading,
  path: string,
  file: PartFile["bends"][number],
  commonRadiusMm: Mm,
): AskedBend {
  if (file.gap !== undefined)
    refuse(reading, `${path}.gap`, file.gap, "left out, since only a hem has a gap");
  const angleDeg = readAngle(reading, path, file);
  const insideRadiusMm =
    file.insideRadius === undefined
      ? commonRadiusMm
      : lengthAt(reading, `${path}.insideRadius`, file.insideRadius, "above0");
  const deductionMm =
    file.deduction === undefined ? undefined : lengthAt(reading, `${path}.deduction`, file.deduction, "any");
  const bend = {
    angleDeg,
    turn: file.turn,
    insideRadiusMm,
    ...(deductionMm !== undefined && { deductionMm }),
  };
  if (file.overbend === undefined) return bend;
  const overbendDeg = angleAt(reading, `${path}.overbend`, file.overbend, {
    from: Number.isNaN(angleDeg) ? 0 : angleDeg,
    to: 180 - 1e-9,
    allowed: `at least the bend's own angle${Number.isNaN(angleDeg) ? "" : `, ${angleDeg} degrees,`} and less than 180`,
  });
  return { ...bend, overbendDeg };
}

/** The bend angle from flat, given as such or by the angle that the two flats include. */
function readAngle(reading: Reading, path: string, { angle, included }: PartFile["bends"][number]): Deg {
  const range = { from: 0, to: 180, open: "both" } as const;
  if (included === undefined) {
    if (angle === undefined)
      return refuse(
        reading,
        `${path}.angle`,
        angle,
        "an angle in degrees from flat, or included in its place",
      );
    const allowed = "an angle between 0 and 180 degrees, measured from flat";
    return angleAt(reading, `${path}.angle`, angle, { ...range, allowed });
  }
  if (angle !== undefined)
    return refuse(reading, `${path}.included`, included, "left out, since the bend has its angle already");
  const allowed = "an angle between 0 and 180 degrees, as a protractor reads it between the two flats";
  return 180 - angleAt(reading, `${path}.included`, included, { ...range, allowed });
}
