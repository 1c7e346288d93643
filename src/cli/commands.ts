/**
 * Every command as the command line offers it: what it answers, its argument, its options. Each is loaded when it is
 * asked for, so that the others cost a start nothing. Exit statuses and examples are in manual.ts.
 * Longer than 300 lines because it is one table of all commands.
 */
import type { Command } from "commander";

type Run = (argument: string | undefined, options: never) => Promise<number>;

interface Offered {
  readonly name: string;
  readonly summary: string;
  readonly description: string;
  readonly argument?: readonly [term: string, what: string];
  readonly usage?: string;
  readonly options: readonly Option[];
  readonly run: () => Promise<Run>;
}

/** "!" before the flags: the option must be there. */
type Option = readonly [flags: string, what: string];

const JOB = ["<JOB>", "job file, or - for standard input"] as const;
const JOB_OR_SHOP = ["<FILE>", "job or shop file, or - for standard input"] as const;
const CHOICE: readonly Option[] = [
  ["--part <NAME>", "of a shop file: which part, by name or number"],
  ["--brake <NAME>", "of a shop file: on which brake, by name or number"],
];
const FORCE: Option = ["--force", "write over a file that is already there"];
const PAPER: Option = ["--paper <SIZE>", "a4 or letter; letter for a file in inches if not given"];
const UNITS: Option = ["--units <UNIT>", "mm or in; in if not given"];
const json = (what: string): Option => ["--json", `print ${what}, lengths in mm`];

