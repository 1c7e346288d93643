/**
 * The commands that end on paper or on the sheet: shop sheet, nest, pan, doubtful readings. Each is loaded when asked for.
 */
import type { Command } from "commander";
import type { DoubtOptions } from "./doubt.ts";
import type { NestOptions } from "./nest.ts";
import type { PanOptions } from "./pan.ts";
import type { SheetOptions } from "./sheet.ts";

/** Adds them to the program; `finish` takes the exit status. */
export function addPaperCommands(program: Command, finish: (status: number) => void): void {
  program
    .command("sheet")
    .summary("write the shop sheet to print, a row a bend")
    .description(
      "Writes the shop sheet of a job as a PDF file: answer, blank, set-up, and a row a bend to tick.",
    )
    .argument("<JOB>", "job file, or - for standard input")
    .usage("JOB --pdf FILE [options]")
    .requiredOption("--pdf <FILE>", "file to write")
    .option("--paper <SIZE>", "a4 or letter; letter for a job in inches if not given")
    .action(async (path: string, options: SheetOptions) => {
      finish(await (await import("./sheet.ts")).runSheet(path, options));
    });
  program
    .command("nest")
    .summary("say how many blanks a sheet gives, where to cut")
    .description("Says how many blanks of a job a sheet gives, where to cut it, and what is left over.")
    .argument("<JOB>", "job file, or - for standard input")
    .usage('JOB --sheet "WIDTH x LENGTH" [options]')
    .requiredOption("--sheet <SIZE>", 'width x length along the grain, "48 x 96 in"')
    .option("--count <N>", "how many are wanted; as many as a sheet gives if not given")
    .option("--kerf <LENGTH>", "what a cut takes away, 0 if not given, as for a shear")
    .option("--any-way", "lay blanks along the grain too")
    .option("--svg <FILE>", "draw the sheet at true size into FILE")
    .option("--dxf <FILE>", "the same as DXF in millimetres")
    .option("--json", "print the nest as one JSON object, lengths in mm")
    .action(async (path: string, options: NestOptions) => {
      finish(await (await import("./nest.ts")).runNest(path, options));
    });
  program
    .command("doubt")
    .summary("say whether it folds if the flats were misread")
    .description(
      "Says whether a job still folds when each flat may be off by so much, and which reading decides.",
    )
    .argument("<JOB>", "job file, or - for standard input")
    .option(
      "--by <LENGTH>",
      "how far each flat may be off; the job's doubts, 1/64 in or 0.25 mm if not given",
    )
    .option("--json", "print the finding as one JSON object, lengths in mm")
    .action(async (path: string, options: DoubtOptions) => {
      finish(await (await import("./doubt.ts")).runDoubt(path, options));
    });
  program
    .command("pan")
    .summary("lay out a pan: blank, relief holes, fingers")
    .description(
      "Lays out a pan of four square walls: its blank, its relief holes, and which fingers go between.",
    )
    .usage('--inside "WIDTH x LENGTH" --wall LENGTH --thickness T --radius R [options]')
    .requiredOption("--inside <SIZE>", 'clear bottom, "6 x 8 1/4 in"')
    .requiredOption("--wall <LENGTH>", "height of the walls, outside")
    .requiredOption("--thickness <T>", "of the sheet, a length or a gauge")
    .requiredOption("--radius <R>", "inside radius of the bends")
    .option("--metal <NAME>", "for its K-factor, mild steel if not given")
    .option("--set <WIDTHS>", 'finger widths on the brake, "4, 3, 2 x2, 1"')
    .option("--units <UNIT>", "mm or in, in if not given")
    .option("--svg <FILE>", "draw the blank at true size into FILE")
    .option("--pdf <FILE>", "full-size template on pages of paper")
    .option("--paper <SIZE>", "a4 or letter; letter in inches if not given")
    .option("--dxf <FILE>", "DXF in millimetres")
    .option("--json", "print the blank as one JSON object, lengths in mm")
    .action(async (options: PanOptions) => {
      finish(await (await import("./pan.ts")).runPan(options));
    });
}
