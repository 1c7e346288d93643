/**
 * Grazes: a frame placed so that the swinging sheet dips into it for a moment only, by 0.0001 to 0.05 mm, or just misses it.
 * Source: the depth is set by the test itself, from corner points moved by the reference's closed formulas of the motion
 * (test/reference/pose.ts) and maximised by golden section; the first contact is a root of the same plain function.
 */
import fc from "fast-check";
import { expect, it } from "vitest";
import { judgeStep } from "../../src/contact/step.ts";
import { toDeg } from "../../src/units/quantity.ts";
import { jobOf } from "../cases/answers.ts";
import { picks, stateOf } from "../contact/roughJob.ts";
import { drawn, shareOf } from "../drawn.ts";
import { distance } from "../reference/overlap.ts";
import { type Stage, stageOf } from "../reference/pairs.ts";
import type { State } from "../reference/plainJob.ts";
import { nearBend } from "../reference/pose.ts";
import { type RandomJob, randomJobs } from "../reference/randomJob.ts";
import type { Corner, Shape } from "../reference/shape.ts";

const INSET_MM = 0.01;
const CHORD_MM = 1e-6;
const GRID = 240;
/** What stands clear of the frame but for the graze stays this far off. */
const CLEAR_MM = 0.1;
const ANGLE_DEG = 0.02;

/** The moving side's shapes at leaf angle φ. */
function movingShapes(stage: Stage, phi: number): Shape[] {
  const { motion, movingPieces } = stage;
  const onFace = nearBend(movingPieces);
  return movingPieces
    .map((piece, i) => motion.moving(piece.shape, phi, i < onFace))
    .filter((shape) => shape !== null);
}

/** How far a shape reaches in a direction. */
function support(shapes: readonly Shape[], nx: number, ny: number): number {
  let most = -Infinity;
  for (const shape of shapes)
    for (let i = 0; i < shape.length; i += 2) most = Math.max(most, nx * shape[i]! + ny * shape[i + 1]!);
  return most;
}

/**
 * Peak of f strictly between the ends of [0, end] and standing out over both; undefined where there is none. Of several humps
 * near as high, such as the two corners of a sheet's end make, the highest.
 */
function innerPeak(f: (phi: number) => number, end: number): { phi: number; value: number } | undefined {
  const step = end / GRID;
  const values = Array.from({ length: GRID + 1 }, (_, i) => f(i * step));
  const top = values.indexOf(Math.max(...values));
  if (top < 2 || top > GRID - 2) return undefined;
  if (values[top]! - Math.max(values[0]!, values[GRID]!) < CLEAR_MM) return undefined;
  return values
    .flatMap((value, i) => {
      const isHump = value > values[top]! - CLEAR_MM && value >= values[i - 1]! && value >= values[i + 1]!;
      return isHump ? [peakBetween(f, (i - 1) * step, (i + 1) * step)] : [];
    })
    .reduce((most, hump) => (hump.value > most.value ? hump : most));
}

/** Largest value of f between two angles, by golden section: its peak, where it has one there. */
function peakBetween(f: (phi: number) => number, from: number, to: number): { phi: number; value: number } {
  const ratio = (Math.sqrt(5) - 1) / 2;
  let [low, high] = [from, to];
  while (high - low > 1e-9) {
    const [left, right] = [high - ratio * (high - low), low + ratio * (high - low)];
    if (f(left) >= f(right)) high = right;
    else low = left;
  }
  const phi = (low + high) / 2;
  return { phi, value: f(phi) };
}

/** Whether f is over `level` anywhere before `end`, be it between two steps: the other corner of a sheet's end grazes first. */
function isOverBefore(f: (phi: number) => number, level: number, end: number): boolean {
  const count = Math.ceil(end / 0.004) + 1;
  const step = end / count;
  const values = Array.from({ length: count + 1 }, (_, i) => f(i * step));
  return values.some((value, i) => {
    if (value > level) return true;
    const isTop = i > 0 && i < count && value >= Math.max(values[i - 1]!, values[i + 1]!);
    return isTop && peakBetween(f, (i - 1) * step, (i + 1) * step).value > level;
  });
}

/** First angle before `peak` at which f rises over `level`; undefined where f is over it somewhere earlier as well. */
function firstOver(f: (phi: number) => number, level: number, peak: number): number | undefined {
  const steps = 2000;
  let before = peak;
  for (let i = steps - 1; i >= 0; i--) {
    const phi = (peak * i) / steps;
    if (f(phi) <= level) break;
    before = phi;
  }
  let [free, met] = [Math.max(0, before - peak / steps), before];
  if (isOverBefore(f, level, free)) return undefined;
  while (met - free > 1e-9) {
    const middle = (free + met) / 2;
    if (f(middle) > level) met = middle;
    else free = middle;
  }
  return met;
}

/** The bend with this frame in its way. */
function stepWith(file: RandomJob, frame: Corner[][], state: State, bendsDone: number) {
  const { part, brake, marginMm } = jobOf({ ...file, brake: { ...file.brake, frame } });
  return judgeStep(part, brake, { bendsDone, bend: state.bend, clamped: state.end }, marginMm);
}

/** Whether the frame alone is what the state can meet: the bend is begun, and meets nothing else. */
function isFree(file: RandomJob, state: State, bendsDone: number): boolean {
  const { contact, refused } = stepWith(file, [], state, bendsDone);
  return !contact && !refused;
}

