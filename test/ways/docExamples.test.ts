/**
 * The docstring examples of remedy/strength and remedy/shopMade, run: `@example expression // value`.
 * Numbers must agree to the figures that are printed.
 */
import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";

const source = new URL("../../src/remedy/", import.meta.url);
const files = ["strength", "shopMade"].flatMap((room) =>
  readdirSync(new URL(`${room}/`, source))
    .filter((file) => file.endsWith(".ts"))
    .map((file) => `${room}/${file}`),
);
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

test("there are examples in most files", () => {
  expect(examples.length).toBeGreaterThan(30);
});

test.each(examples)("$file: $expression", ({ expression, value }) => {
  const [found, printed] = [run(expression), run(value)];
  if (typeof printed !== "number") {
    expect(found).toEqual(printed);
    return;
  }
  const decimals = value.split(".")[1]?.length ?? 0;
  expect(Math.abs((found as number) - printed)).toBeLessThanOrEqual(0.5 * 10 ** -decimals + 1e-9 * printed);
});
