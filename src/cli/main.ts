/**
 * The command `noseroom`: reads the command line, hands over to one file a command, and turns whatever happens into
 * an exit status and, at most, a few sentences. Commands are loaded when asked for, so that each starts quickly.
 */

import { type Argument, Command, CommanderError } from "commander";
import { capital } from "../words/capital.ts";
import { addCommands } from "./commands.ts";
import { commandManual, MANUAL, PURPOSE } from "./manual.ts";
import { Refusal } from "./refusal.ts";

const BAD_INPUT = 2;

/** The parser's sentence in the manner of the house: no "error:", a capital, a full stop, and where to read on. */
function parserSentence(text: string, command: string): string {
  const plain = text.trim().replace(/^error: /u, "");
  const sentence = capital(plain);
  return `${/[.?)]$/u.test(sentence) ? sentence : `${sentence}.`}\nSee ${command} --help.\n`;
}

/**
 * What no command can work with: a file or folder without a name, a size of paper for no paper.
 * @throws Refusal that names the word
 */
function refuseEmptyWords(command: Command): void {
  for (const [i, argument] of command.registeredArguments.entries()) {
    if (command.args[i] === "") throw new Refusal(`${argument.name()} is empty; it wants a name.`);
  }
  const options: Readonly<Record<string, unknown>> = command.opts();
  for (const option of command.options) {
    if (options[option.attributeName()] === "" && /<(?:FILE|DIR)>/u.test(option.flags)) {
      throw new Refusal(
        `${option.long} is empty; it wants the name of a ${option.flags.includes("DIR") ? "folder" : "file"}.`,
      );
    }
  }
  if (options.paper !== undefined && options.pdf === undefined) {
    throw new Refusal("--paper wants --pdf beside it, the file to write.");
  }
}

/** How an argument is called in the list of commands. */
function argumentTerm(argument: Argument): string {
  return argument.required ? argument.name() : `[${argument.name()}]`;
}

function commandLine(finish: (status: number) => void): Command {
  const program = new Command("noseroom")
    .description(PURPOSE)
    .version(NOSEROOM_VERSION, "--version", "print the version")
    .helpOption("-h, --help", "print this page")
    .helpCommand(false)
    .configureOutput({ outputError: (text, write) => write(parserSentence(text, "noseroom")) })
    .configureHelp({
      styleTitle: (title) => title.toUpperCase().replace(/:$/u, ""),
      subcommandTerm: (command) =>
        [command.name(), ...command.registeredArguments.map(argumentTerm)].join(" "),
    })
    .addHelpText("after", MANUAL)
    .exitOverride();

  addCommands(program, finish);
  program
    .command("help")
    .summary("print this page, or a command's")
    .description("Prints the page of a command, or the first page.")
    .argument("[COMMAND]", "name of a command")
    .action((name: string | undefined) => {
      const command = name === undefined ? program : program.commands.find((one) => one.name() === name);
      if (command === undefined) throw new Refusal(`There is no command "${name}". See noseroom --help.`);
      command.outputHelp();
    });
  for (const command of program.commands) {
    const name = command.name();
    command.addHelpText("after", commandManual(name));
    command.configureOutput({
      outputError: (text, write) => write(parserSentence(text, `noseroom ${name}`)),
    });
    command.hook("preAction", () => refuseEmptyWords(command));
  }
  return program;
}

function statusOfFailure(reason: unknown): number {
  // The parser has printed its own sentence; it asks for 0 after --help and --version.
  if (reason instanceof CommanderError) return reason.exitCode === 0 ? 0 : BAD_INPUT;
  if (reason instanceof Refusal) {
    process.stderr.write(`${reason.sentences.join("\n")}\n`);
    return BAD_INPUT;
  }
  const words = reason instanceof Error ? reason.message : String(reason);
  process.stderr.write(`Noseroom stumbled over this job, which is our fault and not yours: ${words}\n`);
  return BAD_INPUT;
}

/**
 * Runs the command that these words ask for and gives its exit status. Prints on the process's own streams.
 * @param words what stands after `noseroom` on the command line
 */
export async function main(words: readonly string[]): Promise<number> {
  let status = 0;
  const program = commandLine((found) => {
    status = found;
  });
  try {
    if (words.length === 0) program.outputHelp();
    else await program.parseAsync(words, { from: "user" });
    return status;
  } catch (reason) {
    return statusOfFailure(reason);
  }
}
