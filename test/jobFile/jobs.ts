/**
 * A sound job as plain data for the tests of this folder, and ways to change one thing in it.
 */

import type { Problem } from "../../src/jobFile/problem.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { rectangle } from "../rectangle.ts";

/** A trough on a square bar, in mm; a new copy each time. */
export function soundJob() {
  return {
    noseroom: 1 as unknown,
    units: "mm" as unknown,
    part: {
      name: "trough",
      material: "mild steel" as unknown,
      thickness: 0.8 as unknown,
      insideRadius: 1 as unknown,
      kFactor: 0.44 as unknown,
      length: 300 as unknown,
      dimensions: "outside",
      flats: [20, 15, 20] as unknown[],
      bends: [
        { angle: 90, turn: "up", overbend: 92 },
        { angle: 90, turn: "up", overbend: 92 },
      ] as Record<string, unknown>[],
    } as Record<string, unknown> & { flats: unknown[]; bends: Record<string, unknown>[] },
    brake: {
      name: "square bar",
      clamp: {
        type: "bar",
        thickness: 10,
        depth: 45,
        noseRadius: 0.8,
        topRadius: 0.8,
        holderBack: 30,
        holderHeight: 50,
        holderDepth: 40,
      } as Record<string, unknown>,
      bed: {
        profile: rectangle(-160, -80, 0, 0) as unknown[],
      },
      leaf: {
        profile: rectangle(0, -10, 25, 0) as unknown[],
        swing: 135,
        pivot: [0, 0],
      } as Record<string, unknown>,
      frame: [] as unknown[],
      lift: 35,
      openEnds: true,
      setback: "auto" as unknown,
      rated: { thickness: 2, length: 1200, yield: 250 } as Record<string, unknown>,
    } as Record<string, unknown> & {
      clamp: Record<string, unknown>;
      leaf: Record<string, unknown>;
      frame: unknown[];
      rated: Record<string, unknown>;
    },
    order: [
      { bend: 1, clamped: "start" },
      { bend: 2, clamped: "end" },
    ] as Record<string, unknown>[],
    margin: 0.5 as unknown,
  };
}

export type SoundJob = ReturnType<typeof soundJob>;

/** The text of the sound job after one change. */
export function changed(change: (job: SoundJob) => void): string {
  const job = soundJob();
  change(job);
  return JSON.stringify(job);
}

/** The steps of a path such as part.bends[0].angle. */
function stepsOf(path: string): string[] {
  return path.split(/[.[\]]+/u).filter((step) => step !== "");
}

function holderOf(job: SoundJob, steps: readonly string[]): Record<string, unknown> {
  return steps
    .slice(0, -1)
    .reduce<unknown>((group, step) => (group as Record<string, unknown>)[step], job) as Record<
    string,
    unknown
  >;
}

/** A change that puts a value at a path. */
export function put(path: string, value: unknown): (job: SoundJob) => void {
  const steps = stepsOf(path);
  return (job) => {
    holderOf(job, steps)[steps.at(-1)!] = value;
  };
}

/** A change that takes a key away. */
export function drop(path: string): (job: SoundJob) => void {
  const steps = stepsOf(path);
  return (job) => {
    delete holderOf(job, steps)[steps.at(-1)!];
  };
}

/** The problems of a text; empty where it reads. */
export function problemsOf(text: string): readonly Problem[] {
  const result = readJob(text);
  return result.ok ? [] : result.problems;
}

/** The job of a text that must read. */
export function jobOfText(text: string) {
  const result = readJob(text);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.job;
}
