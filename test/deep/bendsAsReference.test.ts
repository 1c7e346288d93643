/**
 * Contact, clearance, loading and unloading of single bends against the reference on states of rough brakes.
 * Source: the independent reference (test/reference), which flattens, bisects and asks JSTS; it shares no line with src.
 */
import fc from "fast-check";
import { expect, it } from "vitest";
import type { Brake } from "../../src/brake/brake.ts";
import { LEAF_OFF_MM } from "../../src/contact/gaps.ts";
import { judgeStep, type Step } from "../../src/contact/step.ts";
import { toDeg } from "../../src/units/quantity.ts";
import { jobOf } from "../cases/answers.ts";
import { oddJobs, type Pick, picks, roughJobs, stateOf } from "../contact/roughJob.ts";
import { drawn } from "../drawn.ts";
import { checkBend } from "../reference/bendCheck.ts";
import { LeafAlone } from "../reference/contact.ts";
import type { RandomJob } from "../reference/randomJob.ts";

const STATES_PER_JOB = 8;
const ANGLE_DEG = 0.05;
const CLEARANCE_MM = 0.01;

/**
 * A leaf pivoted below the bed's top drives its corner into the bed at once: it goes |y|·sin φ − x·(1 − cos φ) past the
 * bed's front. Until that is more than the engine draws the leaf off, it turns farther than the reference, which does not.
 */
function leafEaseDeg(step: Step, brake: Brake): number {
  const { x, y } = brake.leaf.pivot;
  if (step.contact!.tag >= 0 || y >= 0) return 0;
  for (let phi = 0; phi < 0.3; phi += 1e-4) {
    if (-y * Math.sin(phi) - x * (1 - Math.cos(phi)) > 1.01 * LEAF_OFF_MM) return toDeg(phi);
  }
  return 180;
}

/** How many states were looked at, and how many of them met something or had something to measure. */
interface Tally {
  states: number;
  met: number;
  metBySwing: number;
  measured: number;
}

function expectAsReference(file: RandomJob, picked: readonly Pick[], tally: Tally): void {
  const { part, brake, marginMm } = jobOf(file);
  const alone = new LeafAlone();
  for (const pick of picked) {
    const { state, bendsDone } = stateOf(part.bends.length, pick);
    const step = judgeStep(part, brake, { bendsDone, bend: state.bend, clamped: state.end }, marginMm);
    const truth = checkBend(file, state, alone);
    const found = step.contact && toDeg(step.contact.leafAngleRad);
    const said = JSON.stringify({ state, found, wanted: truth.contact?.angleDeg });
    tally.states++;
    expect(found === undefined, said).toBe(truth.contact === null);
    expect([step.verdict, step.load, step.unload], said).toEqual([truth.verdict, truth.load, truth.unload]);
    expect(step.clearanceMm === undefined, said).toBe(truth.clearanceMm === null);
    expect(Math.abs((step.clearanceMm ?? 0) - (truth.clearanceMm ?? 0)), said).toBeLessThan(CLEARANCE_MM);
    if (found === undefined || !step.contact) {
      tally.measured += Number(step.clearanceMm !== undefined);
      continue;
    }
    tally.met++;
    tally.metBySwing += Number(found > 0);
    const late = found - truth.contact!.angleDeg;
    expect(late, said).toBeGreaterThan(-ANGLE_DEG);
    expect(late, said).toBeLessThan(ANGLE_DEG + leafEaseDeg(step, brake));
    expect(truth.contact!.members, said).toContain(step.contact.member);
  }
}

it.each([
  ["states of rough brakes", roughJobs(4), drawn(20, 400)],
  ["states at odd sizes and angles", oddJobs(4), drawn(21, 100)],
] as const)("judges %s as the reference does", (_, jobs, runs) => {
  const tally: Tally = { states: 0, met: 0, metBySwing: 0, measured: 0 };
  fc.assert(
    fc.property(jobs, picks(STATES_PER_JOB), (file, picked) => expectAsReference(file, picked, tally)),
    runs,
  );
  expect(tally.states).toBe(runs.numRuns * STATES_PER_JOB);
  expect(tally.met).toBeGreaterThan(0.2 * tally.states);
  expect(tally.metBySwing).toBeGreaterThan(0.1 * tally.states);
  expect(tally.measured).toBeGreaterThan(0.15 * tally.states);
});
