/**
 * What a step's picture shows: all the sheet passes over, with the nose and as much brake around it as tells them apart.
 */

import type { Drawing } from "../drawing/model.ts";
import type { Scene } from "../motion/scene.ts";
import { boxOf } from "../plane/bounding.ts";
import { distanceBetween, type Point } from "../plane/point.ts";

/** Smallest picture, so that a tiny part still shows which brake it is on. */
const LEAST_MM = 12;
/** A corner this near to the faces of the clamped run lies in it. */
const FLAT_MM = 0.05;
/** Lines of text above the picture (title, outcome) with their ground, as multiples of the text height. */
const STRIP_LINES = 3.8;

/** Of a sheet that lies flat in the throat so much is shown, measured by what stands out in front. */
const THROAT_SHARE = 1.5;

/**
 * How far back the sheet has to be seen: all of it where it stands up or hangs down, else only near the nose.
 * `seen` are points that the picture is about.
 */
function backOf(scenes: readonly Scene[], seen: readonly Point[], front: number): number {
  const corners = scenes.flatMap((scene) => scene.sheet.edges.map((edge) => edge.from));
  // The run of a sheet's edges closes with its free end in the throat, one thickness long.
  const end = scenes[0]?.sheet.edges.at(-1);
  const thickness = end === undefined ? 0 : distanceBetween(end.from, end.to);
  const standing = corners.filter(({ x, y }) => x < 0 && (y < -FLAT_MM || y > thickness + FLAT_MM));
  const needed = Math.min(-THROAT_SHARE * front, ...[...standing, ...seen].map(({ x }) => x));
  return Math.max(needed, Math.min(...corners.map(({ x }) => x)));
}

/** The window, and the height at which the picture ends and the title strip begins. */
export function stepWindow(
  scenes: readonly Scene[],
  textShare: number,
  seen: readonly Point[] = [],
): { readonly window: Drawing["window"]; readonly groundMm: number } {
  const whole = boxOf(...scenes.map((scene) => scene.sheet));
  const front = Math.max(whole.maxX, whole.maxY, LEAST_MM);
  const sheet = { ...whole, minX: backOf(scenes, seen, front) };
  const size = Math.max(sheet.maxX - sheet.minX, sheet.maxY - sheet.minY, LEAST_MM);
  // The nose stands at the origin; under the bed's top the leaf at rest and the bed want some room.
  const min = {
    x: Math.min(sheet.minX, -size * 0.45) - size * 0.08,
    y: Math.min(sheet.minY, -size * 0.3) - size * 0.08,
  };
  const max = {
    x: Math.max(sheet.maxX, size * 0.35) + size * 0.12,
    y: Math.max(sheet.maxY, size * 0.3) + size * 0.08,
  };
  const textMm = (max.x - min.x) * textShare;
  return { window: { min, max: { x: max.x, y: max.y + STRIP_LINES * textMm } }, groundMm: max.y };
}
