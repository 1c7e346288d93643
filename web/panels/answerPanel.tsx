/**
 * The answer: one sentence that never scrolls away, what to put right when the figures can't be read, and the
 * foreman's warnings. Shape and words carry the verdict; colour only joins in.
 */

import type { Verdict } from "../../src/jobFile/answer.ts";
import { doubtSentences } from "../../src/words/doubtWords.ts";
import { lengthWords } from "../../src/words/lengthWords.ts";
import { tightestStep, verdictSentence } from "../../src/words/verdictWords.ts";
import { pathWords } from "../fields/pathWords.ts";
import { usePage } from "../page.ts";
import { worstStep } from "../stage/stepPose.ts";

import { Sign, VERDICT_SIGNS } from "./sign.tsx";

export function AnswerPanel() {
  const { standing, look } = usePage();
  const { problems, job, answer, failed, working, progress, restarted } = standing;
  const bad = problems.length > 0;
  const verdict = bad || failed ? "unread" : (answer?.verdict ?? "waiting");
  let sentence = "Working it out…";
  if (failed) sentence = failed;
  else if (bad)
    sentence =
      problems.length === 1 ? "One figure to put right." : `${problems.length} figures to put right.`;
  else if (job && answer) sentence = verdictSentence(job, answer);
  const tightest = !bad && !failed && answer?.verdict === "clear" ? tightestStep(answer) : undefined;
  const spare =
    job && tightest?.clearance != null
      ? `${lengthWords(tightest.clearance, job.units)} to spare at bend ${tightest.bend}.`
      : null;
  const way = !bad && !failed && answer?.verdict === "hits" ? standing.ways?.[0]?.sentence : null;
  // What folds only if the readings are right: the sentence says which mix stops it, this which to measure again.
  const doubtful =
    !bad && !failed && answer?.verdict === "tight" && answer.doubts?.worst ? answer.doubts : null;
  const again = doubtful && job ? doubtSentences(doubtful, job.units).slice(1).join(" ") : null;
  const showMoment = () => {
    if (answer === null) return;
    look.set({ step: worstStep(answer), asked: look.now.asked + 1, stageOpen: true });
    document.getElementById("drawing")?.scrollIntoView({ block: "nearest" });
  };
  return (
    <section
      class={`answer ${verdict}`}
      aria-labelledby="answer-heading"
      data-verdict={verdict}
      data-working={working ? "yes" : "no"}
      data-ways={standing.ways ? "found" : "none"}
    >
      <h2 id="answer-heading" class="heard">
        Answer
      </h2>
      <p class="sentence" role="status" aria-live="polite">
        <span class="sign">
          {verdict in VERDICT_SIGNS ? <Sign name={VERDICT_SIGNS[verdict as Verdict]} /> : "…"}
        </span>
        <span class="said">
          {bad || failed || answer === null ? (
            sentence
          ) : (
            <button type="button" class="to-moment" title="Show it in the drawing" onClick={showMoment}>
              {sentence}
            </button>
          )}
          {way ? <span class="way first-way"> {way}</span> : null}
          {spare ? <span class="way"> {spare}</span> : null}
          {again ? <span class="way"> {again}</span> : null}
        </span>
      </p>
      {bad ? (
        <ul class="problems">
          {problems.slice(0, 4).map((problem) => (
            <li key={problem.path}>
              {pathWords(problem.path)}: it should be {problem.allowed}.
            </li>
          ))}
          {problems.length > 4 ? <li>And {problems.length - 4} more.</li> : null}
        </ul>
      ) : null}
      {bad && answer ? (
        <p class="hint">The drawing still shows the last figures that could be read.</p>
      ) : null}
      {working && progress ? <p class="hint">{progress}</p> : null}
      {restarted ? (
        <p class="hint restarted" role="status">
          {restarted}
        </p>
      ) : null}
    </section>
  );
}

/** What a good foreman would add. */
export function WarningsPanel() {
  const { standing } = usePage();
  const warnings = standing.problems.length === 0 ? (standing.answer?.warnings ?? []) : [];
  if (warnings.length === 0) return null;
  return (
    <section class="panel warnings" aria-labelledby="warnings-heading">
      <h2 id="warnings-heading">Mind</h2>
      <ul>
        {warnings.map((warning) => (
          <li key={warning}>{warning}</li>
        ))}
      </ul>
    </section>
  );
}
