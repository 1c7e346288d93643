/**
 * What a foreman would say to a brake as it is described: possible, but probably not what was meant.
 * All of it common practice, no source; each remark is one sentence, lengths in the reader's unit.
 */
import { type Box, boxOf } from "../plane/bounding.ts";
import { commonArea } from "../plane/library.ts";
import type { Outline } from "../plane/outline.ts";
import type { Mm } from "../units/quantity.ts";
import type { Brake } from "./brake.ts";
import type { SayLength } from "./fault.ts";
import { FRAME_SLACK_MM } from "./profile.ts";

/** A pivot farther from the bed's edge than this is more likely measured from somewhere else. */
const FAR_PIVOT_MM: Mm = 25;

/** Shared area from which two pieces of the brake are said to stand in one place, in mm². */
const SHARED_MM2 = 0.1;

/**
 * Remarks on the brake alone, for a sheet of the given thickness.
 * @example brakeWarnings(brake, 0.8, (mm) => `${mm} mm`)
 */
export function brakeWarnings(brake: Brake, thicknessMm: Mm, say: SayLength): string[] {
  const warnings: string[] = [];
  if (brake.liftMm <= thicknessMm) {
    warnings.push(
      `The clamp lifts ${say(brake.liftMm)}, no more than the sheet is thick: check how far it opens.`,
    );
  }
  if (brake.leaf.swingDeg < 90) {
    warnings.push(
      `The leaf swings to ${brake.leaf.swingDeg}° only: no square bend is possible on this brake.`,
    );
  }
  const { pivot } = brake.leaf;
  const pivotOff = Math.hypot(pivot.x, pivot.y);
  if (pivotOff > FAR_PIVOT_MM) {
    warnings.push(
      `The leaf's pivot stands ${say(pivotOff)} from the bed's front top edge: check that it is measured from there.`,
    );
  }
  warnings.push(...leafWarnings(brake, say), ...clampWarnings(brake, say));
  return warnings;
}

function leafWarnings({ leaf, bed, frame }: Brake, say: SayLength): string[] {
  const warnings: string[] = [];
  const below = -boxOf(leaf.outline).maxY;
  if (below > FRAME_SLACK_MM) {
    warnings.push(
      `The leaf's face lies ${say(below)} below the bed at rest: the sheet is not held until the leaf has come up.`,
    );
  }
  if (inOnePlace(leaf.outline, bed))
    warnings.push("Leaf at rest and bed stand in one place: check their profiles.");
  frame.forEach((piece, i) => {
    if (inOnePlace(leaf.outline, piece)) {
      warnings.push(`Leaf at rest and frame piece ${i + 1} stand in one place: check their profiles.`);
    }
  });
  return warnings;
}

function clampWarnings({ clamp, bed }: Brake, say: SayLength): string[] {
  const warnings: string[] = [];
  const behindBed = boxOf(bed).minX - boxOf(...clamp.outlines).minX;
  if (behindBed > FRAME_SLACK_MM && clamp.kind !== "profile") {
    warnings.push(`The clamp reaches ${say(behindBed)} past the back of the bed: check both depths.`);
  }
  const { givenRadiusMm, foremostMm } = clamp.asDrawn ?? {};
  if (givenRadiusMm !== undefined) {
    const drawn = say(clamp.noseRadiusMm - (clamp.shimMm ?? 0));
    warnings.push(
      `The profile's nose is rounded with ${drawn}, and noseRadius says ${say(givenRadiusMm)}: the answer takes the profile's ${drawn}. Measure the nose and mend the one that is wrong.`,
    );
  }
  if (foremostMm !== undefined) {
    const way = foremostMm > 0 ? "back" : "forward";
    warnings.push(
      `The foremost point of the clamp's profile is drawn at x = ${say(foremostMm)}: the answer moves the whole clamp ${say(Math.abs(foremostMm))} ${way}, to x = 0.`,
    );
  }
  const [body, holder] = clamp.outlines;
  if (clamp.kind !== "profile" && body && holder) {
    const overhang = boxOf(holder).maxX - frontOfTop(body, boxOf(body));
    if (overhang > FRAME_SLACK_MM) {
      warnings.push(
        `The holder overhangs the front of the ${clamp.kind} by ${say(overhang)}: a return flange meets it early.`,
      );
    }
  }
  return warnings;
}

/** Foremost x of the clamp's top face. */
function frontOfTop(body: Outline, box: Box): Mm {
  const onTop = body.edges.filter((edge) => edge.from.y > box.maxY - FRAME_SLACK_MM);
  return Math.max(...onTop.map((edge) => edge.from.x));
}

function inOnePlace(a: Outline, b: Outline): boolean {
  // Leaf and bed mostly stand side by side: their boxes tell, and the library need not be started.
  const [boxA, boxB] = [boxOf(a), boxOf(b)];
  const wide = Math.min(boxA.maxX, boxB.maxX) - Math.max(boxA.minX, boxB.minX);
  const high = Math.min(boxA.maxY, boxB.maxY) - Math.max(boxA.minY, boxB.minY);
  if (wide <= 0 || high <= 0) return false;
  return commonArea(a, b) > SHARED_MM2;
}
