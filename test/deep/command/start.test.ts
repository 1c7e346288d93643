/**
 * How the command starts: the same with what was compiled when it was built, without it, and where it is spoilt. And how it ends
 * in a pipe.
 */
import { execFileSync } from "node:child_process";
import { cpSync, mkdtempSync, rmSync, statSync, truncateSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { dirname, join } from "node:path";
import { afterAll, beforeAll, expect, it } from "vitest";
import { COMMAND, EXAMPLES, run } from "../../cli/noseroom.ts";

const folder = mkdtempSync(join(tmpdir(), "noseroom-start-"));
const compiled = join(folder, "command", "noseroom.compiled");

function answer(command: string): string {
  return execFileSync(process.execPath, [command, "check", "examples/cable-trough-bar.json"], {
    encoding: "utf8",
  });
}

beforeAll(() => {
  cpSync(COMMAND, join(folder, "noseroom.mjs"));
  cpSync(join(dirname(COMMAND), "command"), join(folder, "command"), { recursive: true });
});
afterAll(() => rmSync(folder, { recursive: true }));

it("keeps what was compiled beside the command", () => {
  expect(statSync(compiled).size).toBeGreaterThan(100_000);
});

it.each([
  ["is cut short", () => truncateSync(compiled, 5000)],
  ["is another file", () => writeFileSync(compiled, "no such thing")],
  ["is empty", () => writeFileSync(compiled, "")],
  ["is missing", () => rmSync(compiled)],
])("answers all the same where that %s", (_, spoil) => {
  spoil();
  expect(answer(join(folder, "noseroom.mjs"))).toBe(answer(COMMAND));
});

it("ends quietly when its reader has seen enough", async () => {
  const many = `${process.execPath} ${COMMAND} check ${join(EXAMPLES, "eight-bends.json")} --json`;
  const { err } = await run("sh", ["-c", `${many} | true; ${many} | head -c 1`]);
  expect(err).toBe("");
});
