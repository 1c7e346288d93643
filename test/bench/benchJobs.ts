/**
 * Jobs for the benchmark, made by rule so that they can be of any number of bends.
 * "hat": ribs of 60° side by side, many orders work; "spiral": a flat scroll of square bends, few orders;
 * "shut": a scroll too tight for the brake, no order; "open": slight bends, every order of one side works.
 */
import { type Job, readJob } from "../../src/index.ts";

export type Shape = "hat" | "spiral" | "shut" | "open";

export const SHAPES: readonly Shape[] = ["hat", "spiral", "shut", "open"];

/** A job of the given shape with n bends. */
export function benchJob(shape: Shape, n: number): Job {
  const flats: number[] = [];
  const bends: { angle: number; turn: "up" | "down"; overbend: number }[] = [];
  for (let i = 0; i <= n; i++) {
    if (shape === "hat") flats.push(i === 0 || i === n ? 20 : i % 4 === 0 ? 50 : 24);
    else if (shape === "spiral") flats.push(14 + 5 * i);
    else if (shape === "shut") flats.push(14);
    else flats.push(22);
  }
  for (let i = 0; i < n; i++) {
    const down = shape === "hat" && (i % 4 === 0 || i % 4 === 3);
    const angle = shape === "hat" ? 60 : shape === "open" ? 3 : 90;
    bends.push({ angle, turn: down ? "down" : "up", overbend: angle });
  }
  const read = readJob(
    JSON.stringify({
      noseroom: 1,
      units: "mm",
      part: {
        name: `${shape} of ${n} bends`,
        material: "mild steel",
        thickness: 0.8,
        insideRadius: 1,
        kFactor: 0.44,
        dimensions: "outside",
        flats,
        bends,
      },
      brake: {
        name: "bar brake of the benchmark",
        clamp: {
          type: "bar",
          thickness: 8,
          depth: 45,
          noseRadius: 0.8,
          topRadius: 0.8,
          holderBack: 30,
          holderHeight: 50,
          holderDepth: 40,
        },
        bed: {
          profile: [
            [-160, -80],
            [0, -80],
            [0, 0],
            [-160, 0],
          ],
        },
        leaf: {
          profile: [
            [0, -10],
            [16, -10],
            [16, 0],
            [0, 0],
          ],
          swing: 135,
        },
        lift: 60,
        openEnds: true,
      },
    }),
  );
  if (!read.ok) throw new Error(`bench job ${shape} ${n}: ${JSON.stringify(read.problems)}`);
  return read.job;
}
