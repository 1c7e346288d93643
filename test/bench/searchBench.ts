/**
 * The search for the benchmark. Every size of every shape runs in a process of its own, which tells its time, the
 * processor's time and its peak memory: nothing is left over from the one before.
 */
import { execFileSync } from "node:child_process";
import { startPartner } from "../../src/cli/startPartner.ts";
import { searchOrders } from "../../src/sequence/search.ts";
import { benchJob, SHAPES, type Shape } from "./benchJobs.ts";
import { flattenSampler, jstsSampler } from "./sampled.ts";
import { sweepCase } from "./sweepJob.ts";
import { exponent, inTurn, median, type Row, row } from "./timing.ts";

const SIZES = [4, 8, 12, 16, 20];

interface Measured {
  readonly wallUs: number[];
  readonly cpuUs: number;
  readonly peakMb: number;
  readonly states: number;
  readonly orders: string;
}

/** One size of one shape, printed as JSON: what the process started by searchRows runs. */
export function searchAlone(shape: Shape, n: number): void {
  const { part, brake, marginMm } = benchJob(shape, n);
  const wallUs: number[] = [];
  const partner = startPartner(new URL("./command/partnerThread.mjs", import.meta.url));
  let [cpuUs, found] = [0, searchOrders(benchJob("open", 4).part, brake, marginMm)];
  for (let run = 0; run < (n <= 12 ? 3 : 1); run++) {
    const [from, before] = [performance.now(), process.cpuUsage()];
    found = searchOrders(part, brake, marginMm, undefined, partner);
    wallUs.push((performance.now() - from) * 1000);
    const spent = process.cpuUsage(before);
    cpuUs = spent.user + spent.system;
  }
  const measured: Measured = {
    wallUs,
    cpuUs,
    peakMb: process.resourceUsage().maxRSS / 1024,
    states: found.statesChecked,
    orders: String(found.viableOrders),
  };
  process.stdout.write(JSON.stringify(measured));
}

/** All sizes of all shapes, with the growth from 16 to 20 bends. */
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
    for (const { n, wallUs, cpuUs, peakMb, states, orders } of found) {
      const sampled = (times: readonly number[]) => Math.round((median(times) * states) / cpuUs);
      const rivals = `a sampled sweep a state: ${sampled(flatten!)} × (@flatten-js/core), ${sampled(jsts!)} × (jsts)`;
      const spent = `${(cpuUs / 1e6).toFixed(2)} s of processor, ${peakMb.toFixed(0)} MB at most`;
      rows.push(
        row(
          `search, ${kind}: ${shape}, ${n} bends`,
          wallUs,
          `${orders} orders, ${states} states; ${spent}; ${rivals}`,
        ),
      );
    }
    const [from, to] = [found.at(-2)!, found.at(-1)!];
    const bends = to.n - from.n;
    const time = exponent(from.cpuUs, to.cpuUs, bends);
    // A bare process takes some 60 MB before it searches.
    const memory = exponent(Math.max(1, from.peakMb - 60), Math.max(1, to.peakMb - 60), bends);
    const bound = exponent(from.n * 2 ** from.n, to.n * 2 ** to.n, bends);
    rows.push(
      row(
        `  growth of ${shape}, ${from.n} to ${to.n} bends`,
        [to.cpuUs / from.cpuUs],
        `processor time as 2^(${time}·n), memory as 2^(${memory}·n); 2^n·n grows as 2^(${bound}·n)`,
      ),
    );
  }
  return rows;
}
