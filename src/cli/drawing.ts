/**
 * `noseroom drawing FLAT.dxf --on JOB`: a flat pattern from a drawing, bent on the brake and out of the sheet of another job;
 * written as a job, and answered with the check.
 */
import { angleList } from "../jobFile/drawnAngles.ts";
import { drawnPattern } from "../jobFile/drawnPattern.ts";
import { wholeJobOf } from "../jobFile/readWhole.ts";
import type { WholeFile } from "../jobFile/wholeSchema.ts";
import { writeWhole } from "../jobFile/writeJob.ts";
import { jobName, jobText } from "./jobText.ts";
import { openJobOrWhole } from "./openJob.ts";
import { unitsOption } from "./optionLengths.ts";
import { Refusal } from "./refusal.ts";
import { slipsRefused } from "./slips.ts";
import { checkWholeJob } from "./wholeCheck.ts";
import { type WriteOptions, writeOut } from "./writeOut.ts";

export interface DrawingOptions extends WriteOptions {
  /** Job with brake and sheet. */
  readonly on: string;
  readonly bends?: string;
  readonly cut?: string;
  readonly angles?: string;
  readonly drawnIn?: string;
  readonly output?: string;
  readonly json?: boolean;
}

/**
 * Prints the answer and gives the exit status of a check.
 * @throws Refusal for a drawing or a job that cannot be read
 */
export async function runDrawing(path: string, options: DrawingOptions): Promise<number> {
  const { on, bends, cut, output } = options;
  const { file: other } = await openJobOrWhole(on);
  const angles = options.angles === undefined ? undefined : angleList(options.angles);
  if (angles && "wrong" in angles)
    throw new Refusal(
      `--angles has "${angles.wrong}"; it may be "90 up" for all, or "1: 90 up, 2: 45 down".`,
    );
  const drawn = drawnPattern(await jobText(path), other.units, {
    ...(bends !== undefined && { bends }),
    ...(cut !== undefined && { cut }),
    ...(angles && { angles }),
    ...(options.drawnIn !== undefined && { drawnIn: unitsOption(options.drawnIn, "mm", "--drawn-in") }),
  });
  if (!drawn.ok) throw new Refusal(...drawn.sentences.map((words) => `${jobName(path)}: ${words}`));
  const { material, thickness, insideRadius, kFactor } = other.part as WholeFile["part"];
  const file: WholeFile = {
    noseroom: 1,
    units: other.units,
    part: {
      name: jobName(path)
        .replace(/^.*[/\\]/u, "")
        .replace(/\.dxf$/iu, ""),
      material,
      thickness,
      insideRadius,
      ...(kFactor !== undefined && { kFactor }),
      pattern: drawn.pattern,
    },
    brake: other.brake,
  };
  const read = wholeJobOf(file);
  if (!read.ok) throw slipsRefused(path, read.problems);
  const remarks = [...drawn.remarks];
  if (output !== undefined) {
    await writeOut(output, writeWhole(file), options);
    remarks.push(`Written as a job: ${output}.`);
  }
  if (remarks.length > 0 && !options.json) process.stdout.write(`${remarks.join("\n")}\n\n`);
  return checkWholeJob({ whole: read.job, file }, { ...(options.json && { json: true }) });
}
