/**
 * `noseroom bar FILE`: a shop-made narrow brake for a job's part, or for the parts of a shop that no brake makes: how
 * thick its bar may be, what to buy and in which order to make it, with plans to print.
 */
import { toDxf } from "../drawing/dxfPen.ts";
import { drawNarrowBrake } from "../drawing/narrowBrake.ts";
import { narrowBrakePlans } from "../drawing/narrowBrakePlans.ts";
import { writePdf } from "../drawing/pdfPen.ts";
import { writeSvg } from "../drawing/svgPen.ts";
import { weightWords } from "../drawing/weightWords.ts";
import { withBrake } from "../job/brakeWays.ts";
import { readJob } from "../job/readJob.ts";
import type { JobFile } from "../job/schema.ts";
import { type BarForParts, barForParts } from "../job/shopBar.ts";
import { fitShop, unmadeFiles } from "../job/shopFit.ts";
import { shopMadeBar } from "../job/shopMadeBar.ts";
import { writeJob } from "../job/writeJob.ts";
import { formatLength } from "../units/length.ts";
import { type Ink, inkFor } from "./ink.ts";
import { jobText } from "./jobText.ts";
import { shopFrom } from "./openShop.ts";
import { paperOption } from "./paper.ts";
import { slipsRefused } from "./slips.ts";
import { table } from "./table.ts";
import { columnsOf, wrap } from "./wrap.ts";
import { writeOut } from "./writeOut.ts";

export interface BarOptions {
  readonly json?: boolean;
  readonly pdf?: string;
  readonly dxf?: string;
  readonly svg?: string;
  /** Job of the first part on the made brake. */
  readonly job?: string;
  readonly paper?: string;
}

/**
 * Runs the command and gives its exit status: 0 where there is a bar, or none is needed, else 1.
 * @throws Refusal for input that cannot be worked with, or a file that cannot be written
 */
export async function runBar(path: string, options: BarOptions): Promise<number> {
  const files = filesOf(path, await jobText(path));
  const found = barForParts(files);
  if (found === null) {
    const why = files.length === 0 ? "Your brakes make every part: no bar is needed." : whyNone(files);
    process.stdout.write(options.json ? "null\n" : `${why}\n`);
    return files.length === 0 ? 0 : 1;
  }
  const written = await writePlans(found, files, options);
  const made = found.makes.map((i) => files[i]?.part.name ?? "");
  if (options.json) {
    const { bar, brake } = found;
    process.stdout.write(
      `${JSON.stringify({ makes: made, limits: bar.limits, brake, design: bar.design }, null, 2)}\n`,
    );
  } else {
    const left = files.filter((_, i) => !found.makes.includes(i)).map(({ part }) => part.name);
    const ink = inkFor(process.stdout, process.env);
    const lines = barLines(found, made, left, ink, columnsOf(process.stdout));
    process.stdout.write(`${[...lines, ...(written.length > 0 ? ["", ...written] : [])].join("\n")}\n`);
  }
  return 0;
}

/** Why there is no bar, as far as the first part alone tells: where all together fail, so does each by itself. */
function whyNone(files: readonly JobFile[]): string {
  const alone = shopMadeBar(files.slice(0, 1));
  if (alone === undefined) {
    return "No clamp bar makes it: however thin, the part meets it, its holder, the bed, the leaf or itself.";
  }
  const { window, windowSentence, problems } = alone.design;
  if (window.thinnestMm > window.thickestMm) return windowSentence;
  const why = problems.length === 0 ? ["As planned, the made brake would not fold it."] : problems;
  return ["No brake can be planned from common stock.", ...why, windowSentence].join(" ");
}

/** The job's own file, or those of a shop's parts that no brake of the shop makes. */
function filesOf(path: string, text: string): JobFile[] {
  if (/"noseroomShop"\s*:/u.test(text)) {
    const shop = shopFrom(path, text);
    return unmadeFiles(shop, fitShop(shop).unmade);
  }
  const read = readJob(text);
  if (read.ok) return [read.file];
  throw slipsRefused(path, read.problems);
}

async function writePlans(
  { bar, brake, makes }: BarForParts,
  files: readonly JobFile[],
  options: BarOptions,
) {
  const { design } = bar;
  const written: string[] = [];
  if (options.pdf !== undefined) {
    const pages = narrowBrakePlans(design, paperOption(options.paper, design.requirements.units));
    await writeOut(options.pdf, await writePdf(pages, "Shop-made narrow brake"));
    written.push(`Plans to print: ${options.pdf}`);
  }
  if (options.dxf !== undefined) {
    await writeOut(options.dxf, toDxf(drawNarrowBrake(design)));
    written.push(`DXF in millimetres: ${options.dxf}`);
  }
  if (options.svg !== undefined) {
    await writeOut(options.svg, writeSvg(drawNarrowBrake(design), { title: "Shop-made narrow brake" }));
    written.push(`Drawn at true size: ${options.svg}`);
  }
  const first = files[makes[0] ?? 0];
  if (options.job !== undefined && first) {
    await writeOut(options.job, writeJob(withBrake(first, brake)));
    written.push(`${first.part.name} on it, to check and to measure anew once it is made: ${options.job}`);
  }
  return written;
}

/** The design as text, one string a line; sentences no wider than `columns`. */
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
    `Makes ${made.join(", ")}.${left.length === 0 ? "" : ` Not ${left.join(", ")}.`} Weight ${weightWords(design.weightKg, units)}.`,
    ...guess,
    ...section("Cut list", table(cuts, ["right", "left", "left", "right", "left"])),
    ...section(
      "Hardware",
      table(
        design.hardware.map(({ count, item, size, remark }) => [`${count}`, item, size, remark]),
        ["right", "left", "left", "left"],
      ),
    ),
    ...sentences("Making it", numbered(design.makingOrder)),
    ...sentences("Proving it", numbered(design.proving)),
    ...sentences("Where this stops", design.limits),
    "",
    ...wrap(design.cautions.join(" "), columns, "").map(ink.faint),
  ];
}
