/**
 * Doubtful readings against plain sampling: where the analysis says clear, no sampled mix of the doubts hits; where it
 * names a worst mix, that mix hits when it is judged on its own. Samples come from a seeded generator, half of them
 * with each reading at an end of its doubt, where trouble is likeliest. 1,000 mixes or more for each of five jobs, one of them
 * between closed ends, where a part must come in and out from the front.
 */
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { check } from "../../src/answer/check.ts";
import { judgeDoubts } from "../../src/answer/doubt.ts";
import { Machine } from "../../src/contact/machine.ts";
import { judgeStage } from "../../src/contact/step.ts";
import type { DoubtsAnswer } from "../../src/jobFile/answer.ts";
import type { Job, OrderStep } from "../../src/jobFile/job.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { stagesOf } from "../../src/motion/stages.ts";

/** A tenth by default; `SAMPLES=10000` asks for all. */
const SAMPLES = Number(process.env.SAMPLES ?? 1_000);

const JOBS = [
  "../../examples/cable-trough-bar.json",
  "../../examples/hat-stiffener.json",
  "../../examples/lens-box-tray.json",
  "../cases/u-square-pass.json",
  "../cases/z-finger45.json",
] as const;

function jobOf(path: string): Job {
  const reading = readJob(readFileSync(new URL(path, import.meta.url), "utf8"));
  if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
  return reading.job;
}

function orderOf(job: Job): readonly OrderStep[] {
  return check(job).order.map(({ bend, clamped }) => ({ bend: bend - 1, clamped }));
}

/** Seeded generator, 0 up to 1 (mulberry32). */
function generator(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
}

function hits(
  job: Job,
  order: readonly OrderStep[],
  offMm: readonly number[],
  machine = new Machine(job.brake, job.part.thicknessMm),
): boolean {
  const part = { ...job.part, flatsMm: job.part.flatsMm.map((flat, i) => flat + offMm[i]!) };
  return stagesOf(part, job.brake, order).some(
    (stage) => judgeStage(stage, job.marginMm, machine).verdict === "hits",
  );
}

/** The first sampled mix that hits; undefined where none of them does. */
function sampledHit(
  job: Job,
  order: readonly OrderStep[],
  doubtsMm: readonly number[],
  seed: number,
  samples = SAMPLES,
): readonly number[] | undefined {
  const next = generator(seed);
  const machine = new Machine(job.brake, job.part.thicknessMm);
  for (let i = 0; i < samples; i += 1) {
    const atEnds = i % 2 === 0;
    const offMm = doubtsMm.map((doubt) => {
      const share = atEnds ? Math.sign(next() - 0.5) : 2 * next() - 1;
      return doubt * share;
    });
    if (hits(job, order, offMm, machine)) return offMm;
  }
  return undefined;
}

describe.each(JOBS)("judgeDoubts of %s", (path) => {
  const job = jobOf(path);
  const order = orderOf(job);
  const least = Math.min(...job.part.flatsMm);
  const sizes = [0.02, 0.1, 0.25, 0.5, 1, 2, 4].filter((size) => size < least);
  const answers = new Map<number, DoubtsAnswer>();
  for (const size of sizes) {
    answers.set(
      size,
      judgeDoubts(
        job,
        order,
        job.part.flatsMm.map(() => size),
      ),
    );
  }

  test("never says clear where a sample hits, at the largest doubt that it calls clear", () => {
    const clear = sizes.filter((size) => answers.get(size)?.verdict === "clear");
    if (clear.length === 0) {
      // Tight as read already: then there is nothing that is called clear.
      expect(check(job).verdict).not.toBe("clear");
      return;
    }
    const doubts = job.part.flatsMm.map(() => Math.max(...clear));
    expect(sampledHit(job, order, doubts, 4)).toBeUndefined();
  });

  test("a worst mix that it names is within the doubts and hits when judged on its own", () => {
    const named = sizes.filter((size) => answers.get(size)?.worst != null);
    for (const size of named) {
      const { worst, verdict } = answers.get(size)!;
      for (const off of worst!.flats) expect(Math.abs(off)).toBeLessThanOrEqual(size + 1e-12);
      expect(hits(job, order, worst!.flats)).toBe(true);
      expect(verdict).not.toBe("clear");
    }
  });

  test("larger doubts never turn a hit into clear", () => {
    const found = sizes.map((size) => answers.get(size)!.worst !== null);
    expect(found).toEqual(found.toSorted((a, b) => Number(a) - Number(b)));
  });
});

