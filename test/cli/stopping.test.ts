import { spawn } from "node:child_process";
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { COMMAND, EXAMPLES, type Outcome } from "./noseroom.ts";

/** Twenty bends that wind inward: a search of many seconds. */
function longJob(): string {
  const job = JSON.parse(readFileSync(join(EXAMPLES, "eight-bends.json"), "utf8"));
  job.part.flats = Array.from({ length: 21 }, (_, i) => 8 + 3 * i);
  job.part.bends = Array.from({ length: 20 }, () => ({ angle: 30, turn: "up" }));
  return JSON.stringify(job);
}

describe("noseroom check, stopped with Ctrl-C in the middle of a long search,", () => {
  it("says so in one sentence, prints no answer and exits with 130", async () => {
    const child = spawn(process.execPath, [COMMAND, "check", "-"]);
    let [out, err] = ["", ""];
    child.stdout.on("data", (piece) => {
      out += piece;
    });
    child.stderr.on("data", (piece) => {
      err += piece;
    });
    child.stdin.end(longJob());
    const ended = new Promise<Outcome>((resolve) =>
      child.on("close", (status) => resolve({ status, out, err })),
    );
    await new Promise((resolve) => setTimeout(resolve, 1500));
    child.kill("SIGINT");
    expect(await ended).toEqual({
      status: 130,
      out: "",
      err: "Stopped before the search was done; nothing was decided.\n",
    });
  });
});
