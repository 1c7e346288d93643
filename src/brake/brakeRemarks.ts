/**
 * What a foreman would remark on a brake as it is described: possible, but probably not what was meant.
 * Limits: common practice, no source. words/brakeRemarkWords.ts says it.
 */
import { type Box, boxOf } from "../plane/bounding.ts";
import { commonArea } from "../plane/commonArea.ts";
import type { Outline } from "../plane/outline.ts";
import type { Deg, Mm } from "../units/quantity.ts";
import type { Brake, Clamp } from "./brake.ts";
import { FRAME_SLACK_MM } from "./profile.ts";

/** A pivot farther from the bed's edge than this is more likely measured from somewhere else. */
const FAR_PIVOT_MM: Mm = 25;

/** Shared area from which two pieces of the brake are said to stand in one place, in mm². */
const SHARED_MM2 = 0.1;

export type BrakeRemark =
  | { readonly kind: "shortLift" | "farPivot" | "lowLeaf" | "deepClamp"; readonly mm: Mm }
  | { readonly kind: "shortSwing"; readonly swingDeg: Deg }
  | { readonly kind: "leafInBed" }
  /** Piece of the frame, counted from 1. */
  | { readonly kind: "leafInFrame"; readonly piece: number }
  /** A profile's own nose radius against the one that is given, and where its foremost point was drawn. */
  | { readonly kind: "noseRadius"; readonly drawnMm: Mm; readonly givenMm: Mm }
  | { readonly kind: "foremost"; readonly mm: Mm }
  | { readonly kind: "overhang"; readonly mm: Mm; readonly clamp: Clamp["kind"] };

/** Remarks on the brake alone, for a sheet of the given thickness. */
export function brakeRemarks(brake: Brake, thicknessMm: Mm): BrakeRemark[] {
  const remarks: BrakeRemark[] = [];
  if (brake.liftMm <= thicknessMm) remarks.push({ kind: "shortLift", mm: brake.liftMm });
  const { swingDeg, pivot } = brake.leaf;
  if (swingDeg < 90) remarks.push({ kind: "shortSwing", swingDeg });
  const pivotOff = Math.hypot(pivot.x, pivot.y);
  if (pivotOff > FAR_PIVOT_MM) remarks.push({ kind: "farPivot", mm: pivotOff });
  return [...remarks, ...leafRemarks(brake), ...clampRemarks(brake)];
}

function leafRemarks({ leaf, bed, frame }: Brake): BrakeRemark[] {
  const remarks: BrakeRemark[] = [];
  const below = -boxOf(leaf.outline).maxY;
  if (below > FRAME_SLACK_MM) remarks.push({ kind: "lowLeaf", mm: below });
  if (inOnePlace(leaf.outline, bed)) remarks.push({ kind: "leafInBed" });
  frame.forEach((piece, i) => {
    if (inOnePlace(leaf.outline, piece)) remarks.push({ kind: "leafInFrame", piece: i + 1 });
  });
  return remarks;
}

function clampRemarks({ clamp, bed }: Brake): BrakeRemark[] {
  const remarks: BrakeRemark[] = [];
  const { givenRadiusMm, foremostMm } = clamp.asDrawn ?? {};
  if (givenRadiusMm !== undefined) {
    const drawnMm = clamp.noseRadiusMm - (clamp.shimMm ?? 0);
    remarks.push({ kind: "noseRadius", drawnMm, givenMm: givenRadiusMm });
  }
  if (foremostMm !== undefined) remarks.push({ kind: "foremost", mm: foremostMm });
  if (clamp.kind === "profile") return remarks;
  const behindBed = boxOf(bed).minX - boxOf(...clamp.outlines).minX;
  if (behindBed > FRAME_SLACK_MM) remarks.push({ kind: "deepClamp", mm: behindBed });
  const [body, holder] = clamp.outlines;
  if (body && holder) {
    const overhang = boxOf(holder).maxX - frontOfTop(body, boxOf(body));
    if (overhang > FRAME_SLACK_MM) remarks.push({ kind: "overhang", mm: overhang, clamp: clamp.kind });
  }
  return remarks;
}

/** Foremost x of the clamp's top face. */
function frontOfTop(body: Outline, box: Box): Mm {
  const onTop = body.edges.filter((edge) => edge.from.y > box.maxY - FRAME_SLACK_MM);
  return Math.max(...onTop.map((edge) => edge.from.x));
}

function inOnePlace(a: Outline, b: Outline): boolean {
  // Leaf and bed mostly stand side by side: their boxes tell.
  const [boxA, boxB] = [boxOf(a), boxOf(b)];
  const wide = Math.min(boxA.maxX, boxB.maxX) - Math.max(boxA.minX, boxB.minX);
  const high = Math.min(boxA.maxY, boxB.maxY) - Math.max(boxA.minY, boxB.minY);
  if (wide <= 0 || high <= 0) return false;
  return commonArea(a, b) > SHARED_MM2;
}
