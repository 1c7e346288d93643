/** How the bends of a warning are named: runs of three and more as one. */
import { expect, it } from "vitest";
import { bendNames } from "../../src/words/warningWords.ts";

it.each([
  [[4], "Bend 4"],
  [[1, 2], "Bends 1 and 2"],
  [[1, 2, 3], "Bends 1 to 3"],
  [[1, 2, 3, 5], "Bends 1 to 3 and 5"],
  [[1, 3, 4, 6, 7, 8, 9], "Bends 1, 3, 4 and 6 to 9"],
])("names %j", (bends, words) => {
  expect(bendNames(bends)).toBe(words);
});
