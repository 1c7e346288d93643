/**
 * What lies on the stage: the standing brake with the tinted path behind, the leaf and the sheet in front, then the
 * findings. Each function paints into the active project of its scope.
 */

import { hatchOf } from "../../src/drawing/hatch.ts";
import { labelPoint } from "../../src/drawing/labelPoint.ts";
import type { Layer } from "../../src/drawing/model.ts";
import { sweptBand } from "../../src/pictures/sweptBand.ts";
import type { Outline } from "../../src/plane/outline.ts";
import type { Point } from "../../src/plane/point.ts";
import { clampWord, contactWords } from "../../src/words/contactWords.ts";
import { lengthWords } from "../../src/words/lengthWords.ts";
import { type Camera, inSection, onCanvas } from "./camera.ts";
import { flatBodies } from "./flatPlaces.ts";
import type { Ink } from "./ink.ts";
import { type BodyStyle, bodyItem, crossItem, dimensionItem, pathOf, type Scope, wordsItem } from "./pen.ts";
import { leafAtDeg, type StepPose, sheetAtDeg, showsLeast, sweepOf } from "./stepPose.ts";

const point = (pair: readonly [number, number]): Point => ({ x: pair[0], y: pair[1] });

/** Hatch of each member, told apart by angle as section drawings do. */
function bodyStyle(ink: Ink, layer: Layer, body: Outline): BodyStyle {
  const { angleDeg, spacingMm } = hatchOf(layer, body) ?? { angleDeg: 45, spacingMm: 2.2 };
  const hatchSpacing = spacingMm * POINTS_PER_MM;
  return {
    fill: ink.steel,
    line: ink.graphite,
    width: 1.3,
    hatch: ink.hatch,
    hatchAngleDeg: angleDeg,
    hatchSpacing,
  };
}

/** The pitch of a hatch on the screen: that of the page, at 96 points to the inch. */
const POINTS_PER_MM = 96 / 25.4;

/** Tinted path, then bed, frame and clamp. */
export function paintStanding(scope: Scope, camera: Camera, pose: StepPose, ink: Ink, names: boolean): void {
  const view = scope.view.bounds;
  for (const piece of sweptBand([...sweepOf(pose)])) {
    const path = pathOf(scope, camera, piece);
    path.fillColor = new scope.Color(ink.tint);
    path.strokeColor = new scope.Color(ink.tint);
    path.strokeWidth = 1;
  }
  const { atRest } = pose;
  bodyItem(scope, pathOf(scope, camera, atRest.bed), bodyStyle(ink, "bed", atRest.bed), view);
  for (const body of atRest.frame)
    bodyItem(scope, pathOf(scope, camera, body), bodyStyle(ink, "frame", body), view);
  for (const body of atRest.clamp)
    bodyItem(scope, pathOf(scope, camera, body), bodyStyle(ink, "clamp", body), view);
  if (!names) return;
  const { width, height } = view;
  const corner = (x: number, y: number) => inSection(camera, { x, y });
  // The scale bar stands at the foot.
  const window = { min: corner(0, height - 34), max: corner(width, 0) };
  const sheets = [atRest.sheet, sheetAtDeg(pose, pose.step.reached)];
  for (const [name, outline] of [
    ["bed", atRest.bed],
    [clampWord(pose.job.brake.clamp.kind), atRest.clamp[0]],
    ...(pose.job.brake.clamp.kind === "profile" ? [] : [["holder", atRest.clamp[1]] as const]),
  ] as const) {
    const place = outline && labelPoint(outline, sheets, window);
    if (!place || place.roomMm * camera.scale < 16) continue;
    const at = onCanvas(camera, place.at);
    wordsItem(scope, { x: at.x, y: at.y + 5 }, name, ink.graphite, ink.steel, "center");
  }
}

/** The leaf at an angle; `ghost` for where it would go past a contact. */
export function paintLeaf(
  scope: Scope,
  camera: Camera,
  pose: StepPose,
  leafDeg: number,
  ink: Ink,
  ghost: boolean,
): paper.Path {
  const leaf = leafAtDeg(pose, leafDeg);
  const path = pathOf(scope, camera, leaf);
  if (ghost) {
    path.strokeColor = new scope.Color(ink.fine);
    path.dashArray = [6, 5];
    return path;
  }
  path.remove();
  const { bounds } = scope.view;
  bodyItem(scope, path, bodyStyle(ink, "leaf", leaf), bounds);
  const middle = path.position;
  const seen = bounds.expand(-60).contains(middle) && Math.min(path.bounds.width, path.bounds.height) > 40;
  if (seen) wordsItem(scope, { x: middle.x, y: middle.y + 5 }, "leaf", ink.graphite, ink.steel, "center");
  return path;
}

