/**
 * The docstring examples of drawings, words and the command, run: `@example expression // value`.
 * Names that an example takes for granted (job, answer, drawing10x10) are given here.
 */
import { readdirSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { answerOf, jobOf, stepOf } from "../jobFile/answers.ts";

const source = new URL("../../src/", import.meta.url);
/** The command, its start and its threads run when they are loaded, and two files need what only the build gives. */
const notAlone = [
  "cli/main.ts",
  "cli/searchThread.ts",
  "cli/partnerThread.ts",
  "cli/start.ts",
  "cli/example.ts",
  "cli/examples.d.ts",
];
const files = ["drawing", "words", "pictures", "cli"]
  .flatMap((room) => readdirSync(new URL(`${room}/`, source)).map((file) => `${room}/${file}`))
  .filter((file) => file.endsWith(".ts") && !notAlone.includes(file));

const granted = {
  job: jobOf(),
  answer: answerOf("clear", stepOf(), stepOf({ bend: 1, clamped: "start" })),
  chart: { brake: "24 in finger brake" },
  cell: { verdict: "clear", clearance: 2.794, worstBend: 2, stopsAt: null, because: null },
  drawing10x10: { sentence: "", window: { min: { x: 0, y: 0 }, max: { x: 10, y: 10 } }, marks: [] },
};
const modules = new Map<string, Record<string, unknown>>();
const scope: Record<string, unknown> = { ...granted };
for (const file of files) {
  const module = await import(/* @vite-ignore */ new URL(file, source).pathname);
  modules.set(file, module);
  Object.assign(scope, module);
}

/** Only what a file exports can be called from here; the few examples of inner functions are left to their readers. */
const callable = ([, expression]: readonly [string, string, string]) =>
  (/^\(?(?:await )?(\w+)/u.exec(expression)?.[1] ?? "") in scope;

const every = files.flatMap((file) =>
  [...readFileSync(new URL(file, source), "utf8").matchAll(/@example (.+?) \/\/ (.+?)(?: \*\/)?$/gmu)].map(
    ([, expression, value]) => [file, expression ?? "", value ?? ""] as const,
  ),
);
const examples = every.filter(callable);

async function run(file: string, expression: string): Promise<unknown> {
  const names = { ...scope, ...modules.get(file) };
  const AsyncFunction = (async () => undefined).constructor as FunctionConstructor;
  return AsyncFunction(
    ...Object.keys(names),
    `"use strict"; return (${expression});`,
  )(...Object.values(names));
}

describe("docstring examples of drawings, words and cli", () => {
  it("are found", () => {
    expect(examples.length).toBeGreaterThan(25);
  });

  it.each(examples)("%s: %s is %s", async (file, expression, value) => {
    const [got, wanted] = [await run(file, expression), await run(file, value)];
    if (typeof wanted === "number") expect(got).toBeCloseTo(wanted, 9);
    else expect(got).toEqual(wanted);
  });
});
