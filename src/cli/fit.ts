/**
 * `noseroom fit SHOP`: every part of a shop on every brake, and the one sentence that decides what to do.
 */

import type { FitCell, ShopFit } from "../jobFile/shopFit.ts";
import type { LengthUnit } from "../units/length.ts";
import { CAUTIONS } from "../words/cautions.ts";
import { cellWords, foldingSentences, shopSentence } from "../words/shopWords.ts";
import { answerShop } from "./answerJob.ts";
import { type Ink, inkFor } from "./ink.ts";
import { openShop } from "./openShop.ts";
import { table } from "./table.ts";
import { columnsOf, wrap } from "./wrap.ts";

/**
 * Runs the command and gives its exit status: 0 where every part is made on some brake of the shop, else 1.
 * @throws Refusal for input that cannot be worked with
 */
export async function runFit(path: string, options: { readonly json?: boolean }): Promise<number> {
  const shop = await openShop(path);
  const { units } = shop;
  const fit = await answerShop(shop);
  const sentence = shopSentence(fit, units);
  if (options.json) process.stdout.write(`${JSON.stringify({ sentence, ...fit }, null, 2)}\n`);
  else {
    const ink = inkFor(process.stdout, process.env);
    const lines = fitLines(fit, sentence, units, path, { ink, columns: columnsOf(process.stdout) });
    process.stdout.write(`${lines.join("\n")}\n`);
  }
  return fit.unmade.length === 0 ? 0 : 1;
}

/** The table as text, one string a line; sentences no wider than `columns`. */
function fitLines(
  fit: ShopFit,
  sentence: string,
  units: LengthUnit,
  path: string,
  { ink, columns }: { readonly ink: Ink; readonly columns: number },
): string[] {
  const headings = ["", ...fit.brakes];
  const rows = fit.parts.map((part, i) => [
    part,
    ...(fit.cells[i] ?? []).map((cell) => cellLine(cell, units)),
  ]);
  const how = foldingSentences(fit);
  const because = fit.cells.flatMap((row, i) =>
    row.flatMap((cell, b) =>
      cell.because === null ? [] : [`${fit.parts[i]} on ${fit.brakes[b]}: ${cell.because}`],
    ),
  );
  return [
    ...wrap(sentence, columns, "").map(ink.strong),
    "",
    ...table(
      [headings, ...rows],
      headings.map(() => "left" as const),
    ),
    ...(because.length > 0
      ? ["", ink.strong("Not for that brake"), ...because.flatMap((line) => wrap(line, columns, "  "))]
      : []),
    ...(how.length > 0
      ? [
          "",
          ink.strong("How to fold them"),
          ...how.flatMap((line) => wrap(line, columns, "  ")),
          "",
          "Print the sheet of one, to lie beside the brake:",
          `  noseroom sheet ${path} --part NAME --brake NAME --pdf sheet.pdf`,
        ]
      : []),
    "",
    ...wrap(CAUTIONS, columns, "").map(ink.faint),
  ];
}

/** Why a part is not for a brake stands below the table. */
function cellLine(cell: FitCell, units: LengthUnit): string {
  const [finding, more] = cellWords(cell, units);
  return cell.verdict === "unfit" ? finding : `${finding}, ${more}`;
}
