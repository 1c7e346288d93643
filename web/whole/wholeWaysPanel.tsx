/**
 * What would let a whole part fold: single changes, each checked again, with a button that carries it out.
 */
import { usePage } from "../page.ts";
import { adopt } from "../store/adopt.ts";
import { withArrival } from "../store/brakeShelf.ts";
import type { Way } from "../worker/messages.ts";

export function WholeWaysPanel() {
  const { store, standing, snapshot } = usePage();
  const { whole, ways, problems } = standing;
  if (whole?.verdict !== "hits" || problems.length > 0 || ways === null || standing.file !== snapshot.file)
    return null;
  const carryOut = (way: Way) => {
    const adopted = adopt(way.file);
    if (!adopted.ok) return;
    const arrival = { name: `${adopted.file.brake.name}, changed`, came: `by a way out: ${way.sentence}` };
    store.reshelve((shelf) => withArrival(shelf, adopted.file, arrival), "carry out a way to fold it");
  };
  return (
    <section class="ways-out" aria-labelledby="ways-heading">
      <h2 id="ways-heading">What would let it fold</h2>
      {ways.length === 0 ? <p>None of the single changes that we tried lets it fold.</p> : null}
      <ul class="ways">
        {ways.map((way) => (
          <li key={way.sentence}>
            <span>{way.sentence}</span>
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
