/**
 * The strokes of a whole part, one below another: what to clamp, which fingers, how far the leaf goes, what to watch.
 */
import { usePage } from "../page.ts";
import { Sign, VERDICT_SIGNS } from "../panels/sign.tsx";

export function WholeSteps() {
  const { store, snapshot, standing, look } = usePage();
  const { whole } = standing;
  if (whole === null) return null;
  const own = snapshot.file.order !== undefined;
  return (
    <section class="panel" aria-labelledby="steps-heading">
      <h2 id="steps-heading">Steps</h2>
      {whole.facts.map((fact) => (
        <p class="hint" key={fact}>
          {fact}
        </p>
      ))}
      {own ? (
        <div class="row">
          <button type="button" onClick={() => store.set(["order"], undefined, "go back to the best order")}>
            Find the best order
          </button>
        </div>
      ) : null}
      <ol class="steps">
        {whole.strokes.map(({ title, sentences, verdict }, i) => (
          <li key={title} class={`step stroke ${verdict}${look.now.step === i ? " shown" : ""}`}>
            <Sign name={VERDICT_SIGNS[verdict]} />
            <div class="what">
              <p>
                <strong>{title}</strong>
              </p>
              {sentences.map((sentence) => (
                <p class="outcome" key={sentence}>
                  {sentence}
                </p>
              ))}
            </div>
            <span class="row tight">
              <button
                type="button"
                aria-pressed={look.now.step === i}
                aria-label={`Show step ${title}`}
                onClick={() => look.set({ step: i, stageOpen: true })}
              >
                Show
              </button>
            </span>
          </li>
        ))}
      </ol>
    </section>
  );
}

/** What is told in the steps already. */
const TOLD = ["What blocks it"];

/** What else a foreman would say: in and out, by hand, what to watch. */
export function WholeMind() {
  const { whole, problems } = usePage().standing;
  const sections = (whole?.sections ?? []).filter(([title]) => !TOLD.includes(title));
  if (sections.length === 0 || problems.length > 0) return null;
  return (
    <section class="panel warnings" aria-labelledby="warnings-heading">
      <h2 id="warnings-heading">Mind</h2>
      {sections.map(([title, sentences]) => (
        <div key={title}>
          <h3>{title}</h3>
          <ul>
            {sentences.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </div>
      ))}
    </section>
  );
}