/** The sheet in solid ink; as a dashed outline before the leaf moved or past a contact. */
export function paintSheet(
  scope: Scope,
  camera: Camera,
  pose: StepPose,
  leafDeg: number,
  ink: Ink,
  ghost: boolean,
): paper.Path {
  const path = pathOf(scope, camera, sheetAtDeg(pose, leafDeg));
  if (ghost) {
    path.strokeColor = new scope.Color(ink.graphite);
    path.strokeWidth = 1.2;
    path.dashArray = [6, 5];
  } else {
    path.fillColor = new scope.Color(ink.ink);
    path.strokeColor = new scope.Color(ink.ink);
    path.strokeWidth = 1;
  }
  return path;
}

/** Where metal would have to share its room with other metal, hatched in the signal colour. Areas in mm². */
export function paintOverlap(
  scope: Scope,
  camera: Camera,
  pose: StepPose,
  leafDeg: number,
  ink: Ink,
): number {
  const view = scope.view.bounds;
  const style = {
    fill: ink.paper,
    line: ink.signal,
    width: 2,
    hatch: ink.signal,
    hatchAngleDeg: 60,
    hatchSpacing: 4,
  };
  let areaMm2 = 0;
  const share = (a: Outline, b: Outline) => {
    const [one, other] = [pathOf(scope, camera, a), pathOf(scope, camera, b)];
    const shared = one.intersect(other, { insert: false }) as paper.PathItem & { area: number };
    one.remove();
    other.remove();
    const area = Math.abs(shared.area) / camera.scale ** 2;
    // Faces that touch by design share a sliver of rounding only.
    if (area < 0.01) return;
    areaMm2 += area;
    scope.project.activeLayer.addChild(bodyItem(scope, shared, style, view));
  };
  const sheet = sheetAtDeg(pose, leafDeg);
  const bodies = [...pose.atRest.clamp, ...pose.atRest.frame, pose.atRest.bed, leafAtDeg(pose, leafDeg)];
  for (const body of bodies) share(sheet, body);
  if (pose.step.contact?.member !== "part") return areaMm2;
  const { clamped, moving } = flatBodies(pose, leafDeg);
  clamped.forEach((still, i) => {
    moving.forEach((swung, k) => {
      // The two flats beside the bend being made belong together.
      if (i > 0 || k > 0) share(still, swung);
    });
  });
  return areaMm2;
}

/** The contact's cross and words, or the least clearance with its figure, when the leaf stands where it was found. */
export function paintFinding(
  scope: Scope,
  camera: Camera,
  pose: StepPose,
  leafDeg: number,
  ink: Ink,
  words: boolean,
): paper.Item | null {
  const { step, job, stopDeg } = pose;
  if (step.contact !== null && stopDeg !== null) {
    if (leafDeg < stopDeg - 0.05) return null;
    const at = onCanvas(camera, point(step.contact.point));
    const cross = crossItem(scope, at, ink.signal, ink.paper);
    if (!words) return cross;
    const view = scope.view.bounds;
    const right = at.x < view.width * 0.5;
    const label = { x: at.x + (right ? 20 : -20), y: at.y - 16 };
    const item = wordsItem(
      scope,
      label,
      contactWords(step.contact, job.brake.clamp.kind),
      ink.signal,
      ink.paper,
      right ? "left" : "right",
    );
    item.position.x += Math.max(0, 8 - item.bounds.left) - Math.max(0, item.bounds.right - view.width + 8);
    return new scope.Group([cross, item]);
  }
  if (step.clearancePoints === null || step.clearance === null || !showsLeast(pose, leafDeg)) return null;
  const [a, b] = step.clearancePoints;
  const figure = words ? lengthWords(step.clearance, job.units) : "";
  return dimensionItem(
    scope,
    onCanvas(camera, point(a)),
    onCanvas(camera, point(b)),
    figure,
    ink.ink,
    ink.paper,
  );
}
