/**
 * Getting in and out proved for a box of flats against mixes out of it, each judged by itself: on random parts, brakes and
 * states, ends open and closed. The single judgement is held against the independent reference in test/reference.
 */
import fc from "fast-check";
import { expect, it } from "vitest";
import { alwaysHandled } from "../../src/contact/alwaysHandled.ts";
import { Machine } from "../../src/contact/machine.ts";
import { judgeStep } from "../../src/contact/step.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { unheld } from "../cases/answers.ts";
import { drawn, shareOf } from "../drawn.ts";
import { randomJobs } from "../reference/randomJob.ts";

const MIXES = 24;

it("never says yes where some mix is blocked, and says yes to most that are far from it", () => {
  let [asked, yes, exact, careful] = [0, 0, 0, 0];
  fc.assert(
    fc.property(
      randomJobs(5),
      fc.array(fc.tuple(fc.nat(31), fc.nat(4), fc.boolean()), { minLength: 4, maxLength: 4 }),
      fc.constantFrom(0.05, 0.3, 1),
      fc.boolean(),
      fc.infiniteStream(fc.double({ min: -1, max: 1, noNaN: true })),
      (file, states, half, openEnds, ways) => {
        const read = readJob(JSON.stringify(unheld({ ...file, brake: { ...file.brake, openEnds } })));
        if (!read.ok) throw new Error(JSON.stringify(read.problems));
        const { part, brake, marginMm } = read.job;
        const machine = new Machine(brake, part.thicknessMm);
        const halfMm = part.flatsMm.map((flat) => Math.min(half, flat / 2));
        for (const [set, pick, start] of states) {
          const bend = pick % part.bends.length;
          const clamped = start ? "start" : "end";
          const bendsDone = set & ((1 << part.bends.length) - 1) & ~(1 << bend);
          const stage = { part, brake, bendsDone, bend, clamped } as const;
          const blocked = (offMm: readonly number[]) => {
            const off = { ...part, flatsMm: part.flatsMm.map((flat, i) => flat + offMm[i]!) };
            const { load, unload } = judgeStep(off, brake, { bendsDone, bend, clamped }, marginMm, machine);
            return load === "blocked" || unload === "blocked";
          };
          const still = part.flatsMm.map(() => 0);
          const free = !blocked(still);
          const point = alwaysHandled(stage, still, machine);
          if (point) expect(free).toBe(true);
          exact += Number(free);
          careful += Number(free && !point);
          if (free) asked += 1;
          if (!alwaysHandled(stage, halfMm, machine)) continue;
          yes += 1;
          for (let i = 0; i < MIXES; i += 1) {
            const ends = i % 2 === 0;
            const off = halfMm.map((most) => {
              const way = ways.next().value!;
              return most * (ends ? Math.sign(way) : way);
            });
            expect(blocked(off)).toBe(false);
          }
        }
      },
    ),
    drawn(7, 400),
  );
  expect(asked).toBeGreaterThan(shareOf(330));
  expect(yes).toBeGreaterThan(asked / 2);
  // A bend's outline is a little larger than the bend: seldom that decides.
  expect(careful).toBeLessThan(exact / 50);
});
