/**
 * Writes down what the reference says of bends, second strokes and searches, so that the engine can be held against it in
 * moments: test/recorded/answers.json. No answer of the engine goes into the file. Its cases are random jobs (roughJob,
 * hardJob, randomJob), picked because a changed engine gets something of them wrong.
 */
import { readFileSync, writeFileSync } from "node:fs";
import { type Pick, stateOf } from "../contact/roughJob.ts";
import { checkBend } from "../reference/bendCheck.ts";
import { LeafAlone } from "../reference/contact.ts";
import { enumerate } from "../reference/enumerate.ts";
import { stageOf } from "../reference/pairs.ts";
import type { RandomJob } from "../reference/randomJob.ts";
import { sheetOf } from "../reference/sheet.ts";
import { checkSecondStroke } from "../reference/twoStrokes.ts";
import type { Recorded, RecordedBend, RecordedSearch, RecordedStroke } from "./recorded.ts";

const FILE = "test/recorded/answers.json";
const INSET_MM = 0.01;
const CHORD_MM = 0.0002;

/** A file of cases: states name what is picked, answers in it count for nothing. */
interface Cases {
  readonly bends?: readonly {
    readonly file: RandomJob;
    readonly states: readonly { readonly pick: Pick }[];
  }[];
  readonly strokes?: readonly {
    readonly file: RandomJob;
    readonly states: readonly { readonly pick: Pick; readonly leftDeg: number }[];
  }[];
  readonly searches?: readonly { readonly file: RandomJob }[];
}

function recordedBends(file: RandomJob, picked: readonly { readonly pick: Pick }[]): RecordedBend[] {
  const alone = new LeafAlone();
  return picked.flatMap(({ pick }) => {
    const { state } = stateOf(file.part.bends.length, pick);
    const { contact, clearanceMm, load, unload, verdict, noseSetbackMm } = checkBend(file, state, alone);
    // Where the leaf parts from the bed's corner with a hair across, the engine is told to let it pass (gaps.ts).
    if (contact && contact.angleDeg > 0 && contact.angleDeg < 0.5) return [];
    const met = contact && { angleDeg: contact.angleDeg, members: contact.members };
    return [{ pick, contact: met, clearanceMm, load, unload, verdict, noseSetbackMm }];
  });
}

function recordedStrokes(
  file: RandomJob,
  picked: readonly { readonly pick: Pick; readonly leftDeg: number }[],
): RecordedStroke[] {
  return picked.flatMap(({ pick, leftDeg }) => {
    const { state } = stateOf(file.part.bends.length, pick);
    // No first stroke leaves a bend farther than the leaf swings.
    if (leftDeg >= file.brake.leaf.swing) return [];
    // The leaf against the brake alone is nothing of the stroke's.
    const stage = stageOf(file, state, INSET_MM, CHORD_MM);
    if (stage.motion.bend.pinched) return [];
    const leafFree = (["bed", "clamp"] as const).every((body) => new LeafAlone().meets(stage, body) === null);
    const { contact, clearanceMm, load, liesInItself } = checkSecondStroke(file, state, leftDeg);
    return leafFree && !liesInItself ? [{ pick, leftDeg, contact, clearanceMm, load }] : [];
  });
}

function recordedSearch(file: RandomJob): RecordedSearch {
  const { viableOrders, rank, furthest } = enumerate(file);
  return { file, viableOrders, rank, furthest };
}

/** A nose setback that forms a larger radius may leave a flat no length: then there is no such part. */
function canBe(file: RandomJob): boolean {
  try {
    sheetOf(file);
    return true;
  } catch {
    return false;
  }
}

const added = process.argv[2];
const cases = JSON.parse(readFileSync(added ?? FILE, "utf8")) as Cases;
const fresh: Recorded = {
  bends: (cases.bends ?? [])
    .filter(({ file }) => canBe(file))
    .map(({ file, states }) => ({ file, states: recordedBends(file, states) })),
  strokes: (cases.strokes ?? [])
    .filter(({ file }) => canBe(file))
    .map(({ file, states }) => ({ file, states: recordedStrokes(file, states) })),
  searches: (cases.searches ?? []).filter(({ file }) => canBe(file)).map(({ file }) => recordedSearch(file)),
};
const kept = added === undefined ? undefined : (JSON.parse(readFileSync(FILE, "utf8")) as Partial<Recorded>);
const lines = (list: readonly object[]) => list.map((item) => JSON.stringify(item)).join(",\n");
const some = <Job extends { readonly states: readonly object[] }>(jobs: readonly Job[]) =>
  jobs.filter(({ states }) => states.length > 0);
const [bends, strokes, searches] = [
  [...(kept?.bends ?? []), ...some(fresh.bends)],
  [...(kept?.strokes ?? []), ...some(fresh.strokes)],
  [...(kept?.searches ?? []), ...fresh.searches],
];
writeFileSync(
  FILE,
  `{"bends":[\n${lines(bends)}\n],"strokes":[\n${lines(strokes)}\n],"searches":[\n${lines(searches)}\n]}\n`,
);
