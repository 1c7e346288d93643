/**
 * The moment of a sweep at which a measured least clearance was found, so that the picture can show sheet and leaf there.
 * Found from the two points: at that moment one lies on the sheet and the other on what it was measured to.
 */
import type { Member, StepAnswer } from "../jobFile/answer.ts";
import type { Scene } from "../motion/scene.ts";
import { distanceToEdge } from "../plane/edge.ts";
import type { Outline } from "../plane/outline.ts";
import type { Point } from "../plane/point.ts";
import type { Deg } from "../units/quantity.ts";

const SAME_MM = 1e-6;
/** Looked at this often first: fine enough that the nearest angle lies beside the moment. */
const LOOK_DEG: Deg = 2;

type Found = Pick<StepAnswer, "clearancePoints" | "nearest">;

/** How far the two points of a least clearance are off the metal that they were measured on; undefined where nothing was. */
export function offMetal(scene: Scene, { clearancePoints, nearest }: Found): number | undefined {
  if (clearancePoints === null || nearest === null) return undefined;
  const [onSheet, onBody] = clearancePoints.map(([x, y]) => ({ x, y })) as [Point, Point];
  return Math.max(distanceTo(onSheet, [scene.sheet]), distanceTo(onBody, outlinesOf(scene, nearest.member)));
}

/** Index of the scene, the earliest of equal ones; undefined where nothing was measured. */
export function leastMoment(scenes: readonly Scene[], found: Found): number | undefined {
  const offs = scenes.map((scene) => offMetal(scene, found) ?? Number.NaN);
  const least = Math.min(...offs);
  return Number.isNaN(least) ? undefined : offs.findIndex((off) => off < least + SAME_MM);
}

/** Leaf angles this near are one. */
const SAME_DEG: Deg = 1e-3;

/**
 * The leaf angle at which a least clearance was found, from 0 to `reached`: the earliest where both of its points lie on
 * metal, to a thousandth of a degree. Undefined where nothing was measured.
 */
export function leastMomentDeg(
  sceneAt: (leafDeg: Deg) => Scene,
  reached: Deg,
  found: Found,
): Deg | undefined {
  if (found.clearancePoints === null || found.nearest === null) return undefined;
  const off = (deg: Deg) => offMetal(sceneAt(deg), found) ?? Number.POSITIVE_INFINITY;
  const count = Math.max(1, Math.ceil(reached / LOOK_DEG));
  const degs = Array.from({ length: count + 1 }, (_, i) => (reached * i) / count);
  const offs = degs.map(off);
  const at = offs.findIndex((mm) => mm < Math.min(...offs) + SAME_MM);
  if (offs[at]! < SAME_MM) return degs[at];
  // Near the moment either point comes nearer to its metal the whole way: halved by thirds.
  let [from, to] = [degs[Math.max(0, at - 1)]!, degs[Math.min(count, at + 1)]!];
  while (to - from > SAME_DEG) {
    const third = (to - from) / 3;
    if (off(from + third) <= off(to - third)) to -= third;
    else from += third;
  }
  return (from + to) / 2;
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
