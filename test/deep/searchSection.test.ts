/**
 * The order search against every order listed one by one: verdict, rank, count, and how far one gets where none works.
 * Source: plain enumeration (everyOrder.ts) over the engine's check of one bend; a smaller number over the independent
 * reference, which shares no line with src.
 */
import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Job } from "../../src/jobFile/job.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { SearchStopped } from "../../src/order/judge.ts";
import { searchSection } from "../../src/section/searchSection.ts";
import { jobOf } from "../cases/answers.ts";
import { roughJobs } from "../contact/roughJob.ts";
import { compareRanks, Judge, listOrders } from "../jobFile/everyOrder.ts";
import { Checks, enumerate } from "../reference/enumerate.ts";
import { randomJobs } from "../reference/randomJob.ts";

/** A given nose setback may form radii that leave a flat no length. */
const reads = (file: object) => readJob(JSON.stringify(file)).ok;

/** Parts of exactly `bends` bends: random ones cut to length would seldom be long. */
const jobsOf = (bends: number) => randomJobs(bends).filter((file) => file.part.bends.length === bends);

/** Gentle turns on a thin bar with much lift and open ends leave many orders to choose from. */
const friendly = (bends: number) =>
  jobsOf(bends).map(({ part, brake, ...rest }) => {
    const gentle = part.bends.map((bend) => ({
      ...bend,
      angle: bend.angle / 2,
      overbend: bend.overbend / 2,
    }));
    const { noseRadius } = brake.clamp;
    const clamp = { type: "bar" as const, thickness: 4, depth: 14, noseRadius, topRadius: noseRadius };
    const open = { ...brake, clamp, lift: 150, openEnds: true, frame: [] };
    return { ...rest, part: { ...part, bends: gentle }, brake: open };
  });

function expectSameAsListed(job: Job): { readonly viable: boolean; readonly orders: number } {
  const judge = new Judge(job);
  const listed = listOrders(judge);
  const found = searchSection(job.part, job.brake, job.marginMm);
  const said = JSON.stringify({ order: found.order, listed: { ...listed, best: listed.best ?? null } });
  expect(found.orders, said).toBe(BigInt(listed.viableOrders));
  expect(found.kind, said).toBe(listed.viableOrders > 0 ? "order" : "none");
  expect(new Set(found.order.map((move) => move.bend)).size, said).toBe(found.order.length);
  if (listed.best) {
    expect(found.order.length, said).toBe(job.part.bends.length);
    expect(compareRanks(judge.rank(found.order), listed.best), said).toBe(0);
  } else {
    expect(found.order.length, said).toBe(listed.most + 1);
    const made = found.order.slice(0, -1);
    expect(
      judge.along(made).every((step) => step.verdict !== "hits"),
      said,
    ).toBe(true);
    expect(judge.along(found.order).at(-1)!.verdict, said).toBe("hits");
    expect(compareRanks(judge.rank(made), listed.bestOfMost), said).toBe(0);
  }
  return { viable: found.kind === "order", orders: listed.viableOrders };
}

describe("searchSection", () => {
  it.each([
    [1, 40],
    [2, 80],
    [3, 100],
    [4, 90],
    [5, 60],
  ])("finds what listing every order finds, parts of %i bends, %i of them", (bends, parts) => {
    let [viable, none, choice] = [0, 0, 0];
    fc.assert(
      fc.property(fc.oneof(jobsOf(bends), friendly(bends)).filter(reads), (file) => {
        const same = expectSameAsListed(jobOf(file));
        viable += Number(same.viable);
        none += Number(!same.viable);
        choice += Number(same.orders > 1);
      }),
      { seed: 40 + bends, numRuns: parts },
    );
    expect(Math.min(viable, none, choice)).toBeGreaterThan(2);
  });

  it("finds what the reference finds by listing every order", () => {
    let viable = 0;
    fc.assert(
      fc.property(randomJobs(3), (file) => {
        const { part, brake, marginMm } = jobOf(file);
        const found = searchSection(part, brake, marginMm);
        const truth = enumerate(file, new Checks(file));
        expect(found.orders).toBe(BigInt(truth.viableOrders));
        expect(found.order.length).toBe(Math.min(part.bends.length, truth.furthest + 1));
        viable += Number(found.kind === "order");
      }),
      { seed: 47, numRuns: 30 },
    );
    expect(viable).toBeGreaterThan(5);
  });
});

describe("the furthest order", () => {
  it("is found where sets past the furthest can be come to from others", () => {
    const kept = readFileSync(new URL("kept/furthest-set-lies-low.json", import.meta.url), "utf8");
    expect(expectSameAsListed(jobOf(JSON.parse(kept))).viable).toBe(false);
  });

  it("makes as many bends as any on 250 rough brakes, part of five bends", () => {
    let none = 0;
    fc.assert(
      fc.property(
        roughJobs(5).filter((file) => file.part.bends.length === 5 && reads(file)),
        (file) => {
          const job = jobOf(file);
          const found = searchSection(job.part, job.brake, job.marginMm);
          if (found.kind === "order") return;
          none++;
          expect(found.order.length).toBe(mostBends(new Judge(job)) + 1);
        },
      ),
      { seed: 49, numRuns: 250 },
    );
    expect(none).toBeGreaterThan(100);
  });
});

/** Most bends that can be made one after another, by going from set to set. */
function mostBends(judge: Judge): number {
  const all = judge.job.part.bends.map((_, bend) => bend);
  let sets = new Set([0]);
  for (let made = 0; ; made++) {
    const next = [...sets].flatMap((set) =>
      all
        .filter((bend) => !((set >> bend) & 1))
        .filter((bend) =>
          (["start", "end"] as const).some((clamped) => judge.of(set, { bend, clamped }).verdict !== "hits"),
        )
        .map((bend) => set | (1 << bend)),
    );
    if (next.length === 0) return made;
    sets = new Set(next);
  }
}

describe("a watcher", () => {
  const { part, brake, marginMm } = fc
    .sample(friendly(5), { seed: 49, numRuns: 20 })
    .map(jobOf)
    .find((job) => searchSection(job.part, job.brake, job.marginMm).kind === "order")!;

  it("that says stop ends the search with SearchStopped", () => {
    const watch = { progress: () => {}, stopped: () => true };
    expect(() => searchSection(part, brake, marginMm, watch)).toThrow(SearchStopped);
  });

  it("is told a fraction that only grows, and changes nothing in the answer", () => {
    const told: number[] = [];
    const watch = { progress: (fraction: number) => void told.push(fraction), stopped: () => false };
    expect(searchSection(part, brake, marginMm, watch)).toEqual(searchSection(part, brake, marginMm));
    expect(told.length).toBeGreaterThan(0);
    expect(told.every((fraction, i) => fraction >= (told[i - 1] ?? 0) && fraction <= 1)).toBe(true);
  });
});
