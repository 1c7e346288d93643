/**
 * What the search keeps of each seated bend against the full check of one bend, state by state: can it be made, and how clear.
 * Source: contact/step.ts, which looks at every piece of the sheet and keeps nothing.
 */
import { expect, it } from "vitest";
import { Machine } from "../../src/contact/machine.ts";
import { judgeStep } from "../../src/contact/step.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { SectionJudge } from "../../src/section/sectionJudge.ts";
import { benchJob } from "../bench/benchJobs.ts";

/** Both answers for one state: the search's and the full check's. */
function bothSay(
  { part, brake, marginMm }: Job,
  bend: number,
  clamped: "start" | "end",
  set: number,
  judge = new SectionJudge(part, new Machine(brake, part.thicknessMm), marginMm),
) {
  const step = judgeStep(part, brake, { bendsDone: set, bend, clamped }, marginMm);
  const [held] = judge.held(set, 2 * bend + Number(clamped === "end"));
  const mm = held && judge.clearanceMm(set, held, Number.POSITIVE_INFINITY);
  return { judge, canMake: held !== undefined, mm, step };
}

// The free end of the run that swings up grazes a flange that stands over the bend: the run has a thickness.
it.each([
  [4, 0b10100000100000000],
  [4, 0b10010100000100000000],
  [8, 0b10100000000000000],
])("sees the swinging run's end meet a flange that stands over bend %i", (bend, set) => {
  const { canMake, step } = bothSay(benchJob("spiral", 20), bend, "end", set);
  expect(step.contact?.member).toBe("part");
  expect(canMake).toBe(false);
});

it.each(["hat", "spiral", "shut", "open"] as const)("says of %s what the full check says", (shape) => {
  const n = 14;
  const job = benchJob(shape, n);
  let [seed, made, differ] = [7, 0, 0];
  for (let bend = 0; bend < n; bend += 3) {
    for (const clamped of ["start", "end"] as const) {
      let judge: SectionJudge | undefined;
      for (let i = 0; i < 60; i++) {
        seed = (seed * 1103515245 + 12345) % 2 ** 31;
        // Few bends in some states, many in others.
        const set = (seed >>> 8) & (i % 3 === 0 ? seed >>> 3 : -1) & ((1 << n) - 1) & ~(1 << bend);
        const said = bothSay(job, bend, clamped, set, judge);
        const { canMake, mm, step } = said;
        judge = said.judge;
        expect(canMake, `${bend} ${clamped} ${set.toString(2)}`).toBe(step.verdict !== "hits");
        if (!canMake) continue;
        made++;
        const full = step.clearanceMm ?? Number.POSITIVE_INFINITY;
        if (mm !== full && !(Math.abs(mm! - full) < 1e-4)) differ++;
      }
    }
  }
  expect(differ).toBe(0);
  if (shape !== "shut") expect(made).toBeGreaterThan(20);
});
