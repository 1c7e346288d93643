/**
 * Hand-made outlines and scenes: a strip clamped on a bed, its flange carried round by a leaf about the origin.
 * No slide and no bend radius, so that every place can be read off by eye.
 */
import type { Scene } from "../../src/motion/scene.ts";
import type { Outline } from "../../src/plane/outline.ts";
import type { Point } from "../../src/plane/point.ts";

export function polygon(...corners: readonly (readonly [number, number])[]): Outline {
  const points = corners.map(([x, y]): Point => ({ x, y }));
  return {
    edges: points.map((from, i) => ({ kind: "line", from, to: points[(i + 1) % points.length] as Point })),
  };
}

export function turned(at: readonly [number, number], angleDeg: number): readonly [number, number] {
  const angle = (angleDeg * Math.PI) / 180;
  return [
    at[0] * Math.cos(angle) - at[1] * Math.sin(angle),
    at[0] * Math.sin(angle) + at[1] * Math.cos(angle),
  ];
}

/** Sheet of thickness 1: 30 in the throat, 20 on the leaf; run as `Scene.sheet` is, from under the clamped end. */
export function stripAt(angleDeg: number): Outline {
  return polygon(
    [-30, 0],
    [0, 0],
    turned([20, 0], angleDeg),
    turned([20, 1], angleDeg),
    [-Math.tan((angleDeg * Math.PI) / 360), 1],
    [-30, 1],
  );
}

export function sceneWith(angleDeg: number): Scene {
  const leaf: [number, number][] = [
    [0, -8],
    [16, -8],
    [16, 0],
    [0, 0],
  ];
  return {
    clamp: [polygon([-2, 1], [-12, 11], [-60, 11], [-60, 1])],
    bed: polygon([-60, -40], [0, -40], [0, 0], [-60, 0]),
    leaf: polygon(...leaf.map((corner) => turned(corner, angleDeg))),
    frame: [],
    sheet: stripAt(angleDeg),
  };
}
