/**
 * The engine against the independent reference on random parts, brakes and states: every figure of a bend, and the
 * whole order search against plain enumeration. Source: the reference in test/reference, which shares no line with src.
 */
import fc from "fast-check";
import { expect, it } from "vitest";
import { judgeStep } from "../../src/contact/step.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { searchSection } from "../../src/section/searchSection.ts";
import { toDeg } from "../../src/units/quantity.ts";
import { unheld } from "../cases/answers.ts";
import { drawn, shareOf } from "../drawn.ts";
import { checkBend } from "../reference/bendCheck.ts";
import { LeafAlone } from "../reference/contact.ts";
import { Checks, enumerate, followOrder, rankOf } from "../reference/enumerate.ts";
import { type RandomJob, randomJobs } from "../reference/randomJob.ts";

function engineJob(file: RandomJob): Job {
  const read = readJob(JSON.stringify(unheld(file)));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.job;
}

const picks = fc.array(fc.tuple(fc.nat(31), fc.nat(4), fc.boolean()), { minLength: 8, maxLength: 8 });

it("judges a bend as the reference does", () => {
  let [met, measured] = [0, 0];
  fc.assert(
    fc.property(randomJobs(5), picks, (file, states) => {
      const { part, brake, marginMm } = engineJob(file);
      const alone = new LeafAlone();
      for (const [set, pick, start] of states) {
        const bend = pick % part.bends.length;
        const end = start ? "start" : "end";
        const done = part.bends.map((_, i) => i !== bend && ((set >> i) & 1) === 1);
        const bits = done.reduce((sum, made, i) => sum | (Number(made) << i), 0);
        const step = judgeStep(part, brake, { bendsDone: bits, bend, clamped: end }, marginMm);
        const truth = checkBend(file, { done, bend, end }, alone);
        expect([step.verdict, step.load, step.unload]).toEqual([truth.verdict, truth.load, truth.unload]);
        expect(step.contact === undefined).toBe(truth.contact === null);
        expect(step.clearanceMm === undefined).toBe(truth.clearanceMm === null);
        expect(Math.abs((step.clearanceMm ?? 0) - (truth.clearanceMm ?? 0))).toBeLessThan(0.01);
        if (step.contact === undefined) {
          measured += Number(step.clearanceMm !== undefined);
          continue;
        }
        met += Number(step.contact.leafAngleRad > 0);
        expect(Math.abs(toDeg(step.contact.leafAngleRad) - truth.contact!.angleDeg)).toBeLessThan(0.05);
        expect(truth.contact!.members).toContain(step.contact.member);
      }
    }),
    drawn(5, 500),
  );
  expect(met).toBeGreaterThan(shareOf(150));
  expect(measured).toBeGreaterThan(shareOf(500));
});

it("finds the order, rank and count that plain enumeration finds", () => {
  let [viable, none] = [0, 0];
  fc.assert(
    fc.property(randomJobs(3), (file) => {
      const { part, brake, marginMm } = engineJob(file);
      const found = searchSection(part, brake, marginMm);
      const checks = new Checks(file);
      const truth = enumerate(file, checks);
      expect(found.orders).toBe(BigInt(truth.viableOrders));
      expect(found.order.length).toBe(Math.min(part.bends.length, truth.furthest + 1));
      const steps = found.order.map(({ bend, clamped }) => ({ bend, end: clamped }));
      const made = followOrder(file, steps, checks);
      const rank = rankOf(file, steps, made);
      if (truth.rank === null) {
        none++;
        expect(made.findIndex((check) => check.verdict === "hits")).toBe(truth.furthest);
        return;
      }
      viable++;
      expect([rank.verdict, rank.changes]).toEqual([truth.rank.verdict, truth.rank.changes]);
      expect(rank.swung).toBeCloseTo(truth.rank.swung, 6);
      expect(Math.abs((rank.clearance ?? 0) - (truth.rank.clearance ?? 0))).toBeLessThan(0.005);
    }),
    drawn(6, 200),
  );
  expect(Math.min(viable, none)).toBeGreaterThan(shareOf(25));
});
