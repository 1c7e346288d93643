/**
 * One SVG a step into a folder, which is made where it is not there yet.
 */
import { join } from "node:path";
import type { Drawing } from "../drawing/model.ts";
import { writeSvg } from "../drawing/svgPen.ts";
import type { Answer } from "../jobFile/answer.ts";
import type { Job } from "../jobFile/job.ts";
import { drawStep } from "../pictures/step.ts";
import { makeFolder, type WriteOptions, writeAllOut } from "./writeOut.ts";

/** A picture is about as wide as a page. */
const PAGE_MM = 180;
const SCALES = [20, 15, 12, 10, 8, 6, 5, 4, 3, 2.5, 2, 1.5, 1.25] as const;

/** The largest round scale at which the drawing stays within a page's width; true size where none does. */
export function pageScale(drawing: Drawing): number {
  const width = drawing.window.max.x - drawing.window.min.x;
  return SCALES.find((scale) => width * scale <= PAGE_MM) ?? 1;
}

/**
 * Writes the pictures and gives their paths in order.
 * @throws Refusal where the folder or a file cannot be written
 */
export async function writeStepPictures(
  folder: string,
  job: Job,
  answer: Answer,
  options: WriteOptions,
): Promise<string[]> {
  await makeFolder(folder);
  const pictures = answer.order.map((step, index): [string, string] => {
    const drawing = drawStep(job, answer, index);
    const file = join(folder, `step-${String(index + 1).padStart(2, "0")}-bend-${step.bend}.svg`);
    const title = `${job.part.name}, step ${index + 1}`;
    return [file, writeSvg(drawing, { title, enlargement: pageScale(drawing) })];
  });
  await writeAllOut(pictures, options);
  return pictures.map(([file]) => file);
}
