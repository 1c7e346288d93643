/**
 * The docstring examples of the page's plain rooms, run: `@example expression // value`. Numbers to 9 figures.
 * Scope: every export of those files; the panels and the stage need a browser and are tried in one (test/page).
 */
import { readFileSync } from "node:fs";
import { expect, it } from "vitest";

const web = new URL("../web/", import.meta.url);
const files = [
  ...["rectangle", "typed"].map((file) => `fields/${file}.ts`),
  ...["chainEdits", "jobFile", "locale", "shelf", "units"].map((file) => `store/${file}.ts`),
];
const examples = files.flatMap((file) =>
  readFileSync(new URL(file, web), "utf8")
    .split("\n")
    .flatMap((line) => {
      const found = /@example (.+?) \/\/ (.+?)(?: \*\/)?$/u.exec(line);
      return found === null ? [] : [[file, found[1] ?? "", found[2] ?? ""] as const];
    }),
);

const scope: Record<string, unknown> = {};
for (const file of files) Object.assign(scope, await import(/* @vite-ignore */ new URL(file, web).pathname));

function run(expression: string): unknown {
  const names = Object.keys(scope);
  return new Function(...names, `"use strict"; return (${expression});`)(...names.map((name) => scope[name]));
}

it("are found", () => {
  expect(examples.length).toBeGreaterThan(6);
});

it.each(examples)("%s: %s is %s", (_, expression, value) => {
  const [got, wanted] = [run(expression), run(value)];
  if (typeof wanted === "number") expect(got).toBeCloseTo(wanted, 9);
  else expect(got).toEqual(wanted);
});
