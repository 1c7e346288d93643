/**
 * The parts of `--help` that say more than a list of options: what the program answers, a run of examples, exit status.
 * README.md carries the same examples; each command's own page has its part of both.
 */
import { CAUTIONS } from "../words/cautions.ts";
import { wrap } from "./wrap.ts";

export const PURPOSE =
  "Can this sheet-metal part be folded on this hand leaf brake, in which order and which way round, and where does it hit if not?";

/** Lines of the manual stay within this. */
const COLUMNS = 80;

type ExampleLine = readonly [command: string, what: string];

/** The tour: every line can be typed in an empty folder, one after the other. */
const TOUR: readonly ExampleLine[] = [
  ["noseroom example", "list the ready files"],
  ["noseroom example cable-trough-finger -o trough.json", "write one to start from"],
  ["noseroom check trough.json", "does it fold, and how"],
  ["noseroom check trough.json --svg pictures", "the same, steps drawn"],
  ["noseroom ways trough.json", "what to change"],
  ["noseroom ways trough.json --take 1 -o shorter.json", "take the first way"],
  ["noseroom doubt shorter.json --by 1/64", "if flats were misread?"],
  ["noseroom blank shorter.json", "where to scribe the lines"],
  ["noseroom blank shorter.json --pdf blank.pdf", "a full-size template"],
  ["noseroom sheet shorter.json --pdf sheet.pdf", "the shop sheet to print"],
  ['noseroom nest shorter.json --sheet "48 x 96 in"', "blanks off a sheet"],
  ["noseroom chart trough.json --pdf chart.pdf", "what this brake can do"],
  ["noseroom bar trough.json --pdf plans.pdf", "a brake to make, plans"],
  ["noseroom example corner-bracket -o bracket.json", "a part that is more than a section"],
  ["noseroom blank bracket.json --dxf flat.dxf", "its flat pattern for a cutter"],
  ["noseroom drawing flat.dxf --on bracket.json", "a flat pattern from a drawing"],
  ["noseroom example observatory -o observatory.json", "a shop: brakes and parts"],
  ["noseroom fit observatory.json", "which brake for what"],
  ['noseroom sheet observatory.json --part "Z clip" --brake 3 --pdf clip.pdf', "one of them to print"],
  ["noseroom bar observatory.json --shop made.json", "one for the rest, to measure"],
  ["noseroom fit made.json", "checked anew, as built"],
  ["noseroom keys --svg keys.svg", "what to measure of your brake"],
  ["noseroom metals 5052-H32", "figures and sources"],
  ['noseroom strip trough.json --before 2 --flanges "1.029, 1.028"', "K-factor from a test strip"],
  ['noseroom pan --inside "6 x 8 in" --wall 2 --thickness "20 ga steel" --radius 1/16', "a pan"],
];

/** What each command's exit status means, and the lines of the tour that show it. */
const STATUS: Readonly<Record<string, readonly (readonly [status: string, meaning: string])[]>> = {
  check: [
    ["0", "it folds, with room to spare or tight"],
    ["1", "it does not fold"],
  ],
  ways: [
    ["0", "there is a way out, or none is needed"],
    ["1", "no change that is tried lets it fold"],
  ],
  doubt: [
    ["0", "it folds whatever the readings are"],
    ["1", "with some readings it does not fold, or that could not be ruled out"],
  ],
  sheet: [
    ["0", "the sheet is written, and the part folds"],
    ["1", "the sheet is written, and the part does not fold"],
  ],
  blank: [["0", "the blank is printed, whether the part folds or not"]],
  nest: [
    ["0", "at least one blank goes on the sheet"],
    ["1", "not one does"],
  ],
  fit: [
    ["0", "every part is made on some brake of the shop"],
    ["1", "some part is made on none"],
  ],
  bar: [
    ["0", "there is a bar, or none is needed"],
    ["1", "no bar makes it"],
  ],
  drawing: [
    ["0", "it folds, with room to spare or tight"],
    ["1", "it does not fold"],
  ],
  pan: [
    ["0", "the blank is printed"],
    ["1", "no choice of the fingers in --set fits between the walls, or with --on it does not fold"],
  ],
};

const BAD_INPUT =
  "the file or the command line cannot be worked with; standard error says why, standard output is empty";

/** A longer command has its remark on a line of its own. */
const WIDEST = 51;

function exampleBlock(lines: readonly ExampleLine[]): string {
  return lines
    .map(([command, what]) =>
      command.length <= WIDEST
        ? `  ${command.padEnd(WIDEST)}  ${what}`
        : `  ${command}\n  ${" ".repeat(WIDEST)}  ${what}`,
    )
    .join("\n");
}

function statusBlock(rows: readonly (readonly [string, string])[]): string {
  return rows
    .flatMap(([status, meaning]) => {
      const [first = "", ...rest] = wrap(meaning, COLUMNS - 7, "");
      return [`  ${status.padEnd(5)}${first}`, ...rest.map((line) => `       ${line.trim()}`)];
    })
    .join("\n");
}

/** What stands below the options of a command: examples and exit status. */
export function commandManual(name: string): string {
  const lines = TOUR.filter(([command]) => command.split(" ")[1] === name);
  const examples = lines.length === 0 ? "" : `\nEXAMPLE\n${exampleBlock(lines)}\n`;
  const status = statusBlock([...(STATUS[name] ?? [["0", "done"]]), ["2", BAD_INPUT]]);
  return `${examples}\nEXIT STATUS\n${status}\n`;
}

export const MANUAL = `
EXAMPLE
${exampleBlock(TOUR)}

THE JOB FILE
  JSON with units, part and brake, and if you like an order and a margin. Start
  from an example; noseroom keys tells you what to measure of your brake.
  a length      a number, "3/8", "1 1/2", "5 mm" or "1/4 in"
  a thickness   a length, or a gauge with its family: "20 ga steel"
  part.grain    "across", "along", or degrees from the bend lines
  part.doubts   how far each flat may have been misread: a length, or a list
  part.cutOuts  a list of {across: [from, to], along: [from, to]}, from the edge
                of flat 1 and from the blank's start; to may be "end"
  order         a list of {bend, clamped: "start" or "end"}; a step with to, an
                angle, leaves the bend there, and a later step finishes it
  A slip gets one sentence: which key, what stands there, what to type.
  A shop file has noseroomShop, units, brakes and parts, and jobs where the page
  has saved them all. fit takes it, and with --part and --brake so do check,
  ways, blank and sheet.

EXIT STATUS
${statusBlock([
  ["0", "yes: it folds, there is a way out, it fits; or what was asked for is done"],
  ["1", "no: it does not fold, no way helps, it does not fit"],
  ["2", BAD_INPUT],
  ["130", "stopped with Ctrl-C"],
])}
  noseroom COMMAND --help says it for each command.

ENVIRONMENT
  NO_COLOR  set to anything: no colour on a terminal either

${wrap(CAUTIONS, COLUMNS, "")
  .map((line) => line.trim())
  .join("\n")}
`;
