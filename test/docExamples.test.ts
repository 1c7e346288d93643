/**
 * The docstring examples, run: `@example expression // value`, numbers to the last place printed or to 1 in 90,000.
 * An example knows the exports of its own file, then those of all others, and the names given below.
 * Left out: files that do something as they load, or need a page's canvas.
 */
import { readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";
import { answerOf, jobOf, stepOf } from "./jobFile/answers.ts";

const root = new URL("../", import.meta.url);
const LEFT_OUT = /\.d\.ts$|^src\/cli\/(start|command|\w+Thread)\.ts$|^src\/index\.ts$/;
const PLAIN_ROOMS_OF_THE_PAGE = ["web/fields", "web/store"];
const KEYWORDS = new Set(["await", "new", "true", "false", "null", "undefined", "typeof"]);

const files = ["src", ...PLAIN_ROOMS_OF_THE_PAGE].flatMap((room) =>
  readdirSync(new URL(`${room}/`, root), { recursive: true, encoding: "utf8" })
    .map((name) => `${room}/${name}`)
    .filter((path) => path.endsWith(".ts") && !LEFT_OUT.test(path)),
);

const modules = new Map<string, Record<string, unknown>>();
for (const file of files) modules.set(file, await import(/* @vite-ignore */ new URL(file, root).pathname));
const given = {
  job: jobOf(),
  answer: answerOf("clear", stepOf(), stepOf({ bend: 1, clamped: "start" })),
  drawing10x10: { sentence: "", window: { min: { x: 0, y: 0 }, max: { x: 10, y: 10 } }, marks: [] },
};
const scope: Record<string, unknown> = Object.assign({}, ...modules.values(), given);

/** Only what its own file exports can be called from here; the few examples of inner functions are left to their readers. */
function isCallable(file: string, expression: string): boolean {
  const called = /^\(?(?:await )?(\w+)/u.exec(expression)?.[1] ?? "";
  return called in { ...modules.get(file), ...given };
}

/** Some examples name what their reader can picture ("trough"): these are not run. */
function isKnown(expression: string): boolean {
  const names = expression.replaceAll(/"[^"]*"|`[^`]*`/g, "").match(/(?<![.\w])[a-zA-Z_]\w*(?![\w:])/g) ?? [];
  return names.every((name) => name in scope || name in globalThis || KEYWORDS.has(name));
}

/** Some values are told in words: these are not run either. */
function isCode(value: string): boolean {
  try {
    return typeof new Function(`return (${value})`) === "function";
  } catch {
    return false;
  }
}

const examples = files.flatMap((file) =>
  [...readFileSync(new URL(file, root), "utf8").matchAll(/@example (.+?) \/\/ (.+?)(?: \*\/)?$/gmu)]
    .map(([, expression = "", value = ""]) => ({ file, expression, value }))
    .filter(({ expression, value }) => isCallable(file, expression) && isKnown(expression) && isCode(value)),
);

function run(file: string, expression: string): unknown {
  const names = { ...scope, ...modules.get(file) };
  const AsyncFunction = (async () => undefined).constructor as FunctionConstructor;
  const body = `"use strict"; return (${expression});`;
  return AsyncFunction(...Object.keys(names), body)(...Object.values(names));
}

it("finds examples in most rooms", () => {
  expect(examples.length).toBeGreaterThan(150);
  expect(new Set(examples.map(({ file }) => file.split("/").slice(0, 2).join("/"))).size).toBeGreaterThan(12);
});

it.each(examples)("$file: $expression", async ({ file, expression, value }) => {
  const [got, printed] = [await run(file, expression), await run(file, value)];
  if (typeof printed !== "number") {
    expect(got).toEqual(printed);
    return;
  }
  const decimals = value.split(".")[1]?.length;
  const lastPlace = decimals === undefined ? 0 : 0.5 * 10 ** -decimals;
  expect(Math.abs((got as number) - printed)).toBeLessThanOrEqual(lastPlace + 1.1e-5 * Math.abs(printed));
});
