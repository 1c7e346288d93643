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
const OF_THE_SEARCH = [
  "test/mutants/rankings.test.ts",
  "test/mutants/widestBack.test.ts",
  "test/mutants/sideReach.test.ts",
  "test/mutants/quickLook.test.ts",
  "test/mutants/kept.test.ts",
  "test/mutants/selfTable.test.ts",
  "test/mutants/seatStates.test.ts",
  "test/mutants/madeUp.test.ts",
  "test/mutants/sideTables.test.ts",
  "test/mutants/goals.test.ts",
  "test/mutants/watched.test.ts",
  "test/mutants/counterparts.test.ts",
  "test/mutants/searchWork.test.ts",
];

/** Asked only of the files that they are about. */
const OF_SOME: Readonly<Record<string, readonly string[]>> = {
  "test/mutants/elements.test.ts": ["contact/seatPieces", "contact/strip", "contact/sideChecks"],
  "test/mutants/corners.test.ts": ["contact/features", "contact/machine"],
  "test/mutants/cutRuns.test.ts": ["contact/seatPieces"],
  "test/mutants/lookedInto.test.ts": ["contact/sideChecks"],
  "test/mutants/metBySides.test.ts": ["contact/sideChecks", "contact/seatPieces"],
  "test/mutants/stages.test.ts": ["motion/stages", "motion/partWay", "motion/scene"],
  "test/mutants/swings.test.ts": ["motion/swing"],
  "test/mutants/roots.test.ts": ["contact/crossing"],
  "test/mutants/measured.test.ts": ["contact/leastDistance"],
  "test/mutants/arcsCrossing.test.ts": ["contact/overlap"],
  "test/mutants/sweptPieces.test.ts": ["contact/sweptPiece"],
  "test/mutants/solids.test.ts": ["contact/solidBody", "contact/sector"],
  "test/mutants/curveBounds.test.ts": ["contact/pairCurve"],
  "test/mutants/planes.test.ts": ["contact/strip", "contact/clearance"],
  "test/mutants/verdicts.test.ts": ["contact/step"],
  "test/mutants/reach.test.ts": ["contact/firstContact", "contact/leastDistance"],
  "test/mutants/mixesHandled.test.ts": ["contact/alwaysHandled"],
  "test/mutants/clearances.test.ts": ["contact/clearance"],
  "test/mutants/beyond.test.ts": ["contact/beyond"],
  "test/mutants/everyRest.test.ts": ["contact/beyond"],
  "test/mutants/elementBox.test.ts": ["contact/elementBox"],
  "test/mutants/sidePath.test.ts": ["sequence/sidePath"],
  "test/mutants/partners.test.ts": [
    "sequence/board",
    "sequence/layer",
    "sequence/looks",
    "sequence/partner",
    "sequence/reach",
    "sequence/search",
  ],
  "test/mutants/furthestSoon.test.ts": [
    "sequence/askedMoves",
    "sequence/mostReached",
    "sequence/furthest",
    "sequence/rank",
    "sequence/ranking",
    "sequence/moves",
    "sequence/search",
  ],
};

/** Of the contact's files those that the search alone uses. */
const SEARCH_ALONE: readonly string[] = ["src/contact/beyond.ts", "src/contact/elementBox.ts"];

export function truthFilesFor(file: string): readonly string[] {
  const ofSearch = file.startsWith("src/sequence/") || SEARCH_ALONE.includes(file);
  const some = Object.keys(OF_SOME).filter((truths) =>
    OF_SOME[truths]!.some((of) => file === `src/${of}.ts`),
  );
  return [...EVERYWHERE, ...some, ...(ofSearch ? OF_THE_SEARCH : [])];
}

/**
 * Truths left out: the worked cases told in inches and at other sizes, which run the same steps on other figures; and one
 * that asks the reference as it runs (strokes.test.ts has its answers written down).
 */
export const LEFT_OUT = /^case %s #\d+ › \$name #[3-6] ›|^judges the second stroke as the reference does$/;
