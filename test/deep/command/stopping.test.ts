/**
 * Commands that are stopped before they are done: Ctrl-C, being told to end, a terminal that is closed. One sentence, no
 * answer, and the status that a shell gives: 128 and the signal's number (POSIX).
 */
import { spawn } from "node:child_process";
import { readFileSync } from "node:fs";
import { mkdtemp, readdir, rm } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { COMMAND, EXAMPLES, type Outcome } from "../../cli/noseroom.ts";

const STOPPED = "Stopped before it was done; nothing was decided.\n";
const example = (name: string) => readFileSync(join(EXAMPLES, name), "utf8");

/** Twenty bends that wind inward: a search of many seconds. */
function longJob(): string {
  const job = JSON.parse(example("eight-bends.json"));
  job.part.flats = Array.from({ length: 21 }, (_, i) => 8 + 3 * i);
  job.part.bends = Array.from({ length: 20 }, () => ({ angle: 30, turn: "up" }));
  return JSON.stringify(job);
}

/** A shop with the long part alone, and the brake of its job. */
function longShop(): string {
  const shop = JSON.parse(example("shop/observatory.json"));
  const { units, part, brake } = JSON.parse(longJob());
  return JSON.stringify({ ...shop, units, brakes: [brake], parts: [{ ...shop.parts[0], ...part }] });
}

/** Runs the command on `input` and signals it `afterMs` later. */
async function stopped(
  words: readonly string[],
  input: string | undefined,
  afterMs: number,
  signal: NodeJS.Signals,
  cwd?: string,
): Promise<Outcome> {
  const child = spawn(process.execPath, [COMMAND, ...words], { cwd });
  let [out, err] = ["", ""];
  child.stdout.on("data", (piece) => {
    out += piece;
  });
  child.stderr.on("data", (piece) => {
    err += piece;
  });
  const ended = new Promise<Outcome>((resolve) =>
    child.on("close", (status) => resolve({ status, out, err })),
  );
  child.stdin.on("error", () => undefined);
  // Up and waiting for its input.
  await new Promise((resolve) => setTimeout(resolve, 1000));
  if (input !== undefined) child.stdin.end(input);
  await new Promise((resolve) => setTimeout(resolve, afterMs));
  child.kill(signal);
  return ended;
}

describe("noseroom, stopped in the middle of a long search,", () => {
  it.each([
    ["check", "SIGINT", 130],
    ["ways", "SIGTERM", 143],
    ["doubt", "SIGINT", 130],
    ["fit", "SIGHUP", 129],
  ] as const)("says so in one sentence and prints no answer (%s, %s)", async (command, signal, status) => {
    const input = command === "fit" ? longShop() : longJob();
    expect(await stopped([command, "-"], input, 1000, signal)).toEqual({ status, out: "", err: STOPPED });
  });

  it("writes no file", async () => {
    const folder = await mkdtemp(join(tmpdir(), "noseroom-"));
    await stopped(["sheet", "-", "--pdf", "out.pdf"], longJob(), 1000, "SIGTERM", folder);
    expect(await readdir(folder)).toEqual([]);
    await rm(folder, { recursive: true });
  });
});

describe("noseroom, stopped with a job of few bends,", () => {
  it("says so while it waits for its input", async () => {
    expect(await stopped(["check", "-"], undefined, 0, "SIGINT")).toEqual({
      status: 130,
      out: "",
      err: STOPPED,
    });
  });

  it.each(["check", "blank"])("says so and prints no answer once it has it (%s)", async (command) => {
    const outcome = await stopped([command, "-"], example("hat-stiffener.json"), 0, "SIGTERM");
    expect(outcome).toEqual({ status: 143, out: "", err: STOPPED });
  });
});
