/**
 * The shop sheet of an answered job, to lay on paper, with its ways out.
 */
import { paperFor } from "../../src/drawing/pageSize.ts";
import type { Answer } from "../../src/jobFile/answer.ts";
import type { Job } from "../../src/jobFile/job.ts";
import type { JobFile } from "../../src/jobFile/schema.ts";
import { shopSheet } from "../../src/pictures/shopSheet.ts";
import { waysOut } from "../../src/ways/waysOut.ts";
import type { PaperPage } from "./messages.ts";
import { paperPages } from "./paperPages.ts";

/** Pages of the sheet, with its ways out. */
export function sheetPages(
  { job, file }: { readonly job: Job; readonly file: JobFile },
  answer: Answer,
): readonly PaperPage[] {
  const full = { ...answer, remedies: waysOut(file, job, answer) };
  return paperPages(shopSheet(job, full, paperFor(job.units)));
}