const depths = fc.double({ min: -4, max: Math.log10(0.05), noNaN: true }).map((power) => 10 ** power);

it("finds every graze of an edge, and passes every near miss", () => {
  let grazes = 0;
  fc.assert(
    fc.property(
      randomJobs(3),
      picks(4),
      fc.integer({ min: 0, max: 359 }),
      depths,
      (file, picked, way, depth) => {
        const [nx, ny] = [Math.cos((way * Math.PI) / 180), Math.sin((way * Math.PI) / 180)];
        for (const pick of picked) {
          const { state, bendsDone } = stateOf(file.part.bends.length, pick);
          const stage = stageOf(file, state, INSET_MM, 1e-3);
          const peak = innerPeak((phi) => support(movingShapes(stage, phi), nx, ny), stage.endPhi);
          if (!peak || support(stage.clampedShapes, nx, ny) > peak.value - CLEAR_MM) continue;
          if (!isFree(file, state, bendsDone)) continue;
          const fine = stageOf(file, state, INSET_MM, CHORD_MM);
          const reach = (phi: number) => support(movingShapes(fine, phi), nx, ny);
          const top = innerPeak(reach, fine.endPhi)!;
          /** A block whose edge stands at the height `level` in the direction n. */
          const block = (level: number): Corner[] =>
            [
              [level, -300],
              [level + 40, -300],
              [level + 40, 300],
              [level, 300],
            ].map(([out, along]): Corner => [nx * out! - ny * along!, ny * out! + nx * along!]);
          const wanted = firstOver(reach, top.value - depth, top.phi);
          if (wanted === undefined) continue;
          grazes++;
          const { contact } = stepWith(file, [block(top.value - depth)], state, bendsDone);
          const said = JSON.stringify({ state, way, depth, wantedDeg: toDeg(wanted) });
          expect(contact?.member, said).toBe("frame");
          expect(Math.abs(toDeg(contact!.leafAngleRad) - toDeg(wanted)), said).toBeLessThan(ANGLE_DEG);
          expect(stepWith(file, [block(top.value + depth)], state, bendsDone).contact, said).toBeUndefined();
        }
      },
    ),
    drawn(31, 2000),
  );
  expect(grazes).toBeGreaterThan(shareOf(500));
});

it("finds every graze of a round, and passes every near miss", () => {
  let grazes = 0;
  fc.assert(
    fc.property(
      randomJobs(3),
      picks(4),
      fc.integer({ min: 10, max: 140 }),
      fc.double({ min: 0.5, max: 6, noNaN: true }),
      depths,
      (file, picked, way, off, depth) => {
        for (const pick of picked) {
          const { state, bendsDone } = stateOf(file.part.bends.length, pick);
          const stage = stageOf(file, state, INSET_MM, 1e-3);
          const [px, py] = stage.machine.pivot;
          const corners = movingShapes(stage, 0).flatMap((shape) => [...shape]);
          let far = 0;
          for (let i = 0; i < corners.length; i += 2)
            far = Math.max(far, Math.hypot(corners[i]! - px, corners[i + 1]! - py));
          const [cx, cy] = [Math.cos((way * Math.PI) / 180), Math.sin((way * Math.PI) / 180)].map(
            (part) => part * (far + off),
          );
          const center = Float64Array.of(
            px + cx!,
            py + cy!,
            px + cx!,
            py + cy! + 1e-9,
            px + cx! + 1e-9,
            py + cy!,
          );
          const nearness = (on: Stage) => (phi: number) =>
            -Math.min(...movingShapes(on, phi).map((shape) => distance(shape, center).gap));
          const peak = innerPeak(nearness(stage), stage.endPhi);
          if (!peak || -peak.value < 0.3) continue;
          const still = Math.min(...stage.clampedShapes.map((shape) => distance(shape, center).gap));
          if (still < -peak.value + CLEAR_MM) continue;
          if (!isFree(file, state, bendsDone)) continue;
          const near = nearness(stageOf(file, state, INSET_MM, 1e-5));
          const top = innerPeak(near, stage.endPhi)!;
          const wanted = firstOver(near, top.value - depth, top.phi);
          if (wanted === undefined) continue;
          /** A round post: a square with its corners rounded all the way. */
          const post = (radius: number): Corner[] =>
            [
              [-1, -1],
              [1, -1],
              [1, 1],
              [-1, 1],
            ].map(([x, y]): Corner => {
              const half = radius * (1 + 1e-7);
              return [center[0]! + half * x!, center[1]! + half * y!, radius];
            });
          grazes++;
          const { contact } = stepWith(file, [post(-top.value + depth)], state, bendsDone);
          const said = JSON.stringify({ state, way, off, depth, wantedDeg: toDeg(wanted) });
          expect(contact?.member, said).toBe("frame");
          expect(Math.abs(toDeg(contact!.leafAngleRad) - toDeg(wanted)), said).toBeLessThan(ANGLE_DEG);
          expect(stepWith(file, [post(-top.value - depth)], state, bendsDone).contact, said).toBeUndefined();
        }
      },
    ),
    drawn(32, 800),
  );
  expect(grazes).toBeGreaterThan(shareOf(350));
});
