/**
 * A bend order of the user's own: every bend once, each with the end that lies in the throat.
 * Bends count from 1 in the file and from 0 in the job.
 */
import type { OrderStep } from "./job.ts";
import { type Reading, refuse } from "./reading.ts";
import type { JobFile } from "./schema.ts";

/** The order, or undefined with the problems noted. */
export function readOrder(
  reading: Reading,
  file: NonNullable<JobFile["order"]>,
  bends: number,
): readonly OrderStep[] | undefined {
  if (file.length !== bends) {
    refuse(reading, "order", file, `a list of ${bends} steps, each bend once`);
    return undefined;
  }
  const seen = new Set<number>();
  let sound = true;
  file.forEach((step, i) => {
    if (step.bend < 1 || step.bend > bends || seen.has(step.bend)) {
      refuse(
        reading,
        `order[${i}].bend`,
        step.bend,
        seen.has(step.bend)
          ? "a bend that no earlier step has made"
          : `the number of a bend, from 1 to ${bends}`,
      );
      sound = false;
    }
    seen.add(step.bend);
  });
  return sound ? file.map((step) => ({ bend: step.bend - 1, clamped: step.clamped })) : undefined;
}
