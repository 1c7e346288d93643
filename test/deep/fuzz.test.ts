/**
 * A short fuzzing of every reader from a fixed seed, and every finding that a long one ever made, tried again.
 * Source: what each reader owes (readers.ts); the long run is `npm run fuzz`.
 */
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, it } from "vitest";
import { shareOf } from "../drawn.ts";
import { chance, Mutator } from "../fuzz/mutate.ts";
import { READERS, type ReaderName } from "../fuzz/readers.ts";
import { seedsOf } from "../fuzz/seeds.ts";
import { watched } from "../fuzz/watch.ts";

const examples = fileURLToPath(new URL("../../examples", import.meta.url));
const names = Object.keys(READERS) as ReaderName[];
const RUNS = shareOf(15_000);

it.each(names)("%s: good texts are taken, changed ones are taken or refused in words", async (name) => {
  const seeds = seedsOf(name, examples);
  expect(seeds.length).toBeGreaterThan(0);
  const mutator = new Mutator(chance(7));
  const texts = [...seeds];
  while (texts.length < RUNS)
    texts.push(mutator.changed(mutator.pick(texts.slice(0, 200)), mutator.pick(seeds)));
  for (const text of texts) {
    try {
      await READERS[name](text);
    } catch (thrown) {
      throw new Error(`${thrown} on ${JSON.stringify(text)}`);
    }
  }
});

it("notices a reader that throws, stalls, loses a job or runs its text", async () => {
  await expect((async () => READERS.stored("{"))()).resolves.toBeUndefined();
  expect(() => watched(() => JSON.parse("{"))).toThrow();
  expect(() => watched(busy)).toThrow(/took/);
  expect(() => watched(() => Object.assign(globalThis, { ran: 1 }))).toThrow("the text was run");
  Reflect.deleteProperty(globalThis, "ran");
});

/** Keeps the processor busy for more than a second of its own time. */
function busy(): void {
  const before = process.cpuUsage();
  for (;;) {
    for (let i = 0; i < 1e6; i++) Math.sqrt(i);
    const { user, system } = process.cpuUsage(before);
    if (user + system > 1.2e6) return;
  }
}

const kept = new URL("../fuzz/kept/", import.meta.url);
const findings = readdirSync(kept);
it.runIf(findings.length > 0).each(findings)("%s, which was a finding once", async (name) => {
  const reader = name.split("-")[0] as ReaderName;
  await READERS[reader](readFileSync(new URL(name, kept), "utf8"));
});
