/**
 * Some hundred bends by the engine against what the reference wrote down of them. Source: test/reference, which shares no
 * line with the engine; recorded, so that this takes a moment and every mutant of the engine can be tried on it.
 */
import { expect, it } from "vitest";
import { judgeStep } from "../../src/contact/step.ts";
import { toDeg } from "../../src/units/quantity.ts";
import { jobOf } from "../cases/answers.ts";
import { stateOf } from "../contact/roughJob.ts";
import { pointFault } from "../torture/sameness.ts";
import { TRUTHS } from "./truths.ts";

it("judges every recorded bend as the reference did", () => {
  let [met, measured] = [0, 0];
  for (const { file, states } of TRUTHS.bends) {
    const job = jobOf(file);
    for (const truth of states) {
      const { state, bendsDone } = stateOf(job.part.bends.length, truth.pick);
      const step = judgeStep(job.part, job.brake, bendsDone, state.bend, state.end, job.marginMm);
      const said = JSON.stringify({ pick: truth.pick, file });
      expect(step.verdict, said).toBe(truth.verdict);
      expect([step.load, step.unload], said).toEqual([truth.load, truth.unload]);
      expect(step.seat.noseSetbackMm, said).toBeCloseTo(truth.noseSetbackMm, 9);
      expect(step.contact === undefined, said).toBe(truth.contact === null);
      if (step.contact) {
        met += Number(step.contact.leafAngleRad > 0);
        expect(Math.abs(toDeg(step.contact.leafAngleRad) - truth.contact!.angleDeg), said).toBeLessThan(0.05);
        expect(truth.contact!.members, said).toContain(step.contact.member);
      }
      expect(step.clearanceMm === undefined, said).toBe(truth.clearanceMm === null);
      expect(Math.abs((step.clearanceMm ?? 0) - (truth.clearanceMm ?? 0)), said).toBeLessThan(0.01);
      measured += Number((step.clearanceMm ?? 0) > 0);
      expect(pointFault(job, step), said).toBeUndefined();
    }
  }
  expect(Math.min(met, measured)).toBeGreaterThan(50);
});
