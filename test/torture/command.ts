/**
 * The torture run from the command line: how many cases, from which seed, for how long; prints a tally as it goes and
 * each disagreement as a job file with the state to look at. Exit status 1 where there was any.
 */
import { writeFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { noTally, runBatch } from "./torture.ts";

const BATCH_JOBS = 50;
const MOST_DISAGREEMENTS = 50;

const { values } = parseArgs({
  options: {
    cases: { type: "string", default: "200000" },
    seed: { type: "string", default: "1" },
    seconds: { type: "string", default: "1200" },
    whole: { type: "string", default: "20" },
    grazes: { type: "string", default: "50" },
  },
});
const [cases, seed, seconds] = [Number(values.cases), Number(values.seed), Number(values.seconds)];
const shares = { wholePerMille: Number(values.whole), grazePerMille: Number(values.grazes) };
const tally = noTally();
const start = Date.now();
const since = () => (Date.now() - start) / 1000;
let said = 0;

for (let batch = 0; tally.cases < cases && since() < seconds; batch++) {
  const before = tally.disagreements.length;
  runBatch(seed * 1_000_000 + batch, BATCH_JOBS, shares, tally);
  for (const { sentence, file, pick, seed: own } of tally.disagreements.slice(before)) {
    const name = `dist/torture/seed-${own}.json`;
    writeFileSync(name, `${JSON.stringify({ sentence, pick, file }, null, 1)}\n`);
    console.log(`\n${sentence}\n${JSON.stringify(pick)}\n${JSON.stringify(file)}\nkept as ${name}`);
  }
  if (tally.disagreements.length >= MOST_DISAGREEMENTS) break;
  if (since() - said < 30) continue;
  said = since();
  report();
}
report();
process.exitCode = tally.disagreements.length > 0 ? 1 : 0;

function report(): void {
  const { disagreements, ...counts } = tally;
  const rest = Object.entries(counts).map(([word, count]) => `${count} ${word}`);
  console.log(
    `${since().toFixed(0)} s, seed ${seed}: ${rest.join(", ")}; ${disagreements.length} disagreements`,
  );
}
