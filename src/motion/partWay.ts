/**
 * A bend made part way: the part as it comes out of the brake with one bend left at less than its full angle.
 * The nose stands where the full bend wants it, so the sheet that the rest of the bend will take up lies flat beside it: on
 * the clamped side as far as the tangent line has come forward, X(θ₁) − X, the rest of BA(θ) − BA(θ₁) on the moving one.
 */
import { clampedTangentX } from "../brake/noseSetback.ts";
import { bendLeftAt } from "../part/leftOpen.ts";
import type { Bend, End, Part } from "../part/part.ts";
import type { Point } from "../plane/point.ts";
import type { Deg } from "../units/quantity.ts";

/**
 * `part` with `bend` (from 0) left at `toDeg` after springback, made with the `clamped` end in the throat of a brake whose
 * leaf turns about `pivot`; undefined where the bend zone would eat a whole flat.
 */
export function partWayMade(
  part: Part,
  bend: number,
  clamped: End,
  toDeg: Deg,
  pivot: Point,
): Part | undefined {
  const full = part.bends[bend]!;
  const left = bendLeftAt(full, part.thicknessMm, toDeg);
  const startOf = (one: Bend) => clampedTangentX({ ...one, thicknessMm: part.thicknessMm, pivot });
  const onClamped = startOf(left) - startOf(full);
  const onMoving = full.allowanceMm - left.allowanceMm - onClamped;
  const [before, after] = clamped === "start" ? [onClamped, onMoving] : [onMoving, onClamped];
  const flatsMm = part.flatsMm.map((flatMm, i) =>
    i === bend ? flatMm + before : i === bend + 1 ? flatMm + after : flatMm,
  );
  if (!flatsMm.every((flatMm) => flatMm > 0)) return undefined;
  return { ...part, flatsMm, bends: part.bends.map((one, i) => (i === bend ? left : one)) };
}
