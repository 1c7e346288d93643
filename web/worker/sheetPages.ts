/**
 * The shop sheet of an answered job, to lay on paper, with its ways out.
 */
import { paperFor } from "../../src/drawing/pageSize.ts";
import { shopSheet } from "../../src/drawing/shopSheet.ts";
import type { Answer } from "../../src/job/answer.ts";
import type { Job } from "../../src/job/job.ts";
import type { JobFile } from "../../src/job/schema.ts";
import { waysOut } from "../../src/job/waysOut.ts";
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
