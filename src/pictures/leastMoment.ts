/**
 * The moment of a sweep at which a measured least clearance was found, and the member it was measured to.
 * Found from the two points: at that moment one lies on the sheet and the other on a body; sampled scenes, nearest wins.
 */
import type { Member, StepAnswer } from "../jobFile/answer.ts";
import type { Scene } from "../motion/scene.ts";
import { distanceToEdge } from "../plane/edge.ts";
import type { Outline } from "../plane/outline.ts";
import type { Point } from "../plane/point.ts";

function distanceToOutline(at: Point, outline: Outline): number {
  return Math.min(...outline.edges.map((edge) => distanceToEdge(at, edge)));
}

/** Rounding of points that lie on an outline. */
const ON_MM = 1e-6;

/** The member that a least clearance was measured to, where it is one that stands still: exact, from one scene. */
export function standingMember(
  scene: Scene,
  [, [x, y]]: NonNullable<StepAnswer["clearancePoints"]>,
): Member | undefined {
  const bodies: [Member, readonly Outline[]][] = [
    ["clamp", scene.clamp],
    ["bed", [scene.bed]],
    ["frame", scene.frame],
  ];
  return bodies.find(([, outlines]) =>
    outlines.some((outline) => distanceToOutline({ x, y }, outline) < ON_MM),
  )?.[0];
}

/** Index of the scene and the member, or undefined where nothing was measured. Ties go to the brake, not the sheet. */
export function leastMoment(
  scenes: readonly Scene[],
  points: NonNullable<StepAnswer["clearancePoints"]>,
): { readonly index: number; readonly member: Member } | undefined {
  const [onSheet, onBody] = points.map(([x, y]) => ({ x, y })) as [Point, Point];
  let best: { index: number; member: Member; off: number } | undefined;
  scenes.forEach((scene, index) => {
    const sheetOff = distanceToOutline(onSheet, scene.sheet);
    const bodies: [Member, readonly Outline[]][] = [
      ["clamp", scene.clamp],
      ["bed", [scene.bed]],
      ["frame", scene.frame],
      ["leaf", [scene.leaf]],
      ["part", [scene.sheet]],
    ];
    for (const [member, outlines] of bodies) {
      for (const outline of outlines) {
        const off = sheetOff + distanceToOutline(onBody, outline);
        // A member later in the list has to be plainly nearer.
        if (best === undefined || off < best.off - 1e-6) best = { index, member, off };
      }
    }
  });
  return best;
}
