/**
 * The commands for what to do when a part does not fold: ways, chart, fit and bar, as the command line offers them.
 */
import type { Command } from "commander";
import type { BarOptions } from "./bar.ts";
import type { ChartOptions } from "./chart.ts";
import type { WaysOptions } from "./ways.ts";

/** Adds the commands; `finish` is told the exit status. */
export function addRemedyCommands(program: Command, finish: (status: number) => void): void {
  program
    .command("ways")
    .summary("list the least changes that let it fold; take one")
    .description(
      "Lists the smallest changes that let a job fold, each run again on the changed job; takes one.",
    )
    .argument("<JOB>", "job file, or - for standard input")
    .option("--shop <FILE>", "try the brakes of this shop file too")
    .option("--take <N>", "print the job with way N taken")
    .option("-o, --output <FILE>", "with --take: write the job into FILE")
    .option("--json", "print the ways as a JSON list, lengths in mm")
    .action(async (path: string, options: WaysOptions) => {
      finish(await (await import("./ways.ts")).runWays(path, options));
    });
  program
    .command("chart")
    .summary("print the longest return flange for every web")
    .description(
      "Prints the longest return flange for every web on a job's brake, for the job's sheet and radius.",
    )
    .argument("<JOB>", "job file, or - for standard input")
    .option("--angles <LIST>", "bend angles apart by commas, 60,90,120 if not given")
    .option("--svg <FILE>", "draw the chart into FILE")
    .option("--pdf <FILE>", "picture and table on a page to print and hang beside the brake")
    .option("--paper <SIZE>", "a4 or letter; by the job's unit if not given")
    .option("--json", "print the chart as one JSON object, lengths in mm")
    .action(async (path: string, options: ChartOptions) => {
      finish(await (await import("./chart.ts")).runChart(path, options));
    });
  program
    .command("fit")
    .summary("try every part of a shop on every brake")
    .description("Tries every part of a shop file on every brake of it and says in a sentence what to do.")
    .argument("<SHOP>", "shop file, or - for standard input")
    .option("--json", "print the table as one JSON object, lengths in mm")
    .action(async (path: string, options: { json?: boolean }) => {
      finish(await (await import("./fit.ts")).runFit(path, options));
    });
  program
    .command("bar")
    .summary("design a narrow brake to make, with plans")
    .description(
      "Designs a shop-made narrow brake for a job's part, or for the parts of a shop file that no brake makes.",
    )
    .argument("<FILE>", "job or shop file, or - for standard input")
    .option("--pdf <FILE>", "write the plans: drawing, cut list, hardware, checks, order of making")
    .option("--paper <SIZE>", "a4 or letter; by the file's unit if not given")
    .option("--dxf <FILE>", "draw the brake at true size as DXF")
    .option("--svg <FILE>", "draw the brake at true size as SVG")
    .option("--job <FILE>", "write a job with the first part on the made brake")
    .option("--shop <FILE>", "write a shop file with the made brake and the parts it makes")
    .option("--load-factor <N>", "safety on the folding moment, 1.25 if not given")
    .option("--yield-factor <N>", "safety on the yield of bar, holder, bed, leaf, 1.67")
    .option("--bolt-factor <N>", "safety on bolts and setback screws, 1.5")
    .option("--pin-factor <N>", "safety on hinge pins, 2")
    .option("--steel-yield <MPA>", "yield of the stock you buy, 250")
    .option("--hand-force <N>", "both hands on the handles together in newtons, 200")
    .option("--vise-force <N>", "what the vise grips with in newtons, 15000")
    .option("--vise-jaws <W x H>", 'jaws of the vise, "100 x 40 mm"')
    .option("--nose-give <LENGTH>", "how far the nose may give, 0.05 mm")
    .option("--angle-lost <DEG>", "angle that may be lost at mid-length, 1")
    .option("--json", "print the design as one JSON object, lengths in mm")
    .action(async (path: string, options: BarOptions) => {
      finish(await (await import("./bar.ts")).runBar(path, options));
    });
}
