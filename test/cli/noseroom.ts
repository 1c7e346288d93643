/**
 * Runs the built command as a person would: a process of its own, its standard output and error, its exit status.
 * `npm test` builds dist/ first.
 */
import { spawn } from "node:child_process";
import { fileURLToPath } from "node:url";

export const COMMAND = fileURLToPath(new URL("../../dist/noseroom.mjs", import.meta.url));
export const EXAMPLES = fileURLToPath(new URL("../../examples/", import.meta.url));

export interface Outcome {
  readonly status: number | null;
  readonly out: string;
  readonly err: string;
}

export interface RunOptions {
  readonly input?: string;
  readonly cwd?: string;
  readonly env?: NodeJS.ProcessEnv;
  readonly uid?: number;
  readonly gid?: number;
}

/** Runs `noseroom` with these words. */
export function noseroom(args: readonly string[], options: RunOptions = {}): Promise<Outcome> {
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
    child.stdin.end(options.input ?? "");
  });
}

/** Sentences for a person: no stack trace, no word of programmers, nothing that looks like a path into the source. */
export const STACK_TRACE = /\n\s+at .+:\d+|node:internal|\.mjs:\d+|Error:/u;
