/**
 * The clamp of a job: finger, bar or free profile, from the file's keys to outlines in nose coordinates.
 * A fault of the shape is told by the key that would have to change.
 */
import { barClamp } from "../brake/bar.ts";
import type { AsDrawn, Clamp } from "../brake/brake.ts";
import { fingerClamp } from "../brake/finger.ts";
import type { ClampResult, Holder } from "../brake/frontedClamp.ts";
import { noseRounded, ownNoseRadius } from "../brake/noseCorner.ts";
import { FRAME_SLACK_MM, profileClamp } from "../brake/profile.ts";
import { shimmed } from "../brake/shimmed.ts";
import { boxOf } from "../plane/bounding.ts";
import { movedOutline } from "../plane/move.ts";
import type { Deg, Mm } from "../units/quantity.ts";
import { angleAt, lengthAt, noteFault, type Reading, type Sign } from "./reading.ts";
import { outlineOf, readCorners } from "./readOutline.ts";
import type { ClampFile, ProfileFile } from "./schema.ts";

const PATH = "brake.clamp";
type Fronted = Exclude<ClampFile, { type: "profile" }>;

/** The clamp, or undefined with the problems noted. */
export function readClamp(reading: Reading, file: ClampFile): Clamp | undefined {
  const before = reading.problems.length;
  const result = shapedClamp(reading, file);
  if (reading.problems.length > before || result === undefined) return undefined;
  if (result.ok) {
    const shimMm = lengthAt(reading, `${PATH}.shim`, file.shim ?? 0, "atLeast0");
    return reading.problems.length > before ? undefined : shimmed(result.clamp, shimMm);
  }
  const written = (file as Readonly<Record<string, unknown>>)[result.fault.key];
  return noteFault(reading, PATH, written, result.fault);
}

function shapedClamp(reading: Reading, file: ClampFile): ClampResult | undefined {
  const measure = (key: string, written: number | string, sign: Sign): Mm =>
    lengthAt(reading, `${PATH}.${key}`, written, sign);
  const noseRadiusMm = measure("noseRadius", file.noseRadius, "atLeast0");
  if (file.type === "profile") return readProfiles(reading, file.profiles, noseRadiusMm);
  const topRadiusMm = measure("topRadius", file.topRadius ?? 0, "atLeast0");
  const holder = readHolder(reading, file);
  const noseAngleDeg = readNoseAngle(reading, file.noseAngle ?? 90);
  const shared = { noseRadiusMm, noseAngleDeg, topRadiusMm, ...(holder && { holder }) };
  const fault = reading.problems.length;
  if (file.type === "finger") {
    const heightMm = measure("height", file.height, "above0");
    const footDepthMm = measure("footDepth", file.footDepth, "above0");
    return fault < reading.problems.length ? undefined : fingerClamp({ ...shared, heightMm, footDepthMm });
  }
  const thicknessMm = measure("thickness", file.thickness, "above0");
  const depthMm = measure("depth", file.depth, "above0");
  return fault < reading.problems.length ? undefined : barClamp({ ...shared, thicknessMm, depthMm });
}

/**
 * The free shapes. The nose's corner is rounded where it is drawn sharp; a rounding of its own is taken whatever the file gives besides.
 */
function readProfiles(
  reading: Reading,
  profiles: readonly ProfileFile[],
  noseRadiusMm: Mm,
): ClampResult | undefined {
  const before = reading.problems.length;
  const at = (i: number) => `${PATH}.profiles[${i}]`;
  const drawn = profiles.map((profile, i) => readCorners(reading, at(i), profile));
  if (reading.problems.length > before) return undefined;
  const own = ownNoseRadius(drawn);
  const shapes = noseRounded(drawn, noseRadiusMm);
  const outlines = profiles.flatMap((profile, i) => outlineOf(reading, at(i), profile, shapes[i]!) ?? []);
  if (outlines.length < profiles.length) return undefined;
  // Where the corner is rounded, or the clamp is drawn elsewhere, its foremost point is brought to x = 0.
  const foremost = boxOf(...outlines).maxX;
  const drawnAt = Math.max(...drawn.flat().map(({ x }) => x));
  const stays = shapes === drawn && Math.abs(foremost) <= FRAME_SLACK_MM;
  const result = profileClamp({
    noseRadiusMm: own ?? noseRadiusMm,
    outlines: stays ? outlines : outlines.map((one) => movedOutline(one, -foremost, 0)),
  });
  if (!result.ok) return result;
  const asDrawn: AsDrawn = {
    ownRounding: own !== undefined,
    ...(own !== undefined &&
      Math.abs(own - noseRadiusMm) > FRAME_SLACK_MM && { givenRadiusMm: noseRadiusMm }),
    // A sharp corner may be drawn where its rounding will have come to x = 0.
    ...(Math.abs(foremost) > FRAME_SLACK_MM && Math.abs(drawnAt) > FRAME_SLACK_MM && { foremostMm: drawnAt }),
  };
  return { ok: true, clamp: { ...result.clamp, asDrawn } };
}

function readNoseAngle(reading: Reading, written: number | string): Deg {
  return angleAt(reading, `${PATH}.noseAngle`, written, {
    from: 5,
    to: 90,
    allowed: "an angle from 5 to 90 degrees between underside and front face, 90 for a square front",
  });
}

/** All three measures of the holder, or none of them. */
function readHolder(reading: Reading, file: Fronted): Holder | undefined {
  const keys = ["holderBack", "holderHeight", "holderDepth"] as const;
  const missing = keys.filter((key) => file[key] === undefined);
  if (missing.length === keys.length) return undefined;
  for (const key of missing) {
    reading.problems.push({
      path: `${PATH}.${key}`,
      found: "nothing",
      allowed: `a length, since a holder takes all three of ${keys.join(", ")}`,
    });
  }
  const [backMm, heightMm, depthMm] = keys.map((key) =>
    lengthAt(reading, `${PATH}.${key}`, file[key] ?? 1, key === "holderBack" ? "atLeast0" : "above0"),
  );
  return { backMm: backMm!, heightMm: heightMm!, depthMm: depthMm! };
}
