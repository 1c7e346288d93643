/**
 * The sweep of the benchmark: five formed bends on the moving side and a brake, 48 edges in all (24 + 24), taken through
 * 90°. What is asked: does anything meet, and at which angle. Built once for each of the contestants.
 */

import { type Brake, type Job, type Part, readJob } from "../../src/index.ts";
import { rectangle } from "../rectangle.ts";

export interface SweepCase {
  readonly job: Job;
  readonly part: Part;
  readonly brake: Brake;
  readonly bend: number;
  readonly bendsDone: number;
}

/** `height` of the bar decides whether the sweep goes clear or meets it. */
export function sweepCase(barMm: number): SweepCase {
  const read = readJob(
    JSON.stringify({
      noseroom: 1,
      units: "mm",
      part: {
        name: "stepped trough of the benchmark",
        material: "mild steel",
        thickness: 0.8,
        insideRadius: 1,
        kFactor: 0.44,
        dimensions: "outside",
        flats: [40, 26, 12, 12, 12, 12, 12],
        bends: [
          { angle: 90, turn: "up", overbend: 90 },
          { angle: 45, turn: "up", overbend: 45 },
          { angle: 45, turn: "down", overbend: 45 },
          { angle: 45, turn: "up", overbend: 45 },
          { angle: 45, turn: "down", overbend: 45 },
          { angle: 30, turn: "up", overbend: 30 },
        ],
      },
      brake: {
        name: "bar brake of the benchmark",
        clamp: {
          type: "bar",
          thickness: barMm,
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
            [-60, 0],
            [-60, -4],
            [-160, -4],
          ],
        },
        leaf: { profile: rectangle(0, -10, 16, 0), swing: 135 },
        frame: [
          [
            [-160, 120],
            [-120, 120],
            [-120, 160],
            [-160, 160],
          ],
        ],
        lift: 60,
        openEnds: true,
      },
    }),
  );
  if (!read.ok) throw new Error(`sweep of the benchmark: ${JSON.stringify(read.problems)}`);
  const { job } = read;
  return { job, part: job.part, brake: job.brake, bend: 0, bendsDone: 0b111110 };
}
