/**
 * `noseroom pan --inside "6 x 8 1/4 in" --wall 2`: the blank of a pan with its relief holes, and the fingers that go
 * between the walls folded first.
 */
import { chooseFingers, type FingerChoice, type FingerStock, gapBesideWalls } from "../blank/fingers.ts";
import { layOutPan, type Pan, type PanBlank, type PanSide } from "../blank/pan.ts";
import { metalNamed, metalNames } from "../metal/metals.ts";
import { drawPan } from "../pictures/panDrawing.ts";
import { parseThickness, thicknessHint } from "../units/gauge.ts";
import { formatLength } from "../units/length.ts";
import type { Mm } from "../units/quantity.ts";
import { CAUTIONS } from "../words/cautions.ts";
import { lengthWords, placeFigures } from "../words/lengthWords.ts";
import { DEBURR, DRAW_LINES } from "../words/markingWords.ts";
import { type DrawnFiles, writeDrawn } from "./drawnFiles.ts";
import { inkFor } from "./ink.ts";
import { lengthOption, pairOption, unitsOption } from "./optionLengths.ts";
import { panOnBrake } from "./panOnBrake.ts";
import { panPlan, planText } from "./planJson.ts";
import { Refusal } from "./refusal.ts";
import { table } from "./table.ts";
import { columnsOf, wrap } from "./wrap.ts";

type Units = "mm" | "in";

const USUAL_METAL = "mild steel";

export interface PanOptions extends DrawnFiles {
  readonly inside: string;
  readonly wall: string;
  readonly thickness: string;
  readonly radius: string;
  readonly metal?: string;
  readonly set?: string;
  /** Job with the brake to check it on. */
  readonly on?: string;
  /** File for the box as a job. */
  readonly output?: string;
  readonly units?: string;
  readonly json?: boolean;
}

/**
 * Prints the blank and gives the exit status: 0, or 1 where the set has no fingers that fit between the walls.
 * @throws Refusal for input that cannot be worked with, or a file that cannot be written
 */
export async function runPan(options: PanOptions): Promise<number> {
  const units = unitsOption(options.units);
  const pan = panOf(options, units);
  const blank = laidOut(pan);
  const ink = inkFor(process.stdout, process.env);
  const { across, along, holes, allowanceMm } = blank;
  const size = `${lengthWords(across.sizeMm, units)} by ${lengthWords(along.sizeMm, units)}`;
  const hole = holes[0]?.diameterMm ?? 0;
  const lines = [
    ink.strong(`Blank of the pan: ${size}.`),
    `Relief holes ${lengthWords(hole, units)} across where the inside bend tangent lines cross; bend allowance ${lengthWords(allowanceMm, units)}.`,
    "Marked face up, each way measured from its own edge.",
    ...[DRAW_LINES, DEBURR].flatMap((sentence) => wrap(sentence, columnsOf(process.stdout), "")),
    "",
    ...table(
      [[`from the edge, ${units}`, "", ""], ...rows("width", across, units), ...rows("length", along, units)],
      ["left", "left", "left"],
    ),
  ];
  const stock = options.set === undefined ? undefined : stockOf(options.set, units);
  const fingers = stock && fewestFingers(pan, stock);
  if (options.set !== undefined) lines.push("", ...fingerLines(pan, fingers, units));
  if (options.on === undefined && options.output !== undefined)
    throw new Refusal("--output wants --on beside it, a job with the brake that you bend the pan on.");
  const metal = options.metal ?? USUAL_METAL;
  const columns = columnsOf(process.stdout);
  const checked =
    options.on === undefined
      ? undefined
      : await panOnBrake({ pan, metal, stock }, { ...options, on: options.on }, { ink, columns });
  lines.push(...(await writeDrawn(drawPan(blank, units), "Blank of a pan", units, options)), "");
  // The check ends with the cautions itself.
  lines.push(...(checked ? checked.lines : wrap(CAUTIONS, columns, "").map(ink.faint)));
  const plan = { ...panPlan(blank, fingers), ...(checked && { check: checked.answer }) };
  process.stdout.write(options.json ? planText(plan) : `${lines.join("\n")}\n`);
  if (checked) return checked.answer.verdict === "hits" ? 1 : 0;
  return options.set !== undefined && fingers === undefined ? 1 : 0;
}

