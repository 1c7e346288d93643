/**
 * The blank of a whole part: its plan, where each bend's line runs, what to drill; to save, and to print at full size.
 */
import { useState } from "preact/hooks";
import { usePage } from "../page.ts";
import { ListTable } from "../panels/listTable.tsx";
import { printPages } from "../paper/printPages.ts";
import { fileName, fileText } from "../store/jobFile.ts";
import { WholePlan } from "./wholePlan.tsx";

/** The answer is worked out once more for it. */
const LIMIT_MS = 120_000;

export function WholeBlankPanel() {
  const { standing, snapshot, asker, store, save: saveFile } = usePage();
  const [busy, setBusy] = useState<string | null>(null);
  const { whole, problems } = standing;
  if (whole === null) return null;
  const { file } = snapshot;
  const { title, table, sentences } = whole.blank;
  const [heads = [], ...rows] = table;
  const text = fileText(file);

  const whileBusy = async (what: string, work: () => Promise<boolean>) => {
    setBusy(what);
    if (!(await work())) store.say(`${what} was not finished: press again.`, { about: "blank" });
    setBusy(null);
  };
  const save = (as: "svg" | "dxf") => async () => {
    const reply = await asker.askOnce({ kind: "blank", text, as }, LIMIT_MS);
    if (reply?.kind !== "written") return false;
    const name = fileName(`${file.part.name} blank`).replace(/json$/, as);
    saveFile(name, reply.text, as === "svg" ? "image/svg+xml" : "image/vnd.dxf");
    return true;
  };
  const print = (asked: Parameters<typeof asker.askOnce>[0]) => async () => {
    const reply = await asker.askOnce(asked, LIMIT_MS);
    if (reply?.kind === "sheet") await printPages(reply.pages);
    return reply?.kind === "sheet";
  };
  const actions = [
    ["Blank as SVG", save("svg")],
    ["Blank as DXF", save("dxf")],
    ["Print the blank at full size", print({ kind: "blank", text, as: "pages" })],
    ["Print the shop sheet", print({ kind: "sheet", text })],
  ] as const;
  return (
    <section class="panel" aria-labelledby="blank-heading">
      <h2 id="blank-heading">Blank</h2>
      <p>{title}</p>
      <WholePlan whole={whole} />
      <ListTable caption="Bend lines" heads={heads.map((head) => head || "bend")} rows={rows} />
      {sentences.map((sentence) => (
        <p class="hint" key={sentence}>
          {sentence}
        </p>
      ))}
      <div class="row">
        {actions.map(([words, work]) => (
          <button
            key={words}
            type="button"
            disabled={problems.length > 0}
            aria-busy={busy === words}
            onClick={() => (busy ? undefined : void whileBusy(words, work))}
          >
            {words}
          </button>
        ))}
      </div>
      <p class="hint">Printing can save a PDF: choose it in the print box, at 100 %.</p>
    </section>
  );
}
