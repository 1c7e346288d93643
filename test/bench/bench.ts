/**
 * `npm run bench`: one table, every ratio measured side by side in this run, also saved as bench.json.
 * Contestants take turns after a warm-up; medians are quoted, with the spread from the lowest to the highest.
 */
import { writeFileSync } from "node:fs";
import { Machine } from "../../src/contact/machine.ts";
import { noContact, SideChecks } from "../../src/contact/sideChecks.ts";
import { seatFor } from "../../src/motion/seat.ts";
import { formedJoints } from "../../src/part/chain.ts";
import { searchOrders } from "../../src/sequence/search.ts";
import { benchJob, SHAPES } from "./benchJobs.ts";
import { flattenSampler, jstsSampler } from "./sampled.ts";
import { type SweepCase, sweepCase } from "./sweepJob.ts";

interface Row {
  readonly what: string;
  readonly medianUs: number;
  readonly lowUs: number;
  readonly highUs: number;
  readonly note: string;
}

const rows: Row[] = [];

function median(times: readonly number[]): number {
  return [...times].sort((a, b) => a - b)[Math.floor(times.length / 2)]!;
}

/** Times several contestants in turn; returns microseconds a call, run by run. */
function inTurn(
  runs: number,
  contestants: readonly { readonly calls: number; readonly call: () => unknown }[],
): number[][] {
  const times = contestants.map((): number[] => []);
  for (let run = -2; run < runs; run++) {
    contestants.forEach(({ calls, call }, i) => {
      const from = performance.now();
      for (let c = 0; c < calls; c++) call();
      if (run >= 0) times[i]!.push(((performance.now() - from) * 1000) / calls);
    });
  }
  return times;
}

function add(what: string, times: readonly number[], note: string): void {
  rows.push({ what, medianUs: median(times), lowUs: Math.min(...times), highUs: Math.max(...times), note });
}

/** Contact of the whole moving side with clamp, bed and frame over the sweep: our kernel, the seat set up once. */
function ours(at: SweepCase): () => number {
  const seat = seatFor(at.part, at.brake, at.bend, "start");
  const checks = new SideChecks(seat, new Machine(at.brake, at.part.thicknessMm));
  const formed = formedJoints(seat.movingChain, at.bendsDone);
  const record = noContact();
  return () => {
    record.phiRad = Infinity;
    for (let k = 0; k <= seat.movingChain.joints; k++) checks.withBrake("moving", k, formed, record);
    return record.phiRad;
  };
}

function sweeps(): void {
  for (const [name, bar] of [
    ["goes clear", 20],
    ["meets the bar", 30],
  ] as const) {
    const at = sweepCase(bar);
    const contestants = [
      { calls: 400, call: ours(at) },
      { calls: 1, call: flattenSampler(at) },
      { calls: 1, call: jstsSampler(at) },
    ];
    const degrees = contestants.map(({ call }) => (((call() as number) * 180) / Math.PI).toFixed(2));
    const [mine, flatten, jsts] = inTurn(9, contestants);
    add(`sweep of 48 edges, ${name}: noseroom`, mine!, `first contact ${degrees[0]}°, solved`);
    add(
      "  the same on @flatten-js/core, every 0.5°",
      flatten!,
      `${degrees[1]}°, ratio ${ratio(flatten!, mine!)}`,
    );
    add("  the same on jsts, every 0.5°", jsts!, `${degrees[2]}°, ratio ${ratio(jsts!, mine!)}`);
  }
}

function ratio(slow: readonly number[], fast: readonly number[]): string {
  return `${Math.round(median(slow) / median(fast))} times`;
}

function searches(): void {
  // What one state costs on a sampling library: two sides, each swept against the brake.
  const at = sweepCase(8);
  const [flatten, jsts] = inTurn(3, [
    { calls: 1, call: flattenSampler(at) },
    { calls: 1, call: jstsSampler(at) },
  ]);
  for (const shape of SHAPES) {
    const sizes = [4, 8, 12, 16, 20];
    const found: { n: number; us: number; states: number; mb: number }[] = [];
    for (const n of sizes) {
      const { part, brake } = benchJob(shape, n);
      const runs = n <= 12 ? 5 : n <= 16 ? 3 : 1;
      const times: number[] = [];
      let last = searchOrders(part, brake, 0.5);
      for (let run = 0; run < runs && (n < 20 || run === 0); run++) {
        const from = performance.now();
        last = searchOrders(part, brake, 0.5);
        times.push((performance.now() - from) * 1000);
      }
      const us = median(times);
      const mb = process.memoryUsage().rss / 1e6;
      const byLibrary = (t: readonly number[]) => `${Math.round((median(t) * last.statesChecked) / us)}×`;
      add(
        `search, ${shape}, ${n} bends`,
        times,
        `${last.viableOrders} orders, ${last.statesChecked} states; a sampled sweep a state would take ${byLibrary(flatten!)} (@flatten-js/core), ${byLibrary(jsts!)} (jsts); ${mb.toFixed(0)} MB`,
      );
      found.push({ n, us, states: last.statesChecked, mb });
    }
    const [from, to] = [found.at(-2)!, found.at(-1)!];
    const growth = Math.log2(to.us / from.us) / (to.n - from.n);
    console.log(`${shape}: time grows by 2^(${growth.toFixed(2)}·n) from ${from.n} to ${to.n} bends`);
  }
}

function said(us: number): string {
  return us < 1000
    ? `${us.toFixed(1)} µs`
    : us < 1e6
      ? `${(us / 1000).toFixed(1)} ms`
      : `${(us / 1e6).toFixed(2)} s`;
}

sweeps();
searches();
const width = Math.max(...rows.map((row) => row.what.length));
for (const row of rows) {
  console.log(
    `${row.what.padEnd(width)}  ${said(row.medianUs).padStart(9)}  (${said(row.lowUs)} … ${said(row.highUs)})  ${row.note}`,
  );
}
writeFileSync("bench.json", `${JSON.stringify(rows, null, 1)}\n`);
