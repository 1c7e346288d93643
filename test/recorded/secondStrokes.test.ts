/**
 * Second strokes of bends left part way, by the engine against what the reference wrote down of them.
 * Source: test/reference/twoStrokes.ts, recorded.
 */
import { describe, expect, it } from "vitest";
import { Machine } from "../../src/contact/machine.ts";
import { judgeStage } from "../../src/contact/step.ts";
import { stagesOf } from "../../src/motion/stages.ts";
import { toDeg } from "../../src/units/quantity.ts";
import { jobOf } from "../cases/answers.ts";
import { stateOf } from "../contact/roughJob.ts";
import { RECORDED } from "./recorded.ts";

const ANGLE_DEG = 0.05;
const CLEARANCE_MM = 0.02;

describe.each(RECORDED.strokes)("a recorded job", ({ file, states }) => {
  it("has its second strokes judged as the reference judged them", () => {
    const { part, brake, marginMm } = jobOf(file);
    const machine = new Machine(brake, part.thicknessMm);
    for (const { pick, leftDeg, ...truth } of states) {
      const { state } = stateOf(part.bends.length, pick);
      const stroke = { bend: state.bend, clamped: state.end };
      const before = state.done.flatMap((done, bend) => (done ? [{ bend, clamped: "start" as const }] : []));
      const stage = stagesOf(part, brake, [...before, { ...stroke, toDeg: leftDeg }, stroke]).at(-1)!;
      const { load, contact, clearanceMm } = judgeStage(stage, marginMm, machine);
      const said = JSON.stringify({ pick, leftDeg, file });
      expect(load, said).toBe(truth.load);
      // Where the begun part has no room to lie, the two may tell it as no way in, or as contact from the start.
      if (load === "blocked") continue;
      expect(contact === undefined, said).toBe(truth.contact === null);
      if (contact && truth.contact) {
        expect(Math.abs(toDeg(contact.leafAngleRad) - truth.contact.angleDeg), said).toBeLessThan(ANGLE_DEG);
        expect(truth.contact.members, said).toContain(contact.member);
        continue;
      }
      expect(clearanceMm === undefined, said).toBe(truth.clearanceMm === null);
      expect(Math.abs((clearanceMm ?? 0) - (truth.clearanceMm ?? 0)), said).toBeLessThan(CLEARANCE_MM);
    }
  });
});
