/**
 * Lines that stay until put away: what a file or the store could not give, with its raw text to save, and what may be
 * done about it.
 */
import { usePage } from "../page.ts";
import { TextToCopy } from "./textToCopy.tsx";

export function Notices() {
  const { store, snapshot, save } = usePage();
  const textOf = (text: string | (() => string)) => (typeof text === "string" ? text : text());
  return (
    <div class="notices" role="status" aria-live="polite">
      {snapshot.notices.map((notice) => (
        <div key={notice.id} class="notice">
          <p>{notice.sentence}</p>
          <span class="row tight">
            {notice.download ? (
              <button
                type="button"
                onClick={() => save(notice.download!.name, textOf(notice.download!.text), "text/plain")}
              >
                Save its text
              </button>
            ) : null}
            {notice.choices?.map(({ words, act }) => (
              <button
                key={words}
                type="button"
                onClick={() => {
                  store.putAway(notice.id);
                  act();
                }}
              >
                {words}
              </button>
            ))}
            <button type="button" onClick={() => store.putAway(notice.id)}>
              Put away
            </button>
          </span>
          {notice.copy === undefined ? null : <TextToCopy text={notice.copy} />}
        </div>
      ))}
    </div>
  );
}
