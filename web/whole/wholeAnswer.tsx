/**
 * The answer about a whole part: one sentence, in the words of the command's check. While a newer one is worked out the last
 * is shown as old, and its verdict no longer stands.
 */
import { pathWords } from "../fields/pathWords.ts";
import { usePage } from "../page.ts";
import { Sign, VERDICT_SIGNS } from "../panels/sign.tsx";

const MOST_SLIPS = 4;

export function WholeAnswerPanel() {
  const { standing, snapshot, look } = usePage();
  const { problems, whole, failed, working, progress, restarted, ways } = standing;
  const bad = problems.length > 0;
  const isOld = working || standing.file !== snapshot.file;
  const stands = whole !== null && !bad && !failed && !isOld;
  const verdict = bad || failed ? "unread" : stands ? whole.verdict : "waiting";
  const slips =
    problems.length === 1 ? "One figure to put right." : `${problems.length} figures to put right.`;
  const sentence = failed ?? (bad ? slips : (whole?.sentence ?? "Working it out…"));
  const way = stands && whole.verdict === "hits" ? ways?.[0]?.sentence : null;
  const showMoment = () => {
    if (whole === null) return;
    look.set({ step: whole.worst, asked: look.now.asked + 1, stageOpen: true });
    document.getElementById("drawing")?.scrollIntoView({ block: "nearest" });
  };
  return (
    <section
      class={`answer ${verdict}`}
      aria-labelledby="answer-heading"
      data-verdict={verdict}
      data-working={isOld ? "yes" : "no"}
      data-ways={ways ? "found" : "none"}
    >
      <h2 id="answer-heading" class="heard">
        Answer
      </h2>
      <p class="sentence" role="status" aria-live="polite">
        <span class="sign">{stands ? <Sign name={VERDICT_SIGNS[whole.verdict]} /> : "…"}</span>
        <span class="said">
          {stands ? (
            <button type="button" class="to-moment" title="Show it in the drawing" onClick={showMoment}>
              {sentence}
            </button>
          ) : (
            sentence
          )}
          {way ? <span class="way first-way"> {way}</span> : null}
        </span>
      </p>
      {bad ? (
        <ul class="problems">
          {problems.slice(0, MOST_SLIPS).map((problem) => (
            <li key={problem.path}>
              {pathWords(problem.path)}: it should be {problem.allowed}.
            </li>
          ))}
          {problems.length > MOST_SLIPS ? <li>And {problems.length - MOST_SLIPS} more.</li> : null}
        </ul>
      ) : null}
      {bad && whole ? <p class="hint">The drawing still shows the last figures that could be read.</p> : null}
      {isOld && !bad && !failed && whole ? (
        <p class="hint">
          {progress ?? "This is the answer to the figures before. The new one is being worked out."}
        </p>
      ) : null}
      {stands && whole.verdict === "hits" && ways === null ? (
        <p class="hint">What would let it fold is being looked for.</p>
      ) : null}
      {restarted ? (
        <p class="hint restarted" role="status">
          {restarted}
        </p>
      ) : null}
    </section>
  );
}
