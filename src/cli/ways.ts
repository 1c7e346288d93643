/**
 * `noseroom ways JOB`: the ways out of a job that does not fold, numbered; one of them can be written as a job file.
 */

import { isWayOut, type Remedy } from "../jobFile/wayOut.ts";
import { writeJob } from "../jobFile/writeJob.ts";
import { applied } from "../ways/waysOut.ts";
import { CAUTIONS } from "../words/cautions.ts";
import { verdictSentence } from "../words/verdictWords.ts";
import { answerJob } from "./answerJob.ts";
import { type Ink, inkFor } from "./ink.ts";
import { type Chosen, openJobOrWhole } from "./openJob.ts";
import { openShop } from "./openShop.ts";
import { Refusal } from "./refusal.ts";
import { waysOfWhole } from "./wholeWays.ts";
import { columnsOf, wrap } from "./wrap.ts";
import { type WriteOptions, writeOut } from "./writeOut.ts";

export interface WaysOptions extends WriteOptions, Chosen {
  readonly json?: boolean;
  /** Shop file whose brakes are tried too. */
  readonly shop?: string;
  /** Number of the way to take. */
  readonly take?: string;
  readonly output?: string;
}

/**
 * Runs the command and gives its exit status: 0 where there is a way out or none is needed, else 1.
 * @throws Refusal for input that cannot be worked with
 */
export async function runWays(path: string, options: WaysOptions): Promise<number> {
  if (options.output !== undefined && options.take === undefined) {
    throw new Refusal("--output wants --take beside it, the number of the way to take.");
  }
  const opened = await openJobOrWhole(path, options);
  if ("whole" in opened) return waysOfWhole(opened, options);
  const { job, file } = opened;
  const brakes = options.shop === undefined ? [] : (await openShop(options.shop)).brakes;
  const answer = await answerJob(job, file, { brakes, pairs: true });
  const { remedies } = answer;
  if (options.take !== undefined) {
    const way = remedies[Number(options.take) - 1];
    if (way === undefined || !isWayOut(way)) {
      throw new Refusal(
        `--take is "${options.take}"; it may be the number of a way out, as this command lists them.`,
      );
    }
    const text = writeJob(applied(file, job, way.changes));
    if (options.output === undefined) process.stdout.write(text);
    else {
      await writeOut(options.output, text, options);
      process.stdout.write(`${way.sentence}\nWritten to ${options.output}.\n`);
    }
    return 0;
  }
  if (options.json) process.stdout.write(`${JSON.stringify(remedies, null, 2)}\n`);
  else {
    const ink = inkFor(process.stdout, process.env);
    const lines = wayLines(verdictSentence(job, answer), remedies, ink, columnsOf(process.stdout));
    process.stdout.write(`${lines.join("\n")}\n`);
  }
  return remedies.length === 0 || remedies.some(isWayOut) ? 0 : 1;
}

/** The ways as text, one string a line; sentences no wider than `columns`. */
function wayLines(
  verdict: string,
  remedies: readonly Remedy[],
  ink: Ink,
  columns = Number.POSITIVE_INFINITY,
): string[] {
  const lines = remedies.flatMap((way, i) => {
    if (!isWayOut(way)) return wrap(way.sentence, columns, "");
    const because = way.because === undefined ? [] : wrap(way.because, columns, "   ").map(ink.faint);
    return [...wrap(`${i + 1}. ${way.sentence}`, columns, ""), ...because];
  });
  const take = remedies.some(isWayOut) ? ["", "Take one with: noseroom ways JOB --take 1 -o NEW.json"] : [];
  return [
    ...wrap(verdict, columns, "").map(ink.strong),
    "",
    ...(lines.length === 0 ? ["Nothing needs changing."] : lines),
    ...take,
    "",
    ...wrap(CAUTIONS, columns, "").map(ink.faint),
  ];
}
