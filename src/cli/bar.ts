/**
 * `noseroom bar FILE`: a shop-made narrow brake for a job's part, or for the parts of a shop that no brake makes: how
 * thick its bar may be, what to buy and in which order to make it, with plans to print.
 */
import { join } from "node:path";
import { writePdf } from "../drawing/pdfPen.ts";
import { writeSvg } from "../drawing/svgPen.ts";
import { readAnyJob } from "../jobFile/readAnyJob.ts";
import { isShop } from "../jobFile/readShop.ts";
import type { JobFile } from "../jobFile/schema.ts";
import type { ShopFile } from "../jobFile/shopFile.ts";
import { writeJob } from "../jobFile/writeJob.ts";
import type { Refused } from "../narrowBrake/narrowBrake.ts";
import { drawnBrake, narrowBrakePlans } from "../narrowBrake/plans/narrowBrakePlans.ts";
import { assemblyStl, pieceFiles } from "../narrowBrake/plans/pieceFiles.ts";
import { withBrake } from "../ways/brakeWays.ts";
import { type BarChoice, type BarForParts, barForParts } from "../ways/shopBar.ts";
import { fitShop, unmadeFiles } from "../ways/shopFit.ts";
import { barLines } from "./barLines.ts";
import { barWishes, type WishOptions } from "./barWishes.ts";
import { type DrawnFiles, paperOption } from "./drawnFiles.ts";
import { inkFor } from "./ink.ts";
import { jobText } from "./jobText.ts";
import { wholeRefused } from "./openJob.ts";
import { shopFrom } from "./openShop.ts";
import { slipsRefused } from "./slips.ts";
import { columnsOf, wrap } from "./wrap.ts";
import { makeFolder, writeAllOut, writeOut } from "./writeOut.ts";

const ONE_SECTION =
  "A narrow brake is planned for sections: write the flats and bends across the wall and lip that don't fold as a job of their own, and give it to bar.";

export interface BarOptions extends WishOptions, DrawnFiles {
  readonly stl?: string;
  readonly json?: boolean;
  /** Job of the first part on the made brake. */
  readonly job?: string;
  /** Shop file of the made brake and all parts that it makes. */
  readonly shop?: string;
}

/**
 * Runs the command and gives its exit status: 0 where there is a bar, or none is needed, else 1.
 * @throws Refusal for input that cannot be worked with, or a file that cannot be written
 */
export async function runBar(path: string, options: BarOptions): Promise<number> {
  const { files, units } = filesOf(path, await jobText(path));
  const wishes = barWishes(options, units);
  if (files.length === 0) {
    process.stdout.write(options.json ? "null\n" : "Your brakes make every part: no bar is needed.\n");
    return 0;
  }
  const choice = barForParts(files, wishes);
  const left = leftOf(choice, files);
  const columns = columnsOf(process.stdout);
  if (choice.found === null) {
    // With one part its name says nothing; --json tells the reasons as well.
    const lines = files.length === 1 ? left.map(({ because }) => because) : left.map(leftWords);
    const other = files.length === 1 ? `noseroom ways ${path}` : "noseroom ways, for each of them";
    const text = [...lines, `Another change that may help: ${other}`]
      .flatMap((line) => wrap(line, columns, ""))
      .join("\n");
    const refused = left[0]?.refused ?? null;
    process.stdout.write(
      options.json
        ? `${JSON.stringify({ makes: [], left, refused, assembly: null }, null, 2)}\n`
        : `${text}\n`,
    );
    return 1;
  }
  const { found } = choice;
  const written = await writePlans(found, files, options);
  const made = found.makes.map((i) => files[i]?.part.name ?? "");
  if (options.json) {
    const { bar, brake } = found;
    const { limits, design, outcomes, ranges } = bar;
    const { plan, ...asked } = design;
    const { assembly = null, ...rest } = plan ?? {};
    const answer = {
      makes: made,
      left,
      refused: null,
      limits,
      brake,
      outcomes,
      ranges,
      assembly,
      design: { ...asked, plan: rest },
    };
    process.stdout.write(`${JSON.stringify(answer, null, 2)}\n`);
  } else {
    const lines = barLines(found, made, left.map(leftWords), inkFor(process.stdout, process.env), columns);
    process.stdout.write(`${[...lines, ...(written.length > 0 ? ["", ...written] : [])].join("\n")}\n`);
  }
  return 0;
}

