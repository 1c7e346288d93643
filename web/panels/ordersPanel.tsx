/**
 * The orders that fold, grouped by the bends' sequence, the best first; any two of them side by side, played in step.
 */

import { useEffect, useRef, useState } from "preact/hooks";
import { capital } from "../../src/words/capital.ts";
import { usePage } from "../page.ts";
import type { OrderFile } from "../store/jobFile.ts";
import { fileText } from "../store/jobFile.ts";
import { Asker } from "../worker/asker.ts";
import type { OrderShown, OrdersShown } from "../worker/messages.ts";
import { newestTwo, PlayedPair } from "./playedPair.tsx";

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
  const tick = (i: number) => setPair((now) => newestTwo(now, i));
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
            <PlayedPair
              sides={pair
                .toSorted((a, b) => a - b)
                .map((i) => shown.orders[i]!)
                .map(({ sequence, words, answer }) => ({
                  key: `${sequence} ${words}`,
                  name: sequence,
                  job: shown.job,
                  answer,
                }))}
            />
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
