/**
 * How many orders there are and how many of them work, in one sentence.
 * An order says for every bend when it is made and which end is clamped: n!·2^n of them.
 */
import type { Answer } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";

/** All orders of `bendCount` bends with either end clamped. @example allOrders(3) // 48n */
export function allOrders(bendCount: number): bigint {
  let count = 1n;
  for (let bend = 1n; bend <= BigInt(bendCount); bend++) count *= 2n * bend;
  return count;
}

/** A whole number in groups of three. */
function grouped(count: number | bigint): string {
  // Not toLocaleString: waking the locale tables takes longer than checking a small part.
  return String(count).replace(/\B(?=(?:\d{3})+$)/gu, ",");
}

/** @example ordersSentence(job, answer) // "2 of the 8 orders work; this one is the best." */
export function ordersSentence(job: Job, answer: Answer): string {
  const all = allOrders(job.part.bends.length);
  const viable = answer.viableOrders === null ? null : BigInt(answer.viableOrders);
  if (job.order !== undefined) {
    if (answer.verdict !== "hits") return "Checked in the order that the job gives.";
    return viable !== null && viable > 0n
      ? `Checked in the order that the job gives; ${grouped(viable)} of the ${grouped(all)} orders would work. Leave "order" out to see the best.`
      : "Checked in the order that the job gives.";
  }
  if (viable === null) return manyBendsSentence(answer, all);
  if (viable === 0n) return `None of the ${grouped(all)} orders works; this one gets furthest.`;
  if (viable === all) return `All ${grouped(all)} orders work; this one is the best.`;
  if (viable === 1n) return `Of the ${grouped(all)} orders this is the only one that works.`;
  return `${grouped(viable)} of the ${grouped(all)} orders work; this one is the best.`;
}

/** For more bends than are ranked. */
function manyBendsSentence({ verdict, decided, statesChecked }: Answer, all: bigint): string {
  const tried = `${grouped(statesChecked)} bends were tried one by one`;
  if (decided === false) {
    return `Not decided: ${tried} and no order of all bends was found, but not every order was ruled out. This one gets furthest of those tried.`;
  }
  if (verdict === "hits")
    return `None of the ${grouped(all)} orders works; of those tried none makes more bends than this one.`;
  return "This order works. With so many bends Noseroom looks for one that works, not for the best.";
}
