/**
 * The slips of a job or shop file as a refusal: the first dozen in a sentence each, the rest counted.
 */
import { type Problem, problemSentence } from "../jobFile/problem.ts";
import { jobName } from "./jobText.ts";
import { Refusal } from "./refusal.ts";

/** So many slips in one file are shown. */
const MOST_SHOWN = 12;

/** What is wrong with the file at `path`, to be thrown. */
export function slipsRefused(path: string, problems: readonly Problem[]): Refusal {
  const sentences = problems
    .slice(0, MOST_SHOWN)
    .map((problem) => `${jobName(path)}: ${problemSentence(problem)}`);
  const more = problems.length - sentences.length;
  return new Refusal(...sentences, ...(more > 0 ? [`… and ${more} more like these.`] : []));
}
