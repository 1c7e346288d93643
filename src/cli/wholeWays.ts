/**
 * `noseroom ways` of a whole part: changes that let it fold, numbered; one of them can be written as a job file.
 */
import { withKeys } from "../jobFile/wholeWay.ts";
import { writeWhole } from "../jobFile/writeJob.ts";
import { NO_WHOLE_WAY } from "../words/wholeWayWords.ts";
import { wholeVerdict } from "../words/wholeWords.ts";
import { answerWhole, waysForWhole } from "./answerJob.ts";
import { inkFor } from "./ink.ts";
import type { OpenedWhole } from "./openJob.ts";
import { Refusal } from "./refusal.ts";
import { cautionLines } from "./wholeReport.ts";
import { columnsOf, wrap } from "./wrap.ts";
import { type WriteOptions, writeOut } from "./writeOut.ts";

interface WholeWaysOptions extends WriteOptions {
  readonly json?: boolean;
  readonly shop?: string;
  readonly take?: string;
  readonly output?: string;
}

/** Prints the ways, or the job with one of them taken; 0 where there is one or none is needed, else 1. */
export async function waysOfWhole({ whole, file }: OpenedWhole, options: WholeWaysOptions): Promise<number> {
  if (options.shop !== undefined)
    throw new Refusal("--shop is for sections; of a whole part we change the job's own brake and part only.");
  const answer = await answerWhole(whole);
  const ways = await waysForWhole(whole, file, answer);
  const folds = answer.verdict !== "hits";
  if (options.take !== undefined) {
    const way = ways[Number(options.take) - 1];
    if (!way) {
      const allowed = "it may be the number of a way out, as this command lists them";
      throw new Refusal(`--take is "${options.take}"; ${allowed}.`);
    }
    const text = writeWhole(withKeys(file, way.changes));
    if (options.output === undefined) process.stdout.write(text);
    else {
      await writeOut(options.output, text, options);
      process.stdout.write(`${way.sentence}\nWritten to ${options.output}.\n`);
    }
    return 0;
  }
  if (options.json) process.stdout.write(`${JSON.stringify(ways, null, 2)}\n`);
  else {
    const ink = inkFor(process.stdout, process.env);
    const columns = columnsOf(process.stdout);
    const none = folds ? "Nothing needs changing." : NO_WHOLE_WAY;
    const lines = [
      ...wrap(wholeVerdict(whole, answer), columns, "").map(ink.strong),
      "",
      ...(ways.length === 0
        ? wrap(none, columns, "")
        : ways.flatMap(({ sentence }, i) => wrap(`${i + 1}. ${sentence}`, columns, ""))),
      ...(ways.length === 0 ? [] : ["", "Take one with: noseroom ways JOB --take 1 -o NEW.json"]),
      ...cautionLines(ink, columns),
    ];
    process.stdout.write(`${lines.join("\n")}\n`);
  }
  return folds || ways.length > 0 ? 0 : 1;
}
