/**
 * Whole answers for the benchmark: clearance of one bend, ways out, the chart, `check` from a cold start, and, where asked
 * for and a browser is at hand, the page from keystroke to answer.
 */
import { spawn, spawnSync } from "node:child_process";
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

/** The whole command from a cold start, a bare Node beside it: on ribs that fold, and on scrolls that don't, where the verdict comes first. */
export async function coldRows(): Promise<Row[]> {
  const jobs = WANTED.flatMap(([bends, wanted]) => [
    { what: `\`noseroom check\`, ${bends} bends`, text: benchText("hat", bends), wanted },
    { what: `${bends} bends that don't fold, to the verdict`, text: failing(bends), wanted },
  ]);
  const bare: number[] = [];
  const firsts: number[][] = jobs.map(() => []);
  const wholes: number[][] = jobs.map(() => []);
  for (let run = -1; run < 10; run++) {
    const alone = await started(["-e", "0"]);
    if (run >= 0) bare.push(alone.wholeUs);
    for (const [i, { text }] of jobs.entries()) {
      const { firstUs, wholeUs } = await started(["dist/noseroom.mjs", "check", "-"], text);
      if (run < 0) continue;
      firsts[i]!.push(firstUs);
      wholes[i]!.push(wholeUs);
    }
  }
  return [
    row("a bare Node from a cold start", bare, ""),
    ...jobs.flatMap(({ what, wanted }, i) => {
      const [first, whole] = [firsts[i]!, wholes[i]!];
      const told = (times: readonly number[]) => `${ratio(times, bare)} a bare Node, wanted under ${wanted}`;
      if (i % 2 === 0) return [row(`  ${what}`, whole, told(whole))];
      return [
        row(`  ${what}`, first, told(first)),
        row("    with its ways out", whole, `${ratio(whole, bare)} a bare Node`),
      ];
    }),
  ];
}

/** A scroll on a bar too thick for any of its webs. */
function failing(bends: number): string {
  const file = JSON.parse(benchText("spiral", bends));
  file.brake.clamp.thickness = 30;
  return JSON.stringify(file);
}

/** A Node of its own from its start to its first word and to its end. */
function started(words: readonly string[], input = ""): Promise<{ firstUs: number; wholeUs: number }> {
  const from = performance.now();
  const spentUs = () => (performance.now() - from) * 1000;
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, words, { stdio: ["pipe", "pipe", "ignore"] });
    let firstUs = 0;
    child.stdout.on("data", () => {
      if (firstUs === 0) firstUs = spentUs();
    });
    child.on("error", reject);
    child.on("close", () => resolve({ firstUs, wholeUs: spentUs() }));
    child.stdin.end(input);
  });
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
