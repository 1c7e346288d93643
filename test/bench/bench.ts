/**
 * `npm run bench`: one table, every ratio measured side by side in this run, also saved as bench.json. With `--page` the
 * page is measured too, in a browser. Contestants take turns after a warm-up; medians are quoted with
 * the spread, ratios by the lowest times.
 */
import { writeFileSync } from "node:fs";
import type { Shape } from "./benchJobs.ts";
import { boxRows } from "./boxBench.ts";
import { searchAlone, searchRows } from "./searchBench.ts";
import { pairsAlone, sweepRows } from "./sweepBench.ts";
import { said } from "./timing.ts";
import { answerRows, clearanceRows, coldRows, fitRow, pageRows } from "./wholeBench.ts";

async function wholeTable(withPage: boolean): Promise<void> {
  const rows = [
    ...sweepRows(),
    ...clearanceRows(),
    ...searchRows(),
    ...answerRows(),
    ...fitRow(),
    ...boxRows(),
    ...(await coldRows()),
    ...(withPage ? pageRows() : []),
  ];
  const width = Math.max(...rows.map(({ what }) => what.length));
  for (const { what, medianUs, lowUs, highUs, note } of rows) {
    const times = `${said(medianUs)}  (${said(lowUs)} … ${said(highUs)})`;
    console.log(`${what.padEnd(width)}  ${times.padStart(36)}  ${note}`);
  }
  writeFileSync("bench.json", `${JSON.stringify(rows, null, 1)}\n`);
}

const [, , word, shape, n] = process.argv;
if (word === "--pairs") pairsAlone();
else if (word === "--search") searchAlone(shape as Shape, Number(n));
else await wholeTable(process.argv.includes("--page"));
