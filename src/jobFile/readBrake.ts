/**
 * The brake of a job: clamp, bed, leaf, frame, lift and rating in mm, each shape made into outlines.
 * Measures that don't go together are told by the key that would have to change.
 */
import { bedFault, leafFault } from "../brake/bedAndLeaf.ts";
import type { Brake, BrakeDoubts, Clamp, Leaf, Rating } from "../brake/brake.ts";
import { boxOf } from "../plane/bounding.ts";
import type { Outline } from "../plane/outline.ts";
import type { Mm } from "../units/quantity.ts";
import { readClamp } from "./readClamp.ts";
import {
  angleAt,
  lengthAt,
  noteFault,
  type Reading,
  refuse,
  sayLimit,
  strengthAt,
  thicknessAt,
} from "./reading.ts";
import { YIELD } from "./readMetal.ts";
import { readCorners, readOutline } from "./readOutline.ts";
import type { FramePieceFile, JobFile } from "./schema.ts";
import { LIMITS } from "./shapes.ts";

type BrakeFile = JobFile["brake"];

/** The brake, or undefined with the problems noted. */
export function readBrake(reading: Reading, file: BrakeFile): Brake | undefined {
  const corners = cornersOf(file);
  if (corners > LIMITS.allCorners) {
    const found = `${corners} corners in all its profiles`;
    reading.problems.push({ path: "brake", found, allowed: `at most ${LIMITS.allCorners}` });
    return undefined;
  }
  const clamp = readClamp(reading, file.clamp);
  const bed = readBed(reading, file);
  const leaf = readLeaf(reading, file);
  const pieces = (file.frame ?? []).map((piece, i) => readFramePiece(reading, `brake.frame[${i}]`, piece));
  const whole = pieces.filter((piece) => piece !== undefined && piece.along === undefined);
  const stretches = pieces.flatMap((piece) =>
    piece?.along ? [{ outline: piece.outline, name: piece.name ?? "", ...piece.along }] : [],
  );
  const lengthMm = stretches.length > 0 ? readLength(reading, file) : undefined;
  const liftMm = lengthAt(reading, "brake.lift", file.lift, "atLeast0");
  const noseSetback = readNoseSetback(reading, file.setback ?? "auto");
  const least = (key: "leastGrip" | "leastFlange") => {
    const written = file[key];
    return written === undefined ? undefined : lengthAt(reading, `brake.${key}`, written, "atLeast0");
  };
  const [leastGripMm, leastFlangeMm] = [least("leastGrip"), least("leastFlange")];
  const rating = file.rated && readRating(reading, file.rated);
  const doubts = file.doubts && clamp && readDoubts(reading, file, clamp);
  if (!clamp || !bed || !leaf || reading.problems.length > 0) return undefined;
  return {
    name: file.name,
    clamp,
    bed,
    leaf,
    frame: whole.map((piece) => piece!.outline),
    ...(whole.some((piece) => piece!.name !== undefined) && {
      frameNames: whole.map((piece) => piece!.name),
    }),
    ...(lengthMm !== undefined && { stretches, lengthMm }),
    liftMm,
    openEnds: file.openEnds,
    noseSetback,
    ...(rating && { rating }),
    ...(doubts && { doubts }),
    ...(leastGripMm !== undefined && { leastGripMm }),
    ...(leastFlangeMm !== undefined && { leastFlangeMm }),
    ...(file.measured !== undefined && { measuredOn: file.measured }),
  };
}

function readFramePiece(reading: Reading, path: string, piece: FramePieceFile) {
  if (!("profile" in piece)) {
    const outline = readOutline(reading, path, piece);
    return outline && { outline, name: undefined, along: undefined };
  }
  const outline = readOutline(reading, `${path}.profile`, piece.profile);
  const [fromMm = 0, toMm = 0] = (piece.along ?? []).map((end, i) =>
    lengthAt(reading, `${path}.along[${i}]`, end, "any"),
  );
  if (piece.along && !(toMm > fromMm)) {
    const found = `from ${piece.along[0]} to ${piece.along[1]}`;
    reading.problems.push({ path: `${path}.along`, found, allowed: "[from, to], to the right of from" });
  }
  return outline && { outline, name: piece.name, along: piece.along && { fromMm, toMm } };
}

/** The length that stretches are told along. */
function readLength(reading: Reading, { length }: BrakeFile): Mm | undefined {
  if (length !== undefined) return lengthAt(reading, "brake.length", length, "above0");
  const allowed = "the length of bed and leaf, since a frame piece says where along it it stands";
  reading.problems.push({ path: "brake.length", found: "nothing", allowed });
  return undefined;
}

