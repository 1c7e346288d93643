/**
 * `noseroom keys`: every key of a brake in a job file on one page, and the picture that shows where to measure it.
 */
import { writeSvg } from "../drawing/svgPen.ts";
import { drawKeys } from "../pictures/keysDrawing.ts";
import { BRAKE_KEYS, keyLines } from "../words/keyWords.ts";
import { inkFor } from "./ink.ts";
import { TABLE_COLUMNS } from "./table.ts";
import { columnsOf, wrap } from "./wrap.ts";
import { type WriteOptions, writeOut } from "./writeOut.ts";

export interface KeysOptions extends WriteOptions {
  readonly svg?: string;
}

/**
 * Prints the page and gives the exit status, 0.
 * @throws Refusal where the picture cannot be written
 */
export async function runKeys(options: KeysOptions): Promise<number> {
  const ink = inkFor(process.stdout, process.env);
  const columns = Math.min(TABLE_COLUMNS, columnsOf(process.stdout));
  const lines = [
    ink.strong('Keys of a brake in a job file, under "brake"'),
    ...BRAKE_KEYS.flatMap((told) => {
      const [heading, how] = keyLines(told);
      return [heading, ...wrap(how, columns, "    ")];
    }),
    "",
    ...wrap(
      'A length is a number in the job\'s units, or "3/8", "1 1/2", "5 mm", "1/4 in". Everything counts from the bed\'s front top edge.',
      columns,
      "",
    ),
  ];
  if (options.svg !== undefined) {
    await writeOut(
      options.svg,
      writeSvg(drawKeys(), { title: "The keys of a brake", enlargement: 0.8 }),
      options,
    );
    lines.push(`Drawn: ${options.svg}`);
  } else lines.push("See them on a picture: noseroom keys --svg keys.svg");
  process.stdout.write(`${lines.join("\n")}\n`);
  return 0;
}
