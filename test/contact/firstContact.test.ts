/**
 * Contact, clearance, loading and unloading of single bends against the reference on 2,000 states of rough brakes.
 * Source: the independent reference (test/reference), which flattens, bisects and asks JSTS; it shares no line with src.
 */
import fc from "fast-check";
import { expect, it } from "vitest";
import type { Brake } from "../../src/brake/brake.ts";
import { LEAF_PLAY_MM } from "../../src/contact/gaps.ts";
import { judgeStep, type Step } from "../../src/contact/step.ts";
import { toDeg } from "../../src/units/quantity.ts";
import { jobOf } from "../cases/answers.ts";
import { checkBend } from "../reference/bendCheck.ts";
import { LeafAlone } from "../reference/contact.ts";
import { picks, roughJobs, stateOf } from "./roughJob.ts";

const JOBS = 250;
const STATES_PER_JOB = 8;
const ANGLE_DEG = 0.05;
const CLEARANCE_MM = 0.01;

/**
 * A leaf pivoted below the bed's top drives its corner into the bed at once, at |y| mm a radian; over the play
 * that the engine gives the two it turns so much farther than the reference, which gives none.
 */
function leafPlayDeg(step: Step, brake: Brake): number {
  const below = -brake.leaf.pivot.y;
  return step.contact!.tag < 0 && below > 0 ? toDeg((1.01 * LEAF_PLAY_MM) / below) : 0;
}

it("judges 2,000 random states of rough brakes as the reference does", () => {
  let [states, met, metBySwing, measured] = [0, 0, 0, 0];
  fc.assert(
    fc.property(roughJobs(4), picks(STATES_PER_JOB), (file, picked) => {
      const { part, brake, marginMm } = jobOf(file);
      const alone = new LeafAlone();
      for (const pick of picked) {
        const { state, bendsDone } = stateOf(part.bends.length, pick);
        const step = judgeStep(part, brake, bendsDone, state.bend, state.end, marginMm);
        const truth = checkBend(file, state, alone);
        const found = step.contact && toDeg(step.contact.leafAngleRad);
        const said = JSON.stringify({ state, found, wanted: truth.contact?.angleDeg });
        states++;
        expect(found === undefined, said).toBe(truth.contact === null);
        expect([step.verdict, step.load, step.unload], said).toEqual([
          truth.verdict,
          truth.load,
          truth.unload,
        ]);
        expect(step.clearanceMm === undefined, said).toBe(truth.clearanceMm === null);
        expect(Math.abs((step.clearanceMm ?? 0) - (truth.clearanceMm ?? 0)), said).toBeLessThan(CLEARANCE_MM);
        if (found === undefined || !step.contact) {
          measured += Number(step.clearanceMm !== undefined);
          continue;
        }
        met++;
        metBySwing += Number(found > 0);
        const late = found - truth.contact!.angleDeg;
        expect(late, said).toBeGreaterThan(-ANGLE_DEG);
        expect(late, said).toBeLessThan(ANGLE_DEG + leafPlayDeg(step, brake));
        expect(truth.contact!.members, said).toContain(step.contact.member);
      }
    }),
    { seed: 20, numRuns: JOBS },
  );
  expect(states).toBe(JOBS * STATES_PER_JOB);
  expect(met).toBeGreaterThan(400);
  expect(metBySwing).toBeGreaterThan(200);
  expect(measured).toBeGreaterThan(300);
});
