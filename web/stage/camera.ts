/**
 * From section millimetres (y up) to canvas points (y down) and back: one scale and one shift.
 * Immutable; each move gives a new camera.
 */
import type { Point } from "../../src/plane/point.ts";

export interface Camera {
  /** Canvas points for a millimetre. */
  readonly scale: number;
  /** Where the section's origin lies on the canvas. */
  readonly originX: number;
  readonly originY: number;
}

export interface Window {
  readonly min: Point;
  readonly max: Point;
}

const LEAST_SCALE = 0.2;
const MOST_SCALE = 2000;

/** The camera that shows a window whole, centred, with some air around it. */
export function fitted(window: Window, width: number, height: number, air: number): Camera {
  const wide = Math.max(window.max.x - window.min.x, 1e-3);
  const high = Math.max(window.max.y - window.min.y, 1e-3);
  const room = { x: Math.max(width - 2 * air, 20), y: Math.max(height - 2 * air, 20) };
  const scale = clampScale(Math.min(room.x / wide, room.y / high));
  const middle = { x: (window.min.x + window.max.x) / 2, y: (window.min.y + window.max.y) / 2 };
  return { scale, originX: width / 2 - middle.x * scale, originY: height / 2 + middle.y * scale };
}

/** Enlarged by `factor` with the canvas point `at` staying where it is. */
export function zoomed(camera: Camera, factor: number, at: Point): Camera {
  const scale = clampScale(camera.scale * factor);
  const k = scale / camera.scale;
  return { scale, originX: at.x - (at.x - camera.originX) * k, originY: at.y - (at.y - camera.originY) * k };
}

/** Shifted by canvas points. */
export function shifted(camera: Camera, dx: number, dy: number): Camera {
  return { ...camera, originX: camera.originX + dx, originY: camera.originY + dy };
}

/** Section to canvas. */
export function onCanvas(camera: Camera, point: Point): Point {
  return { x: camera.originX + point.x * camera.scale, y: camera.originY - point.y * camera.scale };
}

/** Canvas to section. */
export function inSection(camera: Camera, point: Point): Point {
  return { x: (point.x - camera.originX) / camera.scale, y: (camera.originY - point.y) / camera.scale };
}

function clampScale(scale: number): number {
  return Math.min(Math.max(scale, LEAST_SCALE), MOST_SCALE);
}
