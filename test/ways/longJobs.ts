/**
 * Long parts, corrugations and stairs with some flats and angles off the rule, on random brakes: many of them fail.
 * Random parts of many bends lie in themselves; these seldom do. Seeded.
 */
import fc from "fast-check";
import { type RandomJob, randomJobs } from "../reference/randomJob.ts";

/** Numbers from 0 to 1 by a seed (mulberry32, public domain; from memory). */
function randomBy(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

/** `count` jobs of `bends` bends each. */
export function longJobs(bends: number, seed: number, count: number): RandomJob[] {
  const random = randomBy(seed);
  return fc.sample(randomJobs(1), { seed, numRuns: count }).map((job) => {
    const [phase, stairs] = [Math.floor(4 * random()), random() < 0.5];
    const usual = 30 + 60 * random();
    const turned = Array.from({ length: bends }, (_, i) => {
      const angle = Number((random() < 0.8 ? usual : 20 + 70 * random()).toFixed(2));
      const up = stairs ? (i + phase) % 2 === 0 : ((i + phase) >> 1) % 2 === 0;
      return { angle, turn: up ? ("up" as const) : ("down" as const), overbend: angle };
    });
    const flats = Array.from({ length: bends + 1 }, () => Number((8 + 25 * random()).toFixed(3)));
    return { ...job, part: { ...job.part, dimensions: "flat" as const, flats, bends: turned } };
  });
}
