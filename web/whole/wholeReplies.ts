/**
 * What the worker replies about a whole part: its answer, what would let it fold, its drawings and its pages.
 */
import { checkWhole } from "../../src/answer/wholeCheck.ts";
import { toDxf } from "../../src/drawing/dxfPen.ts";
import { paperFor } from "../../src/drawing/pageSize.ts";
import { writeSvg } from "../../src/drawing/svgPen.ts";
import { templatePages } from "../../src/drawing/template.ts";
import { withCheckSquare } from "../../src/drawing/trueSize.ts";
import type { WholeJob } from "../../src/jobFile/wholeJob.ts";
import type { WholeFile } from "../../src/jobFile/wholeSchema.ts";
import { withKeys } from "../../src/jobFile/wholeWay.ts";
import type { Watch } from "../../src/order/judge.ts";
import { drawWholeBlank } from "../../src/pictures/wholeBlankDrawing.ts";
import { wholeSheet } from "../../src/pictures/wholeSheet.ts";
import { wholeWays } from "../../src/ways/wholeWays.ts";
import type { Question, Reply, Way } from "../worker/messages.ts";
import { paperPages } from "../worker/paperPages.ts";
import { wholeShown } from "./wholeShown.ts";

interface ReadWhole {
  readonly job: WholeJob;
  readonly file: WholeFile;
}

/** The reply to a question about a whole part; undefined where a section alone is asked about. */
export function wholeReply(question: Question, { job, file }: ReadWhole, watch: Watch): Reply | undefined {
  const { id, kind } = question;
  const { units, part } = job;
  if (kind === "check") return { id, kind: "whole", whole: wholeShown(job, checkWhole(job, watch)) };
  if (kind === "sheet") {
    const pages = wholeSheet(job, checkWhole(job, watch), paperFor(units));
    return { id, kind: "sheet", pages: paperPages(pages) };
  }
  if (kind === "blank") {
    const drawing = drawWholeBlank(job, checkWhole(job, watch));
    const title = `Blank of ${part.name}`;
    if (question.as === "pages") {
      const pages = templatePages(drawing, paperFor(units), title, units);
      return { id, kind: "sheet", pages: paperPages(pages) };
    }
    const text =
      question.as === "dxf" ? toDxf(drawing) : writeSvg(withCheckSquare(drawing, units), { title });
    return { id, kind: "written", text };
  }
  if (kind === "ways") {
    const ways = wholeWays(file, job, checkWhole(job, watch), watch).map(({ sentence, changes }): Way => {
      return { sentence, because: null, file: withKeys(file, changes) as unknown as Way["file"] };
    });
    return { id, kind: "ways", ways };
  }
  return undefined;
}