interface Left {
  readonly part: string;
  readonly because: string;
  /** Longest in mm; 0 where no length would do. */
  readonly refused: { readonly why: string; readonly longest: number };
}

function leftOf({ left }: BarChoice, files: readonly JobFile[]): Left[] {
  return left.map(({ part, because, refused }) => ({
    part: files[part]?.part.name ?? "",
    because,
    refused: refusedOf(refused),
  }));
}

function refusedOf({ why, longestMm }: Refused): Left["refused"] {
  return { why, longest: longestMm };
}

function leftWords({ part, because }: Left): string {
  return `Not ${part}. ${because}`;
}

/** The job's own file, or those of a shop's parts that no brake of the shop makes. */
function filesOf(path: string, text: string): { files: JobFile[]; units: JobFile["units"] } {
  if (isShop(text)) {
    const shop = shopFrom(path, text);
    return { files: unmadeFiles(shop, fitShop(shop).unmade), units: shop.units };
  }
  const read = readAnyJob(text);
  if (!read.ok) throw slipsRefused(path, read.problems);
  if (read.kind === "whole") throw wholeRefused(path, ONE_SECTION);
  return { files: [read.file], units: read.file.units };
}

async function writePlans(
  { bar, brake, makes }: BarForParts,
  files: readonly JobFile[],
  options: BarOptions,
) {
  const { design } = bar;
  const { plan } = design;
  const written: string[] = [];
  if (options.pdf !== undefined) {
    const pages = narrowBrakePlans(design, paperOption(options.paper, design.requirements.units));
    await writeOut(options.pdf, await writePdf(pages, "Shop-made narrow brake"), options);
    written.push(`Plans to print: ${options.pdf}`);
  }
  if (options.dxf !== undefined) {
    const folder = options.dxf;
    await makeFolder(folder);
    const pieces = plan ? pieceFiles(plan) : [];
    await writeAllOut(
      pieces.map(({ name, text }) => [join(folder, name), text] as const),
      options,
    );
    written.push(`DXF in millimetres, one file for each of ${pieces.length} pieces: ${folder}`);
  }
  if (options.stl !== undefined && plan) {
    await writeOut(options.stl, assemblyStl(plan.assembly), options);
    written.push(`STL of the whole brake, millimetres: ${options.stl}`);
  }
  if (options.svg !== undefined) {
    await writeOut(options.svg, writeSvg(drawnBrake(design), { title: "Shop-made narrow brake" }), options);
    written.push(`Picture of the brake: ${options.svg}`);
  }
  const made = makes.flatMap((i) => files[i] ?? []);
  const [first] = made;
  if (options.job !== undefined) {
    const jobs = made.map((file, i): [string, string] => [
      made.length === 1 ? options.job! : numberedPath(options.job!, i + 1),
      writeJob(withBrake(file, brake)),
    ]);
    await writeAllOut(jobs, options);
    written.push(
      ...made.map(({ part }, i) => `${part.name} on it: ${jobs[i]![0]}`),
      "Once it is made, put what you measure in the place of its figures and run noseroom check on each.",
    );
  }
  if (options.shop !== undefined && first) {
    const shop: ShopFile = {
      noseroomShop: 1,
      units: first.units,
      brakes: [brake],
      parts: made.map(({ part }) => part),
    };
    await writeOut(options.shop, `${JSON.stringify(shop, null, 2)}\n`, options);
    written.push(
      `Brake and parts: ${options.shop}. Once it is made, put what you measure in the place of its figures and run: noseroom fit ${options.shop}`,
    );
  }
  return written;
}

/** @example numberedPath("jobs/made.json", 2) // "jobs/made-2.json" */
function numberedPath(path: string, number: number): string {
  return /\.[^./\\]+$/u.test(path) ? path.replace(/(\.[^./\\]+)$/u, `-${number}$1`) : `${path}-${number}`;
}