const COMMANDS: readonly Offered[] = [
  {
    name: "check",
    summary: "say whether a job folds, and how, or where it hits",
    description:
      "Says whether a job folds, in which order and which way round, or at what leaf angle it hits and where.",
    argument: JOB_OR_SHOP,
    options: [
      ...CHOICE,
      json("the answer as one JSON object"),
      ["--orders", "list the orders that work, best first"],
      ["--svg <DIR>", "write one picture a step into DIR"],
      FORCE,
    ],
    run: async () => (await import("./check.ts")).runCheck as Run,
  },
  {
    name: "ways",
    summary: "list the least changes that let it fold; take one",
    description:
      "Lists the smallest changes that let a job fold. Each is run again on the changed job. Takes one of them.",
    argument: JOB_OR_SHOP,
    options: [
      ...CHOICE,
      ["--shop <FILE>", "try the brakes of this shop file too"],
      ["--take <N>", "print the job with way N taken"],
      ["-o, --output <FILE>", "with --take: write the job into FILE"],
      json("the ways as a JSON list"),
      FORCE,
    ],
    run: async () => (await import("./ways.ts")).runWays as Run,
  },
  {
    name: "doubt",
    summary: "say whether it folds if the flats were misread",
    description:
      "Says whether a job still folds when each flat may be off by so much, and which reading decides.",
    argument: JOB,
    options: [
      ["--by <LENGTH>", "how far each flat may be off; the job's doubts, 1/64 in or 0.25 mm if not given"],
      json("the finding as one JSON object"),
    ],
    run: async () => (await import("./doubt.ts")).runDoubt as Run,
  },
  {
    name: "blank",
    summary: "print where the blank's lines stand, or a template",
    description:
      "Prints the developed width and, from one edge, the bend tangent lines and sight lines. Says which bend allowance was used and how far others would differ.",
    argument: JOB_OR_SHOP,
    options: [
      ...CHOICE,
      ["--svg <FILE>", "draw the blank at true size into FILE"],
      ["--pdf <FILE>", "full-size template on pages of paper"],
      PAPER,
      ["--dxf <FILE>", "DXF in millimetres, for a cutter"],
      [
        "--within <LENGTH>",
        "warn where other bend allowances differ by more, 1/64 in or 0.25 mm if not given",
      ],
      ["--fractions", "give the nearest 1/64 in beside each decimal, and what it adds"],
      json("the blank as one JSON object"),
      FORCE,
    ],
    run: async () => (await import("./blank.ts")).runBlank as Run,
  },
  {
    name: "sheet",
    summary: "write the shop sheet to print, a row a bend",
    description:
      "Writes the shop sheet of a job as a PDF file: answer, blank, set-up, and a row a bend to tick.",
    argument: JOB_OR_SHOP,
    usage: "FILE --pdf FILE [options]",
    options: [...CHOICE, ["!--pdf <FILE>", "file to write"], PAPER, FORCE],
    run: async () => (await import("./sheet.ts")).runSheet as Run,
  },
  {
    name: "nest",
    summary: "say how many blanks a sheet gives, where to cut",
    description: "Says how many blanks of a job a sheet gives, where to cut it, and what is left over.",
    argument: JOB,
    usage: 'JOB --sheet "WIDTH x LENGTH" [options]',
    options: [
      ["!--sheet <SIZE>", 'width x length along the grain, "48 x 96 in"'],
      ["--count <N>", "how many are wanted; as many as a sheet gives if not given"],
      ["--kerf <LENGTH>", "what a cut takes away, 0 if not given, as for a shear"],
      ["--any-way", "lay blanks along the grain too"],
      ["--svg <FILE>", "draw the sheet at true size into FILE"],
      ["--dxf <FILE>", "the same as DXF in millimetres"],
      json("the nest as one JSON object"),
      FORCE,
    ],
    run: async () => (await import("./nest.ts")).runNest as Run,
  },
  {
    name: "pan",
    summary: "lay out a pan: blank, relief holes, fingers",
    description:
      "Lays out a pan of four square walls: its blank, its relief holes, and which fingers go between.",
    usage: '--inside "WIDTH x LENGTH" --wall LENGTH --thickness T --radius R [options]',
    options: [
      ["!--inside <SIZE>", 'clear bottom, "6 x 8 1/4 in"'],
      ["!--wall <LENGTH>", "height of the walls, outside"],
      ["!--thickness <T>", "of the sheet, a length or a gauge"],
      ["!--radius <R>", "inside radius of the bends"],
      ["--metal <NAME>", "for its K-factor, mild steel if not given"],
      ["--set <WIDTHS>", 'finger widths on the brake, "4, 3, 2 x2, 1"'],
      ["--on <JOB>", "check it on the brake of this job: order, fingers, what meets what"],
      ["-o, --output <FILE>", "with --on: write the pan as a job into FILE"],
      UNITS,
      ["--svg <FILE>", "draw the blank at true size into FILE"],
      ["--pdf <FILE>", "full-size template on pages of paper"],
      PAPER,
      ["--dxf <FILE>", "DXF in millimetres"],
      json("the blank as one JSON object"),
      FORCE,
    ],
    run: async () => withoutArgument((await import("./pan.ts")).runPan),
  },
  {
    name: "drawing",
    summary: "take a flat pattern from a DXF drawing and check it",
    description:
      "Takes outline, holes and bend lines from a DXF drawing of the flat blank, in developed size, and checks it on the brake and with the sheet of another job.",
    argument: ["<DXF>", "drawing in text form, or - for standard input"],
    usage: "DXF --on JOB [options]",
    options: [
      ["!--on <JOB>", "job whose brake, sheet and units are used"],
      [
        "--bends <NAME>",
        "layers or linetypes of the bend lines; layers with bend in their name if not given",
      ],
      ["--cut <LAYER>", "layer of outline and holes; CUT or all other lines if not given"],
      ["--angles <LIST>", 'where the drawing has none: "90 up" for all, "1: 90 up, 2: 45 down"'],
      ["--drawn-in <UNIT>", "mm or in, where the drawing does not say it"],
      ["-o, --output <FILE>", "write it as a job into FILE"],
      json("the answer as one JSON object"),
      FORCE,
    ],
    run: async () => (await import("./drawing.ts")).runDrawing as Run,
  },
  {
    name: "chart",
    summary: "print the longest return flange for every web",
    description:
      "Prints the longest return flange for every web on a job's brake, for the job's sheet and radius.",
    argument: JOB,
    options: [
      ["--angles <LIST>", "bend angles apart by commas, 60,90,120 if not given"],
      ["--svg <FILE>", "draw the chart into FILE"],
      ["--pdf <FILE>", "picture and table on a page to print and hang beside the brake"],
      PAPER,
      json("the chart as one JSON object"),
      FORCE,
    ],
    run: async () => (await import("./chart.ts")).runChart as Run,
  },
  {
    name: "fit",
    summary: "try every part of a shop on every brake",
    description: "Tries every part of a shop file on every brake of it and says in a sentence what to do.",
    argument: ["<SHOP>", "shop file, or - for standard input"],
    options: [json("the table as one JSON object")],
    run: async () => (await import("./fit.ts")).runFit as Run,
  },
  {
    name: "bar",
    summary: "design a narrow brake to make, with plans",
    description:
      "Designs a shop-made narrow brake for a job's part, or for the parts of a shop file that no brake makes.",
    argument: ["<FILE>", "job or shop file, or - for standard input"],
    options: [
      ["--pdf <FILE>", "write the plans: picture and list, assembly, each piece, making, proving, checks"],
      PAPER,
      ["--dxf <DIR>", "write a DXF of each sawn piece into DIR"],
      ["--stl <FILE>", "write the whole brake as STL, to turn it around"],
      ["--svg <FILE>", "draw the picture with its numbers as SVG"],
      ["--job <FILE>", "write a job with the part on the made brake; one a part, numbered, for several"],
      ["--shop <FILE>", "write a shop file with the made brake and the parts it makes"],
      ["--load-factor <N>", "safety on the folding moment, 1.25 if not given"],
      ["--yield-factor <N>", "safety on the yield of bar, holder, bed, leaf, 1.67"],
      ["--bolt-factor <N>", "how far the nuts are tightened past the folding's pull, 1.4"],
      ["--pin-factor <N>", "safety on hinge pins, 2"],
      [
        "--steel-yield <MPA>",
        "yield of all the stock you buy; 250 hot rolled, 370 cold finished if not given",
      ],
      ["--hand-force <N>", "one person's two hands on the handles in newtons, 200"],
      ["--vise-force <N>", "what the vise grips with in newtons, 15000"],
      ["--vise-jaws <W x H>", 'jaws of the vise, "100 x 40 mm"'],
      ["--nose-give <LENGTH>", "how far the nose may give, 0.05 mm"],
      ["--angle-lost <DEG>", "angle that may be lost at mid-length, 1"],
      json("the design as one JSON object"),
      FORCE,
    ],
    run: async () => (await import("./bar.ts")).runBar as Run,
  },
  {
    name: "strip",
    summary: "read a test strip: bend deduction, K-factor, springback",
    description:
      "Reads a test strip: bend deduction and K-factor from its width before and its flanges after, the springback ratio from leaf and relaxed angle.",
    argument: ["[JOB]", "job with the metal, thickness, radius and brake; - for standard input"],
    options: [
      ["--before <LENGTH>", "width of the strip before the bend"],
      ["--flanges <LENGTHS>", 'both flanges after it, outside, "1 1/32, 1 1/32"'],
      ["--angle <DEG>", "bend angle of the strip, --relaxed or 90 if not given"],
      ["--leaf <DEG>", "leaf angle that was swung to"],
      ["--relaxed <DEG>", "bend angle that the strip relaxed to"],
      ["--metal <NAME>", "metal, the job's if not given"],
      ["--thickness <T>", "a length or a gauge, the job's if not given"],
      ["--radius <R>", "inside radius, the job's if not given"],
      ["--brake <NAME>", "for the record, the job's if not given"],
      ["--date <DAY>", "for the record, today if not given"],
      ["--units <UNIT>", "mm or in, the job's or in if not given"],
      ["-o, --output <FILE>", "write the job with the strip's figures in it"],
      ["--keep <FILE>", "write the record to a file of its own"],
      ["--record <FILE>", "read a record that was kept, in place of readings"],
      json("the record as one JSON object"),
      FORCE,
    ],
    run: async () => (await import("./strip.ts")).runStrip as Run,
  },
  {
    name: "metals",
    summary: "list the metals with every figure and its source",
    description:
      "Lists the metals that a job can name: strengths, modulus, density, K-factor, least radius, and their sources.",
    argument: ["[NAME]", "one metal, with its radii by thickness"],
    options: [UNITS, ["--json", "print the figures as JSON, in mm, MPa and kg/m³"]],
    run: async () => (await import("./metals.ts")).runMetals as Run,
  },
  {
    name: "keys",
    summary: "list the keys of a brake, and how to measure each",
    description:
      "Lists every key of a brake in a job file: what it takes, what holds where you leave it out, how to measure it.",
    options: [["--svg <FILE>", "draw where each is measured into FILE"], FORCE],
    run: async () => withoutArgument((await import("./keys.ts")).runKeys),
  },
  {
    name: "example",
    summary: "list ready job and shop files, or write one",
    description:
      "Writes a ready job or shop file to start from; into a pipe it prints the file. Without a NAME it lists them, each with its line.",
    argument: ["[NAME]", "name of an example"],
    options: [
      ["-o, --output <FILE>", "file to write, NAME.json on a terminal if not given; - prints it"],
      FORCE,
    ],
    run: async () => (await import("./example.ts")).runExample as Run,
  },
];

function withoutArgument<Options>(run: (options: Options) => Promise<number>): Run {
  return (_, options) => run(options);
}

/** Adds every command to the program; `finish` takes the exit status. */
export function addCommands(program: Command, finish: (status: number) => void): void {
  for (const { name, summary, description, argument, usage, options, run } of COMMANDS) {
    const command = program.command(name).summary(summary).description(description);
    if (argument) command.argument(...argument);
    if (usage) command.usage(usage);
    for (const [flags, what] of options) {
      if (flags.startsWith("!")) command.requiredOption(flags.slice(1), what);
      else command.option(flags, what);
    }
    command.action(async (...given: unknown[]) => {
      const [path, asked] = argument ? given : [undefined, given[0]];
      finish(await (await run())(path as string | undefined, asked as never));
    });
  }
}
