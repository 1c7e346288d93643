/**
 * `noseroom check` of a whole part.
 */
import type { WholeJob } from "../jobFile/wholeJob.ts";
import { answerWhole } from "./answerJob.ts";
import { answerJson } from "./answerJson.ts";
import { inkFor } from "./ink.ts";
import { wholeReportLines } from "./wholeReport.ts";
import { columnsOf } from "./wrap.ts";

/** Prints the answer and gives the exit status. */
export async function checkWholeJob(job: WholeJob, options: { readonly json?: boolean }): Promise<number> {
  const answer = await answerWhole(job);
  const text = options.json
    ? answerJson(answer)
    : wholeReportLines(job, answer, inkFor(process.stdout, process.env), columnsOf(process.stdout)).join(
        "\n",
      );
  process.stdout.write(`${text}\n`);
  return answer.verdict === "hits" ? 1 : 0;
}
