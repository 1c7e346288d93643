/**
 * What `check` makes of verdicts, angles and words: each on a part whose answer can be said beforehand.
 * Source: the design's own definitions (sections 5 to 8) on figures worked out by hand beside each test.
 */
import { describe, expect, it } from "vitest";
import { check } from "../../src/answer/check.ts";
import { answerOf, jobOf } from "../cases/answers.ts";
import { soundJob } from "../jobFile/jobs.ts";

/** The trough of jobs.ts on a bar whose front leans back enough to overbend by 2°. */
function leaningJob() {
  const job = soundJob();
  job.brake.clamp.noseAngle = 84;
  return job;
}

type SoundJob = ReturnType<typeof soundJob>;

function changedAnswer(change: (job: SoundJob) => void) {
  const job = leaningJob();
  change(job);
  return answerOf(job);
}

/** Without an order of its own the search chooses. */
function searched(change: (job: SoundJob) => void = () => {}) {
  const { order: _, ...job } = leaningJob();
  change(job as SoundJob);
  return answerOf(job);
}

describe("check", () => {
  it("gives the part's springback to the angle that was reached", () => {
    // A finger that stops the second bend: the leaf reads `reached`, the part keeps 90/92 of it.
    const answer = changedAnswer((job) => {
      job.brake.clamp = { type: "finger", noseAngle: 45, noseRadius: 0.8, height: 25, footDepth: 40 };
    });
    const [first, second] = answer.order;
    expect([first!.verdict, first!.reached]).toEqual(["clear", 92]);
    expect(first!.relaxesTo).toBeCloseTo(90, 9);
    expect(second!.verdict).toBe("hits");
    expect(second!.reached).toBe(second!.contact!.angle);
    expect(second!.relaxesTo).toBeCloseTo((second!.reached * 90) / 92, 9);
    expect(second!.clearance).toBe(0);
    expect(answer.verdict).toBe("hits");
  });

  it("names the feature that meets the clamp, and where", () => {
    const answer = changedAnswer((job) => {
      job.brake.clamp = { type: "finger", noseAngle: 45, noseRadius: 0.8, height: 25, footDepth: 40 };
    });
    const { contact } = answer.order[1]!;
    // Bend 2 with the end clamped: the return flange is flat 1, its tip is what leans over to the finger's face.
    expect([contact!.part, contact!.member]).toEqual(["end of flat 1", "clamp"]);
    // The face: x + y = T − s + √2·Rn, with s = (r + T)·tan(46°) − Rn.
    const s = 1.8 * Math.tan((46 * Math.PI) / 180) - 0.8;
    expect(contact!.point[0] + contact!.point[1]).toBeCloseTo(0.8 - s + Math.SQRT2 * 0.8, 6);
  });

  it("says how far the leaf swings where that is less than the overbend angle", () => {
    const answer = changedAnswer((job) => {
      job.brake.leaf.swing = 80;
    });
    expect(answer.verdict).toBe("hits");
    for (const step of answer.order) {
      expect([step.verdict, step.contact]).toEqual(["hits", null]);
      expect(step.reached).toBeCloseTo(80, 9);
      expect(step.relaxesTo).toBeCloseTo((80 * 90) / 92, 9);
    }
    expect(answer.warnings.some((words) => words.includes("80"))).toBe(true);
    expect(answer.viableOrders).toBe(0);
  });

  it("calls a bend tight under the margin and clear on it", () => {
    const clearance = searched().order[1]!.clearance!;
    expect(clearance).toBeGreaterThan(0.5);
    const withMargin = (margin: number) =>
      searched((job) => Object.assign(job, { margin })).order[1]!.verdict;
    expect(withMargin(clearance - 1e-6)).toBe("clear");
    expect(withMargin(clearance + 1e-6)).toBe("tight");
  });

  it("judges the bends after a hit as if it had been made", () => {
    const answer = changedAnswer((job) => {
      job.part.flats = [20, 15, 20, 15];
      job.part.bends.push({ angle: 90, turn: "up", overbend: 92 });
      job.brake.clamp = { type: "finger", noseAngle: 45, noseRadius: 0.8, height: 25, footDepth: 40 };
      job.order.push({ bend: 3, clamped: "end" });
    });
    expect(answer.order.map((step) => step.bend)).toEqual([1, 2, 3]);
    expect(answer.order[1]!.verdict).toBe("hits");
    // With both bends formed on the moving side the first flange leans back over flat 3, 15 up: it swings some way.
    expect(answer.order[2]!.reached).toBeGreaterThan(5);
  });

  it("keeps to the user's order and counts the others all the same", () => {
    const own = answerOf(leaningJob());
    expect(own.order.map(({ bend, clamped }) => [bend, clamped])).toEqual([
      [1, "start"],
      [2, "end"],
    ]);
    expect(own.viableOrders).toBe(searched().viableOrders);
    // Any bend and end first; then the formed flange must swing, since the bar is deeper than the web is wide: 4 · 1.
    expect(own.viableOrders).toBe(4);
  });

  it("chooses an order without a change where there is one", () => {
    const { order } = searched();
    expect(new Set(order.map((step) => step.clamped)).size).toBe(1);
    expect(order.every((step) => step.markedFaceUp)).toBe(true);
  });

  it("lays down the marked face for a bend that turns down", () => {
    const answer = searched((job) => {
      for (const bend of job.part.bends) bend.turn = "down";
    });
    expect(answer.order.map((step) => step.markedFaceUp)).toEqual([false, false]);
    expect(answer.verdict).toBe(searched().verdict);
  });

  it("measures nothing on a first bend without a holder or frame in reach", () => {
    // Only runs that lie on bed and leaf, and the clamped flat under the clamp: all of it touches by design.
    const [first] = searched().order;
    expect([first!.clearance, first!.clearancePoints, first!.verdict]).toEqual([null, null, "clear"]);
  });

  it("tells a leaf that swings into the clamp by itself", () => {
    // A flange of 5 is shorter than the leaf, whose far end comes down on the top of the bar before 125°.
    const answer = searched((job) => {
      job.part.flats = [30, 5];
      job.part.bends = [{ angle: 120, turn: "up", overbend: 125 }];
      job.brake.clamp = { type: "bar", thickness: 10, depth: 45, noseRadius: 0.8, noseAngle: 70 };
    });
    expect(answer.viableOrders).toBe(0);
    const { contact } = answer.order[0]!;
    expect([contact!.part, contact!.member]).toEqual(["leaf", "clamp"]);
    // The leaf's face runs out from (0, 0): where it meets the bar's top edge that lies in the leaf's direction.
    const [x, y] = contact!.point;
    expect((Math.atan2(y, x) * 180) / Math.PI).toBeCloseTo(contact!.angle, 1);
    expect(y).toBeCloseTo(10.8, 6);
  });

  it("gives nose setback, blank and states looked at", () => {
    const answer = searched();
    // s = (r + T)·tan(46°) − Rn
    expect(answer.order[0]!.setback).toBeCloseTo(1.8 * Math.tan((46 * Math.PI) / 180) - 0.8, 9);
    // Flats 20 − 1.8, 15 − 3.6, 20 − 1.8 and two allowances of π/2·(1 + 0.44·0.8).
    expect(answer.blank.developedWidth).toBeCloseTo(18.2 + 11.4 + 18.2 + Math.PI * 1.352, 9);
    // From the blank 2 bends by 2 ends, from each single bend the other one by 2 ends.
    expect(answer.statesChecked).toBe(8);
    expect(answer.remedies).toEqual([]);
  });

  it("leaves the job as it was", () => {
    const job = jobOf(leaningJob());
    const before = structuredClone(job);
    check(job);
    expect(job).toEqual(before);
  });
});
