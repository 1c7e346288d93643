/**
 * The commands about the sheet itself: the metals that the shop keeps, and reading a test strip.
 */
import type { Command } from "commander";
import type { MetalsOptions } from "./metals.ts";
import type { StripOptions } from "./stripReadings.ts";

/** Adds them to the program; `finish` takes the exit status. */
export function addMetalCommands(program: Command, finish: (status: number) => void): void {
  program
    .command("metals")
    .summary("list the metals with every figure and its source")
    .description(
      "Lists the metals that a job can name: strengths, modulus, density, K-factor, least radius, and their sources.",
    )
    .argument("[NAME]", "one metal, with its radii by thickness")
    .option("--units <UNIT>", "mm or in, in if not given")
    .option("--json", "print the figures as JSON, in mm, MPa and kg/m³")
    .action(async (name: string | undefined, options: MetalsOptions) => {
      finish(await (await import("./metals.ts")).runMetals(name, options));
    });
  program
    .command("strip")
    .summary("read a test strip: bend deduction, K-factor, springback")
    .description(
      "Reads a test strip: bend deduction and K-factor from its width before and its flanges after, the springback ratio from leaf and relaxed angle.",
    )
    .argument("[JOB]", "job with the metal, thickness, radius and brake; - for standard input")
    .option("--before <LENGTH>", "width of the strip before the bend")
    .option("--flanges <LENGTHS>", 'both flanges after it, outside, "1 1/32, 1 1/32"')
    .option("--angle <DEG>", "bend angle of the strip, --relaxed or 90 if not given")
    .option("--leaf <DEG>", "leaf angle that was swung to")
    .option("--relaxed <DEG>", "bend angle that the strip relaxed to")
    .option("--metal <NAME>", "metal, the job's if not given")
    .option("--thickness <T>", "a length or a gauge, the job's if not given")
    .option("--radius <R>", "inside radius, the job's if not given")
    .option("--brake <NAME>", "for the record, the job's if not given")
    .option("--date <DAY>", "for the record, today if not given")
    .option("--units <UNIT>", "mm or in, the job's or in if not given")
    .option("-o, --output <FILE>", "write the job with the strip's figures in it")
    .option("--keep <FILE>", "write the record to a file of its own")
    .option("--record <FILE>", "read a record that was kept, in place of readings")
    .option("--json", "print the record as one JSON object, lengths in mm")
    .action(async (path: string | undefined, options: StripOptions) => {
      finish(await (await import("./strip.ts")).runStrip(path, options));
    });
}
