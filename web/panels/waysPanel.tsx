/**
 * What would let it fold: the smallest changes that the engine has proved by running them.
 */
import { usePage } from "../page.ts";
import { waysOf } from "../words/ways.ts";

export function WaysPanel() {
  const { standing } = usePage();
  const { answer } = standing;
  if (answer === null || answer.verdict !== "hits") return null;
  const ways = waysOf(answer);
  if (ways.length === 0) return null;
  return (
    <section class="panel" aria-labelledby="ways-heading">
      <h2 id="ways-heading">What would let it fold</h2>
      <ul class="ways">
        {ways.map((way) => (
          <li key={way.sentence}>
            {way.sentence}
            {way.because ? <span class="note"> {way.because}</span> : null}
          </li>
        ))}
      </ul>
    </section>
  );
}
