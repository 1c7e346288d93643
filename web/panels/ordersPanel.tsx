/**
 * The orders that fold, grouped by the bends' sequence, the best first; any two of them side by side, played in step.
 */

import { useEffect, useRef, useState } from "preact/hooks";
import type { Answer } from "../../src/jobFile/answer.ts";
import type { Job } from "../../src/jobFile/job.ts";
import { angleWords } from "../../src/words/angleWords.ts";
import { capital } from "../../src/words/capital.ts";
import { bendWords, faceWords, throatWords } from "../../src/words/stepWords.ts";
import { usePage } from "../page.ts";
import { paintShare } from "../stage/share.ts";
import type { OrderFile } from "../store/jobFile.ts";
import { fileText } from "../store/jobFile.ts";
import { Asker } from "../worker/asker.ts";
import type { OrderShown, OrdersShown } from "../worker/messages.ts";

const LIMIT_MS = 60_000;

export function OrdersPanel() {
  const { store, snapshot, standing } = usePage();
  const { file } = snapshot;
  const asker = useRef<Asker | null>(null);
  const [found, setFound] = useState<{ readonly file: unknown; readonly shown: OrdersShown | null } | null>(
    null,
  );
  const [busy, setBusy] = useState(false);
  const [pair, setPair] = useState<readonly number[]>([0, 1]);
  useEffect(() => () => asker.current?.stop(), []);
  const look = async () => {
    asker.current?.stop();
    const mine = new Asker();
    asker.current = mine;
    setBusy(true);
    const reply = await mine.askOnce({ kind: "orders", text: fileText(file) }, LIMIT_MS);
    if (asker.current !== mine) return;
    setBusy(false);
    setPair([0, 1]);
    setFound({ file, shown: reply?.kind === "orders" ? reply.orders : null });
    mine.stop();
  };
  const shown = found?.file === file ? found.shown : undefined;
  /** The newest two ticked are compared. */
  const tick = (i: number) =>
    setPair((now) => (now.includes(i) ? now.filter((one) => one !== i) : [...now.slice(-1), i]));
  const use = ({ answer }: OrderShown) => {
    const order = answer.order.map(({ bend, clamped }): OrderFile => ({ bend, clamped }));
    store.set(["order"], order, "take another order");
  };
  return (
    <div class="orders">
      <div class="row">
        <button type="button" disabled={busy || standing.problems.length > 0} onClick={() => void look()}>
          Compare the orders that fold
        </button>
      </div>
      <div role="status">
        {busy ? <p class="hint">Trying orders…</p> : null}
        {found && found.file !== file ? <p class="hint">The job has changed since: compare again.</p> : null}
        {shown === null ? <p>The orders could not be worked through. Press again.</p> : null}
        {shown ? <p class="hint">{triedWords(shown)}</p> : null}
      </div>
      {shown && shown.orders.length > 1 ? (
        <>
          <ul class="order-groups">
            {groups(shown.orders).map(({ sequence, orders }) => (
              <li key={sequence}>
                <h4>{sequence}</h4>
                <ul>
                  {orders.map(({ order, i }) => (
                    <li key={i} class={order.answer.verdict}>
                      <label class="tick">
                        <input type="checkbox" checked={pair.includes(i)} onChange={() => tick(i)} />
                        <span>
                          {i === 0 ? <strong>The best. </strong> : null}
                          {order.words} {capital(order.room)}
                          {order.answer.verdict === "tight" ? ", tight" : ""}.
                        </span>
                      </label>
                      {i === 0 ? null : (
                        <button
                          type="button"
                          aria-label={`Use this order: ${sequence}. ${order.words}`}
                          onClick={() => use(order)}
                        >
                          Use it
                        </button>
                      )}
                    </li>
                  ))}
                </ul>
              </li>
            ))}
          </ul>
          {pair.length === 2 && pair.every((i) => shown.orders[i]) ? (
            <Pair job={shown.job} orders={pair.toSorted((a, b) => a - b).map((i) => shown.orders[i]!)} />
          ) : (
            <p class="hint">Tick two orders to see them side by side.</p>
          )}
        </>
      ) : null}
    </div>
  );
}

