/**
 * The button that prints the shop sheet: pages are made in the worker, laid out beside the card, and only they are
 * printed. Once printed the card is the card again.
 */
import { useState } from "preact/hooks";
import { usePage } from "../page.ts";
import { printPages } from "../paper/printPages.ts";
import { fileText } from "../store/jobFile.ts";

const LIMIT_MS = 60_000;

export function PrintSheet() {
  const { snapshot, standing, asker, store } = usePage();
  const [busy, setBusy] = useState(false);
  const { file } = snapshot;
  const print = async () => {
    setBusy(true);
    const reply = await asker.askOnce({ kind: "sheet", text: fileText(file) }, LIMIT_MS);
    if (reply?.kind === "sheet") await printPages(reply.pages);
    else store.say("The shop sheet was not finished: print it again.");
    setBusy(false);
  };
  return (
    <button
      type="button"
      disabled={standing.answer === null || standing.problems.length > 0}
      aria-busy={busy}
      onClick={() => (busy ? undefined : void print())}
    >
      Print the shop sheet
    </button>
  );
}
