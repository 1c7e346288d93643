/**
 * Every part of the shelf on every brake of it, as the page shows it: the deciding sentence, a table, and why a part is
 * not for a brake.
 */

import { readJob } from "../../src/jobFile/readJob.ts";
import type { JobFile } from "../../src/jobFile/schema.ts";
import type { FitCell } from "../../src/jobFile/shopFit.ts";
import type { LengthUnit } from "../../src/units/length.ts";
import { fitShop } from "../../src/ways/shopFit.ts";
import { capital } from "../../src/words/capital.ts";
import { cellWords, shopSentence } from "../../src/words/shopWords.ts";
import type { FitShown, FitShownCell } from "./messages.ts";

/** Parts come as jobs in one unit, brakes as those of any of them; a job that can't be read is named and left out. */
export function fitShown(
  jobs: readonly string[],
  brakes: readonly { readonly name: string; readonly job: string }[],
): FitShown {
  const read = jobs.map((text) => readJob(text));
  const unread = jobs.filter((_, i) => !read[i]?.ok).map(nameOf);
  const files = read.flatMap((one) => (one.ok ? [one.file] : []));
  const shopBrakes = brakes.flatMap(({ name, job }): JobFile["brake"][] => {
    const one = readJob(job);
    return one.ok ? [{ ...one.file.brake, name }] : [];
  });
  const [first] = files;
  const leftOut = unread.map((name) => `${name} is left out: its figures want putting right first.`);
  if (first === undefined || shopBrakes.length === 0) {
    return { sentence: "There is no part and brake that can be read.", brakes: [], rows: [], leftOut };
  }
  const { units, margin } = first;
  const parts = files.map(({ part }) => part);
  const fit = fitShop({
    units,
    brakes: shopBrakes,
    parts,
    ...(margin !== undefined && { margin }),
  });
  return {
    sentence: shopSentence(fit, units),
    brakes: fit.brakes,
    rows: fit.cells.map((cells, i) => ({
      part: fit.parts[i] ?? "",
      cells: cells.map((cell) => cellShown(cell, units)),
    })),
    leftOut,
  };
}

/** A file that can't be read may still have a name. */
function nameOf(text: string): string {
  const { part } = JSON.parse(text) as JobFile;
  return part.name || "A part without a name";
}

function cellShown(cell: FitCell, units: LengthUnit): FitShownCell {
  const [words, more] = cellWords(cell, units);
  return { verdict: cell.verdict, words: capital(words), more };
}
