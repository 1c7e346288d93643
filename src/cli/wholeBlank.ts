/**
 * `noseroom blank` of a whole part: its true outline, the lines of its bends and its relief holes.
 */
import type { WholeJob } from "../jobFile/wholeJob.ts";
import { drawWholeBlank } from "../pictures/wholeBlankDrawing.ts";
import { CAUTIONS } from "../words/cautions.ts";
import { DEBURR, DRAW_LINES } from "../words/markingWords.ts";
import { wholeBlankSentences, wholeBlankTable, wholeBlankTitle } from "../words/wholeBlankWords.ts";
import { wholeVerdict } from "../words/wholeWords.ts";
import { answerWhole } from "./answerJob.ts";
import { type DrawnFiles, writeDrawn } from "./drawnFiles.ts";
import { inkFor } from "./ink.ts";
import { planText } from "./planJson.ts";
import { table } from "./table.ts";
import { columnsOf, wrap } from "./wrap.ts";

/** Prints the blank and writes what is asked for; a part that does not fold still has a blank. */
export async function blankOfWhole(
  job: WholeJob,
  options: DrawnFiles & { readonly json?: boolean },
): Promise<number> {
  const answer = await answerWhole(job);
  const drawing = drawWholeBlank(job, answer);
  const written = await writeDrawn(drawing, `Blank of ${job.part.name}`, job.units, options);
  if (options.json) {
    const { verdict, blank, faces, folded, warnings } = answer;
    process.stdout.write(planText({ verdict, blank, faces, folded, warnings }));
    return 0;
  }
  const ink = inkFor(process.stdout, process.env);
  const columns = columnsOf(process.stdout);
  const lines = [
    ink.strong(wholeBlankTitle(job, answer)),
    "",
    ...table(wholeBlankTable(job, answer), ["left", "left", "left", "right", "left"]),
    "",
    ...[...wholeBlankSentences(job, answer), DRAW_LINES, DEBURR, wholeVerdict(job, answer)].flatMap(
      (sentence) => wrap(sentence, columns, ""),
    ),
    ...(written.length > 0 ? ["", ...written] : []),
    "",
    ...wrap(CAUTIONS, columns, "").map(ink.faint),
  ];
  process.stdout.write(`${lines.join("\n")}\n`);
  return 0;
}
