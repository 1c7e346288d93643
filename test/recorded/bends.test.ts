/**
 * More than a thousand bends by the engine against what the reference wrote down of them.
 * Source: test/reference, which shares no line with the engine; recorded, so that this takes a moment.
 */
import { describe, expect, it } from "vitest";
import { judgeStep } from "../../src/contact/step.ts";
import { jobOf } from "../cases/answers.ts";
import { stateOf } from "../contact/roughJob.ts";
import { bendFault } from "./bendFault.ts";
import { RECORDED, type RecordedBend } from "./recorded.ts";

const all = RECORDED.bends.flatMap(({ states }) => states);

it("has enough of each to look at", () => {
  const count = (what: (truth: RecordedBend) => boolean) => all.filter(what).length;
  expect(count(({ contact }) => (contact?.angleDeg ?? 0) > 0)).toBeGreaterThan(50);
  expect(count(({ clearanceMm }) => (clearanceMm ?? 0) > 0)).toBeGreaterThan(50);
});

describe.each(RECORDED.bends)("a recorded job", ({ file, states }) => {
  it("has its bends judged as the reference judged them", () => {
    const job = jobOf(file);
    for (const truth of states) {
      const { state, bendsDone } = stateOf(job.part.bends.length, truth.pick);
      const step = judgeStep(
        job.part,
        job.brake,
        { bendsDone, bend: state.bend, clamped: state.end },
        job.marginMm,
      );
      const fault = bendFault(job, step, truth);
      if (fault !== undefined) expect.fail(`${fault}: ${JSON.stringify({ pick: truth.pick, file })}`);
    }
  });
});
