/**
 * The best order of small whole parts against trying everything: all orders, ways round and finger sets (allOrders). Each stroke of
 * an order is judged whole and by itself, so what the search shares and passes over is held too.
 */
import { expect, it } from "vitest";
import { checkWhole } from "../../src/answer/wholeCheck.ts";
import { readAnyJob } from "../../src/jobFile/readAnyJob.ts";
import { drawn } from "../drawn.ts";
import { AllOrders, compare, WIDTHS_MM } from "../reference3d/allOrders.ts";
import { randomWholeFile } from "../reference3d/randomWhole.ts";

const MOST_BENDS = 5;
const { seed: first, numRuns: parts } = drawn(1, 300);

/** A part of up to five bends with a few fingers, or none; undefined where the seed makes no such part. */
function jobOf(seed: number) {
  const file = randomWholeFile(seed) as { brake: { clamp: Record<string, unknown> } };
  const fingers = WIDTHS_MM.map((width) => ({ width, count: 1 }));
  if (file.brake.clamp.fingers) file.brake.clamp.fingers = fingers;
  const read = readAnyJob(JSON.stringify(file));
  if (!read.ok || read.kind !== "whole" || read.job.part.sheet.pattern.bends.length > MOST_BENDS)
    return undefined;
  return read.job;
}

it(`checkWhole: the best of all orders, ways round and finger sets of ${parts} random whole parts`, () => {
  const wrong: string[] = [];
  let [tried, folding] = [0, 0];
  for (let seed = first; tried < parts; seed++) {
    const job = jobOf(seed);
    if (!job) continue;
    tried++;
    const all = new AllOrders(job);
    const best = all.best();
    const { verdict, order } = checkWhole(job);
    if (best) folding++;
    const made = order.map((step) => ({
      stroke: { bends: step.bends.map((bend) => bend - 1), clampedFace: step.clampedFace - 1 },
      tight: step.verdict === "tight",
      off: [step.load, step.unload].includes("fingers off"),
      fingers: WIDTHS_MM.map((width) => step.fingers.filter((finger) => finger.width === width).length),
    }));
    const said = verdict === "hits" ? undefined : all.rankOf(made);
    const isSame = best && said ? compare(best, said) === 0 : best === said;
    if (!isSame) wrong.push(`seed ${seed}: ${best ?? "none"} by trying, ${said ?? "none"} found`);
  }
  expect(wrong).toEqual([]);
  expect(folding).toBeGreaterThan(parts / 10);
});
