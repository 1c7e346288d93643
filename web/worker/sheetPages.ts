/**
 * The shop sheet of an answered job, to lay on paper: its ways out, and for a copied sample what the doubts mean.
 */
import { paperFor } from "../../src/drawing/pageSize.ts";
import { shopSheet } from "../../src/drawing/shopSheet.ts";
import type { Answer } from "../../src/job/answer.ts";
import type { Job } from "../../src/job/job.ts";
import type { JobFile } from "../../src/job/schema.ts";
import { waysOut } from "../../src/job/waysOut.ts";
import { doubted } from "./doubted.ts";
import type { PaperPage } from "./messages.ts";
import { paperPages } from "./paperPages.ts";

/** Pages of the sheet, with its ways out and, for a copied sample, what its doubtful readings mean. */
export function sheetPages(
  { job, file }: { readonly job: Job; readonly file: JobFile },
  answer: Answer,
  doubtsMm: readonly number[] | null,
): readonly PaperPage[] {
  const sure = doubtsMm === null ? [] : doubted(job, answer, doubtsMm).sentences;
  const full = { ...answer, remedies: waysOut(file, job, answer), warnings: [...sure, ...answer.warnings] };
  return paperPages(shopSheet(job, full, paperFor(job.units)));
}
