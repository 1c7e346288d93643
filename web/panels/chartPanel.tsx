/**
 * The return flange chart of this brake: the longest return flange for every web, the part's own as a dot. Shown on
 * asking, and then drawn anew with every change of sheet or brake.
 */
import { useEffect, useRef, useState } from "preact/hooks";
import { usePage } from "../page.ts";
import { printPages } from "../paper/printPages.ts";
import { fileName, fileText } from "../store/jobFile.ts";
import { Asker } from "../worker/asker.ts";
import type { ChartShown } from "../worker/messages.ts";
import { ListTable } from "./listTable.tsx";
import { Picture } from "./picture.tsx";

const AFTER_MS = 200;

export function ChartPanel() {
  const { snapshot, standing } = usePage();
  const { file } = snapshot;
  const [open, setOpen] = useState(false);
  const [chart, setChart] = useState<ChartShown | null>(null);
  const [failed, setFailed] = useState(false);
  const asker = useRef<Asker | null>(null);
  useEffect(() => () => asker.current?.stop(), []);
  useEffect(() => {
    if (!open) return;
    // Asked once the typing rests; a newer question takes the place of an older one.
    const timer = setTimeout(() => {
      asker.current ??= new Asker();
      asker.current.ask({ kind: "chart", text: fileText(file) }, (reply) => {
        if (reply.kind === "chart") setChart(reply.chart);
        if (reply.kind === "chart" || reply.kind === "failed") setFailed(reply.kind === "failed");
      });
    }, AFTER_MS);
    return () => clearTimeout(timer);
  }, [open, file]);
  if (standing.answer === null) return null;
  return (
    <section class="panel" aria-labelledby="chart-heading">
      <h2 id="chart-heading">Return flange chart</h2>
      <p class="hint">
        How long a return flange may be for each web on this brake, in this sheet. To print and hang beside
        it.
      </p>
      <div class="row">
        <button type="button" aria-expanded={open} onClick={() => setOpen(!open)}>
          {open ? "Put the chart away" : "Draw the chart"}
        </button>
      </div>
      {open && failed ? (
        <p class="hint" role="status">
          The chart was not finished. Put it away and draw it again.
        </p>
      ) : null}
      {open && chart && !failed ? <Chart chart={chart} name={file.brake.name} /> : null}
      {open && !chart && !failed ? <p class="hint">Drawing…</p> : null}
    </section>
  );
}

function Chart({ chart, name }: { readonly chart: ChartShown; readonly name: string }) {
  const { save } = usePage();
  return (
    <>
      <p class="hint">{chart.sheet} What lies under its line folds, what lies above it hits.</p>
      {chart.own.map((sentence) => (
        <p key={sentence} class="own">
          {sentence}
        </p>
      ))}
      <Picture svg={chart.svg} words={chart.sentence} name="The chart" />
      <div class="row">
        <button type="button" onClick={() => void printPages(chart.pages)}>
          Print the chart
        </button>
        <button
          type="button"
          onClick={() =>
            save(fileName(`${name} return flanges`).replace(/json$/, "svg"), chart.svg, "image/svg+xml")
          }
        >
          Chart as SVG
        </button>
      </div>
      <ListTable caption="Longest return flange" heads={chart.heads} rows={chart.rows} />
    </>
  );
}
