/**
 * What of the section the stage shows: the part at the moment of the answer with the nose; closer, round the contact, where
 * the sheet would be drawn too thin to be read. The whole brake stands in the inset.
 */
import { boxOf } from "../../src/plane/bounding.ts";
import type { Point } from "../../src/plane/point.ts";
import type { Camera, Window } from "./camera.ts";
import { fitted } from "./camera.ts";
import { type StepPose, sheetAtDeg } from "./stepPose.ts";

/** The sheet is drawn at least this thick, in points, or only the surroundings of the contact are shown. */
const LEAST_DRAWN = 4;

/** What must be seen: the bend being made, and what the answer is about. */
function mustSee({ step, seat }: StepPose): readonly Point[] {
  const T = seat.thicknessMm;
  const bend = [
    { x: seat.clampedTangentX - 4 * T, y: -3 * T },
    { x: 5 * T, y: 6 * T },
  ];
  const found = step.contact ? [step.contact.point] : (step.clearancePoints ?? []);
  return [...bend, ...found.map(([x, y]) => ({ x, y }))];
}

const around = (points: readonly Point[]): Window => ({
  min: { x: Math.min(...points.map((p) => p.x)), y: Math.min(...points.map((p) => p.y)) },
  max: { x: Math.max(...points.map((p) => p.x)), y: Math.max(...points.map((p) => p.y)) },
});

/** The part at the moment of the answer, and enough of the nose to tell the brake. */
export function windowOf(pose: StepPose): Window {
  const box = boxOf(sheetAtDeg(pose, pose.momentDeg));
  const size = Math.max(box.maxX - box.minX, box.maxY - box.minY, 8);
  const [min, max] = [
    { x: box.minX, y: box.minY },
    { x: box.maxX, y: box.maxY },
  ];
  const nose = [
    { x: -0.3 * size, y: -0.2 * size },
    { x: 0.25 * size, y: 0.3 * size },
  ];
  return around([min, max, ...nose, ...mustSee(pose)]);
}

/** The camera for a canvas of some size, with `air` left free all round for the dimensions. */
export function framed(pose: StepPose, width: number, height: number, air: number): Camera {
  const whole = fitted(windowOf(pose), width, height, air);
  const thin = pose.seat.thicknessMm * whole.scale;
  if (thin >= LEAST_DRAWN) return whole;
  const must = around(mustSee(pose));
  const closest = fitted(must, width, height, air);
  const scale = Math.min(closest.scale, (whole.scale * LEAST_DRAWN) / thin);
  // The window about what must be seen that has the wished scale, shifted toward the part as far as it goes.
  const wide = (width - 2 * air) / scale;
  const high = (height - 2 * air) / scale;
  const all = windowOf(pose);
  const slid = (low: number, end: number, first: number, last: number, run: number): number => {
    const middle = (low + end) / 2;
    const wished = Math.min(Math.max((first + last) / 2, end - run / 2), low + run / 2);
    return end - low > run ? middle : wished;
  };
  const x = slid(must.min.x, must.max.x, all.min.x, all.max.x, wide);
  const y = slid(must.min.y, must.max.y, all.min.y, all.max.y, high);
  return fitted(
    { min: { x: x - wide / 2, y: y - high / 2 }, max: { x: x + wide / 2, y: y + high / 2 } },
    width,
    height,
    air,
  );
}
