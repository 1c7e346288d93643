/**
 * A short torture run from a fixed seed, and every disagreement that a long one ever found, tried again.
 * Source: the reference in test/reference; the long run is `npm run torture`.
 */
import { readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";
import type { Pick } from "../contact/roughJob.ts";
import { drawn } from "../drawn.ts";
import type { RandomJob } from "../reference/randomJob.ts";
import { keptFault, noTally, runBatch } from "../torture/torture.ts";

const kept = new URL("../torture/kept/", import.meta.url);

it("agrees on random jobs at the far ends of size, thickness and angle", () => {
  const tally = noTally();
  const { seed, numRuns: batches } = drawn(100, 20);
  for (let batch = 0; batch < batches; batch++)
    runBatch(seed + batch, 40, { wholePerMille: 20, grazePerMille: 50 }, tally);
  expect(tally.disagreements).toEqual([]);
  expect(tally.cases).toBeGreaterThan(100 * batches);
  expect(Math.min(tally.met, tally.measured)).toBeGreaterThan(12 * batches);
  expect(Math.min(tally.whole, tally.grazes)).toBeGreaterThanOrEqual(batches);
});

it.each(readdirSync(kept))("agrees on %s, which it once did not", (name) => {
  const { file, pick } = JSON.parse(readFileSync(new URL(name, kept), "utf8")) as {
    file: RandomJob;
    pick: Pick;
  };
  expect(keptFault(file, pick)).toBeUndefined();
});
