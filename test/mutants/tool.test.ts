/**
 * The mutation run itself, on a few lines whose mutants are known: which are noticed, which never end, which nobody can notice
 * and which nobody asks about. Source: toy.ts, read by eye.
 */
import { expect, it } from "vitest";
import { tryFile } from "./campaign.ts";
import { isLeft, rowOf, type Tried } from "./tally.ts";

it("tells noticed, endless, harmless and unasked mutants apart", { timeout: 60_000 }, async () => {
  const { tried, truths, missed } = await tryFile(
    "test/mutants/toy/toy.ts",
    ["test/mutants/toy/toy.truths.ts"],
    () => true,
  );
  const fateOf = (original: string, replacement: string) =>
    tried.find((mutant: Tried) => mutant.original === original && mutant.replacement === replacement)?.fate;
  // Worked out as the module loads.
  expect(fateOf("2 * 3", "2 / 3")).toBe("noticed");
  expect(fateOf("i < n", "i <= n")).toBe("noticed");
  expect(fateOf("i < n", "false")).toBe("noticed");
  // Counting down never ends.
  expect(fateOf("i += 1", "i -= 1")).toBe("timed out");
  expect(fateOf("a > b", "a <= b")).toBe("noticed");
  expect(fateOf("a > b", "a >= b")).toBe("survived");
  expect(fateOf("a + 1", "a - 1")).toBe("not covered");
  // A truth that is missed without any mutant is not asked.
  expect(truths).toHaveLength(5);
  expect(missed).toHaveLength(1);
  const row = rowOf("toy", tried, []);
  expect(row.noticed + row.timedOut + row.survived + row.notCovered).toBe(row.mutants);
  expect(row.survived + row.notCovered).toBe(tried.filter(isLeft).length);
  expect(row.score).toBeCloseTo((100 * (row.noticed + row.timedOut)) / row.mutants, 9);
});
