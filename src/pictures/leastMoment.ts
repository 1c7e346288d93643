/**
 * The moment of a sweep at which a measured least clearance was found, so that the picture can show sheet and leaf there.
 * Found from the two points: at that moment one lies on the sheet and the other on what it was measured to.
 */
import type { Member, StepAnswer } from "../jobFile/answer.ts";
import type { Scene } from "../motion/scene.ts";
import { distanceToEdge } from "../plane/edge.ts";
import type { Outline } from "../plane/outline.ts";
import type { Point } from "../plane/point.ts";

const SAME_MM = 1e-6;

/** Index of the scene, the earliest of equal ones; undefined where nothing was measured. */
export function leastMoment(
  scenes: readonly Scene[],
  { clearancePoints, nearest }: Pick<StepAnswer, "clearancePoints" | "nearest">,
): number | undefined {
  if (clearancePoints === null || nearest === null) return undefined;
  const [onSheet, onBody] = clearancePoints.map(([x, y]) => ({ x, y })) as [Point, Point];
  const offs = scenes.map(
    (scene) => distanceTo(onSheet, [scene.sheet]) + distanceTo(onBody, outlinesOf(scene, nearest.member)),
  );
  return offs.findIndex((off) => off < Math.min(...offs) + SAME_MM);
}

function outlinesOf(scene: Scene, member: Member): readonly Outline[] {
  switch (member) {
    case "bed":
      return [scene.bed];
    case "leaf":
      return [scene.leaf];
    case "frame":
      return scene.frame;
    case "part":
      return [scene.sheet];
    default:
      return scene.clamp;
  }
}

function distanceTo(at: Point, outlines: readonly Outline[]): number {
  return Math.min(...outlines.flatMap(({ edges }) => edges.map((edge) => distanceToEdge(at, edge))));
}
