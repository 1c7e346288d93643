/**
 * What would let it fold: the smallest changes that the engine has proved by running them again, each with a button
 * that carries it out on the job (and undo takes it back).
 */
import { usePage } from "../page.ts";
import { adopt } from "../store/adopt.ts";
import { withArrival } from "../store/brakeShelf.ts";
import type { Way } from "../worker/messages.ts";
import { BeforeAfter, hasRoomBeside } from "./beforeAfter.tsx";

export function WaysPanel() {
  const { store, standing, look } = usePage();
  const { seenWay } = look.now;
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
    look.set({ seenWay: null });
    store.reshelve((shelf) => withArrival(shelf, adopted.file, arrival), "carry out a way to fold it");
  };
  return (
    <section class="ways-out" aria-labelledby="ways-heading">
      <h2 id="ways-heading">
        {answer.verdict === "hits" ? "What would let it fold" : "What would give it more room"}
      </h2>
      <ul class="ways">
        {ways.map((way) => (
          <li
            key={way.sentence}
            onPointerEnter={(event) =>
              event.pointerType === "mouse" && way.file && look.set({ seenWay: way })
            }
            onPointerLeave={(event) => event.pointerType === "mouse" && look.set({ seenWay: null })}
          >
            <span>
              {way.sentence}
              {way.because ? <span class="note"> {way.because}</span> : null}
            </span>
            {way.file ? (
              <span class="row tight">
                <button
                  type="button"
                  class="quiet see"
                  aria-pressed={seenWay === way}
                  aria-label={`See before and after: ${way.sentence}`}
                  onFocus={(event) =>
                    event.currentTarget.matches(":focus-visible") && look.set({ seenWay: way })
                  }
                  onBlur={({ relatedTarget }) => {
                    // A press on a button of the list must find it where it was.
                    if (!(relatedTarget instanceof Element && relatedTarget.closest(".ways")))
                      look.set({ seenWay: null });
                  }}
                  onClick={() => look.set({ seenWay: seenWay === way && !isHovered() ? null : way })}
                >
                  See
                </button>
                <button type="button" onClick={() => carryOut(way)} aria-label={`Do it: ${way.sentence}`}>
                  Do it
                </button>
              </span>
            ) : null}
            {seenWay === way && !hasRoomBeside() ? (
              <div class="here">
                <BeforeAfter way={way} />
              </div>
            ) : null}
          </li>
        ))}
      </ul>
    </section>
  );
}

/** Whether this screen has a pointer that hovers: there a press leaves the picture as it is. */
function isHovered(): boolean {
  return matchMedia("(hover: hover)").matches;
}
