/**
 * readJob on anything at all: it never throws, and what it refuses it refuses in sentences. JSON's own rules are held
 * against the reader of JSON5 (json5.org).
 */
import { readdirSync, readFileSync } from "node:fs";
import fc from "fast-check";
import json5 from "json5";
import { describe, expect, it } from "vitest";
import { jsonFault } from "../../src/jobFile/jsonWalk.ts";
import { problemSentence } from "../../src/jobFile/problem.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import { writeJob } from "../../src/jobFile/writeJob.ts";
import { soundJob } from "../jobFile/jobs.ts";

const examples = new URL("../../examples/", import.meta.url);
const exampleTexts = readdirSync(examples)
  .filter((name) => name.endsWith(".json"))
  .map((name) => readFileSync(new URL(name, examples), "utf8"));

/** Reads, and looks over what comes back. */
function look(text: string): void {
  const result = readJob(text);
  if (result.ok) return;
  expect(result.problems.length).toBeGreaterThan(0);
  for (const problem of result.problems) {
    expect(problemSentence(problem)).toMatch(/^[^\n]+: found [^\n]+; it should be [^\n]+\.$/u);
  }
}

/** Odd values for any place of a job. */
const odd = fc.oneof(
  fc.constantFrom<unknown>(
    null,
    true,
    "",
    "3/8",
    "1e308",
    "-0",
    "__proto__",
    1e308,
    -1e308,
    5e-324,
    -0,
    0,
    1,
    90,
    180,
    1e6,
    [],
    {},
  ),
  fc.double({ noNaN: true, noDefaultInfinity: true }),
  fc.jsonValue(),
);

/** All places of a value, as lists of steps. */
function places(value: unknown, path: readonly PropertyKey[] = []): (readonly PropertyKey[])[] {
  if (typeof value !== "object" || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([key, item]) => places(item, [...path, key]))];
}

function withValue(job: unknown, path: readonly PropertyKey[], value: unknown): unknown {
  const [step, ...rest] = path;
  if (step === undefined) return value;
  const copy = structuredClone(job) as Record<PropertyKey, unknown>;
  copy[step] = withValue(copy[step], rest, value);
  return copy;
}

describe("readJob on anything", () => {
  it("takes arbitrary JSON without throwing", () => {
    fc.assert(fc.property(fc.json(), look), { seed: 30, numRuns: 1000 });
  });

  it("takes arbitrary text without throwing", () => {
    fc.assert(fc.property(fc.string({ unit: "binary", maxLength: 300 }), look), { seed: 31, numRuns: 1000 });
  });

  it("takes a sound job with any one place changed to something odd", () => {
    const sound = soundJob();
    const all = places(sound);
    let refused = 0;
    fc.assert(
      fc.property(fc.nat(all.length - 1), odd, (place, value) => {
        const text = JSON.stringify(withValue(sound, all[place]!, value)) ?? "";
        look(text);
        if (!readJob(text).ok) refused++;
      }),
      { seed: 32, numRuns: 3000 },
    );
    expect(refused).toBeGreaterThan(1500);
  });

  it("takes job texts with signs struck out, doubled or swapped, and takes what JSON5 takes", () => {
    const text = JSON.stringify(soundJob());
    const sign = fc.constantFrom(
      "{",
      "}",
      "[",
      "]",
      ",",
      ":",
      '"',
      "'",
      "/",
      "*",
      "\\",
      "\n",
      "0",
      "-",
      ".",
      "e",
      "t",
      " ",
      "\u0000",
      "é",
    );
    let sound = 0;
    fc.assert(
      fc.property(fc.nat(text.length - 1), fc.nat(2), sign, (at, cut, put) => {
        const hurt = text.slice(0, at) + put + text.slice(at + cut);
        look(hurt);
        let parses = true;
        try {
          json5.parse(hurt);
        } catch {
          parses = false;
        }
        const fault = jsonFault(hurt);
        // A key written twice and a text over two lines are JSON5, but no job.
        const noJob = fault !== undefined && /^a new key|^a text with|^saved as/u.test(fault.allowed);
        if (!noJob) expect(fault === undefined).toBe(parses);
        if (parses) sound++;
      }),
      { seed: 33, numRuns: 4000 },
    );
    expect(sound).toBeGreaterThan(200);
  });
});

describe("writeJob", () => {
  it.each(exampleTexts)("gives back the same job, and the example's own text", (text) => {
    const first = readJob(text);
    if (!first.ok) throw new Error(first.problems.map(problemSentence).join("\n"));
    const written = writeJob(first.file);
    expect(written).toBe(text);
    const second = readJob(written);
    expect(second.ok && second.job).toEqual(first.job);
  });

  it("doesn't care in which order the keys were written", () => {
    const sound = soundJob();
    const turned = Object.fromEntries(Object.entries(sound).reverse());
    const [a, b] = [readJob(JSON.stringify(sound)), readJob(JSON.stringify(turned))];
    if (!a.ok || !b.ok) throw new Error("the sound job must read");
    expect(writeJob(b.file)).toBe(writeJob(a.file));
  });
});
