/**
 * The docstring examples of the ways out and their words, run: `@example expression // value`.
 * Numbers must agree to the figures that are printed.
 */
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";

const source = new URL("../../src/", import.meta.url);
const files = [
  "remedy/cost.ts",
  "remedy/family.ts",
  "remedy/limit.ts",
  "job/wayWords.ts",
  "job/brakeWays.ts",
  "job/writtenLength.ts",
  "drawing/flangeLimitWords.ts",
];
const scope: Record<string, unknown> = {};
for (const file of files)
  Object.assign(scope, await import(/* @vite-ignore */ new URL(file, source).pathname));

const examples = files.flatMap((file) =>
  [...readFileSync(new URL(file, source), "utf8").matchAll(/@example (.+?) \/\/ (.+?)(?: \*\/)?$/gmu)].map(
    ([, expression, value]) => ({ file, expression: expression!, value: value! }),
  ),
);

function run(expression: string): unknown {
  return new Function(...Object.keys(scope), `"use strict"; return (${expression});`)(
    ...Object.values(scope),
  );
}

test("every file has its example", () => {
  expect(new Set(examples.map(({ file }) => file)).size).toBe(files.length);
});

test.each(examples)("$file: $expression", ({ expression, value }) => {
  const [found, printed] = [run(expression), run(value)];
  if (typeof printed !== "number") {
    expect(found).toEqual(printed);
    return;
  }
  const decimals = value.split(".")[1]?.length ?? 0;
  expect(Math.abs((found as number) - printed)).toBeLessThanOrEqual(0.5 * 10 ** -decimals);
});