function triedWords({ orders, all, tried, folding }: OrdersShown): string {
  const [best] = orders;
  if (best?.answer.verdict === "hits") return "No order folds: there is nothing to compare.";
  const among = all ? `All ${tried} orders were tried` : `The ${tried} orders nearest to the best were tried`;
  if (folding === 0) return `${among}: no other one folds.`;
  const first = orders.length - 1 < folding ? `; here are the best ${orders.length - 1}` : "";
  return `${among}: ${folding === 1 ? "one other folds" : `${folding} others fold`}${first}.`;
}

function groups(orders: readonly OrderShown[]) {
  const by = new Map<string, { readonly order: OrderShown; readonly i: number }[]>();
  orders.forEach((order, i) => {
    by.set(order.sequence, [...(by.get(order.sequence) ?? []), { order, i }]);
  });
  return [...by].map(([sequence, of]) => ({ sequence, orders: of }));
}

const SECONDS_A_STEP = 1.6;

/** Two orders, each on its own canvas, at the same step and share of the swing. */
function Pair({ job, orders }: { readonly job: Job; readonly orders: readonly OrderShown[] }) {
  const steps = Math.max(...orders.map(({ answer }) => answer.order.length));
  const [at, setAt] = useState(0);
  const [playing, setPlaying] = useState(false);
  useEffect(() => {
    if (!playing) return;
    if (matchMedia("(prefers-reduced-motion: reduce)").matches) {
      setAt((now) => Math.min(steps, Math.floor(now) + 1));
      setPlaying(false);
      return;
    }
    let before = performance.now();
    let frame = requestAnimationFrame(function tick(now) {
      const passed = Math.min(now - before, 100) / 1000 / SECONDS_A_STEP;
      before = now;
      setAt((was) => {
        const next = Math.min(steps, was + passed);
        if (next >= steps) setPlaying(false);
        return next;
      });
      frame = requestAnimationFrame(tick);
    });
    return () => cancelAnimationFrame(frame);
  }, [playing, steps]);
  return (
    <div class="pair">
      <div class="row">
        <button
          type="button"
          onClick={() => {
            if (at >= steps) setAt(0);
            setPlaying(!playing);
          }}
        >
          {playing ? "Pause both" : "Play both"}
        </button>
        <label class="leaf">
          <span>Step</span>
          <input
            type="range"
            min={0}
            max={steps}
            step={0.01}
            value={at}
            aria-valuetext={`step ${Math.min(steps, Math.floor(at) + 1)} of ${steps}`}
            onInput={(event) => {
              setPlaying(false);
              setAt(event.currentTarget.valueAsNumber);
            }}
          />
        </label>
      </div>
      <ul class="stills">
        {orders.map(({ sequence, words, answer }) => (
          <Side key={`${sequence} ${words}`} name={sequence} job={job} answer={answer} at={at} />
        ))}
      </ul>
    </div>
  );
}

function Side({
  name,
  job,
  answer,
  at,
}: {
  readonly name: string;
  readonly job: Job;
  readonly answer: Answer;
  readonly at: number;
}) {
  const { look } = usePage();
  const { theme } = look.now;
  const canvas = useRef<HTMLCanvasElement>(null);
  const last = answer.order.length - 1;
  const index = Math.min(Math.floor(at), last);
  // The first fifth of a step shows it at rest, the last fifth at its end.
  const share = Math.min(1, Math.max(0, (at - index - 0.2) / 0.6));
  useEffect(() => paintShare(canvas.current!, job, answer, index, share), [job, answer, index, share, theme]);
  const step = answer.order[index];
  const words = step
    ? `${bendWords(step)}, ${throatWords(step, job.part.bends.length)} in the throat, ${faceWords(step)}, leaf at ${angleWords(step.reached * share)}`
    : "";
  return (
    <li class={`still ${answer.verdict}`}>
      <h3>{name}</h3>
      <div class="still-box">
        <canvas ref={canvas} role="img" aria-label={words} />
      </div>
      <p>
        Step {index + 1}: {words}.
      </p>
    </li>
  );
}
