/**
 * A pan as a whole part's job on the brake of another job: written to a file, and answered with the check.
 */
import type { FingerStock } from "../blank/fingers.ts";
import type { Pan } from "../blank/pan.ts";
import { wholeJobOf } from "../jobFile/readWhole.ts";
import type { WholeAnswer } from "../jobFile/wholeAnswer.ts";
import type { WholeFile } from "../jobFile/wholeSchema.ts";
import { writeWhole } from "../jobFile/writeJob.ts";
import { writtenLength } from "../jobFile/writtenLength.ts";
import { answerWhole, waysForWhole } from "./answerJob.ts";
import type { Ink } from "./ink.ts";
import { openJobOrWhole } from "./openJob.ts";
import { slipsRefused } from "./slips.ts";
import { cautionLines, wholeReportLines, wholeWayLines } from "./wholeReport.ts";
import { type WriteOptions, writeOut } from "./writeOut.ts";

export interface PanOnBrake extends WriteOptions {
  /** Job whose brake it is bent on. */
  readonly on: string;
  readonly output?: string;
}

interface AskedPan {
  readonly pan: Pan;
  readonly metal: string;
  readonly stock: readonly FingerStock[] | undefined;
}

/**
 * Checks the pan on the brake and writes its job where that is asked for.
 * @throws Refusal where the job with the brake can't be read, or the pan makes no job on it
 */
export async function panOnBrake(
  asked: AskedPan,
  options: PanOnBrake,
  look: { readonly ink: Ink; readonly columns: number },
): Promise<{ readonly answer: WholeAnswer; readonly lines: readonly string[] }> {
  const { file: other } = await openJobOrWhole(options.on);
  const file = fileOf(asked, other);
  const read = wholeJobOf(file);
  if (!read.ok) throw slipsRefused("the pan as a job", read.problems);
  const written: string[] = [];
  if (options.output !== undefined) {
    await writeOut(options.output, writeWhole(file), options);
    written.push("", `Written as a job: ${options.output}. Now: noseroom sheet ${options.output} --pdf FILE`);
  }
  const checked = await answerWhole(read.job);
  const answer = { ...checked, remedies: await waysForWhole(read.job, file, checked) };
  const { ink, columns } = look;
  const ways = answer.verdict === "hits" ? wholeWayLines(answer.remedies, ink, columns) : [];
  const report = wholeReportLines(read.job, answer, ink, columns);
  return { answer, lines: [...report, ...ways, ...written, ...cautionLines(ink, columns)] };
}

function fileOf(
  { pan, metal, stock }: AskedPan,
  { units, brake }: Pick<WholeFile, "units" | "brake">,
): WholeFile {
  const say = (mm: number) => writtenLength(mm, units);
  const wall = say(pan.wallMm);
  const fingers = stock?.map(({ widthMm, count }) => ({ width: say(widthMm), count }));
  return {
    noseroom: 1,
    units,
    part: {
      name: "pan",
      material: metal,
      thickness: say(pan.thicknessMm),
      insideRadius: say(pan.insideRadiusMm),
      dimensions: "outside",
      box: {
        width: say(pan.insideWidthMm + 2 * pan.thicknessMm),
        depth: say(pan.insideLengthMm + 2 * pan.thicknessMm),
        walls: { left: wall, right: wall, front: wall, back: wall },
      },
    },
    brake: fingers ? { ...brake, clamp: { ...brake.clamp, fingers } } : brake,
  };
}
