import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { EXAMPLES, noseroom } from "./noseroom.ts";

const names = [
  ...readdirSync(EXAMPLES),
  ...readdirSync(join(EXAMPLES, "shop")),
  ...readdirSync(join(EXAMPLES, "whole")),
]
  .filter((file) => file.endsWith(".json"))
  .map((file) => file.slice(0, -5))
  .sort();

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "noseroom-example-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("noseroom example", () => {
  it("lists every job and shop file of the folder, each with its line", async () => {
    const { status, out } = await noseroom(["example"]);
    expect(status).toBe(0);
    const listed = out.split("\n").filter((line) => /^[\w-]+$/u.test(line));
    expect(listed.toSorted()).toEqual(names);
    const taught = out.split("\n").filter((line) => /^ {4}\S.+\.$/u.test(line));
    expect(new Set(taught).size).toBe(names.length);
    expect(names.length).toBeGreaterThanOrEqual(8);
  });

  it("writes the very text of the example, ready to be checked", async () => {
    const name = "cable-trough-bar.json";
    const { status, out } = await noseroom(["example", "cable-trough-bar", "-o", name], { cwd: folder });
    expect(status).toBe(0);
    expect(out).toContain("noseroom check cable-trough-bar.json");
    const written = readFileSync(join(folder, "cable-trough-bar.json"), "utf8");
    expect(written).toBe(readFileSync(join(EXAMPLES, "cable-trough-bar.json"), "utf8"));
    expect((await noseroom(["check", "cable-trough-bar.json"], { cwd: folder })).status).toBe(0);
  });

  it("writes a shop file too, ready to be tried", async () => {
    const { status, out } = await noseroom(["example", "observatory", "-o", "observatory.json"], {
      cwd: folder,
    });
    expect(status).toBe(0);
    expect(out).toContain("Now: noseroom fit observatory.json");
    const written = readFileSync(join(folder, "observatory.json"), "utf8");
    expect(written).toBe(readFileSync(join(EXAMPLES, "shop", "observatory.json"), "utf8"));
  });

  it("never writes over a file", async () => {
    writeFileSync(join(folder, "mine.json"), "my own work");
    const { status, out, err } = await noseroom(["example", "cable-trough-bar", "-o", "mine.json"], {
      cwd: folder,
    });
    expect({ status, out }).toEqual({ status: 2, out: "" });
    expect(err).toBe(
      "mine.json is already there and was left as it is. Name another file, or add --force to write over it.\n",
    );
    expect(readFileSync(join(folder, "mine.json"), "utf8")).toBe("my own work");
  });

  it.each([[[]], [["-o", "-"]]])("prints the job itself into a pipe (%j)", async (options) => {
    const { out } = await noseroom(["example", "cable-trough-bar", ...options], { cwd: folder });
    expect(out).toBe(readFileSync(join(EXAMPLES, "cable-trough-bar.json"), "utf8"));
  });

  it.each(["nonsense", "__proto__", "toString", "../package"])(
    "knows no example %s and says which there are",
    async (name) => {
      const { status, out, err } = await noseroom(["example", name]);
      expect({ status, out }).toEqual({ status: 2, out: "" });
      expect(err).toContain("cable-trough-bar");
    },
  );
});
