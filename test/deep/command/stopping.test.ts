/**
 * Commands that are stopped before they are done: Ctrl-C, being told to end, a terminal that is closed. One sentence, no
 * answer, and the status that a shell gives: 128 and the signal's number (POSIX). Each process signals itself at the moment
 * that the test names, so that nothing hangs on the clock.
 */
import { cpSync, readFileSync, writeFileSync } from "node:fs";
import { mkdtemp, readdir, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { COMMAND, EXAMPLES, type Outcome, run } from "../../cli/noseroom.ts";

const STOPPED = "Stopped before it was done; nothing was decided.\n";
const example = (name: string) => readFileSync(join(EXAMPLES, name), "utf8");

/** More bends than are answered on the spot, so that the search has a thread of its own: the example's eight and two more. */
const LONG = longer(example("eight-bends.json"));

function longer(text: string): string {
  const { part, ...rest } = JSON.parse(text);
  const [flats, bends] = [part.flats, part.bends].map((list) => [...list, ...list.slice(-2)]);
  return JSON.stringify({ ...rest, part: { ...part, flats, bends } });
}

/** A shop with the long part alone, and the brake of its job. */
function longShop(): string {
  const shop = JSON.parse(example("shop/observatory.json"));
  const { units, part, brake } = JSON.parse(LONG);
  return JSON.stringify({ ...shop, units, brakes: [brake], parts: [{ ...shop.parts[0], ...part }] });
}

/** The command with a search that never ends, and is signalled as soon as it runs. */
let endless = "";
/** Run before the command: signals it once it listens for signals, or once its input has come to an end. */
let [onceUp, onceRead] = ["", ""];
let folder = "";

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), "noseroom-stopping-"));
  const write = (name: string, text: string) => {
    writeFileSync(join(folder, name), text);
    return join(folder, name);
  };
  endless = join(folder, "noseroom.mjs");
  cpSync(COMMAND, endless);
  cpSync(join(dirname(COMMAND), "command"), join(folder, "command"), { recursive: true });
  write("command/searchThread.mjs", "process.kill(process.pid, process.env.STOP_WITH);\nfor (;;);\n");
  onceUp = write(
    "onceUp.cjs",
    `process.on("newListener", (name) => {
       if (name === process.env.STOP_WITH) setImmediate(() => process.kill(process.pid, name));
     });`,
  );
  onceRead = write(
    "onceRead.cjs",
    'process.stdin.once("end", () => process.kill(process.pid, process.env.STOP_WITH));',
  );
});
afterAll(() => rm(folder, { recursive: true }));

const stopped = (
  words: readonly string[],
  input: string | null,
  signal: NodeJS.Signals,
  cwd = folder,
): Promise<Outcome> => run(process.execPath, words, { input, cwd, env: { STOP_WITH: signal } });

describe("noseroom, stopped in the middle of a long search,", () => {
  it.each([
    ["check", "SIGINT", 130],
    ["ways", "SIGTERM", 143],
    ["doubt", "SIGINT", 130],
    ["fit", "SIGHUP", 129],
  ] as const)("says so in one sentence and prints no answer (%s, %s)", async (command, signal, status) => {
    const input = command === "fit" ? longShop() : LONG;
    expect(await stopped([endless, command, "-"], input, signal)).toEqual({ status, out: "", err: STOPPED });
  });

  it("writes no file", async () => {
    const empty = await mkdtemp(join(tmpdir(), "noseroom-"));
    const outcome = await stopped([endless, "sheet", "-", "--pdf", "out.pdf"], LONG, "SIGTERM", empty);
    expect(outcome).toEqual({ status: 143, out: "", err: STOPPED });
    expect(await readdir(empty)).toEqual([]);
    await rm(empty, { recursive: true });
  });
});

describe("noseroom, stopped with a job of few bends,", () => {
  const SHORT = example("hat-stiffener.json");

  it("says so while it waits for its input", async () => {
    const words = ["--require", onceUp, COMMAND, "check", "-"];
    expect(await stopped(words, null, "SIGINT")).toEqual({ status: 130, out: "", err: STOPPED });
  });

  it.each(["check", "blank"])("says so and prints no answer once it has it (%s)", async (command) => {
    const words = ["--require", onceRead, COMMAND, command, "-"];
    expect(await stopped(words, SHORT, "SIGTERM")).toEqual({ status: 143, out: "", err: STOPPED });
  });

  it("answers where nobody stops it", async () => {
    const { status, err } = await run(process.execPath, [COMMAND, "check", "-"], { input: SHORT });
    expect({ status, err }).toEqual({ status: 0, err: "" });
  });
});
