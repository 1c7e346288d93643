/**
 * The answer as the contract's JSON. A count past 2^53 is a bigint and prints as its digits, which JSON allows.
 */
import type { Answer } from "../jobFile/answer.ts";
import type { WholeAnswer } from "../jobFile/wholeAnswer.ts";

/** JSON text, two spaces a level, without a final newline. */
export function answerJson(answer: Answer | WholeAnswer): string {
  const text = JSON.stringify(
    answer,
    (_, value: unknown) => (typeof value === "bigint" ? String(value) : value),
    2,
  );
  if (typeof answer.viableOrders !== "bigint") return text;
  // Inside any string of the answer the quotes would be escaped, so this can only be the key itself.
  return text.replace(/"viableOrders": "(\d+)"/u, '"viableOrders": $1');
}