function laidOut(pan: Pan): PanBlank {
  try {
    return layOutPan(pan);
  } catch (reason) {
    if (reason instanceof RangeError) throw new Refusal(`That pan can't be made: ${reason.message}.`);
    throw reason;
  }
}

function rows(way: string, { bends, sightLinesMm, sizeMm }: PanSide, units: Units): string[][] {
  const row = (what: string, at: Mm) => [way, what, placeFigures(at, units).join(" ")];
  const lines = bends.flatMap(({ tangentsMm: [near, far] }, i) => [
    row("bend tangent line", near),
    row("sight line, bottom clamped", sightLinesMm[i] ?? near),
    row("bend tangent line", far),
  ]);
  return [...lines, row("whole", sizeMm)];
}

interface FingersBetween {
  readonly insideMm: Mm;
  readonly choice: FingerChoice;
}

/** Either pair of walls may be folded first; the fingers then stand between them. The fewer fingers, the better. */
function fewestFingers(pan: Pan, stock: readonly FingerStock[]): FingersBetween | undefined {
  const gap = gapBesideWalls(pan.insideRadiusMm);
  const choices = [pan.insideWidthMm, pan.insideLengthMm].flatMap((insideMm) => {
    const choice = chooseFingers(stock, insideMm, gap);
    return choice === undefined ? [] : [{ insideMm, choice }];
  });
  const [best] = choices.sort((a, b) => a.choice.widthsMm.length - b.choice.widthsMm.length);
  return best;
}

function fingerLines(pan: Pan, best: FingersBetween | undefined, units: Units): readonly string[] {
  if (best === undefined) {
    const gap = gapBesideWalls(pan.insideRadiusMm);
    const room = `${lengthWords(gap.leastMm, units)} to ${lengthWords(gap.mostMm, units)}`;
    return [`No choice of these fingers fills either length and leaves ${room} beside the walls.`];
  }
  const first = `Fold the two walls that stand ${lengthWords(best.insideMm, units)} apart first.`;
  return [first, fingerSentence(best.choice, units)];
}

function fingerSentence({ widthsMm, gapMm }: FingerChoice, units: Units): string {
  const widths = widthsMm.map((width) => formatLength(width, units));
  const between = `Then put fingers of ${widths.join(" + ")} ${units} between them`;
  return `${between}; ${lengthWords(gapMm, units)} stays free, half at each end.`;
}

function panOf(options: PanOptions, units: Units): Pan {
  const [insideWidthMm, insideLengthMm] = pairOption(options.inside, "--inside", units, '"6 x 8 1/4 in"');
  const metal = metalNamed(options.metal ?? USUAL_METAL);
  if (metal === undefined) {
    throw new Refusal(`--metal is "${options.metal}"; it may be one of ${metalNames().join(", ")}.`);
  }
  const thicknessMm = parseThickness(options.thickness, units);
  if (thicknessMm === undefined || thicknessMm <= 0) {
    throw new Refusal(`--thickness is "${options.thickness}"; it may be ${thicknessHint}.`);
  }
  return {
    insideWidthMm,
    insideLengthMm,
    wallMm: lengthOption(options.wall, "--wall", units),
    thicknessMm,
    insideRadiusMm: lengthOption(options.radius, "--radius", units),
    kFactor: metal.kFactor,
  };
}

/** "4, 3, 2 x2, 1 1/2": widths with commas between, each with how many there are. */
function stockOf(written: string, units: Units): readonly FingerStock[] {
  const pieces = written.split(",").filter((one) => one.trim() !== "");
  if (pieces.length === 0) {
    throw new Refusal(`--set is "${written}"; it may be finger widths with commas between, "4, 3, 2 x3".`);
  }
  return pieces.map((one) => {
    const [width = "", times] = one.split(/\s*[x×]\s*/iu);
    const count = times === undefined ? 1 : Number(times);
    const widthMm = lengthOption(width, "--set", units);
    if (!(Number.isInteger(count) && count > 0) || widthMm === 0) {
      throw new Refusal(`--set has "${one.trim()}"; it may be a width, or a width and how many: "2 x3".`);
    }
    return { widthMm, count };
  });
}
