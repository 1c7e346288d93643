/**
 * The tests whose truths are asked of every mutant: those that look at motion, contact and sequence, or at whole answers.
 */
const EVERYWHERE: readonly string[] = [
  "test/mutants/crossing.test.ts",
  "test/mutants/sheetInBrake.test.ts",
  "test/mutants/stripPieces.test.ts",
  "test/mutants/blocksSwung.test.ts",
  "test/mutants/pockets.test.ts",
  "test/mutants/featureFigures.test.ts",
  "test/mutants/heights.test.ts",
  "test/mutants/meetings.test.ts",
  "test/mutants/seatedPieces.test.ts",
  "test/mutants/rooms.test.ts",
  "test/mutants/directions.test.ts",
  "test/mutants/work.test.ts",
  "test/mutants/bends.test.ts",
  "test/mutants/strokes.test.ts",
  "test/mutants/searches.test.ts",
  "test/motion/swing.test.ts",
  "test/motion/scene.test.ts",
  "test/contact/bodies.test.ts",
  "test/contact/crossing.test.ts",
  "test/contact/handling.test.ts",
  "test/contact/twoStrokes.test.ts",
  "test/cases/cases.test.ts",
];

/** Asked of the search alone, and of what only it uses: they say of bends what others say in less time. */
const OF_THE_SEARCH = ["test/mutants/rankings.test.ts", "test/mutants/searchWork.test.ts"];

/** Asked of the files alone that they look at by themselves. */
const OF_ONE_FILE: Readonly<Record<string, readonly string[]>> = {
  "src/contact/alwaysHandled.ts": ["test/mutants/mixesHandled.test.ts"],
  "src/contact/clearance.ts": ["test/mutants/clearances.test.ts"],
  "src/contact/beyond.ts": ["test/mutants/beyond.test.ts", "test/mutants/everyRest.test.ts"],
};

export function truthFilesFor(file: string): readonly string[] {
  const ofSearch = file.startsWith("src/sequence/") || file === "src/contact/beyond.ts";
  return [...EVERYWHERE, ...(OF_ONE_FILE[file] ?? []), ...(ofSearch ? OF_THE_SEARCH : [])];
}

/**
 * Truths left out: the worked cases told in inches and at other sizes, which run the same steps on other figures; and one
 * that asks the reference as it runs (strokes.test.ts has its answers written down).
 */
export const LEFT_OUT = /^case %s #\d+ › \$name #[3-6] ›|^judges the second stroke as the reference does$/;
