/**
 * The part of a job as measured in the file: thickness, flats, angles and asked radii, in mm and degrees.
 * What the brake makes of it (formed radius, overbend, tangent lengths) is worked out in formPart.ts.
 */
import type { Turn } from "../part/part.ts";
import type { Deg, Mm } from "../units/quantity.ts";
import { angleAt, figureAt, lengthAt, type Reading, refuse, thicknessAt } from "./reading.ts";
import { type MetalRead, readMetal } from "./readMetal.ts";
import type { JobFile } from "./schema.ts";

export interface AskedBend {
  readonly angleDeg: Deg;
  readonly turn: Turn;
  readonly insideRadiusMm: Mm;
  /** Absent: to be worked out from springback. */
  readonly overbendDeg?: Deg;
}

export interface AskedPart {
  readonly name: string;
  readonly metal: MetalRead;
  readonly thicknessMm: Mm;
  readonly kFactor: number;
  readonly lengthMm?: Mm;
  readonly dimensions: "outside" | "inside" | "flat";
  /** As dimensioned, bend setbacks not yet taken off. */
  readonly flatsMm: readonly Mm[];
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
  const flatsMm = readFlats(reading, file);
  const bends = file.bends.map((bend, i) => readBend(reading, `part.bends[${i}]`, bend, radiusMm));
  if (reading.problems.length > before || metal === undefined || kFactor === undefined) return undefined;
  return {
    name: file.name,
    metal,
    thicknessMm,
    kFactor,
    ...(lengthMm !== undefined && { lengthMm }),
    dimensions: file.dimensions,
    flatsMm,
    bends,
  };
}

function readFlats(reading: Reading, file: PartFile): Mm[] {
  const wanted = file.bends.length + 1;
  if (file.flats.length !== wanted) {
    const commas = file.flats.length > wanted ? " (a comma parts two lengths: write 12.5 for 12,5)" : "";
    const allowed = `a list of ${wanted} lengths, one more than there are bends${commas}`;
    refuse(reading, "part.flats", file.flats, allowed);
    return [];
  }
  return file.flats.map((flat, i) => lengthAt(reading, `part.flats[${i}]`, flat, "above0"));
}

function readBend(
  reading: Reading,
  path: string,
  file: PartFile["bends"][number],
  commonRadiusMm: Mm,
): AskedBend {
  const angleDeg = angleAt(reading, `${path}.angle`, file.angle, {
    from: 0,
    to: 180,
    open: "both",
    allowed: "an angle between 0 and 180 degrees, measured from flat",
  });
  const insideRadiusMm =
    file.insideRadius === undefined
      ? commonRadiusMm
      : lengthAt(reading, `${path}.insideRadius`, file.insideRadius, "above0");
  if (file.overbend === undefined) return { angleDeg, turn: file.turn, insideRadiusMm };
  const overbendDeg = angleAt(reading, `${path}.overbend`, file.overbend, {
    from: Number.isNaN(angleDeg) ? 0 : angleDeg,
    to: 180 - 1e-9,
    allowed: `at least the bend's own angle${Number.isNaN(angleDeg) ? "" : `, ${angleDeg} degrees,`} and less than 180`,
  });
  return { angleDeg, turn: file.turn, insideRadiusMm, overbendDeg };
}
