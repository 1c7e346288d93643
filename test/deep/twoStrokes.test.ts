/**
 * A bend made in two strokes: the begun part is the same sheet as the bend seen half way, and the second stroke is judged
 * as the independent reference judges it (test/reference/twoStrokes.ts, which shares no line with src).
 */
import fc from "fast-check";
import { expect, it } from "vitest";
import { Machine } from "../../src/contact/machine.ts";
import { judgeStage } from "../../src/contact/step.ts";
import { partWayMade } from "../../src/motion/partWay.ts";
import { sceneAt } from "../../src/motion/scene.ts";
import { stagesOf } from "../../src/motion/stages.ts";
import { toDeg, toRad } from "../../src/units/quantity.ts";
import { jobOf } from "../cases/answers.ts";
import { picks, roughJobs, stateOf } from "../contact/roughJob.ts";
import { drawn, shareOf } from "../drawn.ts";
import { checkSecondStroke } from "../reference/twoStrokes.ts";

const shares = fc.double({ min: 0.15, max: 0.95, noNaN: true });

it("is half way the same sheet as the begun part", () => {
  let looked = 0;
  fc.assert(
    fc.property(roughJobs(3), picks(2), shares, (file, picked, share) => {
      const { part, brake } = jobOf(file);
      for (const pick of picked) {
        const { state, bendsDone } = stateOf(part.bends.length, pick);
        const leftDeg = part.bends[state.bend]!.angleDeg * share;
        const begun = partWayMade(part, state.bend, state.end, leftDeg, brake.leaf.pivot);
        if (!begun || part.bends[state.bend]!.pinched) continue;
        // Where the leaf stops for it: the begun bend springs back as the whole one does.
        const leafRad = toRad(begun.bends[state.bend]!.overbendDeg);
        const [whole, half] = [part, begun].map((one) =>
          sceneAt(one, brake, { bendsDone, bend: state.bend, clamped: state.end }, leafRad).sheet.edges.map(
            ({ from }) => from,
          ),
        );
        // What the zone's rest adds to a flat may show as one straight edge more.
        for (const { x, y } of half!) {
          const nearest = Math.min(...whole!.map((corner) => Math.hypot(corner.x - x, corner.y - y)));
          expect(nearest).toBeLessThan(1e-6);
        }
        looked++;
      }
    }),
    drawn(31, 1000),
  );
  expect(looked).toBeGreaterThan(shareOf(1000));
});

it("judges the second stroke as the reference does", () => {
  const tally = { states: 0, met: 0, measured: 0, blocked: 0 };
  fc.assert(
    fc.property(roughJobs(4), picks(4), shares, (file, picked, share) => {
      const { part, brake, marginMm } = jobOf(file);
      const machine = new Machine(brake, part.thicknessMm);
      for (const pick of picked) {
        const { state } = stateOf(part.bends.length, pick);
        const leftDeg = Number((part.bends[state.bend]!.angleDeg * share).toFixed(2));
        if (!partWayMade(part, state.bend, state.end, leftDeg, brake.leaf.pivot)) continue;
        const one = { bend: state.bend, clamped: state.end };
        const before = state.done.flatMap((done, bend) =>
          done ? [{ bend, clamped: "start" as const }] : [],
        );
        const stage = stagesOf(part, brake, [...before, { ...one, toDeg: leftDeg }, one]).at(-1)!;
        const step = judgeStage(stage, marginMm, machine);
        const truth = checkSecondStroke(file, state, leftDeg);
        // The leaf against the bed alone is nothing of the bend's: bendsAsReference.test.ts.
        if (truth.liesInItself || step.contact?.tag === -1) continue;
        expect(step.refused).toBe(truth.refused ?? undefined);
        if (step.refused) continue;
        const found = step.contact && toDeg(step.contact.leafAngleRad);
        const said = JSON.stringify({ state, leftDeg, found, truth });
        tally.states++;
        expect(step.load, said).toBe(truth.load);
        tally.blocked += Number(step.load === "blocked");
        // Where the begun part has no room to lie, the two may tell it as no way in, or as contact from the start.
        if (step.load === "blocked") continue;
        expect(found === undefined, said).toBe(truth.contact === null);
        if (found !== undefined && truth.contact) {
          tally.met++;
          expect(Math.abs(found - truth.contact.angleDeg), said).toBeLessThan(0.05);
          expect(truth.contact.members, said).toContain(step.contact!.member);
          continue;
        }
        expect(step.clearanceMm === undefined, said).toBe(truth.clearanceMm === null);
        expect(Math.abs((step.clearanceMm ?? 0) - (truth.clearanceMm ?? 0)), said).toBeLessThan(0.02);
        tally.measured += Number(step.clearanceMm !== undefined);
      }
    }),
    drawn(32, 400),
  );
  expect(Math.min(tally.met, tally.measured, tally.blocked)).toBeGreaterThan(shareOf(80));
});
