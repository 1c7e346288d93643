/**
 * What would let it fold: the smallest changes that the engine has proved by running them again, each with a button
 * that carries it out on the job (and undo takes it back).
 */
import { usePage } from "../page.ts";
import { adopt } from "../store/adopt.ts";
import { withArrival } from "../store/brakeShelf.ts";
import type { Way } from "../worker/messages.ts";

export function WaysPanel() {
  const { store, standing } = usePage();
  const { answer, ways, problems } = standing;
  if (
    answer === null ||
    answer.verdict === "clear" ||
    problems.length > 0 ||
    ways === null ||
    ways.length === 0
  )
    return null;
  const carryOut = (way: Way) => {
    const adopted = adopt(way.file);
    if (!adopted.ok) return;
    const arrival = { name: `${adopted.file.brake.name}, changed`, came: `by a way out: ${way.sentence}` };
    store.reshelve((shelf) => withArrival(shelf, adopted.file, arrival), "carry out a way to fold it");
  };
  return (
    <section class="ways-out" aria-labelledby="ways-heading">
      <h2 id="ways-heading">
        {answer.verdict === "hits" ? "What would let it fold" : "What would give it more room"}
      </h2>
      <ul class="ways">
        {ways.map((way) => (
          <li key={way.sentence}>
            <span>
              {way.sentence}
              {way.because ? <span class="note"> {way.because}</span> : null}
            </span>
            {way.file ? (
              <button type="button" onClick={() => carryOut(way)} aria-label={`Do it: ${way.sentence}`}>
                Do it
              </button>
            ) : null}
          </li>
        ))}
      </ul>
    </section>
  );
}
