/**
 * How to set the brake, in words: examples with one nose setback, with several, and with shims over the nose.
 */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { check } from "../../src/answer/check.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { oneNoseSetback, setUpSentences } from "../../src/words/setUpWords.ts";

function setUpOf(
  change: (job: { part: Record<string, unknown>; brake: { clamp: Record<string, unknown> } }) => void,
) {
  const file = JSON.parse(readFileSync(new URL("../cases/u-square-pass.json", import.meta.url), "utf8"));
  change(file);
  const reading = readJob(JSON.stringify(file));
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  const answer = check(reading.job);
  return { one: oneNoseSetback(answer), said: setUpSentences(reading.job, answer) };
}

test("one setback and one stop are said once; r + T − Rn is the figure", () => {
  // r = 0.8 and Rn = 0.8: s = T = 0.8, the shop's rule of one thickness.
  const { one, said } = setUpOf((job) => {
    job.part.insideRadius = 0.8;
  });
  expect(one).toBe(true);
  expect(said.slice(0, 2)).toEqual([
    "Nose 0.80 mm back from the bed's front edge, one thickness of the sheet.",
    "Leaf stop at 90°.",
  ]);
});

test("shims over the nose are offered with what to check first, and told where the job has them", () => {
  // Rn = 0.8 to r = 2.4: two layers of 0.8. Setback 2.4 + 0.8 − 0.8 = 2.4 from the bare nose.
  const { said } = setUpOf((job) => {
    job.part.insideRadius = 2.4;
  });
  expect(said[0]).toContain(
    "fold sheet over the nose: 2 layers of 0.80 mm bring its radius from 0.80 mm to 2.40 mm",
  );
  expect(said[0]).toContain('Give 1.60 mm as the clamp\'s "shim" and check again first');
  expect(said[1]).toBe("Nose 2.40 mm back from the bed's front edge.");
  const over = setUpOf((job) => {
    job.part.insideRadius = 2.4;
    job.brake.clamp.shim = 1.6;
  });
  expect(over.said[0]).toBe(
    "Fold 1.60 mm of sheet over the nose; it brings the nose radius to 2.40 mm. Setback counts from the sheet.",
  );
  expect(over.said[1]).toBe("Nose 0.80 mm back from the bed's front edge, one thickness of the sheet.");
});

test("bends that differ are set anew, each by its row", () => {
  const { one, said } = setUpOf((job) => {
    job.part.bends = [
      { angle: 90, turn: "up", insideRadius: 0.8, overbend: 90 },
      { angle: 45, turn: "up", insideRadius: 1.6, overbend: 46 },
    ];
  });
  expect(one).toBe(false);
  expect(said.at(-3)).toMatch(/^Nose, in the order of the bends: .* You set it anew once\.$/u);
  expect(said.at(-2)).toBe("Leaf stop anew for each bend, as its row says.");
});
