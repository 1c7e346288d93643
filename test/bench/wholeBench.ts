/**
 * Whole answers for the benchmark: clearance of one bend, ways out, the chart, `check` from a cold start, and, where asked
 * for and a browser is at hand, the page from keystroke to answer.
 */
import { spawnSync } from "node:child_process";
import { existsSync, readFileSync } from "node:fs";
import { ClearanceChecks, noClearance } from "../../src/contact/clearance.ts";
import { Machine } from "../../src/contact/machine.ts";
import { SideChecks } from "../../src/contact/sideChecks.ts";
import {
  check,
  fitShop,
  flangeChart,
  type Job,
  type JobFile,
  readJob,
  readShop,
  waysOut,
} from "../../src/index.ts";
import { seatFor } from "../../src/motion/seat.ts";
import { formedJoints } from "../../src/part/chain.ts";
import { benchText } from "./benchJobs.ts";
import { flattenClearance, jstsClearance } from "./sampled.ts";
import { sweepCase } from "./sweepJob.ts";
import { inTurn, type Row, ratio, row } from "./timing.ts";

function example(name: string): { readonly job: Job; readonly file: JobFile } {
  const read = readJob(readFileSync(`examples/${name}.json`, "utf8"));
  if (!read.ok) throw new Error(`example ${name}: ${JSON.stringify(read.problems)}`);
  return read;
}

/** Least distance of the whole moving side from clamp, bed, frame and leaf over the sweep. */
export function clearanceRows(): Row[] {
  const at = sweepCase(20);
  const seat = seatFor(at.part, at.brake, at.bend, "start");
  const measure = new ClearanceChecks(new SideChecks(seat, new Machine(at.brake, at.part.thicknessMm)));
  const formed = formedJoints(seat.movingChain, at.bendsDone);
  const ours = () => {
    const record = noClearance();
    for (let k = 0; k <= seat.movingChain.joints; k++) measure.withBrake("moving", k, formed, record);
    return record.mm;
  };
  const rivals = [flattenClearance(at), jstsClearance(at)];
  const said = [ours, ...rivals].map((call) => call().toFixed(3));
  const [mine, flatten, jsts] = inTurn(5, [
    { calls: 200, call: ours },
    ...rivals.map((call) => ({ calls: 1, call })),
  ]);
  return [
    row("clearance over the sweep: noseroom", mine!, `${said[0]} mm, solved`),
    row(
      "  clamp and bed on @flatten-js/core, every 5°",
      flatten!,
      `${said[1]} mm, ${ratio(flatten!, mine!)}`,
    ),
    row("  clamp and bed on jsts, every 0.5°", jsts!, `${said[2]} mm, ${ratio(jsts!, mine!)}`),
  ];
}

export function answerRows(): Row[] {
  const rows: Row[] = [];
  for (const name of ["cable-trough-bar", "cable-trough-square-bar", "z-clip", "eight-bends"]) {
    const { job, file } = example(name);
    const answer = check(job);
    const [whole, ways, chart] = inTurn(5, [
      { calls: 1, call: () => check(job) },
      { calls: 1, call: () => waysOut(file, job, answer) },
      { calls: 1, call: () => flangeChart(job) },
    ]);
    rows.push(row(`check of ${name}`, whole!, `${job.part.bends.length} bends, ${answer.verdict}`));
    rows.push(row(`ways out of ${name}`, ways!, `${waysOut(file, job, answer).length} ways`));
    rows.push(row(`chart of return flanges, ${name}`, chart!, `${flangeChart(job).curves.length} curves`));
  }
  return rows;
}

/** All parts of the observatory on its brakes. */
export function fitRow(): Row[] {
  const read = readShop(readFileSync("examples/shop/observatory.json", "utf8"));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const [times] = inTurn(5, [{ calls: 1, call: () => fitShop(read.shop) }]);
  return [
    row(
      "fit of the observatory",
      times!,
      `${read.shop.parts.length} parts on ${read.shop.brakes.length} brakes`,
    ),
  ];
}

/** Bends of a part, and in how many times a bare Node's start `check` should be through with it. */
const WANTED = [
  [2, 4],
  [8, 6],
  [12, 10],
  [16, 20],
] as const;

/** The whole command from a cold start on ribs of so many bends, and a bare Node beside it. */
export function coldRows(): Row[] {
  const timed = (words: readonly string[], input = "") => {
    const from = performance.now();
    const { error } = spawnSync(process.execPath, words, { input });
    if (error) throw error;
    return (performance.now() - from) * 1000;
  };
  const jobs = WANTED.map(([bends]) => benchText("hat", bends));
  const bare: number[] = [];
  const checks: number[][] = WANTED.map(() => []);
  for (let run = -1; run < 10; run++) {
    const alone = timed(["-e", "0"]);
    const spent = jobs.map((job) => timed(["dist/noseroom.mjs", "check", "-"], job));
    if (run < 0) continue;
    bare.push(alone);
    for (const [i, us] of spent.entries()) checks[i]!.push(us);
  }
  return [
    row("a bare Node from a cold start", bare, ""),
    ...WANTED.map(([bends, wanted], i) =>
      row(
        `  \`noseroom check\`, ${bends} bends`,
        checks[i]!,
        `${ratio(checks[i]!, bare)} a bare Node, wanted under ${wanted}`,
      ),
    ),
  ];
}

/** The page's own bench in a browser, where asked for: its sentences, told as rows. */
export function pageRows(): Row[] {
  if (!existsSync("node_modules/.bin/vitest")) return [];
  // A page slower than its own bench allows is told here with its figure, not as a fault.
  const { stdout: words } = spawnSync(
    "node_modules/.bin/vitest",
    ["run", "--config", "test/page/bench.config.ts"],
    { encoding: "utf8" },
  );
  const told = [...words.matchAll(/^(keystroke to answer|frame of a drag): median ([\d.]+) ms, (.*)$/gmu)];
  return told.map(([, what, ms, rest]) => row(`page, 8 bends: ${what}`, [Number(ms) * 1000], rest!));
}
