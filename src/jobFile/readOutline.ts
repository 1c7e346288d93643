/**
 * A profile of the file made into an outline, its corners rounded as written.
 * A shape that can't be is told by the corner at fault.
 */
import { type Corner, filletedOutline, type OutlineFault } from "../plane/fillet.ts";
import type { Outline } from "../plane/outline.ts";
import { lengthAt, type Reading, sayLimit } from "./reading.ts";
import type { ProfileFile } from "./schema.ts";

/** The corners of a profile in mm; NaN where one can't be read, with the problem noted. */
export function readCorners(reading: Reading, path: string, profile: ProfileFile): Corner[] {
  return profile.map((corner, i) => ({
    x: lengthAt(reading, `${path}[${i}][0]`, corner[0]!, "any"),
    y: lengthAt(reading, `${path}[${i}][1]`, corner[1]!, "any"),
    ...(corner[2] !== undefined && { radius: lengthAt(reading, `${path}[${i}][2]`, corner[2], "atLeast0") }),
  }));
}

/** The outline of a profile, or undefined with the problem noted. */
export function readOutline(reading: Reading, path: string, profile: ProfileFile): Outline | undefined {
  const before = reading.problems.length;
  const corners = readCorners(reading, path, profile);
  return reading.problems.length > before ? undefined : outlineOf(reading, path, profile, corners);
}

/** The outline of a profile's corners as read, or undefined with the problem noted. */
export function outlineOf(
  reading: Reading,
  path: string,
  profile: ProfileFile,
  corners: readonly Corner[],
): Outline | undefined {
  const result = filletedOutline(corners);
  if (result.ok) return result.outline;
  noteFault(reading, path, profile, result.fault);
  return undefined;
}

function noteFault(reading: Reading, path: string, profile: ProfileFile, fault: OutlineFault): void {
  const at = (corner: number) => `${path}[${corner}]`;
  const written = (corner: number) => `[${profile[corner]?.join(", ")}]`;
  const note = (where: string, found: string, allowed: string) =>
    reading.problems.push({ path: where, found, allowed });
  switch (fault.kind) {
    case "few":
      note(path, `a list of ${profile.length}`, "a closed profile of 3 corners or more");
      return;
    case "flat":
      note(path, "corners that enclose no area", "a closed profile that goes around some metal");
      return;
    case "repeated":
      note(
        at(fault.corner),
        `${written(fault.corner)}, where the corner next to it is already`,
        "another point, since the last corner joins the first by itself",
      );
      return;
    case "crossing":
      note(
        path,
        `a profile that crosses or touches itself, near corners ${fault.corner + 1} and ${fault.other + 1}`,
        "one closed line around the metal",
      );
      return;
    case "radius":
      note(
        `${at(fault.corner)}[2]`,
        String(profile[fault.corner]?.[2]),
        `at most ${sayLimit(reading.units, "most")(fault.largestMm)}, so that the rounding fits between the corners beside it`,
      );
  }
}
