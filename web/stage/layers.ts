/**
 * What lies on the stage: the standing brake with the tinted path behind, the leaf and the sheet in front. Findings and
 * dimensions lie over them (`findings`, `dimensionMarks`).
 */
import { hatchOf } from "../../src/drawing/hatch.ts";
import { labelPoint } from "../../src/drawing/labelPoint.ts";
import type { Layer } from "../../src/drawing/model.ts";
import { sweptBand } from "../../src/pictures/sweptBand.ts";
import { movedOutline } from "../../src/plane/move.ts";
import type { Outline } from "../../src/plane/outline.ts";
import { clampWord } from "../../src/words/contactWords.ts";
import { type Box, type Piece, throughBox } from "../drafting/boxes.ts";
import { type Camera, inSection, onCanvas } from "./camera.ts";
import { flatBodies, flatPlaces } from "./flatPlaces.ts";
import type { Ink } from "./ink.ts";
import {
  type BodyStyle,
  boxOfWords,
  canvasBox,
  drawBody,
  drawLine,
  drawWords,
  hatchLines,
  pathOf,
  type Sheet,
} from "./pen.ts";
import { leafAtDeg, type StepPose, sheetAtDeg, sweepOf } from "./stepPose.ts";

/** The pitch of a hatch on the screen: that of the page, at 96 points to the inch. */
const POINTS_PER_MM = 96 / 25.4;
/** Least room round a name in its body, in points. */
const NAME_ROOM = 11;

/** Hatch of each member, told apart by direction and pitch as section drawings do. */
function bodyStyle(ink: Ink, camera: Camera, layer: Layer, body: Outline): BodyStyle {
  const { angleDeg, spacingMm } = hatchOf(layer, body) ?? { angleDeg: 45, spacingMm: 2.2 };
  const anchor = onCanvas(camera, body.edges[0]?.from ?? { x: 0, y: 0 });
  return {
    fill: ink.steel,
    line: ink.graphite,
    hatching: { angleDeg, pitch: spacingMm * POINTS_PER_MM, colour: ink.hatch, anchor },
  };
}

/** Tinted path, then bed, frame and clamp with their names; returns where the names stand. The clamp `raisedMm` up. */
export function paintStanding(
  sheet: Sheet,
  camera: Camera,
  pose: StepPose,
  ink: Ink,
  { names, raisedMm = 0 }: { readonly names: boolean; readonly raisedMm?: number },
): readonly Box[] {
  const { ctx, width, height } = sheet;
  const { atRest } = pose;
  const swept = raisedMm === 0 ? sweptBand([...sweepOf(pose)]) : [];
  for (const piece of swept) {
    const path = pathOf(camera, piece);
    ctx.fillStyle = ink.tint;
    ctx.strokeStyle = ink.tint;
    ctx.lineWidth = 1;
    ctx.fill(path);
    ctx.stroke(path);
  }
  for (const [layer, bodies] of [
    ["bed", [atRest.bed]],
    ["frame", atRest.frame],
    ["clamp", raisedMm === 0 ? atRest.clamp : atRest.clamp.map((body) => movedOutline(body, 0, raisedMm))],
  ] as const) {
    for (const body of bodies) drawBody(sheet, pathOf(camera, body), bodyStyle(ink, camera, layer, body));
  }
  if (!names) return [];
  const corner = (x: number, y: number) => inSection(camera, { x, y });
  // The scale bar stands at the foot.
  const window = { min: corner(0, height - 34), max: corner(width, 0) };
  const sheets = [atRest.sheet, sheetAtDeg(pose, pose.momentDeg)];
  const { clamp, frameNames } = pose.job.brake;
  return (
    [
      ["bed", atRest.bed],
      [clampWord(clamp.kind), atRest.clamp[0]],
      ...(clamp.kind === "profile" ? [] : [["holder", atRest.clamp[1]] as const]),
      ...atRest.frame.map((piece, i) => [frameNames?.[i] ?? "frame", piece] as const),
    ] as const
  ).flatMap(([name, outline]) => {
    const place = outline && labelPoint(outline, sheets, window);
    if (!place || place.roomMm * camera.scale < NAME_ROOM) return [];
    return [drawWords(sheet, name, onCanvas(camera, place.at), ink.graphite, ink.steel)];
  });
}

/** The leaf at an angle; `ghost` for where it would go past a contact. */
export function paintLeaf(
  sheet: Sheet,
  camera: Camera,
  pose: StepPose,
  leafDeg: number,
  ink: Ink,
  ghost: boolean,
): Path2D {
  const leaf = leafAtDeg(pose, leafDeg);
  const path = pathOf(camera, leaf);
  if (ghost) dashed(sheet, path, ink.fine, 1);
  else drawBody(sheet, path, bodyStyle(ink, camera, "leaf", leaf));
  return path;
}

