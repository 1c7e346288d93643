/**
 * A first visit: what the example beside it is, and the two first presses to one's own.
 */
import { usePage } from "../page.ts";
import { showNewJob } from "../showNewJob.ts";
import { newJob } from "../store/newJob.ts";

export function Welcome() {
  const { store, snapshot } = usePage();
  // Whoever has opened a job of their own needs no word on the example.
  if (!snapshot.firstVisit || snapshot.shelf.jobs.length > 1) return null;
  const yourPart = () => {
    store.welcomed();
    store.add(newJob(snapshot.file), "start a new job");
    showNewJob();
  };
  const yourBrake = () => {
    store.welcomed();
    requestAnimationFrame(() => {
      document.getElementById("brake-heading")?.scrollIntoView();
      document.getElementById("field-brake-name")?.focus({ preventScroll: true });
    });
  };
  return (
    <section class="panel welcome" aria-labelledby="welcome-heading">
      <h2 id="welcome-heading">This is an example</h2>
      <p>
        A narrow cable trough for an observatory roof, on a hand brake with 45° fingers. The answer follows
        every figure that you change. Drag the leaf in the drawing to see where it stops.
      </p>
      <div class="row">
        <button type="button" class="first" onClick={yourPart}>
          Your part
        </button>
        <button type="button" class="first" onClick={yourBrake}>
          Your brake
        </button>
        <button type="button" onClick={() => store.welcomed()}>
          Understood
        </button>
      </div>
    </section>
  );
}
