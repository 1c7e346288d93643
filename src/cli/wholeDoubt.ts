/**
 * `noseroom doubt` of a whole part.
 */
import { doubtfulSizes } from "../ways/wholeDoubts.ts";
import { wholeDoubtSentences } from "../words/wholeDoubtWords.ts";
import { wholeVerdict } from "../words/wholeWords.ts";
import { answerWhole, answerWholeDoubts } from "./answerJob.ts";
import { inkFor } from "./ink.ts";
import type { OpenedWhole } from "./openJob.ts";
import { doubtOption } from "./optionLengths.ts";
import { planText } from "./planJson.ts";
import { Refusal } from "./refusal.ts";
import { cautionLines } from "./wholeReport.ts";
import { columnsOf, wrap } from "./wrap.ts";

/** Prints the finding; 0 where every mix that was tried folds. */
export async function doubtOfWhole(
  { whole, file }: OpenedWhole,
  options: { readonly by?: string; readonly json?: boolean },
): Promise<number> {
  const sizes = doubtfulSizes(file);
  if (sizes.length === 0)
    throw new Refusal(
      "doubt misreads sizes, and a drawn pattern has none: move a corner or a line in part.pattern and check again.",
    );
  const byMm = doubtOption(
    options.by,
    { mm: Math.min(...sizes.map(({ mm }) => mm)), what: "the smallest size" },
    whole.units,
  );
  const answer = await answerWhole(whole);
  const doubts = await answerWholeDoubts({ file, answer, byMm });
  const status = answer.verdict !== "hits" && doubts.worst === null ? 0 : 1;
  if (options.json) {
    process.stdout.write(planText(doubts));
    return status;
  }
  const ink = inkFor(process.stdout, process.env);
  const columns = columnsOf(process.stdout);
  const [first = "", ...rest] = wholeDoubtSentences(doubts, whole.units);
  const lines = [
    ...wrap(first, columns, "").map(ink.strong),
    ...[...rest, `As read: ${wholeVerdict(whole, answer)}`].flatMap((words) => wrap(words, columns, "")),
    ...cautionLines(ink, columns),
  ];
  process.stdout.write(`${lines.join("\n")}\n`);
  return status;
}
