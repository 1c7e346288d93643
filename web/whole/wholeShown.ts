/**
 * A whole part's answer as the card shows it: the words of the command's check, blank and bends as data. Made in the worker.
 */
import { outlinePath } from "../../src/drawing/pathData.ts";
import type { Verdict } from "../../src/jobFile/answer.ts";
import type { WholeAnswer } from "../../src/jobFile/wholeAnswer.ts";
import type { WholeJob } from "../../src/jobFile/wholeJob.ts";
import type { Metal } from "../../src/metal/metal.ts";
import { filletedOutline } from "../../src/plane/fillet.ts";
import type { Mm } from "../../src/units/quantity.ts";
import { wholeBlankSentences, wholeBlankTable, wholeBlankTitle } from "../../src/words/wholeBlankWords.ts";
import { wholeJobSentences, wholeSections } from "../../src/words/wholeReport.ts";
import { strokeSentences, strokeTitle } from "../../src/words/wholeStrokeWords.ts";
import { faceCalled, wholeVerdict } from "../../src/words/wholeWords.ts";

export interface StrokeShown {
  readonly verdict: Verdict;
  readonly title: string;
  readonly sentences: readonly string[];
}

export interface WholeShown {
  readonly verdict: Verdict;
  readonly sentence: string;
  /** What the part is, and how many orders work. */
  readonly facts: readonly string[];
  readonly strokes: readonly StrokeShown[];
  /** The stroke that fails, or has least to spare. */
  readonly worst: number;
  /** Headings with what is said under them. */
  readonly sections: readonly (readonly [title: string, sentences: readonly string[]])[];
  readonly blank: {
    readonly title: string;
    /** Headings first. */
    readonly table: readonly (readonly string[])[];
    readonly sentences: readonly string[];
    /** Outline and holes, and the box round them: mm, y down. */
    readonly path: string;
    readonly box: { readonly x: Mm; readonly y: Mm; readonly wide: Mm; readonly high: Mm };
  };
  /** Names of the faces, in their order. */
  readonly faces: readonly string[];
  readonly answer: WholeAnswer;
  readonly bends: readonly { readonly turn: "up" | "down" }[];
  readonly metal: Metal;
  readonly kFactor: number;
  readonly thicknessMm: Mm;
}

/** The answer in words and figures. */
export function wholeShown(job: WholeJob, answer: WholeAnswer): WholeShown {
  const { part } = job;
  return {
    verdict: answer.verdict,
    sentence: wholeVerdict(job, answer),
    facts: wholeJobSentences(job, answer),
    strokes: answer.order.map(({ verdict }, i) => ({
      verdict,
      title: strokeTitle(answer, i),
      sentences: strokeSentences(job, answer, i),
    })),
    worst: worstStroke(answer),
    sections: wholeSections(job, answer),
    blank: {
      title: wholeBlankTitle(job, answer),
      table: wholeBlankTable(job, answer),
      sentences: wholeBlankSentences(job, answer),
      path: [answer.blank.outline, ...answer.blank.holes].map(ringPath).join(""),
      box: boxOf(answer.blank.outline),
    },
    faces: answer.faces.map(({ face }) => faceCalled(answer, face)),
    answer,
    bends: (job.finished ?? part).sheet.pattern.bends.map(({ turn }) => ({ turn })),
    metal: part.metal,
    kFactor: part.kFactor,
    thicknessMm: part.thicknessMm,
  };
}

function ringPath(ring: WholeAnswer["blank"]["outline"]): string {
  const corners = ring.map(([x, y, radius]) => ({ x, y, ...(radius !== undefined && { radius }) }));
  const made = filletedOutline(corners);
  return made.ok ? outlinePath(made.outline) : "";
}

function boxOf(outline: WholeAnswer["blank"]["outline"]): WholeShown["blank"]["box"] {
  const [xs, ys] = [outline.map(([x]) => x), outline.map(([, y]) => y)];
  const [x, top] = [Math.min(...xs), Math.max(...ys)];
  return { x, y: -top, wide: Math.max(...xs) - x, high: top - Math.min(...ys) };
}

function worstStroke({ order }: WholeAnswer): number {
  const blocked = order.findIndex(({ verdict }) => verdict === "hits");
  if (blocked >= 0) return blocked;
  const room = order.map(({ clearance }) => clearance ?? Number.POSITIVE_INFINITY);
  return Math.max(0, room.indexOf(Math.min(...room)));
}
