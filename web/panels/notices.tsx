/**
 * Lines that stay until put away: what a file or the store could not give, with its raw text to save.
 */
import { usePage } from "../page.ts";
import { saveFile } from "../saveFile.ts";

export function Notices() {
  const { store, snapshot } = usePage();
  return (
    <div class="notices" role="status" aria-live="polite">
      {snapshot.notices.map((notice) => (
        <div key={notice.id} class="notice">
          <p>{notice.sentence}</p>
          <span class="row tight">
            {notice.download ? (
              <button
                type="button"
                onClick={() => saveFile(notice.download!.name, notice.download!.text, "text/plain")}
              >
                Save its text
              </button>
            ) : null}
            <button type="button" onClick={() => store.putAway(notice.id)}>
              Put away
            </button>
          </span>
        </div>
      ))}
    </div>
  );
}
