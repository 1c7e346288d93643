/**
 * One bend of a part set up in a brake: what stands where before the leaf moves, and how far the leaf goes.
 * src/model.md, section 5: the clamped bend tangent line at X = a(θo) − (r + T)·tan(θo/2) = −(s + Rn); slide along the leaf
 * u(φ) − u(0) = 2(r + T − Py)·tan(φ/2) − (r + k·T)·φ, from the length that the sheet must keep.
 */
import type { Brake } from "../brake/brake.ts";
import { clampedTangentX } from "../brake/noseSetback.ts";
import { type Chain, chainFrom } from "../part/chain.ts";
import type { End, Part } from "../part/part.ts";
import type { Point } from "../plane/point.ts";
import { type Deg, type Mm, type Rad, toRad } from "../units/quantity.ts";
import { leafAhead } from "./leafAhead.ts";
import { type Overload, overloadOf } from "./rated.ts";
import { slideAt } from "./slide.ts";

export interface Seat {
  /** Bend being made, from 0. */
  readonly bend: number;
  readonly clamped: End;
  readonly thicknessMm: Mm;
  readonly insideRadiusMm: Mm;
  readonly angleRad: Rad;
  readonly overbendRad: Rad;
  /** Where the sweep starts: 0, or the angle at which a bend that was begun before was left. */
  readonly fromRad: Rad;
  /** How far the leaf is ahead of the sheet: more than 0 where its face lies under the sheet at rest. Angles of the sheet leave it out. */
  readonly leafAheadRad: Rad;
  /** Where the sweep ends: the overbend angle, or what the leaf's largest swing brings the sheet to when that is less. */
  readonly sweepRad: Rad;
  readonly allowanceMm: Mm;
  readonly pivot: Point;
  /** x of the clamped bend tangent line in the section frame. */
  readonly clampedTangentX: Mm;
  /** From the finished bend's tangent lines to its own apex, once the leaf has let go. */
  readonly relaxedTangentMm: Mm;
  /** x of the moving side's bend tangent line while the leaf is at rest. */
  readonly movingTangentX: Mm;
  /** Slide of the moving side along the leaf: slideTan·tan(φ/2) − slideTurn·φ. */
  readonly slideTan: number;
  readonly slideTurn: number;
  /** While the leaf is at φ nothing of the moving flat nearer to the apex than this·tan(φ/2) is checked. */
  readonly bendZoneTan: number;
  readonly noseSetbackMm: Mm;
  /** The nose pinches the sheet: the bend is refused, and nothing of its sweep means anything. */
  readonly pinched: boolean;
  /** The brake is not rated for this sheet, or is shorter than the part. */
  readonly overload: Overload | undefined;
  readonly movingChain: Chain;
  readonly clampedChain: Chain;
}

/** Sets up `bend` (from 0) with the `clamped` end of the part in the throat, flat or left at `fromDeg` before. */
export function seatFor(part: Part, brake: Brake, bend: number, clamped: End, fromDeg: Deg = 0): Seat {
  const made = part.bends[bend]!;
  const T = part.thicknessMm;
  const r = made.insideRadiusMm;
  const pivot = brake.leaf.pivot;
  const overbendRad = toRad(made.overbendDeg);
  // A bend left part way starts in front of the nose's rounding; one that is pinched no formula holds for.
  const tangentX =
    made.pinched || made.flattens
      ? -(made.noseSetbackMm + brake.clamp.noseRunMm)
      : clampedTangentX({ ...made, thicknessMm: T, pivot });
  const slide = {
    slideTan: 2 * (r + T - pivot.y),
    // The neutral line of this bend, whichever way its allowance was found: r + k·T.
    slideTurn: made.allowanceMm / toRad(made.angleDeg),
  };
  const movingTangentX = tangentX + made.allowanceMm;
  const onLeafX = movingTangentX + slideAt(slide, overbendRad);
  const flatMm = part.flatsMm[clamped === "start" ? bend + 1 : bend]!;
  const leafAheadRad = leafAhead(brake.leaf, onLeafX + flatMm, overbendRad);
  return {
    bend,
    clamped,
    thicknessMm: T,
    insideRadiusMm: r,
    angleRad: toRad(made.angleDeg),
    overbendRad,
    fromRad: toRad(fromDeg),
    leafAheadRad,
    sweepRad: Math.min(overbendRad, Math.max(0, toRad(brake.leaf.swingDeg) - leafAheadRad)),
    allowanceMm: made.allowanceMm,
    pivot,
    clampedTangentX: tangentX,
    relaxedTangentMm: made.bendSetbackMm,
    movingTangentX,
    ...slide,
    bendZoneTan: r + T,
    noseSetbackMm: made.noseSetbackMm,
    pinched: made.pinched,
    overload: overloadOf(part, brake),
    movingChain: chainFrom(part, bend, clamped === "start" ? "end" : "start"),
    clampedChain: chainFrom(part, bend, clamped),
  };
}
