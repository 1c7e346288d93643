/**
 * A first visit: three sentences beside a worked example, and a way to put them away.
 */
import { usePage } from "../page.ts";

export function Welcome() {
  const { store, snapshot } = usePage();
  if (!snapshot.firstVisit) return null;
  return (
    <section class="panel welcome" aria-labelledby="welcome-heading">
      <h2 id="welcome-heading">What you see</h2>
      <p>
        This is a worked example: a narrow cable trough for an observatory roof, on a hand brake with 45°
        fingers. The answer at the top follows every figure you change below. Try the clamp bar instead of the
        finger, or drag the leaf in the drawing.
      </p>
      <button type="button" onClick={() => store.welcomed()}>
        Understood
      </button>
    </section>
  );
}
