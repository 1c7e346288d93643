/**
 * Whole parts for the benchmark: boxes of four walls with lips, searched whole with the fingers of a shop. The time told is the
 * processor's, since other work on the machine must not count.
 */
import { readFileSync } from "node:fs";
import { checkWhole } from "../../src/answer/wholeCheck.ts";
import { readAnyJob } from "../../src/jobFile/readAnyJob.ts";
import type { WholeJob } from "../../src/jobFile/wholeJob.ts";
import { median, type Row, row } from "./timing.ts";

/** How many lips stand beyond each of the walls left, right, front and back, and how long the check may take. */
const BOXES = [
  { lips: [1, 1, 1, 1], turn: "out", wantedS: 0.3 },
  { lips: [1, 1, 1, 1], turn: "in", wantedS: 0.3 },
  { lips: [2, 2, 2, 2], turn: "out", wantedS: 2 },
  { lips: [3, 3, 2, 2], turn: "out", wantedS: 10 },
] as const;

/** The tray of the examples with other lips: the first turned as said, each further one the other way. */
export function boxJob(lips: readonly number[], turn: "in" | "out"): WholeJob {
  const file = JSON.parse(readFileSync("examples/whole/lens-box-lips.json", "utf8"));
  const other = turn === "in" ? "out" : "in";
  for (const [i, side] of ["left", "right", "front", "back"].entries())
    file.part.box.walls[side].lips = Array.from({ length: lips[i]! }, (_, k) => ({
      size: k === 0 ? 12 : 8,
      turn: k % 2 === 0 ? turn : other,
    }));
  const read = readAnyJob(JSON.stringify(file));
  if (!read.ok || read.kind !== "whole") throw new Error(`box of ${lips} lips: ${JSON.stringify(read)}`);
  return read.job;
}

export function boxRows(): Row[] {
  return BOXES.map(({ lips, turn, wantedS }) => {
    const job = boxJob(lips, turn);
    const bends = job.part.sheet.pattern.bends.length;
    const times: number[] = [];
    for (let run = bends > 10 ? 0 : -2; run < 3; run++) {
      const from = process.cpuUsage();
      checkWhole(job);
      const { user, system } = process.cpuUsage(from);
      if (run >= 0) times.push(user + system);
    }
    const missed = median(times) > wantedS * 1e6 ? ", missed" : "";
    return row(
      `check of a box of ${bends} bends, lips ${turn}`,
      times,
      `processor, wanted ${wantedS} s${missed}`,
    );
  });
}
