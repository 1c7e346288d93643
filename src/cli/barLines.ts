/**
 * A narrow brake's design as text: the window, what to buy, what it must carry, how to make and prove it.
 * Formulas and their handbooks are in the plans and in the JSON; here each check has its figure and its limit.
 */

import { checkFigures } from "../narrowBrake/shopFigures.ts";
import { formatLength } from "../units/length.ts";
import type { BarForParts } from "../ways/shopBar.ts";
import { weightWords } from "../words/weightWords.ts";
import type { Ink } from "./ink.ts";
import { table } from "./table.ts";
import { wrap } from "./wrap.ts";

/** One string a line; sentences no wider than `columns`. `left` says of each part that is not made why. */
export function barLines(
  { bar }: BarForParts,
  made: readonly string[],
  left: readonly string[],
  ink: Ink,
  columns = Number.POSITIVE_INFINITY,
): string[] {
  const { design, guessedLengths, ranges } = bar;
  const { units } = design.requirements;
  const { plan } = design;
  if (plan === null) return left.flatMap((line) => wrap(line, columns, ""));
  const section = (title: string, lines: readonly string[]) =>
    lines.length === 0 ? [] : ["", ink.strong(title), ...lines.map((line) => `  ${line}`)];
  const sentences = (title: string, lines: readonly string[]) =>
    lines.length === 0 ? [] : ["", ink.strong(title), ...lines.flatMap((line) => wrap(line, columns, "  "))];
  const numbered = (lines: readonly string[]) => lines.map((line, i) => `${i + 1}. ${line}`);
  const cuts = plan.cutList.map(({ item, count, piece, stock, lengthMm, bought }) => [
    `${item}`,
    `${count} ×`,
    piece,
    stock.replace(` (${units})`, ""),
    bought && !piece.includes("screw") ? "" : `${formatLength(lengthMm, units)} ${units}`,
  ]);
  const guess =
    guessedLengths.length === 0
      ? []
      : [`Length guessed for ${guessedLengths.join(", ")}: give it in the file.`];
  const lowest = Math.min(...ranges.flatMap(({ bends }) => bends.map(({ lowDeg }) => lowDeg)));
  const highest = Math.max(...ranges.flatMap(({ bends }) => bends.map(({ highDeg }) => highDeg)));
  const degrees = (deg: number) => Number(deg.toFixed(1));
  return [
    ink.strong(design.windowSentence),
    ...wrap(`Makes ${made.join(", ")}. Weight ${weightWords(plan.weightKg, units)}.`, columns, ""),
    ...wrap(
      `Checked with the leaf at every bend's likely angle and at both ends of its range, ${degrees(lowest)} to ${degrees(highest)}° in all.`,
      columns,
      "",
    ),
    ...left.flatMap((line) => wrap(line, columns, "")),
    ...guess,
    ...section(
      "Cut list; work on each piece and its drawing in --pdf",
      table(cuts, ["right", "right", "left", "left", "right"]),
    ),
    ...sentences("Tools", [`${plan.tools.join(", ")}.`]),
    ...sentences("What it carries", plan.carries),
    ...section(
      "Checks, each figure against its limit; formulas and handbooks in --pdf and --json",
      table(
        plan.checks.map((check) => [check.member, check.check, checkFigures(check, units)]),
        ["left", "left", "left"],
      ),
    ),
    ...sentences("Not checked", plan.notChecked),
    ...sentences("Crown", plan.crown),
    ...sentences("Taken for granted; options of this command change the figures", plan.assumptions),
    ...sentences("Making it", numbered(plan.making.map(({ words }) => words))),
    ...sentences("Proving it", numbered(plan.proving)),
    ...sentences("Where this stops", plan.limits),
    "",
    ...wrap(plan.cautions.join(" "), columns, "").map(ink.faint),
  ];
}