describe("judgeDoubts", () => {
  // Closed form (pivot on the edge, no overbend): a square bar of thickness h passes under a channel of web W where
  // T + h < W − T. The case has W = 15, T = 0.8, h = 10: 3.4 to spare, less a tenth at most where its radii meet.
  test("names the web of a channel as the reading that decides, from the closed form's limit on", () => {
    const job = jobOf("../cases/u-square-pass.json");
    const order = orderOf(job);
    const onlyWeb = (doubt: number) => job.part.flatsMm.map((_, i) => (i === 1 ? doubt : 0));
    expect(judgeDoubts(job, order, onlyWeb(3.3))).toMatchObject({
      verdict: "clear",
      worst: null,
      deciding: [],
    });
    const answer = judgeDoubts(job, order, onlyWeb(3.45));
    expect(answer.verdict).toBe("tight");
    expect(answer.deciding).toEqual([2]);
    expect(answer.worst?.flats).toEqual([0, -3.45, 0]);
  });

  // A thin blade of the frame hangs behind the brake at x = −99.9 to −99.7. The flange bent first stands up at the web's
  // outside length W behind the edge, 0.8 thick: it meets the blade for W from 99.7 to 100.7 only. As read W is 98.9,
  // and a doubt of 1.9 ends at 97.0 and 100.8: as read and at both ends it passes, and in between it does not.
  test("finds a hit that lies between the ends of a doubt", () => {
    const file = JSON.parse(readFileSync(new URL("../cases/u-square-pass.json", import.meta.url), "utf8"));
    file.part.flats = [20, 98.9, 20];
    const blade = [
      [-99.9, 8],
      [-99.7, 8],
      [-99.7, 60],
      [-99.9, 60],
    ];
    file.brake.frame = [blade];
    file.order = [
      { bend: 1, clamped: "start" },
      { bend: 2, clamped: "start" },
    ];
    const reading = readJob(JSON.stringify(file));
    if (!reading.ok) throw new Error(JSON.stringify(reading.problems));
    const { job } = reading;
    const order = orderOf(job);
    expect(hits(job, order, [0, 0, 0])).toBe(false);
    expect(hits(job, order, [0, 1.9, 0])).toBe(false);
    expect(hits(job, order, [0, -1.9, 0])).toBe(false);
    expect(hits(job, order, [0, 1.3, 0])).toBe(true);
    const answer = judgeDoubts(job, order, [0, 1.9, 0]);
    expect(answer.verdict).toBe("tight");
    expect(answer.worst?.flats[1]).toBeGreaterThan(0.79);
    expect(answer.worst?.flats[1]).toBeLessThan(1.81);
  });

  test("a bend begun and finished later is judged in both strokes", () => {
    const job = jobOf("../cases/u-square-pass.json");
    const order: readonly OrderStep[] = [
      { bend: 0, clamped: "start", toDeg: 45 },
      { bend: 1, clamped: "end" },
      { bend: 0, clamped: "start" },
    ];
    const some = (size: number) => job.part.flatsMm.map(() => size);
    for (const size of [0.1, 0.5, 1, 2]) {
      const { verdict, worst } = judgeDoubts(job, order, some(size));
      if (verdict === "clear") expect(sampledHit(job, order, some(size), 9, 500)).toBeUndefined();
      if (worst) expect(hits(job, order, worst.flats)).toBe(true);
    }
    expect(judgeDoubts(job, order, some(0.1)).proved).toBe(true);
  });

  test("a part that hits as read says so, and which reading alone would save it", () => {
    const job = jobOf("../../examples/no-way.json");
    const order = orderOf(job);
    const answer = judgeDoubts(
      job,
      order,
      job.part.flatsMm.map(() => 0.1),
    );
    expect(answer.verdict).toBe("hits");
    expect(answer.worst?.flats.every((off) => off === 0)).toBe(true);
  });

  test("no doubts: the verdict as read", () => {
    const job = jobOf("../../examples/hat-stiffener.json");
    const answer = judgeDoubts(
      job,
      orderOf(job),
      job.part.flatsMm.map(() => 0),
    );
    expect(answer).toMatchObject({ verdict: check(job).verdict, worst: null, deciding: [], proved: true });
  });

  test("refuses doubts that don't go with the flats", () => {
    const job = jobOf("../../examples/hat-stiffener.json");
    const { flatsMm } = job.part;
    expect(() => judgeDoubts(job, [], [0.1])).toThrow(RangeError);
    expect(() =>
      judgeDoubts(
        job,
        [],
        flatsMm.map(() => -1),
      ),
    ).toThrow(RangeError);
    expect(() =>
      judgeDoubts(
        job,
        [],
        flatsMm.map((flat) => flat),
      ),
    ).toThrow(RangeError);
  });
});
