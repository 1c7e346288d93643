/**
 * Relief holes where a bend runs into the edge of a cut-out: by the rule of relief.ts, on the bend tangent line at the
 * web's side, centred on the cut-out's edge. The web is what the cut-out leaves whole: the side away from the free end
 * that it is open to, else the side toward the middle of the blank. Exact.
 */
import type { Mm } from "../units/quantity.ts";
import type { CutOut, Span } from "./cutOut.ts";
import { type ReliefHole, reliefHoles } from "./relief.ts";

/** A bend as it lies on the blank. */
export interface BendOnBlank {
  /** Both bend tangent lines, from the datum edge, the nearer first. */
  readonly tangentsMm: Span;
  readonly insideRadiusMm: Mm;
}

export interface BlankSize {
  /** Across the bend lines. */
  readonly widthMm: Mm;
  /** Along the bend lines. */
  readonly lengthMm: Mm;
}

/** A relief hole, and the bend and cut-out that want it, both from 0. */
export interface CutRelief extends ReliefHole {
  readonly bend: number;
  readonly cutOut: number;
}

/** Overlaps under this are what a rule and a printed figure leave over: the cut-out only touches the bend. */
export const TOUCHES_MM: Mm = 0.05;

const SAME_MM: Mm = 1e-6;

/**
 * Holes for all cut-outs, cut-out by cut-out from the datum edge on. A cut-out over the blank's whole width only makes
 * it shorter and wants none.
 * @example cutReliefs([{ tangentsMm: [9, 11], insideRadiusMm: 1 }], [{ acrossMm: [0, 11], alongMm: [0, 20] }], { widthMm: 50, lengthMm: 90 }, 0.8)[0].center // { x: 11, y: 20 }
 */
export function cutReliefs(
  bends: readonly BendOnBlank[],
  cutOuts: readonly CutOut[],
  size: BlankSize,
  thicknessMm: Mm,
): readonly CutRelief[] {
  const holes: CutRelief[] = [];
  for (const [c, cutOut] of cutOuts.entries()) {
    if (cutOut.acrossMm[0] === 0 && cutOut.acrossMm[1] === size.widthMm) continue;
    for (const [bend, lines] of bends.entries()) {
      const crossed = common(lines.tangentsMm, cutOut.acrossMm);
      if (crossed[1] - crossed[0] <= TOUCHES_MM) continue;
      const inside = webSide(lines.tangentsMm, cutOut.acrossMm, size.widthMm);
      const edges = cutOut.alongMm.filter((_, end) =>
        endsInSheet(cutOut, end, crossed, cutOuts, size.lengthMm),
      );
      const strip = { ...lines, inside };
      const wanted = reliefHoles(
        [strip],
        edges.map((edgeMm) => ({ edgeMm })),
        thicknessMm,
      );
      for (const hole of wanted)
        if (!holes.some((one) => same(one, hole))) holes.push({ ...hole, bend, cutOut: c });
    }
  }
  return holes;
}

function common(one: Span, other: Span): Span {
  return [Math.max(one[0], other[0]), Math.min(one[1], other[1])];
}

/** Whether sheet is left beyond the cut-out's low (0) or high (1) end where the bend crosses it. */
function endsInSheet(
  cutOut: CutOut,
  end: number,
  crossed: Span,
  cutOuts: readonly CutOut[],
  lengthMm: Mm,
): boolean {
  const edge = cutOut.alongMm[end] as Mm;
  if (edge === (end === 0 ? 0 : lengthMm)) return false;
  const beyond: CutOut = {
    acrossMm: crossed,
    alongMm: end === 0 ? [edge - TOUCHES_MM, edge] : [edge, edge + TOUCHES_MM],
  };
  return !cutOuts.some(
    (other) => holds(other.acrossMm, beyond.acrossMm) && holds(other.alongMm, beyond.alongMm),
  );
}

function holds(outer: Span, inner: Span): boolean {
  return outer[0] <= inner[0] + SAME_MM && outer[1] >= inner[1] - SAME_MM;
}

function webSide(tangentsMm: Span, acrossMm: Span, widthMm: Mm): "near" | "far" {
  const [openNear, openFar] = [acrossMm[0] === 0, acrossMm[1] === widthMm];
  if (openNear !== openFar) return openNear ? "far" : "near";
  return (tangentsMm[0] + tangentsMm[1]) / 2 <= widthMm / 2 ? "far" : "near";
}

function same(one: ReliefHole, other: ReliefHole): boolean {
  return Math.hypot(one.center.x - other.center.x, one.center.y - other.center.y) < SAME_MM;
}
