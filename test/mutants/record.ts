/**
 * Writes down what the reference says of some hundred bends and searches, so that the engine can be held against it in
 * moments: test/mutants/truths.json. Run by `node test/mutants/record.mjs`; no answer of the engine goes into the file.
 */
import { writeFileSync } from "node:fs";
import fc from "fast-check";
import { readJob } from "../../src/job/readJob.ts";
import { picks, roughJobs, stateOf } from "../contact/roughJob.ts";
import { checkBend } from "../reference/bendCheck.ts";
import { LeafAlone } from "../reference/contact.ts";
import { enumerate } from "../reference/enumerate.ts";
import { randomJobs } from "../reference/randomJob.ts";
import { hardJobs } from "../torture/hardJob.ts";
import { flatOutlastsZone } from "../torture/sampledTruth.ts";
import type { Truths } from "./truths.ts";

const BENDS = 150;
const SEARCHES = 40;

const jobs = fc.oneof(
  { weight: 2, arbitrary: hardJobs(3) },
  { weight: 3, arbitrary: roughJobs(4) },
  { weight: 3, arbitrary: randomJobs(4) },
);
const reads = (file: object) => readJob(JSON.stringify(file)).ok;

const bends = fc
  .sample(fc.noBias(fc.tuple(jobs, picks(4))), { seed: 41, numRuns: 2 * BENDS })
  // Profiles traced with a thousand corners would fill the file.
  .filter(([file]) => reads(file) && JSON.stringify(file).length < 4000)
  .slice(0, BENDS)
  .map(([file, states]): Truths["bends"][number] => {
    const alone = new LeafAlone();
    const truths = states.flatMap((pick) => {
      const { state } = stateOf(file.part.bends.length, pick);
      if (!flatOutlastsZone(file, state)) return [];
      const { contact, clearanceMm, load, unload, verdict, noseSetbackMm } = checkBend(file, state, alone);
      // Where the leaf parts from the bed's corner with a hair across, the engine is told to let it pass (gaps.ts).
      if (contact && contact.angleDeg > 0 && contact.angleDeg < 0.5) return [];
      const met = contact && { angleDeg: contact.angleDeg, members: contact.members };
      return [{ pick, contact: met, clearanceMm, load, unload, verdict, noseSetbackMm }];
    });
    return { file, states: truths };
  });

const searches = fc
  .sample(fc.noBias(randomJobs(3)), { seed: 42, numRuns: 2 * SEARCHES })
  .filter(reads)
  .slice(0, SEARCHES)
  .map((file) => {
    const { viableOrders, rank, furthest } = enumerate(file);
    return { file, viableOrders, rank, furthest };
  });

const truths: Truths = { bends: bends.filter(({ states }) => states.length > 0), searches };
const lines = (list: readonly object[]) => list.map((item) => JSON.stringify(item)).join(",\n");
writeFileSync(
  "test/mutants/truths.json",
  `{"bends":[\n${lines(truths.bends)}\n],"searches":[\n${lines(truths.searches)}\n]}\n`,
);
