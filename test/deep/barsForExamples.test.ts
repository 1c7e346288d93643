/**
 * A narrow brake for every folding job among the examples, and for parts from a quarter of an inch to 18 in long: the part folds on the
 * made brake's own file, read anew. Only `no-way` has none.
 */
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { check } from "../../src/answer/check.ts";
import { readJob } from "../../src/jobFile/readJob.ts";
import type { JobFile } from "../../src/jobFile/schema.ts";
import { withBrake } from "../../src/ways/brakeWays.ts";
import { barForParts } from "../../src/ways/shopBar.ts";

const FOLDER = fileURLToPath(new URL("../../examples/", import.meta.url));
const examples = readdirSync(FOLDER)
  .filter((name) => name.endsWith(".json"))
  .flatMap((name) => {
    const read = readJob(readFileSync(`${FOLDER}${name}`, "utf8"));
    return read.ok ? [{ name, file: read.file }] : [];
  });

/** The part's verdict on the brake that is made for it, in words' own terms; undefined where there is none. */
function verdictOnMade(file: JobFile) {
  const { found } = barForParts([file]);
  if (found === null) return undefined;
  const read = readJob(JSON.stringify(withBrake(file, found.brake)));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return { verdict: check(read.job).verdict, found };
}

test.each(examples)(
  "$name: folds on the brake made for it, or is the one that none makes",
  ({ name, file }) => {
    const made = verdictOnMade(file);
    if (name === "no-way.json") expect(made).toBeUndefined();
    else expect(made?.verdict).not.toBe("hits");
  },
);

/** Shapes of the roll-off roof, from flats in inches and bends by angle and turn. */
const SHAPES: Readonly<Record<string, { flats: number[]; bends: { angle: number; turn: "up" | "down" }[] }>> =
  {
    trough: { flats: [0.5, 1, 0.5], bends: [90, 90].map((angle) => ({ angle, turn: "up" })) },
    "Z clip": {
      flats: [0.75, 1, 0.75],
      bends: [
        { angle: 90, turn: "up" },
        { angle: 90, turn: "down" },
      ],
    },
    "sharp edge": { flats: [1.5, 2], bends: [{ angle: 120, turn: "up" }] },
  };

test.each(
  Object.entries(SHAPES).flatMap(([shape, { flats, bends }]) =>
    [
      [0.25, "0.032"],
      [2, "0.063"],
      [18, "0.05"],
    ].map(([length, thickness]) => ({ shape, flats, bends, length, thickness })),
  ),
)("a $shape $length in long of $thickness is folded on a brake of its own", ({ flats, bends, ...of }) => {
  const { file } = examples.find(({ name }) => name === "cable-trough-bar.json")!;
  const { thickness, length } = of;
  const read = readJob(
    JSON.stringify({
      ...file,
      order: undefined,
      part: { ...file.part, thickness, insideRadius: thickness, length, flats, bends },
    }),
  );
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  const made = verdictOnMade(read.file);
  expect(made?.verdict).not.toBe("hits");
  expect(made).toBeDefined();
});
