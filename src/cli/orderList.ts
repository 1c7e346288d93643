/**
 * `noseroom check JOB --orders`: the orders that work, put together by the sequence of bends, best first.
 */
import type { Answer } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";
import { MOST_LISTED_BENDS, workingOrders } from "../section/workingOrders.ts";
import { orderListSentence, orderListTable, tooManyOrders } from "../words/orderListWords.ts";
import { table } from "./table.ts";
import { wrap } from "./wrap.ts";

/** More rows than these nobody reads. */
const MOST_ROWS = 30;

/** The list as text; sentences no wider than `columns`. */
export function orderListLines(job: Job, answer: Answer, columns: number): string[] {
  const { part } = job;
  const groups = workingOrders(job, shownIn(answer));
  if (groups === undefined) return wrap(tooManyOrders(MOST_LISTED_BENDS), columns, "");
  const count = part.bends.length;
  const shown = groups.slice(0, MOST_ROWS);
  const more = groups.length - shown.length;
  return [
    ...wrap(orderListSentence(groups, answer, count), columns, ""),
    ...(shown.length === 0
      ? []
      : ["", ...table(orderListTable(shown, count), ["right", "left", "left", "right", "right", "left"])]),
    ...(more > 0 ? ["", `And ${more} more sequences.`] : []),
  ];
}

/** The list as plain data: bends from 1. */
export function orderListData(job: Job, answer: Answer) {
  return (workingOrders(job, shownIn(answer)) ?? []).map(({ steps, orders, changes, clear }) => ({
    steps: steps.map(({ bend, ends, best }) => ({ bend: bend + 1, ends, best })),
    orders,
    changes,
    verdict: clear ? "clear" : "tight",
  }));
}

function shownIn({ order }: Answer): number[] {
  return order.map(({ bend }) => bend - 1);
}
