/**
 * The manual page as a stranger uses it: every example line is typed, in order, in an empty folder.
 */
import { existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { noseroom, STACK_TRACE } from "./noseroom.ts";

/** What each line of the tour exits with: the trough does not fold as it comes, and the shop's brakes leave some unmade. */
const NO = ["noseroom check trough.json", "noseroom doubt", "noseroom fit observatory.json"];

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "noseroom-tour-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Names in the list of commands. */
function listed(page: string): string[] {
  const block = /COMMANDS\n((?: {2}.*\n)+)/u.exec(page)?.[1] ?? "";
  return [...block.matchAll(/^ {2}([a-z]+)/gmu)].map(([, name]) => name ?? "");
}

/** Example lines without their remarks. */
function tour(page: string): string[] {
  const block = /EXAMPLE\n((?: {2}.*\n)+)/u.exec(page)?.[1] ?? "";
  return [...block.matchAll(/^ {2}(noseroom .*?)(?: {2,}.*)?$/gmu)].map(([, line]) => line ?? "");
}

/** A line's words after the command's name, as a shell splits them. */
function words(line: string): string[] {
  return [...line.matchAll(/"([^"]*)"|(\S+)/gu)].map(([, quoted, bare]) => quoted ?? bare!).slice(1);
}

describe("the tour of noseroom --help", () => {
  it("runs line by line, each with the exit status that its manual gives", async () => {
    const page = (await noseroom(["--help"])).out;
    const lines = tour(page);
    expect(new Set(lines.map((line) => line.split(" ")[1]))).toEqual(
      new Set(listed(page).filter((name) => name !== "help")),
    );
    for (const line of lines) {
      const { status, out, err } = await noseroom(words(line), { cwd: folder });
      expect({ line, status, err }).toEqual({
        line,
        status: NO.some((start) => line.startsWith(start)) ? 1 : 0,
        err: "",
      });
      expect(out.length).toBeGreaterThan(40);
      const file = /--(?:pdf|svg) (\S+)/u.exec(line)?.[1];
      if (file) expect(existsSync(join(folder, file)), line).toBe(true);
    }
  });
});

describe("noseroom COMMAND --help", () => {
  it("has examples that begin with it, and its exit statuses", async () => {
    const names = listed((await noseroom(["--help"])).out);
    expect(names.length).toBeGreaterThan(12);
    for (const name of names) {
      const { status, out, err } = await noseroom([name, "--help"]);
      expect({ status, err }).toEqual({ status: 0, err: "" });
      expect(out).toContain(`USAGE noseroom ${name}`);
      expect(out).toMatch(/EXIT STATUS\n {2}0 .*\n(?:.*\n)* {2}2 /u);
      if (name !== "help") expect(tour(out)[0]).toMatch(new RegExp(`^noseroom ${name}\\b`, "u"));
      for (const line of out.split("\n")) expect(line.length, line).toBeLessThan(100);
    }
  });

  it("is what `help COMMAND` prints; a word that is no command is refused in a sentence", async () => {
    expect((await noseroom(["help", "nest"])).out).toBe((await noseroom(["nest", "--help"])).out);
    expect((await noseroom(["help"])).out).toBe((await noseroom(["--help"])).out);
    const none = await noseroom(["help", "fold"]);
    expect(none).toEqual({
      status: 2,
      out: "",
      err: 'There is no command "fold". See noseroom --help.\n',
    });
    expect(none.err).not.toMatch(STACK_TRACE);
  });
});