/** Corners of all profiles together: they bound the work of finding crossings. */
function cornersOf({ clamp, bed, leaf, frame = [] }: BrakeFile): number {
  const pieces = frame.map((piece) => ("profile" in piece ? piece.profile : piece));
  const profiles = [
    bed.profile,
    leaf.profile,
    ...pieces,
    ...(clamp.type === "profile" ? clamp.profiles : []),
  ];
  return profiles.reduce((sum, profile) => sum + profile.length, 0);
}

function readBed(reading: Reading, file: BrakeFile): Outline | undefined {
  const outline = readOutline(reading, "brake.bed.profile", file.bed.profile);
  const fault = outline && bedFault(readCorners(reading, "brake.bed.profile", file.bed.profile));
  return fault ? noteFault(reading, "brake.bed", file.bed.profile, fault) : outline;
}

function readLeaf(reading: Reading, file: BrakeFile): Leaf | undefined {
  const outline = readOutline(reading, "brake.leaf.profile", file.leaf.profile);
  const swingDeg = angleAt(reading, "brake.leaf.swing", file.leaf.swing, {
    from: 0,
    to: 180,
    open: "from",
    allowed: "an angle greater than 0 and up to 180 degrees",
  });
  const [x, y] = (file.leaf.pivot ?? [0, 0]).map((value, i) =>
    lengthAt(reading, `brake.leaf.pivot[${i}]`, value, "any"),
  );
  if (!outline) return undefined;
  const fault = leafFault(boxOf(outline));
  if (fault) return noteFault(reading, "brake.leaf", file.leaf.profile, fault);
  return { outline, swingDeg, pivot: { x: x!, y: y! } };
}

function readNoseSetback(reading: Reading, written: number | string): "auto" | "one" | Mm {
  const word = typeof written === "string" ? written.trim().toLowerCase() : "";
  if (word === "auto" || word === "one") return word;
  const before = reading.problems.length;
  const noseSetbackMm = lengthAt(reading, "brake.setback", written, "any");
  if (reading.problems.length > before) {
    const allowed =
      '"auto", "one" for all bends, or a length (less than 0 where the nose stands over the leaf)';
    reading.problems[before] = { ...reading.problems[before]!, allowed };
  }
  return noseSetbackMm;
}

/** A doubted nose radius is tried in steps of this. */
const NOSE_STEP_MM: Mm = 0.02;

/** How far off overbend, nose setback and nose radius may be, either way; a doubted nose is read anew for each step. */
function readDoubts(reading: Reading, { doubts = {}, clamp: file }: BrakeFile, clamp: Clamp): BrakeDoubts {
  const { overbend, setback, noseRadius } = doubts;
  const overbendDeg =
    overbend === undefined
      ? undefined
      : angleAt(reading, "brake.doubts.overbend", overbend, {
          from: 0,
          to: 30,
          allowed: "an angle from 0 to 30 degrees that the leaf may want more or less",
        });
  const noseSetbackMm =
    setback === undefined ? undefined : lengthAt(reading, "brake.doubts.setback", setback, "atLeast0");
  const radiusMm =
    noseRadius === undefined ? 0 : lengthAt(reading, "brake.doubts.noseRadius", noseRadius, "atLeast0");
  const bareMm = clamp.noseRadiusMm - (clamp.shimMm ?? 0);
  if (radiusMm >= bareMm && radiusMm > 0) {
    const allowed = `less than the nose radius, ${sayLimit(reading.units, "most")(bareMm)}`;
    refuse(reading, "brake.doubts.noseRadius", noseRadius, allowed);
  }
  if (radiusMm > 0 && clamp.asDrawn?.ownRounding)
    refuse(
      reading,
      "brake.doubts.noseRadius",
      noseRadius,
      "left out, since the profile's own rounding is taken",
    );
  const either = Math.ceil(radiusMm / NOSE_STEP_MM);
  const clamps =
    radiusMm > 0 && reading.problems.length === 0
      ? Array.from({ length: 2 * either + 1 }, (_, i) => {
          const mm = bareMm + ((i - either) / either) * radiusMm;
          return i === either ? clamp : readClamp(reading, { ...file, noseRadius: `${mm} mm` });
        })
      : [];
  return {
    ...(overbendDeg !== undefined && { overbendDeg }),
    ...(noseSetbackMm !== undefined && { noseSetbackMm }),
    ...(clamps.length > 0 &&
      clamps.every((one) => one !== undefined) && { noseRadius: { mm: radiusMm, clamps } }),
  };
}

function readRating(reading: Reading, rated: NonNullable<BrakeFile["rated"]>): Rating {
  return {
    thicknessMm: thicknessAt(reading, "brake.rated.thickness", rated.thickness),
    lengthMm: lengthAt(reading, "brake.rated.length", rated.length, "above0"),
    yieldMpa: strengthAt(reading, "brake.rated.yield", rated.yield, YIELD),
  };
}
