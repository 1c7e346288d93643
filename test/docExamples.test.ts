/**
 * The docstring examples of the rooms named below, run: `@example expression // value`.
 * Numbers to 9 figures; the value may itself be an expression. Scope: every export of those files.
 */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";

const rooms = ["units", "plane", "metal", "part", "blank"];
const source = new URL("../src/", import.meta.url);
const files = rooms.flatMap((room) =>
  readdirSync(new URL(`${room}/`, source))
    .filter((file) => file.endsWith(".ts"))
    .map((file) => `${room}/${file}`),
);
// Of brake, drawing and job the files whose examples need no job at hand.
files.push(
  ...["bar", "finger", "noseSetback", "noseShims"].map((file) => `brake/${file}.ts`),
  ...["dimensionStrokes", "dxfPen", "flow", "ink", "page", "pageSize", "pdfPath", "printWords"].map(
    (file) => `drawing/${file}.ts`,
  ),
  ...["stroke", "templateFoot", "tiles", "weightWords"].map((file) => `drawing/${file}.ts`),
  ...["problem", "reading", "readJob", "jsonText"].map((file) => `job/${file}.ts`),
  ...["brakeWays", "wayWords", "writtenLength"].map((file) => `job/${file}.ts`),
  ...["cost", "family"].map((file) => `remedy/${file}.ts`),
);
const examples = files.flatMap((file) =>
  readFileSync(new URL(file, source), "utf8")
    .split("\n")
    .flatMap((line) => {
      const found = /@example (.+?) \/\/ (.+?)(?: \*\/)?$/u.exec(line);
      return found === null ? [] : [[file, found[1] ?? "", found[2] ?? ""] as const];
    }),
);

const scope: Record<string, unknown> = {};
for (const file of files)
  Object.assign(scope, await import(/* @vite-ignore */ new URL(file, source).pathname));

function run(expression: string): unknown {
  const names = Object.keys(scope);
  return new Function(...names, `"use strict"; return (${expression});`)(...names.map((name) => scope[name]));
}

describe("docstring examples", () => {
  it("are found", () => {
    expect(examples.length).toBeGreaterThan(20);
  });

  it.each(examples)("%s: %s is %s", (_, expression, value) => {
    const [got, wanted] = [run(expression), run(value)];
    if (typeof wanted === "number") expect(got).toBeCloseTo(wanted, 9);
    else expect(got).toEqual(wanted);
  });
});
