/**
 * A narrow brake's design as text: the window, what to buy, what it must carry, how to make and prove it.
 * Formulas and their handbooks are in the plans and in the JSON; here each check has its figure and its limit.
 */

import { forceWords, torqueWords } from "../narrowBrake/forceWords.ts";
import type { NarrowBrake } from "../narrowBrake/narrowBrake.ts";
import { checkFigures } from "../narrowBrake/plans/checkFigures.ts";
import { CROWN_PLACES, crownRows } from "../narrowBrake/plans/crownTable.ts";
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
  const { design, guessedLengths } = bar;
  const { units } = design.requirements;
  const section = (title: string, lines: readonly string[]) =>
    lines.length === 0 ? [] : ["", ink.strong(title), ...lines.map((line) => `  ${line}`)];
  const sentences = (title: string, lines: readonly string[]) =>
    lines.length === 0 ? [] : ["", ink.strong(title), ...lines.flatMap((line) => wrap(line, columns, "  "))];
  const numbered = (lines: readonly string[]) => lines.map((line, i) => `${i + 1}. ${line}`);
  const cuts = design.cutList.map(({ piece, count, stock, lengthMm, work }) => [
    `${count}`,
    piece,
    stock,
    `${formatLength(lengthMm, units)} ${units}`,
    work,
  ]);
  const guess =
    guessedLengths.length === 0
      ? []
      : [`Length guessed for ${guessedLengths.join(", ")}: give it in the file.`];
  return [
    ink.strong(design.windowSentence),
    ...wrap(`Makes ${made.join(", ")}. Weight ${weightWords(design.weightKg, units)}.`, columns, ""),
    ...left.flatMap((line) => wrap(line, columns, "")),
    ...guess,
    ...section("Cut list", table(cuts, ["right", "left", "left", "right", "left"])),
    ...section(
      "Hardware",
      table(
        design.hardware.map(({ count, item, size, remark }) => [`${count}`, item, size, remark]),
        ["right", "left", "left", "left"],
      ),
    ),
    ...sentences("Tools", [`${design.tools.join(", ")}.`]),
    ...sentences("What it carries", carried(design)),
    ...section(
      "Checks, each figure against its limit; formulas and handbooks in --pdf and --json",
      table(
        design.checks.map((check) => [check.member, check.check, checkFigures(check, units)]),
        ["left", "left", "left"],
      ),
    ),
    ...sentences("Bow, what it does to the bend, and the crown that cancels it", bows(design)),
    ...section(
      "Packing for the crown, millimetres, by how far along the length",
      table(
        [["between", ...CROWN_PLACES], ...crownRows(design)],
        ["left", "right", "right", "right", "right", "right"],
      ),
    ),
    ...sentences("Taken for granted; options of this command change the figures", design.assumptions),
    ...sentences("Making it", numbered(design.makingOrder)),
    ...sentences("Proving it", numbered(design.proving)),
    ...sentences("Where this stops", design.limits),
    "",
    ...wrap(design.cautions.join(" "), columns, "").map(ink.faint),
  ];
}

/** Loads in words: clamp, leaf, handles, bolts, screws, vise. */
function carried({ plan, loads, requirements }: NarrowBrake): string[] {
  if (plan === null) return [];
  const { units } = requirements;
  const force = (newtons: number) => forceWords(newtons, units);
  const { bolts } = plan.holder;
  const { screws, tongue, handle } = plan;
  return [
    `Clamp: ${force(loads.clampN.value)} along the bend, asked for by ${loads.clampN.part}; leaf: ${force(loads.leafN.value)}, by ${loads.leafN.part}. The load factor is in both.`,
    `Bolts: ${force(bolts.tensionN)} each while folding, so tighten each to ${torqueWords(bolts.torqueNm, units)}, which pulls with ${force(bolts.preloadN)}.`,
    `Handles: ${formatLength(handle.reachMm, units)} ${units} from pivot to hand, for ${force(handle.handForceN)} of both hands together.`,
    `Setback screws: ${screws.count} of ${screws.thread.name}, ${force(screws.pushEachN)} on each; ${formatLength(screws.travelMm, units)} ${units} of travel is ${Number(screws.turns.toFixed(1))} turns.`,
    `Vise: pulling the handles turns the tongue with ${torqueWords(tongue.turningNm, units)} at the jaws, which must grip with ${force(tongue.gripN)}; ${force(tongue.viseN)} is taken for the vise.`,
  ];
}

function bows({ bows: reports }: NarrowBrake): string[] {
  return reports.map(({ sentence }) => `${sentence.charAt(0).toUpperCase()}${sentence.slice(1)}`);
}