function dashed({ ctx }: Sheet, path: Path2D, colour: string, width: number): void {
  ctx.save();
  ctx.setLineDash([6, 5]);
  ctx.strokeStyle = colour;
  ctx.lineWidth = width;
  ctx.stroke(path);
  ctx.restore();
}

/** The leaf's name at the middle of what is seen of it, where it keeps off the sheet; returns where it stands. */
export function paintLeafName(
  sheet: Sheet,
  camera: Camera,
  leaf: Outline,
  { pieces, half, ink }: { readonly pieces: readonly Piece[]; readonly half: number; readonly ink: Ink },
): readonly Box[] {
  const { x, y, halfWide, halfHigh } = canvasBox(camera, leaf);
  if (Math.min(halfWide, halfHigh) < 18) return [];
  const box = boxOfWords(sheet, "leaf", { x, y });
  const seen = x > 30 && y > 20 && x < sheet.width - 30 && y < sheet.height - 50;
  if (!seen || pieces.some((piece) => throughBox(piece, box, half + 1))) return [];
  return [drawWords(sheet, "leaf", box, ink.graphite, ink.steel)];
}

/** The sheet in solid ink; as a dashed outline before the leaf moved or past a contact. */
export function paintSheet(
  sheet: Sheet,
  camera: Camera,
  pose: StepPose,
  leafDeg: number,
  ink: Ink,
  ghost: boolean,
): void {
  const path = pathOf(camera, sheetAtDeg(pose, leafDeg));
  if (ghost) dashed(sheet, path, ink.graphite, 1.2);
  else fillSheet(sheet, path, ink);
}

/** The sheet in solid ink. */
export function fillSheet({ ctx }: Sheet, path: Path2D, ink: Ink): void {
  ctx.fillStyle = ink.ink;
  ctx.strokeStyle = ink.ink;
  ctx.lineWidth = 1;
  ctx.fill(path);
  ctx.stroke(path);
}

/** The marked face as a line along it, under the surface, flat by flat. */
export function paintMarkedFace(
  sheet: Sheet,
  camera: Camera,
  pose: StepPose,
  leafDeg: number,
  ink: Ink,
): void {
  const half = (pose.seat.thicknessMm * camera.scale) / 2;
  if (half < 2) return;
  const clampedCount = pose.seat.clampedChain.joints + 1;
  flatPlaces(pose, leafDeg).forEach(({ from, to }, i) => {
    const [a, b] = [onCanvas(camera, from), onCanvas(camera, to)];
    const run = Math.hypot(b.x - a.x, b.y - a.y) || 1;
    // Both sides lead outward from the bend: up at rest lies at the right in the throat and at the left on the leaf.
    const up = (i < clampedCount ? 1 : -1) * (pose.step.markedFaceUp ? 1 : -1);
    const off = { x: (-(b.y - a.y) / run) * up * half * 0.5, y: ((b.x - a.x) / run) * up * half * 0.5 };
    const line = [a, b].map((p) => ({ x: p.x + off.x, y: p.y + off.y }));
    drawLine(sheet, line, ink.marked, Math.max(1, half * 0.36));
  });
}

/** Where metal would have to share its room with other metal, hatched in the signal colour. */
export function paintOverlap(sheet: Sheet, camera: Camera, pose: StepPose, leafDeg: number, ink: Ink): void {
  const { ctx } = sheet;
  const share = (a: Path2D, b: Path2D) => {
    ctx.save();
    ctx.clip(a);
    ctx.clip(b);
    ctx.fillStyle = ink.paper;
    ctx.fill(a);
    hatchLines(sheet, { angleDeg: 60, pitch: 4, colour: ink.signal, anchor: { x: 0, y: 0 } });
    ctx.strokeStyle = ink.signal;
    ctx.lineWidth = 4;
    ctx.stroke(a);
    ctx.stroke(b);
    ctx.restore();
  };
  const { atRest, step } = pose;
  const part = pathOf(camera, sheetAtDeg(pose, leafDeg));
  for (const body of [...atRest.clamp, ...atRest.frame]) share(pathOf(camera, body), part);
  if (step.contact?.member === "bed") share(pathOf(camera, atRest.bed), part);
  if (step.contact?.member === "leaf") share(pathOf(camera, leafAtDeg(pose, leafDeg)), part);
  if (step.contact?.member !== "part") return;
  const { clamped, moving } = flatBodies(pose, leafDeg);
  clamped.forEach((still, i) => {
    moving.forEach((swung, k) => {
      // The two flats beside the bend being made belong together.
      if (i > 0 || k > 0) share(pathOf(camera, still), pathOf(camera, swung));
    });
  });
}
