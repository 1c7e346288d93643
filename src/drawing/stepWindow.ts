/**
 * What a step's picture shows: all the sheet passes over, with the nose and as much brake around it as tells them apart.
 */
import type { Scene } from "../motion/scene.ts";
import { boxOf } from "../plane/bounding.ts";
import type { Drawing } from "./model.ts";

/** Smallest picture, so that a tiny part still shows which brake it is on. */
const LEAST_MM = 12;
/** Lines of text above the picture (title, outcome) with their ground, as multiples of the text height. */
const STRIP_LINES = 3.8;

/** The window, and the height at which the picture ends and the title strip begins. */
export function stepWindow(
  scenes: readonly Scene[],
  textShare: number,
): { readonly window: Drawing["window"]; readonly groundMm: number } {
  const sheet = boxOf(...scenes.map((scene) => scene.sheet));
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
