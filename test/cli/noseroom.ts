/**
 * Runs the command as a person would: its standard output and error, its exit status. Mostly in this process; the deep suite,
 * which builds first, runs the built command in processes of its own.
 */
import { spawn } from "node:child_process";
import { Readable } from "node:stream";
import { fileURLToPath } from "node:url";
import { vi } from "vitest";

export const COMMAND = fileURLToPath(new URL("../../dist/noseroom.mjs", import.meta.url));
export const EXAMPLES = fileURLToPath(new URL("../../examples/", import.meta.url));

export interface Outcome {
  readonly status: number | null;
  readonly out: string;
  readonly err: string;
}

export interface RunOptions {
  /** What stands on standard input; nothing unless given. Null leaves it open, as a keyboard is. */
  readonly input?: string | null;
  readonly cwd?: string;
  readonly env?: NodeJS.ProcessEnv;
  readonly uid?: number;
  readonly gid?: number;
}

let before: Promise<unknown> = Promise.resolve();

type NoseroomOptions = Pick<RunOptions, "cwd"> & { readonly input?: string };

/** Runs `noseroom` with these words in this process, one call after the other. */
export function noseroom(args: readonly string[], options: NoseroomOptions = {}): Promise<Outcome> {
  const outcome = before.then(() => inThisProcess(args, options));
  before = outcome.catch(() => undefined);
  return outcome;
}

async function inThisProcess(
  args: readonly string[],
  { input = "", cwd }: NoseroomOptions,
): Promise<Outcome> {
  const { main } = await import("../../src/cli/main.ts");
  const said = { out: "", err: "" };
  const catching = (stream: NodeJS.WriteStream, end: "out" | "err") =>
    vi.spyOn(stream, "write").mockImplementation((text) => {
      said[end] += String(text);
      return true;
    });
  const spies = [catching(process.stdout, "out"), catching(process.stderr, "err")];
  const stdin = vi
    .spyOn(process, "stdin", "get")
    .mockReturnValue(Readable.from([Buffer.from(input)]) as never);
  const here = process.cwd();
  try {
    if (cwd !== undefined) process.chdir(cwd);
    return { status: await main(args), ...said };
  } finally {
    process.chdir(here);
    for (const spy of [...spies, stdin]) spy.mockRestore();
  }
}

/** Runs the built command as a process of its own. */
export function noseroomProcess(args: readonly string[], options: RunOptions = {}): Promise<Outcome> {
  return run(process.execPath, [COMMAND, ...args], options);
}

/** Runs any program of the machine, such as a shell for a pipe. */
export function run(program: string, args: readonly string[], options: RunOptions = {}): Promise<Outcome> {
  return new Promise((resolve, reject) => {
    const { input: _input, env, ...place } = options;
    const child = spawn(program, args, { ...place, env: { ...process.env, ...env } });
    let [out, err] = ["", ""];
    child.stdout.setEncoding("utf8").on("data", (text: string) => {
      out += text;
    });
    child.stderr.setEncoding("utf8").on("data", (text: string) => {
      err += text;
    });
    child.on("error", reject);
    child.on("close", (status) => resolve({ status, out, err }));
    // A command that refuses its words may be gone before its input is written.
    child.stdin.on("error", () => undefined);
    if (options.input !== null) child.stdin.end(options.input ?? "");
  });
}

/** Sentences for a person: no stack trace, no word of programmers, nothing that looks like a path into the source. */
export const STACK_TRACE = /\n\s+at .+:\d+|node:internal|\.mjs:\d+|Error:/u;
