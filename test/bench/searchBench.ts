/**
 * The search for the benchmark. Every size of every shape runs in a process of its own, which tells its time, the
 * processor's time and its peak memory: nothing is left over from the one before.
 */
import { execFileSync } from "node:child_process";
import { searchSection } from "../../src/section/searchSection.ts";
import { benchJob, SHAPES, type Shape } from "./benchJobs.ts";
import { flattenSampler, jstsSampler } from "./sampled.ts";
import { sweepCase } from "./sweepJob.ts";
import { inTurn, median, type Row, row } from "./timing.ts";

const SIZES = [2, 3, 4, 8, 12, 16, 20];

interface Measured {
  readonly wallUs: number[];
  readonly cpuUs: number;
  readonly peakMb: number;
  readonly states: number;
  readonly said: string;
}

/** One size of one shape, printed as JSON: what the process started by searchRows runs. */
export function searchAlone(shape: Shape, n: number): void {
  const { part, brake, marginMm } = benchJob(shape, n);
  const wallUs: number[] = [];
  let [cpuUs, found] = [0, searchSection(benchJob("open", 4).part, brake, marginMm)];
  for (let run = 0; run < (n <= 12 ? 3 : 1); run++) {
    const [from, before] = [performance.now(), process.cpuUsage()];
    found = searchSection(part, brake, marginMm);
    wallUs.push((performance.now() - from) * 1000);
    const spent = process.cpuUsage(before);
    cpuUs = spent.user + spent.system;
  }
  const measured: Measured = {
    wallUs,
    cpuUs,
    peakMb: process.resourceUsage().maxRSS / 1024,
    states: found.judged,
    said: said(found.kind, found.orders),
  };
  process.stdout.write(JSON.stringify(measured));
}

function said(kind: string, orders: bigint | null): string {
  if (orders !== null) return `${orders} orders`;
  return { order: "an order found", none: "proved that there is none" }[kind] ?? "not decided";
}

/** All sizes of all shapes. */
export function searchRows(): Row[] {
  const rows: Row[] = [];
  // What one state costs on a sampling library: one side, swept against the brake.
  const at = sweepCase(8);
  const [flatten, jsts] = inTurn(3, [
    { calls: 1, call: flattenSampler(at) },
    { calls: 1, call: jstsSampler(at) },
  ]);
  for (const [shape, kind] of SHAPES) {
    const found = SIZES.map((n) => {
      const words = execFileSync(process.execPath, [process.argv[1]!, "--search", shape, String(n)]);
      return { n, ...(JSON.parse(words.toString()) as Measured) };
    });
    for (const { n, wallUs, cpuUs, peakMb, states, said } of found) {
      const sampled = (times: readonly number[]) => Math.round((median(times) * states) / cpuUs);
      const rivals = `a sampled sweep a state: ${sampled(flatten!)} × (@flatten-js/core), ${sampled(jsts!)} × (jsts)`;
      const spent = `${(cpuUs / 1e6).toFixed(2)} s of processor, ${peakMb.toFixed(0)} MB at most`;
      rows.push(
        row(
          `search, ${kind}: ${shape}, ${n} bends`,
          wallUs,
          `${said}, ${states} states; ${spent}; ${rivals}`,
        ),
      );
    }
  }
  return rows;
}
